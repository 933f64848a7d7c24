//! The engine's tables in the page: how they are fetched, and how views ask
//! them without anything being computed twice.

use crate::memo::Memo;
use crate::state::Contents;
use crate::words;
use engine::findings::{Carrier, DayShare, carriers, day_shares};
use engine::foods::{Food, NutrientId};
use engine::recipe::{LineKind, Recipe, RecipeId};
use engine::reference::{RecipeStudy, Reference, WeekStudy};
use engine::swaps::SwapIndex;
use engine::week::{ServedRecipe, Service, Week, WeekError};
use std::borrow::Borrow;
use std::cell::{OnceCell, RefCell};
use std::ops::Deref;
use std::rc::Rc;

/// Where the page's server keeps the food tables.
const ADDRESS: &str = "data/sr28.foods.bin";

/// Where it keeps what is known of the values' origin.
const PROVENANCE: &str = "data/sr28.provenance.bin";

/// A result that views share. Two are the same when they are one object.
#[derive(Debug)]
pub struct Studied<T>(Rc<T>);

impl<T> Studied<T> {
    /// Shares a result.
    pub fn new(study: T) -> Self {
        Self(Rc::new(study))
    }
}

impl<T> Clone for Studied<T> {
    fn clone(&self) -> Self {
        Self(Rc::clone(&self.0))
    }
}

impl<T> PartialEq for Studied<T> {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl<T> Deref for Studied<T> {
    type Target = T;

    fn deref(&self) -> &T {
        &self.0
    }
}

impl Borrow<RecipeStudy> for StudiedRecipe {
    fn borrow(&self) -> &RecipeStudy {
        self
    }
}

/// What is found out about a recipe.
pub type StudiedRecipe = Studied<RecipeStudy>;

/// How a week stands, or why that cannot be said.
pub type StudiedWeek = Studied<Result<WeekStudy, WeekError>>;

impl StudiedRecipe {
    /// How many lines are ingredients.
    pub fn ingredient_count(&self) -> usize {
        let is_ingredient = |kind| kind == LineKind::Ingredient;
        let kinds = self.lines.iter().map(|line| line.read.reading.kind);
        kinds.filter(|kind| is_ingredient(*kind)).count()
    }

    /// How many lines are not counted, since something of them is unknown.
    pub fn open_count(&self) -> usize {
        let mut open: Vec<usize> = self
            .parts
            .iter()
            .filter(|part| part.food.is_none() || part.weight.is_none())
            .map(|part| part.line)
            .collect();
        open.dedup();
        open.len()
    }
}

/// Everything the views look things up in.
#[derive(Debug)]
pub struct Tables {
    /// The engine's tables.
    pub reference: Reference,
    /// All foods as swaps compare them, made when they are first asked for. It
    /// is of the dataset alone: tables with own foods share it.
    swap_index: Rc<OnceCell<SwapIndex>>,
    memo: RefCell<Memo>,
}

impl Tables {
    /// Tables around a reference.
    fn new(reference: Reference) -> Self {
        Self {
            reference,
            swap_index: Rc::default(),
            memo: RefCell::default(),
        }
    }

    /// The same tables with what a book brings of its own.
    pub fn with_book(&self, reference: Reference) -> Self {
        Self {
            swap_index: Rc::clone(&self.swap_index),
            ..Self::new(reference)
        }
    }

    /// All foods as swaps compare them. Making it takes some tenths of a
    /// second, once.
    ///
    /// # Errors
    /// When a table of the engine is damaged.
    pub fn swap_index(&self) -> Result<&SwapIndex, String> {
        if let Some(index) = self.swap_index.get() {
            return Ok(index);
        }
        let index = SwapIndex::build(&self.reference).map_err(|error| error.to_string())?;
        Ok(self.swap_index.get_or_init(|| index))
    }

    /// The same tables with more about the foods, which changes no recipe's
    /// figures: what was found out about recipes is kept.
    fn with_reference(&self, reference: Reference) -> Self {
        Self {
            reference,
            swap_index: Rc::clone(&self.swap_index),
            memo: RefCell::new(self.memo.take().without_weeks()),
        }
    }

    /// Foods for what is typed: those of the office's own, then the dataset's,
    /// at most `most` of each.
    pub fn foods_found(&self, typed: &str, most: usize) -> impl Iterator<Item = &Food> {
        let reference = &self.reference;
        let own = reference.own_search.search(typed, most);
        let all = own.into_iter().chain(reference.search.search(typed, most));
        all.filter_map(|hit| reference.foods.food(hit.food))
    }

