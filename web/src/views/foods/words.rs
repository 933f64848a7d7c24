//! Words of the views of foods.

use crate::format;
use crate::language::{Say, of_table, say};
use crate::named;
use engine::foods::{Food, FoodId, Nutrient, ValueSource};
use engine::own_foods::ImportError;

pub const TITLE: Say = Say("foods-title");
pub const LOOK_UP: Say = Say("foods-look-up");
pub const LOOK_UP_LEAD: Say = Say("foods-look-up-lead");
pub const FIND: Say = Say("foods-find");
pub const FIND_HINT: Say = Say("foods-find-hint");
pub const YOUR_OWN: Say = Say("foods-your-own");

pub const OWN: Say = Say("foods-own");
pub const OWN_LEAD: Say = Say("foods-own-lead");
pub const NEW_LABEL: Say = Say("foods-new-label");
pub const NEW_SHEET: Say = Say("foods-new-sheet");
pub const NONE: Say = Say("foods-none");
pub const COLUMN_FOOD: Say = Say("foods-column-food");
pub const COLUMN_KIND: Say = Say("foods-column-kind");
pub const COLUMN_STATE: Say = Say("foods-column-state");
pub const FROM_LABEL: Say = Say("foods-from-label");
pub const FROM_SHEET: Say = Say("foods-from-sheet");
pub const REFERENCE: Say = Say("foods-reference");
pub const IN_USE: Say = Say("foods-in-use");

/// Why a food is not in use.
pub fn problem(error: &ImportError) -> String {
    say(
        "foods-not-in-use-short",
        &[("problem", figure_problem(error).into())],
    )
}

pub const ALL_FOODS: Say = Say("foods-all-foods");
pub const DESCRIPTION: Say = Say("foods-description");
pub const DESCRIPTION_HINT: Say = Say("foods-description-hint");
pub const REFERENCE_FIELD: Say = Say("foods-reference-field");
pub const REFERENCE_HINT: Say = Say("foods-reference-hint");
pub const FOOD_IN_USE: Say = Say("foods-food-in-use");
pub const LABEL: Say = Say("foods-label");
pub const LABEL_HINT: Say = Say("foods-label-hint");
pub const SERVING: Say = Say("foods-serving");
pub const GRAMS: &str = "g";
pub const MORE_ON_LABEL: Say = Say("foods-more-on-label");
pub const SHEET: Say = Say("foods-sheet");
pub const SHEET_HINT: Say = Say("foods-sheet-hint");
pub const PER: Say = Say("foods-per");
pub const MORE_ON_SHEET: Say = Say("foods-more-on-sheet");
pub const INGREDIENTS: Say = Say("foods-ingredients");
pub const INGREDIENTS_HINT: Say = Say("foods-ingredients-hint");
pub const MEASURES: Say = Say("foods-measures");
pub const MEASURES_HINT: Say = Say("foods-measures-hint");
pub const ADD_MEASURE: Say = Say("foods-add-measure");
pub const AMOUNT: Say = Say("foods-amount");
pub const MEASURE_WORDS: Say = Say("foods-measure-words");
pub const MEASURE_EXAMPLE: Say = Say("foods-measure-example");
pub const WEIGHT: Say = Say("foods-weight");
pub const REMOVE_MEASURE: Say = Say("foods-remove-measure");
pub const REMOVE: Say = Say("foods-remove");

/// A measure by its number.
pub fn nth_measure(number: usize) -> String {
    say("foods-nth-measure", &[("number", number.into())])
}

/// What a field holds, and of what.
pub fn of(what: Say, name: &str) -> String {
    say(
        "foods-of",
        &[("what", what.to_string().into()), ("name", name.into())],
    )
}

/// Why the food cannot be used as it stands.
pub fn not_in_use(error: &ImportError) -> String {
    say(
        "foods-not-in-use",
        &[("problem", named::import(error).into())],
    )
}

/// What is wrong with one figure.
pub fn figure_problem(error: &ImportError) -> String {
    format!("{}: {}", of_table(&error.problem), of_table(&error.remedy))
}

/// A food that is not there.
pub fn no_food(id: FoodId) -> String {
    match id {
        FoodId::Own(number) => say(
            "foods-no-own-food",
            &[("number", number.to_string().into())],
        ),
        FoodId::Sr28(_) => say("foods-no-food", &[("id", id.to_string().into())]),
    }
}

pub const NUMBER: Say = Say("foods-number");
pub const GROUP: Say = Say("foods-group");
pub const OTHER_NAMES: Say = Say("foods-other-names");
pub const MAKER: Say = Say("foods-maker");
pub const REFUSE: Say = Say("foods-refuse");
pub const NO_MEASURES: Say = Say("foods-no-measures");

/// The inedible part of a food as purchased.
pub fn refuse(food: &Food) -> String {
    let (Some(percent), what) = (food.refuse_percent, food.refuse_description.as_str()) else {
        return String::new();
    };
    let share = ("percent", percent.to_string().into());
    match (percent, what) {
        (0, _) => String::new(),
        (_, "") => say("foods-refuse-share", &[share]),
        (_, what) => say("foods-refuse-share-of", &[share, ("what", what.into())]),
    }
}

