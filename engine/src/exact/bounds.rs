//! A figure of which only its bounds are known.

use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What a figure that cannot be negative may be while parts of it are unknown:
/// at least `low`, and at most `high` where there is such a limit.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Bounds {
    /// The figure is not less than this: the sum of what is known.
    pub low: Decimal,
    /// The figure is not more than this; nothing where an unknown part could
    /// be of any size.
    pub high: Option<Decimal>,
}

impl Bounds {
    /// Zero, exactly.
    pub const ZERO: Self = Self {
        low: Decimal::ZERO,
        high: Some(Decimal::ZERO),
    };

    /// A figure that is fully known.
    pub fn exactly(value: Decimal) -> Self {
        Self {
            low: value,
            high: Some(value),
        }
    }

    /// A figure of which only a part is known.
    pub fn at_least(low: Decimal) -> Self {
        Self { low, high: None }
    }

    /// True when nothing is unknown.
    pub fn is_exact(&self) -> bool {
        self.high == Some(self.low)
    }

    /// Both bounds multiplied by `factor`, which must not be negative.
    pub fn times(self, factor: Decimal) -> Self {
        Self {
            low: self.low * factor,
            high: self.high.map(|high| high * factor),
        }
    }

    /// What of the figure lies above `floor`, or zero.
    pub fn above(self, floor: Decimal) -> Self {
        let rest = |value: Decimal| (value - floor).max(Decimal::ZERO);
        Self {
            low: rest(self.low),
            high: self.high.map(rest),
        }
    }

    /// The smaller of two figures.
    pub fn min(self, other: Self) -> Self {
        Self {
            low: self.low.min(other.low),
            high: match (self.high, other.high) {
                (Some(a), Some(b)) => Some(a.min(b)),
                (high, None) | (None, high) => high,
            },
        }
    }

    /// The larger of two figures.
    pub fn max(self, other: Self) -> Self {
        Self {
            low: self.low.max(other.low),
            high: self.high.zip(other.high).map(|(a, b)| a.max(b)),
        }
    }

    /// What is left of the figure without `part`, of which it consists in part.
    pub fn without(self, part: Self) -> Self {
        let rest = (self.low - part.low).max(Decimal::ZERO);
        if self.is_exact() && part.is_exact() {
            Self::exactly(rest)
        } else {
            Self::at_least(rest)
        }
    }
}

impl std::ops::Add for Bounds {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self {
            low: self.low + other.low,
            high: self.high.zip(other.high).map(|(a, b)| a + b),
        }
    }
}

impl std::iter::Sum for Bounds {
    fn sum<I: Iterator<Item = Self>>(terms: I) -> Self {
        terms.fold(Self::ZERO, |total, term| total + term)
    }
}
