//! What must stand beside a claim.

use super::FoodKind;
use super::table::{AmountBasis, Basis, Claim, Limit, LimitColumns, food_kinds, problem_in};
use crate::foods::NutrientId;
use crate::rules::{Bound, Citation};
use crate::tables::{self, Row, TableError};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::Deserialize;

const DISCLOSURE: &str = "claim_disclosure";

/// When a disclosure is needed.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Condition {
    /// Unless the amount of a nutrient keeps to the limit.
    Unless {
        /// Which nutrient.
        nutrient: NutrientId,
        /// Of how much food.
        basis: AmountBasis,
        /// Where set: only for foods with a reference amount up to this.
        only_small: Option<Grams>,
        /// The limit.
        limit: Limit,
    },
    /// Where an ingredient understood to contain the nutrient is used.
    Ingredient(NutrientId),
    /// With every such claim.
    Always,
}

/// One row of the table.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Disclosure {
    /// With which claims; empty for all.
    pub claims: Vec<String>,
    /// For which foods.
    pub foods: Vec<FoodKind>,
    /// When.
    pub condition: Condition,
    /// What to write or to do.
    pub words: String,
    /// Where the rule stands.
    pub citation: Citation,
}

impl Disclosure {
    /// True for a caution that does not depend on the claim.
    pub fn is_general(&self) -> bool {
        self.claims.is_empty() && self.condition == Condition::Always
    }
}

#[derive(Deserialize)]
struct DisclosureRow {
    claims: String,
    #[serde(deserialize_with = "food_kinds")]
    foods: Vec<FoodKind>,
    nutrient: Option<NutrientId>,
    basis: Basis,
    #[serde(with = "rust_decimal::serde::str_option")]
    grams: Option<Decimal>,
    #[serde(with = "rust_decimal::serde::str_option")]
    only_if_reference_at_most: Option<Decimal>,
    bound: Option<Bound>,
    #[serde(with = "rust_decimal::serde::str_option")]
    limit: Option<Decimal>,
    unit: String,
    words: String,
    #[serde(flatten)]
    citation: Citation,
}

impl DisclosureRow {
    fn condition(&self) -> Result<Condition, String> {
        let columns = LimitColumns {
            grams: self.grams,
            bound: self.bound,
            limit: self.limit,
            unit: self.unit.clone(),
        };
        let basis = match (self.basis, self.nutrient) {
            (Basis::Always, None) => return Ok(Condition::Always),
            (Basis::Ingredient, Some(nutrient)) => return Ok(Condition::Ingredient(nutrient)),
            (Basis::PerReferenceAmount, Some(_)) => AmountBasis::ReferenceAmount,
            (Basis::PerServing, Some(_)) => AmountBasis::Serving,
            (Basis::PerWeight, Some(_)) => columns.weight()?,
            _ => return Err("a disclosure goes by an amount or an ingredient of a nutrient, or is for always and names none".into()),
        };
        Ok(Condition::Unless {
            nutrient: self.nutrient.ok_or("name the nutrient")?,
            basis,
            only_small: self.only_if_reference_at_most.map(Grams::new),
            limit: columns.limit()?,
        })
    }
}

/// Reads the table.
///
/// # Errors
/// When a row is incomplete or names a claim that has no criteria.
pub(super) fn read(text: &str, claims: &[Claim]) -> Result<Vec<Disclosure>, TableError> {
    tables::read::<DisclosureRow>(DISCLOSURE, text)?
        .into_iter()
        .map(|Row { line, row }| {
            let problem = |problem: String| problem_in(DISCLOSURE, line, problem);
            let condition = row.condition().map_err(problem)?;
            let names: Vec<String> = row
                .claims
                .split(';')
                .map(|name| name.trim().to_owned())
                .filter(|name| !name.is_empty())
                .collect();
            let unknown = names
                .iter()
                .find(|name| !claims.iter().any(|claim| claim.name == **name));
            match unknown {
                Some(name) => Err(problem(format!("no claim is called \"{name}\""))),
                None => Ok(Disclosure {
                    claims: names,
                    foods: row.foods,
                    condition,
                    words: row.words,
                    citation: row.citation,
                }),
            }
        })
        .collect()
}
