//! How far credits are rounded down, and what is too little to credit.

use super::Component;
use crate::exact::rounding::{guarded, round_down_to};
use crate::tables::{self, Row, TableError};
use crate::week::GradeGroup;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What a definition settles.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
enum Name {
    #[serde(rename = "round down to")]
    RoundDownTo,
    #[serde(rename = "smallest creditable")]
    SmallestCreditable,
    #[serde(rename = "whole grain-rich from")]
    WholeGrainRichFrom,
}

#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
struct Definition {
    name: Name,
    component: Component,
    group: Option<GradeGroup>,
    amount: Decimal,
    unit: String,
    paragraph: String,
    source: String,
    status: String,
    words: String,
}

/// The table of definitions.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CreditDefinitions(Vec<Definition>);

const TABLE: &str = "credit_definitions";

impl CreditDefinitions {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, not above zero, or says again what an earlier
    /// row says.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        let rows: Vec<Row<Definition>> = tables::read(TABLE, text)?;
        for (index, Row { line, row }) in rows.iter().enumerate() {
            let problem = |problem: String| TableError {
                table: TABLE.to_owned(),
                line: *line,
                problem,
            };
            if row.amount <= Decimal::ZERO {
                return Err(problem("the amount must be above zero".into()));
            }
            let same = |other: &&Row<Definition>| {
                (other.row.name, other.row.component, &other.row.group)
                    == (row.name, row.component, &row.group)
            };
            if let Some(other) = rows[..index].iter().find(same) {
                return Err(problem(format!(
                    "line {} settles the same already: remove one of the two",
                    other.line
                )));
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    fn find(
        &self,
        name: Name,
        component: Component,
        group: Option<&GradeGroup>,
    ) -> Option<&Definition> {
        let of = |group: Option<&GradeGroup>| {
            self.0.iter().find(|row| {
                row.name == name && row.component == component && row.group.as_ref() == group
            })
        };
        group.and_then(|group| of(Some(group))).or_else(|| of(None))
    }

    /// What an exact amount in one serving credits: rounded down to the
    /// component's step, and nothing at all below the smallest amount that
    /// counts for the group.
    pub fn credited(
        &self,
        component: Component,
        group: Option<&GradeGroup>,
        exact: Decimal,
    ) -> Decimal {
        let rounded = match self.find(Name::RoundDownTo, component, group) {
            Some(step) => round_down_to(exact, step.amount),
            None => guarded(exact),
        };
        match self.find(Name::SmallestCreditable, component, group) {
            Some(smallest) if rounded < smallest.amount => Decimal::ZERO,
            _ => rounded,
        }
    }

    /// The share of whole grain, from 0 to 1, from which an item is whole
    /// grain-rich; nothing where the table does not say.
    pub fn whole_grain_rich_from(&self) -> Option<Decimal> {
        self.find(Name::WholeGrainRichFrom, Component::Grains, None)
            .map(|row| row.amount / Decimal::ONE_HUNDRED)
    }
}
