//! Every figure of the label at the edges of its bands, at each kind of step's
//! middle, and along the whole scale.
//!
//! Cases: 21 CFR 101.9 as each row of `label_rounding_cases.csv` cites it. That
//! a figure in the middle of two steps goes up is common practice, no source.

use engine::foods::NutrientId;
use engine::label::{Bands, DailyValueKind, LabelTables, LabelTexts};
use rust_decimal::Decimal;

fn tables() -> LabelTables {
    LabelTables::new(&LabelTexts::committed()).unwrap()
}

/// The figure that a test table names, with its unit.
fn figure<'a>(tables: &'a LabelTables, name: &str) -> (&'a Bands, &'a str) {
    match name {
        "percent of RDI" => (tables.percents(DailyValueKind::ReferenceDailyIntake), "%"),
        "percent of DRV" => (tables.percents(DailyValueKind::DailyReferenceValue), "%"),
        "servings per container" => (tables.servings_per_container(), ""),
        "serving weight" => (tables.serving_weight(), "g"),
        number => {
            let row = tables
                .nutrient(NutrientId(number.parse().expect("a figure")))
                .expect("a nutrient of the label");
            (&row.amounts, row.unit.as_str())
        }
    }
}

fn names(figures: &str) -> Vec<&str> {
    match figures.starts_with(|first: char| first.is_ascii_digit()) {
        true => figures.split(' ').collect(),
        false => vec![figures],
    }
}

#[test]
fn edges_and_middles() {
    let tables = tables();
    let mut reader = csv::Reader::from_reader(include_str!("label_rounding_cases.csv").as_bytes());
    let mut seen = Vec::new();
    for record in reader.records() {
        let record = record.unwrap();
        let exact: Decimal = record[1].parse().unwrap();
        for name in names(&record[0]) {
            let (bands, unit) = figure(&tables, name);
            assert_eq!(
                bands.print(exact).with_unit(unit),
                &record[2],
                "{exact} of {name}: {}",
                &record[3]
            );
            seen.push(name.to_owned());
        }
    }
    let untested: Vec<_> = tables
        .nutrients()
        .filter(|row| !seen.contains(&row.nutrient.0.to_string()))
        .collect();
    assert!(untested.is_empty(), "{untested:?}");
}

/// The regulation once more in whole thousandths, without the table and
/// without decimals.
fn in_thousandths(name: &str, value: i64) -> String {
    let to = |step: i64| (value + step / 2) / step * step;
    let number = |thousandths: i64| {
        let text = format!("{}.{:03}", thousandths / 1000, thousandths % 1000);
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    };
    match name {
        "208" if value < 5_000 => "0".into(),
        "208" if value <= 50_000 => number(to(5_000)),
        "208" => number(to(10_000)),
        "204" | "605" | "606" | "645" | "646" => match value {
            ..500 => "0".into(),
            500..5_000 => number(to(500)),
            _ => number(to(1_000)),
        },
        "601" => match value {
            ..2_000 => "0".into(),
            2_000..=5_000 => "less than 5 mg".into(),
            _ => number(to(5_000)),
        },
        "307" => match value {
            ..5_000 => "0".into(),
            5_000..=140_000 => number(to(5_000)),
            _ => number(to(10_000)),
        },
        "203" | "205" | "269" | "291" | "539" => match value {
            ..500 => "0".into(),
            500..1_000 => "less than 1 g".into(),
            _ => number(to(1_000)),
        },
        "percent of RDI" => match value {
            ..2_000 => "0".into(),
            2_000..=10_000 => number(to(2_000)),
            10_001..=50_000 => number(to(5_000)),
            _ => number(to(10_000)),
        },
        "401" | "317" | "430" | "percent of DRV" => number(to(1_000)),
        "301" | "304" | "305" | "306" | "320" | "421" | "435" => number(to(10_000)),
        _ => number(to(100)),
    }
}

#[test]
fn along_the_whole_scale() {
    // Every thousandth at first, then every fifth: all edges and middles lie
    // on these.
    let scale: Vec<i64> = (0..12_000).chain((12_000..=160_000).step_by(5)).collect();
    let tables = tables();
    let numbers: Vec<String> = tables
        .nutrients()
        .map(|row| row.nutrient.0.to_string())
        .collect();
    let percents = ["percent of RDI", "percent of DRV"].map(str::to_owned);
    for name in numbers.iter().chain(&percents) {
        let (bands, _) = figure(&tables, name);
        for &value in &scale {
            let printed = bands.print(Decimal::new(value, 3)).with_unit("");
            assert_eq!(
                printed,
                in_thousandths(name, value),
                "{value} thousandths of {name}"
            );
        }
    }
}

/// A bound is on the label's scale, never above the figure, and never says
/// more than the figure itself would.
#[test]
fn a_bound_is_reached() {
    let tables = tables();
    for row in tables.nutrients() {
        for value in (0..=160_000).step_by(37) {
            let value = Decimal::new(value, 3);
            if let Some(bound) = row.amounts.surely_reached(value) {
                assert!(
                    bound > Decimal::ZERO && bound <= value,
                    "{bound} of {value}"
                );
            }
        }
    }
}

#[test]
fn the_noise_of_a_division_does_not_move_a_figure() {
    let tables = tables();
    // Each value comes back from a division by seven or three a little off, to
    // the wrong side of a middle or an edge.
    for (figure_name, value, divisor, printed) in [
        ("208", "7.5", "7", "10"),
        ("307", "7.5", "9", "10 mg"),
        ("601", "5", "3", "less than 5 mg"),
        ("601", "2", "7", "less than 5 mg"),
        ("204", "0.5", "7", "0.5 g"),
        ("205", "0.5", "6", "less than 1 g"),
    ] {
        let (bands, unit) = figure(&tables, figure_name);
        let value: Decimal = value.parse().unwrap();
        let divisor: Decimal = divisor.parse().unwrap();
        let noisy = value / divisor * divisor;
        assert_ne!(noisy, value, "not a noisy division");
        assert_eq!(bands.print(noisy).with_unit(unit), printed);
    }
}
