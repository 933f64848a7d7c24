//! A line written anew: another food, another amount, the rest as the cook
//! wrote it.

use super::words::WordClasses;
use crate::exact::rounding::{guarded, round_down_to};
use crate::recipe::{LineAmount, LineReading};
use crate::units::{Amount, CountUnit, MassUnit, Quantity, Unit, VolumeUnit, read_amount};
use rust_decimal::Decimal;

/// Marks of a list that may stand before the amount.
const LIST_MARKS: [char; 6] = ['-', '*', '•', '–', '—', ' '];

/// The amount with which a line begins.
struct Opening<'t> {
    /// As typed, with what stands before it.
    typed: &'t str,
    quantity: Quantity,
    /// What follows.
    rest: &'t str,
}

fn opening(text: &str) -> Option<Opening<'_>> {
    let amounts = text.trim_start_matches(LIST_MARKS);
    let read = read_amount(amounts).ok()??;
    let typed = text.strip_suffix(read.rest)?;
    Some(Opening {
        typed: typed.trim(),
        quantity: read.quantity,
        rest: read.rest.trim(),
    })
}

/// The line with `by` times its amount and the same food; nothing where it
/// states no amount.
pub(super) fn scaled(text: &str, reading: &LineReading, by: Decimal) -> Option<String> {
    match opening(text) {
        Some(opening) => Some(format!(
            "{} {}",
            times(&opening.quantity, by)?,
            opening.rest
        )),
        None => {
            let amount = times(stated(reading)?, by)?;
            Some(format!("{amount} {}", reading.food_words))
        }
    }
}

/// The line with another food and `by` times its amount.
pub(super) fn renamed(
    classes: &WordClasses,
    text: &str,
    reading: &LineReading,
    name: &str,
    by: Decimal,
) -> Option<String> {
    let amount = match opening(text) {
        Some(opening) if by == Decimal::ONE => opening.typed.to_owned(),
        Some(opening) => times(&opening.quantity, by)?,
        None => times(stated(reading)?, by)?,
    };
    Some(format!("{amount} {name}{}", tail(classes, reading, name)))
}

/// The line with another food by weight, rounded up: in grams where the line
/// is metric, in pounds or ounces where it is not.
pub(super) fn by_weight(
    classes: &WordClasses,
    reading: &LineReading,
    name: &str,
    grams: Decimal,
) -> String {
    let metric = stated(reading).is_some_and(|quantity| is_metric(&quantity.unit));
    let unit = match () {
        () if metric => MassUnit::Gram,
        () if grams < MassUnit::Pound.grams().grams() => MassUnit::Ounce,
        () => MassUnit::Pound,
    };
    let amount = grams / unit.grams().grams();
    let amount = rounded_up(amount, step(&Unit::Mass(unit), amount));
    let tail = tail(classes, reading, name);
    format!("{amount} {} {name}{tail}", unit.symbol())
}

fn is_metric(unit: &Unit) -> bool {
    match unit {
        Unit::Mass(unit) => !matches!(unit, MassUnit::Ounce | MassUnit::Pound),
        Unit::Volume(unit) => matches!(
            unit,
            VolumeUnit::Millilitre | VolumeUnit::Decilitre | VolumeUnit::Litre
        ),
        Unit::Count(_) => false,
    }
}

fn stated(reading: &LineReading) -> Option<&Quantity> {
    match &reading.amount {
        LineAmount::Stated { quantity } => Some(quantity),
        _ => None,
    }
}

/// What the cook wrote behind the old food, without the states that were its
/// own.
fn tail(classes: &WordClasses, reading: &LineReading, name: &str) -> String {
    let states = |words: &str| words.split(' ').any(|word| classes.is_state(word));
    let said = |words: &&String| !states(words) && !name.contains(words.as_str());
    let mut tail = String::new();
    let notes = reading.notes.iter().filter(|note| {
        // A note repeats the preparation that was read out of it.
        !states(note)
    });
    let preparation = reading.preparation.iter().filter(|word| {
        !reading
            .notes
            .iter()
            .any(|note| note.contains(word.as_str()))
    });
    for words in preparation.chain(notes).filter(said) {
        tail.push_str(", ");
        tail.push_str(words);
    }
    if reading.optional {
        tail.push_str(", optional");
    }
    tail
}

/// So many times a quantity, in words that a line can begin with. Simple
/// shares are exact; other amounts are rounded up to what a kitchen can
/// measure, so that nothing credits less for it.
fn times(quantity: &Quantity, by: Decimal) -> Option<String> {
    let used = quantity.used();
    let share = by.normalize();
    let exact = (share.scale() <= 2)
        .then(|| used.times(Amount::from_digits(&share.to_string())?))
        .flatten();
    let amount = match exact {
        Some(exact) => exact,
        None => {
            let value = used.to_decimal() * by;
            Amount::from_digits(&rounded_up(value, step(&quantity.unit, value)).to_string())?
        }
    };
    let quantity = measurable(Quantity::exactly(amount, quantity.unit.clone()));
    let unit = unit_words(&quantity.unit, quantity.low > Amount::ONE);
    Some(format!("{} {unit}", quantity.low).trim_end().to_owned())
}

