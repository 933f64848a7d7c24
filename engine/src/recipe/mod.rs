//! Recipes as an office writes them: a title, servings and lines of text.

mod model;
mod weighed;

pub use model::{Correction, Recipe, RecipeId, RecipeLine};
pub use weighed::{Keep, WeighedLine};
