//! Edible → cooked, by the best route that there is.

use super::pair::cooked_pairs;
use crate::foods::{FoodId, FoodTable, NutrientId};
use crate::tables::{self, Row, TableError};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// How a yield was found, best first.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum YieldRoute {
    /// The cooked food was weighed.
    Measured,
    /// A table gives the factor.
    Table {
        /// Where the factor was read, with how sure it is.
        source: String,
    },
    /// Estimated from the dataset's raw and cooked entries.
    DatasetPair,
}

/// Grams cooked per gram of edible raw food.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct CookedYield {
    /// The entry to compute with after cooking.
    pub cooked: FoodId,
    /// Cooked weight over raw weight.
    pub factor: Decimal,
    /// Smallest that the factor may be.
    pub low: Decimal,
    /// Largest that the factor may be.
    pub high: Decimal,
    /// How it was found.
    pub route: YieldRoute,
}

impl CookedYield {
    /// The share of a nutrient that stays through cooking, from the dataset's
    /// two entries: (amount per gram cooked × yield) ÷ (amount per gram raw),
    /// the "true retention" of Murphy, Criner and Gray (1975). Above 1 where
    /// something was added or concentrated. Nothing where an entry lacks the
    /// value or the raw food has none of it.
    pub fn retention(
        &self,
        foods: &FoodTable,
        raw: FoodId,
        nutrient: NutrientId,
    ) -> Option<Decimal> {
        let before = foods.per_100_g(raw, nutrient)?;
        let after = foods.per_100_g(self.cooked, nutrient)?;
        (before > Decimal::ZERO).then(|| after * self.factor / before)
    }
}

#[derive(Debug, Clone, Deserialize)]
struct YieldRow {
    raw: FoodId,
    cooked: FoodId,
    factor: Decimal,
    low: Decimal,
    high: Decimal,
    source: String,
    status: String,
}

/// Published yields, by raw and cooked entry.
#[derive(Debug, Clone)]
pub struct YieldTable(Vec<YieldRow>);

impl YieldTable {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, or its factor does not lie inside its bounds.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "cooking_yields";
        let rows: Vec<Row<YieldRow>> = tables::read(TABLE, text)?;
        for Row { line, row } in &rows {
            if !(Decimal::ZERO < row.low && row.low <= row.factor && row.factor <= row.high) {
                return Err(TableError {
                    table: TABLE.to_owned(),
                    line: *line,
                    problem: format!(
                        "the factor {} must lie between its bounds {} and {}, above zero",
                        row.factor, row.low, row.high
                    ),
                });
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// What a raw food can become, table rows first, then the dataset's pairs
    /// that no row speaks of.
    pub fn proposals(&self, foods: &FoodTable, raw: FoodId) -> Vec<CookedYield> {
        let mut proposals: Vec<CookedYield> = self
            .0
            .iter()
            .filter(|row| row.raw == raw)
            .map(|row| CookedYield {
                cooked: row.cooked,
                factor: row.factor,
                low: row.low,
                high: row.high,
                route: YieldRoute::Table {
                    source: format!("{} ({})", row.source, row.status),
                },
            })
            .collect();
        for pair in cooked_pairs(foods, raw) {
            if proposals.iter().all(|known| known.cooked != pair.cooked) {
                proposals.push(CookedYield {
                    cooked: pair.cooked,
                    factor: pair.factor,
                    low: pair.low,
                    high: pair.high,
                    route: YieldRoute::DatasetPair,
                });
            }
        }
        proposals
    }

    /// The yield of one raw food as one cooked entry: measured if a cooked
    /// weight is given, else by the table, else by the pair; nothing where no
    /// route leads there.
    pub fn cooked_yield(
        &self,
        foods: &FoodTable,
        raw: FoodId,
        cooked: FoodId,
        weights: Option<(Grams, Grams)>,
    ) -> Option<CookedYield> {
        if let Some((before, after)) = weights.filter(|(before, _)| *before > Grams::ZERO) {
            let factor = after.grams() / before.grams();
            return Some(CookedYield {
                cooked,
                factor,
                low: factor,
                high: factor,
                route: YieldRoute::Measured,
            });
        }
        self.proposals(foods, raw)
            .into_iter()
            .find(|proposal| proposal.cooked == cooked)
    }
}
