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
    let mut rows = Vec::new();
    each_row(table, text, &mut |line, cells| {
        let row = T::deserialize(cells)?;
        rows.push(Row { line, row });
        Ok(())
    })?;
    Ok(rows)
}

/// Shows each row to a reader, with its line: this part is the same for all
/// types.
fn each_row(
    table: &str,
    text: &str,
    read: &mut dyn FnMut(u64, Cells<'_>) -> Result<(), de::value::Error>,
) -> Result<(), TableError> {
    let mut reader = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let headers = reader.headers().cloned().map_err(|e| error(table, &e))?;
    for record in reader.records() {
        let record = record.map_err(|e| error(table, &e))?;
        let line = record.position().map_or(0, csv::Position::line);
        let cells = Cells {
            headers: &headers,
            record: &record,
        };
        read(line, cells).map_err(|e| {
            let what = plain(&e.to_string());
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
    }
    Ok(())
}

fn error(table: &str, cause: &csv::Error) -> TableError {
    TableError {
        table: table.to_owned(),
        line: cause.position().map_or(0, csv::Position::line),
        problem: match cause.kind() {
            csv::ErrorKind::UnequalLengths {
                expected_len, len, ..
            } => format!(
                "the line has {len} cells and the header has {expected_len} columns: give it as many, an empty one for each that holds nothing"
            ),
            _ => cause.to_string(),
        },
    }
}

/// The column of the cell that an error quotes first, if it quotes one.
fn column<'h>(message: &str, headers: &'h StringRecord, row: &StringRecord) -> Option<&'h str> {
    let quoted = message.split(['"', '`']).nth(1)?;
    let is_quoted = |cell: &str| cell.split('|').any(|entry| entry.trim() == quoted);
    let place = row.iter().position(is_quoted)?;
    headers.get(place)
}

/// What the reader of a row reports, in words of tables.
fn plain(report: &str) -> String {
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
    .fold(report.to_owned(), |text, (from, to)| text.replace(from, to))
}

/// A row as the readers of types see it. They are given the columns that they
/// ask for in their own order: so each reader is short, and there are many.
#[derive(Clone, Copy)]
struct Cells<'r> {
    headers: &'r StringRecord,
    record: &'r StringRecord,
}

impl<'de> Deserializer<'de> for Cells<'_> {
    type Error = de::value::Error;

    fn deserialize_struct<V: de::Visitor<'de>>(
        self,
        _name: &'static str,
        fields: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Self::Error> {
        visitor.visit_seq(Asked {
            cells: self,
            fields: fields.iter(),
        })
    }

    fn deserialize_any<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
        let entry = |(name, text)| (name, Cell(text));
        let entries = self.headers.iter().zip(self.record).map(entry);
        visitor.visit_map(de::value::MapDeserializer::new(entries))
    }

    serde::forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string
        bytes byte_buf option unit unit_struct newtype_struct seq tuple
        tuple_struct map enum identifier ignored_any
    }
}

/// The cells of a row in the order in which a type asks for them.
struct Asked<'r> {
    cells: Cells<'r>,
    fields: std::slice::Iter<'static, &'static str>,
}

impl<'de> de::SeqAccess<'de> for Asked<'_> {
    type Error = de::value::Error;

    fn next_element_seed<S: de::DeserializeSeed<'de>>(
        &mut self,
        seed: S,
    ) -> Result<Option<S::Value>, Self::Error> {
        let Some(field) = self.fields.next() else {
            return Ok(None);
        };
        let place = self.cells.headers.iter().position(|name| name == *field);
        match place.and_then(|place| self.cells.record.get(place)) {
            Some(text) => seed.deserialize(Cell(text)).map(Some),
            None => seed.deserialize(NoCell(field)).map(Some),
        }
    }
}

/// Stands for a column that the table lacks: nothing, where that will do.
struct NoCell(&'static str);

impl<'de> Deserializer<'de> for NoCell {
    type Error = de::value::Error;

    fn deserialize_any<V: de::Visitor<'de>>(self, _: V) -> Result<V::Value, Self::Error> {
        Err(de::Error::missing_field(self.0))
    }

    fn deserialize_option<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
        visitor.visit_none()
    }

    serde::forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string
        bytes byte_buf unit unit_struct newtype_struct seq tuple tuple_struct
        map struct enum identifier ignored_any
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
            .map(|entry| T::deserialize(Cell(entry)))
            .collect::<Result<_, de::value::Error>>()
            .map(Self)
            .map_err(de::Error::custom)
    }
}

/// The text of a cell, or of one entry in it.
struct Cell<'a>(&'a str);

impl<'de> IntoDeserializer<'de> for Cell<'_> {
    type Deserializer = Self;

    fn into_deserializer(self) -> Self {
        self
    }
}

/// Readers of the kinds of numbers.
macro_rules! numbers {
    ($($read:ident $kind:ty, $visit:ident, $expected:literal;)+) => {$(
        fn $read<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
            match self.0.parse::<$kind>() {
                Ok(value) => visitor.$visit(value),
                Err(_) => Err(de::Error::invalid_value(
                    de::Unexpected::Str(self.0),
                    &$expected,
                )),
            }
        }
    )+};
}

impl<'de> Deserializer<'de> for Cell<'_> {
    type Error = de::value::Error;

    fn deserialize_any<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
        visitor.visit_str(self.0)
    }

    /// An empty cell holds nothing.
    fn deserialize_option<V: de::Visitor<'de>>(self, visitor: V) -> Result<V::Value, Self::Error> {
        if self.0.is_empty() {
            visitor.visit_none()
        } else {
            visitor.visit_some(self)
        }
    }

    fn deserialize_newtype_struct<V: de::Visitor<'de>>(
        self,
        _name: &'static str,
        visitor: V,
    ) -> Result<V::Value, Self::Error> {
        visitor.visit_newtype_struct(self)
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

    numbers! {
        deserialize_bool bool, visit_bool, "true or false";
        deserialize_u8 u8, visit_u8, "a whole number";
        deserialize_u16 u16, visit_u16, "a whole number";
        deserialize_u32 u32, visit_u32, "a whole number";
        deserialize_u64 u64, visit_u64, "a whole number";
        deserialize_i32 i32, visit_i32, "a whole number";
        deserialize_i64 i64, visit_i64, "a whole number";
        deserialize_f64 f64, visit_f64, "a number";
    }

    serde::forward_to_deserialize_any! {
        i8 i16 i128 u128 f32 char str string bytes byte_buf unit unit_struct
        seq tuple tuple_struct map struct identifier ignored_any
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
        grade: Option<u8>,
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
                "limit,side,grade\n1,at most,ninth\n",
                2,
                "column \"grade\": cannot be read: \"ninth\", expected a whole number",
            ),
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
