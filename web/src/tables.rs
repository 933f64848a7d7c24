//! The engine's tables in the page: how they are fetched, and how views ask
//! them without anything being computed twice.

use crate::state::Contents;
use crate::words;
use engine::book::Book;
use engine::findings::{Carrier, DayShare, carriers, day_shares};
use engine::foods::NutrientId;
use engine::recipe::{LineKind, Recipe, RecipeId};
use engine::reference::{RecipeStudy, Reference, WeekStudy};
use engine::swaps::SwapIndex;
use engine::week::{ServedRecipe, Service, Week, WeekError, WeekId};
use std::borrow::Borrow;
use std::cell::{OnceCell, RefCell};
use std::collections::BTreeMap;
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
    fn new(study: T) -> Self {
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

    /// Whether other recipes have a say in it.
    fn names_recipes(&self) -> bool {
        self.lines
            .iter()
            .any(|line| line.recipe.is_some() || line.problem.is_some())
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
    studies: RefCell<Studies>,
}

/// What was found out, for the book as it was last seen.
#[derive(Debug)]
struct Studies {
    recipes: Vec<Rc<Recipe>>,
    book: Book,
    of_recipes: BTreeMap<RecipeId, (Rc<Recipe>, StudiedRecipe)>,
    of_kept: BTreeMap<RecipeId, (Rc<Recipe>, StudiedRecipe)>,
    of_weeks: BTreeMap<WeekId, (Rc<Week>, StudiedWeek)>,
}

impl Studies {
    fn new() -> Self {
        Self {
            recipes: Vec::new(),
            book: Book::empty(""),
            of_recipes: BTreeMap::new(),
            of_kept: BTreeMap::new(),
            of_weeks: BTreeMap::new(),
        }
    }

    /// Forgets what no longer holds for this book.
    fn follow(&mut self, contents: &Contents) {
        let same = |(a, b): (&Rc<Recipe>, &Rc<Recipe>)| Rc::ptr_eq(a, b);
        let seen = self.recipes.iter().zip(&contents.recipes);
        if self.recipes.len() == contents.recipes.len() && seen.clone().all(same) {
            return;
        }
        // A line may name another recipe by its title.
        let names = |recipes: &[Rc<Recipe>]| -> Vec<(RecipeId, String)> {
            let name = |recipe: &Rc<Recipe>| (recipe.id.clone(), recipe.title.clone());
            recipes.iter().map(name).collect()
        };
        if names(&self.recipes) == names(&contents.recipes) {
            let independent =
                |_: &RecipeId, (_, study): &mut (_, StudiedRecipe)| !study.names_recipes();
            self.of_recipes.retain(independent);
            self.of_kept.retain(independent);
        } else {
            self.of_recipes.clear();
            self.of_kept.clear();
        }
        self.of_weeks.clear();
        self.recipes = contents.recipes.clone();
        self.book = contents.book();
    }
}

impl Tables {
    /// Tables around a reference.
    fn new(reference: Reference) -> Self {
        Self {
            reference,
            swap_index: Rc::default(),
            studies: RefCell::new(Studies::new()),
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
        let studies = self.studies.borrow();
        let kept = Studies {
            recipes: studies.recipes.clone(),
            book: studies.book.clone(),
            of_recipes: studies.of_recipes.clone(),
            of_kept: studies.of_kept.clone(),
            of_weeks: BTreeMap::new(),
        };
        Self {
            reference,
            swap_index: Rc::clone(&self.swap_index),
            studies: RefCell::new(kept),
        }
    }

    /// What is found out about a recipe of the book.
    pub fn study(&self, recipe: &Rc<Recipe>, contents: &Contents) -> StudiedRecipe {
        let studies = &mut *self.studies.borrow_mut();
        studies.follow(contents);
        self.study_in(&studies.book, &mut studies.of_recipes, recipe)
    }

    /// What is found out about the kept form of a recipe of the book.
    pub fn study_kept(&self, kept: &Rc<Recipe>, contents: &Contents) -> StudiedRecipe {
        let studies = &mut *self.studies.borrow_mut();
        studies.follow(contents);
        self.study_in(&studies.book, &mut studies.of_kept, kept)
    }

    /// What is found out about another form of a recipe of the book, such as a
    /// version. It is not remembered.
    pub fn study_form(&self, form: &Recipe, contents: &Contents) -> StudiedRecipe {
        let studies = &mut *self.studies.borrow_mut();
        studies.follow(contents);
        Studied::new(self.reference.study_recipe(&studies.book, form))
    }

    fn study_in(
        &self,
        book: &Book,
        known: &mut BTreeMap<RecipeId, (Rc<Recipe>, StudiedRecipe)>,
        recipe: &Rc<Recipe>,
    ) -> StudiedRecipe {
        if let Some((of, study)) = known.get(&recipe.id)
            && of == recipe
        {
            return study.clone();
        }
        let study = Studied::new(self.reference.study_recipe(book, recipe));
        let entry = (Rc::clone(recipe), study.clone());
        known.insert(recipe.id.clone(), entry);
        study
    }

    /// All recipes of the book with what is found out about each.
    pub fn studies(&self, contents: &Contents) -> Vec<(Rc<Recipe>, StudiedRecipe)> {
        let recipes = contents.recipes.iter();
        recipes
            .map(|recipe| (recipe.clone(), self.study(recipe, contents)))
            .collect()
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
        let served: Vec<ServedRecipe<'_>> = recipes
            .iter()
            .filter_map(|(id, study)| Some((id, study.analysis.as_ref().ok()?)))
            .collect();
        day_shares(week, service, &served, nutrient)
    }

    /// How a week of the book stands.
    pub fn study_week(&self, week: &Rc<Week>, contents: &Contents) -> StudiedWeek {
        self.studies.borrow_mut().follow(contents);
        let known = self.studies.borrow().of_weeks.get(&week.id).cloned();
        if let Some((of, study)) = known
            && of == *week
        {
            return study;
        }
        let recipes = self.recipes_of(week, contents);
        let found = self.reference.study_week_with(week, &recipes);
        let study = Studied::new(found);
        let entry = (Rc::clone(week), study.clone());
        let weeks = &mut self.studies.borrow_mut().of_weeks;
        weeks.insert(week.id.clone(), entry);
        study
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
        let served: Vec<ServedRecipe<'_>> = recipes
            .iter()
            .filter_map(|(id, study)| Some((id, study.analysis.as_ref().ok()?)))
            .collect();
        carriers(week, service, &served, nutrient)
    }

    /// The studies of a week's recipes, sorted by name.
    fn recipes_of(&self, week: &Week, contents: &Contents) -> Vec<(RecipeId, StudiedRecipe)> {
        let meals = week.days.iter().flat_map(|day| &day.meals);
        let mut names: Vec<RecipeId> = meals
            .flat_map(|meal| meal.choices())
            .map(|choice| choice.recipe.clone())
            .collect();
        names.sort();
        names.dedup();
        names
            .into_iter()
            .filter_map(|name| {
                let study = self.study(contents.recipe(&name)?, contents);
                Some((name, study))
            })
            .collect()
    }
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
