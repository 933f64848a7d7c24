//! An amount with its unit; a range keeps both its ends.

use super::{Amount, Unit};
use serde::Serialize;
use std::fmt;

/// An amount, or a range of amounts, of a unit.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Quantity {
    /// The least that is meant.
    pub low: Amount,
    /// The most that is meant; equal to `low` unless a range was written.
    pub high: Amount,
    /// Unit of both.
    pub unit: Unit,
}

impl Quantity {
    /// An amount that is no range.
    pub const fn exactly(amount: Amount, unit: Unit) -> Self {
        Self {
            low: amount,
            high: amount,
            unit,
        }
    }

    /// Whether a range was written.
    pub fn is_range(&self) -> bool {
        self.low != self.high
    }

    /// The amount that is computed with: the middle of a range.
    pub fn used(&self) -> Amount {
        // The ends of a range are short numbers; where the middle cannot be
        // kept, the lower end still can.
        self.low.midpoint(self.high).unwrap_or(self.low)
    }

    /// The same amount in another unit of the same kind.
    pub fn in_unit(&self, unit: &Unit) -> Option<Self> {
        let ratio = self.unit.ratio_to(unit)?;
        Some(Self {
            low: self.low.times(ratio)?,
            high: self.high.times(ratio)?,
            unit: unit.clone(),
        })
    }

    /// The sum in the larger unit, or nothing if the kinds differ.
    pub fn plus(&self, other: &Self) -> Option<Self> {
        let (unit, one, two) = self.together(other)?;
        Some(Self {
            low: one.low.plus(two.low)?,
            high: one.high.plus(two.high)?,
            unit,
        })
    }

    /// The difference in the larger unit, or nothing if the kinds differ or
    /// more is taken away than there is.
    pub fn minus(&self, other: &Self) -> Option<Self> {
        let (unit, one, two) = self.together(other)?;
        Some(Self {
            low: one.low.minus(two.high)?,
            high: one.high.minus(two.low)?,
            unit,
        })
    }

    /// `count` containers or pieces of this each; both may be ranges.
    pub fn each_of(&self, count: &Self) -> Option<Self> {
        Some(Self {
            low: self.low.times(count.low)?,
            high: self.high.times(count.high)?,
            unit: self.unit.clone(),
        })
    }

    /// The range from this to another amount, whichever comes first.
    pub fn up_to(&self, other: &Self) -> Option<Self> {
        let (unit, one, two) = self.together(other)?;
        Some(Self {
            low: one.low.min(two.low),
            high: one.high.max(two.high),
            unit,
        })
    }

    /// Both in the larger of the two units.
    fn together(&self, other: &Self) -> Option<(Unit, Self, Self)> {
        let larger = if self.unit.ratio_to(&other.unit)? >= Amount::ONE {
            &self.unit
        } else {
            &other.unit
        };
        Some((
            larger.clone(),
            self.in_unit(larger)?,
            other.in_unit(larger)?,
        ))
    }
}

impl fmt::Display for Quantity {
    /// Writes "2 lb", "1/2 to 3/4 cup", "3 large"; the unit in the singular.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}", self.low)?;
        if self.is_range() {
            write!(out, " to {}", self.high)?;
        }
        let unit = self.unit.to_string();
        if !unit.is_empty() {
            write!(out, " {unit}")?;
        }
        Ok(())
    }
}
