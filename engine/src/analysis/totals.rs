//! Totals of a recipe.

use crate::exact::PartialSum;
use crate::foods::{FoodTable, NutrientId};
use crate::recipe::WeighedLine;
use crate::units::{Grams, Servings};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::fmt;

/// Values are per 100 g of edible food.
pub(crate) const PER_100_G: Decimal = Decimal::ONE_HUNDRED;

/// One nutrient over the whole recipe.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct NutrientTotal {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Its sum over all lines, in the nutrient's unit.
    pub total: PartialSum,
}

/// The figures of one recipe.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeAnalysis {
    /// Number of servings the totals are shared by.
    pub servings: Servings,
    /// Mass of the finished batch: as measured, or that of all lines with a
    /// known mass.
    pub mass: Grams,
    /// Whether that was measured.
    pub mass_measured: bool,
    /// Lines that have no known food or no known mass.
    pub unknown_lines: Vec<usize>,
    /// One total per nutrient, in the table's order.
    pub totals: Vec<NutrientTotal>,
}

/// Why a recipe cannot be analysed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum AnalysisError {
    /// The number of servings is zero or negative.
    NoServings(Servings),
}

impl fmt::Display for AnalysisError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoServings(servings) => write!(
                out,
                "a recipe needs more than {} servings: state how many servings the whole batch makes",
                servings.servings()
            ),
        }
    }
}

impl std::error::Error for AnalysisError {}

impl RecipeAnalysis {
    /// The whole recipe's sum of one nutrient; nothing for a nutrient that the
    /// table does not list.
    pub fn total(&self, nutrient: NutrientId) -> Option<&PartialSum> {
        self.totals
            .iter()
            .find(|row| row.nutrient == nutrient)
            .map(|row| &row.total)
    }

    /// The sum for one serving.
    pub fn per_serving(&self, nutrient: NutrientId) -> Option<PartialSum> {
        self.total(nutrient)
            .map(|total| total.divided(self.servings.servings()))
    }

    /// The sum for 100 g of the recipe; nothing when it has no known mass.
    pub fn per_100_g(&self, nutrient: NutrientId) -> Option<PartialSum> {
        if self.mass == Grams::ZERO {
            return None;
        }
        self.total(nutrient)
            .map(|total| total.scaled(PER_100_G).divided(self.mass.grams()))
    }

    /// The same recipe with its finished weight as measured: what a serving
    /// contains stays, what 100 g contain changes.
    pub fn with_finished_mass(mut self, mass: Grams) -> Self {
        self.mass = mass;
        self.mass_measured = true;
        self
    }

    /// Weight of one serving.
    pub fn serving_mass(&self) -> Grams {
        self.mass / self.servings.servings()
    }

    /// Weight of one serving where it is sure: measured, or the sum of lines
    /// that all have a weight.
    pub fn sure_serving_mass(&self) -> Option<Grams> {
        let all_weighed = self.totals.iter().all(|row| row.total.unweighed == 0);
        Some(self.serving_mass())
            .filter(|mass| (self.mass_measured || all_weighed) && *mass > Grams::ZERO)
    }
}

/// Adds up the lines of a recipe that makes `servings`.
///
/// # Errors
/// When `servings` is not above zero.
pub fn analyse(
    foods: &FoodTable,
    lines: &[WeighedLine],
    servings: Servings,
) -> Result<RecipeAnalysis, AnalysisError> {
    if servings <= Servings::ZERO {
        return Err(AnalysisError::NoServings(servings));
    }
    let totals = foods
        .nutrients()
        .iter()
        .map(|nutrient| NutrientTotal {
            nutrient: nutrient.id,
            total: sum(foods, lines, nutrient.id),
        })
        .collect();
    Ok(RecipeAnalysis {
        servings,
        mass: lines.iter().filter_map(|line| line.weight).sum(),
        mass_measured: false,
        unknown_lines: unknown_lines(lines),
        totals,
    })
}

fn unknown_lines(parts: &[WeighedLine]) -> Vec<usize> {
    let mut lines: Vec<usize> = parts
        .iter()
        .filter(|part| part.food.is_none() || part.weight.is_none())
        .map(|part| part.line)
        .collect();
    lines.dedup();
    lines
}

/// What weighed lines contain of one nutrient.
pub(crate) fn sum(foods: &FoodTable, lines: &[WeighedLine], nutrient: NutrientId) -> PartialSum {
    let mut total = PartialSum::default();
    for line in lines {
        match line.weight {
            None => total.add_unweighed(),
            Some(weight) => total.add(weight, amount_in(foods, line, nutrient)),
        }
    }
    total
}

/// How much of a nutrient one line brings to the dish, if its food, weight and
/// value are known.
pub(crate) fn amount_in(
    foods: &FoodTable,
    line: &WeighedLine,
    nutrient: NutrientId,
) -> Option<Decimal> {
    let per_100_g = foods.per_100_g(line.food?, nutrient)?;
    Some(per_100_g * line.weight?.grams() * line.kept(nutrient) / PER_100_G)
}
