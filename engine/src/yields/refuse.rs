//! As purchased → edible portion.
//!
//! The dataset's values and measures are for the edible portion. A weight
//! stated before peeling, boning or trimming is larger by the refuse.

use crate::foods::Food;
use crate::tables::{self, TableError};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What a stated weight means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum AmountBasis {
    /// With peel, bone, shell: as it comes from the supplier.
    AsPurchased,
    /// Ready to eat or to cook.
    EdiblePortion,
}

/// A weight taken to its edible portion.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct EdiblePortion {
    /// Weight as stated.
    pub stated: Grams,
    /// What the stated weight means.
    pub basis: AmountBasis,
    /// Refuse that was taken off, percent by weight.
    pub refuse_percent: u8,
    /// Weight of the edible portion.
    pub edible: Grams,
}

/// Takes the refuse off a weight that is meant as purchased. A food for which
/// the dataset gives no refuse has none to take off.
pub fn edible_portion(food: &Food, stated: Grams, basis: AmountBasis) -> EdiblePortion {
    let refuse_percent = match basis {
        AmountBasis::AsPurchased => food.refuse_percent.unwrap_or(0),
        AmountBasis::EdiblePortion => 0,
    };
    let kept = Decimal::ONE_HUNDRED - Decimal::from(refuse_percent);
    EdiblePortion {
        stated,
        basis,
        refuse_percent,
        edible: stated * kept / Decimal::ONE_HUNDRED,
    }
}

#[derive(Debug, Clone, Deserialize)]
struct BasisRow {
    words: String,
    place: Place,
    basis: AmountBasis,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Place {
    /// Before the food or without a comma: "2 lb peeled onions".
    Before,
    /// After a comma: "2 lb onions, peeled".
    After,
    /// Anywhere: "bone-in".
    Anywhere,
}

/// Kitchen words that say what a weight means.
#[derive(Debug, Clone)]
pub struct BasisWords(Vec<BasisRow>);

impl BasisWords {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        let rows = tables::read("amount_basis", text)?;
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// What the words of a line say its weight means: "2 lb onions, peeled"
    /// are weighed first and peeled then; nothing where no word tells.
    pub fn basis(&self, line: &str) -> Option<AmountBasis> {
        let line = line.to_lowercase();
        let (before, after) = line.split_once(',').unwrap_or((&line, ""));
        let stands = |row: &&BasisRow| match row.place {
            Place::Before => has_word(before, &row.words),
            Place::After => has_word(after, &row.words),
            Place::Anywhere => has_word(&line, &row.words),
        };
        self.0.iter().find(stands).map(|row| row.basis)
    }
}

fn has_word(text: &str, word: &str) -> bool {
    let boundary = |c: Option<char>| c.is_none_or(|c| !c.is_alphanumeric());
    text.match_indices(word).any(|(start, found)| {
        boundary(text[..start].chars().next_back())
            && boundary(text[start + found.len()..].chars().next())
    })
}