pub const VALUES: Say = Say("foods-values");
pub const VALUES_HINT: Say = Say("foods-values-hint");
pub const OWN_VALUES_HINT: Say = Say("foods-own-values-hint");
pub const NUTRIENT: Say = Say("foods-nutrient");
pub const PER_100_G: Say = Say("foods-per-100-g");
pub const UNIT: Say = Say("foods-unit");
pub const INTERVAL: Say = Say("foods-interval");
pub const PROVENANCE: Say = Say("foods-provenance");
pub const NO_VALUE: Say = Say("foods-no-value");
pub const AS_STATED: Say = Say("foods-as-stated");

/// Nutrients of which nothing is known.
pub fn no_value_for(nutrients: &[&Nutrient]) -> String {
    let names: Vec<String> = nutrients.iter().map(|one| named::nutrient(one)).collect();
    say("foods-no-value-for", &[("names", names.join("; ").into())])
}

/// The interval for which a figure stands.
pub fn between(low: &str, high: &str) -> String {
    say(
        "foods-between",
        &[("low", low.into()), ("high", high.into())],
    )
}

/// What the dataset says of a value.
pub fn provenance(source: &ValueSource) -> String {
    let analyses = (source.data_points > 0)
        .then(|| say("foods-analyses", &[("count", source.data_points.into())]));
    let error = source.standard_error.map(|error| {
        let error = format::stated(error);
        say("foods-standard-error", &[("error", error.into())])
    });
    let parts = [
        analyses,
        error,
        source.source.as_deref().map(of_table),
        source.derivation.clone(),
    ];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    parts.join("; ")
}

pub const IMPORT: Say = Say("foods-import");
pub const IMPORT_LEAD: Say = Say("foods-import-lead");
pub const OWN_CSV: Say = Say("foods-own-csv");
pub const OWN_CSV_HINT: Say = Say("foods-own-csv-hint");
pub const SAVE_EXAMPLE: Say = Say("foods-save-example");
pub const EXAMPLE_NAME: &str = "own-foods-example.csv";
pub const CSV_EXAMPLE: &str = "description,grams,ingredients,measure,measure grams,ENERC_KCAL,FAT,FASAT,CHOCDF,SUGAR,PROCNT,NA\n\
     \"Tortilla, whole wheat, 8 inch, Cedar Mill\",100,\"whole wheat flour, water, canola oil, salt\",tortilla,45,\
     290,7,1.2,48,2.5,8.5,480\n\
     \"Yogurt, vanilla, lowfat, Millbrook Dairy\",100,\"cultured milk, sugar, vanilla\",cup,245,85,1.2,0.8,13.5,13,5,60\n";
pub const FDC_JSON: Say = Say("foods-fdc-json");
pub const FDC_JSON_HINT: Say = Say("foods-fdc-json-hint");
pub const FDC_CSV: Say = Say("foods-fdc-csv");
pub const FDC_CSV_HINT: Say = Say("foods-fdc-csv-hint");
pub const THE_FILE: Say = Say("foods-the-file");
pub const THE_FILES: Say = Say("foods-the-files");
pub const NO_FOODS: Say = Say("foods-no-foods");
pub const CHOOSE_ANOTHER: Say = Say("foods-choose-another");
pub const CHOOSE_AGAIN: Say = Say("foods-choose-again");
pub const CHOOSE_THREE: Say = Say("foods-choose-three");

/// A table that was not chosen.
pub fn table_missing(name: &str) -> String {
    say("foods-table-missing", &[("name", name.into())])
}

/// While a file is read.
pub fn reading(name: &str) -> String {
    say("foods-reading", &[("name", name.into())])
}

/// A file that cannot be taken in.
pub fn not_taken(name: &str, error: &ImportError) -> String {
    say(
        "foods-not-taken",
        &[
            ("name", name.into()),
            ("problem", named::import(error).into()),
        ],
    )
}

/// Foods have been taken in.
pub fn taken(count: usize) -> String {
    say("foods-taken", &[("count", count.into())])
}

/// How many foods a file holds.
pub fn found(count: usize) -> String {
    say("foods-found", &[("count", count.into())])
}

pub const FILTER: Say = Say("foods-filter");

/// How many foods fit, and how many of them are shown.
pub fn fitting(count: usize, shown: usize) -> String {
    let key = match count > shown {
        true => "foods-fit-first",
        false => "foods-fit",
    };
    say(key, &[("count", count.into()), ("shown", shown.into())])
}

/// Takes the chosen foods in.
pub fn take(count: usize) -> String {
    say("foods-take", &[("count", count.into())])
}

pub const PUT_AWAY: Say = Say("foods-put-away");

/// In which language the dataset is.
pub const IN_ENGLISH: Say = Say("foods-in-english");
