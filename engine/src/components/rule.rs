//! Credit rules: which foods they cover and how these credit.

use super::{BeansRole, Component, GrainGroups, Mark};
use crate::foods::{Food, FoodId};
use crate::tables::{self, List, Row, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// By what a food credits.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Basis {
    /// By one of the food's own household measures: cup, Tbsp, fl oz, or a
    /// piece such as "large".
    #[serde(rename = "measure")]
    Measure,
    /// By weight, in g or oz.
    #[serde(rename = "weight")]
    Weight,
    /// By the weight of one ounce equivalent in a group of Exhibit A.
    #[serde(rename = "exhibit")]
    Exhibit,
    /// It credits nothing.
    #[serde(rename = "none")]
    Nothing,
    /// It may credit, but the dataset does not tell how much.
    #[serde(rename = "unsettled")]
    Unsettled,
}

/// What is left of the amount after cooking.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CreditYield {
    /// This share of it, or this multiple for food that takes up water.
    Share(Decimal),
    /// No figure for this food: the line has to state it.
    Stated,
}

impl<'de> Deserialize<'de> for CreditYield {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        match text.as_str() {
            "stated" => Ok(Self::Stated),
            number => number.parse().map(Self::Share).map_err(|_| {
                serde::de::Error::custom(format!(
                    "\"{number}\" is no yield: enter a number such as 0.74, or the word stated"
                ))
            }),
        }
    }
}

impl Serialize for CreditYield {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Share(share) => serializer.collect_str(share),
            Self::Stated => serializer.serialize_str("stated"),
        }
    }
}

/// How the foods that it covers credit: a row of the table. The first row that
/// covers a food decides.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct CreditRule {
    /// Name of the rule.
    pub id: String,
    /// Only for dishes that serve their beans as this.
    pub role: Option<BeansRole>,
    /// The dataset's food groups it covers.
    pub groups: List<u16>,
    /// The description begins with one of these; any, if there are none.
    pub begins: List<String>,
    /// The description has one of these words; any, if there are none.
    pub has: List<String>,
    /// The description has none of these words.
    pub lacks: List<String>,
    /// Or: the foods by their numbers, whatever their descriptions.
    pub numbers: List<u32>,
    /// What they credit toward; for an unsettled rule, what they could credit
    /// toward, and anything if it is not set.
    pub component: Option<Component>,
    /// Marks that rules on a week ask for.
    pub marks: List<Mark>,
    /// By what they credit.
    pub basis: Basis,
    /// So many units …
    pub per: Option<Decimal>,
    /// … of this unit (for Exhibit A, the letter of the group) …
    pub unit: String,
    /// … credit so much, in the component's unit.
    pub gives: Option<Decimal>,
    /// What is left after cooking, where the food is entered raw.
    #[serde(rename = "yield")]
    pub cooked_yield: Option<CreditYield>,
    /// Food whose household measure stands in where the food has none.
    pub cup_of: Option<u32>,
    /// Grams of protein that the amount must hold.
    pub least_protein: Option<Decimal>,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where the figure was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
    /// The rule in words.
    pub words: String,
}

impl CreditRule {
    /// True when the rule decides how `food` credits in a dish that serves its
    /// beans as `role`. `description` is the food's, in small letters.
    fn covers(&self, food: &Food, description: &str, role: BeansRole) -> bool {
        if self.role.is_some_and(|own| own != role) {
            return false;
        }
        if !self.numbers.is_empty() {
            return matches!(food.id, FoodId::Sr28(number) if self.numbers.contains(&number));
        }
        self.groups.contains(&food.group.0)
            && any_or_empty(&self.begins, |term| description.starts_with(term))
            && any_or_empty(&self.has, |term| has_words(description, term))
            && !self.lacks.iter().any(|term| has_words(description, term))
    }

