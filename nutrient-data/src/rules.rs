//! Regulatory tables as text. Each row carries its effective dates, its
//! citation and how sure the figure is; the engine reads and checks them.

/// Calorie, saturated fat, added sugars and sodium limits of school meals.
pub const DIETARY_SPECIFICATIONS: &str = include_str!("../rules/dietary_specifications.csv");

/// Words in a description that point to a major food allergen.
pub const ALLERGEN_TERMS: &str = include_str!("../rules/allergen_terms.csv");

/// Cooking, holding, cooling and reheating temperatures, in two separate sets.
pub const FOOD_SAFETY: &str = include_str!("../rules/food_safety.csv");

/// Rounding of figures on the Nutrition Facts panel, 21 CFR 101.9(b) to (d).
pub const LABEL_ROUNDING: &str = include_str!("../rules/label_rounding.csv");

/// Daily Values for ages 4 and over and for ages 1 to 3, 21 CFR 101.9(c).
pub const DAILY_VALUES: &str = include_str!("../rules/daily_values.csv");

/// The rows of the Nutrition Facts panel in the regulation's order.
pub const LABEL_NUTRIENTS: &str = include_str!("../rules/label_nutrients.csv");

/// Wording on and beside the Nutrition Facts panel.
pub const LABEL_STATEMENTS: &str = include_str!("../rules/label_statements.csv");

/// Type sizes, bars and rules of the Nutrition Facts panel, 21 CFR 101.9(d).
pub const LABEL_LAYOUT: &str = include_str!("../rules/label_layout.csv");

/// Which foods credit toward which meal component, and how.
pub const CREDIT_RULES: &str = include_str!("../rules/credit_rules.csv");

/// Exhibit A: grams of baked goods and grains that credit as 1 oz eq.
pub const GRAIN_GROUPS: &str = include_str!("../rules/grain_groups.csv");

/// Steps to which credits are rounded down, and the smallest that count.
pub const CREDIT_DEFINITIONS: &str = include_str!("../rules/credit_definitions.csv");

/// Amounts of each component that a meal or a week must offer.
pub const MEAL_PATTERNS: &str = include_str!("../rules/meal_patterns.csv");

/// Shares, options and product limits of meals over a week.
pub const WEEK_RULES: &str = include_str!("../rules/week_rules.csv");

/// Criteria of nutrient content claims, 21 CFR 101.56, 101.61 and 101.62.
pub const CLAIMS: &str = include_str!("../rules/claims.csv");

/// What must stand beside a claim, 21 CFR 101.13(h) and (j), 101.61, 101.62.
pub const CLAIM_DISCLOSURE: &str = include_str!("../rules/claim_disclosure.csv");
