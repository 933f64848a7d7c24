//! How much of a unit: an exact fraction, so that a third stays a third until
//! the one division that makes a weight of it.

use rust_decimal::Decimal;
use serde::{Serialize, Serializer};
use std::cmp::Ordering;
use std::fmt;

/// The largest numerator or denominator that is kept. It leaves room to
/// multiply two of them in 128 bits.
const LARGEST_PART: u64 = 1_000_000_000_000_000_000;

/// Denominators that a kitchen writes as a fraction rather than a decimal.
const KITCHEN_DENOMINATORS: [u64; 7] = [2, 3, 4, 6, 8, 12, 16];

/// A fraction that is never negative, in lowest terms.
///
/// Operations return nothing when the result has more digits than are kept;
/// no amount of a recipe comes near.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Amount {
    numerator: u64,
    denominator: u64,
}

impl Amount {
    /// Nothing.
    pub const ZERO: Self = Self::whole(0);
    /// One.
    pub const ONE: Self = Self::whole(1);

    /// A whole number.
    pub const fn whole(number: u32) -> Self {
        Self {
            numerator: number as u64,
            denominator: 1,
        }
    }

    /// A fraction, or nothing if the denominator is zero or the fraction has
    /// more than 18 digits above or below the line in lowest terms.
    pub fn fraction(numerator: u128, denominator: u128) -> Option<Self> {
        if denominator == 0 {
            return None;
        }
        let divisor = greatest_common_divisor(numerator, denominator);
        let (numerator, denominator) = (numerator / divisor, denominator / divisor);
        let kept = |part| {
            u64::try_from(part)
                .ok()
                .filter(|part| *part <= LARGEST_PART)
        };
        Some(Self {
            numerator: kept(numerator)?,
            denominator: kept(denominator)?,
        })
    }

    /// Reads plain digits with at most one decimal point ("12", ".5", "1.25").
    pub fn from_digits(digits: &str) -> Option<Self> {
        let (whole, decimals) = digits.split_once('.').unwrap_or((digits, ""));
        let decimals = decimals.trim_end_matches('0');
        let denominator = 10u128.checked_pow(decimals.len().try_into().ok()?)?;
        let numerator = format!("{whole}{decimals}");
        let numerator = if numerator.is_empty() {
            0
        } else {
            numerator.parse().ok()?
        };
        Self::fraction(numerator, denominator)
    }

    /// Whether this is nothing.
    pub const fn is_zero(self) -> bool {
        self.numerator == 0
    }

    /// Whether this is less than one and more than nothing.
    pub const fn is_proper_fraction(self) -> bool {
        self.numerator > 0 && self.numerator < self.denominator
    }

    /// The parts, wide enough to be multiplied.
    const fn parts(self) -> (u128, u128) {
        (self.numerator as u128, self.denominator as u128)
    }

    /// The sum.
    pub fn plus(self, other: Self) -> Option<Self> {
        let ((above, below), (other_above, other_below)) = (self.parts(), other.parts());
        Self::fraction(
            above * other_below + other_above * below,
            below * other_below,
        )
    }

    /// The difference; nothing also where it would be negative.
    pub fn minus(self, other: Self) -> Option<Self> {
        let ((above, below), (other_above, other_below)) = (self.parts(), other.parts());
        Self::fraction(
            (above * other_below).checked_sub(other_above * below)?,
            below * other_below,
        )
    }

    /// The product.
    pub fn times(self, other: Self) -> Option<Self> {
        let ((above, below), (other_above, other_below)) = (self.parts(), other.parts());
        Self::fraction(above * other_above, below * other_below)
    }

    /// The quotient; nothing also when divided by nothing.
    pub fn over(self, other: Self) -> Option<Self> {
        let ((above, below), (other_above, other_below)) = (self.parts(), other.parts());
        Self::fraction(above * other_below, below * other_above)
    }

    /// Half way between two amounts.
    pub fn midpoint(self, other: Self) -> Option<Self> {
        if self == other {
            return Some(self);
        }
        self.plus(other)?.over(Self::whole(2))
    }

    /// This many times `each`, with a single division at the end.
    pub fn of(self, each: Decimal) -> Decimal {
        let numerator = Decimal::from(self.numerator);
        let denominator = Decimal::from(self.denominator);
        match numerator.checked_mul(each) {
            Some(product) => product / denominator,
            None => numerator / denominator * each,
        }
    }

    /// The bare number, divided out.
    pub fn to_decimal(self) -> Decimal {
        self.of(Decimal::ONE)
    }
}

fn greatest_common_divisor(mut a: u128, mut b: u128) -> u128 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a.max(1)
}

impl Ord for Amount {
    fn cmp(&self, other: &Self) -> Ordering {
        let ((above, below), (other_above, other_below)) = (self.parts(), other.parts());
        (above * other_below).cmp(&(other_above * below))
    }
}

impl PartialOrd for Amount {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl fmt::Display for Amount {
    /// Writes "2", "1/3", "1 1/2" as a kitchen does, other amounts as decimals
    /// where they end and as fractions where they do not.
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self {
            numerator,
            denominator,
        } = *self;
        if denominator == 1 {
            return write!(out, "{numerator}");
        }
        let divides_a_power_of_ten = 10u64.pow(18).is_multiple_of(denominator);
        if !KITCHEN_DENOMINATORS.contains(&denominator) && divides_a_power_of_ten {
            return write!(out, "{}", self.to_decimal().normalize());
        }
        match numerator / denominator {
            0 => write!(out, "{numerator}/{denominator}"),
            whole => write!(out, "{whole} {}/{denominator}", numerator % denominator),
        }
    }
}

impl Serialize for Amount {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn thirds_stay_whole() {
        let third = Amount::fraction(1, 3).expect("a third");
        let sum = third.plus(third).and_then(|two| two.plus(third));
        assert_eq!(sum, Some(Amount::ONE));
        assert_eq!(
            third.of(Decimal::from(240)),
            Decimal::from(80),
            "a third of 240 g"
        );
    }

    #[test]
    fn written_as_a_kitchen_does() {
        for (digits, written) in [
            ("2", "2"),
            ("1.5", "1 1/2"),
            (".25", "1/4"),
            ("0.45", "0.45"),
            ("2.10", "2.1"),
            ("0.0625", "1/16"),
        ] {
            let amount = Amount::from_digits(digits).expect("digits");
            assert_eq!(amount.to_string(), written);
        }
        assert_eq!(
            Amount::fraction(8, 3).expect("eight thirds").to_string(),
            "2 2/3"
        );
        assert_eq!(
            Amount::fraction(1, 7).expect("a seventh").to_string(),
            "1/7"
        );
    }

    #[test]
    fn impossible_amounts_are_none() {
        assert_eq!(Amount::fraction(1, 0), None);
        assert_eq!(Amount::ONE.minus(Amount::whole(2)), None);
        assert_eq!(Amount::ONE.over(Amount::ZERO), None);
        assert_eq!(Amount::from_digits("0.1234567890123456789"), None);
    }
}
