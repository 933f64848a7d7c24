//! What a serving or an average meal is made of, by weight.

use crate::exact::rounding::guarded;
use crate::foods::{FoodId, NutrientId};
use crate::recipe::{Keep, WeighedLine};
use crate::units::Grams;
use rust_decimal::{Decimal, MathematicalOps};
use std::collections::BTreeMap;

/// Standard uncertainty of what lies anywhere between two bounds: half the
/// width of the rectangular distribution over √3 (JCGM 100:2008, 4.3.7).
pub(super) fn rectangular(low: Decimal, high: Decimal) -> Decimal {
    let half_width = (high - low) / Decimal::TWO;
    let root_three = Decimal::from(3).sqrt().unwrap_or(Decimal::ONE);
    guarded(half_width / root_three)
}

/// A food with its weight in one line.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Ingredient {
    /// The food.
    pub food: FoodId,
    /// Edible weight.
    pub weight: Grams,
    /// Standard uncertainty of the weight.
    pub tolerance: Grams,
    /// Nutrients that do not all end up in the dish.
    pub keeps: Vec<Keep>,
}

impl Ingredient {
    /// An ingredient whose weight lies anywhere between two bounds.
    pub fn between(food: FoodId, weight: Grams, low: Grams, high: Grams) -> Self {
        Self {
            food,
            weight,
            tolerance: Grams::new(rectangular(low.grams(), high.grams())),
            keeps: Vec::new(),
        }
    }

    /// The ingredient of a line; nothing where its food or weight is unknown.
    pub fn of_line(line: &WeighedLine) -> Option<Self> {
        let weight = line.weight?;
        let (low, high) = line.bounds.unwrap_or((weight, weight));
        Some(Self {
            keeps: line.keeps.clone(),
            ..Self::between(line.food?, weight, low, high)
        })
    }

    /// The share of a nutrient that ends up in the dish.
    pub(super) fn kept(&self, nutrient: NutrientId) -> Decimal {
        Keep::of(&self.keeps, nutrient)
    }
}

/// Ingredients of a serving, a recipe or an average meal. Ingredients of the
/// same recipe line stay one entry however often the recipe is served, for its
/// amount is uncertain once.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Composition(Vec<Ingredient>);

impl Composition {
    /// The known lines of a recipe.
    pub fn of_lines(lines: &[WeighedLine]) -> Self {
        Self(lines.iter().filter_map(Ingredient::of_line).collect())
    }

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
                    keeps: part.keeps.clone(),
                })
                .collect(),
        )
    }

    /// Adds another recipe's ingredients.
    pub fn merge(&mut self, other: &Self) {
        self.0.extend_from_slice(&other.0);
    }

    /// The ingredients by food.
    pub(super) fn by_food(&self) -> BTreeMap<FoodId, Vec<&Ingredient>> {
        let mut foods: BTreeMap<FoodId, Vec<&Ingredient>> = BTreeMap::new();
        for part in &self.0 {
            foods.entry(part.food).or_default().push(part);
        }
        foods
    }
}
