//! One line of kitchen text, read into an amount, a food and what is done to it.

mod opening;
mod segments;
mod sorting;
mod words;

use crate::units::{Quantity, QuantityError};
use serde::Serialize;

/// What a line is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub enum LineKind {
    /// An ingredient.
    Ingredient,
    /// A heading such as "For the sauce:"; not an ingredient.
    Heading,
    /// Nothing, or only marks; not an ingredient.
    Blank,
}

/// How much of the food a line asks for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum LineAmount {
    /// An amount.
    Stated {
        /// The amount.
        quantity: Quantity,
    },
    /// Words that are no amount ("to taste"), or a measure without a size
    /// ("a pinch"). It is unknown, not zero.
    Vague {
        /// As typed.
        words: String,
        /// Number of measures, where the dataset may know their size.
        #[serde(skip_serializing_if = "Option::is_none")]
        quantity: Option<Quantity>,
    },
    /// The line says nothing about the amount. It is unknown, not zero.
    Absent,
    /// The line says something that cannot be an amount.
    Faulty {
        /// What is wrong and how to mend it.
        error: QuantityError,
    },
}

/// What the words of a line say, before any food is looked up.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct LineReading {
    /// Ingredient, heading or blank.
    pub kind: LineKind,
    /// How much.
    pub amount: LineAmount,
    /// A second amount beside the one that is used: the cup of
    /// "1 cup (240 g)", the cans of "2 cans (15 oz each)".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub beside: Option<Quantity>,
    /// The container whose stated contents the amount is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub container: Option<String>,
    /// Words that name the food, with its state ("frozen", "cooked").
    pub food_words: String,
    /// Words that say what is done to it or what state it is in, lower case.
    pub preparation: Vec<String>,
    /// Remarks that say neither.
    pub notes: Vec<String>,
    /// The other food of a choice: "margarine" in "butter or margarine".
    #[serde(skip_serializing_if = "Option::is_none")]
    pub or_instead: Option<String>,
    /// Whether the words make the amount approximate.
    pub approximate: bool,
    /// Whether the food may be left out.
    pub optional: bool,
    /// Whether more than the amount is used: "plus more for dusting".
    pub and_more: bool,
}

impl LineReading {
    /// A reading of which nothing but the kind is known.
    pub(crate) const fn of(kind: LineKind) -> Self {
        Self {
            kind,
            amount: LineAmount::Absent,
            beside: None,
            container: None,
            food_words: String::new(),
            preparation: Vec::new(),
            notes: Vec::new(),
            or_instead: None,
            approximate: false,
            optional: false,
            and_more: false,
        }
    }
}

/// Reads a line. Every text has a reading; what cannot be read stays in its
/// `food_words`, so that nothing typed is lost.
pub fn read_line(text: &str) -> LineReading {
    let text = opening::without_bullet(text).replace("not packed", "unpacked");
    let text = text.as_str();
    match opening::kind(text) {
        LineKind::Ingredient => sorting::sort(text),
        kind => {
            let mut reading = LineReading::of(kind);
            text.clone_into(&mut reading.food_words);
            reading
        }
    }
}
