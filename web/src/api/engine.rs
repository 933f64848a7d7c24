//! The functions.

use super::error::{ApiError, ErrorKind};
use super::forms::FoodForm;
use super::line_form::LineForm;
use super::recipe_form::RecipeForm;
use super::week_form::WeekForm;
use engine::book::Book;
use engine::label::{PanelOptions, nutrition_facts};
use engine::recipe::{Recipe, RecipeLine, read_lines};
use engine::reference::{RecipeStudy, Reference, WeekStudy};
use engine::swaps::SwapIndex;
use engine::week::WeekId;
use js_sys::JSON;
use serde::Serialize;
use serde::de::DeserializeOwned;
use serde_wasm_bindgen::Serializer;
use std::borrow::Cow;
use std::cell::OnceCell;
use wasm_bindgen::prelude::*;

/// The engine with its tables.
#[wasm_bindgen]
#[derive(Debug)]
pub struct Engine {
    pub(super) reference: Reference,
    pub(super) swap_index: OnceCell<SwapIndex>,
}

#[wasm_bindgen]
impl Engine {
    /// Opens the tables: `foodsAsset` is the file `data/sr28.foods.bin`.
    ///
    /// # Errors
    /// When the file is damaged, foreign or of another version.
    #[wasm_bindgen(constructor)]
    pub fn new(
        #[wasm_bindgen(js_name = foodsAsset)] foods_asset: &[u8],
    ) -> Result<Engine, JsValue> {
        let reference = Reference::committed(foods_asset).map_err(|error| {
            let remedy = "fetch data/sr28.foods.bin again, of the same version as the program";
            ApiError::new(ErrorKind::Tables, "foodsAsset", error, remedy)
        })?;
        Ok(Self {
            reference,
            swap_index: OnceCell::new(),
        })
    }

    /// At most `limit` foods for what is being typed, best first. The last
    /// word may be half typed.
    ///
    /// # Errors
    /// None is known.
    #[wasm_bindgen(js_name = searchFoods, unchecked_return_type = "FoodHit[]")]
    pub fn search_foods(&self, query: &str, limit: usize) -> Result<JsValue, JsValue> {
        let found: Vec<FoodForm> = self
            .reference
            .search
            .search(query, limit)
            .into_iter()
            .filter_map(|hit| FoodForm::new(&self.reference.foods, hit.food, hit.confidence))
            .collect();
        to_js(&found)
    }

    /// Reads one ingredient line.
    ///
    /// # Errors
    /// None is known: what cannot be read is told in the answer.
    #[wasm_bindgen(js_name = readLine, unchecked_return_type = "LineReading")]
    pub fn read_line(&self, text: &str) -> Result<JsValue, JsValue> {
        let line = RecipeLine {
            text: text.to_owned(),
            ..RecipeLine::default()
        };
        let foods = &self.reference.foods;
        let read = read_lines(foods, &self.reference, std::slice::from_ref(&line));
        let forms: Vec<LineForm> = read
            .iter()
            .map(|read| LineForm::of_reading(foods, read))
            .collect();
        to_js(&forms.first())
    }

    /// Studies a recipe. `book` holds the recipes that its lines may name, and
    /// the foods of the office's own.
    ///
    /// # Errors
    /// When an argument has another form, or the recipe has no figures.
    #[wasm_bindgen(js_name = studyRecipe, unchecked_return_type = "RecipeFigures")]
    pub fn study_recipe(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let (reference, study) = self.study(recipe, book)?;
        let analysis = study.analysis.as_ref().map_err(no_figures)?;
        to_js(&RecipeForm::new(&reference.foods, &study, analysis))
    }

    /// The Nutrition Facts panel of a recipe.
    ///
    /// # Errors
    /// As [`Self::study_recipe`].
    #[wasm_bindgen(js_name = nutritionFacts, unchecked_return_type = "FactsPanel")]
    pub fn nutrition_facts(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Recipe")] recipe: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "PanelOptions")] options: JsValue,
        #[wasm_bindgen(unchecked_optional_param_type = "Book")] book: JsValue,
    ) -> Result<JsValue, JsValue> {
        let options: PanelOptions = or_default("options", options)?;
        let (reference, study) = self.study(recipe, book)?;
        let analysis = study.analysis.as_ref().map_err(no_figures)?;
        to_js(&nutrition_facts(analysis, &reference.label, &options))
    }

