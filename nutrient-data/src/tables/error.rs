//! What can be wrong with a committed table.

use std::fmt;
use std::path::PathBuf;

/// A table that cannot be used; the message names file, line, fault and remedy.
#[derive(Debug)]
pub enum TableError {
    /// The file cannot be opened or is no CSV in UTF-8.
    Unreadable {
        /// The file.
        path: PathBuf,
        /// What the reader says, with the place.
        reason: String,
    },
    /// The heading is not the one that the table has.
    Heading {
        /// The file.
        path: PathBuf,
        /// The columns that belong there.
        expected: String,
        /// The columns that are there.
        found: String,
    },
    /// A cell does not hold what its column holds.
    Cell {
        /// The file.
        path: PathBuf,
        /// Line in the file, counted from 1.
        line: u64,
        /// Name of the column.
        column: &'static str,
        /// The text of the cell.
        text: String,
        /// What belongs there.
        expected: &'static str,
    },
}

impl fmt::Display for TableError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Unreadable { path, reason } => write!(
                f,
                "{} cannot be read: {reason}. Restore it from the repository, or import SR28 again.",
                path.display()
            ),
            Self::Heading {
                path,
                expected,
                found,
            } => write!(
                f,
                "{}, line 1: the heading is \"{found}\" where \"{expected}\" belongs. Restore the \
                 heading; columns are not found by other names or in another order.",
                path.display()
            ),
            Self::Cell {
                path,
                line,
                column,
                text,
                expected,
            } => write!(
                f,
                "{}, line {line}, column {column}: \"{text}\" where {expected} belongs. Correct \
                 the cell, or import SR28 again.",
                path.display()
            ),
        }
    }
}

impl std::error::Error for TableError {}
