//! Values that other values of the same food lead one to expect.
//!
//! Some columns of the dataset were computed from others: carbohydrate by difference, energy by
//! factors, folate from its two forms. The file holds how far a value is from the expected one,
//! which mostly is zero; so a wrong expectation costs room and never a digit.
//!
//! | nutrient | expected, in its last digit |
//! |---|---|
//! | 205 carbohydrate, by difference | 100 g less water, protein, fat, ash and alcohol |
//! | 208 energy | protein, fat and carbohydrate by the food's own factors, or 4, 9 and 4 kcal/g, and 6.93 kcal per gram of alcohol |
//! | 324 vitamin D in IU | 40 IU per µg |
//! | 417 folate, total | folic acid and food folate |
//! | 435 folate, DFE | 1.7 times folic acid, and food folate |
//!
//! The rules are those of the release's documentation (SR28, sections on the nutrients named);
//! 6.93 kcal per gram of alcohol is its factor too.

use super::{FoodRow, MISSING, Scaled, ValueColumn};

/// The columns with an expectation and what they are expected from; a column that is itself
/// expected stands before those that it leads to.
const RULES: [(u16, &[u16]); 5] = [
    (205, &[255, 203, 204, 207, 221]),
    (208, &[203, 204, 205, 221]),
    (324, &[328]),
    (417, &[431, 432]),
    (435, &[431, 432]),
];

/// Widest distance that is written: far more than any column spans.
const FARTHEST: i64 = 1_000_000_000;

/// How far the values of a column are from the expected ones; nothing for columns without an
/// expectation, and for values too far from it.
pub(super) fn distances(
    column: &ValueColumn,
    columns: &[ValueColumn],
    foods: &[FoodRow],
) -> Option<Vec<i32>> {
    let rule = RULES
        .iter()
        .find(|(nutrient, _)| *nutrient == column.nutrient)?;
    let expected = expected(rule, columns, foods);
    let pairs = column.mantissas.iter().zip(expected);
    let distance = |(value, expected): (&i32, i64)| match *value {
        MISSING => Some(MISSING),
        value => {
            let distance = i64::from(value) - expected;
            (distance.abs() <= FARTHEST).then_some(distance as i32)
        }
    };
    pairs.map(distance).collect()
}

/// Turns the columns at `places` from distances into values; `None` if a value is out of range.
pub(super) fn resolve(
    columns: &mut [ValueColumn],
    places: &[usize],
    foods: &[FoodRow],
) -> Option<()> {
    for rule in &RULES {
        let is_it = |place: &&usize| columns[**place].nutrient == rule.0;
        let Some(&place) = places.iter().find(is_it) else {
            continue;
        };
        let expected = expected(rule, columns, foods);
        for (value, expected) in columns[place].mantissas.iter_mut().zip(expected) {
            if *value != MISSING {
                *value = i32::try_from(expected + i64::from(*value)).ok()?;
            }
        }
    }
    Some(())
}

/// The expected values, in the last digit of their column. What is missing counts as nothing here.
fn expected(
    (nutrient, from): &(u16, &[u16]),
    columns: &[ValueColumn],
    foods: &[FoodRow],
) -> Vec<i64> {
    let column = |number: &u16| columns.iter().find(|column| column.nutrient == *number);
    let sources: Vec<Option<&ValueColumn>> = from.iter().map(column).collect();
    let mut values = vec![0; sources.len()];
    let rows = foods.iter().enumerate().map(|(row, food)| {
        for (value, source) in values.iter_mut().zip(&sources) {
            let there = source.map_or(MISSING, |column| column.mantissas[row]);
            *value = if there == MISSING { 0 } else { there.into() };
        }
        expected_value(*nutrient, food, &values)
    });
    rows.collect()
}

fn expected_value(nutrient: u16, food: &FoodRow, from: &[i64]) -> i64 {
    match (nutrient, from) {
        (205, [water, protein, fat, ash, alcohol]) => {
            10_000 - water - protein - fat - ash - 10 * alcohol
        }
        (208, [protein, fat, carbohydrate, alcohol]) => {
            // Hundredths of a gram by ten thousandths of a kilocalorie.
            let energy = factor(food.protein_factor, 4) * protein
                + factor(food.fat_factor, 9) * fat
                + factor(food.carbohydrate_factor, 4) * carbohydrate
                + 693_000 * alcohol;
            half_up(energy, 1_000_000)
        }
        (324, [micrograms]) => 4 * micrograms,
        (417, [folic_acid, food_folate]) => folic_acid + food_folate,
        (435, [folic_acid, food_folate]) => half_up(17 * folic_acid + 10 * food_folate, 10),
        _ => 0,
    }
}

/// A food's energy factor in ten thousandths of a kilocalorie per gram, or the usual one.
fn factor(own: Option<Scaled>, usual: i64) -> i64 {
    let fine = |own: Scaled| {
        let finer = 4_u32.checked_sub(own.scale.into())?;
        Some(i64::from(own.mantissa) * 10_i64.pow(finer))
    };
    own.and_then(fine).unwrap_or(usual * 10_000)
}

fn half_up(sum: i64, by: i64) -> i64 {
    (sum + by / 2).div_euclid(by)
}
