//! A food and its household measures.

use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::str::FromStr;

/// Which food: one of the dataset's, or one of the office's own.
///
/// Written as `SR28:01001` or `OWN:7`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FoodId {
    /// A food of SR28 by its number (`NDB_No`).
    Sr28(u32),
    /// A food that the office has entered itself.
    Own(u32),
}

impl fmt::Display for FoodId {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Sr28(number) => write!(out, "SR28:{number:05}"),
            Self::Own(number) => write!(out, "OWN:{number}"),
        }
    }
}

impl FromStr for FoodId {
    type Err = String;

    fn from_str(text: &str) -> Result<Self, String> {
        let wrong = || format!("\"{text}\" is not a food: write SR28:01001 or OWN:7");
        let (source, number) = text.split_once(':').ok_or_else(wrong)?;
        let number = number.parse().map_err(|_| wrong())?;
        match source {
            "SR28" => Ok(Self::Sr28(number)),
            "OWN" => Ok(Self::Own(number)),
            _ => Err(wrong()),
        }
    }
}

impl Serialize for FoodId {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for FoodId {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

/// The dataset's food groups (`FdGrp_Cd`).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct FoodGroup(pub u16);

/// What the dataset says of a food, besides its nutrient values.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Food {
    /// Which food this is.
    pub id: FoodId,
    /// Food group.
    pub group: FoodGroup,
    /// Long description.
    pub description: String,
    /// Other names, comma-separated, often empty.
    pub common_names: String,
    /// Company, for brand-name entries; empty otherwise.
    pub manufacturer: String,
    /// Inedible share of the food as purchased, percent by weight.
    pub refuse_percent: Option<u8>,
    /// What the refuse is (peel, bone …).
    pub refuse_description: String,
}

/// A household measure of one food: `amount` of `words` weighs `grams`.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Measure {
    /// The dataset's running number among the measures of this food (`Seq`).
    pub number: u16,
    /// Number of units described, usually 1.
    pub amount: Decimal,
    /// The dataset's words: "cup, chopped", "large (2-1/4\" dia)".
    pub words: String,
    /// Weight of `amount` units, edible portion.
    pub grams: Grams,
}
