//! Forms that several answers share.

use engine::exact::PartialSum;
use engine::foods::{FoodId, FoodTable};
use rust_decimal::Decimal;
use serde::Serialize;

/// A sum and how much of it is known.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct AmountForm {
    /// What is known; nothing where all of it is missing.
    known: Option<Decimal>,
    /// Whether that is all.
    complete: bool,
    /// Share of the weight whose value is known, 0 to 1.
    coverage: Decimal,
    /// Terms without a known weight.
    unweighed: u32,
    /// Terms with a weight but no value.
    missing: u32,
}

impl From<&PartialSum> for AmountForm {
    fn from(sum: &PartialSum) -> Self {
        let is_known = sum.is_complete() || !sum.known_mass.grams().is_zero();
        Self {
            known: is_known.then(|| sum.known.normalize()),
            complete: sum.is_complete(),
            coverage: sum.coverage().normalize(),
            unweighed: sum.unweighed,
            missing: sum.missing,
        }
    }
}

/// A food found by words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct FoodForm {
    /// "SR28:01001", or "OWN:7" for one of the office's own.
    food: FoodId,
    /// Its description.
    description: String,
    /// Its food group.
    group: String,
    /// From 0 to 100: how sure it is that this food is meant.
    confidence: u8,
}

impl FoodForm {
    /// A food of the table; nothing for one that it lacks.
    pub fn new(foods: &FoodTable, food: FoodId, confidence: u8) -> Option<Self> {
        let entry = foods.food(food)?;
        Some(Self {
            food,
            description: entry.description.clone(),
            group: foods.group_name(entry.group).unwrap_or_default().to_owned(),
            confidence,
        })
    }
}

/// What is wrong with something, and what to do about it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ProblemForm {
    /// What is wrong.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}
