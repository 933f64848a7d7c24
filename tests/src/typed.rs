//! Tables as they were typed, cell by cell, for comparing with a second typing.

use std::collections::BTreeMap;

/// A row's cells by the names of their columns.
pub type Row = BTreeMap<String, String>;

/// All rows of a table with a header.
///
/// # Panics
/// When the text is not such a table.
pub fn rows(text: &str) -> Vec<Row> {
    csv::Reader::from_reader(text.as_bytes())
        .deserialize()
        .map(|row| row.expect("a row of a table"))
        .collect()
}
