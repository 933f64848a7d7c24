//! What is kept of a recipe. Readings of its lines are never stored: they are
//! made from the text each time, so that the text stays the one source.

use crate::foods::FoodId;
use crate::units::{Grams, Servings};
use serde::{Deserialize, Serialize};

/// A recipe's name inside its book, stable when the title changes.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct RecipeId(pub String);

/// A recipe.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Recipe {
    /// Name inside the book.
    pub id: RecipeId,
    /// Title as printed.
    pub title: String,
    /// Number of servings that the whole recipe yields.
    pub servings: Servings,
    /// Words for one serving: "1 cup", "1 sandwich"; may be empty.
    #[serde(default)]
    pub serving_words: String,
    /// Ingredient lines.
    pub lines: Vec<RecipeLine>,
    /// Directions, free text.
    #[serde(default)]
    pub method: String,
}

/// One ingredient line: the cook's words and what a person has set right.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeLine {
    /// The line as typed.
    pub text: String,
    /// What a person has decided about its reading.
    #[serde(default)]
    pub correction: Correction,
}

/// Decisions that override the reading of a line.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Correction {
    /// The food that is meant.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub food: Option<FoodId>,
    /// The weight of the line's edible portion.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<Grams>,
}
