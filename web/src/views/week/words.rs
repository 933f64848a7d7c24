//! Words of the view of a week.

use engine::rules::Bound;
use engine::uncertainty::Likelihood;
use engine::week::{Date, MealKind};

pub const TITLE: &str = "Weeks of menus";
pub const LEAD: &str = "Plan what each meal offers and how many servings of it. The week’s average meal is compared \
     with the limits in force on its first day.";
pub const NEW: &str = "New week";
pub const NONE: &str = "There is no week in the book yet.";
pub const COLUMN_WEEK: &str = "Week";
pub const COLUMN_DAYS: &str = "Days";
pub const COLUMN_FINDINGS: &str = "Requirements";

pub const ALL_WEEKS: &str = "← All weeks";
pub const WEEK_TITLE: &str = "Title of the week";
pub const START: &str = "First day";
pub const ADD_DAY: &str = "Add a day";
pub const REMOVE_WEEK: &str = "Take the week out of the book";
pub const PRINT: &str = "Print the week";
pub const NO_DAYS: &str = "The week has no days yet: add the first.";
pub const DATE: &str = "Date";
pub const COPY_DAY: &str = "Copy day";
pub const REMOVE_DAY: &str = "Remove day";
pub const ADD_MEAL: &str = "Add a meal";
pub const MEAL: &str = "Meal";
pub const GROUP: &str = "Grades or ages";
pub const PLANNED_MEALS: &str = "Meals planned";
pub const REMOVE_MEAL: &str = "Remove the meal";
pub const ADD_PART: &str = "Add a part";
pub const PART: &str = "Part of the meal";
pub const NEW_PART: &str = "Another part";
pub const TAKE: &str = "choices a student may take";
pub const REMOVE_PART: &str = "Remove the part";
pub const ADD_CHOICE: &str = "Add a choice";
pub const CHOICE_HINT: &str = "Add a recipe …";
pub const SERVINGS: &str = "servings";
pub const REMOVE: &str = "Remove";
pub const MISSING_RECIPE: &str = "not in the book";
pub const NO_RECIPES: &str = "The book has no recipes to choose from yet.";
pub const PLAN: &str = "The plan";

pub const FINDINGS: &str = "How the week stands";
pub const NO_MEALS: &str = "Add a meal to a day, and its requirements appear here.";
pub const REQUIREMENT: &str = "Requirement";
pub const FIGURE: &str = "This week";
pub const LIMIT: &str = "Limit";
pub const VERDICT: &str = "Verdict";
pub const COVERAGE: &str = "How sure";
pub const CITATION: &str = "Where it stands";
pub const CARRIERS: &str = "What carries it";
pub const DAY: &str = "Day";
pub const RECIPE: &str = "Recipe";
pub const AMOUNT: &str = "In the average meal";
pub const SHARE: &str = "Share";
pub const UNKNOWN: &str = "unknown";
pub const AVERAGES: &str = "Calories, fat and sodium are limited in the week’s average meal; no day has to keep them by \
     itself. Of what is offered, the smallest meal counts that a student can choose. Behind ± stands the \
     expanded uncertainty with a coverage factor of 2: of figures like these, about 95 in 100 lie within it.";
pub const OF_AVERAGE_MEAL: &str = "The average meal";
pub const OF_WEEK: &str = "What the week offers";
pub const OF_EACH_DAY: &str = "What each day offers";
pub const NO_LIMITS: &str =
    "No rules are in force for this meal and these grades or ages on the week’s first day.";
pub const AS_PLANNED: &str = "As planned";
pub const DAYS: &str = "Days";
pub const TO_CHOICE: &str = "To its place in the plan";
pub const SAME_DAY: &str =
    "Another day of the week has this date already: choose a date of its own.";
pub const TO_FINDINGS: &str = "All requirements, and what carries them";

