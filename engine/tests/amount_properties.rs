//! What must hold for amounts and lines of any kind.

use engine::recipe::{LineAmount, read_line};
use engine::units::{Amount, MassUnit, Quantity, Unit, VolumeUnit, read_amount};
use proptest::prelude::*;

fn mass_unit() -> impl Strategy<Value = MassUnit> {
    proptest::sample::select(MassUnit::ALL.to_vec())
}

fn volume_unit() -> impl Strategy<Value = VolumeUnit> {
    proptest::sample::select(VolumeUnit::ALL.to_vec())
}

fn amount() -> impl Strategy<Value = Amount> {
    (1_u128..10_000, 1_u128..100)
        .prop_map(|(above, below)| Amount::fraction(above, below).expect("a small fraction"))
}

/// Words that lines are made of, and some that they are not.
fn line() -> impl Strategy<Value = String> {
    let word = prop_oneof![
        proptest::sample::select(vec![
            "1",
            "2",
            "1/2",
            "1/0",
            "½",
            "1,5",
            "1,000",
            "-",
            "–",
            "to",
            "or",
            "plus",
            "(",
            ")",
            "cup",
            "cups",
            "lb",
            "oz",
            "No.",
            "#10",
            "can",
            "#",
            "x",
            "dozen",
            "half",
            "a",
            "of",
            "pinch",
            "large",
            "onions",
            ",",
            ":",
            "chopped",
            "to taste",
            "optional",
            "each",
            "%",
            "10-inch",
            "15-oz",
            "\u{301}",
            "é",
            "²",
            "\t",
            "0",
            "999999999999999999999",
        ])
        .prop_map(str::to_owned),
        any::<String>(),
    ];
    proptest::collection::vec(word, 0..12).prop_map(|words| words.join(" "))
}

proptest! {
    #[test]
    fn a_change_of_unit_changes_no_mass(amount in amount(), one in mass_unit(), two in mass_unit()) {
        let quantity = Quantity::exactly(amount, Unit::Mass(one));
        let changed = quantity.in_unit(&Unit::Mass(two)).expect("small numbers");
        prop_assert_eq!(changed.in_unit(&Unit::Mass(one)), Some(quantity));
        prop_assert_eq!(
            engine::exact::rounding::guarded(changed.low.of(two.grams().grams())),
            engine::exact::rounding::guarded(amount.of(one.grams().grams()))
        );
    }

    #[test]
    fn a_change_of_unit_changes_no_volume(
        amount in amount(),
        one in volume_unit(),
        two in volume_unit(),
    ) {
        let quantity = Quantity::exactly(amount, Unit::Volume(one));
        let changed = quantity.in_unit(&Unit::Volume(two)).expect("small numbers");
        prop_assert_eq!(changed.in_unit(&Unit::Volume(one)), Some(quantity));
    }

    #[test]
    fn an_amount_reads_as_it_is_written(amount in amount(), unit in volume_unit()) {
        let quantity = Quantity::exactly(amount, Unit::Volume(unit));
        prop_assert_eq!(quantity.to_string().parse(), Ok(quantity));
    }

    #[test]
    fn every_line_has_a_reading(text in line()) {
        let reading = read_line(&text);
        if let LineAmount::Stated { quantity } = &reading.amount {
            prop_assert!(!quantity.low.is_zero());
            prop_assert!(quantity.low <= quantity.high);
        }
        if let Ok(Some(read)) = read_amount(&text) {
            prop_assert!(text.ends_with(read.rest));
        }
    }
}
