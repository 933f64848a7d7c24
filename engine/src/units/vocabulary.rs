//! The words by which offices write amounts, read once from the kitchen tables.

use super::cursor::Cursor;
use super::{Amount, MassUnit, Size, VolumeUnit};
use crate::tables;
use nutrient_data::kitchen;
use serde::Deserialize;
use serde::de::value::{Error, StrDeserializer};
use serde::de::{DeserializeOwned, IntoDeserializer};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// What a unit word means.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum UnitWord {
    /// A unit of mass.
    Mass(MassUnit),
    /// A unit of volume.
    Volume(VolumeUnit),
    /// A size.
    Size(Size),
    /// A container, in the singular.
    Container(String),
    /// A piece that may be a food's own name as well: "patty".
    Piece(String),
    /// A piece that is always part of some food: "slice".
    Part(String),
    /// A vague measure, in the singular: "pinch".
    Vague(String),
}

/// What a number word means.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NumberWord {
    /// "a": one, if a unit or food follows.
    Article,
    /// A number of its own.
    Number(Amount),
    /// A part of one: "half".
    Part(Amount),
    /// Multiplies what stands before it: "dozen".
    Times(Amount),
}

/// How words bear on an amount.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum VagueKind {
    /// No amount is meant: "to taste".
    Unknown,
    /// What the food is for, from which no amount follows: "for garnish".
    Purpose,
    /// A measure without a size: "pinch".
    Measure,
    /// The amount is near the one written: "about".
    Approximate,
    /// Says nothing about the amount: "level".
    Exact,
    /// How a measure is filled: "packed".
    Filling,
    /// The food may be left out.
    Optional,
    /// More than the amount written is used: "plus more".
    Extra,
}

/// The most words that a table entry has.
pub const LONGEST_PHRASE: usize = 3;

/// The meaning of a unit word or phrase; "T" and "t" differ, all else does not
/// by case. Words are joined by single spaces.
pub fn unit(phrase: &str) -> Option<UnitWord> {
    let lowered = phrase.to_lowercase();
    UNITS
        .get(phrase)
        .or_else(|| UNITS.get(&lowered))
        .cloned()
        .or_else(|| vague_measure(&lowered))
}

/// The meaning of the unit words that a text starts with, and the text after
/// them.
pub fn leading_unit(text: &str) -> Option<(UnitWord, &str)> {
    let mut cursor = Cursor::new(text);
    let (meaning, length) = cursor.phrase(0, unit)?;
    cursor.skip(length);
    Some((meaning, cursor.rest()))
}

/// The meaning of a number word.
pub fn number(word: &str) -> Option<NumberWord> {
    NUMBERS.words.get(&word.to_lowercase()).copied()
}

/// The value of a fraction written as one sign.
pub fn fraction_sign(sign: char) -> Option<Amount> {
    NUMBERS.signs.get(&sign).copied()
}

/// How a phrase bears on an amount.
pub fn vague(phrase: &str) -> Option<VagueKind> {
    VAGUE.get(&phrase.to_lowercase()).copied()
}

/// Dimensions by which the dataset names a can of this trade number.
pub fn can_dimensions(number: &str) -> Option<&'static str> {
    CANS.get(number).map(String::as_str)
}

/// A word without the ending of the plural, which suffices to compare words
/// with each other.
pub fn singular(word: &str) -> String {
    let lowered = word.to_lowercase();
    for (plural, singular) in [("leaves", "leaf"), ("halves", "half"), ("loaves", "loaf")] {
        if lowered == plural {
            return singular.to_owned();
        }
    }
    let ends_with_sibilant = |stem: &str| {
        ["s", "x", "z", "ch", "sh", "o"]
            .iter()
            .any(|end| stem.ends_with(end))
    };
    if let Some(stem) = lowered.strip_suffix("ies").filter(|stem| stem.len() > 2) {
        return format!("{stem}y");
    }
    if let Some(stem) = lowered
        .strip_suffix("es")
        .filter(|stem| ends_with_sibilant(stem))
    {
        return stem.to_owned();
    }
    match lowered.strip_suffix('s') {
        Some(stem) if stem.len() > 2 && !stem.ends_with(['s', 'u']) => stem.to_owned(),
        _ => lowered,
    }
}

fn vague_measure(lowered: &str) -> Option<UnitWord> {
    [lowered.to_owned(), singular(lowered)]
        .iter()
        .find(|word| VAGUE.get(*word) == Some(&VagueKind::Measure))
        .map(|word| UnitWord::Vague(word.clone()))
}

#[derive(Deserialize)]
struct UnitRow {
    word: String,
    kind: String,
    unit: String,
}

