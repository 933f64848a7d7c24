//! The one home of rounding to printed digits.
//!
//! Sums and products of dataset digits are exact in [`Decimal`]. A division
//! (a third of a cup, a total shared by seven servings) is not: it is right to
//! about 28 significant digits. Two ways to the same figure may then differ in
//! the last of these, and a figure that lies exactly half way between two
//! printed digits could fall to either side. So every value is first brought
//! to [`GUARD_PLACES`] decimals, far below anything that is printed and far
//! above the error of a chain of divisions, and only then to the printed
//! digits, half away from zero.

use rust_decimal::{Decimal, RoundingStrategy};
use serde::{Deserialize, Serialize};

/// Decimal places to which a value is brought before it is rounded for print.
pub const GUARD_PLACES: u32 = 15;

/// How many decimal places a figure is printed with.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Digits(pub u32);

/// Rounds half away from zero to `digits` decimal places.
///
/// ```
/// use engine::exact::{Digits, round_half_up};
/// use rust_decimal::Decimal;
/// let third = Decimal::ONE / Decimal::from(3);
/// // Three times a third is one half short of nothing: 0.5 × 3 × ⅓ prints as 1.
/// let half = third * Decimal::from(3) * Decimal::new(5, 1);
/// assert_eq!(round_half_up(half, Digits(0)), Decimal::ONE);
/// ```
pub fn round_half_up(value: Decimal, digits: Digits) -> Decimal {
    guarded(value).round_dp_with_strategy(digits.0, RoundingStrategy::MidpointAwayFromZero)
}

/// Rounds down (towards zero) to a multiple of `step`, as crediting does.
///
/// `step` must be positive.
pub fn round_down_to(value: Decimal, step: Decimal) -> Decimal {
    multiples(value, step, RoundingStrategy::ToZero)
}

/// Rounds up (away from zero) to a multiple of `step`, as packs are bought and
/// pans are filled.
///
/// `step` must be positive.
pub fn round_up_to(value: Decimal, step: Decimal) -> Decimal {
    multiples(value, step, RoundingStrategy::AwayFromZero)
}

/// Rounds half away from zero to a multiple of `step`, as label figures are.
///
/// `step` must be positive.
pub fn round_half_up_to(value: Decimal, step: Decimal) -> Decimal {
    multiples(value, step, RoundingStrategy::MidpointAwayFromZero)
}

/// As few decimal places, from `fewest` up, as show a figure on its own side of
/// a limit: 1110.04 against at most 1110 prints as 1110.04, not as 1110.
/// `holds` says on which side a figure lies.
pub fn telling_digits(value: Decimal, fewest: Digits, holds: impl Fn(Decimal) -> bool) -> Digits {
    const MOST: u32 = 6;
    let side = holds(value);
    let tells = |places: &u32| holds(round_half_up(value, Digits(*places))) == side;
    Digits((fewest.0..MOST).find(tells).unwrap_or(MOST))
}

/// A value without the noise of its divisions: the form in which it is
/// compared with a limit.
pub fn guarded(value: Decimal) -> Decimal {
    value
        .round_dp_with_strategy(GUARD_PLACES, RoundingStrategy::MidpointAwayFromZero)
        .normalize()
}

fn multiples(value: Decimal, step: Decimal, strategy: RoundingStrategy) -> Decimal {
    debug_assert!(step > Decimal::ZERO);
    let steps = guarded(guarded(value) / step).round_dp_with_strategy(0, strategy);
    (steps * step).normalize()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn dec(text: &str) -> Decimal {
        text.parse().expect("a decimal in a test table")
    }

    #[test]
    fn ties_go_away_from_zero() {
        for (value, places, printed) in [
            ("0.5", 0, "1"),
            ("1.5", 0, "2"),
            ("2.5", 0, "3"),
            ("2.4999", 0, "2"),
            ("-2.5", 0, "-3"),
            ("0.05", 1, "0.1"),
            ("1110.5", 0, "1111"),
        ] {
            assert_eq!(
                round_half_up(dec(value), Digits(places)),
                dec(printed),
                "{value} to {places}"
            );
        }
    }

    #[test]
    fn a_division_does_not_move_a_tie() {
        let sum = dec("1") / dec("3") * dec("3") + dec("0.5");
        assert_ne!(sum, dec("1.5"), "the case is pointless if the sum is exact");
        assert_eq!(round_half_up(sum, Digits(0)), dec("2"));
        assert_eq!(guarded(sum), dec("1.5"));
    }

    #[test]
    fn steps() {
        assert_eq!(round_down_to(dec("2.03"), dec("0.25")), dec("2"));
        assert_eq!(round_down_to(dec("0.75"), dec("0.25")), dec("0.75"));
        assert_eq!(round_down_to(dec("0.374"), dec("0.125")), dec("0.25"));
        assert_eq!(round_up_to(dec("2.03"), dec("0.25")), dec("2.25"));
        assert_eq!(round_up_to(dec("2"), dec("1")), dec("2"));
        assert_eq!(
            round_up_to(dec("6") / dec("9") * dec("3"), dec("1")),
            dec("2")
        );
        assert_eq!(round_half_up_to(dec("145"), dec("10")), dec("150"));
        assert_eq!(round_half_up_to(dec("144.9"), dec("10")), dec("140"));
    }
}
