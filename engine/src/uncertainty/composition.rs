//! What a serving or an average meal is made of, by weight.

use crate::exact::rounding::guarded;
use crate::foods::FoodId;
use crate::units::Grams;
use rust_decimal::{Decimal, MathematicalOps};
use std::collections::BTreeMap;

/// A food with its weight in one line.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Ingredient {
    /// The food.
    pub food: FoodId,
    /// Edible weight.
    pub weight: Grams,
    /// Standard uncertainty of the weight.
    pub tolerance: Grams,
}

impl Ingredient {
    /// An ingredient whose weight lies anywhere between two bounds: the
    /// standard uncertainty of a rectangular distribution is half its width
    /// over √3 (JCGM 100:2008, 4.3.7).
    pub fn between(food: FoodId, weight: Grams, low: Grams, high: Grams) -> Self {
        let half_width = (high - low).grams() / Decimal::TWO;
        let root_three = Decimal::from(3).sqrt().unwrap_or(Decimal::ONE);
        Self {
            food,
            weight,
            tolerance: Grams::new(guarded(half_width / root_three)),
        }
    }
}

/// Ingredients of a serving, a recipe or an average meal. Ingredients of the
/// same recipe line stay one entry however often the recipe is served, for its
/// amount is uncertain once.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Composition(Vec<Ingredient>);

impl Composition {
    /// Puts ingredients together.
    pub fn new(ingredients: Vec<Ingredient>) -> Self {
        Self(ingredients)
    }

    /// The ingredients, one per line.
    pub fn ingredients(&self) -> &[Ingredient] {
        &self.0
    }

    /// The same in another amount.
    pub fn scaled(&self, factor: Decimal) -> Self {
        Self(
            self.0
                .iter()
                .map(|part| Ingredient {
                    food: part.food,
                    weight: part.weight * factor,
                    tolerance: part.tolerance * factor.abs(),
                })
                .collect(),
        )
    }

    /// Adds another recipe's ingredients.
    pub fn merge(&mut self, other: &Self) {
        self.0.extend_from_slice(&other.0);
    }

    /// Weight by food, and the sum of squared tolerances by food.
    pub(super) fn by_food(&self) -> BTreeMap<FoodId, (Decimal, Decimal)> {
        let mut foods = BTreeMap::new();
        for part in &self.0 {
            let (weight, variance) = foods
                .entry(part.food)
                .or_insert((Decimal::ZERO, Decimal::ZERO));
            *weight += part.weight.grams();
            *variance += part.tolerance.grams() * part.tolerance.grams();
        }
        foods
    }
}
