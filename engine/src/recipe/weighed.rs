//! A line reduced to what arithmetic needs.

use crate::foods::{FoodId, NutrientId};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A food and its weight in the finished dish; either may be unknown, and then
/// it is counted as unknown in every total.
///
/// Most lines of a recipe become one of these. A line that names another
/// recipe becomes several, all with the same `line`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct WeighedLine {
    /// Index of the line in its recipe.
    pub line: usize,
    /// The food, if the line's words were matched.
    pub food: Option<FoodId>,
    /// Edible weight, if it could be found.
    pub weight: Option<Grams>,
    /// Bounds of the weight; both equal it where it was stated exactly.
    pub bounds: Option<(Grams, Grams)>,
    /// Nutrients that do not all end up in the dish.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub keeps: Vec<Keep>,
}

/// The share of a nutrient that stays when a line is drained, rinsed or fried.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Keep {
    /// Which nutrient; every one where none is named.
    pub nutrient: Option<NutrientId>,
    /// Share that stays, 0 to 1.
    pub share: Decimal,
}

impl Keep {
    /// The share of a nutrient that all of `keeps` together leave, 0 to 1.
    pub fn of(keeps: &[Self], nutrient: NutrientId) -> Decimal {
        keeps
            .iter()
            .filter(|keep| keep.nutrient.is_none_or(|named| named == nutrient))
            .map(|keep| keep.share)
            .product()
    }
}

impl WeighedLine {
    /// A line whose whole weight ends up in the dish.
    pub fn new(line: usize, food: Option<FoodId>, weight: Option<Grams>) -> Self {
        Self {
            line,
            food,
            weight,
            bounds: weight.map(|weight| (weight, weight)),
            keeps: Vec::new(),
        }
    }

    /// The share of a nutrient that stays, 0 to 1.
    pub fn kept(&self, nutrient: NutrientId) -> Decimal {
        Keep::of(&self.keeps, nutrient)
    }

    /// The same in another amount.
    pub fn scaled(&self, factor: Decimal) -> Self {
        Self {
            weight: self.weight.map(|weight| weight * factor),
            bounds: self.bounds.map(|(low, high)| (low * factor, high * factor)),
            ..self.clone()
        }
    }
}
