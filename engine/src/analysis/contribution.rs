//! Which line brings how much of a nutrient.

use super::totals::amount_in;
use crate::foods::{FoodTable, NutrientId};
use crate::recipe::WeighedLine;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

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

/// Every line's part in the recipe's total of one nutrient, in line order.
pub fn contributions(
    foods: &FoodTable,
    lines: &[WeighedLine],
    nutrient: NutrientId,
) -> Vec<Contribution> {
    let amounts: Vec<Option<Decimal>> = lines
        .iter()
        .map(|line| amount_in(foods, line, nutrient))
        .collect();
    let total: Decimal = amounts.iter().flatten().sum();
    amounts
        .into_iter()
        .enumerate()
        .map(|(line, amount)| Contribution {
            line,
            amount,
            share: amount
                .filter(|_| !total.is_zero())
                .map(|amount| amount / total),
        })
        .collect()
}
