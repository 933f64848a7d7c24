//! The table of steps: by how much amounts and portions may be changed, and
//! how far each kind of change takes a dish from what it was.

use crate::tables::{self, Row, TableError};
use nutrient_data::kitchen::WEEK_CHANGES;
use rust_decimal::Decimal;
use serde::Deserialize;

/// Kinds of change.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(super) enum Way {
    /// Another amount of a line.
    Amount,
    /// Another portion.
    Portion,
    /// A kitchen move.
    Move,
    /// Half of another food.
    Half,
    /// Another food.
    Food,
    /// Another recipe.
    Choice,
}

#[derive(Debug, Clone, Deserialize)]
struct StepRow {
    way: Way,
    step: Option<Decimal>,
    departure: u16,
}

/// The table.
#[derive(Debug, Clone)]
pub(super) struct Steps(Vec<StepRow>);

impl Steps {
    /// The committed table.
    ///
    /// # Errors
    /// When a row is damaged, or an amount or a portion has no step above zero.
    pub fn committed() -> Result<Self, TableError> {
        const TABLE: &str = "week_changes";
        let rows: Vec<Row<StepRow>> = tables::read(TABLE, WEEK_CHANGES)?;
        for Row { line, row } in &rows {
            let stepped = matches!(row.way, Way::Amount | Way::Portion);
            let step = row.step.filter(|step| *step > Decimal::ZERO);
            if stepped != step.is_some() {
                return Err(TableError {
                    table: TABLE.to_owned(),
                    line: *line,
                    problem: "an amount or a portion needs a step above zero, other ways none"
                        .to_owned(),
                });
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// The steps of a way, each with how far it takes the dish.
    pub fn of(&self, way: Way) -> impl Iterator<Item = (Decimal, u16)> {
        let rows = self.0.iter().filter(move |row| row.way == way);
        rows.filter_map(|row| Some((row.step?, row.departure)))
    }

    /// How far a way without steps takes the dish.
    pub fn departure(&self, way: Way) -> u16 {
        let row = self.0.iter().find(|row| row.way == way);
        row.map_or(0, |row| row.departure)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_committed_table_reads_and_has_every_way() {
        let steps = Steps::committed().unwrap();
        assert!(steps.of(Way::Amount).count() >= 2);
        assert!(steps.of(Way::Portion).count() >= 2);
        for way in [Way::Move, Way::Half, Way::Food, Way::Choice] {
            assert!(steps.departure(way) > 0, "{way:?}");
        }
    }
}
