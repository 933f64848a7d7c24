//! The rest of the trade's computing: how sure figures are, claims,
//! carbohydrate counts, temperatures, every step of a study, own foods.

use super::engine::{Engine, from_js, no_figures, or_default, to_js};
use super::error::{ApiError, ErrorKind};
use engine::book::Book;
use engine::claims::{ClaimOptions, check_claims};
use engine::foods::{FoodId, NutrientId};
use engine::kitchen;
use engine::own_foods::{FdcTables, ImportError, OwnFood, from_csv, from_fdc_csv, from_fdc_json};
use serde::Serialize;
use wasm_bindgen::prelude::*;

/// Temperatures with the caution that belongs to them.
#[derive(Serialize)]
struct Temperatures<'a> {
    caution: &'static str,
    steps: Vec<&'a kitchen::SafetyStep>,
}

#[wasm_bindgen]
impl Engine {
    /// Loads where the dataset's values come from: `provenanceAsset` is the file
    /// `data/sr28.provenance.bin`. Figures carry their uncertainty from then on.
    ///
    /// # Errors
    /// When the file is damaged, foreign or of another version.
    #[wasm_bindgen(js_name = loadProvenance)]
    pub fn load_provenance(
        &mut self,
        #[wasm_bindgen(js_name = provenanceAsset)] provenance_asset: &[u8],
    ) -> Result<(), JsValue> {
        let loaded = self.reference.clone().with_provenance(provenance_asset);
        self.reference = loaded.map_err(|error| {
            let remedy = "fetch data/sr28.provenance.bin again, of the same version as the program";
            ApiError::new(ErrorKind::Tables, "provenanceAsset", error, remedy)
        })?;
        Ok(())
    }

    /// Where one value of the dataset comes from; null where it has none, or
    /// before `loadProvenance`.
    ///
    /// # Errors
    /// When `food` is no food's number.
    #[wasm_bindgen(js_name = valueSource, unchecked_return_type = "ValueSource | null")]
    pub fn value_source(
        &self,
        #[wasm_bindgen(unchecked_param_type = "FoodId")] food: JsValue,
        nutrient: u16,
    ) -> Result<JsValue, JsValue> {
        let food: FoodId = from_js("food", food)?;
        let evidence = self.reference.evidence.as_ref();
        let nutrient = NutrientId(nutrient);
        to_js(&evidence.and_then(|known| known.provenance().value_source(food, nutrient)))
    }

    /// Every step of a recipe's study: readings, refuse, cooking with yields
    /// and what stays, draining, credits with their arithmetic, allergens with
    /// their evidence.
    ///
    /// # Errors
    /// When an argument has another form.
    #[wasm_bindgen(js_name = recipeSteps, unchecked_return_type = "RecipeSteps")]
    pub fn recipe_steps(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let (_, study) = self.study(recipe, book)?;
        to_js(&study)
    }

    /// A nutrient in one serving with its standard uncertainty.
    ///
    /// # Errors
    /// As `studyRecipe`.
    #[wasm_bindgen(js_name = servingAmount, unchecked_return_type = "ServingAmount | null")]
    pub fn serving_amount(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        nutrient: u16,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let (reference, study) = self.study(recipe, book)?;
        study.analysis.as_ref().map_err(no_figures)?;
        to_js(&reference.serving_amount(&study, NutrientId(nutrient)))
    }

    /// Carbohydrate and fibre in one serving, with the caution to show.
    ///
    /// # Errors
    /// As `studyRecipe`.
    #[wasm_bindgen(js_name = carbohydrateCount, unchecked_return_type = "CarbohydrateCount")]
    pub fn carbohydrate_count(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let (reference, study) = self.study(recipe, book)?;
        study.analysis.as_ref().map_err(no_figures)?;
        to_js(&reference.carbohydrate_count(&study))
    }

