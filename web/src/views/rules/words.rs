//! Words of the view of rules.

use crate::state::OwnTable;
use engine::tables::TableError;
use engine::week::Date;

pub const TITLE: &str = "Rules";
pub const LEAD: &str = "What a week of menus is compared with, where each figure stands and how sure it is. The first day \
     of a week chooses the rules in force on it; for what a single day offers, the day itself does. Where your State \
     agency says otherwise, it is right.";
pub const IN_FORCE: &str = "In force";
pub const DATE: &str = "On";
pub const SERVICE: &str = "Meal and grades or ages";
pub const AVERAGE: &str = "The average meal of a week";
pub const EACH_DAY: &str = "What each day offers";
pub const EACH_WEEK: &str =
    "What a week of five days offers; shorter and longer weeks in proportion";
pub const OF_WHICH_SOME: &str = "Components of which each meal needs some";
pub const GUIDANCE: &str = "Guidance: a help for planning, nothing follows from missing it";
pub const SHARES: &str = "Shares, options and products";
pub const LATER: &str = "Not in force yet";
pub const ASKED: &str = "What is asked";
pub const LIMIT: &str = "Limit";
pub const WHEN: &str = "In force";
pub const WHERE: &str = "Where it stands";
pub const HOW_SURE: &str = "How sure";

/// What is asked of one component.
pub fn of_component(component: &str, asked: &str) -> String {
    format!("{component}: {asked}")
}

/// From when to when a row is in force.
pub fn days_in_force(from: Date, until: Option<Date>) -> String {
    match until {
        None => format!("from {from}"),
        Some(until) => format!("{from} to {until}"),
    }
}

/// The same for a row that depends on a switch.
pub fn while_switch(days: &str, switch: &str, on: bool) -> String {
    let (title, _) = self::switch(switch);
    let state = if on { "on" } else { "off" };
    format!("{days}, while “{title}” is {state}")
}

pub const SWITCHES: &str = "How your office reads the rules";
pub const SWITCHES_LEAD: &str = "Some rules are new or can be read in more than one way. Ask your State agency, and set \
     these as it answers; weeks are compared anew at once. The choice is kept in the book.";
pub const ON: &str = "on";
pub const OFF: &str = "off";

/// A switch's name on the page and what it does.
pub fn switch(name: &str) -> (&str, &'static str) {
    match name {
        "whole milk act" => (
            "Follow the Whole Milk for Healthy Kids Act of 2025 at lunch",
            "From 14 January 2026. On: lunch may offer whole and reduced-fat milk, and the fat of fluid milk is left \
             out of the saturated fat of the average lunch. Off: milk at lunch is fat-free or low-fat, and all \
             saturated fat counts. Breakfast, snack and supper are the same either way.",
        ),
        "subgroups unchanged in short weeks" => (
            "Vegetable subgroups keep their amounts in short weeks",
            "For weeks of fewer than five days. On: each subgroup keeps its amount for five days, and the additional \
             vegetables take the whole cut. Off: the subgroups are cut in proportion like everything else. The figures \
             behind this are from memory and not sure: ask your State agency for its chart of short weeks.",
        ),
        other => (
            other,
            "A rule of the tables depends on this; the rows say which.",
        ),
    }
}

pub const OWN: &str = "Limits of your own";
pub const OWN_LEAD: [&str; 2] = [
    "A wellness policy or a State may ask for more than the federal pattern. Limits entered here stand beside the \
     federal ones and never replace them: a week is compared with both, and each finding names its source.",
    "Each table is text in the form of a spreadsheet saved as CSV: a header, then one limit a line. What is typed is \
     kept in the book as it is; a table with a mistake in it is not in use until the mistake is mended.",
];
pub const START_WITH_EXAMPLE: &str = "Start with the header and an example";
pub const NO_OWN: &str = "Nothing is entered here.";
pub const TO_LINE: &str = "Show the line";
pub const COLUMNS: &str = "What the columns hold";
pub const COLUMNS_LEAD: &str =
    "A cell that holds a comma stands in quotation marks. A cell may be empty where it says so.";

