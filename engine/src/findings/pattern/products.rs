//! Added sugars of single products.
//!
//! The dataset has no added sugars; a food of the office's own may have them
//! from its label. They cannot exceed the total sugars: a product whose total
//! sugars keep the limit keeps it, and for any other the label must be asked.

use super::setting::Setting;
use super::{CitedLimit, PatternCarrier, PatternFinding};
use crate::components::unit_weight;
use crate::exact::Bounds;
use crate::foods::{FoodId, NutrientId};
use crate::rules::{Bound, WeekRule};
use crate::units::MassUnit;
use rust_decimal::Decimal;

/// The added sugars of the product that may have most. Nothing when the week
/// offers no such product.
pub(super) fn added_sugars(setting: &Setting<'_>, rule: &WeekRule) -> Option<PatternFinding> {
    let mut carriers: Vec<PatternCarrier> = Vec::new();
    for (date, meal) in setting.meals(None) {
        for (choice, credits) in setting.offered(meal) {
            for line in &credits.lines {
                let marks = line.parts.iter().flat_map(|part| &part.marks);
                if marks.clone().any(|mark| rule.marks.contains(mark)) {
                    carriers.push(PatternCarrier {
                        date,
                        recipe: choice.recipe.clone(),
                        amount: sugars(setting, rule, line.food),
                    });
                }
            }
        }
    }
    let figure = carriers
        .iter()
        .map(|carrier| carrier.amount)
        .reduce(Bounds::max)?;
    let mut cited = CitedLimit::of_rule(rule, (Bound::AtMost, Decimal::ZERO));
    if let Some(per) = rule.per {
        cited.unit = format!("{} per {per} {}", rule.unit, rule.per_unit);
    }
    Some(PatternFinding::new(setting, None, cited, figure).carried_by(carriers))
}

fn sugars(setting: &Setting<'_>, rule: &WeekRule, food: Option<FoodId>) -> Bounds {
    let foods = setting.tables.foods;
    let known = || {
        let food = food?;
        let mass = rule.per? * unit_grams(setting, &rule.per_unit, food)?;
        let in_mass = |per_100_g: Decimal| per_100_g * mass / Decimal::ONE_HUNDRED;
        if let Some((low, high)) = foods.interval_per_100_g(food, NutrientId::ADDED_SUGARS) {
            return Some(Bounds {
                low: in_mass(low),
                high: Some(in_mass(high)),
            });
        }
        let total = foods
            .interval_per_100_g(food, NutrientId::SUGARS)
            .map(|(_, high)| high)
            .or_else(|| foods.per_100_g(food, NutrientId::SUGARS))?;
        Some(Bounds {
            low: Decimal::ZERO,
            high: Some(in_mass(total)),
        })
    };
    known().unwrap_or(Bounds::at_least(Decimal::ZERO))
}

fn unit_grams(setting: &Setting<'_>, unit: &str, food: FoodId) -> Option<Decimal> {
    match unit {
        "oz" => Some(MassUnit::Ounce.grams().grams()),
        "g" => Some(Decimal::ONE),
        volume => unit_weight(setting.tables.foods.measures(food), volume, None)
            .map(|weight| weight.grams / weight.units),
    }
}
