//! What the check of claims finds.

use super::{Limit, Missing};
use crate::exact::Digits;
use crate::foods::NutrientId;
use crate::rules::Citation;
use rust_decimal::Decimal;
use serde::Serialize;

/// Whether a claim may be offered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum ClaimOutcome {
    /// Complete data proves every criterion.
    Proven,
    /// A criterion fails, whatever the missing values are.
    NotMet,
    /// Nothing fails, but not everything is known: nothing is said.
    Silent {
        /// What is missing, each thing once.
        missing: Vec<Missing>,
    },
}

/// How one criterion came out.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum CriterionOutcome {
    /// It holds.
    Holds,
    /// It fails.
    Fails,
    /// It cannot be told.
    Unknown {
        /// What is missing.
        missing: Vec<Missing>,
    },
}

/// One criterion with its figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct CriterionFinding {
    /// What is looked at, in words.
    pub words: String,
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// The exact figure, in the limit's unit; where not everything is known,
    /// what is.
    pub figure: Option<Decimal>,
    /// Decimal places that show on which side of the limit the figure lies.
    pub digits: Digits,
    /// The limit, where the criterion has one.
    pub limit: Option<Limit>,
    /// How it came out.
    pub outcome: CriterionOutcome,
    /// Where the criterion stands.
    pub citation: Citation,
}

/// Something that must stand beside a proven claim.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Needed {
    /// What to write or to do.
    pub words: String,
    /// False when missing values decide whether it is needed.
    pub certain: bool,
    /// Where the rule stands.
    pub citation: Citation,
}

/// One claim and how it came out.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ClaimFinding {
    /// The claim: "low sodium".
    pub claim: String,
    /// Whether it may be offered.
    pub outcome: ClaimOutcome,
    /// Its criteria for this kind of food.
    pub criteria: Vec<CriterionFinding>,
    /// What must stand beside it; empty unless it is proven.
    pub needed: Vec<Needed>,
}

/// All claims for one food.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ClaimReport {
    /// Every claim that has criteria for this kind of food, in table order.
    pub claims: Vec<ClaimFinding>,
    /// Cautions that go for all of them.
    pub cautions: Vec<Needed>,
}

impl ClaimReport {
    /// The claims that may be offered.
    pub fn proven(&self) -> impl Iterator<Item = &ClaimFinding> {
        self.claims
            .iter()
            .filter(|finding| finding.outcome == ClaimOutcome::Proven)
    }
}
