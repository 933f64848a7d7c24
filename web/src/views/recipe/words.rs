//! Words of the views of recipes.

use crate::format;
use crate::language::{Say, of_table, say};
use crate::named;
use crate::words::standing;
use engine::allergens::Presence;
use engine::kitchen::{SafetyStep, Step};
use engine::reference::RecipeAllergen;
use engine::yields::Treatment;

pub const TITLE: Say = Say("recipe-title");
pub const LEAD: Say = Say("recipe-lead");
pub const FIND: Say = Say("recipe-find");
pub const NEW: Say = Say("recipe-new");
pub const NONE: Say = Say("recipe-none");
pub const NONE_FOUND: Say = Say("recipe-none-found");
pub const COLUMN_RECIPE: Say = Say("recipe-column-recipe");
pub const COLUMN_SERVINGS: Say = Say("recipe-column-servings");
pub const COLUMN_OPEN: Say = Say("recipe-column-open");
pub const NEW_TITLE: Say = Say("recipe-new-title");

pub const ALL_RECIPES: Say = Say("recipe-all-recipes");
pub const RECIPE_TITLE: Say = Say("recipe-recipe-title");
pub const SERVINGS: Say = Say("recipe-servings");
pub const SERVING_WORDS: Say = Say("recipe-serving-words");
pub const SERVING_HINT: Say = Say("recipe-serving-hint");
pub const INGREDIENTS: Say = Say("recipe-ingredients");
pub const INGREDIENTS_HINT: Say = Say("recipe-ingredients-hint");
pub const EXAMPLE: Say = Say("recipe-example");
pub const READINGS: Say = Say("recipe-readings");
pub const METHOD: Say = Say("recipe-method");
pub const COPY: Say = Say("recipe-copy");
pub const REMOVE: Say = Say("recipe-remove");
pub const PRINT: Say = Say("recipe-print");
pub const TO_FACTS: Say = Say("recipe-to-facts");
pub const KEEP: Say = Say("recipe-keep");
pub const GO_BACK: Say = Say("recipe-go-back");
pub const KEPT_HINT: Say = Say("recipe-kept-hint");
pub const NOT_KEPT_HINT: Say = Say("recipe-not-kept-hint");

pub const FIGURES: Say = Say("recipe-figures");
pub const CALORIES: Say = Say("recipe-calories");
pub const SATURATED_FAT: Say = Say("recipe-saturated-fat");
pub const SODIUM: Say = Say("recipe-sodium");
pub use crate::words::UNKNOWN;
pub const NOTHING_YET: Say = Say("recipe-nothing-yet");

pub const NUTRIENTS: Say = Say("recipe-nutrients");
pub const NUTRIENT_TABLE: Say = Say("recipe-nutrient-table");
pub const NUTRIENT: Say = Say("recipe-nutrient");
pub const PER_SERVING: Say = Say("recipe-per-serving");
pub const PER_100_G: Say = Say("recipe-per-100-g");
pub const WHOLE: Say = Say("recipe-whole");
pub const KNOWN_FOR: Say = Say("recipe-known-for");
pub const UNIT: Say = Say("recipe-unit");
pub const PLUS_MINUS: &str = "±";
pub const ERRORS_ASSUMED: Say = Say("recipe-errors-assumed");
pub const NUTRIENTS_HINT: Say = Say("recipe-nutrients-hint");

pub const WITHIN: Say = Say("recipe-within");
pub const WITHIN_PROBLEM: Say = Say("recipe-within-problem");
pub const OPEN_RECIPE: Say = Say("recipe-open-recipe");
pub const MAKES: Say = Say("recipe-makes");

pub const CARRIERS: Say = Say("recipe-carriers");
pub const CARRIERS_NUTRIENT: Say = Say("recipe-carriers-nutrient");
pub const LINE: Say = Say("recipe-line");
pub const AMOUNT: Say = Say("recipe-amount");
pub const SHARE: Say = Say("recipe-share");

/// Opens the slip of a figure.
pub fn open_origin(nutrient: &str) -> String {
    say("recipe-open-origin", &[("nutrient", nutrient.into())])
}

/// A copy of a recipe.
pub fn copy_of(title: &str) -> String {
    say("recipe-copy-of", &[("title", title.into())])
}

/// A recipe that is not in the book.
pub fn not_in_book(id: &str) -> String {
    say("recipe-not-in-book", &[("id", id.into())])
}

/// What a serving is, in words and weight.
pub fn serving(words: &str, grams: &str, is_measured: bool) -> String {
    let key = match is_measured {
        true => "recipe-serving-finished",
        false => "recipe-serving-weight",
    };
    let weight = say(key, &[("grams", grams.into())]);
    match words.trim() {
        "" => weight,
        words => say(
            "recipe-serving-of",
            &[("words", words.into()), ("weight", weight.as_str().into())],
        ),
    }
}

/// Servings and the weight of the batch.
pub fn batch_yield(servings: &str, serving: &str, weight: &str, is_measured: bool) -> String {
    let serving = match serving.trim() {
        "" => String::new(),
        words => format!(" ({words})"),
    };
    let key = match is_measured {
        true => "recipe-batch-measured",
        false => "recipe-batch-not-measured",
    };
    say(
        key,
        &[
            ("servings", servings.into()),
            ("serving", serving.into()),
            ("weight", weight.into()),
        ],
    )
}

/// The change since the card was last kept.
pub fn change(before: &str, now: &str, difference: &str) -> String {
    say(
        "recipe-change",
        &[
            ("before", before.into()),
            ("now", now.into()),
            ("difference", difference.into()),
        ],
    )
}

