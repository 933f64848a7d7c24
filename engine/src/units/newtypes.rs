//! Decimal newtypes, one per unit, so that a unit slip does not compile.

use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

macro_rules! decimal_newtype {
    ($(#[$doc:meta])* $name:ident, $getter:ident) => {
        $(#[$doc])*
        #[derive(
            Debug, Clone, Copy, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize,
        )]
        #[serde(transparent)]
        pub struct $name(Decimal);

        impl $name {
            /// Zero of this unit.
            pub const ZERO: Self = Self(Decimal::ZERO);

            /// Wraps a number that is already in this unit.
            pub const fn new(value: Decimal) -> Self {
                Self(value)
            }

            /// The bare number, in this unit.
            pub const fn $getter(self) -> Decimal {
                self.0
            }
        }

        impl std::ops::Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }

        impl std::ops::AddAssign for $name {
            fn add_assign(&mut self, other: Self) {
                self.0 += other.0;
            }
        }

        impl std::ops::Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }

        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(terms: I) -> Self {
                terms.fold(Self::ZERO, |total, term| total + term)
            }
        }

        impl std::ops::Mul<Decimal> for $name {
            type Output = Self;
            fn mul(self, factor: Decimal) -> Self {
                Self(self.0 * factor)
            }
        }

        impl std::ops::Div<Decimal> for $name {
            type Output = Self;
            fn div(self, divisor: Decimal) -> Self {
                Self(self.0 / divisor)
            }
        }
    };
}

decimal_newtype!(
    /// A mass in grams.
    Grams,
    grams
);
decimal_newtype!(
    /// A mass in milligrams.
    Milligrams,
    milligrams
);
decimal_newtype!(
    /// A volume in millilitres.
    Millilitres,
    millilitres
);
decimal_newtype!(
    /// Food energy in kilocalories, the label's "calories".
    Kilocalories,
    kilocalories
);
decimal_newtype!(
    /// A number of servings.
    Servings,
    servings
);
decimal_newtype!(
    /// A share in hundredths.
    Percent,
    percent
);

impl From<Milligrams> for Grams {
    fn from(mass: Milligrams) -> Self {
        Self(mass.0 / Decimal::ONE_THOUSAND)
    }
}

impl From<Grams> for Milligrams {
    fn from(mass: Grams) -> Self {
        Self(mass.0 * Decimal::ONE_THOUSAND)
    }
}