    fn check(&self, grains: &GrainGroups) -> Result<(), String> {
        if self.groups.is_empty() && self.numbers.is_empty() {
            return Err("covers no food: enter food groups or food numbers".into());
        }
        let positive = |value: Option<Decimal>, column: &str| match value {
            Some(value) if value > Decimal::ZERO => Ok(()),
            _ => Err(format!("{column} must be a number above zero")),
        };
        match self.basis {
            Basis::Nothing | Basis::Unsettled => return Ok(()),
            Basis::Exhibit => {
                grains.one_oz_eq(&self.unit).map(drop).ok_or(format!(
                    "\"{}\" is no group of Exhibit A: enter a letter of the table grain_groups",
                    self.unit
                ))?;
            }
            Basis::Measure | Basis::Weight => {
                positive(self.per, "per")?;
                positive(self.gives, "gives")?;
            }
        }
        if self.basis == Basis::Weight && !["g", "oz"].contains(&self.unit.as_str()) {
            return Err(format!("\"{}\" is no weight: enter g or oz", self.unit));
        }
        if self.basis == Basis::Measure && self.unit.is_empty() {
            return Err("needs a unit: enter cup, tbsp, fl oz or a piece".into());
        }
        match self.component {
            Some(_) => Ok(()),
            None => Err("needs a component, or the basis none or unsettled".into()),
        }
    }
}

fn any_or_empty(terms: &[String], test: impl Fn(&str) -> bool) -> bool {
    terms.is_empty() || terms.iter().any(|term| test(term))
}

/// True when `words` stand in `text`, not as a part of longer words.
fn has_words(text: &str, words: &str) -> bool {
    let joins = |outside: Option<char>, inside: Option<char>| {
        outside.is_some_and(char::is_alphanumeric) && inside.is_some_and(char::is_alphanumeric)
    };
    text.match_indices(words).any(|(start, _)| {
        let before = text[..start].chars().next_back();
        let after = text[start + words.len()..].chars().next();
        !joins(before, words.chars().next()) && !joins(after, words.chars().next_back())
    })
}

/// All credit rules, in the order in which they are asked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct RuleList(Vec<CreditRule>);

const TABLE: &str = "credit_rules";

impl RuleList {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, covers nothing, or has the name of another.
    pub fn from_csv(text: &str, grains: &GrainGroups) -> Result<Self, TableError> {
        let mut rows: Vec<Row<CreditRule>> = tables::read(TABLE, text)?;
        for (index, Row { line, row }) in rows.iter().enumerate() {
            let problem = |problem: String| TableError {
                table: TABLE.to_owned(),
                line: *line,
                problem,
            };
            row.check(grains).map_err(problem)?;
            if let Some(other) = rows[..index].iter().find(|other| other.row.id == row.id) {
                return Err(problem(format!(
                    "line {} has the name \"{}\" already: rename one of the two",
                    other.line, row.id
                )));
            }
        }
        for Row { row, .. } in &mut rows {
            for terms in [&mut row.begins, &mut row.has, &mut row.lacks] {
                for term in &mut terms.0 {
                    *term = term.to_lowercase();
                }
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// The rule that decides how a food credits.
    pub fn rule_for(&self, food: &Food, role: BeansRole) -> Option<&CreditRule> {
        let description = food.description.to_lowercase();
        self.0
            .iter()
            .find(|rule| rule.covers(food, &description, role))
    }

    /// All rules in table order.
    pub fn rules(&self) -> &[CreditRule] {
        &self.0
    }
}

#[cfg(test)]
mod tests {
    use super::has_words;

    #[test]
    fn words_stand_alone() {
        for (text, words, found) in [
            ("strawberries, raw", "raw", true),
            ("strawberries, frozen", "raw", false),
            ("wheat flour, white, unenriched", "enriched", false),
            ("rice, white, enriched", "enriched", true),
            ("milk, reduced fat, fluid, 2% milkfat", "2%", true),
            ("peaches, canned, juice pack", "juice pack", true),
        ] {
            assert_eq!(has_words(text, words), found, "{words} in {text}");
        }
    }
}
