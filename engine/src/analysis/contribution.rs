//! Which line brings how much of a nutrient.

use super::totals::amount_in;
use crate::foods::{FoodTable, NutrientId};
use crate::recipe::WeighedLine;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// One line's part in a total.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Contribution {
    /// Index of the line in the recipe.
    pub line: usize,
    /// Amount in the nutrient's unit; nothing where it is unknown.
    pub amount: Option<Decimal>,
    /// Share of the known total, 0 to 1; nothing where the amount is unknown
    /// or the total is zero.
    pub share: Option<Decimal>,
}

/// Every line's part in the recipe's total of one nutrient, in line order. The
/// parts of a line that stands for another recipe are taken together.
pub fn contributions(
    foods: &FoodTable,
    parts: &[WeighedLine],
    nutrient: NutrientId,
) -> Vec<Contribution> {
    let mut amounts: BTreeMap<usize, Option<Decimal>> = BTreeMap::new();
    for part in parts {
        let amount = amount_in(foods, part, nutrient);
        amounts
            .entry(part.line)
            .and_modify(|sum| *sum = sum.zip(amount).map(|(sum, more)| sum + more))
            .or_insert(amount);
    }
    let total: Decimal = amounts.values().flatten().sum();
    amounts
        .into_iter()
        .map(|(line, amount)| Contribution {
            line,
            amount,
            share: amount
                .filter(|_| !total.is_zero())
                .map(|amount| amount / total),
        })
        .collect()
}
