//! The reasons of a proposal, in words. What the figures and the weeks beside
//! them say already is not said again.

use super::moved::{digits, unit};
use super::words;
use crate::format;
use crate::named;
use engine::exact::Digits;
use engine::foods::{FoodTable, NutrientId};
use engine::swaps::Reason;
use rust_decimal::Decimal;

/// The reasons, in their order.
pub fn told(foods: &FoodTable, reasons: &[Reason]) -> Vec<String> {
    reasons.iter().map(|reason| tell(foods, reason)).collect()
}

fn tell(foods: &FoodTable, reason: &Reason) -> String {
    match reason {
        Reason::Moves {
            nutrient,
            change,
            wanted,
            ..
        } => {
            let (name, change, unit) = parts_of_move(foods, *nutrient, *change);
            words::moves(&name, &change, unit, *wanted)
        }
        Reason::MovesAtLeast {
            nutrient,
            change,
            wanted,
            ..
        } => {
            let (name, change, unit) = parts_of_move(foods, *nutrient, *change);
            words::moves_at_least(&name, &change, unit, *wanted)
        }
        Reason::Unknown { nutrient, .. } => words::not_counted(&words::nutrient(foods, *nutrient)),
        Reason::Cost { change } => words::cost(*change),
        Reason::CostUnknown => words::COST_UNKNOWN.to_string(),
        Reason::SamePart { part } => words::same_part(part),
        Reason::OtherPart { old, new } => words::other_part(old, new),
        Reason::SameFood => words::SAME_FOOD.to_string(),
        Reason::UsualFood => words::USUAL_FOOD.to_string(),
        Reason::Amount {
            by,
            by_weight_instead,
        } => words::amount(*by, *by_weight_instead),
        Reason::Credit {
            component,
            before,
            after,
        } => words::credit(
            *component,
            &format::eighths(*before),
            &format::eighths(*after),
        ),
        Reason::Energy { change } => words::energy(&format::signed(*change, Digits(0))),
        Reason::EnergyNotCounted => words::ENERGY_NOT_COUNTED.to_string(),
        Reason::NoAllergenAdded => words::NO_ALLERGEN.to_string(),
        Reason::AllergensGone { allergens } => {
            let names: Vec<String> = allergens
                .iter()
                .map(|one| named::allergen(*one).to_string())
                .collect();
            words::allergens_gone(&names.join(", "))
        }
        Reason::Effect {
            words,
            source,
            status,
        } => super::words::effect(words, source, status),
    }
}

/// The nutrient, by how much it moves, and in which unit.
fn parts_of_move(
    foods: &FoodTable,
    nutrient: NutrientId,
    change: Decimal,
) -> (String, String, &str) {
    (
        words::nutrient(foods, nutrient),
        format::signed(change, digits(foods, nutrient)),
        unit(foods, nutrient),
    )
}
