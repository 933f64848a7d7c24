//! What changed between two forms of a recipe.

use crate::exact::{Digits, PartialSum, round_half_up};
use rust_decimal::Decimal;

/// How much more `now` is than `before`, as the two are printed: 380.4 and
/// 311.6 print as 380 and 312 without decimals, and the change as −68.
///
/// Nothing where more is missing from one than from the other, for then the
/// difference of what is known says nothing. Where as much is missing from
/// both, it is that of the lines that are known.
pub fn change(before: &PartialSum, now: &PartialSum, digits: Digits) -> Option<Decimal> {
    let is_alike = before.unweighed == now.unweighed && before.missing == now.missing;
    let printed = |sum: &PartialSum| round_half_up(sum.known, digits);
    is_alike.then(|| printed(now) - printed(before))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Grams;

    fn sum(values: &[Option<&str>]) -> PartialSum {
        let mut sum = PartialSum::default();
        for value in values {
            let value = value.map(|text| text.parse().expect("a decimal in a test table"));
            sum.add(Grams::new(Decimal::ONE_HUNDRED), value);
        }
        sum
    }

    #[test]
    fn what_is_printed_adds_up() {
        for (before, now, digits, by) in [
            ("380.4", "311.6", 0, "-68"),
            ("1.25", "1.3", 1, "0.0"),
            ("7", "7", 0, "0"),
        ] {
            let by: Decimal = by.parse().expect("a decimal in a test table");
            let changed = change(&sum(&[Some(before)]), &sum(&[Some(now)]), Digits(digits));
            assert_eq!(changed, Some(by), "{before} to {now}");
        }
    }

    #[test]
    fn what_became_unknown_is_no_saving() {
        let (all, part) = (sum(&[Some("5"), Some("2")]), sum(&[Some("5"), None]));
        assert_eq!(change(&all, &part, Digits(0)), None);
        assert_eq!(change(&part, &all, Digits(0)), None);
        let other_part = sum(&[Some("4"), None]);
        assert_eq!(
            change(&part, &other_part, Digits(0)),
            Some(Decimal::NEGATIVE_ONE)
        );
    }
}
