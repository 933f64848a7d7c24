//! What a recipe contains: totals with their coverage, and which line brings
//! what.
#![deny(clippy::float_arithmetic)]

mod change;
mod contribution;
mod totals;

pub use change::change;
pub use contribution::{Contribution, contributions};
pub use totals::{AnalysisError, NutrientTotal, RecipeAnalysis, analyse};
pub(crate) use totals::{amount_in, sum};
