//! What is kept of a recipe. Readings of its lines are never stored: they are
//! made from the text each time, so that the text stays the one source.

use crate::components::{BeansRole, StatedCredit};
use crate::foods::FoodId;
use crate::units::{Grams, Millilitres, Servings};
use crate::yields::{AmountBasis, TreatmentId};
use rust_decimal::Decimal;
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
    /// Size of a serving, where the number of servings follows from it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub serving_size: Option<ServingSize>,
    /// Measured weight of the finished batch.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub finished_weight: Option<Grams>,
    /// Ingredient lines.
    pub lines: Vec<RecipeLine>,
    /// Whether its beans count as vegetable or as meat alternate.
    #[serde(default)]
    pub beans: BeansRole,
    /// Directions, free text.
    #[serde(default)]
    pub method: String,
}

/// A serving's size and the batch that it is taken from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "by")]
pub enum ServingSize {
    /// By weight; the batch is the recipe's finished weight, or the sum of its
    /// lines where that was not measured.
    Weight {
        /// Weight of a serving.
        serving: Grams,
    },
    /// By volume.
    Volume {
        /// Volume of a serving.
        serving: Millilitres,
        /// Volume of the batch.
        batch: Millilitres,
    },
    /// By pieces.
    Count {
        /// Pieces in a serving.
        serving: Decimal,
        /// Pieces in the batch.
        batch: Decimal,
    },
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
    /// Another recipe of the book that is meant instead of a food.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub recipe: Option<RecipeId>,
    /// The weight of the line's edible portion.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<Grams>,
    /// Whether the stated weight is as purchased or edible portion.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub basis: Option<AmountBasis>,
    /// The entry that stands for the food after cooking.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cooked: Option<CookedAs>,
    /// What drains, rinses or fries away.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub treatments: Vec<TreatmentId>,
    /// Credits toward meal components that a person states, each with a reason.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub credits: Vec<StatedCredit>,
}

/// How a line that is weighed raw counts once it is cooked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct CookedAs {
    /// The dataset's cooked entry.
    pub food: FoodId,
    /// Measured weight after cooking; without it a table or the dataset's own
    /// entries give the yield.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub weight: Option<Grams>,
}
