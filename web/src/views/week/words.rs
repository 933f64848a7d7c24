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
pub const GROUP: &str = "Grades";
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
     itself. Of what is offered, the smallest meal counts that a student can choose.";
pub const OF_AVERAGE_MEAL: &str = "The average meal";
pub const OF_WEEK: &str = "What the week offers";
pub const OF_EACH_DAY: &str = "What each day offers";
pub const NO_LIMITS: &str = "The tables hold no limits for this meal and these grades.";
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

/// On how many days a requirement is met.
pub fn days_met(met: usize, days: usize) -> String {
    format!("met on {met} of {}", self::days(days))
}

/// The average beside the figure that decides.
pub fn on_average(figure: &str) -> String {
    format!("{figure} on average")
}

/// A figure between two bounds.
pub fn between(low: &str, high: &str) -> String {
    format!("{low} to {high}")
}

/// A standard uncertainty.
pub fn give_or_take(figure: &str) -> String {
    format!("give or take {figure}")
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
pub const READINGS_HINT: &str = "Where a rule has changed or is not settled, choose the reading that your State agency follows.";

/// A reading of the rules, by its name in the tables.
pub fn switch(name: &str) -> String {
    match name {
        "whole milk act" => "Follow the Whole Milk for Healthy Kids Act of 2025 at lunch: whole and \
             reduced-fat milk may be offered, and the fat of fluid milk is left out of the saturated fat test"
            .to_owned(),
        name => format!("Follow “{name}”"),
    }
}

/// How sure a limit is, by its status in the tables; nothing where it was read
/// in its source.
pub fn doubt(status: &str) -> Option<String> {
    match status {
        "verified" => None,
        "from memory" => Some("figure from memory: check it before relying on it".to_owned()),
        status => Some(format!("({status})")),
    }
}
