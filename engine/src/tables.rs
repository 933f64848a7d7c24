//! Reading a table that comes in as CSV text.

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