/// Share of the weight whose value is known.
pub fn known_for(percent: &str) -> String {
    say("recipe-known-for-share", &[("percent", percent.into())])
}

/// Lines that are not counted.
pub fn uncounted(count: usize) -> String {
    say("recipe-uncounted", &[("count", count.into())])
}

/// How many lines are read and how many are open, for the list of recipes.
pub fn open_lines(count: usize) -> String {
    say("recipe-open-lines", &[("count", count.into())])
}

/// How the lines are read, for those who do not see the readings.
pub fn lines_read(read: usize, open: usize) -> String {
    say(
        "recipe-lines-read",
        &[("read", read.into()), ("open", open.into())],
    )
}

pub const SETTLE: Say = Say("recipe-settle");

/// Heading of the lines that are not counted.
pub fn settle(count: usize) -> String {
    say("recipe-not-counted", &[("count", count.into())])
}

/// A line by its number.
pub fn line(number: usize) -> String {
    say("recipe-line-number", &[("number", number.into())])
}

pub const ALLERGENS: Say = Say("recipe-allergens");
pub const TEMPERATURES: Say = Say("recipe-temperatures");

/// An allergen with the lines that point to it.
pub fn allergen(allergen: &RecipeAllergen) -> String {
    let lines: Vec<String> = allergen
        .lines
        .iter()
        .map(|line| (line + 1).to_string())
        .collect();
    let key = match allergen.finding.presence {
        Presence::Contains => "recipe-contains",
        Presence::MayBePresent | Presence::Unknown => "recipe-may-contain",
    };
    let name = named::allergen(allergen.finding.allergen).to_string();
    let lines = lines.join(", ");
    say(key, &[("name", name.into()), ("lines", lines.into())])
}

/// What is said of allergens that nothing points to.
pub const OTHER_ALLERGENS: Say = Say("recipe-other-allergens");

/// A temperature with its source.
pub fn temperature(step: &SafetyStep) -> String {
    let what = match step.step {
        Step::Cook => Say("recipe-step-cook"),
        Step::Hold => Say("recipe-step-hold"),
        Step::Cool => Say("recipe-step-cool"),
        Step::Reheat => Say("recipe-step-reheat"),
        Step::Date => Say("recipe-step-keep"),
    };
    let mut arguments = vec![("step", what.to_string().into())];
    arguments.extend(named::safety_figures(step));
    say("recipe-temperature", &arguments)
}

/// Name of the panel that sets a reading right.
pub fn correction(line: &str) -> String {
    say("recipe-correction", &[("line", line.into())])
}

pub const FOOD_MEANT: Say = Say("recipe-food-meant");
pub const CHOSEN: Say = Say("recipe-chosen");
pub const FROM_WORDS: Say = Say("recipe-from-words");
pub const WEIGHT: Say = Say("recipe-weight");
pub const GRAMS: &str = "g";
pub const A_RECIPE: Say = Say("recipe-a-recipe");

/// How the line was weighed.
pub fn weighed(steps: &str) -> String {
    say("recipe-weighed", &[("steps", steps.into())])
}

/// How many measures the food has.
pub fn measures(count: usize) -> String {
    say("recipe-measures", &[("count", count.into())])
}

pub const TREAT: Say = Say("recipe-treat");
pub const BASIS: Say = Say("recipe-basis");
pub const BASIS_BY_WORDS: Say = Say("recipe-basis-by-words");
pub const EDIBLE: Say = Say("recipe-edible");
pub const COOKED: Say = Say("recipe-cooked");
pub const NOT_COOKED: Say = Say("recipe-not-cooked");
pub const COOKED_OTHER: Say = Say("recipe-cooked-other");
pub const RETAINED: Say = Say("recipe-retained");
pub const RETAINED_HINT: Say = Say("recipe-retained-hint");
pub const COOKED_ENTRY: Say = Say("recipe-cooked-entry");
pub const COOKED_WEIGHT: Say = Say("recipe-cooked-weight");
pub const COOKED_WEIGHT_HINT: Say = Say("recipe-cooked-weight-hint");
pub const LOSSES: Say = Say("recipe-losses");

/// A weight that still has its refuse.
pub fn as_purchased(refuse_percent: Option<u8>) -> String {
    match refuse_percent {
        Some(percent) => {
            let percent = percent.to_string();
            say("recipe-as-purchased-refuse", &[("percent", percent.into())])
        }
        None => Say("recipe-as-purchased").to_string(),
    }
}

/// A cooked entry and its yield.
pub fn cooked_as(food: &str, yields: &str) -> String {
    say(
        "recipe-cooked-as",
        &[("food", food.into()), ("yields", yields.into())],
    )
}

/// Grams cooked from a gram raw, between which it may lie, and where that
/// comes from.
pub fn yields(factor: &str, low: &str, high: &str, route: &str) -> String {
    say(
        "recipe-yields",
        &[
            ("factor", factor.into()),
            ("low", low.into()),
            ("high", high.into()),
            ("route", route.into()),
        ],
    )
}

/// A treatment with its source.
pub fn treatment(treatment: &Treatment) -> String {
    let percent = |share| format::percent(share).into();
    say(
        "recipe-treatment",
        &[
            ("words", of_table(&treatment.words).into()),
            ("keeps", percent(treatment.keeps)),
            ("low", percent(treatment.low)),
            ("high", percent(treatment.high)),
            ("source", treatment.source.as_str().into()),
            ("status", standing::of(&treatment.status).into()),
        ],
    )
}
