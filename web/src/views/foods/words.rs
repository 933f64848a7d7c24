//! Words of the views of foods.

use engine::foods::{Food, FoodId, Nutrient, ValueSource};
use engine::own_foods::ImportError;

pub const TITLE: &str = "Foods";
pub const LOOK_UP: &str = "Look up a food";
pub const LOOK_UP_LEAD: &str = "The dataset’s foods and your own: household measures, values per 100 g, and where they come from.";
pub const FIND: &str = "Name of the food";
pub const FIND_HINT: &str = "oats, milk lowfat, ground beef …";
pub const YOUR_OWN: &str = "of your own";

pub const OWN: &str = "Foods of your own";
pub const OWN_LEAD: &str = "Products that your office buys, from their package label or the maker’s specification. Recipe lines \
     find them by their description, before the dataset’s foods.";
pub const NEW_LABEL: &str = "New food from a label";
pub const NEW_SHEET: &str = "New food from a specification";
pub const NONE: &str = "There is no food of your own in the book yet.";
pub const COLUMN_FOOD: &str = "Food";
pub const COLUMN_KIND: &str = "Figures from";
pub const COLUMN_STATE: &str = "State";
pub const FROM_LABEL: &str = "a label";
pub const FROM_SHEET: &str = "a specification or table";
pub const REFERENCE: &str = "Source";
pub const IN_USE: &str = "in use";

/// Why a food is not in use.
pub fn problem(error: &ImportError) -> String {
    format!("not in use: {}: {}", error.problem, error.remedy)
}

pub const ALL_FOODS: &str = "← All foods";
pub const DESCRIPTION: &str = "Description, as recipes name it";
pub const DESCRIPTION_HINT: &str = "as in: Tortilla, whole wheat, 8 inch, Cedar Mill";
pub const REFERENCE_FIELD: &str = "Which package or sheet, and when it was read";
pub const REFERENCE_HINT: &str = "as in: label of case 4410, read 2026-08-14";
pub const FOOD_IN_USE: &str = "In use: recipes find this food.";
pub const LABEL: &str = "Nutrition Facts of the package";
pub const LABEL_HINT: &str = "Copy each figure as it is printed, in the label’s order: digits, or words such as “less than 1”. \
     Leave a figure empty where the label has none: empty is unknown, not zero. Write 0 where it prints 0.";
pub const SERVING: &str = "Weight of one serving";
pub const GRAMS: &str = "g";
pub const MORE_ON_LABEL: &str = "Further nutrients that a label may list";
pub const SHEET: &str = "Values of the specification";
pub const SHEET_HINT: &str = "Unrounded values as the sheet states them, in the units given here. Leave a value empty where the \
     sheet is silent: empty is unknown, not zero.";
pub const PER: &str = "Values are for";
pub const MORE_ON_SHEET: &str = "All further nutrients";
pub const INGREDIENTS: &str = "Ingredient statement of the package";
pub const INGREDIENTS_HINT: &str = "Allergens are looked for in these words. Words cannot show what a product has touched: read the \
     current label, each time.";
pub const MEASURES: &str = "Household measures";
pub const MEASURES_HINT: &str = "So that lines such as “12 tortillas” or “2 cups” can be weighed.";
pub const ADD_MEASURE: &str = "Add a measure";
pub const AMOUNT: &str = "Amount";
pub const MEASURE_WORDS: &str = "Measure";
pub const MEASURE_EXAMPLE: &str = "tortilla";
pub const WEIGHT: &str = "Weight";
pub const REMOVE_MEASURE: &str = "Remove";
pub const REMOVE: &str = "Take the food out of the book";

/// A measure by its number.
pub fn nth_measure(number: usize) -> String {
    format!("measure {number}")
}

/// What a field holds, and of what.
pub fn of(what: &str, name: &str) -> String {
    format!("{what} of {name}")
}

/// Why the food cannot be used as it stands.
pub fn not_in_use(error: &ImportError) -> String {
    format!("Not in use yet. {error}.")
}

/// What is wrong with one figure.
pub fn figure_problem(error: &ImportError) -> String {
    format!("{}: {}", error.problem, error.remedy)
}

/// A food that is not there.
pub fn no_food(id: FoodId) -> String {
    match id {
        FoodId::Own(number) => format!(
            "The book has no food of your own with the number {number}. It may have been taken out: Undo brings it back."
        ),
        FoodId::Sr28(_) => format!("The dataset has no food {id}."),
    }
}

pub const NUMBER: &str = "Number";
pub const GROUP: &str = "Food group";
pub const OTHER_NAMES: &str = "Other names";
pub const MAKER: &str = "Maker";
pub const REFUSE: &str = "Refuse";
pub const NO_MEASURES: &str = "The dataset has no household measure for this food.";

/// The inedible part of a food as purchased.
pub fn refuse(food: &Food) -> String {
    match (food.refuse_percent, food.refuse_description.as_str()) {
        (None | Some(0), _) => String::new(),
        (Some(percent), "") => format!("{percent} % of the weight as purchased"),
        (Some(percent), what) => format!("{percent} % of the weight as purchased ({what})"),
    }
}

