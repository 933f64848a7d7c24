//! Words about claims.

use crate::format;
use crate::language::{Say, of_table, say};
use crate::named;
use engine::claims::{Limit, Missing};
use engine::rules::{Citation, Standing};

pub const TITLE: Say = Say("claims-title");
pub const HINT: Say = Say("claims-hint");
pub const KIND: Say = Say("claims-kind");
pub const KINDS: [Say; 3] = [
    Say("claims-kinds-1"),
    Say("claims-kinds-2"),
    Say("claims-kinds-3"),
];
pub const REFERENCE_AMOUNT: Say = Say("claims-reference-amount");
pub const GRAMS: &str = "g";
pub const TWO_TABLESPOONS: Say = Say("claims-two-tablespoons");
pub const QUESTIONS: Say = Say("claims-questions");
pub const ANSWERS: [Say; 3] = [
    Say("claims-answers-1"),
    Say("claims-answers-2"),
    Say("claims-answers-3"),
];
pub const REFERENCE_FOOD: Say = Say("claims-reference-food");
pub const REFERENCE_FOOD_HINT: Say = Say("claims-reference-food-hint");
pub const COMPARE_NO_MORE: Say = Say("claims-compare-no-more");
pub const NONE_PROVEN: Say = Say("claims-none-proven");
pub const MAY_BE_NEEDED: Say = Say("claims-may-be-needed");

/// The recipe that is compared with.
pub fn compared_with(title: &str) -> String {
    say("claims-compared-with", &[("title", title.into())])
}

/// Heading of the claims that are offered.
pub fn proven(count: usize) -> String {
    say("claims-proven", &[("count", count.into())])
}

/// Heading of the claims about which nothing is said.
pub fn silent(count: usize) -> String {
    say("claims-silent", &[("count", count.into())])
}

/// Heading of the claims that the food does not meet.
pub fn not_met(count: usize) -> String {
    say("claims-not-met", &[("count", count.into())])
}

/// What a claim lacks.
pub fn missing(missing: &[Missing]) -> String {
    let missing: Vec<String> = missing.iter().map(named::missing).collect();
    missing.join("; ")
}

/// Where a rule stands.
pub fn cited(citation: &Citation) -> String {
    let status = match citation.status {
        Standing::Verified => Say("claims-verified"),
        Standing::SecondaryCopy => Say("claims-copy"),
        Standing::FromMemory => Say("claims-memory"),
    };
    format!("({}, {status})", citation.paragraph)
}

/// A criterion with its figure and its limit, where it has them.
pub fn criterion(words: &str, figure: Option<&str>, limit: Option<&Limit>) -> String {
    let words = of_table(words);
    let limit_words = limit.map(|limit| {
        let amount = named::counted(&format::stated(limit.limit), &limit.unit);
        named::limit(limit.bound, &amount)
    });
    match (figure, limit_words) {
        (Some(figure), Some(asked)) => {
            let unit = limit.map_or("", |limit| limit.unit.as_str());
            format!("{words}: {}, {asked}", named::counted(figure, unit))
        }
        (None, Some(asked)) => format!("{words}: {asked}"),
        _ => words,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::rules::Bound;

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
