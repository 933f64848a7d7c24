//! An office's own limits.

use serde::{Deserialize, Serialize};

/// Tables in CSV with an office's own limits, each with the header of the
/// table of the same name.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct OwnRules {
    /// Limits on the average meal.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dietary_specifications: Option<String>,
    /// Amounts of components.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub meal_patterns: Option<String>,
    /// Shares, options and product limits.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub week_rules: Option<String>,
}
