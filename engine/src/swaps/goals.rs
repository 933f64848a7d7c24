//! What a swap is meant to move, and what it must keep.

use super::AmountBy;
use crate::foods::{FoodId, NutrientId};
use crate::units::Kilocalories;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What to move, and which way.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind", content = "nutrient")]
pub enum Aim {
    /// Less of a nutrient.
    Less(NutrientId),
    /// More of a nutrient.
    More(NutrientId),
    /// Less money, by the prices that are given.
    LessCost,
}

/// An aim with its weight among others.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct Goal {
    /// What to move.
    pub aim: Aim,
    /// How much it counts beside the other goals; zero counts nothing.
    pub weight: u16,
}

/// One goal or several.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Goals(pub Vec<Goal>);

impl Goals {
    /// Goals of equal weight.
    pub fn equal(aims: &[Aim]) -> Self {
        Self(aims.iter().map(|&aim| Goal { aim, weight: 1 }).collect())
    }

    /// The goals that count.
    pub(super) fn counted(&self) -> impl Iterator<Item = &Goal> {
        self.0.iter().filter(|goal| goal.weight > 0)
    }
}

/// The price of a food, as the office pays it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Price {
    /// Which food.
    pub food: FoodId,
    /// For 100 g as the line states it, in the office's money.
    pub per_100_g: Decimal,
}

/// How far the calories of a serving may move.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct EnergyBand {
    /// The largest fall, as a number above zero.
    pub fall: Kilocalories,
    /// The largest rise.
    pub rise: Kilocalories,
}

impl EnergyBand {
    /// True when a serving may change by `change`.
    pub fn holds(&self, change: Decimal) -> bool {
        -self.fall.kilocalories() <= change && change <= self.rise.kilocalories()
    }
}

/// What is asked of the credit toward meal components.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum CreditDemand {
    /// No component may credit less in a serving, and no grain may cease to be
    /// whole grain-rich.
    #[default]
    Keep,
    /// Nothing.
    NotAsked,
}

/// What a swap must keep.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct SwapOptions {
    /// The band of calories.
    pub energy: EnergyBand,
    /// The credit.
    #[serde(default)]
    pub credit: CreditDemand,
    /// By what the new amount is found; by the kind of food where nothing is
    /// said.
    #[serde(default)]
    pub amount: Option<AmountBy>,
    /// Prices, as far as they are known.
    #[serde(default)]
    pub prices: Vec<Price>,
}

/// Up to 150 kcal less and 50 kcal more in a serving: a swap seldom closes the
/// band of a whole meal, and a plan has more room below than above. Our own
/// judgement.
impl Default for SwapOptions {
    fn default() -> Self {
        Self {
            energy: EnergyBand {
                fall: Kilocalories::new(Decimal::from(150)),
                rise: Kilocalories::new(Decimal::from(50)),
            },
            credit: CreditDemand::default(),
            amount: None,
            prices: Vec::new(),
        }
    }
}

impl SwapOptions {
    /// The price of a food, if it is known.
    pub(super) fn price(&self, food: FoodId) -> Option<Decimal> {
        let price = self.prices.iter().find(|price| price.food == food);
        price.map(|price| price.per_100_g)
    }
}