/// Parts of a meal that no other day shows how to lay out.
pub fn usual_parts(kind: MealKind) -> Vec<String> {
    let parts: &[&str] = match kind {
        MealKind::Breakfast => &["Grain or main item", "Fruit", "Milk"],
        MealKind::Snack => &["First item", "Second item"],
        MealKind::Lunch | MealKind::Supper => &["Main dish", "Vegetable", "Fruit", "Grain", "Milk"],
    };
    parts.iter().map(|part| (*part).to_owned()).collect()
}

/// A meal's name at the start of a line.
pub fn meal_name(kind: MealKind) -> &'static str {
    match kind {
        MealKind::Breakfast => "Breakfast",
        MealKind::Lunch => "Lunch",
        MealKind::Snack => "Snack",
        MealKind::Supper => "Supper",
    }
}

/// A meal and its grades.
pub fn service(kind: MealKind, group: &str) -> String {
    format!("{} for {group}", meal_name(kind))
}

/// Title of a new week.
pub fn week_of(date: Date) -> String {
    format!("Week of {date}")
}

/// Heading of a day.
pub fn day(date: Date) -> String {
    format!("{} {date}", date.weekday())
}

/// How many days, in words.
pub fn days(count: usize) -> String {
    match count {
        1 => "1 day".to_owned(),
        _ => format!("{count} days"),
    }
}

/// How many requirements are met, missed and unknown.
pub fn tally(met: usize, missed: usize, unknown: usize) -> String {
    if met + missed + unknown == 0 {
        return "no meals yet".to_owned();
    }
    format!("{met} met, {missed} missed, {unknown} unknown")
}

/// Meals and days that an average is of.
pub fn over(meals: &str, count: usize) -> String {
    format!("average over {meals} planned meals on {}", days(count))
}

/// A share of the food's weight.
pub fn known_for(percent: &str) -> String {
    format!("known for {percent} % of the weight")
}

/// Something to do with a named thing, for those who do not see where it is.
pub fn of(what: &str, name: &str) -> String {
    format!("{what}: {name}")
}

/// What a serving of a recipe contains.
pub fn per_serving(calories: &str, sodium: &str) -> String {
    format!("{calories} kcal, {sodium} mg sodium")
}

/// A recipe that a choice names is not in the book.
pub fn not_in_book(id: &str) -> String {
    format!("The week “{id}” is not in the book. It may have been taken out: Undo brings it back.")
}

/// A week was added.
pub fn added(monday: Date) -> String {
    format!("A week from Monday {monday} was added.")
}

/// A limit with its side.
pub fn limit(bound: Bound, limit: &str) -> String {
    match bound {
        Bound::AtLeast => format!("at least {limit}"),
        Bound::AtMost => format!("at most {limit}"),
        Bound::Below => format!("below {limit}"),
    }
}

/// A share that leaves out what is not known.
pub fn of_the_known(figure: &str) -> String {
    format!("{figure} of what is known")
}

/// A figure of the worst day.
pub fn on_day(figure: &str, date: Date) -> String {
    format!("{figure} on {}", date.weekday())
}

/// The first three letters of a day.
fn short_day(date: Date) -> String {
    date.weekday().chars().take(3).collect()
}

/// On which of so many days a requirement is not met.
pub fn on_days(count: usize, missed: &[Date], unknown: &[Date]) -> String {
    let names = |dates: &[Date]| -> String {
        let names: Vec<String> = dates.iter().map(|date| short_day(*date)).collect();
        names.join(", ")
    };
    let all = |dates: &[Date]| dates.len() == count && count > 1;
    let part = |word: &str, dates: &[Date]| match dates {
        [] => None,
        dates if all(dates) => Some(format!("{word} on all {count} days")),
        dates => Some(format!("{word} on {}", names(dates))),
    };
    let parts: Vec<String> = [part("missed", missed), part("unknown", unknown)]
        .into_iter()
        .flatten()
        .collect();
    match (parts.is_empty(), count) {
        (false, _) => parts.join("; "),
        (true, 1) => "met on its one day".to_owned(),
        (true, _) => format!("met on all {count} days"),
    }
}