pub const VALUES: &str = "Values per 100 g";
pub const VALUES_HINT: &str =
    "Per 100 g of the edible part, with the dataset’s own digits. No value is not zero.";
pub const OWN_VALUES_HINT: &str = "Worked out from the figures above. A label’s figure is rounded by law and stands for every amount \
     that prints as it: the interval says from where to where.";
pub const NUTRIENT: &str = "Nutrient";
pub const PER_100_G: &str = "per 100 g";
pub const UNIT: &str = "unit";
pub const INTERVAL: &str = "may be";
pub const PROVENANCE: &str = "how it was found";
pub const NO_VALUE: &str = "no value";
pub const AS_STATED: &str = "as stated";

/// Nutrients of which nothing is known.
pub fn no_value_for(nutrients: &[&Nutrient]) -> String {
    let names: Vec<&str> = nutrients.iter().map(|one| one.name.as_str()).collect();
    format!("No value, which is not zero: {}.", names.join("; "))
}

/// The interval for which a figure stands.
pub fn between(low: &str, high: &str) -> String {
    format!("{low} to {high}")
}

/// What the dataset says of a value.
pub fn provenance(source: &ValueSource) -> String {
    let analyses = match source.data_points {
        0 => None,
        1 => Some("1 analysis".to_owned()),
        count => Some(format!("{count} analyses")),
    };
    let error = source
        .standard_error
        .map(|error| format!("standard error {}", error.normalize()));
    let parts = [
        analyses,
        error,
        source.source.clone(),
        source.derivation.clone(),
    ];
    let parts: Vec<String> = parts.into_iter().flatten().collect();
    parts.join("; ")
}

pub const IMPORT: &str = "Take in foods from a file";
pub const IMPORT_LEAD: &str = "The file is read in this browser and sent nowhere. If anything in it cannot be read, nothing is taken \
     in, and the place is named.";
pub const OWN_CSV: &str = "Choose a CSV file …";
pub const OWN_CSV_HINT: &str = "One food a line: description, grams (the weight that the values are for), if you like ingredients, \
     measure and measure grams, and nutrients by their INFOODS tagname or SR28 number. An empty cell is a missing \
     value, not zero.";
pub const SAVE_EXAMPLE: &str = "Save an example file";
pub const EXAMPLE_NAME: &str = "own-foods-example.csv";
pub const CSV_EXAMPLE: &str = "description,grams,ingredients,measure,measure grams,ENERC_KCAL,FAT,FASAT,CHOCDF,SUGAR,PROCNT,NA\n\
     \"Tortilla, whole wheat, 8 inch, Cedar Mill\",100,\"whole wheat flour, water, canola oil, salt\",tortilla,45,\
     290,7,1.2,48,2.5,8.5,480\n\
     \"Yogurt, vanilla, lowfat, Millbrook Dairy\",100,\"cultured milk, sugar, vanilla\",cup,245,85,1.2,0.8,13.5,13,5,60\n";
pub const FDC_JSON: &str = "Choose a FoodData Central JSON file …";
pub const FDC_JSON_HINT: &str =
    "One food, a list of foods, or a whole download; from a long one you choose what to take.";
pub const FDC_CSV: &str = "Choose FoodData Central’s CSV tables …";
pub const FDC_CSV_HINT: &str =
    "Choose food.csv, food_nutrient.csv and nutrient.csv of one download together.";
pub const THE_FILE: &str = "the file";
pub const THE_FILES: &str = "the files";
pub const NO_FOODS: &str = "there is no food in it";
pub const CHOOSE_ANOTHER: &str = "choose another file";
pub const CHOOSE_AGAIN: &str = "choose the file again";
pub const CHOOSE_THREE: &str = "choose food.csv, food_nutrient.csv and nutrient.csv together";

/// A table that was not chosen.
pub fn table_missing(name: &str) -> String {
    format!("{name} is not among them")
}

/// While a file is read.
pub fn reading(name: &str) -> String {
    format!("Reading {name} …")
}

/// A file that cannot be taken in.
pub fn not_taken(name: &str, error: &ImportError) -> String {
    format!("Nothing was taken in from {name}. {error}.")
}

/// Foods have been taken in.
pub fn taken(count: usize) -> String {
    match count {
        1 => "1 food was taken in.".to_owned(),
        _ => format!("{count} foods were taken in."),
    }
}

/// How many foods a file holds.
pub fn found(count: usize) -> String {
    format!("{count} foods are in the file. Which of them?")
}

pub const FILTER: &str = "Only those with the words";

/// How many foods fit, and how many of them are shown.
pub fn fitting(count: usize, shown: usize) -> String {
    if count > shown {
        format!("{count} fit; the first {shown} are shown")
    } else {
        format!("{count} fit")
    }
}

/// Takes the chosen foods in.
pub fn take(count: usize) -> String {
    match count {
        0 => "Take in the chosen foods".to_owned(),
        1 => "Take in 1 food".to_owned(),
        _ => format!("Take in {count} foods"),
    }
}

pub const PUT_AWAY: &str = "Put the file away";
