//! Which temperatures a dish calls for.
//!
//! Sources: USDA FSIS minimum internal temperatures; FDA Food Code 3-401.11,
//! 3-501.14, 3-501.16 (each row of the table says how sure its figure is).

use engine::foods::{FoodId, FoodTable};
use engine::kitchen::{FoodSafety, Guidance, Held, Step};
use rust_decimal::Decimal;

/// The temperatures that foods are cooked to, by one set of rows.
fn cooking(numbers: &[u32], guidance: Guidance, held: Option<Held>) -> Vec<Decimal> {
    let foods = FoodTable::from_asset(&nutrient_data::asset::committed().0).unwrap();
    let safety = FoodSafety::from_csv(nutrient_data::rules::FOOD_SAFETY).unwrap();
    let foods: Vec<_> = numbers
        .iter()
        .map(|&number| foods.food(FoodId::Sr28(number)).unwrap())
        .collect();
    safety
        .steps_for(&foods, held)
        .into_iter()
        .filter(|row| row.guidance == guidance && row.step == Step::Cook)
        .filter(|row| !row.what.starts_with("leftovers"))
        .map(|row| row.fahrenheit)
        .collect()
}

fn hottest(numbers: &[u32], guidance: Guidance) -> Option<Decimal> {
    cooking(numbers, guidance, None).first().copied()
}

/// A cook must not read 145 °F, for intact meat, where ground meat is cooked.
#[test]
fn each_food_has_its_most_demanding_row_alone() {
    let (ground_beef, salmon, carrots) = (23572, 15076, 11124);
    for (foods, cooked_to) in [
        (&[ground_beef][..], &[155][..]),
        (&[ground_beef, carrots], &[155, 135]),
        (&[ground_beef, salmon], &[155, 145]),
    ] {
        let cooked_to: Vec<Decimal> = cooked_to.iter().map(|own| Decimal::from(*own)).collect();
        assert_eq!(
            cooking(foods, Guidance::FoodCode, None),
            cooked_to,
            "{foods:?}"
        );
    }
}

/// Food Code 3-401.13 speaks of plant food that is cooked for hot holding.
#[test]
fn what_is_held_cold_is_not_cooked_for_hot_holding() {
    let carrots = [11124];
    for (held, count) in [(None, 1), (Some(Held::Hot), 1), (Some(Held::Cold), 0)] {
        assert_eq!(
            cooking(&carrots, Guidance::FoodCode, held).len(),
            count,
            "{held:?}"
        );
    }
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
    let steps = safety.steps_for(&[], None);
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
