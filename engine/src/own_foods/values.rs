//! From what a source says to values per 100 g with their intervals.

use super::{Declared, ImportError, OwnFood, OwnSource, Stated};
use crate::exact::rounding::guarded;
use crate::foods::{Food, FoodGroup, FoodId, Measure, OwnEntry, OwnValue};
use crate::label::LabelTables;
use crate::units::Grams;
use rust_decimal::Decimal;

/// Own foods belong to none of the dataset's groups.
const NO_GROUP: FoodGroup = FoodGroup(0);

/// The food as the table of foods holds it.
///
/// # Errors
/// When a weight is not above zero, a measure has no words, or a label's figure
/// is none that the law's rounding can print.
pub fn entry(food: &OwnFood, label: &LabelTables) -> Result<OwnEntry, ImportError> {
    let values = match &food.source {
        OwnSource::Label {
            serving, declared, ..
        } => label_values(food, *serving, declared, label)?,
        OwnSource::Values { per, values, .. } => stated_values(food, *per, values)?,
    };
    check_measures(food)?;
    Ok(OwnEntry {
        food: Food {
            id: FoodId::Own(food.number),
            group: NO_GROUP,
            description: food.description.clone(),
            common_names: food.ingredients.clone(),
            manufacturer: String::new(),
            refuse_percent: None,
            refuse_description: String::new(),
        },
        measures: (1..=u16::MAX)
            .zip(&food.measures)
            .map(|(number, measure)| Measure {
                number,
                amount: measure.amount,
                words: measure.words.clone(),
                grams: measure.grams,
            })
            .collect(),
        values,
    })
}

/// A measure that weighs nothing would make lines weigh nothing.
fn check_measures(food: &OwnFood) -> Result<(), ImportError> {
    for (measure, number) in food.measures.iter().zip(1..) {
        let problem = if measure.words.trim().is_empty() {
            ("it has no words", "name it, as in \"cup\" or \"patty\"")
        } else if measure.amount <= Decimal::ZERO {
            (
                "its amount is zero or less",
                "enter 1, or as many as were weighed",
            )
        } else if measure.grams <= Grams::ZERO {
            (
                "its weight is missing or zero",
                "weigh it, and enter the grams",
            )
        } else {
            continue;
        };
        let place = format!("{}, household measure {number}", food.description);
        return Err(ImportError::new(place, problem.0, problem.1));
    }
    Ok(())
}

fn stated_values(
    food: &OwnFood,
    per: Grams,
    values: &[Stated],
) -> Result<Vec<OwnValue>, ImportError> {
    let to_100_g = factor(food, per)?;
    Ok(values
        .iter()
        .map(|value| {
            let per_100_g = guarded(value.amount * to_100_g);
            OwnValue {
                nutrient: value.nutrient,
                per_100_g,
                low: per_100_g,
                high: per_100_g,
            }
        })
        .collect())
}

/// A label's figure stands for all amounts that print as it. The value is the
/// printed number; for words such as "less than 1" the middle of what they
/// allow.
fn label_values(
    food: &OwnFood,
    serving: Grams,
    declared: &[Declared],
    label: &LabelTables,
) -> Result<Vec<OwnValue>, ImportError> {
    let to_100_g = factor(food, serving)?;
    declared
        .iter()
        .map(|figure| {
            let row = label.nutrient(figure.nutrient).ok_or_else(|| {
                ImportError::new(
                    format!("{}, nutrient {}", food.description, figure.nutrient.0),
                    "a Nutrition Facts panel has no row for it",
                    "enter it as a specification value instead",
                )
            })?;
            let (low, high) = row.amounts.interval(&figure.printed).ok_or_else(|| {
                ImportError::new(
                    format!("{}, {}", food.description, row.name),
                    format!(
                        "\"{}\" is no figure that the law's rounding prints for {}",
                        figure.printed, row.in_text
                    ),
                    "read the package again, or enter it as a specification value",
                )
            })?;
            let value = figure
                .printed
                .trim()
                .parse()
                .unwrap_or((low + high) / Decimal::TWO);
            Ok(OwnValue {
                nutrient: figure.nutrient,
                per_100_g: guarded(value * to_100_g),
                low: guarded(low * to_100_g),
                high: guarded(high * to_100_g),
            })
        })
        .collect()
}

fn factor(food: &OwnFood, per: Grams) -> Result<Decimal, ImportError> {
    if per <= Grams::ZERO {
        return Err(ImportError::new(
            &food.description,
            "the weight that its values are for is zero or less",
            "enter the weight of the serving in grams, as the package states it",
        ));
    }
    Ok(Decimal::ONE_HUNDRED / per.grams())
}
