//! Reading a table that comes in as CSV text.

use csv::StringRecord;
use serde::de::{self, DeserializeOwned, IntoDeserializer};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
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
        let row = record.deserialize(Some(&headers)).map_err(|e| {
            let what = plain(&e);
            let place = match column(&what, &headers, &record) {
                Some(column) => format!("column \"{column}\": "),
                None => String::new(),
            };
            TableError {
                table: table.to_owned(),
                line,
                problem: format!("{place}{what}: compare the row with the header"),
            }
        })?;
        rows.push(Row { line, row });
    }
    Ok(rows)
}

fn error(table: &str, cause: &csv::Error) -> TableError {
    TableError {
        table: table.to_owned(),
        line: cause.position().map_or(0, csv::Position::line),
        problem: plain(cause),
    }
}

/// The column of the cell that an error quotes first, if it quotes one.
fn column<'h>(message: &str, headers: &'h StringRecord, row: &StringRecord) -> Option<&'h str> {
    let quoted = message.split(['"', '`']).nth(1)?;
    let is_quoted = |cell: &str| cell.split('|').any(|entry| entry.trim() == quoted);
    let place = row.iter().position(is_quoted)?;
    headers.get(place)
}

/// What the reader reports, in words of tables.
fn plain(cause: &csv::Error) -> String {
    let text = match cause.kind() {
        csv::ErrorKind::Deserialize { err, .. } => err.kind().to_string(),
        csv::ErrorKind::UnequalLengths {
            expected_len, len, ..
        } => format!(
            "the line has {len} cells and the header has {expected_len} columns: give it as many, an empty one for each that holds nothing"
        ),
        _ => cause.to_string(),
    };
    [
        (
            "a Decimal type representing a fixed-point number",
            "a number",
        ),
        ("invalid value: string ", "cannot be read: "),
        ("unknown variant", "unknown word"),
        ("missing field", "missing column"),
    ]
    .into_iter()
    .fold(text, |text, (from, to)| text.replace(from, to))
}

/// Several entries in one cell, separated by `|`; an empty cell has none.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct List<T>(pub Vec<T>);

impl<T> std::ops::Deref for List<T> {
    type Target = [T];
    fn deref(&self) -> &[T] {
        &self.0
    }
}

impl<T: Serialize> Serialize for List<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.0.serialize(serializer)
    }
}

impl<'de, T: DeserializeOwned> Deserialize<'de> for List<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        text.split('|')
            .map(str::trim)
            .filter(|entry| !entry.is_empty())
            .map(|entry| T::deserialize(EntryDeserializer(entry)))
            .collect::<Result<_, de::value::Error>>()
            .map(Self)
            .map_err(de::Error::custom)
    }
}

/// Reads one entry of a list: a word, or a whole number.
struct EntryDeserializer<'a>(&'a str);

impl<'de> Deserializer<'de> for EntryDeserializer<'_> {
    type Error = de::value::Error;

    fn deserialize_any<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
        match self.0.parse::<u32>() {
            Ok(number) => visitor.visit_u32(number),
            Err(_) => visitor.visit_str(self.0),
        }
    }

    fn deserialize_enum<V: de::Visitor<'de>>(
        self,
        name: &'static str,
        variants: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Self::Error> {
        self.0
            .into_deserializer()
            .deserialize_enum(name, variants, visitor)
    }

    fn deserialize_string<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
        visitor.visit_str(self.0)
    }

    serde::forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str bytes
        byte_buf option unit unit_struct newtype_struct seq tuple tuple_struct
        map struct identifier ignored_any
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rust_decimal::Decimal;

    #[derive(Debug, Deserialize)]
    #[expect(dead_code, reason = "only their errors are looked at")]
    struct Limit {
        limit: Decimal,
        side: Side,
    }

    #[derive(Debug, Deserialize)]
    enum Side {
        #[serde(rename = "at most")]
        AtMost,
    }

    #[test]
    fn errors_name_line_and_column_in_plain_words() {
        for (text, line, words) in [
            (
                "limit,side\n1,at most\nmuch,at most\n",
                3,
                "column \"limit\": cannot be read: \"much\", expected a number",
            ),
            (
                "limit,side\n1,over\n",
                2,
                "column \"side\": unknown word `over`, expected `at most`",
            ),
            ("limit\n1\n", 2, "missing column `side`"),
            (
                "limit,side\n1\n",
                2,
                "the line has 1 cells and the header has 2 columns",
            ),
        ] {
            let error = read::<Limit>("limits", text).unwrap_err();
            assert_eq!(error.line, line, "{error}");
            assert!(error.problem.contains(words), "{error}");
        }
    }
}
