//! Words of the view of the Nutrition Facts panel.

use engine::rules::{Citation, Standing};

pub const NOTES: &str = "To know about this panel";
pub const PRINT: &str = "Print the panel";
pub const INCOMPLETE: &str = "Some values are not known. A figure marked “at least” is what is known, rounded \
     down; such a panel is a draft until the missing values are filled in from product labels.";
pub const PANEL: &str = "Nutrition Facts";
pub const PERCENT_HEADING: &str = "% Daily Value*";
pub const AMOUNT_HEADING: &str = "Amount";
pub const CALORIES: &str = "Calories";
pub const SERVING_SIZE: &str = "Serving size";
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

pub const CLAIMS: &str = "Claims that the figures bear out";
pub const CLAIMS_HINT: &str = "By 21 CFR 101.13 and 101.54 to 101.62. A claim is offered only when complete data proves \
     every criterion; a reviewer of labels has the last word.";
pub const KIND: &str = "The food is";
pub const INDIVIDUAL: &str = "a single food";
pub const MAIN_DISH: &str = "a main dish";
pub const MEAL: &str = "a meal";
pub const REFERENCE_AMOUNT: &str = "Amount customarily eaten (21 CFR 101.12(b))";
pub const NO_CLAIMS: &str = "None is proven.";
pub const OTHER_CLAIMS: &str = "Claims that are not offered, and why";
pub const NOT_MET: &str = "not met";
pub const NOT_KNOWN: &str = "not known";
pub const MAY_BE_NEEDED: &str = "(missing values decide whether this is needed)";

/// Where a rule stands.
pub fn cited(citation: &Citation) -> String {
    let status = match citation.status {
        Standing::Verified => "verified",
        Standing::SecondaryCopy => "read in a secondary copy",
        Standing::FromMemory => "from memory",
    };
    format!(" ({}, {status})", citation.paragraph)
}

/// A criterion and its figure, where there is one.
pub fn criterion(words: &str, figure: Option<&str>) -> String {
    match figure {
        Some(figure) => format!("{words}: {figure}"),
        None => format!("{words}: unknown"),
    }
}
