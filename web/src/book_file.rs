//! A book as a file: what is written, and why a file cannot be used.

use crate::state::Saved;
use engine::book::Book;
use std::fmt;

/// Why a text cannot be used as a book.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BookFileError {
    /// Line of the text, from 1; nothing when the whole is meant.
    pub line: Option<usize>,
    /// What is wrong and how to mend it.
    pub problem: String,
}

impl fmt::Display for BookFileError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.line {
            Some(line) => write!(out, "line {line}: {}", self.problem),
            None => out.write_str(&self.problem),
        }
    }
}

impl std::error::Error for BookFileError {}

impl From<serde_json::Error> for BookFileError {
    fn from(error: serde_json::Error) -> Self {
        let line = (error.line() > 0).then_some(error.line());
        let remedy = if error.is_data() {
            "a book needs version, office, recipes and weeks, as this page writes them"
        } else {
            "the text is no complete JSON: it may have been cut off, take an earlier copy"
        };
        Self {
            line,
            problem: format!("{error}: {remedy}"),
        }
    }
}

/// Reads a book.
///
/// # Errors
/// When the text is no book, or one with recipes or weeks that cannot be told
/// apart.
pub fn read_book(text: &str) -> Result<Book, BookFileError> {
    let book: Book = serde_json::from_str(text)?;
    check(&book)?;
    Ok(book)
}

/// Reads what the browser stores.
///
/// # Errors
/// As [`read_book`].
pub fn read_saved(text: &str) -> Result<Saved, BookFileError> {
    let saved: Saved = serde_json::from_str(text)?;
    check(&saved.book)?;
    Ok(saved)
}

fn check(book: &Book) -> Result<(), BookFileError> {
    book.check().map_err(|error| BookFileError {
        line: None,
        problem: error.to_string(),
    })
}

/// The file's text.
pub fn write_book(book: &Book) -> String {
    // Plain data with text keys: it always has a JSON form.
    serde_json::to_string_pretty(book).unwrap_or_default() + "\n"
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_book_comes_back_as_it_went() {
        let book = Book::empty("Cedar Hollow schools");
        assert_eq!(read_book(&write_book(&book)), Ok(book));
    }

    #[test]
    fn what_is_wrong_is_told_with_its_line() {
        for (text, line, words) in [
            ("", Some(1), "cut off"),
            ("{\n\"version\": 1,", Some(2), "cut off"),
            ("[]", Some(1), "a book needs"),
            (
                "{\"version\": 1,\n\"office\": 5,\n\"recipes\": [], \"weeks\": []}",
                Some(2),
                "a book needs",
            ),
            (
                r#"{"version": 99, "office": "", "recipes": [], "weeks": []}"#,
                None,
                "newer page",
            ),
        ] {
            let error = read_book(text).unwrap_err();
            assert_eq!(error.line, line, "{text}");
            assert!(error.to_string().contains(words), "{error}");
        }
    }
}
