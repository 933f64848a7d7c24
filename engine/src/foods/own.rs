//! Foods of the office's own, as the table holds them.

use super::{Food, Measure, NutrientId};
use rust_decimal::Decimal;

/// A food of the office's own with its values.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct OwnEntry {
    /// Number, description and group.
    pub food: Food,
    /// Household measures.
    pub measures: Vec<Measure>,
    /// The values that are known.
    pub values: Vec<OwnValue>,
}

/// A value that may stand for an interval: a label's figure is rounded by law.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct OwnValue {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Value per 100 g, in the nutrient's unit.
    pub per_100_g: Decimal,
    /// Smallest that it may be.
    pub low: Decimal,
    /// Largest that it may be.
    pub high: Decimal,
}

impl OwnEntry {
    /// The value of a nutrient, if it is known.
    pub(super) fn value(&self, nutrient: NutrientId) -> Option<&OwnValue> {
        self.values.iter().find(|value| value.nutrient == nutrient)
    }
}
