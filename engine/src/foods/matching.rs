//! What the reading of recipe lines asks of a search for foods.

use super::FoodId;
use serde::{Deserialize, Serialize};

/// A food that may be meant by some words.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct FoodMatch {
    /// The food.
    pub food: FoodId,
    /// How well its description fits the words, from 0 to 100.
    pub confidence: u8,
}

/// Finds foods by the words of a recipe line.
pub trait FoodMatcher {
    /// At most `limit` foods for `food_words`, best first.
    ///
    /// `preparation` holds the words that were split off as what is done to
    /// the food ("chopped", "drained", "cooked"). Those that name the food's
    /// state may choose between entries; the others say nothing about which
    /// food it is.
    fn matches(&self, food_words: &str, preparation: &[String], limit: usize) -> Vec<FoodMatch>;
}