/// A table's name in the document.
pub fn key(table: OwnTable) -> &'static str {
    match table {
        OwnTable::DietarySpecifications => "dietary",
        OwnTable::MealPatterns => "patterns",
        OwnTable::WeekRules => "week-rules",
    }
}

/// What a table is for.
pub fn own_lead(table: OwnTable) -> &'static str {
    match table {
        OwnTable::DietarySpecifications => {
            "Nutrients of the average meal of a week: calories, sodium, a share of calories."
        }
        OwnTable::MealPatterns => {
            "How much of a component, or of a vegetable subgroup, a day or a week has to offer."
        }
        OwnTable::WeekRules => {
            "Shares of what is offered, numbers of options, kinds of milk, added sugars of products."
        }
    }
}

/// A line that shows how a table is filled.
fn example(table: OwnTable) -> &'static str {
    match table {
        OwnTable::DietarySpecifications => {
            "lunch,K-5,307,per meal,,at most,1000,mg,,2026-08-01,,,\"District wellness policy, section 4\",\
             board minutes,own,sodium by our own policy"
        }
        OwnTable::MealPatterns => {
            "lunch,K-5,fruits,day,at least,0.75,cup,required,smallest,,2026-08-01,,,\
             \"District wellness policy, section 2\",board minutes,own,fruits each day by our own policy"
        }
        OwnTable::WeekRules => {
            "own grain desserts,lunch,,week,largest amount,grains,grain dessert,at most,0,oz eq,,,2026-08-01,,,\
             \"District wellness policy, section 3\",board minutes,own,no grain-based desserts by our own policy"
        }
    }
}

/// The header with an example line.
pub fn example_text(table: OwnTable) -> String {
    format!("{}\n{}\n", table.header(), example(table))
}

/// How many lines are in use.
pub fn in_use(rows: usize) -> String {
    match rows {
        0 => "Only the header is there: nothing is in use yet.".to_owned(),
        1 => "In use: 1 limit.".to_owned(),
        _ => format!("In use: {rows} limits."),
    }
}

/// Why a table is not in use.
pub fn not_in_use(problem: &TableError) -> String {
    let line = match problem.line {
        0 => String::new(),
        line => format!("line {line}: "),
    };
    format!("Not in use. {line}{}.", problem.problem)
}

/// What a column holds.
pub fn column(table: OwnTable, name: &str) -> &'static str {
    match name {
        "id" => "a name of your own for the rule",
        "meal" => "breakfast, lunch, snack or supper",
        "group" => "grades or ages as the tables above name them: K-5, 6-8, 9-12, ages 6-12 …",
        "groups" => "the same; several with | between them; empty for all",
        "nutrient" => {
            "the dataset’s number: 208 calories, 307 sodium, 606 saturated fat, 539 added sugars, 291 fibre …"
        }
        "basis" => "per meal, or share of energy",
        "kcal_per_gram" => "for a share of energy: 9 for fat, 4 for sugars; else empty",
        "bound" if table == OwnTable::WeekRules => {
            "at least or at most; empty where the kind needs no limit"
        }
        "bound" => "at least, at most or below",
        "limit" | "amount" => "a number, in the unit",
        "unit" if table == OwnTable::MealPatterns => {
            "cup for fruits and vegetables, oz eq for grains and meats, fl oz for milk"
        }
        "unit" => "the unit of the limit: kcal, mg, g, %, oz eq, options …",
        "leaves_out" => "empty, or fluid milk",
        "component" if table == OwnTable::WeekRules => {
            "fruits, vegetables, grains, meats and meat alternates, fluid milk or a subgroup; empty where the kind \
             needs none"
        }
        "component" => {
            "fruits, vegetables, dark green vegetables, red and orange vegetables, \"beans, peas and lentils\", \
             starchy vegetables, other vegetables, additional vegetables, grains, meats and meat alternates, grains \
             or meats and meat alternates, fluid milk"
        }
        "period" => "day or week",
        "force" => "required, guidance or choice",
        "counted" => {
            "which meal counts: smallest or largest that a student can take, offered (every choice once), average"
        }
        "scaled_to" => {
            "in weeks that are not of five days the amount is rounded to a multiple of this; may be empty"
        }
        "kind" => {
            "share of offerings, largest amount, options, only products marked, added sugars, components met, days, \
             meals with"
        }
        "marks" => {
            "which food is meant, several with | between them: juice, whole grain-rich, grain dessert, breakfast \
             cereal, yogurt, flavored, unflavored, fat-free, low-fat, reduced-fat, whole"
        }
        "per" => "the limit is for so much: a number; may be empty",
        "per_unit" => "… of this unit: oz, fl oz, days; may be empty",
        "from" => "first day in force, as in 2026-08-01",
        "until" => "last day in force; empty while there is none",
        "only_when" => "empty, or a switch and its state, as in whole milk act: on",
        "paragraph" => "where the limit stands, as it is to be cited",
        "source" => "where it was read",
        "status" => "how sure it is: own, verified, from memory",
        "words" => "what is asked, in words, as findings will say it",
        _ => "",
    }
}

