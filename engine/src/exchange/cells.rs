//! Text in the cells of a table.
//!
//! A spreadsheet may run a cell that begins like a formula. OWASP, "CSV
//! Injection": put a single quote before a cell that begins with one of
//! `= + - @`, tab, carriage return or line feed. The full-width forms of the
//! signs are held to be the same. Numbers are not text: they stay as they are.

/// First characters by which a cell could be read as a formula.
const BEGINS_FORMULA: [char; 11] = ['=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠'];

/// The text as a cell that no spreadsheet takes for a formula; [`restored`]
/// gives the text back.
///
/// ```
/// use engine::exchange::cells::{harmless, restored};
/// assert_eq!(harmless("=1+1"), "'=1+1");
/// assert_eq!(harmless("2 cups milk"), "2 cups milk");
/// assert_eq!(restored("'=1+1"), "=1+1");
/// assert_eq!(restored("'tis the season"), "'tis the season");
/// ```
pub fn harmless(text: &str) -> String {
    if looks_like_a_formula(text) {
        format!("'{text}")
    } else {
        text.to_owned()
    }
}

/// The text that was made [`harmless`].
pub fn restored(cell: &str) -> &str {
    match cell.strip_prefix('\'') {
        Some(text) if looks_like_a_formula(text) => text,
        _ => cell,
    }
}

/// Quotes before such a sign are looked through, so that a text which begins
/// with a quote and a sign comes back with its own quote.
fn looks_like_a_formula(text: &str) -> bool {
    text.trim_start_matches('\'').starts_with(BEGINS_FORMULA)
}
