//! Words of the views of recipes.

use engine::allergens::Presence;
use engine::kitchen::{SafetyStep, Step};
use engine::reference::RecipeAllergen;
use engine::yields::Treatment;

pub const TITLE: &str = "Recipes";
pub const LEAD: &str = "Write a recipe as on a kitchen card. Each line is read as you type: what it weighs, which \
     food it means, and what is not known.";
pub const FIND: &str = "Find a recipe";
pub const NEW: &str = "New recipe";
pub const NONE: &str =
    "The book is empty. Write the first recipe, or open a book under About & files.";
pub const NONE_FOUND: &str = "No recipe has these words in its title.";
pub const COLUMN_RECIPE: &str = "Recipe";
pub const COLUMN_SERVINGS: &str = "Servings";
pub const COLUMN_OPEN: &str = "Still open";
pub const NEW_TITLE: &str = "New recipe";

pub const ALL_RECIPES: &str = "← All recipes";
pub const RECIPE_TITLE: &str = "Title of the recipe";
pub const SERVINGS: &str = "Servings";
pub const SERVING_WORDS: &str = "One serving is";
pub const SERVING_HINT: &str = "1 cup";
pub const INGREDIENTS: &str = "Ingredients";
pub const INGREDIENTS_HINT: &str =
    "Write or paste one ingredient per line; the Tab key goes to the reading of the line.";
pub const EXAMPLE: &str = "5 lb ground beef, 85% lean\n3 cups onions, chopped\n1 No. 10 can tomatoes, diced\nsalt to taste";
pub const READINGS: &str = "Readings of the lines";
pub const METHOD: &str = "Directions";
pub const COPY: &str = "Copy the card";
pub const REMOVE: &str = "Take the card out of the book";
pub const PRINT: &str = "Print the card";
pub const TO_FACTS: &str = "Nutrition Facts panel";
pub const KEEP: &str = "Keep this version";
pub const GO_BACK: &str = "Go back to the kept one";
pub const KEPT_HINT: &str = "before → now: the card as last kept, and as it stands.";
pub const NOT_KEPT_HINT: &str = "Keep the card to compare later changes with it.";

pub const FIGURES: &str = "One serving";
pub const CALORIES: &str = "Calories";
pub const SATURATED_FAT: &str = "Saturated fat";
pub const SODIUM: &str = "Sodium";
pub const UNKNOWN: &str = "unknown";
pub const NOTHING_YET: &str = "The figures appear with the first ingredient.";

pub const NUTRIENTS: &str = "All nutrients";
pub const NUTRIENT_TABLE: &str = "Table of all nutrients";
pub const NUTRIENT: &str = "Nutrient";
pub const PER_SERVING: &str = "per serving";
pub const PER_100_G: &str = "per 100 g";
pub const WHOLE: &str = "whole recipe";
pub const KNOWN_FOR: &str = "known for";
pub const UNIT: &str = "unit";
pub const PLUS_MINUS: &str = "±";
pub const ERRORS_ASSUMED: &str = "errors assumed";
pub const NUTRIENTS_HINT: &str = "Choose a nutrient to see which lines carry it. “Known for” is the share of the \
     weight whose value is known; what is missing is not zero.";

pub const WITHIN: &str = "Recipes in this recipe";
pub const WITHIN_PROBLEM: &str = "not counted yet";
pub const OPEN_RECIPE: &str = "Open the card of that recipe";
pub const MAKES: &str = "Servings, by their size:";

pub const CARRIERS: &str = "What carries";
pub const CARRIERS_NUTRIENT: &str = "Nutrient";
pub const LINE: &str = "Line";
pub const AMOUNT: &str = "Whole recipe";
pub const SHARE: &str = "Share";

/// Opens the slip of a figure.
pub fn open_origin(nutrient: &str) -> String {
    format!("Where {nutrient} comes from")
}

/// A copy of a recipe.
pub fn copy_of(title: &str) -> String {
    format!("{title}, another version")
}

/// A recipe that is not in the book.
pub fn not_in_book(id: &str) -> String {
    format!(
        "The recipe “{id}” is not in the book. It may have been taken out: Undo brings it back."
    )
}

/// What a serving is, in words and weight.
pub fn serving(words: &str, grams: &str) -> String {
    match words.trim() {
        "" => format!("{grams} g of ingredients"),
        words => format!("{words}, {grams} g of ingredients"),
    }
}

/// The change since the card was last kept.
pub fn change(before: &str, now: &str, difference: &str) -> String {
    format!("{before} → {now} ({difference})")
}

/// Share of the weight whose value is known.
pub fn known_for(percent: &str) -> String {
    format!("known for {percent} % of the weight")
}

/// Lines that are not counted.
pub fn uncounted(count: usize) -> String {
    match count {
        0 => String::new(),
        1 => "1 line is not known and not counted".to_owned(),
        _ => format!("{count} lines are not known and not counted"),
    }
}

