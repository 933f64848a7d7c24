//! The demo book of the page, and a second reading of its lines.

use crate::sql::{CountedIn, Fraction, PeerLine};
use engine::book::Book;
use serde::Deserialize;
use std::collections::BTreeMap;

/// The book as committed.
///
/// # Panics
/// When it is not in the book's form.
pub fn book() -> Book {
    let book: Book = serde_json::from_str(include_str!("../../web/demo/book.json"))
        .expect("web/demo/book.json in the form of a book");
    book.check().unwrap_or_else(|error| panic!("{error}"));
    book
}

#[derive(Deserialize)]
struct Row {
    recipe: String,
    line: usize,
    food: Option<u32>,
    count: String,
    counted_in: String,
}

/// Each recipe's lines as a person reads them, with the release's
/// descriptions and measures at hand (`data/demo_lines.csv`).
pub fn lines_read_by_hand() -> BTreeMap<String, Vec<PeerLine>> {
    let mut recipes: BTreeMap<String, Vec<PeerLine>> = BTreeMap::new();
    let mut reader = csv::Reader::from_reader(include_str!("../data/demo_lines.csv").as_bytes());
    for row in reader.deserialize() {
        let row: Row = row.expect("a row of demo_lines.csv");
        let lines = recipes.entry(row.recipe).or_default();
        lines.push(PeerLine {
            food: row.food,
            amount: amount(&row.count, &row.counted_in),
        });
        assert_eq!(
            lines.len(),
            row.line,
            "demo_lines.csv: lines are out of order"
        );
    }
    recipes
}

/// Nothing for a line that says how much only vaguely.
fn amount(count: &str, counted_in: &str) -> Option<(Fraction, CountedIn)> {
    let counted_in = match counted_in.split_once(' ') {
        Some(("measure", seq)) => CountedIn::Measure(seq.parse().expect("a measure's number")),
        _ => match counted_in {
            "" => return None,
            "lb" => CountedIn::Mass("lb"),
            "oz" => CountedIn::Mass("oz"),
            other => panic!("demo_lines.csv: \"{other}\" is no unit: write lb, oz or measure 2"),
        },
    };
    let (numerator, denominator) = count.split_once('/').unwrap_or((count, "1"));
    let whole = |digits: &str| digits.parse().expect("a whole number");
    let fraction = Fraction {
        numerator: whole(numerator),
        denominator: whole(denominator),
    };
    Some((fraction, counted_in))
}
