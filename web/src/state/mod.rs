//! What the page keeps, as plain data, and the one pure function that changes
//! it. Nothing here reads a clock, a table or the browser's storage: whatever
//! a change needs comes in with its action.

mod action;
mod arrivals;
mod contents;
mod desk;
mod history;
mod kitchen_edit;
mod lines;
mod names;
mod office_edit;
#[cfg(test)]
mod office_tests;
mod recipe_edit;
mod steps;
mod stroke;
#[cfg(test)]
mod tests;
mod version_edit;
#[cfg(test)]
mod version_tests;
mod week_edit;
mod week_moves;

pub use action::{
    Action, ChoiceAt, FoodEdit, MealAt, OfferAt, OwnTable, RecipeEdit, VersionEdit, WeekEdit,
};
pub use contents::{Contents, Saved};
pub use desk::Desk;
pub use history::History;
pub use kitchen_edit::{CalendarEdit, ProductionEdit};
