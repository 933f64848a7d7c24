//! Reading one table, cell by cell.

use std::path::{Path, PathBuf};
use std::str::FromStr;

use csv::StringRecord;

use super::TableError;
use crate::format::Scaled;

/// One line of a table.
pub(crate) struct Row<'t> {
    path: &'t Path,
    columns: &'static [&'static str],
    record: &'t StringRecord,
}

/// Reads the table at `path` below `folder` and turns each line into a value by `make`.
pub(crate) fn read<T>(
    folder: &Path,
    path: &str,
    columns: &'static [&'static str],
    mut make: impl FnMut(&Row<'_>) -> Result<T, TableError>,
) -> Result<Vec<T>, TableError> {
    let path: PathBuf = folder.join(path);
    let unreadable = |reason: csv::Error| TableError::Unreadable {
        path: path.clone(),
        reason: reason.to_string(),
    };
    let mut reader = csv::Reader::from_path(&path).map_err(unreadable)?;
    let heading = reader.headers().map_err(unreadable)?;
    if !heading.iter().eq(columns.iter().copied()) {
        return Err(TableError::Heading {
            expected: columns.join(","),
            found: heading.iter().collect::<Vec<_>>().join(","),
            path,
        });
    }
    let mut rows = Vec::new();
    let mut record = StringRecord::new();
    while reader.read_record(&mut record).map_err(unreadable)? {
        rows.push(make(&Row {
            path: &path,
            columns,
            record: &record,
        })?);
    }
    Ok(rows)
}

impl Row<'_> {
    /// The text of a column.
    pub fn text(&self, column: &'static str) -> &str {
        let place = self.columns.iter().position(|&name| name == column);
        &self.record[place.expect("the table has this column")]
    }

    /// The column as a whole number of the wanted type.
    pub fn whole<T: FromStr>(&self, column: &'static str) -> Result<T, TableError> {
        let value = self.text(column).parse().ok();
        value.ok_or_else(|| self.wrong(column, "a whole number (not negative, not too large)"))
    }

    /// The same; `None` where the cell is empty.
    pub fn whole_or_none<T: FromStr>(&self, column: &'static str) -> Result<Option<T>, TableError> {
        if self.text(column).is_empty() {
            return Ok(None);
        }
        self.whole(column).map(Some)
    }

    /// The column as a decimal number with all its digits.
    pub fn decimal(&self, column: &'static str) -> Result<Scaled, TableError> {
        Scaled::parse(self.text(column))
            .ok_or_else(|| self.wrong(column, "a decimal number such as 0.85"))
    }

    /// The same; `None` where the cell is empty.
    pub fn decimal_or_none(&self, column: &'static str) -> Result<Option<Scaled>, TableError> {
        if self.text(column).is_empty() {
            return Ok(None);
        }
        self.decimal(column).map(Some)
    }

    /// The error for a cell that holds something else than `expected`.
    pub fn wrong(&self, column: &'static str, expected: &'static str) -> TableError {
        TableError::Cell {
            path: self.path.to_owned(),
            line: self.record.position().map_or(0, csv::Position::line),
            column,
            text: self.text(column).to_owned(),
            expected,
        }
    }
}
