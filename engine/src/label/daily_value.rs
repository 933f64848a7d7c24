//! Daily Values: the amounts that percentages on the panel refer to.

use super::DAILY_VALUES;
use crate::foods::NutrientId;
use crate::rules::Citation;
use crate::tables::{self, Row, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// For whom a panel is.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Audience {
    /// Adults and children of 4 years and over.
    #[default]
    #[serde(rename = "4 and over")]
    FourAndOver,
    /// Children of 1 to 3 years.
    #[serde(rename = "1 to 3")]
    OneToThree,
}

/// The two kinds of Daily Value, whose percentages are rounded differently.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum DailyValueKind {
    /// Reference Daily Intake, for vitamins and minerals.
    #[serde(rename = "RDI")]
    ReferenceDailyIntake,
    /// Daily Reference Value, for all others.
    #[serde(rename = "DRV")]
    DailyReferenceValue,
}

/// One Daily Value.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all(serialize = "camelCase"))]
pub struct DailyValue {
    /// Which nutrient; nothing where the dataset has no such value.
    pub nutrient: Option<NutrientId>,
    /// For whom.
    pub audience: Audience,
    /// Of which kind.
    pub kind: DailyValueKind,
    /// The amount, in `unit`.
    #[serde(with = "rust_decimal::serde::str")]
    pub amount: Decimal,
    /// g, mg, mcg or mcg DFE.
    pub unit: String,
    /// What it is the Daily Value of, in words.
    pub words: String,
    /// Where the figure stands.
    #[serde(flatten)]
    pub citation: Citation,
}

impl DailyValue {
    /// An amount as percent of the Daily Value, exact.
    pub fn percent(&self, amount: Decimal) -> Decimal {
        amount * Decimal::ONE_HUNDRED / self.amount
    }
}

/// Reads the table.
///
/// # Errors
/// When a row is incomplete, an amount is not above zero, or a nutrient has
/// two values for the same audience.
pub(super) fn read(text: &str) -> Result<Vec<DailyValue>, TableError> {
    let rows: Vec<Row<DailyValue>> = tables::read(DAILY_VALUES, text)?;
    for (index, Row { line, row }) in rows.iter().enumerate() {
        let problem = |problem: String| TableError {
            table: DAILY_VALUES.to_owned(),
            line: *line,
            problem,
        };
        if row.amount <= Decimal::ZERO {
            return Err(problem("a Daily Value must be above zero".into()));
        }
        let same = |other: &&Row<DailyValue>| {
            (&other.row.words, other.row.audience) == (&row.words, row.audience)
                || (row.nutrient.is_some()
                    && (other.row.nutrient, other.row.audience) == (row.nutrient, row.audience))
        };
        if let Some(other) = rows[..index].iter().find(same) {
            return Err(problem(format!(
                "the same nutrient and audience as line {}: keep one",
                other.line
            )));
        }
    }
    Ok(rows.into_iter().map(|row| row.row).collect())
}
