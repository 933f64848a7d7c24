//! Where a figure comes from: every line's value, its weight, and what the
//! dataset says of that value.

use super::{RecipeStudy, Reference, ServingAmount};
use crate::analysis::amount_in;
use crate::exact::PartialSum;
use crate::foods::{FoodId, NutrientId, ValueSource};
use crate::recipe::WeighedLine;
use crate::uncertainty::ValueError;
use crate::units::{Grams, Servings};
use rust_decimal::Decimal;
use serde::Serialize;

/// What one food of a line brings to a figure:
/// `weight × per_100_g ÷ 100 × kept`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PartOrigin {
    /// Index of the line in the recipe. A line that names another recipe gives
    /// several parts.
    pub line: usize,
    /// The food, if it is known.
    pub food: Option<FoodId>,
    /// Its weight in the dish, if it is known.
    pub weight: Option<Grams>,
    /// Bounds of that weight.
    pub bounds: Option<(Grams, Grams)>,
    /// Value per 100 g, if there is one.
    pub per_100_g: Option<Decimal>,
    /// Bounds of a value that stands for an interval, as a label's does.
    pub interval: Option<(Decimal, Decimal)>,
    /// Share that ends up in the dish, 0 to 1.
    pub kept: Decimal,
    /// What it brings to the whole recipe; nothing where any of it is unknown.
    pub amount: Option<Decimal>,
    /// Standard uncertainty of the value per 100 g; nothing without the
    /// dataset's provenance.
    pub error: Option<ValueError>,
    /// What stands behind the value in the dataset.
    pub source: Option<ValueSource>,
    /// The dataset's footnotes on the food and on this value.
    pub footnotes: Vec<String>,
}

/// Where the amount of a nutrient in a serving comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct FigureOrigin {
    /// Every food of every line, in line order.
    pub parts: Vec<PartOrigin>,
    /// Their sum: the amount in the whole recipe.
    pub total: PartialSum,
    /// The number of servings that share it.
    pub servings: Servings,
    /// The amount in one serving, with its uncertainty.
    pub serving: ServingAmount,
}

impl Reference {
    /// Where the amount of a nutrient in a serving comes from; nothing where
    /// the recipe has no totals.
    pub fn figure_origin(&self, study: &RecipeStudy, nutrient: NutrientId) -> Option<FigureOrigin> {
        let analysis = study.analysis.as_ref().ok()?;
        let part = |part| self.part_origin(part, nutrient);
        Some(FigureOrigin {
            parts: study.parts.iter().map(part).collect(),
            total: *analysis.total(nutrient)?,
            servings: analysis.servings,
            serving: self.serving_amount(study, nutrient)?,
        })
    }

    fn part_origin(&self, part: &WeighedLine, nutrient: NutrientId) -> PartOrigin {
        let of_food = |food| self.foods.per_100_g(food, nutrient);
        let evidence = self.evidence.as_ref();
        let behind = part.food.zip(evidence);
        PartOrigin {
            line: part.line,
            food: part.food,
            weight: part.weight,
            bounds: part.bounds,
            per_100_g: part.food.and_then(of_food),
            interval: part
                .food
                .and_then(|food| self.foods.interval_per_100_g(food, nutrient)),
            kept: part.kept(nutrient),
            amount: amount_in(&self.foods, part, nutrient),
            error: behind
                .and_then(|(food, evidence)| evidence.value_error(&self.foods, food, nutrient)),
            source: behind
                .and_then(|(food, evidence)| evidence.provenance().value_source(food, nutrient)),
            footnotes: behind.map_or_else(Vec::new, |(food, evidence)| {
                let notes = evidence.provenance().footnotes_on(food, nutrient);
                notes.into_iter().map(str::to_owned).collect()
            }),
        }
    }
}
