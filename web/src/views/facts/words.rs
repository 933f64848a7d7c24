//! Words of the view of the Nutrition Facts panel. Those of the panel itself
//! are given by 21 CFR 101.9 and stay as they are.

use crate::language::{Say, say};

pub const NOTES: Say = Say("facts-notes");
pub const PRINT: Say = Say("facts-print");
pub const INCOMPLETE: Say = Say("facts-incomplete");
pub const PANEL: &str = "Nutrition Facts";
pub const PERCENT_HEADING: &str = "% Daily Value*";
pub const AMOUNT_HEADING: &str = "Amount";
pub const CALORIES: &str = "Calories";
pub const SERVING_SIZE: &str = "Serving size";
pub const SHORT_SERVING_SIZE: &str = "Serv. size:";
pub const NUTRIENT: &str = "Nutrient";

pub const OPTIONS: Say = Say("facts-options");
pub const SERVING_WEIGHT: Say = Say("facts-serving-weight");
pub const CONTAINER: Say = Say("facts-container");
pub const GRAMS: &str = "g";
pub const AUDIENCE: Say = Say("facts-audience");
pub const FOUR_AND_OVER: Say = Say("facts-four-and-over");
pub const ONE_TO_THREE: Say = Say("facts-one-to-three");
pub const DUAL: Say = Say("facts-dual");
pub const CONTENT: Say = Say("facts-content");
pub const FULL: Say = Say("facts-full");
pub const WITHOUT_INSIGNIFICANT: Say = Say("facts-without-insignificant");
pub const SIMPLIFIED: Say = Say("facts-simplified");
pub const ALSO: Say = Say("facts-also");
pub const FORM: Say = Say("facts-form");
pub const VERTICAL: Say = Say("facts-vertical");
pub const TABULAR: Say = Say("facts-tabular");
pub const LINEAR: Say = Say("facts-linear");

/// Leads back to the card.
pub fn back(title: &str) -> String {
    say("facts-back", &[("title", title.into())])
}

/// Title of the view.
pub fn title(title: &str) -> String {
    say("facts-title", &[("title", title.into())])
}

/// In which language the panel is.
pub const IN_ENGLISH: Say = Say("facts-in-english");
