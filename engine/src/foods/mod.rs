//! The table of foods: what the dataset says, by food and nutrient.

mod food;
mod nutrient;
mod table;

pub use food::{Food, FoodGroup, FoodId, Measure};
pub use nutrient::{Nutrient, NutrientId};
pub use table::{FoodTable, ValueColumn};
