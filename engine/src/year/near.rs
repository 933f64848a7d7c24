//! Binary floats that know how far they may be from the exact figure.
//!
//! Bounds follow the usual model of rounding: each operation is right to one
//! part in 2⁵³, and a sum of terms of one sign after k roundings to k/(1 − k·2⁻⁵³)
//! parts in 2⁵³ (N. J. Higham, Accuracy and Stability of Numerical Algorithms,
//! 2nd ed., section 3.1). Bounds here are taken a little larger, which covers
//! the rounding of the bounds themselves.

use crate::exact::Digits;
use rust_decimal::Decimal;
use std::cmp::Ordering;

/// One part in 2⁵³, with a tenth for the rounding of bounds.
const UNIT: f64 = 1.1 / 9_007_199_254_740_992.0;

/// How many roundings lie in [`Near::of`]: the digits, the power of ten, the
/// quotient; and one more for safety.
pub(super) const CONVERTED: usize = 4;

/// The decimal path brings a value to fifteen places before it is printed or
/// compared, and its divisions leave less than that behind: this is twenty
/// times both.
const GUARD: f64 = 1e-14;

/// Powers of ten up to the most places that a decimal has; exact up to 10²².
pub(super) const POWERS: [f64; 29] = [
    1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
    1e17, 1e18, 1e19, 1e20, 1e21, 1e22, 1e23, 1e24, 1e25, 1e26, 1e27, 1e28,
];

/// A decimal as a binary float, right to [`CONVERTED`] roundings.
#[expect(clippy::cast_precision_loss, reason = "that is the rounding meant")]
pub(super) fn float(value: Decimal) -> f64 {
    value.mantissa() as f64 / POWERS[value.scale() as usize]
}

/// A figure that lies within `error` of `value`.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Near {
    pub value: f64,
    pub error: f64,
}

impl Near {
    /// A value of which every term has one sign and at most `roundings`
    /// roundings behind it.
    #[expect(clippy::cast_precision_loss, reason = "a count of hundreds")]
    pub fn after(value: f64, roundings: usize) -> Self {
        Self {
            value,
            error: value.abs() * roundings as f64 * UNIT,
        }
    }

    /// A decimal.
    pub fn of(value: Decimal) -> Self {
        Self::after(float(value), CONVERTED)
    }

    pub fn minus(self, other: Self) -> Self {
        let value = self.value - other.value;
        Self {
            value,
            error: self.error + other.error + value.abs() * UNIT,
        }
    }

    pub fn times(self, other: Self) -> Self {
        let value = self.value * other.value;
        Self {
            value,
            error: self.error * other.value.abs()
                + other.error * self.value.abs()
                + self.error * other.error
                + value.abs() * UNIT,
        }
    }

    /// The quotient; nothing where the divisor may be zero.
    pub fn over(self, other: Self) -> Option<Self> {
        let least = other.value.abs() - other.error;
        let value = self.value / other.value;
        (least > 0.0).then(|| Self {
            value,
            error: (self.error + value.abs() * other.error) / least + value.abs() * 2.0 * UNIT,
        })
    }

    /// On which side of a limit the figure lies once it is free of the noise
    /// of its divisions; nothing where it is too near to tell.
    pub fn side_of(self, limit: Self) -> Option<Ordering> {
        let away = self.value - limit.value;
        let margin = self.error + limit.error + away.abs() * UNIT + GUARD;
        if away > margin {
            Some(Ordering::Greater)
        } else if away < -margin {
            Some(Ordering::Less)
        } else {
            None
        }
    }

    /// The figure rounded half up, in units of its last printed digit; nothing
    /// where it lies too near a half to tell, is negative or very large.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_precision_loss,
        reason = "whole numbers below 2^50 go both ways without loss"
    )]
    pub fn printed(self, digits: Digits) -> Option<i64> {
        const MOST: f64 = 1e15;
        let power = *POWERS.get(digits.0 as usize)?;
        let scaled = self.value * power + 0.5;
        let margin = (self.error + GUARD) * power + scaled * 2.0 * UNIT;
        let sure = (0.5..MOST).contains(&scaled);
        let whole = scaled as i64;
        let rest = scaled - whole as f64;
        // Zero is printed as such: a sum of nothing but zeros has no error.
        let clear = rest > margin && rest < 1.0 - margin;
        (sure && (clear || (self.value == 0.0 && self.error == 0.0))).then_some(whole)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::exact::round_half_up;
    use proptest::prelude::*;

    fn dec(text: &str) -> Decimal {
        text.parse().expect("a decimal in a test table")
    }

    #[test]
    fn halves_are_left_to_the_decimals() {
        for (value, digits, printed) in [
            ("0", 0, Some(0)),
            ("1110.4", 0, Some(1110)),
            ("1110.5", 0, None),
            ("1110.4999999999", 0, Some(1110)),
            ("0.0005", 3, None),
            ("2.675", 2, None),
            ("2.6751", 2, Some(268)),
            ("-1", 0, None),
        ] {
            let near = Near::of(dec(value));
            assert_eq!(near.printed(Digits(digits)), printed, "{value} to {digits}");
        }
    }

    #[test]
    fn a_limit_reached_is_left_to_the_decimals() {
        let limit = Near::of(dec("1110"));
        for (value, side) in [
            ("1110", None),
            ("1110.00000000000000001", None),
            ("1110.0000001", Some(Ordering::Greater)),
            ("1109.9999", Some(Ordering::Less)),
        ] {
            assert_eq!(Near::of(dec(value)).side_of(limit), side, "{value}");
        }
    }

    proptest! {
        /// Whatever is printed is what the decimals print, and the exact sum,
        /// product and quotient lie within the bounds.
        #[test]
        fn what_is_printed_is_what_decimals_print(
            terms in prop::collection::vec((0_i64..100_000_000, 0_i64..10_000_000), 1..40),
            divisor in 1_i64..5_000,
            digits in 0_u32..4,
        ) {
            let exact: Decimal = terms
                .iter()
                .map(|(one, two)| Decimal::new(*one, 3) * Decimal::new(*two, 2))
                .sum::<Decimal>()
                / Decimal::from(divisor);
            let sum: f64 = terms
                .iter()
                .map(|(one, two)| float(Decimal::new(*one, 3)) * float(Decimal::new(*two, 2)))
                .sum();
            let near = Near::after(sum, terms.len() + 2 * CONVERTED + 1);
            let near = near.over(Near::of(Decimal::from(divisor))).expect("a quotient");
            if let Some(printed) = near.printed(Digits(digits)) {
                let expected = round_half_up(exact, Digits(digits));
                prop_assert_eq!(Decimal::new(printed, digits), expected);
            }
        }
    }
}
