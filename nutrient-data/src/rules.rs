//! Regulatory tables as text. Each row carries its effective dates, its
//! citation and how sure the figure is; the engine reads and checks them.

/// Calorie, saturated fat, added sugars and sodium limits of school meals.
pub const DIETARY_SPECIFICATIONS: &str = include_str!("../rules/dietary_specifications.csv");

/// Words in a description that point to a major food allergen.
pub const ALLERGEN_TERMS: &str = include_str!("../rules/allergen_terms.csv");

/// Cooking, holding, cooling and reheating temperatures, in two separate sets.
pub const FOOD_SAFETY: &str = include_str!("../rules/food_safety.csv");
