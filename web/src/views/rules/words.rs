//! Words of the view of rules.

use crate::format;
use crate::language::{Say, of_table_in_parts, say};
use crate::state::OwnTable;
use engine::tables::TableError;
use engine::week::Date;

pub const TITLE: Say = Say("rules-title");
pub const LEAD: Say = Say("rules-lead");
pub const IN_FORCE: Say = Say("rules-in-force");
pub const DATE: Say = Say("rules-date");
pub const SERVICE: Say = Say("rules-service");
pub const AVERAGE: Say = Say("rules-average");
pub const EACH_DAY: Say = Say("rules-each-day");
pub const EACH_WEEK: Say = Say("rules-each-week");
pub const OF_WHICH_SOME: Say = Say("rules-of-which-some");
pub const GUIDANCE: Say = Say("rules-guidance");
pub const SHARES: Say = Say("rules-shares");
pub const LATER: Say = Say("rules-later");
pub const ASKED: Say = Say("rules-asked");
pub const LIMIT: Say = Say("rules-limit");
pub const WHEN: Say = Say("rules-when");
pub const WHERE: Say = Say("rules-where");
pub const HOW_SURE: Say = Say("rules-how-sure");

/// What is asked of one component.
pub fn of_component(component: &str, asked: &str) -> String {
    say(
        "rules-of-component",
        &[("component", component.into()), ("asked", asked.into())],
    )
}

/// From when to when a row is in force.
pub fn days_in_force(from: Date, until: Option<Date>) -> String {
    let from = ("from", format::date(from).into());
    match until {
        None => say("rules-from", &[from]),
        Some(until) => say(
            "rules-from-until",
            &[from, ("until", format::date(until).into())],
        ),
    }
}

/// The same for a row that depends on a switch.
pub fn while_switch(days: &str, switch: &str, on: bool) -> String {
    let (title, _) = self::switch(switch);
    let key = if on {
        "rules-while-on"
    } else {
        "rules-while-off"
    };
    say(key, &[("days", days.into()), ("switch", title.into())])
}

pub const SWITCHES: Say = Say("rules-switches");
pub const SWITCHES_LEAD: Say = Say("rules-switches-lead");
pub const ON: Say = Say("rules-on");
pub const OFF: Say = Say("rules-off");

/// A switch's name on the page and what it does.
pub fn switch(name: &str) -> (String, Say) {
    match name {
        "whole milk act" => (
            Say("rules-switch-milk").to_string(),
            Say("rules-switch-milk-hint"),
        ),
        "subgroups unchanged in short weeks" => (
            Say("rules-switch-subgroups").to_string(),
            Say("rules-switch-subgroups-hint"),
        ),
        other => (other.to_owned(), Say("rules-switch-other-hint")),
    }
}

pub const OWN: Say = Say("rules-own");
pub const OWN_LEAD: [Say; 2] = [Say("rules-own-lead-1"), Say("rules-own-lead-2")];
pub const START_WITH_EXAMPLE: Say = Say("rules-start-with-example");
pub const NO_OWN: Say = Say("rules-no-own");
pub const TO_LINE: Say = Say("rules-to-line");
pub const COLUMNS: Say = Say("rules-columns");
pub const COLUMNS_LEAD: Say = Say("rules-columns-lead");

/// A table's name in the document.
pub fn key(table: OwnTable) -> &'static str {
    match table {
        OwnTable::DietarySpecifications => "dietary",
        OwnTable::MealPatterns => "patterns",
        OwnTable::WeekRules => "week-rules",
    }
}

