//! Recipes as an office writes them: a title, servings and lines of text.

mod line;
mod model;
mod preparation;
mod weigh;
mod weighed;

pub use line::{LineAmount, LineKind, LineReading, read_line};
pub use model::{CookedAs, Correction, Recipe, RecipeId, RecipeLine, ServingSize};
pub use weigh::{NamedMeasure, Route, Step, WeighProblem, Weighed, WeightDoubt, weigh};
pub use weighed::{Keep, WeighedLine};
