//! A week of menus and the averages of what it offers.

mod average;
mod date;
mod model;
mod served;

pub use average::{MealAverage, NutrientAverage, ServedRecipe, Service, WeekError, average};
pub use date::{Date, DateError};
pub use model::{Choice, Day, GradeGroup, Meal, MealKind, Offer, Week, WeekId};
pub(crate) use served::milk_total;
pub use served::{Counted, CreditedRecipe, counted, credits_of};
