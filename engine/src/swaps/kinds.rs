//! Kinds of food by the part that they play in a dish.

use super::naming::without_brackets;
use crate::foods::{Food, FoodId};
use crate::tables::{self, List, Row, TableError};
use serde::{Deserialize, Serialize};

/// By what the amount of the new food is found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum AmountBy {
    /// The same volume or number of pieces.
    Volume,
    /// The same weight.
    Weight,
    /// As much as credits the same toward meal components.
    Credit,
}

/// Which states of a food may stand for each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(super) enum Forms {
    /// Only the same state.
    Same,
    /// Any, since the words of state mean little here.
    Any,
}

/// Which foods of a kind may stand for each other.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
pub(super) enum Within {
    /// All of them.
    Kind,
    /// Those that share much of their names, for kinds of many dishes: soups.
    Alike,
    /// Those with the same first word, for kinds that are no more than a food
    /// group.
    Name,
}

/// One row of the table.
#[derive(Debug, Clone, Deserialize)]
pub(super) struct Kind {
    /// Its name.
    pub kind: String,
    /// The part that it plays, in words.
    pub part: String,
    /// By what its amount is usually kept.
    pub amount: AmountBy,
    pub forms: Forms,
    pub within: Within,
    groups: List<u16>,
    begins: List<String>,
    has: List<String>,
    lacks: List<String>,
    /// Words of the office's own foods, which stand in no group.
    own: List<String>,
    /// Kinds that may take its place, besides itself.
    near: List<String>,
}

impl Kind {
    fn covers(&self, food: &Food, description: &str) -> bool {
        let lacks = !self.lacks.iter().any(|words| stands(description, words));
        if matches!(food.id, FoodId::Own(_)) {
            return lacks && self.own.iter().any(|words| stands(description, words));
        }
        let begins = |start: &String| {
            description
                .strip_prefix(start.as_str())
                .is_some_and(|rest| !rest.starts_with(char::is_alphanumeric))
        };
        lacks
            && self.groups.contains(&food.group.0)
            && (self.begins.is_empty() || self.begins.iter().any(begins))
            && (self.has.is_empty() || self.has.iter().any(|words| stands(description, words)))
    }
}

/// True when `words` stand in `text`, not as a part of longer words.
pub(super) fn stands(text: &str, words: &str) -> bool {
    text.match_indices(words).any(|(start, _)| {
        let before = text[..start].chars().next_back();
        let after = text[start + words.len()..].chars().next();
        let letter = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
        !letter(before) && !letter(after)
    })
}

/// The table of kinds, in the order in which they are asked.
#[derive(Debug, Clone)]
pub(super) struct Kinds(Vec<Kind>);

impl Kinds {
    /// Reads the table.
    ///
    /// # Errors
    /// When a name occurs twice or a kind that may take another's place is not
    /// in the table.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "swap_kinds";
        let rows: Vec<Row<Kind>> = tables::read(TABLE, text)?;
        for (at, Row { line, row }) in rows.iter().enumerate() {
            let problem = |problem: String| TableError {
                table: TABLE.to_owned(),
                line: *line,
                problem,
            };
            let named = |name: &str| rows.iter().position(|other| other.row.kind == name);
            if named(&row.kind) != Some(at) {
                return Err(problem(format!(
                    "the kind \"{}\" stands above already: rename one of the two",
                    row.kind
                )));
            }
            if let Some(unknown) = row.near.iter().find(|name| named(name).is_none()) {
                return Err(problem(format!(
                    "\"{unknown}\" is no kind of this table: add it or correct the name"
                )));
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// The kind of a food, by its place in the table.
    pub fn of(&self, food: &Food) -> Option<u16> {
        // What stands in brackets is said of the food, and is not its name.
        let description = without_brackets(&food.description).to_lowercase();
        let at = self
            .0
            .iter()
            .position(|kind| kind.covers(food, &description))?;
        u16::try_from(at).ok()
    }

    /// The row at a place.
    pub fn get(&self, at: u16) -> &Kind {
        &self.0[usize::from(at)]
    }

    /// True when a food of kind `other` may take the place of one of `kind`.
    pub fn near(&self, kind: u16, other: u16) -> bool {
        self.get(kind).near.contains(&self.get(other).kind)
    }

    /// True for the name of a kind.
    pub fn knows(&self, name: &str) -> bool {
        self.0.iter().any(|kind| kind.kind == name)
    }
}

#[cfg(test)]
mod tests {
    use super::Kinds;

    const HEAD: &str = "kind,part,amount,forms,within,groups,begins,has,lacks,own,near\n";

    #[test]
    fn bad_rows_are_refused() {
        let good = "oil,fat,volume,same,kind,400,oil,,,oil,\n";
        assert!(Kinds::from_csv(&format!("{HEAD}{good}")).is_ok());
        for (row, word) in [
            (good, "rename"),
            (
                "butter,fat,volume,same,kind,100,butter,,,butter,lard\n",
                "lard",
            ),
            (
                "butter,fat,handful,same,kind,100,butter,,,butter,\n",
                "handful",
            ),
            ("butter,fat,volume,same,kind,x,butter,,,butter,\n", "x"),
        ] {
            let error = Kinds::from_csv(&format!("{HEAD}{good}{row}")).unwrap_err();
            assert_eq!(error.line, 3, "{error}");
            assert!(error.to_string().contains(word), "{error}");
        }
    }
}
