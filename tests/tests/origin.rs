//! Where a figure comes from, against the published release.
//!
//! Source of values, data points, standard errors and codes: USDA National
//! Nutrient Database for Standard Reference, Release 28, files NUT_DATA,
//! SRC_CD, DERIV_CD and FOOTNOTE; the amounts are worked out by hand.

use engine::book::Book;
use engine::foods::NutrientId;
use engine::reference::{FigureOrigin, RecipeStudy};
use engine::uncertainty::Origin;
use gramwright_tests::fixtures::reference;
use rust_decimal::Decimal;
use serde_json::json;

fn study() -> RecipeStudy {
    let line = |text: &str, food: &str| json!({ "text": text, "correction": { "food": food } });
    let mut book = Book::empty("Test");
    let recipe = json!({ "id": "r", "title": "R", "servings": "10", "lines": [
        line("1000 g ground beef, 90% lean, raw", "SR28:23562"),
        line("200 g onions", "SR28:11282"),
        line("20 g salt", "SR28:02047"),
        line("10 g chili powder", "SR28:02009"),
        line("onions, some", "SR28:11282"),
    ] });
    book.recipes
        .push(serde_json::from_value(recipe).expect("the form of a recipe"));
    reference().study_recipe(&book, &book.recipes[0])
}

fn sodium() -> FigureOrigin {
    reference()
        .figure_origin(&study(), NutrientId::SODIUM)
        .expect("the recipe has totals")
}

fn dec(text: &str) -> Decimal {
    text.parse().expect("a decimal in a test table")
}

/// Per line: mg per 100 g, mg in the recipe, data points, standard error, kind
/// of source, derivation.
type Row = (
    &'static str,
    &'static str,
    u16,
    Option<&'static str>,
    &'static str,
    Option<&'static str>,
);

const SODIUM: [Row; 3] = [
    (
        "66",
        "660",
        36,
        Some("1.070"),
        "Analytical or derived from analytical",
        Some("Analytical data; derived by linear regression"),
    ),
    (
        "4",
        "8",
        81,
        Some("0.158"),
        "Aggregated data involving combinations of source codes 1 &12",
        None,
    ),
    (
        "38758",
        "7751.6",
        1,
        None,
        "Analytical or derived from analytical",
        None,
    ),
];

#[test]
fn every_line_tells_its_value_and_what_stands_behind_it() {
    let origin = sodium();
    for (part, row) in origin.parts.iter().zip(SODIUM) {
        let (value, amount, points, error, kind, derivation) = row;
        assert_eq!(part.per_100_g, Some(dec(value)));
        assert_eq!(part.amount, Some(dec(amount)));
        let source = part.source.as_ref().expect("the release says");
        assert_eq!(source.data_points, points);
        assert_eq!(source.standard_error, error.map(dec));
        assert_eq!(source.source.as_deref(), Some(kind));
        if let Some(derivation) = derivation {
            assert_eq!(source.derivation.as_deref(), Some(derivation));
        }
    }
    assert_eq!(
        origin.parts[3].footnotes,
        ["Mix of chili pepper, other spices and salt"]
    );
}

#[test]
fn the_parts_add_up_to_the_serving() {
    let origin = sodium();
    let sum: Decimal = origin.parts.iter().filter_map(|part| part.amount).sum();
    assert_eq!(origin.total.known, sum);
    assert_eq!(origin.serving.amount.known * dec("10"), sum);
}

#[test]
fn an_assumed_error_says_so_and_an_unknown_weight_gives_no_amount() {
    let origin = sodium();
    let kinds: Vec<Option<Origin>> = origin
        .parts
        .iter()
        .map(|part| part.error.map(|error| error.origin))
        .collect();
    assert_eq!(kinds[0], Some(Origin::Dataset));
    assert!(
        kinds[2].is_some_and(Origin::is_assumed),
        "salt has no error of its own"
    );
    let some = origin.parts.last().expect("the last line");
    assert_eq!(some.amount, None, "some onions have no weight");
    assert_eq!(some.per_100_g, Some(dec("4")), "and still a value");
    assert_eq!(origin.serving.amount.unweighed, 1);
}

#[test]
fn the_interval_is_twice_the_standard_uncertainty() {
    // JCGM 100:2008, 6.3.3: coverage factor 2.
    let uncertainty = sodium().serving.uncertainty.expect("evidence is loaded");
    assert_eq!(
        uncertainty.expanded(),
        uncertainty.standard + uncertainty.standard
    );
}