/// Measures that a kitchen has, from the largest, with the next smaller one.
const SMALLER: [(VolumeUnit, VolumeUnit); 4] = [
    (VolumeUnit::Gallon, VolumeUnit::Quart),
    (VolumeUnit::Quart, VolumeUnit::Cup),
    (VolumeUnit::Cup, VolumeUnit::Tablespoon),
    (VolumeUnit::Tablespoon, VolumeUnit::Teaspoon),
];

/// The same volume in a measure that holds it in halves, thirds, quarters or
/// eighths: "3 tbsp" for 3/16 cup.
fn measurable(quantity: Quantity) -> Quantity {
    let parts = [1, 2, 3, 4, 8].map(Amount::whole);
    let whole = |amount: Amount| amount.to_decimal().fract().is_zero();
    let fits = |part: Amount| quantity.low.times(part).is_some_and(whole);
    let small = quantity.unit == Unit::Volume(VolumeUnit::Quart) && quantity.low < Amount::ONE;
    if parts.into_iter().any(fits) && !small {
        return quantity;
    }
    let smaller = SMALLER
        .iter()
        .find(|(unit, _)| Unit::Volume(*unit) == quantity.unit);
    match smaller.and_then(|(_, smaller)| quantity.in_unit(&Unit::Volume(*smaller))) {
        Some(smaller) => measurable(smaller),
        None => quantity,
    }
}

fn rounded_up(value: Decimal, step: Decimal) -> Decimal {
    let down = round_down_to(value, step);
    if down < guarded(value) {
        (down + step).normalize()
    } else {
        down
    }
}

fn gram_step(grams: Decimal) -> Decimal {
    if grams < Decimal::TEN {
        Decimal::new(1, 1)
    } else {
        Decimal::ONE
    }
}

/// The smallest step of a unit in a kitchen; our own judgement.
fn step(unit: &Unit, value: Decimal) -> Decimal {
    match unit {
        Unit::Mass(MassUnit::Gram | MassUnit::Milligram) => gram_step(value),
        Unit::Mass(_) => Decimal::new(1, 2),
        Unit::Volume(VolumeUnit::Millilitre) => Decimal::ONE,
        Unit::Volume(_) if value < Decimal::ONE => Decimal::new(1, 2),
        Unit::Volume(_) => Decimal::new(125, 3),
        Unit::Count(_) => Decimal::ONE,
    }
}

fn unit_words(unit: &Unit, several: bool) -> String {
    let plural = matches!(
        unit,
        Unit::Volume(VolumeUnit::Cup | VolumeUnit::Pint | VolumeUnit::Quart | VolumeUnit::Gallon)
            | Unit::Count(CountUnit { noun: Some(_), .. })
    );
    let words = unit.to_string();
    if plural && several && !words.ends_with('s') {
        format!("{words}s")
    } else {
        words
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::recipe::read_line;
    use nutrient_data::kitchen::SWAP_WORDS;

    /// Common practice, no source: how a cook would write the line.
    #[test]
    fn lines_are_written_anew() {
        let classes = WordClasses::from_csv(SWAP_WORDS).expect("the committed table");
        for (text, name, by, written) in [
            (
                "1 lb butter, melted",
                "canola oil",
                "1",
                "1 lb canola oil, melted",
            ),
            ("1 lb butter", "canola oil", "0.961", "0.97 lb canola oil"),
            (
                "1 1/2 cups sour cream",
                "plain yogurt",
                "1",
                "1 1/2 cups plain yogurt",
            ),
            (
                "1 1/2 cups sour cream",
                "plain yogurt",
                "0.5",
                "3/4 cup plain yogurt",
            ),
            ("- 3 cups milk", "nonfat milk", "1", "- 3 cups nonfat milk"),
            (
                "50 flour tortillas",
                "corn tortillas",
                "1.13",
                "56 1/2 corn tortillas",
            ),
            (
                "50 flour tortillas",
                "corn tortillas",
                "1.137",
                "57 corn tortillas",
            ),
            (
                "10 lb canned green beans, drained",
                "frozen green beans",
                "1",
                "10 lb frozen green beans",
            ),
            (
                "flour 4 lb",
                "whole wheat flour",
                "1",
                "4 lb whole wheat flour",
            ),
        ] {
            let by = by.parse().expect("a decimal of the table");
            let found = renamed(&classes, text, &read_line(text), name, by);
            assert_eq!(found.as_deref(), Some(written), "{text}");
        }
    }

    #[test]
    fn a_share_keeps_the_cooks_words() {
        for (text, by, written) in [
            (
                "1/4 cup salt, or to taste",
                "0.75",
                Some("3 tbsp salt, or to taste"),
            ),
            (
                "2 cans (15 oz each) beans, drained",
                "0.5",
                Some("15 oz beans, drained"),
            ),
            ("salt to taste", "0.5", None),
        ] {
            let by = by.parse().expect("a decimal of the table");
            let found = scaled(text, &read_line(text), by);
            assert_eq!(found.as_deref(), written, "{text}");
        }
    }
}
