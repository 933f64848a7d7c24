//! Recipes as an office writes them: a title, servings and lines of text.
//!
//! | step | module | turns | into |
//! |---|---|---|---|
//! | read | [`read_line`] | a line of text | amount, food words, preparation |
//! | match | [`read_lines`] | food words | foods, by the search it is given |
//! | weigh | [`weigh`] | a reading and a food | grams with bounds and the way there |
//!
//! What cannot be weighed is unknown, never zero, and says what to do.

mod doubt;
mod line;
mod model;
mod preparation;
mod reading;
mod weigh;
mod weighed;

pub use doubt::Doubt;
pub use line::{LineAmount, LineKind, LineReading, read_line};
pub use model::{CookedAs, Correction, Recipe, RecipeId, RecipeLine, ServingSize};
pub use reading::{ReadLine, read_lines};
pub use weigh::{NamedMeasure, Route, Step, WeighProblem, Weighed, weigh, weight_of_volume};
pub use weighed::{Keep, WeighedLine};