/// Units of which the tables write the one or the other number.
const COUNTED: [(&str, &str); 7] = [
    ("cup", "cups"),
    ("option", "options"),
    ("component", "components"),
    ("subgroup", "subgroups"),
    ("meal", "meals"),
    ("day", "days"),
    ("other product", "other products"),
];

/// A figure with its unit: "1 option", "2 cups", "0.5 cup", "≥ 8 oz eq".
pub fn counted(figure: &str, unit: &str) -> String {
    let is_number = |one: &&(&str, &str)| one.0 == unit || one.1 == unit;
    let Some((one, many)) = COUNTED.iter().find(is_number) else {
        return format!("{figure} {unit}");
    };
    let is_one = figure == "1" || figure.starts_with("0.");
    format!("{figure} {}", if is_one { one } else { many })
}

/// Where the rules of a week can be read.
pub fn rules_on(date: Date) -> String {
    format!("The rules in force on {date}, with their sources")
}

/// A service whose group has no meal pattern.
pub fn no_pattern(kind: MealKind, group: &str) -> String {
    format!(
        "The tables hold no meal pattern of {} for {group}: amounts of components are not checked. \
         Choose other grades or ages, or enter your own amounts under Rules.",
        kind
    )
}

/// The average beside the figure that decides.
pub fn on_average(figure: &str) -> String {
    format!("{figure} on average")
}

/// A figure between two bounds.
pub fn between(low: &str, high: &str) -> String {
    format!("{low} to {high}")
}

/// An expanded uncertainty, with a coverage factor of 2.
pub fn give_or_take(margin: &str, at_least: bool) -> String {
    let more = if at_least { " or more" } else { "" };
    format!("± {margin}{more}")
}

/// How sure a verdict is.
pub fn likelihood(likelihood: Likelihood) -> &'static str {
    match likelihood {
        Likelihood::Within => "surely kept",
        Likelihood::LikelyWithin => "probably kept",
        Likelihood::TooCloseToTell => "too close to tell",
        Likelihood::LikelyOutside => "probably not kept",
        Likelihood::Outside => "surely not kept",
    }
}

/// How many requirements are met: all of them, or the others.
pub fn count_of(count: usize, all: bool) -> String {
    match (all, count) {
        (true, 1) => "its 1 requirement".to_owned(),
        (true, _) => format!("all {count} requirements"),
        (false, 1) => "1 other".to_owned(),
        (false, _) => format!("{count} others"),
    }
}

/// The dataset's standard errors are not there.
pub fn no_evidence(problem: &str) -> String {
    format!("How sure these figures are cannot be said: {problem}")
}

pub const NOTHING_CARRIES: &str = "Nothing that is planned brings any.";
pub const PER_SERVING: &str = "In one serving";

/// How many requirements are not met besides those that are named.
pub fn and_more(count: usize) -> String {
    format!("and {count} more not met")
}

pub const READINGS: &str = "Rules that can be read in two ways";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_agree_with_their_figures() {
        for (figure, unit, printed) in [
            ("1", "options", "1 option"),
            ("0", "options", "0 options"),
            ("2.5", "cup", "2.5 cups"),
            ("0.5", "cup", "0.5 cup"),
            ("≥ 8", "oz eq", "≥ 8 oz eq"),
        ] {
            assert_eq!(counted(figure, unit), printed);
        }
    }

    #[test]
    fn days_that_fail_are_named() {
        let days: Vec<Date> = ["2026-11-30", "2026-12-01"]
            .map(|day| day.parse().unwrap())
            .to_vec();
        for (count, missed, unknown, words) in [
            (5, &days[..0], &days[..0], "met on all 5 days"),
            (1, &days[..0], &days[..0], "met on its one day"),
            (5, &days[..2], &days[..0], "missed on Mon, Tue"),
            (5, &days[..1], &days[1..2], "missed on Mon; unknown on Tue"),
            (2, &days[..2], &days[..0], "missed on all 2 days"),
        ] {
            assert_eq!(on_days(count, missed, unknown), words);
        }
    }
}
