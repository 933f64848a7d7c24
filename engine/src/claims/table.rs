//! The criteria of claims, read from their table.

use super::FoodKind;
use super::disclosure::{self, Disclosure};
use crate::foods::NutrientId;
use crate::rules::{Bound, Citation};
use crate::tables::{self, Row, TableError};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize};

const CLAIMS: &str = "claims";

/// Of how much food an amount is taken.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AmountBasis {
    /// The reference amount customarily consumed, as the caller states it.
    ReferenceAmount,
    /// The serving on the label.
    Serving,
    /// A fixed weight of food.
    Weight(Grams),
}

/// A limit and the side to be on.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Limit {
    /// On which side.
    pub bound: Bound,
    /// The limit, in `unit`.
    pub limit: Decimal,
    /// g, mg or %.
    pub unit: String,
}

/// What one criterion looks at.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Test {
    /// The nutrient's amount.
    Amount(AmountBasis, Limit),
    /// The nutrient's share of the calories, percent.
    ShareOfEnergy {
        /// Energy of a gram of it, kcal.
        kcal_per_gram: Decimal,
        /// The limit.
        limit: Limit,
    },
    /// By how many percent it is less than in the reference food.
    Reduction(AmountBasis, Limit),
    /// Somebody must say whether such an ingredient is used; where it is, the
    /// claim needs a footnote.
    Ingredient,
    /// The reference food must not meet this claim itself.
    ReferenceIsNot(String),
}

/// One criterion of a claim.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Criterion {
    /// For which foods it counts.
    pub foods: Vec<FoodKind>,
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Its name inside a sentence.
    pub name: String,
    /// What is looked at.
    pub test: Test,
    /// Where set: only for foods with a reference amount up to this.
    pub only_small: Option<Grams>,
    /// In words.
    pub words: String,
    /// Where it stands.
    pub citation: Citation,
}

/// A claim with all its criteria, each of which must hold.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Claim {
    /// The claim as a label words it: "low sodium".
    pub name: String,
    /// Its criteria for all kinds of food.
    pub criteria: Vec<Criterion>,
}

/// The texts of the claims' tables.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct ClaimTexts<'a> {
    /// Criteria.
    pub claims: &'a str,
    /// What must stand beside a claim.
    pub disclosure: &'a str,
}

impl ClaimTexts<'static> {
    /// The texts that come with this version.
    pub const fn committed() -> Self {
        Self {
            claims: nutrient_data::rules::CLAIMS,
            disclosure: nutrient_data::rules::CLAIM_DISCLOSURE,
        }
    }
}

/// Everything that claims are checked by.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ClaimTables {
    claims: Vec<Claim>,
    disclosures: Vec<Disclosure>,
}

impl ClaimTables {
    /// Reads the tables.
    ///
    /// # Errors
    /// When a row is incomplete, or names a claim that has no criteria.
    pub fn new(texts: &ClaimTexts<'_>) -> Result<Self, TableError> {
        let claims = read_claims(texts.claims)?;
        let disclosures = disclosure::read(texts.disclosure, &claims)?;
        Ok(Self {
            claims,
            disclosures,
        })
    }

    /// All claims in the order of the table.
    pub fn claims(&self) -> &[Claim] {
        &self.claims
    }

    /// One claim.
    pub fn claim(&self, name: &str) -> Option<&Claim> {
        self.claims.iter().find(|claim| claim.name == name)
    }

    /// All that may have to stand beside a claim.
    pub fn disclosures(&self) -> &[Disclosure] {
        &self.disclosures
    }
}

/// How a row says what it looks at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
pub(super) enum Basis {
    #[serde(rename = "per reference amount")]
    PerReferenceAmount,
    #[serde(rename = "per serving")]
    PerServing,
    #[serde(rename = "per weight")]
    PerWeight,
    #[serde(rename = "share of energy")]
    ShareOfEnergy,
    #[serde(rename = "reduction per reference amount")]
    ReductionPerReferenceAmount,
    #[serde(rename = "reduction per weight")]
    ReductionPerWeight,
    #[serde(rename = "ingredient")]
    Ingredient,
    #[serde(rename = "reference food")]
    ReferenceFood,
    #[serde(rename = "always")]
    Always,
}

/// The columns that say of how much food an amount is taken and where its
/// limit lies; both tables have them.
pub(super) struct LimitColumns {
    pub(super) grams: Option<Decimal>,
    pub(super) bound: Option<Bound>,
    pub(super) limit: Option<Decimal>,
    pub(super) unit: String,
}

