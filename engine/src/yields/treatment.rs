//! Shares that drain, rinse or fry away.

use crate::foods::NutrientId;
use crate::recipe::Keep;
use crate::tables::{self, Row, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// Name of a treatment in its table.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(transparent)]
pub struct TreatmentId(pub String);

/// What a treatment leaves of a nutrient.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Treatment {
    /// Its name.
    pub id: TreatmentId,
    /// What is done, in words.
    pub words: String,
    /// Which nutrient it touches; all of the line where none is named.
    pub nutrient: Option<NutrientId>,
    /// Share that stays, 0 to 1.
    pub keeps: Decimal,
    /// Smallest share that may stay.
    pub low: Decimal,
    /// Largest share that may stay.
    pub high: Decimal,
    /// Where the share was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
}

/// The table of treatments; one may have several rows, one per nutrient.
#[derive(Debug, Clone)]
pub struct Treatments(Vec<Treatment>);

impl Treatments {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, or its share does not lie between 0 and 1 and
    /// inside its bounds.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "treatments";
        let rows: Vec<Row<Treatment>> = tables::read(TABLE, text)?;
        for Row { line, row } in &rows {
            let ordered = Decimal::ZERO <= row.low && row.low <= row.keeps;
            if !(ordered && row.keeps <= row.high && row.high <= Decimal::ONE) {
                return Err(TableError {
                    table: TABLE.to_owned(),
                    line: *line,
                    problem: format!(
                        "the share {} must lie between its bounds {} and {}, from 0 to 1",
                        row.keeps, row.low, row.high
                    ),
                });
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// All rows, in table order.
    pub fn rows(&self) -> &[Treatment] {
        &self.0
    }

    /// The rows of one treatment.
    pub fn of<'a>(&'a self, id: &'a TreatmentId) -> impl Iterator<Item = &'a Treatment> {
        self.0.iter().filter(move |row| row.id == *id)
    }

    /// What the treatments of a line leave, as arithmetic takes it.
    pub fn keeps(&self, treatments: &[TreatmentId]) -> Vec<Keep> {
        treatments
            .iter()
            .flat_map(|id| self.of(id))
            .map(|row| Keep {
                nutrient: row.nutrient,
                share: row.keeps,
            })
            .collect()
    }
}
