//! Reading a table that comes in as CSV text.

use serde::de::DeserializeOwned;
use std::fmt;

/// What is wrong with a table, where, and how to mend it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TableError {
    /// Name of the table.
    pub table: String,
    /// Line in its text, counting the header as 1; zero for the whole table.
    pub line: u64,
    /// What is wrong and what to do.
    pub problem: String,
}

impl fmt::Display for TableError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            0 => write!(out, "table {}: {}", self.table, self.problem),
            line => write!(out, "table {}, line {line}: {}", self.table, self.problem),
        }
    }
}

impl std::error::Error for TableError {}

/// A row with its line number.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row<T> {
    /// Line in the text, counting the header as 1.
    pub line: u64,
    /// What the row says.
    pub row: T,
}

/// Reads all rows of a table with a header.
///
/// # Errors
/// At the first row that does not have the columns that `T` asks for.
pub fn read<T: DeserializeOwned>(table: &str, text: &str) -> Result<Vec<Row<T>>, TableError> {
    let mut reader = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let headers = reader.headers().cloned().map_err(|e| error(table, &e))?;
    let mut rows = Vec::new();
    for record in reader.records() {
        let record = record.map_err(|e| error(table, &e))?;
        let line = record.position().map_or(0, csv::Position::line);
        let row = record.deserialize(Some(&headers)).map_err(|e| TableError {
            table: table.to_owned(),
            line,
            problem: format!("{e}: compare the row with the header"),
        })?;
        rows.push(Row { line, row });
    }
    Ok(rows)
}

fn error(table: &str, cause: &csv::Error) -> TableError {
    TableError {
        table: table.to_owned(),
        line: cause.position().map_or(0, csv::Position::line),
        problem: cause.to_string(),
    }
}