    /// Studies the week of that name in a book.
    ///
    /// # Errors
    /// When the book has another form, has no such week, or the week cannot be
    /// studied.
    #[wasm_bindgen(js_name = studyWeek, unchecked_return_type = "WeekFigures")]
    pub fn study_week(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Book")] book: JsValue,
        #[wasm_bindgen(js_name = weekId)] week_id: String,
    ) -> Result<JsValue, JsValue> {
        let book: Book = from_js("book", book)?;
        to_js(&WeekForm::from(&self.week(&book, week_id)?))
    }
}

impl Engine {
    pub(super) fn study(
        &self,
        recipe: JsValue,
        book: JsValue,
    ) -> Result<(Cow<'_, Reference>, RecipeStudy), ApiError> {
        let recipe: Recipe = from_js("recipe", recipe)?;
        let book: Option<Book> = from_js("book", book)?;
        let book = book.unwrap_or_else(|| Book::empty(""));
        let reference = self.for_book(&book)?;
        let study = reference.study_recipe(&book, &recipe);
        Ok((reference, study))
    }

    /// Studies the week of that name in a book.
    pub(super) fn week(&self, book: &Book, week_id: String) -> Result<WeekStudy, ApiError> {
        let reference = self.for_book(book)?;
        let id = WeekId(week_id);
        let week = book.week(&id).ok_or_else(|| {
            let message = format!("the book has no week \"{}\"", id.0);
            let remedy = "name one of its weeks by its id";
            ApiError::new(ErrorKind::Week, "weekId", message, remedy)
        })?;
        reference.study_week(book, week).map_err(|error| {
            let remedy = "mend the day that is named";
            ApiError::new(ErrorKind::Week, "book.weeks", error, remedy)
        })
    }

    /// The tables with what a book brings of its own.
    pub(super) fn for_book(&self, book: &Book) -> Result<Cow<'_, Reference>, ApiError> {
        let unusable = |error: &dyn std::fmt::Display| {
            let remedy = "mend what is named, or take it out of the book";
            ApiError::new(ErrorKind::Book, "book", error, remedy)
        };
        book.check().map_err(|error| unusable(&error))?;
        let blank = Book {
            own_foods: book.own_foods.clone(),
            own_rules: book.own_rules.clone(),
            switches: book.switches.clone(),
            ..Book::empty("")
        };
        if blank == Book::empty("") {
            return Ok(Cow::Borrowed(&self.reference));
        }
        let own = self.reference.for_book(book);
        own.map(Cow::Owned).map_err(|error| unusable(&error))
    }
}

pub(super) fn no_figures(problem: &engine::reference::StudyProblem) -> ApiError {
    let remedy = "state how many servings the whole batch makes";
    ApiError::new(ErrorKind::Recipe, "recipe.servings", problem, remedy)
}

/// A script's value: what JSON writes of it.
pub(super) fn from_js<T: DeserializeOwned>(argument: &str, value: JsValue) -> Result<T, ApiError> {
    let text = JSON::stringify(&value)
        .ok()
        .and_then(|text| text.as_string());
    // What JSON does not write, such as `undefined`, is nothing.
    let text = text.as_deref().unwrap_or("null");
    serde_json::from_str(text).map_err(|error| ApiError::input(argument, text, &error))
}

pub(super) fn or_default<T: DeserializeOwned + Default>(
    argument: &str,
    value: JsValue,
) -> Result<T, ApiError> {
    let given: Option<T> = from_js(argument, value)?;
    Ok(given.unwrap_or_default())
}

/// Plain objects and lists, with null for what is not known.
pub(super) fn to_js<T: Serialize>(value: &T) -> Result<JsValue, JsValue> {
    let serializer = Serializer::json_compatible();
    Ok(value.serialize(&serializer)?)
}
