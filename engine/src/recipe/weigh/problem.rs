//! Why a line has no weight, and what to do about it.

use super::NamedMeasure;
use crate::foods::FoodId;
use crate::units::{Quantity, QuantityError, Unit};
use serde::Serialize;
use std::fmt;

/// Why a line has no weight. Its weight is unknown then, not zero.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum WeighProblem {
    /// A heading or a blank line; nothing to weigh.
    NotAnIngredient,
    /// No food is known for the line's words.
    NoFood,
    /// The food that a person chose is not in the table.
    UnknownFood {
        /// Its number.
        food: FoodId,
    },
    /// The line says nothing about the amount.
    NoAmount,
    /// The line's words are no amount.
    Vague {
        /// As typed.
        words: String,
    },
    /// The line's amount cannot be one.
    Faulty {
        /// What is wrong with it.
        error: QuantityError,
    },
    /// The food has no measure for the line's unit.
    NoSuchMeasure {
        /// What the line asks for.
        wanted: Quantity,
        /// The measures that the food has.
        has: Vec<NamedMeasure>,
    },
}

impl WeighProblem {
    /// What a person can do about it.
    pub const fn remedy(&self) -> &'static str {
        match self {
            Self::NotAnIngredient => "Nothing to do; if it is an ingredient, write its amount.",
            Self::NoFood | Self::UnknownFood { .. } => "Choose the food that is meant.",
            Self::NoAmount => "Write the amount before the food, or enter its weight.",
            Self::Vague { .. } => "Enter the weight that is used; until then it counts as unknown.",
            Self::Faulty { error } => error.remedy(),
            Self::NoSuchMeasure { .. } => {
                "Enter the weight, use one of the food's own measures, or choose another food."
            }
        }
    }
}

impl fmt::Display for WeighProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotAnIngredient => out.write_str("this line is not an ingredient"),
            Self::NoFood => out.write_str("no food is known for these words"),
            Self::UnknownFood { food } => write!(out, "there is no food {food}"),
            Self::NoAmount => out.write_str("the line says no amount"),
            Self::Vague { words } => write!(out, "\"{words}\" is not a weight"),
            Self::Faulty { error } => error.fmt(out),
            Self::NoSuchMeasure { wanted, has } => {
                let of = match wanted.unit == Unit::pieces() {
                    true => "by the piece, as in",
                    false => "for",
                };
                write!(out, "this food has no measure {of} \"{wanted}\"; ")?;
                if has.is_empty() {
                    return out.write_str("it has none at all");
                }
                out.write_str("it has ")?;
                for (at, measure) in has.iter().enumerate() {
                    let comma = if at == 0 { "" } else { "; " };
                    write!(
                        out,
                        "{comma}{} {}",
                        measure.amount.normalize(),
                        measure.words
                    )?;
                }
                Ok(())
            }
        }
    }
}

impl std::error::Error for WeighProblem {}
