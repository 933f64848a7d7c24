//! Figures of a food, exact, or what is missing for them.

use super::table::AmountBasis;
use crate::analysis::RecipeAnalysis;
use crate::exact::{FigureStatus, PartialSum};
use crate::foods::NutrientId;
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::Serialize;
use std::fmt;

/// Which food a figure is of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub enum WhichFood {
    /// The food that would bear the claim.
    This,
    /// The food that it is compared with.
    Reference,
}

/// What is missing for a proof.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum Missing {
    /// Some of the food has no value for a nutrient.
    Value {
        /// Of which food.
        food: WhichFood,
        /// The nutrient's name.
        name: String,
        /// Share of the food's known weight whose value is known, 0 to 1.
        coverage: Decimal,
    },
    /// The weight of a serving.
    ServingWeight {
        /// Of which food.
        food: WhichFood,
    },
    /// The reference amount customarily consumed.
    ReferenceAmount,
    /// The food to compare with.
    ReferenceFood,
    /// Whether an ingredient is used.
    Ingredient {
        /// Understood to contain which nutrient.
        nutrient: NutrientId,
        /// The question in words.
        words: String,
    },
}

impl fmt::Display for Missing {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let of = |food: &WhichFood| match food {
            WhichFood::This => "",
            WhichFood::Reference => " of the reference food",
        };
        match self {
            Self::Value { food, name, .. } => {
                write!(out, "{name}{} is not known for every ingredient", of(food))
            }
            Self::ServingWeight { food } => {
                write!(out, "the weight of a serving{} is not known", of(food))
            }
            Self::ReferenceAmount => out.write_str("the reference amount is not stated"),
            Self::ReferenceFood => out.write_str("no reference food is chosen"),
            Self::Ingredient { words, .. } => write!(out, "{words} is not stated"),
        }
    }
}

/// A food with what it takes to weigh its figures.
#[derive(Clone, Copy)]
pub(super) struct Measured<'a> {
    pub(super) which: WhichFood,
    pub(super) analysis: &'a RecipeAnalysis,
    pub(super) serving_weight: Option<Grams>,
    pub(super) reference_amount: Option<Grams>,
}

impl Measured<'_> {
    /// The sum of a nutrient in so much food, complete or not.
    pub(super) fn sum(
        &self,
        nutrient: NutrientId,
        basis: AmountBasis,
    ) -> Result<PartialSum, Missing> {
        let serving = self.analysis.per_serving(nutrient).unwrap_or_default();
        let grams = match basis {
            AmountBasis::Serving => return Ok(serving),
            AmountBasis::ReferenceAmount => {
                self.reference_amount.ok_or(Missing::ReferenceAmount)?
            }
            AmountBasis::Weight(grams) => grams,
        };
        let weight = self.weight()?;
        Ok(serving.scaled(grams.grams()).divided(weight.grams()))
    }

    /// The amount of a nutrient, if all of it is known.
    pub(super) fn amount(
        &self,
        nutrient: NutrientId,
        name: &str,
        basis: AmountBasis,
    ) -> Result<Decimal, Missing> {
        let sum = self.sum(nutrient, basis)?;
        match sum.status() {
            FigureStatus::Known => Ok(sum.known),
            _ => Err(self.missing(name, &sum)),
        }
    }

    pub(super) fn missing(&self, name: &str, sum: &PartialSum) -> Missing {
        Missing::Value {
            food: self.which,
            name: name.to_owned(),
            coverage: match sum.status() {
                FigureStatus::Missing => Decimal::ZERO,
                _ => sum.coverage(),
            },
        }
    }

    /// The stated weight of a serving, or the recipe's own where it is sure.
    fn weight(&self) -> Result<Grams, Missing> {
        self.serving_weight
            .or_else(|| self.analysis.sure_serving_mass())
            .ok_or(Missing::ServingWeight { food: self.which })
    }
}
