//! Words of the view of the Nutrition Facts panel.

pub const NOTES: &str = "To know about this panel";
pub const PRINT: &str = "Print the panel";
pub const INCOMPLETE: &str = "Some values are not known. A figure marked “at least” is what is known, rounded \
     down; such a panel is a draft until the missing values are filled in from product labels.";
pub const PANEL: &str = "Nutrition Facts";
pub const PERCENT_HEADING: &str = "% Daily Value*";
pub const AMOUNT_HEADING: &str = "Amount";
pub const CALORIES: &str = "Calories";
pub const SERVING_SIZE: &str = "Serving size";
pub const SHORT_SERVING_SIZE: &str = "Serv. size:";
pub const NUTRIENT: &str = "Nutrient";

pub const OPTIONS: &str = "How the panel is made";
pub const SERVING_WEIGHT: &str = "Weight of a serving as served";
pub const CONTAINER: &str = "Servings per container";
pub const GRAMS: &str = "g";
pub const AUDIENCE: &str = "For";
pub const FOUR_AND_OVER: &str = "adults and children of 4 years and over";
pub const ONE_TO_THREE: &str = "children of 1 to 3 years";
pub const DUAL: &str = "A second column for the whole container";
pub const CONTENT: &str = "Rows";
pub const FULL: &str = "all";
pub const WITHOUT_INSIGNIFICANT: &str =
    "without those that may be left out for their small amounts";
pub const SIMPLIFIED: &str = "simplified, where it is allowed";
pub const ALSO: &str = "List more nutrients";
pub const FORM: &str = "Layout";
pub const VERTICAL: &str = "one row below the other";
pub const TABULAR: &str = "side by side, for small packages";
pub const LINEAR: &str = "running text, for the smallest packages";

/// Leads back to the card.
pub fn back(title: &str) -> String {
    format!("← {title}, the card")
}

/// Title of the view.
pub fn title(title: &str) -> String {
    format!("Nutrition Facts: {title}")
}
