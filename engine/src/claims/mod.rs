//! Nutrient content claims by 21 CFR 101.13, 101.56, 101.61 and 101.62.
//!
//! | step | module | turns | into |
//! |---|---|---|---|
//! | rules | [`ClaimTables`] | tables in CSV | criteria and disclosures |
//! | figures | `measure` | a food and a criterion | an exact figure, or what is missing |
//! | verdict | [`check_claims`] | all criteria | proven, not met or silent |
//!
//! A claim is offered only when complete data proves every criterion. What is
//! missing may show that a claim fails, for a missing value can only add, but
//! never that it holds. Figures are compared unrounded.
#![deny(clippy::float_arithmetic)]

mod check;
mod disclosure;
mod measure;
mod options;
mod report;
mod table;

pub use check::check_claims;
pub use disclosure::{Condition, Disclosure};
pub use measure::{Missing, WhichFood};
pub use options::{ClaimError, ClaimOptions, FoodKind, ReferenceFood, StatedIngredient};
pub use report::{
    ClaimFinding, ClaimOutcome, ClaimReport, CriterionFinding, CriterionOutcome, Needed,
};
pub use table::{AmountBasis, Claim, ClaimTables, ClaimTexts, Criterion, Limit, Test};
