//! The nine major food allergens of US law, looked for in words.
//!
//! A description can show that an allergen is there; it can never show that it
//! is not. So the answer for each allergen is "contains", "may be present" or
//! "unknown: check the package", and nothing else. [`CAUTION`] goes with every
//! answer that is shown.

mod screen;
mod terms;
mod words;

pub use screen::{AllergenFinding, Evidence, LineAllergens, Presence, screen_line, screen_recipe};
pub use terms::{ALLERGENS, Allergen, AllergenTerms};

/// Shown with every allergen statement.
pub const CAUTION: &str = "Found from the words of the recipe and the dataset only. Recipes, brands and production lines change: read the current label of every product, each time. An allergen that is not listed here may still be present. Follow local procedures and the advice of the student's physician.";
