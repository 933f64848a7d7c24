//! Words about claims.

use crate::format;
use engine::claims::{Limit, Missing};
use engine::rules::{Bound, Citation, Standing};

pub const TITLE: &str = "Claims that the figures bear out";
pub const HINT: &str = "By 21 CFR 101.13 and 101.54 to 101.62. A claim is offered only when complete data proves \
     every criterion; a reviewer of labels has the last word. What is said here is not kept with the recipe.";
pub const KIND: &str = "The food is";
pub const KINDS: [&str; 3] = ["a single food", "a main dish", "a meal"];
pub const REFERENCE_AMOUNT: &str = "Amount customarily eaten (21 CFR 101.12(b))";
pub const GRAMS: &str = "g";
pub const TWO_TABLESPOONS: &str = "That amount is 2 tablespoons or less";
pub const QUESTIONS: &str = "Ingredients, for “free” claims";
pub const ANSWERS: [&str; 3] = ["not said", "it is used", "it is not used"];
pub const REFERENCE_FOOD: &str =
    "Compare with another recipe of the book, for “reduced” and “light”";
pub const REFERENCE_FOOD_HINT: &str = "words of its title";
pub const COMPARE_NO_MORE: &str = "Compare with none";
pub const NONE_PROVEN: &str = "None is proven.";
pub const MAY_BE_NEEDED: &str = "(missing values decide whether this is needed)";

/// The recipe that is compared with.
pub fn compared_with(title: &str) -> String {
    format!("Compared with “{title}”.")
}

/// Heading of the claims that are offered.
pub fn proven(count: usize) -> String {
    match count {
        0 => "Proven".to_owned(),
        _ => format!("Proven, may be offered ({count})"),
    }
}

/// Heading of the claims about which nothing is said.
pub fn silent(count: usize) -> String {
    format!("Nothing is said of these, for something is missing ({count})")
}

/// Heading of the claims that the food does not meet.
pub fn not_met(count: usize) -> String {
    format!("Not met, whatever is missing ({count})")
}

/// What a claim lacks.
pub fn missing(missing: &[Missing]) -> String {
    let missing: Vec<String> = missing.iter().map(Missing::to_string).collect();
    missing.join("; ")
}

/// Where a rule stands.
pub fn cited(citation: &Citation) -> String {
    let status = match citation.status {
        Standing::Verified => "verified",
        Standing::SecondaryCopy => "read in a secondary copy",
        Standing::FromMemory => "from memory",
    };
    format!("({}, {status})", citation.paragraph)
}

/// A criterion with its figure and its limit, where it has them.
pub fn criterion(words: &str, figure: Option<&str>, limit: Option<&Limit>) -> String {
    let limit_words = limit.map(|limit| {
        let amount = format!("{} {}", format::stated(limit.limit), limit.unit);
        match limit.bound {
            Bound::AtLeast => format!("at least {amount}"),
            Bound::AtMost => format!("at most {amount}"),
            Bound::Below => format!("below {amount}"),
        }
    });
    match (figure, limit_words) {
        (Some(figure), Some(asked)) => {
            let unit = limit.map_or("", |limit| limit.unit.as_str());
            format!("{words}: {figure} {unit}, {asked}")
        }
        (None, Some(asked)) => format!("{words}: {asked}"),
        _ => words.to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_criterion_stands_beside_its_limit() {
        let limit = Limit {
            bound: Bound::AtMost,
            limit: "140.0".parse().unwrap(),
            unit: "mg".into(),
        };
        for (figure, limit, words) in [
            (
                Some("120.5"),
                Some(&limit),
                "sodium: 120.5 mg, at most 140 mg",
            ),
            (None, Some(&limit), "sodium: at most 140 mg"),
            (None, None, "sodium"),
        ] {
            assert_eq!(criterion("sodium", figure, limit), words);
        }
    }
}