pub const OTHER: &str = "All other tables";
pub const OTHER_LEAD: &str = "The tables that credits, labels, claims, allergens, temperatures and yields come from, row by \
     row as they are kept, each row with its source.";
pub const CREDIT_RULES: &str = "How foods credit toward meal components";
pub const GRAIN_GROUPS: &str = "Weights of grain products (Exhibit A)";
pub const CREDIT_DEFINITIONS: &str = "Rounding and smallest amounts of credits";
pub const DAILY_VALUES: &str = "Daily Values";
pub const LABEL_ROUNDING: &str = "Rounding on Nutrition Facts";
pub const LABEL_NUTRIENTS: &str = "Rows of Nutrition Facts";
pub const LABEL_STATEMENTS: &str = "Statements on Nutrition Facts";
pub const LABEL_LAYOUT: &str = "Layout of Nutrition Facts";
pub const CLAIMS: &str = "Nutrient content claims";
pub const CLAIM_DISCLOSURE: &str = "Statements that claims need";
pub const ALLERGEN_TERMS: &str = "Words that point to allergens";
pub const FOOD_SAFETY: &str = "Cooking and holding temperatures";
pub const COOKING_YIELDS: &str = "Cooking yields";
pub const TRIM_YIELDS: &str = "Yields of peeling and trimming";
pub const TREATMENTS: &str = "What drains, rinses or fries away";
pub const SYNONYMS: &str = "Kitchen names of foods";

#[cfg(test)]
mod tests {
    use super::*;
    use engine::rules::{MealPatterns, Specifications, WeekRules};

    #[test]
    fn examples_can_be_used_as_they_are() {
        for table in OwnTable::ALL {
            let text = example_text(table);
            assert_eq!(table.check(&text), Ok(()), "{table:?}");
            assert_eq!(text.lines().count(), 2);
        }
    }

    #[test]
    fn every_column_is_explained() {
        for table in OwnTable::ALL {
            for name in table.header().split(',') {
                assert!(!column(table, name).is_empty(), "{table:?} {name}");
            }
        }
    }

    #[test]
    fn every_switch_of_the_tables_is_explained() {
        let model = OwnTable::model;
        let limits = Specifications::from_csv(model(OwnTable::DietarySpecifications)).unwrap();
        let amounts = MealPatterns::from_csv(model(OwnTable::MealPatterns)).unwrap();
        let rules = WeekRules::from_csv(model(OwnTable::WeekRules)).unwrap();
        let names = limits.switches().chain(amounts.switches());
        for name in names.chain(rules.switches()) {
            assert_ne!(switch(name).0, name, "{name} has no words");
        }
    }
}
