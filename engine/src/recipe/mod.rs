//! Recipes as an office writes them: a title, servings and lines of text.

mod model;
mod weighed;

pub use model::{CookedAs, Correction, Recipe, RecipeId, RecipeLine, ServingSize};
pub use weighed::{Keep, WeighedLine};
