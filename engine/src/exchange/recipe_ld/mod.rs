//! Recipes as JSON-LD in the words of schema.org: `Recipe` with
//! `recipeIngredient`, `recipeYield`, `recipeInstructions` and a
//! `NutritionInformation`.
//!
//! Going out, the lines are the card's own. Nutrition holds only what is fully
//! known of a serving, since these words have no way to say "at least". What a
//! person has set right about the reading of a line has no words there either
//! and stays behind. Coming in, the form of other writers is read too: a single
//! recipe, a list, an `@graph`, recipes within a page, and directions in steps
//! and sections.

mod read;
mod write;

pub use read::read;
pub use write::{Shared, write};
