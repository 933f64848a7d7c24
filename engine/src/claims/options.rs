//! What the office must say of a food before claims can be checked.

use crate::analysis::RecipeAnalysis;
use crate::foods::NutrientId;
use crate::units::Grams;
use serde::{Deserialize, Serialize};
use std::fmt;
use std::str::FromStr;

/// What kind of food a claim would be made for.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum FoodKind {
    /// A food that is not a main dish or a meal.
    #[default]
    #[serde(rename = "individual")]
    Individual,
    /// A main dish as 21 CFR 101.13(m) defines it.
    #[serde(rename = "main dish")]
    MainDish,
    /// A meal as 21 CFR 101.13(l) defines it.
    #[serde(rename = "meal")]
    Meal,
}

impl FromStr for FoodKind {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        match text {
            "individual" => Ok(Self::Individual),
            "main dish" => Ok(Self::MainDish),
            "meal" => Ok(Self::Meal),
            _ => Err(format!(
                "\"{text}\" is no kind of food: write individual, main dish or meal"
            )),
        }
    }
}

/// Whether an ingredient understood to contain a nutrient is used.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct StatedIngredient {
    /// Which nutrient: sodium for salt, fat for an oil.
    pub nutrient: NutrientId,
    /// Whether it is used.
    pub used: bool,
}

/// What the office says of the food.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", default)]
pub struct ClaimOptions {
    /// What kind of food it is.
    pub kind: FoodKind,
    /// Its reference amount customarily consumed by 21 CFR 101.12(b).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub reference_amount: Option<Grams>,
    /// Whether that is two tablespoons or less, which makes it small whatever
    /// it weighs.
    pub two_tablespoons_or_less: bool,
    /// Weight of one serving as served; the recipe's own, where that is sure,
    /// if none is given.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub serving_weight: Option<Grams>,
    /// What is said of its ingredients.
    pub ingredients: Vec<StatedIngredient>,
}

/// The food that a comparative claim compares with.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ReferenceFood<'a> {
    /// Its figures.
    pub analysis: &'a RecipeAnalysis,
    /// Weight of one of its servings as served; its own, where that is sure, if
    /// none is given.
    pub serving_weight: Option<Grams>,
}

/// Why claims cannot be checked at all.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ClaimError {
    /// The reference amount is zero or negative.
    NoReferenceAmount(Grams),
    /// The weight of a serving, of the food or of the reference food, is zero
    /// or negative.
    NoServingWeight(Grams),
}

impl fmt::Display for ClaimError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoReferenceAmount(weight) => write!(
                out,
                "a reference amount cannot be {} g: enter the grams that 21 CFR 101.12(b) gives for this kind of food",
                weight.grams()
            ),
            Self::NoServingWeight(weight) => write!(
                out,
                "a serving cannot weigh {} g: enter its weight as served, or leave it empty",
                weight.grams()
            ),
        }
    }
}

impl std::error::Error for ClaimError {}

impl ClaimOptions {
    pub(super) fn check(&self, reference: Option<&ReferenceFood<'_>>) -> Result<(), ClaimError> {
        let not_positive = |weight: &Grams| *weight <= Grams::ZERO;
        if let Some(amount) = self.reference_amount.filter(not_positive) {
            return Err(ClaimError::NoReferenceAmount(amount));
        }
        match [
            self.serving_weight,
            reference.and_then(|food| food.serving_weight),
        ]
        .into_iter()
        .flatten()
        .find(not_positive)
        {
            Some(weight) => Err(ClaimError::NoServingWeight(weight)),
            None => Ok(()),
        }
    }

    /// Whether the food's reference amount is small; nothing if it is not
    /// known.
    pub(super) fn is_small(&self, up_to: Grams) -> Option<bool> {
        match self.reference_amount {
            _ if self.two_tablespoons_or_less => Some(true),
            Some(amount) => Some(amount <= up_to),
            None => None,
        }
    }

    pub(super) fn ingredient(&self, nutrient: NutrientId) -> Option<bool> {
        self.ingredients
            .iter()
            .find(|stated| stated.nutrient == nutrient)
            .map(|stated| stated.used)
    }
}
