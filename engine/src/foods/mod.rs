//! The table of foods: what the dataset says, by food and nutrient.

mod dataset;
mod food;
mod matching;
mod nutrient;
mod own;
mod provenance;
mod search;
mod synonyms;
mod table;

pub use food::{Food, FoodGroup, FoodId, Measure};
pub use matching::{FoodMatch, FoodMatcher};
pub use nutrient::{Nutrient, NutrientId};
pub use own::{OwnEntry, OwnValue};
pub use provenance::{Provenance, ValueSource};
pub use search::{Hit, SearchIndex};
pub use synonyms::SynonymError;
pub use table::FoodTable;
pub(crate) use word_search::{singular, words};
