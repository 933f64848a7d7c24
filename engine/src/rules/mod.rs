//! Rules as dated rows: the date of a week chooses the ones in force.

mod citation;
mod dated;
mod own;
mod pattern;
mod pattern_week;
mod specification;

pub use citation::{Citation, Standing};
pub use dated::{Condition, Switches};
pub use own::OwnRules;
pub use pattern::{Force, MealPattern, MealPatterns, Period, Subject};
pub use pattern_week::{Kind, WeekRule, WeekRules};
pub use specification::{Basis, Bound, DietarySpecification, LeftOut, Specifications};
