//! How a nutrient moves between two lines, with what is unknown of it.
//!
//! A missing value lies anywhere from zero up. Added sugars are the exception
//! with an upper bound: they are part of the sugars, so a known amount of
//! sugars bounds them.

use crate::analysis::amount_in;
use crate::exact::{Bounds, PartialSum};
use crate::foods::{FoodId, FoodTable, NutrientId};
use crate::recipe::WeighedLine;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::{Deserialize, Serialize};

/// A difference of which only bounds may be known.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct ChangeBounds {
    /// The change is not less than this; nothing where it could be any fall.
    pub low: Option<Decimal>,
    /// The change is not more than this; nothing where it could be any rise.
    pub high: Option<Decimal>,
}

impl ChangeBounds {
    /// No change.
    pub(super) const NONE: Self = Self {
        low: Some(Decimal::ZERO),
        high: Some(Decimal::ZERO),
    };

    /// Any change.
    pub(super) const UNKNOWN: Self = Self {
        low: None,
        high: None,
    };

    /// From an amount to another.
    fn between(before: Bounds, after: Bounds) -> Self {
        Self {
            low: before.high.map(|high| after.low - high),
            high: after.high.map(|high| high - before.low),
        }
    }

    /// From a total to another: known only where both are complete.
    pub(super) fn of_totals(before: &PartialSum, after: &PartialSum) -> Self {
        let totals = before.complete().zip(after.complete());
        let change = totals.map(|(before, after)| after - before);
        Self {
            low: change,
            high: change,
        }
    }

    /// The change, where all of it is known.
    pub fn exact(&self) -> Option<Decimal> {
        self.low.filter(|low| self.high == Some(*low))
    }

    /// True when it is certain to be a fall.
    pub fn falls(&self) -> bool {
        self.high.is_some_and(|high| high < Decimal::ZERO)
    }

    /// True when it is certain to be a rise.
    pub fn rises(&self) -> bool {
        self.low.is_some_and(|low| low > Decimal::ZERO)
    }

    /// The same change the other way round.
    pub(super) fn reversed(self) -> Self {
        Self {
            low: self.high.map(|high| -high),
            high: self.low.map(|low| -low),
        }
    }

    /// Two changes together.
    pub(super) fn plus(self, other: Self) -> Self {
        Self {
            low: self.low.zip(other.low).map(|(one, two)| one + two),
            high: self.high.zip(other.high).map(|(one, two)| one + two),
        }
    }

    /// The same change so many times; `by` must not be negative.
    pub(super) fn times(self, by: Decimal) -> Self {
        Self {
            low: self.low.map(|low| low * by),
            high: self.high.map(|high| high * by),
        }
    }

    /// The change shared by so many; `by` must be above zero.
    pub(super) fn divided(self, by: Decimal) -> Self {
        Self {
            low: self.low.map(|low| low / by),
            high: self.high.map(|high| high / by),
        }
    }
}

/// What some parts of a recipe bring of a nutrient.
pub(super) fn brought(foods: &FoodTable, parts: &[&WeighedLine], nutrient: NutrientId) -> Bounds {
    let of = |part: &&WeighedLine| match amount_in(foods, part, nutrient) {
        Some(amount) => Bounds::exactly(amount),
        None if nutrient == NutrientId::ADDED_SUGARS => Bounds {
            low: Decimal::ZERO,
            high: amount_in(foods, part, NutrientId::SUGARS),
        },
        None => Bounds::at_least(Decimal::ZERO),
    };
    parts.iter().map(of).sum()
}

/// How what a line brings moves.
pub(super) fn change(
    foods: &FoodTable,
    before: &[&WeighedLine],
    after: &[&WeighedLine],
    nutrient: NutrientId,
) -> ChangeBounds {
    ChangeBounds::between(
        brought(foods, before, nutrient),
        brought(foods, after, nutrient),
    )
}

/// Bounds of an amount, for ranking.
#[derive(Debug, Clone, Copy)]
pub(super) struct Rough {
    pub low: f64,
    pub high: Option<f64>,
}

impl Rough {
    /// What is not known may be any amount.
    pub const UNKNOWN: Self = Self {
        low: 0.0,
        high: None,
    };

    /// An amount that may be known.
    pub fn known(amount: Option<f64>) -> Self {
        amount.map_or(Self::UNKNOWN, |amount| Self {
            low: amount,
            high: Some(amount),
        })
    }

    /// The value of a food in 100 g, or what bounds it.
    pub fn of(foods: &FoodTable, food: FoodId, nutrient: NutrientId) -> Self {
        let value = |nutrient| foods.about_per_100_g(food, nutrient);
        match value(nutrient) {
            None if nutrient == NutrientId::ADDED_SUGARS => Self {
                low: 0.0,
                high: value(NutrientId::SUGARS),
            },
            value => Self::known(value),
        }
    }

    /// The same in another amount.
    pub fn times(self, factor: f64) -> Self {
        Self {
            low: self.low * factor,
            high: self.high.map(|high| high * factor),
        }
    }
}

impl From<Bounds> for Rough {
    fn from(bounds: Bounds) -> Self {
        Self {
            low: bounds.low.to_f64().unwrap_or(0.0),
            high: bounds.high.and_then(|high| high.to_f64()),
        }
    }
}
