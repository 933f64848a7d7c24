//! How a line starts: list marks, headings, and words before the amount.

use super::LineKind;
use crate::units::read_amount;

/// The line without its list mark: "- ", "•", "[ ]", "1) ", "2. ".
pub(super) fn without_bullet(text: &str) -> &str {
    let text = text.trim();
    for mark in [
        "[ ]", "[x]", "[X]", "( )", "•", "·", "▪", "◦", "☐", "□", "✓", "‣",
    ] {
        if let Some(rest) = text.strip_prefix(mark) {
            return rest.trim_start();
        }
    }
    for mark in ["- ", "* ", "– ", "— ", "-\t", "*\t"] {
        if let Some(rest) = text.strip_prefix(mark) {
            return rest.trim_start();
        }
    }
    without_number(text).unwrap_or(text)
}

/// The line without its number in a list, where an amount or a word follows.
fn without_number(text: &str) -> Option<&str> {
    let after_digits = text.trim_start_matches(|c: char| c.is_ascii_digit());
    if !(1..=2).contains(&(text.len() - after_digits.len())) {
        return None;
    }
    let rest = after_digits.strip_prefix([')', '.'])?;
    rest.starts_with(char::is_whitespace)
        .then(|| rest.trim_start())
}

/// Whether the line is an ingredient at all.
pub(super) fn kind(text: &str) -> LineKind {
    if !text.chars().any(char::is_alphanumeric) {
        return LineKind::Blank;
    }
    let has_amount = !matches!(read_amount(text), Ok(None));
    let lowered = text.to_lowercase();
    let is_title = text.ends_with(':')
        || lowered.starts_with("for the ")
        || lowered.starts_with("# ")
        || lowered.starts_with("## ")
        || (text.starts_with("**") && text.ends_with("**"));
    if is_title && !has_amount {
        LineKind::Heading
    } else {
        LineKind::Ingredient
    }
}

/// Parts of a fruit or egg that a line names before the amount.
const PARTS: [&str; 8] = [
    "juice", "zest", "rind", "peel", "yolks", "yolk", "whites", "white",
];

/// The part and the rest of "juice of 1 lemon", "grated zest of 2 oranges".
pub(super) fn part_of(text: &str) -> Option<(&'static str, &str)> {
    let lowered = text.to_ascii_lowercase();
    let opened = lowered
        .trim_start_matches("the ")
        .trim_start_matches("finely ")
        .trim_start_matches("grated ");
    let skipped = lowered.len() - opened.len();
    PARTS.iter().find_map(|part| {
        let after = opened.strip_prefix(part)?;
        let rest = after
            .strip_prefix(" of ")
            .or_else(|| after.strip_prefix(" from "))?;
        let start = skipped + opened.len() - rest.len();
        Some((*part, &text[start..]))
    })
}