#[derive(Deserialize)]
struct NumberRow {
    word: String,
    kind: String,
    numerator: u32,
    denominator: u32,
}

#[derive(Deserialize)]
struct VagueRow {
    words: String,
    kind: VagueKind,
}

#[derive(Deserialize)]
struct CanRow {
    number: String,
    dimensions: String,
}

struct Numbers {
    words: BTreeMap<String, NumberWord>,
    signs: BTreeMap<char, Amount>,
}

static UNITS: LazyLock<BTreeMap<String, UnitWord>> = LazyLock::new(|| {
    rows("units.csv", kitchen::UNITS)
        .map(|row: UnitRow| (row.word, unit_word(&row.kind, &row.unit)))
        .collect()
});

static NUMBERS: LazyLock<Numbers> = LazyLock::new(|| {
    let mut numbers = Numbers {
        words: BTreeMap::new(),
        signs: BTreeMap::new(),
    };
    for row in rows::<NumberRow>("numbers.csv", kitchen::NUMBERS) {
        let value = Amount::fraction(row.numerator.into(), row.denominator.into())
            .expect("numbers.csv: denominators above zero");
        let meaning = match row.kind.as_str() {
            "article" => NumberWord::Article,
            "number" => NumberWord::Number(value),
            "part" => NumberWord::Part(value),
            "times" => NumberWord::Times(value),
            "sign" => {
                let sign = row.word.chars().next();
                numbers.signs.extend(sign.map(|sign| (sign, value)));
                continue;
            }
            kind => panic!("numbers.csv: \"{kind}\" is no kind of number"),
        };
        numbers.words.insert(row.word, meaning);
    }
    numbers
});

static VAGUE: LazyLock<BTreeMap<String, VagueKind>> = LazyLock::new(|| {
    rows("vague.csv", kitchen::VAGUE)
        .map(|row: VagueRow| (row.words, row.kind))
        .collect()
});

static CANS: LazyLock<BTreeMap<String, String>> = LazyLock::new(|| {
    rows("cans.csv", kitchen::CANS)
        .map(|row: CanRow| (row.number, row.dimensions))
        .collect()
});

/// Rows of a table that is compiled in. A fault in it is a mistake of the
/// program, found by every test that reads an amount.
fn rows<T: DeserializeOwned>(table: &str, text: &str) -> impl Iterator<Item = T> {
    tables::read(table, text)
        .unwrap_or_else(|fault| panic!("{fault}"))
        .into_iter()
        .map(|row| row.row)
}

fn unit_word(kind: &str, unit: &str) -> UnitWord {
    match kind {
        "mass" => UnitWord::Mass(named(unit)),
        "volume" => UnitWord::Volume(named(unit)),
        "size" => UnitWord::Size(named(unit)),
        "container" => UnitWord::Container(unit.to_owned()),
        "piece" => UnitWord::Piece(unit.to_owned()),
        "part" => UnitWord::Part(unit.to_owned()),
        _ => panic!("units.csv: \"{kind}\" is no kind of unit"),
    }
}

/// The unit of a name, as the unit itself is written to the page.
fn named<'de, T: Deserialize<'de>>(name: &'de str) -> T {
    let name: StrDeserializer<'de, Error> = name.into_deserializer();
    T::deserialize(name).unwrap_or_else(|fault| panic!("units.csv: {fault}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spoons_differ_by_case() {
        assert_eq!(unit("T"), Some(UnitWord::Volume(VolumeUnit::Tablespoon)));
        assert_eq!(unit("t"), Some(UnitWord::Volume(VolumeUnit::Teaspoon)));
        assert_eq!(unit("TBSP"), Some(UnitWord::Volume(VolumeUnit::Tablespoon)));
        assert_eq!(unit("C"), Some(UnitWord::Volume(VolumeUnit::Cup)));
    }

    #[test]
    fn plurals() {
        for (plural, one) in [
            ("berries", "berry"),
            ("tomatoes", "tomato"),
            ("radishes", "radish"),
            ("carrots", "carrot"),
            ("leaves", "leaf"),
            ("pinches", "pinch"),
            ("couscous", "couscous"),
            ("glass", "glass"),
        ] {
            assert_eq!(singular(plural), one);
        }
    }

    #[test]
    fn no_phrase_is_longer_than_what_is_looked_up() {
        let longest = |table: &str| {
            table
                .lines()
                .map(|line| line.split(',').next().unwrap_or("").split(' ').count())
                .max()
        };
        assert!(longest(kitchen::UNITS) <= Some(LONGEST_PHRASE));
        assert!(longest(kitchen::VAGUE) <= Some(LONGEST_PHRASE));
    }
}
