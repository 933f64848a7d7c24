//! The recipes that a recipe's lines may name, however they are kept.

use super::Book;
use crate::recipe::{Recipe, RecipeId};
use std::fmt;

/// Recipes that can be looked up. A book looks through all of them; whoever
/// studies recipe after recipe of a large book keeps an index instead.
pub trait Shelf: fmt::Debug {
    /// A recipe by its name in the book.
    fn by_name(&self, name: &RecipeId) -> Option<&Recipe>;

    /// The first recipe of this title, which is given as [`plain_title`] makes
    /// it and is not empty.
    fn by_title(&self, plain: &str) -> Option<&Recipe>;
}

impl Shelf for Book {
    fn by_name(&self, name: &RecipeId) -> Option<&Recipe> {
        self.recipe(name)
    }

    fn by_title(&self, plain: &str) -> Option<&Recipe> {
        let mut recipes = self.recipes.iter();
        recipes.find(|recipe| plain_title(&recipe.title) == plain)
    }
}

/// A title without the marks and capitals in which two spellings of it differ.
pub fn plain_title(title: &str) -> String {
    title
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect::<Vec<_>>()
        .join(" ")
}
