//! The book on the desk, in a form of which old states are cheap to keep.

use super::names::unique_name;
use engine::book::{BOOK_VERSION, Book, RecipeLabel, Version};
use engine::recipe::{Recipe, RecipeId};
use engine::week::{Week, WeekId};
use serde::{Deserialize, Serialize};
use std::rc::Rc;

/// What is stored: the book, and the kept form of recipes changed since.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Saved {
    /// The book as it stands.
    pub book: Book,
    /// Recipes as they were last kept, where they have changed since.
    #[serde(default)]
    pub kept: Vec<Recipe>,
}

impl From<Book> for Saved {
    fn from(book: Book) -> Self {
        Self {
            book,
            kept: Vec::new(),
        }
    }
}

/// The book and its kept recipes. States share what they have in common.
#[derive(Debug, Clone, PartialEq)]
pub struct Contents {
    /// Recipes in the order of the book. One list for all states that have the
    /// same recipes: so thousands of them cost a state nothing.
    pub recipes: Rc<Vec<Rc<Recipe>>>,
    /// Weeks in the order of the book.
    pub weeks: Vec<Rc<Week>>,
    /// Recipes as they were last kept, where they have changed since.
    pub kept: Vec<Rc<Recipe>>,
    /// Versions of recipes, kept under names.
    pub versions: Vec<Rc<Version>>,
    /// Everything else in the book; its own recipes, weeks and versions are
    /// empty.
    pub rest: Rc<Book>,
}

impl From<Saved> for Contents {
    fn from(saved: Saved) -> Self {
        let mut rest = saved.book;
        let recipes = std::mem::take(&mut rest.recipes);
        let weeks = std::mem::take(&mut rest.weeks);
        let versions = std::mem::take(&mut rest.versions);
        Self {
            recipes: Rc::new(recipes.into_iter().map(Rc::new).collect()),
            weeks: weeks.into_iter().map(Rc::new).collect(),
            kept: saved.kept.into_iter().map(Rc::new).collect(),
            versions: versions.into_iter().map(Rc::new).collect(),
            rest: Rc::new(rest),
        }
    }
}

impl Contents {
    /// The book in the form that is kept and exchanged.
    pub fn book(&self) -> Book {
        Book {
            version: BOOK_VERSION,
            recipes: self.recipes.iter().map(|r| (**r).clone()).collect(),
            weeks: self.weeks.iter().map(|w| (**w).clone()).collect(),
            versions: self.versions.iter().map(|v| (**v).clone()).collect(),
            ..(*self.rest).clone()
        }
    }

    /// Whose book it is.
    pub fn office(&self) -> &str {
        &self.rest.office
    }

    /// The form that is stored.
    pub fn saved(&self) -> Saved {
        Saved {
            book: self.book(),
            kept: self.kept.iter().map(|r| (**r).clone()).collect(),
        }
    }

    /// A recipe by its name.
    pub fn recipe(&self, id: &RecipeId) -> Option<&Rc<Recipe>> {
        self.recipes.iter().find(|recipe| recipe.id == *id)
    }

    /// A recipe as it was last kept, if it has changed since.
    pub fn kept(&self, id: &RecipeId) -> Option<&Rc<Recipe>> {
        self.kept.iter().find(|recipe| recipe.id == *id)
    }

    /// The named versions of a recipe, in the order in which they were kept.
    pub fn versions_of<'a>(&'a self, id: &'a RecipeId) -> impl Iterator<Item = &'a Rc<Version>> {
        self.versions
            .iter()
            .filter(move |version| version.recipe.id == *id)
    }

    /// What is decided about the label of a recipe.
    pub fn label(&self, id: &RecipeId) -> RecipeLabel {
        let mut labels = self.rest.labels.iter();
        let label = labels.find(|label| label.recipe == *id).cloned();
        label.unwrap_or_else(|| RecipeLabel::plain(id.clone()))
    }

    /// The name that a new recipe of this title will get.
    pub fn free_recipe_id(&self, title: &str) -> RecipeId {
        let taken = self.recipes.iter().map(|other| other.id.0.as_str());
        RecipeId(unique_name(title, "recipe", taken))
    }

    /// The name that a new week of this title will get.
    pub fn free_week_id(&self, title: &str) -> WeekId {
        let taken = self.weeks.iter().map(|other| other.id.0.as_str());
        WeekId(unique_name(title, "week", taken))
    }

    /// A week by its name.
    pub fn week(&self, id: &WeekId) -> Option<&Rc<Week>> {
        self.weeks.iter().find(|week| week.id == *id)
    }
}
