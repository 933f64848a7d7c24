//! A book as a file: what is written, and why a file cannot be used.

use crate::named;
use crate::state::Saved;
use engine::book::Book;
use serde::de::DeserializeOwned;
use std::fmt;

/// Why a text cannot be used as a book.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct BookFileError {
    /// Line of the text, from 1; nothing when the whole is meant.
    pub line: Option<usize>,
    /// Which part of the book, as in "recipes[2].servings"; empty when the
    /// whole is meant.
    pub part: String,
    /// What is wrong and how to mend it.
    pub problem: String,
}

impl fmt::Display for BookFileError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.line, self.part.as_str()) {
            (None, _) => out.write_str(&self.problem),
            (Some(line), "") => write!(out, "line {line}: {}", self.problem),
            (Some(line), part) => write!(out, "line {line}, {part}: {}", self.problem),
        }
    }
}

impl std::error::Error for BookFileError {}

impl BookFileError {
    fn new(part: String, error: &serde_json::Error) -> Self {
        let remedy = if error.is_data() {
            "compare it with a book that this page has saved"
        } else {
            "the text is no complete JSON: it may have been cut off, take an earlier copy"
        };
        // The position is told apart.
        let text = error.to_string();
        let what = text.split(" at line ").next().unwrap_or_default();
        Self {
            line: (error.line() > 0).then_some(error.line()),
            part: if part == "." { String::new() } else { part },
            problem: format!("{what}: {remedy}"),
        }
    }
}

fn read<T: DeserializeOwned>(text: &str) -> Result<T, BookFileError> {
    let mut reader = serde_json::Deserializer::from_str(text);
    let value = serde_path_to_error::deserialize(&mut reader)
        .map_err(|error| BookFileError::new(error.path().to_string(), error.inner()))?;
    reader
        .end()
        .map_err(|error| BookFileError::new(String::new(), &error))?;
    Ok(value)
}

/// Reads a book.
///
/// # Errors
/// When the text is no book, or one with recipes or weeks that cannot be told
/// apart.
pub fn read_book(text: &str) -> Result<Book, BookFileError> {
    let book: Book = read(text)?;
    check(&book)?;
    Ok(book)
}

/// Reads what the browser stores.
///
/// # Errors
/// As [`read_book`].
pub fn read_saved(text: &str) -> Result<Saved, BookFileError> {
    let saved: Saved = read(text)?;
    check(&saved.book)?;
    Ok(saved)
}

fn check(book: &Book) -> Result<(), BookFileError> {
    book.check().map_err(|error| BookFileError {
        line: None,
        part: String::new(),
        problem: named::book(&error),
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
            ("[]", Some(1), "compare it"),
            (
                "{\"version\": 1,\n\"office\": 5,\n\"recipes\": [], \"weeks\": []}",
                Some(2),
                "line 2, office: invalid type",
            ),
            (
                r#"{"version": 1, "office": "", "recipes": [{"id": "a", "title": "A", "servings": "many"}]}"#,
                Some(1),
                "recipes[0].servings",
            ),
            (
                r#"{"version": 1, "office": "", "recipes": [], "weeks": []} {}"#,
                Some(1),
                "trailing",
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