impl LimitColumns {
    pub(super) fn weight(&self) -> Result<AmountBasis, String> {
        self.grams
            .filter(|grams| *grams > Decimal::ZERO)
            .map(|grams| AmountBasis::Weight(Grams::new(grams)))
            .ok_or_else(|| "an amount per weight needs grams above zero".into())
    }

    pub(super) fn limit(&self) -> Result<Limit, String> {
        match (self.bound, self.limit) {
            (Some(bound), Some(limit)) if !self.unit.is_empty() => Ok(Limit {
                bound,
                limit,
                unit: self.unit.clone(),
            }),
            _ => Err("fill bound, limit and unit".into()),
        }
    }
}

#[derive(Deserialize)]
struct ClaimRow {
    claim: String,
    #[serde(deserialize_with = "food_kinds")]
    foods: Vec<FoodKind>,
    nutrient: NutrientId,
    name: String,
    basis: Basis,
    #[serde(with = "rust_decimal::serde::str_option")]
    grams: Option<Decimal>,
    #[serde(with = "rust_decimal::serde::str_option")]
    only_if_reference_at_most: Option<Decimal>,
    #[serde(with = "rust_decimal::serde::str_option")]
    kcal_per_gram: Option<Decimal>,
    bound: Option<Bound>,
    #[serde(with = "rust_decimal::serde::str_option")]
    limit: Option<Decimal>,
    unit: String,
    reference_not: String,
    words: String,
    #[serde(flatten)]
    citation: Citation,
}

/// Kinds of food, separated by semicolons.
pub(super) fn food_kinds<'de, D: Deserializer<'de>>(
    deserializer: D,
) -> Result<Vec<FoodKind>, D::Error> {
    String::deserialize(deserializer)?
        .split(';')
        .map(|word| word.trim().parse().map_err(serde::de::Error::custom))
        .collect()
}

impl ClaimRow {
    fn test(&self) -> Result<Test, String> {
        let columns = LimitColumns {
            grams: self.grams,
            bound: self.bound,
            limit: self.limit,
            unit: self.unit.clone(),
        };
        Ok(match self.basis {
            Basis::PerReferenceAmount => {
                Test::Amount(AmountBasis::ReferenceAmount, columns.limit()?)
            }
            Basis::PerServing => Test::Amount(AmountBasis::Serving, columns.limit()?),
            Basis::PerWeight => Test::Amount(columns.weight()?, columns.limit()?),
            Basis::ReductionPerReferenceAmount => {
                Test::Reduction(AmountBasis::ReferenceAmount, columns.limit()?)
            }
            Basis::ReductionPerWeight => Test::Reduction(columns.weight()?, columns.limit()?),
            Basis::ShareOfEnergy => Test::ShareOfEnergy {
                kcal_per_gram: self
                    .kcal_per_gram
                    .ok_or("a share of energy needs kcal_per_gram: enter 9 for fat")?,
                limit: columns.limit()?,
            },
            Basis::Ingredient => Test::Ingredient,
            Basis::ReferenceFood => Test::ReferenceIsNot(self.reference_not.clone()),
            Basis::Always => return Err("a criterion must look at something".into()),
        })
    }
}

fn read_claims(text: &str) -> Result<Vec<Claim>, TableError> {
    let mut claims: Vec<Claim> = Vec::new();
    for Row { line, row } in tables::read::<ClaimRow>(CLAIMS, text)? {
        let problem = |problem: String| problem_in(CLAIMS, line, problem);
        let test = row.test().map_err(problem)?;
        if let Test::ReferenceIsNot(other) = &test
            && !claims.iter().any(|claim| claim.name == *other)
        {
            return Err(problem(format!(
                "refers to the claim \"{other}\", which no earlier row defines"
            )));
        }
        let criterion = Criterion {
            foods: row.foods,
            nutrient: row.nutrient,
            name: row.name,
            test,
            only_small: row.only_if_reference_at_most.map(Grams::new),
            words: row.words,
            citation: row.citation,
        };
        match claims.iter_mut().find(|claim| claim.name == row.claim) {
            Some(claim) => claim.criteria.push(criterion),
            None => claims.push(Claim {
                name: row.claim,
                criteria: vec![criterion],
            }),
        }
    }
    Ok(claims)
}

pub(super) fn problem_in(table: &str, line: u64, problem: String) -> TableError {
    TableError {
        table: table.to_owned(),
        line,
        problem,
    }
}
