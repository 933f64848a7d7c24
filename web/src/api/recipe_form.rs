//! The figures of a recipe, as scripts get them.

use super::forms::AmountForm;
use super::line_form::LineForm;
use engine::analysis::RecipeAnalysis;
use engine::components::Credit;
use engine::foods::{FoodTable, Nutrient, NutrientId};
use engine::recipe::WeighedLine;
use engine::reference::{RecipeAllergen, RecipeStudy};
use rust_decimal::Decimal;
use serde::Serialize;

/// One nutrient of a recipe.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct NutrientForm {
    nutrient: NutrientId,
    tagname: String,
    name: String,
    unit: String,
    decimals: u32,
    per_serving: Option<AmountForm>,
    per_100_g: Option<AmountForm>,
    whole: Option<AmountForm>,
}

/// All that is found out about a recipe.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeForm {
    servings: Decimal,
    grams: Decimal,
    unknown_lines: Vec<usize>,
    lines: Vec<LineForm>,
    nutrients: Vec<NutrientForm>,
    credits: Vec<Credit>,
    allergens: Vec<RecipeAllergen>,
    allergen_caution: &'static str,
}

impl RecipeForm {
    /// The figures of a recipe that has them.
    pub fn new(foods: &FoodTable, study: &RecipeStudy, analysis: &RecipeAnalysis) -> Self {
        let line = |(index, line)| {
            let parts: Vec<&WeighedLine> = study
                .parts
                .iter()
                .filter(|part| part.line == index)
                .collect();
            LineForm::of_study(foods, line, &parts)
        };
        let nutrients = foods.nutrients().iter();
        let credits = study.credits.as_ref();
        Self {
            servings: analysis.servings.servings().normalize(),
            grams: analysis.mass.grams().normalize(),
            unknown_lines: analysis.unknown_lines.clone(),
            lines: study.lines.iter().enumerate().map(line).collect(),
            nutrients: nutrients.map(|of| nutrient(of, analysis)).collect(),
            credits: credits.map_or_else(Vec::new, |credits| credits.per_serving.clone()),
            allergens: study.allergens.clone(),
            allergen_caution: engine::allergens::CAUTION,
        }
    }
}

fn nutrient(of: &Nutrient, analysis: &RecipeAnalysis) -> NutrientForm {
    let id = of.id;
    NutrientForm {
        nutrient: id,
        tagname: of.tagname.clone(),
        name: of.name.clone(),
        unit: of.unit.clone(),
        decimals: of.decimals.0,
        per_serving: analysis.per_serving(id).as_ref().map(AmountForm::from),
        per_100_g: analysis.per_100_g(id).as_ref().map(AmountForm::from),
        whole: analysis.total(id).map(AmountForm::from),
    }
}
