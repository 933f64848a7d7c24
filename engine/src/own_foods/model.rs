//! What is kept of an own food.

use crate::foods::NutrientId;
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A food that the office has entered or imported.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct OwnFood {
    /// Its number among the office's foods: `OWN:number`.
    pub number: u32,
    /// Description, as it is searched and printed.
    pub description: String,
    /// The package's ingredient statement; allergens are looked for in it.
    #[serde(default)]
    pub ingredients: String,
    /// Household measures.
    #[serde(default)]
    pub measures: Vec<OwnMeasure>,
    /// What the values rest on.
    pub source: OwnSource,
}

/// A household measure: `amount` of `words` weighs `grams`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct OwnMeasure {
    /// How many.
    pub amount: Decimal,
    /// Of what: "cup", "patty".
    pub words: String,
    /// Weight, edible portion.
    pub grams: Grams,
}

/// Where an own food's values come from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum OwnSource {
    /// The Nutrition Facts of a package: rounded by 21 CFR 101.9(c).
    Label {
        /// Weight of the label's serving.
        serving: Grams,
        /// Figures as printed, per serving.
        declared: Vec<Declared>,
        /// Which package, with the date it was read.
        reference: String,
    },
    /// Unrounded values: a specification sheet, a CSV, a food composition table.
    Values {
        /// Weight that the values are for.
        per: Grams,
        /// The values.
        values: Vec<Stated>,
        /// Which source.
        reference: String,
    },
}

/// A label's figure, as it is printed: "230", "less than 1".
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Declared {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// The figure, without its unit.
    pub printed: String,
}

/// A value in the nutrient's own unit.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Stated {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Amount.
    pub amount: Decimal,
}
