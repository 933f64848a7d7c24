//! The office's book: its recipes and weeks, as kept and exchanged.

mod label;
mod shelf;
mod versions;

pub use label::RecipeLabel;
pub use shelf::{Shelf, plain_title};
pub use versions::Version;

use crate::calendar::Calendar;
use crate::own_foods::OwnFood;
use crate::production::Production;
use crate::recipe::{Recipe, RecipeId};
use crate::rules::{OwnRules, Switches};
use crate::week::{Week, WeekId};
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;
use std::fmt;

/// Version of the book's JSON form that this engine writes.
pub const BOOK_VERSION: u32 = 1;

/// Everything an office has written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Book {
    /// Version of this form.
    pub version: u32,
    /// Whose book it is.
    pub office: String,
    /// Recipes in the order of the book.
    pub recipes: Vec<Recipe>,
    /// Weeks in the order of the book.
    pub weeks: Vec<Week>,
    /// Versions of its recipes, kept under names.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub versions: Vec<Version>,
    /// The labels of its recipes about which something is decided.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub labels: Vec<RecipeLabel>,
    /// Foods of the office's own.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own_foods: Vec<OwnFood>,
    /// Limits of the office's own, a local wellness policy for one.
    #[serde(default)]
    pub own_rules: OwnRules,
    /// How the office reads rules that are not settled.
    #[serde(default)]
    pub switches: Switches,
    /// Its schools, packs and prices, and how its kitchens cook.
    #[serde(default, skip_serializing_if = "Production::is_empty")]
    pub production: Production,
    /// Days without school, and cycle menus.
    #[serde(default, skip_serializing_if = "Calendar::is_empty")]
    pub calendar: Calendar,
}

/// Why a book cannot be used.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum BookError {
    /// Written by a later version.
    Newer(u32),
    /// Two recipes have one name.
    RecipeTwice(RecipeId),
    /// Two weeks have one name.
    WeekTwice(WeekId),
    /// Two own foods have one number.
    FoodTwice(u32),
    /// Two versions of a recipe have one name.
    VersionTwice(RecipeId, String),
    /// Two labels are of one recipe.
    LabelTwice(RecipeId),
}

impl fmt::Display for BookError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Newer(version) => write!(
                out,
                "the book has version {version}, this page reads up to {BOOK_VERSION}: open it with a newer page"
            ),
            Self::RecipeTwice(id) => write!(
                out,
                "two recipes have the name \"{}\": rename one of them",
                id.0
            ),
            Self::FoodTwice(number) => write!(
                out,
                "two of the office's foods have the number {number}: give one of them another"
            ),
            Self::VersionTwice(id, name) => write!(
                out,
                "two versions of the recipe \"{}\" have the name \"{name}\": rename one of them",
                id.0
            ),
            Self::LabelTwice(id) => write!(
                out,
                "the recipe \"{}\" has two labels: take one of them out",
                id.0
            ),
            Self::WeekTwice(id) => {
                write!(
                    out,
                    "two weeks have the name \"{}\": rename one of them",
                    id.0
                )
            }
        }
    }
}

impl std::error::Error for BookError {}

impl Book {
    /// A book with nothing in it.
    pub fn empty(office: &str) -> Self {
        Self {
            version: BOOK_VERSION,
            office: office.to_owned(),
            recipes: Vec::new(),
            weeks: Vec::new(),
            versions: Vec::new(),
            labels: Vec::new(),
            own_foods: Vec::new(),
            own_rules: OwnRules::default(),
            switches: Switches::default(),
            production: Production::default(),
            calendar: Calendar::default(),
        }
    }

    /// Looks for what would make the book ambiguous.
    ///
    /// # Errors
    /// When its version is newer than this engine, or names are not unique.
    pub fn check(&self) -> Result<(), BookError> {
        if self.version > BOOK_VERSION {
            return Err(BookError::Newer(self.version));
        }
        let mut recipes = BTreeSet::new();
        for recipe in &self.recipes {
            if !recipes.insert(&recipe.id) {
                return Err(BookError::RecipeTwice(recipe.id.clone()));
            }
        }
        let mut weeks = BTreeSet::new();
        for week in &self.weeks {
            if !weeks.insert(&week.id) {
                return Err(BookError::WeekTwice(week.id.clone()));
            }
        }
        let mut foods = BTreeSet::new();
        for food in &self.own_foods {
            if !foods.insert(food.number) {
                return Err(BookError::FoodTwice(food.number));
            }
        }
        let mut versions = BTreeSet::new();
        for Version { name, recipe, .. } in &self.versions {
            if !versions.insert((&recipe.id, name)) {
                return Err(BookError::VersionTwice(recipe.id.clone(), name.clone()));
            }
        }
        let mut labels = BTreeSet::new();
        for label in &self.labels {
            if !labels.insert(&label.recipe) {
                return Err(BookError::LabelTwice(label.recipe.clone()));
            }
        }
        Ok(())
    }

    /// A recipe by its name.
    pub fn recipe(&self, id: &RecipeId) -> Option<&Recipe> {
        self.recipes.iter().find(|recipe| recipe.id == *id)
    }

    /// A week by its name.
    pub fn week(&self, id: &WeekId) -> Option<&Week> {
        self.weeks.iter().find(|week| week.id == *id)
    }
}
