//! The table of terms.

use super::words::words;
use crate::foods::FoodGroup;
use crate::tables::{self, TableError};
use serde::{Deserialize, Serialize};
use std::fmt;

/// A major food allergen, FD&C Act 201(qq)(1), as amended by the FASTER Act of
/// 2021.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Allergen {
    /// Milk.
    Milk,
    /// Egg.
    Egg,
    /// Fish.
    Fish,
    /// Crustacean shellfish.
    #[serde(rename = "crustacean shellfish")]
    CrustaceanShellfish,
    /// Tree nuts.
    #[serde(rename = "tree nuts")]
    TreeNuts,
    /// Wheat.
    Wheat,
    /// Peanuts.
    Peanuts,
    /// Soybeans.
    Soybeans,
    /// Sesame.
    Sesame,
}

/// All nine, in the order of the law.
pub const ALLERGENS: [Allergen; 9] = [
    Allergen::Milk,
    Allergen::Egg,
    Allergen::Fish,
    Allergen::CrustaceanShellfish,
    Allergen::TreeNuts,
    Allergen::Wheat,
    Allergen::Peanuts,
    Allergen::Soybeans,
    Allergen::Sesame,
];

impl fmt::Display for Allergen {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::Milk => "milk",
            Self::Egg => "egg",
            Self::Fish => "fish",
            Self::CrustaceanShellfish => "crustacean shellfish",
            Self::TreeNuts => "tree nuts",
            Self::Wheat => "wheat",
            Self::Peanuts => "peanuts",
            Self::Soybeans => "soybeans",
            Self::Sesame => "sesame",
        })
    }
}

/// How strongly a term points to an allergen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(super) enum Level {
    Contains,
    May,
}

#[derive(Deserialize)]
struct TermRow {
    allergen: Allergen,
    level: Level,
    term: String,
    unless: String,
    groups: String,
    why: String,
    source: String,
    status: String,
}

/// One row: a phrase, a food group, or a phrase within some groups.
#[derive(Debug, Clone)]
pub(super) struct Term {
    pub(super) allergen: Allergen,
    pub(super) level: Level,
    /// Empty for a row that speaks of whole groups.
    pub(super) phrase: Vec<String>,
    pub(super) unless: Vec<Vec<String>>,
    /// Empty for a row that holds in every group.
    pub(super) groups: Vec<FoodGroup>,
    pub(super) why: String,
    pub(super) source: String,
}

/// All terms.
#[derive(Debug, Clone)]
pub struct AllergenTerms(pub(super) Vec<Term>);

const TABLE: &str = "allergen_terms";

impl AllergenTerms {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, or names neither a term nor a group.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        tables::read::<TermRow>(TABLE, text)?
            .into_iter()
            .map(|row| {
                term(row.row).map_err(|problem| TableError {
                    table: TABLE.to_owned(),
                    line: row.line,
                    problem,
                })
            })
            .collect::<Result<_, _>>()
            .map(Self)
    }
}

fn term(row: TermRow) -> Result<Term, String> {
    let groups = phrases(&row.groups)
        .map(|code| code.parse().map(FoodGroup))
        .collect::<Result<Vec<_>, _>>()
        .map_err(|_| format!("\"{}\" is not a list of food group codes", row.groups))?;
    if row.term.is_empty() && groups.is_empty() {
        return Err("names neither a term nor a food group: give one of them".into());
    }
    Ok(Term {
        allergen: row.allergen,
        level: row.level,
        phrase: words(&row.term),
        unless: phrases(&row.unless).map(words).collect(),
        groups,
        why: row.why,
        source: format!("{} ({})", row.source, row.status),
    })
}

fn phrases(list: &str) -> impl Iterator<Item = &str> {
    list.split(';')
        .map(str::trim)
        .filter(|item| !item.is_empty())
}
