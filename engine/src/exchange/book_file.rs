//! The whole book as one JSON file.

use super::json_part::part;
use super::{Problem, Trouble};
use crate::book::{BOOK_VERSION, Book, BookError};
use serde::Deserialize;
use serde::de::{DeserializeOwned, IgnoredAny};

/// The published schema of the file: JSON Schema, draft 2020-12.
pub const BOOK_SCHEMA: &str = include_str!("book.schema.json");

/// What tells a book from other JSON, and in which version it is.
#[derive(Deserialize)]
struct Head {
    version: Option<serde_json::Value>,
    recipes: Option<IgnoredAny>,
    #[serde(rename = "@context")]
    context: Option<IgnoredAny>,
    #[serde(rename = "@graph")]
    graph: Option<IgnoredAny>,
    #[serde(rename = "@type")]
    kind: Option<IgnoredAny>,
}

/// Reads a book.
///
/// # Errors
/// When the text is no book, one of a later version, or one with recipes,
/// weeks or foods that cannot be told apart.
pub fn read_book(text: &str) -> Result<Book, Problem> {
    let text = text.trim_start_matches('\u{feff}');
    serde_json::from_str::<IgnoredAny>(text).map_err(|error| no_json(&error))?;
    let no_book = || Problem::whole(Trouble::NoBook);
    let head: Head = serde_json::from_str(text).map_err(|_| no_book())?;
    if head.context.is_some() || head.graph.is_some() || head.kind.is_some() {
        return Err(Problem::whole(Trouble::RecipesOnly));
    }
    let (Some(version), Some(_)) = (head.version, head.recipes) else {
        return Err(no_book());
    };
    // A later version may look different: that comes first.
    if let Some(version) = version.as_u64()
        && version > u64::from(BOOK_VERSION)
    {
        let version = version.try_into().unwrap_or(u32::MAX);
        return Err(Problem::whole(Trouble::Newer(version)));
    }
    let book: Book = read_json(text)?;
    check(&book)?;
    Ok(book)
}

/// The file's text.
pub fn write_book(book: &Book) -> String {
    // Plain data with text keys: it always has a JSON form.
    serde_json::to_string_pretty(book).unwrap_or_default() + "\n"
}

/// Reads any of the book's data from JSON.
///
/// # Errors
/// When it is no JSON or does not fit, with line and part.
pub fn read_json<T: DeserializeOwned>(text: &str) -> Result<T, Problem> {
    serde_json::from_str(text).map_err(|error| unfit(&part(text, &error), &error))
}

/// Looks for what would make a book ambiguous.
///
/// # Errors
/// When its version is later, or a name stands for two things.
pub fn check(book: &Book) -> Result<(), Problem> {
    book.check().map_err(|error| {
        let (part, trouble) = match error {
            BookError::Newer(version) => ("", Trouble::Newer(version)),
            BookError::RecipeTwice(id) => ("recipes", Trouble::SameName(id.0)),
            BookError::WeekTwice(id) => ("weeks", Trouble::SameName(id.0)),
            BookError::FoodTwice(number) => ("ownFoods", Trouble::SameName(number.to_string())),
            BookError::VersionTwice(_, name) => ("versions", Trouble::SameName(name)),
            BookError::LabelTwice(id) => ("labels", Trouble::SameName(id.0)),
        };
        Problem::in_line(0, part, trouble)
    })
}

fn no_json(error: &serde_json::Error) -> Problem {
    let trouble = if error.is_eof() {
        Trouble::CutOff
    } else {
        Trouble::NotJson
    };
    Problem::in_line(error.line() as u64, "", trouble)
}

/// What `serde` says of data that does not fit, as one of our troubles.
fn unfit(part: &str, error: &serde_json::Error) -> Problem {
    if !error.is_data() {
        return no_json(error);
    }
    let text = error.to_string();
    // The position is told apart.
    let what = text.split(" at line ").next().unwrap_or_default();
    let quoted = |text: &str| text.split('`').nth(1).unwrap_or_default().to_owned();
    let trouble = if what.starts_with("missing field") {
        Trouble::Missing(quoted(what))
    } else if what.starts_with("duplicate field") {
        Trouble::Twice(quoted(what))
    } else if what.starts_with("unknown variant") {
        let (word, known) = what.split_once(", expected ").unwrap_or((what, ""));
        Trouble::UnknownWord {
            word: quoted(word),
            known: known.trim_start_matches("one of ").replace('`', "\""),
        }
    } else if let Some(found) =
        (what.strip_prefix("invalid type: ")).or_else(|| what.strip_prefix("invalid value: "))
    {
        let found = found.split(", expected ").next().unwrap_or_default();
        Trouble::Unfit(found.replace('`', "").replacen("string ", "", 1))
    } else {
        Trouble::Unfit(what.to_owned())
    };
    Problem::in_line(error.line() as u64, part, trouble)
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
    fn what_is_wrong_is_told_with_its_place() {
        for (text, told) in [
            ("", "line 1: the text is no complete JSON"),
            ("{\n\"version\": 1,", "line 2: the text is no complete JSON"),
            ("Dear all,", "line 1: this is no JSON"),
            ("[]", "this is JSON, but no book"),
            ("{\"name\": \"x\"}", "this is JSON, but no book"),
            (
                "{\"@context\": \"https://schema.org\", \"@type\": \"Recipe\"}",
                "this file holds recipes",
            ),
            (
                "{\"version\": 1,\n\"office\": 5,\n\"recipes\": [], \"weeks\": []}",
                "line 2, office: integer 5 does not fit",
            ),
            (
                "{\"version\": 1, \"recipes\": [], \"weeks\": []}",
                "line 1: \"office\" is missing",
            ),
            (
                r#"{"version": 1, "office": "", "recipes": [{"id": "a", "title": "A", "servings": "many"}]}"#,
                "line 1, recipes[0].servings: \"many\" does not fit",
            ),
            (
                r#"{"version": 1, "office": "", "recipes": [{"id": "a", "title": "A", "servings": "2", "lines": [], "beans": "fruit"}]}"#,
                "line 1, recipes[0].beans: \"fruit\" is not known here: write one of \"vegetable\"",
            ),
            (
                r#"{"version": 1, "office": "", "recipes": [], "weeks": []} {}"#,
                "line 1: this is no JSON",
            ),
            // A later version may have another shape altogether.
            (
                r#"{"version": 99, "recipes": {"a": 1}}"#,
                "the book has version 99",
            ),
        ] {
            let error = read_book(text).unwrap_err().to_string();
            assert!(error.starts_with(told), "{text}\n{error}");
        }
    }
}