    /// What is found out about a recipe of the book.
    pub fn study(&self, recipe: &Rc<Recipe>, contents: &Contents) -> StudiedRecipe {
        let memo = &mut *self.memo.borrow_mut();
        memo.follow(&contents.recipes);
        memo.study(&self.reference, recipe)
    }

    /// What is found out about the kept form of a recipe of the book.
    pub fn study_kept(&self, kept: &Rc<Recipe>, contents: &Contents) -> StudiedRecipe {
        let memo = &mut *self.memo.borrow_mut();
        memo.follow(&contents.recipes);
        memo.study_kept(&self.reference, kept)
    }

    /// What is found out about another form of a recipe of the book, such as a
    /// version. It is not remembered.
    pub fn study_form(&self, form: &Recipe, contents: &Contents) -> StudiedRecipe {
        let memo = &mut *self.memo.borrow_mut();
        memo.follow(&contents.recipes);
        memo.study_form(&self.reference, form)
    }

    /// These recipes of the book and all that they are made with, each once, with what is found
    /// out about it. A book may hold thousands of others: they are left alone.
    pub fn studies_of(
        &self,
        recipes: impl IntoIterator<Item = RecipeId>,
        contents: &Contents,
    ) -> Vec<(Rc<Recipe>, StudiedRecipe)> {
        let memo = &mut *self.memo.borrow_mut();
        memo.follow(&contents.recipes);
        memo.with_parts(&self.reference, recipes)
    }

    /// What fills the days of a service.
    pub fn day_shares(
        &self,
        week: &Week,
        contents: &Contents,
        service: &Service,
        nutrient: NutrientId,
    ) -> Vec<DayShare> {
        let recipes = self.recipes_of(week, contents);
        day_shares(week, service, &served(&recipes), nutrient)
    }

    /// How a week of the book stands.
    pub fn study_week(&self, week: &Rc<Week>, contents: &Contents) -> StudiedWeek {
        let memo = &mut *self.memo.borrow_mut();
        memo.follow(&contents.recipes);
        memo.study_week(&self.reference, week)
    }

    /// What carries a nutrient in the average meal of a service.
    pub fn carriers(
        &self,
        week: &Week,
        contents: &Contents,
        service: &Service,
        nutrient: NutrientId,
    ) -> Vec<Carrier> {
        let recipes = self.recipes_of(week, contents);
        carriers(week, service, &served(&recipes), nutrient)
    }

    /// The studies of a week's recipes, sorted by name.
    fn recipes_of(&self, week: &Week, contents: &Contents) -> Vec<(RecipeId, StudiedRecipe)> {
        let memo = &mut *self.memo.borrow_mut();
        memo.follow(&contents.recipes);
        memo.recipes_of(&self.reference, week)
    }
}

/// The recipes that have figures, with these.
fn served(recipes: &[(RecipeId, StudiedRecipe)]) -> Vec<ServedRecipe<'_>> {
    recipes
        .iter()
        .filter_map(|(id, study)| Some((id, study.analysis.as_ref().ok()?)))
        .collect()
}

/// Fetches and opens the tables.
///
/// # Errors
/// In words for the user, when they do not come or are damaged.
pub async fn open() -> Result<Rc<Tables>, String> {
    let bytes = fetch(ADDRESS).await?;
    let reference = Reference::committed(&bytes).map_err(|error| error.to_string())?;
    Ok(Rc::new(Tables::new(reference)))
}

/// Fetches where the dataset's values come from, and adds it to the tables.
///
/// # Errors
/// In words for the user, when it does not come or is damaged.
pub async fn with_provenance(tables: &Tables) -> Result<Rc<Tables>, String> {
    let bytes = fetch(PROVENANCE).await?;
    let reference = tables.reference.clone().with_provenance(&bytes);
    let reference = reference.map_err(|error| error.to_string())?;
    Ok(Rc::new(tables.with_reference(reference)))
}

async fn fetch(address: &str) -> Result<Vec<u8>, String> {
    let answer = gloo::net::http::Request::get(address)
        .send()
        .await
        .map_err(|error| error.to_string())?;
    if !answer.ok() {
        return Err(words::not_served(answer.status(), &answer.status_text()));
    }
    answer.binary().await.map_err(|error| error.to_string())
}
