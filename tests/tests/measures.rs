//! Sizes of units against NIST Special Publication 811 and NIST Handbook 44.
//!
//! The publications were not at hand: the exact sizes are those that GNU Units
//! 2.22 computes from its definitions, which name both publications as their
//! sources; the seven published digits are values from memory.

use engine::exact::{Digits, round_half_up};
use engine::units::{Amount, Quantity, Unit};
use rust_decimal::Decimal;

#[derive(serde::Deserialize)]
struct Size {
    word: String,
    kind: String,
    exact: Decimal,
    published: Decimal,
    source: String,
}

#[derive(serde::Deserialize)]
struct Ratio {
    one: String,
    many: u32,
    of: String,
    source: String,
}

fn rows<T: serde::de::DeserializeOwned>(text: &str) -> Vec<T> {
    csv::Reader::from_reader(text.as_bytes())
        .deserialize()
        .collect::<Result<_, _>>()
        .expect("the table has the columns of its rows")
}

fn unit(word: &str) -> Unit {
    let one: Quantity = format!("1 {word}").parse().expect("one of a unit");
    one.unit
}

#[test]
fn units_have_their_published_sizes() {
    for row in rows::<Size>(include_str!("measures.csv")) {
        let (kind, size) = match unit(&row.word) {
            Unit::Mass(unit) => ("g", unit.grams().grams()),
            Unit::Volume(unit) => ("mL", unit.millilitres().millilitres()),
            Unit::Count(_) => panic!("{} is a count", row.word),
        };
        assert_eq!(
            (kind, size),
            (row.kind.as_str(), row.exact),
            "{}",
            row.source
        );
        let places = Digits(row.published.scale());
        assert_eq!(
            round_half_up(size, places),
            row.published,
            "{}: {}",
            row.word,
            row.source
        );
    }
}

#[test]
fn units_are_whole_multiples_of_each_other() {
    for row in rows::<Ratio>(include_str!("measure_ratios.csv")) {
        assert_eq!(
            unit(&row.one).ratio_to(&unit(&row.of)),
            Some(Amount::whole(row.many)),
            "{} in {}: {}",
            row.of,
            row.one,
            row.source
        );
    }
}

/// 231 cubic inches of exactly 2.54 cm (NIST Handbook 44, App. C).
#[test]
fn the_gallon_is_231_cubic_inches() {
    let inch: Decimal = "2.54".parse().expect("centimetres");
    let Unit::Volume(gallon) = unit("gallon") else {
        panic!("a gallon is a volume")
    };
    assert_eq!(
        gallon.millilitres().millilitres(),
        Decimal::from(231) * inch * inch * inch
    );
}
