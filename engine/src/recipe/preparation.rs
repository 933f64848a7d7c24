//! Words for what is done to a food, read once from the kitchen table.

use crate::tables;
use crate::units::vocabulary;
use nutrient_data::kitchen;
use serde::Deserialize;
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// What a word says about a food.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "camelCase")]
pub(crate) enum Role {
    /// What a knife does to it: "chopped".
    Cut,
    /// The pieces that come of it, which may be part of a food's name:
    /// "slices", "rings".
    Form,
    /// A state that may be part of the food's name: "canned", "ground".
    State,
    /// What is done to it on the way: "peeled".
    Handling,
    /// How that is done: "finely".
    Manner,
    /// Opens a remark: "for", "such".
    Aside,
    /// A food's name that only looks like preparation: "split peas".
    Name,
}

#[derive(Deserialize)]
struct PreparationRow {
    words: String,
    stem: String,
    role: Role,
}

static WORDS: LazyLock<BTreeMap<String, (String, Role)>> = LazyLock::new(|| {
    tables::read::<PreparationRow>("preparation.csv", kitchen::PREPARATION)
        .unwrap_or_else(|fault| panic!("{fault}"))
        .into_iter()
        .map(|row| (row.row.words, (row.row.stem, row.row.role)))
        .collect()
});

/// The most words that a food's name of the table has.
pub(crate) const LONGEST_NAME: usize = 4;

/// What a word or phrase says about a food, if the table knows it.
pub(crate) fn role(phrase: &str) -> Option<Role> {
    WORDS.get(&phrase.to_lowercase()).map(|(_, role)| *role)
}

/// The form of a word that is compared: one for "sliced" and "slices", the
/// singular for a word that the table does not know.
pub(crate) fn stem(word: &str) -> String {
    let lowered = word.to_lowercase();
    match WORDS.get(&lowered) {
        Some((stem, Role::Cut | Role::Form | Role::State | Role::Handling)) => stem.clone(),
        _ => vocabulary::singular(&lowered),
    }
}

/// Whether a word tells thick pieces from thin ones, and so measures apart.
pub(crate) fn is_thickness(word: &str) -> bool {
    ["thin", "thick"]
        .iter()
        .any(|one| one.eq_ignore_ascii_case(word))
}