/// What a table is for.
pub fn own_lead(table: OwnTable) -> Say {
    match table {
        OwnTable::DietarySpecifications => Say("rules-lead-dietary"),
        OwnTable::MealPatterns => Say("rules-lead-patterns"),
        OwnTable::WeekRules => Say("rules-lead-week-rules"),
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
    say("rules-in-use", &[("rows", rows.into())])
}

/// Why a table is not in use.
pub fn not_in_use(problem: &TableError) -> String {
    let text = of_table_in_parts(&problem.problem);
    match problem.line {
        0 => say("rules-not-in-use", &[("problem", text.into())]),
        line => say(
            "rules-not-in-use-line",
            &[("line", line.to_string().into()), ("problem", text.into())],
        ),
    }
}

/// What a column holds; nothing for a column that no table has.
pub fn column(table: OwnTable, name: &str) -> Option<Say> {
    let is_week_rule = table == OwnTable::WeekRules;
    Some(match name {
        "id" => Say("rules-column-id"),
        "meal" => Say("rules-column-meal"),
        "group" => Say("rules-column-group"),
        "groups" => Say("rules-column-groups"),
        "nutrient" => Say("rules-column-nutrient"),
        "basis" => Say("rules-column-basis"),
        "kcal_per_gram" => Say("rules-column-kcal-per-gram"),
        "bound" if is_week_rule => Say("rules-column-bound-of-rule"),
        "bound" => Say("rules-column-bound"),
        "limit" | "amount" => Say("rules-column-amount"),
        "unit" if table == OwnTable::MealPatterns => Say("rules-column-unit-of-pattern"),
        "unit" => Say("rules-column-unit"),
        "leaves_out" => Say("rules-column-leaves-out"),
        "component" if is_week_rule => Say("rules-column-component-of-rule"),
        "component" => Say("rules-column-component"),
        "period" => Say("rules-column-period"),
        "force" => Say("rules-column-force"),
        "counted" => Say("rules-column-counted"),
        "scaled_to" => Say("rules-column-scaled-to"),
        "kind" => Say("rules-column-kind"),
        "marks" => Say("rules-column-marks"),
        "per" => Say("rules-column-per"),
        "per_unit" => Say("rules-column-per-unit"),
        "from" => Say("rules-column-from"),
        "until" => Say("rules-column-until"),
        "only_when" => Say("rules-column-only-when"),
        "paragraph" => Say("rules-column-paragraph"),
        "source" => Say("rules-column-source"),
        "status" => Say("rules-column-status"),
        "words" => Say("rules-column-words"),
        _ => return None,
    })
}

pub const OTHER: Say = Say("rules-other");
pub const OTHER_LEAD: Say = Say("rules-other-lead");
pub const CREDIT_RULES: Say = Say("rules-credit-rules");
pub const GRAIN_GROUPS: Say = Say("rules-grain-groups");
pub const CREDIT_DEFINITIONS: Say = Say("rules-credit-definitions");
pub const DAILY_VALUES: Say = Say("rules-daily-values");
pub const LABEL_ROUNDING: Say = Say("rules-label-rounding");
pub const LABEL_NUTRIENTS: Say = Say("rules-label-nutrients");
pub const LABEL_STATEMENTS: Say = Say("rules-label-statements");
pub const LABEL_LAYOUT: Say = Say("rules-label-layout");
pub const CLAIMS: Say = Say("rules-claims");
pub const CLAIM_DISCLOSURE: Say = Say("rules-claim-disclosure");
pub const ALLERGEN_TERMS: Say = Say("rules-allergen-terms");
pub const FOOD_SAFETY: Say = Say("rules-food-safety");
pub const COOKING_YIELDS: Say = Say("rules-cooking-yields");
pub const TRIM_YIELDS: Say = Say("rules-trim-yields");
pub const TREATMENTS: Say = Say("rules-treatments");
pub const SYNONYMS: Say = Say("rules-synonyms");

#[cfg(test)]
mod tests {
    use super::*;
    use engine::rules::{MealPatterns, Specifications, WeekRules};

    #[test]
    fn examples_can_be_used_as_they_are() {
        let patterns = MealPatterns::from_csv(OwnTable::MealPatterns.model()).unwrap();
        for table in OwnTable::ALL {
            let text = example_text(table);
            assert_eq!(table.check(&text, &patterns), Ok(()), "{table:?}");
            assert_eq!(text.lines().count(), 2);
        }
    }

    #[test]
    fn every_column_is_explained() {
        for table in OwnTable::ALL {
            for name in table.header().split(',') {
                assert!(column(table, name).is_some(), "{table:?} {name}");
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
