//! Exhibit A: how much of a grain product is one ounce equivalent.

use crate::tables::{self, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A row of Exhibit A: a weight that credits as a share of an ounce equivalent.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct GrainWeight {
    /// Letter of the group.
    pub group: String,
    /// What the weight credits, oz eq.
    pub credit: Decimal,
    /// Weight in grams.
    pub grams: Decimal,
    /// The same weight as published in ounces.
    pub ounces: Decimal,
    /// Where the figure was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
    /// What belongs to the group.
    pub words: String,
}

/// The table of grain groups.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct GrainGroups(Vec<GrainWeight>);

const TABLE: &str = "grain_groups";

impl GrainGroups {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, a weight is not above zero, or a group gives
    /// one credit twice.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        let rows: Vec<tables::Row<GrainWeight>> = tables::read(TABLE, text)?;
        for (index, tables::Row { line, row }) in rows.iter().enumerate() {
            let problem = |problem: String| TableError {
                table: TABLE.to_owned(),
                line: *line,
                problem,
            };
            if row.grams <= Decimal::ZERO || row.credit <= Decimal::ZERO {
                return Err(problem(
                    "grams and credit must be above zero: enter what Exhibit A prints".into(),
                ));
            }
            if let Some(other) = rows[..index]
                .iter()
                .find(|other| other.row.group == row.group && other.row.credit == row.credit)
            {
                return Err(problem(format!(
                    "group {} gives {} oz eq on line {} already: remove one of the two",
                    row.group, row.credit, other.line
                )));
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// The weight of one ounce equivalent of a group.
    pub fn one_oz_eq(&self, group: &str) -> Option<&GrainWeight> {
        self.0
            .iter()
            .find(|row| row.group == group && row.credit == Decimal::ONE)
    }

    /// All rows.
    pub fn rows(&self) -> &[GrainWeight] {
        &self.0
    }
}
