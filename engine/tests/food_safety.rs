//! Which temperatures a dish calls for.
//!
//! Sources: USDA FSIS minimum internal temperatures; FDA Food Code 3-401.11,
//! 3-501.14, 3-501.16 (each row of the table says how sure its figure is).

use engine::foods::{FoodId, FoodTable};
use engine::kitchen::{FoodSafety, Guidance, Step};
use rust_decimal::Decimal;

fn hottest(numbers: &[u32], guidance: Guidance) -> Option<Decimal> {
    let foods = FoodTable::from_asset(&nutrient_data::asset::committed().0).unwrap();
    let safety = FoodSafety::from_csv(nutrient_data::rules::FOOD_SAFETY).unwrap();
    let foods: Vec<_> = numbers
        .iter()
        .map(|&number| foods.food(FoodId::Sr28(number)).unwrap())
        .collect();
    safety
        .steps_for(&foods)
        .into_iter()
        .filter(|row| row.guidance == guidance && row.step == Step::Cook)
        .find(|row| !row.what.starts_with("leftovers"))
        .map(|row| row.fahrenheit)
}

#[test]
fn the_most_demanding_food_comes_first() {
    for (foods, consumer, code) in [
        (&[5062][..], Some(165), Some(165)), // chicken breast
        (&[23572], Some(160), Some(155)),    // ground beef
        (&[23572, 5062], Some(165), Some(165)),
        (&[1123], Some(160), Some(155)),  // egg
        (&[15076], Some(145), Some(145)), // salmon
        (&[11124], None, Some(135)),      // carrots
    ] {
        assert_eq!(
            hottest(foods, Guidance::Consumer),
            consumer.map(Decimal::from),
            "{foods:?}"
        );
        assert_eq!(
            hottest(foods, Guidance::FoodCode),
            code.map(Decimal::from),
            "{foods:?}"
        );
    }
}

#[test]
fn the_general_rows_always_come_along() {
    let safety = FoodSafety::from_csv(nutrient_data::rules::FOOD_SAFETY).unwrap();
    let steps = safety.steps_for(&[]);
    for step in [Step::Hold, Step::Cool, Step::Reheat, Step::Date] {
        assert!(steps.iter().any(|row| row.step == step), "{step:?}");
    }
}

#[test]
fn a_temperature_that_was_mistyped_is_refused() {
    let text = nutrient_data::rules::FOOD_SAFETY.replacen("73.9,165", "79.3,165", 1);
    let error = FoodSafety::from_csv(&text).unwrap_err();
    assert!(
        error.line == 2 && error.to_string().contains("73.9"),
        "{error}"
    );
}
