//! The same food, or the same portion, in another amount.

use super::line_text::scaled;
use crate::foods::FoodId;
use crate::recipe::{CookedAs, LineReading, RecipeLine, read_line};
use crate::units::{Unit, read_amount};
use rust_decimal::Decimal;

/// A line with so many times its amount of the same food; nothing where it
/// states no amount. What a person stated of its credit is taken back, for it
/// was stated of the old amount.
pub(crate) fn line_in_share(
    kept: &RecipeLine,
    reading: &LineReading,
    food: FoodId,
    share: Decimal,
) -> Option<RecipeLine> {
    let mut correction = kept.correction.clone();
    correction.food = Some(food);
    correction.weight = correction.weight.map(|weight| weight * share);
    correction.cooked = correction.cooked.map(|cooked| CookedAs {
        food: cooked.food,
        weight: cooked.weight.map(|weight| weight * share),
    });
    correction.credits = Vec::new();
    Some(RecipeLine {
        text: scaled(&kept.text, reading, share)?,
        correction,
    })
}

/// Words for a serving that are a volume or a weight and no more, in so many
/// times the amount: "5/8 cup" for "1/2 cup". Nothing for other words: a
/// sandwich has no sizes.
pub(crate) fn serving_in_share(words: &str, share: Decimal) -> Option<String> {
    let read = read_amount(words).ok()??;
    let measured = matches!(read.quantity.unit, Unit::Volume(_) | Unit::Mass(_));
    // A second amount, in brackets or behind, would no longer fit the first.
    if !measured || words.contains('(') || read.rest.chars().any(|letter| letter.is_ascii_digit()) {
        return None;
    }
    let scaled = scaled(words, &read_line(words), share)?;
    Some(scaled.trim_end().to_owned())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_measured_servings_have_sizes() {
        let share = |text: &str| text.parse::<Decimal>().unwrap();
        for (words, by, written) in [
            ("1/2 cup", "1.25", Some("5/8 cup")),
            ("3/4 cup", "0.75", Some("9 tbsp")),
            (
                "1 cup pasta with sauce",
                "1.25",
                Some("1 1/4 cups pasta with sauce"),
            ),
            ("4 oz", "1.5", Some("6 oz")),
            ("1 sandwich", "1.25", None),
            ("1 cup (8 fl oz)", "1.25", None),
            ("1/4 of the pan", "1.25", None),
            ("", "1.25", None),
        ] {
            let found = serving_in_share(words, share(by));
            assert_eq!(found.as_deref(), written, "{words}");
        }
    }
}