/// How many lines are read and how many are open, for the list of recipes.
pub fn open_lines(count: usize) -> String {
    match count {
        0 => "nothing".to_owned(),
        1 => "1 line".to_owned(),
        _ => format!("{count} lines"),
    }
}

/// How the lines are read, for those who do not see the readings.
pub fn lines_read(read: usize, open: usize) -> String {
    format!("{read} lines read, {open} to settle")
}

pub const SETTLE: &str = "Settle";

/// Heading of the lines that are not counted.
pub fn settle(count: usize) -> String {
    match count {
        1 => "1 line is not counted yet".to_owned(),
        _ => format!("{count} lines are not counted yet"),
    }
}

/// A line by its number.
pub fn line(number: usize) -> String {
    format!("Line {number}: ")
}

pub const ALLERGENS: &str = "Allergens in the words";
pub const TEMPERATURES: &str = "Temperatures for these foods";

/// An allergen with the lines that point to it.
pub fn allergen(allergen: &RecipeAllergen) -> String {
    let lines: Vec<String> = allergen
        .lines
        .iter()
        .map(|line| (line + 1).to_string())
        .collect();
    let name = allergen.finding.allergen.to_string();
    let lines = lines.join(", ");
    match allergen.finding.presence {
        Presence::Contains => format!("contains {name} (line {lines})"),
        Presence::MayBePresent | Presence::Unknown => {
            format!("may contain {name}, check the package (line {lines})")
        }
    }
}

/// What is said of allergens that nothing points to.
pub fn other_allergens() -> &'static str {
    "all others unknown: check the packages"
}

/// A temperature with its source.
pub fn temperature(step: &SafetyStep) -> String {
    let what = match step.step {
        Step::Cook => "cook",
        Step::Hold => "hold",
        Step::Cool => "cool",
        Step::Reheat => "reheat",
        Step::Date => "keep",
    };
    let duration = match step.duration.as_str() {
        "" => String::new(),
        duration => format!(", {duration}"),
    };
    format!(
        "{what}, {}: {} °F ({} °C){duration} ({}, {})",
        step.what,
        step.fahrenheit.normalize(),
        step.celsius.normalize(),
        step.paragraph,
        step.status,
    )
}

/// Name of the panel that sets a reading right.
pub fn correction(line: &str) -> String {
    format!("Set the reading right: {line}")
}

pub const FOOD_MEANT: &str = "The food that is meant";
pub const CHOSEN: &str = "Chosen by hand.";
pub const FROM_WORDS: &str = "Take it from the words again";
pub const WEIGHT: &str = "Weight of the whole line, edible part";
pub const GRAMS: &str = "g";
pub const A_RECIPE: &str = "recipe of this book";

/// How the line was weighed.
pub fn weighed(steps: &str) -> String {
    format!("Weighed: {steps}")
}

/// How many measures the food has.
pub fn measures(count: usize) -> String {
    match count {
        1 => "1 measure of this food in the tables".to_owned(),
        _ => format!("{count} measures of this food in the tables"),
    }
}

pub const TREAT: &str = "Cleaned, cooked, drained …";
pub const BASIS: &str = "The stated weight is";
pub const BASIS_BY_WORDS: &str = "what the words say";
pub const EDIBLE: &str = "the edible portion";
pub const COOKED: &str = "Counted as";
pub const NOT_COOKED: &str = "the food as written";
pub const COOKED_OTHER: &str = "another entry, weighed after cooking";
pub const RETAINED: &str = "What stays through cooking";
pub const RETAINED_HINT: &str = "By the raw and the cooked entry together with the yield. Shares far from 100 % of \
     protein, minerals or carbohydrate tell that the entries or the yield do not fit this kitchen.";
pub const COOKED_ENTRY: &str = "The entry of the cooked food";
pub const COOKED_WEIGHT: &str = "Weight after cooking";
pub const COOKED_WEIGHT_HINT: &str =
    "Measured on the scale it takes the place of every yield from a table.";
pub const LOSSES: &str = "Only a part ends up in the dish:";

/// A weight that still has its refuse.
pub fn as_purchased(refuse_percent: Option<u8>) -> String {
    match refuse_percent {
        Some(percent) => format!("as purchased ({percent} % is refuse)"),
        None => "as purchased".to_owned(),
    }
}

/// A cooked entry and its yield.
pub fn cooked_as(food: &str, yields: &str) -> String {
    format!("{food} ({yields})")
}

/// Grams cooked from a gram raw, between which it may lie, and where that
/// comes from.
pub fn yields(factor: &str, low: &str, high: &str, route: &str) -> String {
    format!("× {factor}, {low} to {high}, {route}")
}

/// A treatment with its source.
pub fn treatment(treatment: &Treatment) -> String {
    let percent = |share| crate::format::percent(share);
    format!(
        "{}: {} % stays, {} to {} % ({}, {})",
        treatment.words,
        percent(treatment.keeps),
        percent(treatment.low),
        percent(treatment.high),
        treatment.source,
        treatment.status
    )
}
