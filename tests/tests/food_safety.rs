//! The table of temperatures against a second typing of the same publications:
//! USDA FSIS minimum internal temperatures and the FDA Food Code, sections
//! 3-401.11, 3-401.13, 3-403.11, 3-501.14, 3-501.16 and 3-501.17. Each row says
//! whether its figure was read in a copy or is from memory.

use engine::kitchen::{FoodSafety, Guidance, SafetyStep};
use engine::tables;
use serde::Deserialize;

#[derive(Deserialize)]
struct Typed {
    rule: String,
    figure: String,
    status: String,
    citation: String,
}

fn rule(row: &SafetyStep) -> String {
    let guidance = match row.guidance {
        Guidance::Consumer => "consumer",
        Guidance::FoodCode => "food code",
    };
    format!("{guidance} {:?} {}", row.step, row.what).to_lowercase()
}

fn figure(row: &SafetyStep) -> String {
    match row.duration.as_str() {
        "" => format!("{} F", row.fahrenheit),
        duration => format!("{} F; {duration}", row.fahrenheit),
    }
}

#[test]
fn every_row_was_typed_twice_alike() {
    let table = FoodSafety::from_csv(nutrient_data::rules::FOOD_SAFETY).unwrap();
    let typed =
        tables::read::<Typed>("food_safety", include_str!("../data/food_safety.csv")).unwrap();
    assert_eq!(
        table.rows().len(),
        typed.len(),
        "a row is missing on one side"
    );
    for typed in typed.into_iter().map(|row| row.row) {
        let rows: Vec<_> = table
            .rows()
            .iter()
            .filter(|row| rule(row).starts_with(&typed.rule.to_lowercase()))
            .collect();
        let [row] = rows[..] else {
            panic!("\"{}\" is {} rows of the table", typed.rule, rows.len());
        };
        assert_eq!(figure(row), typed.figure, "{}", typed.rule);
        assert_eq!(row.status, typed.status, "{}", typed.rule);
        assert!(typed.citation.starts_with(&row.paragraph), "{}", typed.rule);
    }
}
