//! Words about how sure a figure is.

use crate::format;
use engine::exact::{Digits, PartialSum};
use engine::uncertainty::Origin;
use rust_decimal::Decimal;

pub const GOING: &str = "How sure the figures are is still being fetched.";
pub const PLUS_MINUS_AT_LEAST: &str = "± at least";
pub const SLIP_HINT: &str = "Choose a figure of a serving to see where it comes from. ± is the interval in which \
     the figure lies with a confidence of about 95 percent (coverage factor 2): the dataset’s standard \
     errors, the rounding of labels and the tolerance of the amounts, not how a cook portions. Where the \
     dataset has no standard error, that of similar foods is assumed.";

/// The file of standard errors did not come.
pub fn failed(problem: &str) -> String {
    format!(
        "How sure the figures are cannot be told: the file with the dataset’s standard errors did \
         not come ({problem}). The figures themselves are complete."
    )
}

/// How much of the uncertainty is assumed, by the share of its square.
pub fn assumed(share: Decimal) -> String {
    let printed = format::percent(share);
    match printed.as_str() {
        _ if share.is_zero() => "none".to_owned(),
        "0" => "hardly any".to_owned(),
        _ if share == Decimal::ONE => "all".to_owned(),
        "100" => "nearly all".to_owned(),
        _ if share > Decimal::new(5, 1) => format!("mostly, {printed} %"),
        _ => format!("partly, {printed} %"),
    }
}

/// What the uncertainty rests on, by the share of its square that is assumed.
pub fn rests_on(share: Decimal) -> String {
    format!("errors assumed: {}", assumed(share))
}

/// Title of the slip.
pub fn title(nutrient: &str) -> String {
    format!("Where it comes from: {nutrient}")
}

pub const NUTRIENT: &str = "Nutrient";
pub const NOT_KNOWN: &str = "Nothing is known of it.";

/// For how much of the food a figure is known.
pub fn coverage(sum: &PartialSum) -> String {
    let of_weight = match sum.missing {
        0 => "known for all of the weight".to_owned(),
        _ => {
            let percent = format::percent_known(sum.coverage());
            format!("known for {percent} % of the weight")
        }
    };
    match sum.unweighed {
        0 => of_weight,
        1 => format!("{of_weight} but 1 line, whose weight is unknown"),
        lines => format!("{of_weight} but {lines} lines, whose weight is unknown"),
    }
}

/// The figure of a serving.
pub fn per_serving(figure: &str) -> String {
    format!("{figure} in one serving")
}

/// How a serving follows from the whole.
pub fn shared(whole: &str, servings: &str, serving: &str) -> String {
    format!("{whole} in the whole recipe ÷ {servings} servings = {serving}")
}

/// How a line's part is worked out.
pub fn product(value: &str, weight: &str, kept: Option<&str>, amount: &str) -> String {
    let kept = kept
        .map(|kept| format!(" × {kept} that stays in the dish"))
        .unwrap_or_default();
    format!("{value} per 100 g × {weight} ÷ 100{kept} = {amount}")
}

/// The weight of a line may lie between these.
pub fn between(low: &str, high: &str) -> String {
    format!("The weight may be {low} to {high}.")
}

pub const NO_FOOD: &str = "no food is chosen";
pub const NO_WEIGHT: &str = "the weight is not known";
pub const NO_VALUE: &str = "the dataset has no value";
pub const NOT_COUNTED: &str = "Unknown, not counted as zero";

/// Why a line brings nothing that is known.
pub fn missing(why: &[&str]) -> String {
    format!("{NOT_COUNTED}: {}.", why.join("; "))
}

/// How many analyses stand behind a value.
pub fn data_points(count: u16) -> String {
    match count {
        0 => "no analysis of this food".to_owned(),
        1 => "1 analysis".to_owned(),
        _ => format!("{count} analyses"),
    }
}

/// The error of a value and where it was taken from.
pub fn error(origin: Origin, error: &str) -> String {
    match origin {
        Origin::Dataset => format!("standard error {error}"),
        Origin::LabelRounding => {
            format!("standard uncertainty {error} from the rounding of the label")
        }
        Origin::AssumedFromGroup => {
            format!("no standard error; {error} assumed, the median of its food group")
        }
        Origin::AssumedFromAll => {
            format!("no standard error; {error} assumed, the median of all foods")
        }
    }
}

/// A value of the office's own.
pub fn own_value(low: &str, high: &str) -> String {
    format!("a food of the office’s own; by its source the value lies between {low} and {high}")
}

/// A footnote of the dataset.
pub fn footnote(text: &str) -> String {
    format!("Footnote of the dataset: {text}")
}

pub const CARBOHYDRATE: &str = "Carbohydrate count";
pub const CARBOHYDRATE_ROW: &str = "Carbohydrate";
pub const FIBRE_ROW: &str = "of it fiber";
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
