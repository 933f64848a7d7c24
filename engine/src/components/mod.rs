//! Meal components: what a serving of a recipe credits toward fruits,
//! vegetables and their subgroups, grains, meats and meat alternates, and milk.
//!
//! The tables say which foods credit and how; a food that no rule covers
//! credits nothing and its line says so. Each line credits in the form that it
//! names (raw, cooked, drained), amounts of the whole recipe are added up
//! exactly, and one serving's total is rounded down once, last.

mod component;
mod definitions;
mod grain_groups;
mod household;
mod line;
mod recipe;
mod rule;

pub use component::{BeansRole, Component, Mark};
pub use definitions::CreditDefinitions;
pub use grain_groups::{GrainGroups, GrainWeight};
pub(crate) use household::unit_weight;
pub use line::{
    CitedRule, CouldAdd, CreditLine, LineCredit, Operation, PartCredit, StatedCredit, Step,
};
pub use recipe::{Credit, RecipeCredits, credit_recipe};
pub use rule::{Basis, CreditRule, CreditYield, RuleList};

use crate::tables::TableError;

/// The tables of crediting.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct CreditRules {
    /// Which foods credit and how.
    pub list: RuleList,
    /// Exhibit A.
    pub grains: GrainGroups,
    /// Rounding and smallest amounts.
    pub definitions: CreditDefinitions,
}

impl CreditRules {
    /// Reads the three tables.
    ///
    /// # Errors
    /// At the first row that cannot be used.
    pub fn from_csv(
        credit_rules: &str,
        grain_groups: &str,
        credit_definitions: &str,
    ) -> Result<Self, TableError> {
        let grains = GrainGroups::from_csv(grain_groups)?;
        Ok(Self {
            list: RuleList::from_csv(credit_rules, &grains)?,
            definitions: CreditDefinitions::from_csv(credit_definitions)?,
            grains,
        })
    }

    /// Reads the committed tables.
    ///
    /// # Errors
    /// When a committed table cannot be used.
    pub fn committed() -> Result<Self, TableError> {
        use nutrient_data::rules::{CREDIT_DEFINITIONS, CREDIT_RULES, GRAIN_GROUPS};
        Self::from_csv(CREDIT_RULES, GRAIN_GROUPS, CREDIT_DEFINITIONS)
    }
}
