//! What a person may want to look at in a line that was read.

use super::weigh::NamedMeasure;
use crate::foods::FoodId;
use crate::units::{Quantity, Size};
use serde::Serialize;

/// Something that was taken one way and may be meant another.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum Doubt {
    /// The words make the amount approximate: "about", "heaping".
    Approximate,
    /// A range was written; its middle is used.
    RangeMiddleUsed {
        /// The range.
        range: Quantity,
    },
    /// The food may be left out; it is counted.
    OptionalCounted,
    /// More than the amount is used; only the amount is counted.
    MoreNotCounted,
    /// The line offers a choice of foods.
    OffersChoice {
        /// The words of the other food.
        instead: String,
    },
    /// The stated contents of a container are the weight, and the line drains
    /// them: what runs off is counted too.
    DrainedContainer,
    /// It is not sure that this food is meant.
    FoodUnsure {
        /// From 0 to 100.
        confidence: u8,
    },
    /// The line may name several foods; only one is taken. Each belongs on a
    /// line of its own.
    SeveralFoods,
    /// This food was taken before a slightly better match, since the other
    /// has no measure for the line's unit.
    TakenAsWeighable {
        /// The better match.
        over: FoodId,
    },
    /// The line says no size; this one was taken.
    SizeAssumed {
        /// The size.
        size: Size,
    },
    /// The line says a size; the measure does not.
    SizeNotInMeasure {
        /// The size.
        size: Size,
    },
    /// Other measures of the food fit as well and weigh differently.
    OtherMeasures {
        /// They.
        others: Vec<NamedMeasure>,
    },
    /// The measure is for the food cut or filled in a way that the line does
    /// not say.
    MeasureSaysMore {
        /// The measure's words.
        words: Vec<String>,
    },
    /// The line says how the food is cut; the measure does not.
    CutNotInMeasure {
        /// The line's words.
        words: Vec<String>,
    },
    /// Ounces are weight; the food is also measured by the fluid ounce.
    OuncesTakenAsWeight,
}

impl Doubt {
    /// True for a doubt about what the words say, false for one about the food
    /// that they were matched with or its measures.
    pub const fn is_about_the_words(&self) -> bool {
        matches!(
            self,
            Self::Approximate
                | Self::RangeMiddleUsed { .. }
                | Self::OptionalCounted
                | Self::MoreNotCounted
                | Self::OffersChoice { .. }
        )
    }
}
