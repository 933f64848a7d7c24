//! What a serving contains with how sure it is, and the carbohydrate count.

use super::{RecipeStudy, Reference};
use crate::exact::PartialSum;
use crate::foods::NutrientId;
use crate::uncertainty::{Composition, Uncertainty, of_amount};
use serde::Serialize;

/// Shown with every carbohydrate count.
pub const CARBOHYDRATE_CAUTION: &str = "For planning with the school nurse. Carbohydrate is by difference and includes fibre; what is on the tray may be more or less than a standard serving. Insulin is dosed by the student's own medical plan, never by this figure alone.";

/// An amount in one serving.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ServingAmount {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Its amount, with what is missing from it.
    pub amount: PartialSum,
    /// Its standard uncertainty; nothing until the dataset's standard errors
    /// are loaded.
    pub uncertainty: Option<Uncertainty>,
}

/// Carbohydrate in one serving, for the school nurse. Always shown with
/// [`CARBOHYDRATE_CAUTION`].
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct CarbohydrateCount {
    /// Carbohydrate by difference, grams.
    pub carbohydrate: ServingAmount,
    /// Dietary fibre in it, grams.
    pub fibre: ServingAmount,
    /// What to bear in mind.
    pub caution: &'static str,
}

impl Reference {
    /// The amount of a nutrient in one serving; nothing where the recipe has
    /// no totals.
    pub fn serving_amount(
        &self,
        study: &RecipeStudy,
        nutrient: NutrientId,
    ) -> Option<ServingAmount> {
        let analysis = study.analysis.as_ref().ok()?;
        let uncertainty = self.evidence.as_ref().map(|evidence| {
            let batch = Composition::of_lines(&study.parts);
            let whole = of_amount(&self.foods, evidence, &batch, nutrient);
            Uncertainty {
                standard: whole.standard / analysis.servings.servings(),
                ..whole
            }
        });
        Some(ServingAmount {
            nutrient,
            amount: analysis.per_serving(nutrient)?,
            uncertainty,
        })
    }

    /// Carbohydrate and fibre in one serving; nothing where the recipe has no
    /// totals.
    pub fn carbohydrate_count(&self, study: &RecipeStudy) -> Option<CarbohydrateCount> {
        Some(CarbohydrateCount {
            carbohydrate: self.serving_amount(study, NutrientId::CARBOHYDRATE)?,
            fibre: self.serving_amount(study, NutrientId::FIBRE)?,
            caution: CARBOHYDRATE_CAUTION,
        })
    }
}
