//! A line reduced to what arithmetic needs.

use crate::foods::FoodId;
use crate::units::Grams;

/// A food and its edible weight; either may be unknown, and then the line is
/// counted as unknown in every total.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WeighedLine {
    /// The food, if the line's words were matched.
    pub food: Option<FoodId>,
    /// Edible weight of the whole line, if it could be found.
    pub weight: Option<Grams>,
}
