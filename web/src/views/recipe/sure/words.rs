//! Words about how sure a figure is.

use crate::format;
use crate::language::{Say, say};
use engine::exact::{Digits, PartialSum};
use engine::uncertainty::Origin;
use rust_decimal::Decimal;

pub const GOING: Say = Say("sure-going");
pub const PLUS_MINUS_AT_LEAST: Say = Say("sure-plus-minus-at-least");
pub const SLIP_HINT: Say = Say("sure-slip-hint");

/// The file of standard errors did not come.
pub fn failed(problem: &str) -> String {
    say("sure-failed", &[("problem", problem.into())])
}

/// How much of the uncertainty is assumed, by the share of its square.
pub fn assumed(share: Decimal) -> String {
    let printed = format::percent(share);
    let in_percent = |key| say(key, &[("percent", printed.as_str().into())]);
    match printed.as_str() {
        _ if share.is_zero() => Say("sure-assumed-none").to_string(),
        "0" => Say("sure-assumed-hardly").to_string(),
        _ if share == Decimal::ONE => Say("sure-assumed-all").to_string(),
        "100" => Say("sure-assumed-nearly").to_string(),
        _ if share > Decimal::new(5, 1) => in_percent("sure-assumed-mostly"),
        _ => in_percent("sure-assumed-partly"),
    }
}

/// What the uncertainty rests on, by the share of its square that is assumed.
pub fn rests_on(share: Decimal) -> String {
    say("sure-rests-on", &[("assumed", assumed(share).into())])
}

/// Title of the slip.
pub fn title(nutrient: &str) -> String {
    say("sure-title", &[("nutrient", nutrient.into())])
}

pub const NUTRIENT: Say = Say("sure-nutrient");
pub const NOT_KNOWN: Say = Say("sure-not-known");

/// For how much of the food a figure is known.
pub fn coverage(sum: &PartialSum) -> String {
    let of_weight = match sum.missing {
        0 => Say("sure-known-for-all").to_string(),
        _ => {
            let percent = format::percent_known(sum.coverage());
            say("sure-known-for", &[("percent", percent.into())])
        }
    };
    match sum.unweighed {
        0 => of_weight,
        lines => say(
            "sure-known-but",
            &[("known", of_weight.into()), ("lines", lines.into())],
        ),
    }
}

/// The figure of a serving.
pub fn per_serving(figure: &str) -> String {
    say("sure-per-serving", &[("figure", figure.into())])
}

/// How a serving follows from the whole.
pub fn shared(whole: &str, servings: &str, serving: &str) -> String {
    say(
        "sure-shared",
        &[
            ("whole", whole.into()),
            ("servings", servings.into()),
            ("serving", serving.into()),
        ],
    )
}

/// How a line's part is worked out.
pub fn product(value: &str, weight: &str, kept: Option<&str>, amount: &str) -> String {
    let kept = kept.map(|kept| say("sure-kept", &[("share", kept.into())]));
    let kept = kept.map(|kept| format!(" × {kept}")).unwrap_or_default();
    say(
        "sure-product",
        &[
            ("value", value.into()),
            ("weight", weight.into()),
            ("kept", kept.into()),
            ("amount", amount.into()),
        ],
    )
}

/// The weight of a line may lie between these.
pub fn between(low: &str, high: &str) -> String {
    say(
        "sure-between",
        &[("low", low.into()), ("high", high.into())],
    )
}

pub const NO_FOOD: Say = Say("sure-no-food");
pub const NO_WEIGHT: Say = Say("sure-no-weight");
pub const NO_VALUE: Say = Say("sure-no-value");
pub const NOT_COUNTED: Say = Say("sure-not-counted");

/// Why a line brings nothing that is known.
pub fn missing(why: &[Say]) -> String {
    let why: Vec<String> = why.iter().map(Say::to_string).collect();
    format!("{NOT_COUNTED}: {}.", why.join("; "))
}

/// How many analyses stand behind a value.
pub fn data_points(count: u16) -> String {
    say("sure-data-points", &[("count", count.into())])
}

/// The error of a value and where it was taken from.
pub fn error(origin: Origin, error: &str) -> String {
    let key = match origin {
        Origin::Dataset => "sure-error-dataset",
        Origin::LabelRounding => "sure-error-label",
        Origin::AssumedFromGroup => "sure-error-group",
        Origin::AssumedFromAll => "sure-error-all",
    };
    say(key, &[("error", error.into())])
}

/// A value of the office's own.
pub fn own_value(low: &str, high: &str) -> String {
    say(
        "sure-own-value",
        &[("low", low.into()), ("high", high.into())],
    )
}

/// A footnote of the dataset.
pub fn footnote(text: &str) -> String {
    say("sure-footnote", &[("text", text.into())])
}

pub const CARBOHYDRATE: Say = Say("sure-carbohydrate");
pub const CARBOHYDRATE_ROW: Say = Say("sure-carbohydrate-row");
pub const FIBRE_ROW: Say = Say("sure-fibre-row");
pub const GRAMS: &str = "g";

/// Digits of a weight in the arithmetic.
pub const WEIGHT_DIGITS: Digits = Digits(3);

#[cfg(test)]
mod tests {
    use super::*;
    use engine::units::Grams;

    #[test]
    fn what_is_assumed_is_said_in_words() {
        for (share, words) in [
            ("0", "none"),
            ("0.004", "hardly any"),
            ("0.23", "partly, 23 %"),
            ("0.5", "partly, 50 %"),
            ("0.81", "mostly, 81 %"),
            ("0.999", "nearly all"),
            ("1", "all"),
        ] {
            assert_eq!(assumed(share.parse().unwrap()), words, "{share}");
        }
    }

    #[test]
    fn what_has_no_weight_is_not_covered_by_it() {
        let mut sum = PartialSum::default();
        let hundred = Grams::new(Decimal::ONE_HUNDRED);
        sum.add(hundred, Some(Decimal::ONE));
        assert_eq!(coverage(&sum), "known for all of the weight");
        sum.add_unweighed();
        let but = "known for all of the weight but 1 line, whose weight is unknown";
        assert_eq!(coverage(&sum), but);
        sum.add(hundred, None);
        assert!(coverage(&sum).starts_with("known for 50 % of the weight but"));
    }

    #[test]
    fn a_product_names_what_stays_only_where_something_leaves() {
        assert_eq!(
            product("66 mg", "500 g", None, "330 mg"),
            "66 mg per 100 g × 500 g ÷ 100 = 330 mg"
        );
        assert_eq!(
            product("247 mg", "200 g", Some("0.64"), "316.16 mg"),
            "247 mg per 100 g × 200 g ÷ 100 × 0.64 that stays in the dish = 316.16 mg"
        );
    }
}
