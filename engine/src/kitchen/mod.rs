//! What the kitchen sheet says besides the recipe: temperatures and cautions.

mod safety;

pub use safety::{CAUTION, FoodSafety, Guidance, Held, SafetyStep, Step};
