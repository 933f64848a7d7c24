//! As purchased → edible portion.
//!
//! The dataset's values and measures are for the edible portion. A weight
//! stated before peeling, boning, trimming or draining is larger.

use crate::foods::{Food, FoodId};
use crate::tables::{self, Row, TableError};
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

/// What is taken off a weight as purchased, and where the figure comes from.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum TrimRoute {
    /// Nothing: the weight is that of the edible portion.
    Nothing,
    /// The dataset's refuse.
    Refuse {
        /// Percent by weight.
        percent: u8,
        /// What it is: peel, bone.
        what: String,
    },
    /// A table's yield for what is done to the food.
    Table {
        /// What is done, in words.
        words: String,
        /// Where the yield was read, with how sure it is.
        source: String,
    },
}

/// A weight taken to its edible portion.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct EdiblePortion {
    /// Weight as stated.
    pub stated: Grams,
    /// What the stated weight means.
    pub basis: AmountBasis,
    /// What was taken off.
    pub route: TrimRoute,
    /// Edible share of the stated weight.
    pub factor: Decimal,
    /// Smallest that the share may be.
    pub low: Decimal,
    /// Largest that the share may be.
    pub high: Decimal,
    /// Weight of the edible portion.
    pub edible: Grams,
}

#[derive(Debug, Clone, Deserialize)]
struct TrimRow {
    food: FoodId,
    action: String,
    factor: Decimal,
    low: Decimal,
    high: Decimal,
    words: String,
    source: String,
    status: String,
}

/// Yields of peeling, trimming and draining, by food.
#[derive(Debug, Clone)]
pub struct TrimYields(Vec<TrimRow>);

impl TrimYields {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, or its factor does not lie inside its bounds.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "trim_yields";
        let rows: Vec<Row<TrimRow>> = tables::read(TABLE, text)?;
        for Row { line, row } in &rows {
            let ordered = Decimal::ZERO < row.low && row.low <= row.factor;
            if !(ordered && row.factor <= row.high && row.high <= Decimal::ONE) {
                return Err(TableError {
                    table: TABLE.to_owned(),
                    line: *line,
                    problem: format!(
                        "the factor {} must lie between its bounds {} and {}, from 0 to 1",
                        row.factor, row.low, row.high
                    ),
                });
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// Takes off what a weight as purchased loses: by the table where it knows
    /// what `line` says is done to the food, else by the dataset's refuse. A
    /// food of which neither speaks loses nothing.
    pub fn edible_portion(
        &self,
        food: &Food,
        stated: Grams,
        basis: AmountBasis,
        line: &str,
    ) -> EdiblePortion {
        let line = line.to_lowercase();
        let row = self
            .0
            .iter()
            .find(|row| row.food == food.id && has_word(&line, &row.action));
        let (route, factor, low, high) = match (basis, row, food.refuse_percent) {
            (AmountBasis::AsPurchased, Some(row), _) => {
                let route = TrimRoute::Table {
                    words: row.words.clone(),
                    source: format!("{} ({})", row.source, row.status),
                };
                (route, row.factor, row.low, row.high)
            }
            (AmountBasis::AsPurchased, None, Some(percent)) if percent > 0 => {
                let kept = Decimal::ONE - Decimal::from(percent) / Decimal::ONE_HUNDRED;
                let route = TrimRoute::Refuse {
                    percent,
                    what: food.refuse_description.clone(),
                };
                (route, kept, kept, kept)
            }
            _ => (TrimRoute::Nothing, Decimal::ONE, Decimal::ONE, Decimal::ONE),
        };
        EdiblePortion {
            stated,
            basis,
            route,
            factor,
            low,
            high,
            edible: stated * factor,
        }
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