    /// Claims by 21 CFR 101.13, 101.61 and 101.62, each proven, not met or
    /// silent for want of data.
    ///
    /// # Errors
    /// As `studyRecipe`, and when the reference amount is not above zero.
    #[wasm_bindgen(unchecked_return_type = "ClaimReport")]
    pub fn claims(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "ClaimOptions")] options: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let options: ClaimOptions = or_default("options", options)?;
        let (reference, study) = self.study(recipe, book)?;
        let analysis = study.analysis.as_ref().map_err(no_figures)?;
        let report = check_claims(analysis, &reference.claims, &options, None);
        to_js(&report.map_err(|error| {
            let remedy = "state weights above zero";
            ApiError::new(ErrorKind::Input, "options", error, remedy)
        })?)
    }

    /// Cooking and holding temperatures for a recipe's foods, with the caution
    /// to show.
    ///
    /// # Errors
    /// When an argument has another form.
    #[wasm_bindgen(unchecked_return_type = "Temperatures")]
    pub fn temperatures(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let (reference, study) = self.study(recipe, book)?;
        let parts = study.parts.iter();
        let foods: Vec<_> = parts
            .filter_map(|part| reference.foods.food(part.food?))
            .collect();
        to_js(&Temperatures {
            caution: kitchen::CAUTION,
            steps: reference.food_safety.steps_for(&foods, None),
        })
    }

    /// Everything found out about a week, with uncertainties and likelihoods.
    ///
    /// # Errors
    /// As `studyWeek`.
    #[wasm_bindgen(js_name = weekSteps, unchecked_return_type = "WeekSteps")]
    pub fn week_steps(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Book")] book: JsValue,
        #[wasm_bindgen(js_name = weekId)] week_id: String,
    ) -> Result<JsValue, JsValue> {
        let book: Book = from_js("book", book)?;
        to_js(&self.week(&book, week_id)?)
    }

    /// Foods of the office's own from a CSV, to put into a book's `ownFoods`.
    ///
    /// # Errors
    /// At the first cell that cannot be read.
    #[wasm_bindgen(js_name = ownFoodsFromCsv, unchecked_return_type = "unknown[]")]
    pub fn own_foods_from_csv(
        &self,
        text: &str,
        #[wasm_bindgen(js_name = firstNumber)] first_number: u32,
        reference: &str,
    ) -> Result<JsValue, JsValue> {
        let nutrients = self.reference.foods.nutrients();
        imported(from_csv(text, nutrients, first_number, reference))
    }

    /// The same from FoodData Central's JSON download.
    ///
    /// # Errors
    /// When the text is damaged or of another form.
    #[wasm_bindgen(js_name = ownFoodsFromFdcJson, unchecked_return_type = "unknown[]")]
    pub fn own_foods_from_fdc_json(
        &self,
        text: &str,
        #[wasm_bindgen(js_name = firstNumber)] first_number: u32,
    ) -> Result<JsValue, JsValue> {
        let nutrients = self.reference.foods.nutrients();
        imported(from_fdc_json(text, nutrients, first_number))
    }

    /// The same from three tables of FoodData Central's CSV download.
    ///
    /// # Errors
    /// When a table lacks a column or a row cannot be read.
    #[wasm_bindgen(js_name = ownFoodsFromFdcCsv, unchecked_return_type = "unknown[]")]
    pub fn own_foods_from_fdc_csv(
        &self,
        food: &str,
        #[wasm_bindgen(js_name = foodNutrient)] food_nutrient: &str,
        nutrient: &str,
        #[wasm_bindgen(js_name = firstNumber)] first_number: u32,
    ) -> Result<JsValue, JsValue> {
        let tables = FdcTables {
            food,
            food_nutrient,
            nutrient,
        };
        let nutrients = self.reference.foods.nutrients();
        imported(from_fdc_csv(tables, nutrients, first_number))
    }
}

fn imported(read: Result<Vec<OwnFood>, ImportError>) -> Result<JsValue, JsValue> {
    let foods = read.map_err(|error| {
        ApiError::new(
            ErrorKind::Input,
            &error.place,
            &error.problem,
            &error.remedy,
        )
    })?;
    to_js(&foods)
}
