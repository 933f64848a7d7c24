//! Screening of lines and recipes.

use super::terms::{ALLERGENS, Allergen, AllergenTerms, Level, Term};
use super::words::{positions, without, words};
use crate::foods::Food;
use serde::{Deserialize, Serialize};

/// What can be said of an allergen in a food.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Presence {
    /// Nothing points to it, which proves nothing: check the package.
    Unknown,
    /// Something points to it.
    MayBePresent,
    /// The words name it.
    Contains,
}

/// Why an allergen is thought to be in a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Evidence {
    /// The words that were found; the food group's name for a group row.
    pub found: String,
    /// Reason, in words.
    pub why: String,
    /// Source of the row, with how sure it is.
    pub source: String,
}

/// One allergen in one line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct AllergenFinding {
    /// Which allergen.
    pub allergen: Allergen,
    /// What can be said.
    pub presence: Presence,
    /// What it rests on; empty for unknown.
    pub evidence: Vec<Evidence>,
}

/// The nine allergens in one line, in the order of [`ALLERGENS`].
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct LineAllergens {
    /// True when no food is known for the line.
    pub unknown_food: bool,
    /// One finding per allergen.
    pub findings: Vec<AllergenFinding>,
}

/// Screens one line: its own words and, where a food is known, the dataset's
/// description, other names and group. The cook's words count even where the
/// food that was matched does not bear them out.
pub fn screen_line(terms: &AllergenTerms, text: &str, food: Option<&Food>) -> LineAllergens {
    let mut sources = vec![words(text)];
    if let Some(food) = food {
        sources.push(words(&food.description));
        sources.push(words(&food.common_names));
    }
    let findings = ALLERGENS
        .into_iter()
        .map(|allergen| finding(terms, allergen, &sources, food))
        .collect();
    LineAllergens {
        unknown_food: food.is_none(),
        findings,
    }
}

/// The recipe's nine findings with the lines (by index) that carry each.
pub fn screen_recipe(lines: &[LineAllergens]) -> Vec<(AllergenFinding, Vec<usize>)> {
    ALLERGENS
        .into_iter()
        .map(|allergen| {
            let mut merged = AllergenFinding {
                allergen,
                presence: Presence::Unknown,
                evidence: Vec::new(),
            };
            let mut carriers = Vec::new();
            for (index, line) in lines.iter().enumerate() {
                for found in line.findings.iter().filter(|f| f.allergen == allergen) {
                    merged.presence = merged.presence.max(found.presence);
                    merged.evidence.extend(found.evidence.iter().cloned());
                    if found.presence > Presence::Unknown {
                        carriers.push(index);
                    }
                }
            }
            (merged, carriers)
        })
        .collect()
}

fn finding(
    terms: &AllergenTerms,
    allergen: Allergen,
    sources: &[Vec<String>],
    food: Option<&Food>,
) -> AllergenFinding {
    let mut presence = Presence::Unknown;
    let mut evidence: Vec<Evidence> = Vec::new();
    for term in terms.0.iter().filter(|term| term.allergen == allergen) {
        let Some(found) = found(term, sources, food) else {
            continue;
        };
        presence = presence.max(match term.level {
            Level::Contains => Presence::Contains,
            Level::May => Presence::MayBePresent,
        });
        evidence.push(Evidence {
            found,
            why: term.why.clone(),
            source: term.source.clone(),
        });
    }
    AllergenFinding {
        allergen,
        presence,
        evidence,
    }
}

/// What a term was found as: its phrase, or the group it speaks of.
fn found(term: &Term, sources: &[Vec<String>], food: Option<&Food>) -> Option<String> {
    let in_group = food.is_some_and(|food| term.groups.contains(&food.group));
    if !term.groups.is_empty() && !in_group {
        return None;
    }
    let blanked = sources.iter().map(|text| {
        term.unless
            .iter()
            .fold(text.clone(), |text, phrase| without(text, phrase))
    });
    if term.phrase.is_empty() {
        let excluded = sources.iter().any(|text| {
            term.unless
                .iter()
                .any(|phrase| !positions(text, phrase).is_empty())
        });
        return (!excluded).then(|| "food group".to_owned());
    }
    let stands = blanked
        .into_iter()
        .any(|text| !positions(&text, &term.phrase).is_empty());
    stands.then(|| term.phrase.join(" "))
}
