//! Words of the view of a week.

use crate::format;
use crate::language::{Say, say};
use crate::named;
use engine::rules::Bound;
use engine::uncertainty::Likelihood;
use engine::week::{Date, MealKind};

pub const TITLE: Say = Say("week-title");
pub const LEAD: Say = Say("week-lead");
pub const NEW: Say = Say("week-new");
pub const NONE: Say = Say("week-none");
pub const COLUMN_WEEK: Say = Say("week-column-week");
pub const COLUMN_DAYS: Say = Say("week-column-days");
pub const COLUMN_FINDINGS: Say = Say("week-column-findings");

pub const ALL_WEEKS: Say = Say("week-all-weeks");
pub const WEEK_TITLE: Say = Say("week-week-title");
pub const START: Say = Say("week-start");
pub const ADD_DAY: Say = Say("week-add-day");
pub const REMOVE_WEEK: Say = Say("week-remove-week");
pub const PRINT: Say = Say("week-print");
pub const NO_DAYS: Say = Say("week-no-days");
pub const DATE: Say = Say("week-date");
pub const COPY_DAY: Say = Say("week-copy-day");
pub const REMOVE_DAY: Say = Say("week-remove-day");
pub const ADD_MEAL: Say = Say("week-add-meal");
pub const MEAL: Say = Say("week-meal");
pub const GROUP: Say = Say("week-group");
pub const PLANNED_MEALS: Say = Say("week-planned-meals");
pub const REMOVE_MEAL: Say = Say("week-remove-meal");
pub const ADD_PART: Say = Say("week-add-part");
pub const PART: Say = Say("week-part");
pub const NEW_PART: Say = Say("week-new-part");
pub const TAKE: Say = Say("week-take");
pub const REMOVE_PART: Say = Say("week-remove-part");
pub const ADD_CHOICE: Say = Say("week-add-choice");
pub const CHOICE_HINT: Say = Say("week-choice-hint");
pub const SERVINGS: Say = Say("week-servings");
pub const REMOVE: Say = Say("week-remove");
pub const MISSING_RECIPE: Say = Say("week-missing-recipe");
pub const NO_RECIPES: Say = Say("week-no-recipes");
pub const PLAN: Say = Say("week-plan");

pub const FINDINGS: Say = Say("week-findings");
pub const NO_MEALS: Say = Say("week-no-meals");
pub const REQUIREMENT: Say = Say("week-requirement");
pub const FIGURE: Say = Say("week-figure");
pub const LIMIT: Say = Say("week-limit");
pub const VERDICT: Say = Say("week-verdict");
pub const COVERAGE: Say = Say("week-coverage");
pub const CITATION: Say = Say("week-citation");
pub const CARRIERS: Say = Say("week-carriers");
pub const DAY: Say = Say("week-day");
pub const RECIPE: Say = Say("week-recipe");
pub const AMOUNT: Say = Say("week-amount");
pub const SHARE: Say = Say("week-share");
pub use crate::words::UNKNOWN;
pub const AVERAGES: Say = Say("week-averages");
pub const OF_AVERAGE_MEAL: Say = Say("week-of-average-meal");
pub const OF_WEEK: Say = Say("week-of-week");
pub const OF_EACH_DAY: Say = Say("week-of-each-day");
pub const NO_LIMITS: Say = Say("week-no-limits");
pub const AS_PLANNED: Say = Say("week-as-planned");
pub const DAYS: Say = Say("week-days");
pub const TO_CHOICE: Say = Say("week-to-choice");
pub const SAME_DAY: Say = Say("week-same-day");
pub const TO_FINDINGS: Say = Say("week-to-findings");

/// Parts of a meal that no other day shows how to lay out.
pub fn usual_parts(kind: MealKind) -> Vec<String> {
    let parts: &[Say] = match kind {
        MealKind::Breakfast => &[
            Say("week-part-grain-or-main"),
            Say("week-part-fruit"),
            Say("week-part-milk"),
        ],
        MealKind::Snack => &[Say("week-part-first"), Say("week-part-second")],
        MealKind::Lunch | MealKind::Supper => &[
            Say("week-part-main"),
            Say("week-part-vegetable"),
            Say("week-part-fruit"),
            Say("week-part-grain"),
            Say("week-part-milk"),
        ],
    };
    parts.iter().map(Say::to_string).collect()
}

/// A meal's name at the start of a line.
pub fn meal_name(kind: MealKind) -> String {
    crate::views::recipe::sentence(&named::meal(kind).to_string())
}

/// A meal and its grades.
pub fn service(kind: MealKind, group: &str) -> String {
    say(
        "week-service",
        &[
            ("meal", meal_name(kind).into()),
            ("group", named::group(group).into()),
        ],
    )
}

/// How many choices there are to take from.
pub fn take_of(count: usize) -> String {
    say("week-take-of", &[("count", count.into())])
}

/// Title of a new week.
pub fn week_of(date: Date) -> String {
    say("week-week-of", &[("date", format::date(date).into())])
}

/// Heading of a day.
pub fn day(date: Date) -> String {
    format::day(date)
}

/// How many days, in words.
pub fn days(count: usize) -> String {
    say("week-day-count", &[("count", count.into())])
}

/// How many requirements are met, missed and unknown.
pub fn tally(met: usize, missed: usize, unknown: usize) -> String {
    if met + missed + unknown == 0 {
        return Say("week-no-meals-yet").to_string();
    }
    say(
        "week-tally",
        &[
            ("met", met.into()),
            ("missed", missed.into()),
            ("unknown", unknown.into()),
        ],
    )
}

/// Meals and days that an average is of.
pub fn over(meals: &str, count: usize) -> String {
    say(
        "week-over",
        &[("meals", meals.into()), ("days", days(count).into())],
    )
}

/// A share of the food's weight.
pub fn known_for(percent: &str) -> String {
    say("week-known-for", &[("percent", percent.into())])
}

/// Something to do with a named thing, for those who do not see where it is.
pub fn of(what: Say, name: &str) -> String {
    say(
        "week-of",
        &[("what", what.to_string().into()), ("name", name.into())],
    )
}

/// What a serving of a recipe contains.
pub fn per_serving(calories: &str, sodium: &str) -> String {
    say(
        "week-serving-figures",
        &[("calories", calories.into()), ("sodium", sodium.into())],
    )
}

/// A recipe that a choice names is not in the book.
pub fn not_in_book(id: &str) -> String {
    say("week-not-in-book", &[("id", id.into())])
}

/// A week was added.
pub fn added(monday: Date) -> String {
    say("week-added", &[("monday", format::date(monday).into())])
}

/// A limit with its side.
pub fn limit(bound: Bound, limit: &str) -> String {
    named::limit(bound, limit)
}

/// A share that leaves out what is not known.
pub fn of_the_known(figure: &str) -> String {
    say("week-of-the-known", &[("figure", figure.into())])
}

/// A figure of the worst day.
pub fn on_day(figure: &str, date: Date) -> String {
    say(
        "week-on-day",
        &[
            ("figure", figure.into()),
            ("day", format::weekday(date).into()),
        ],
    )
}

/// On which of so many days a requirement is not met.
pub fn on_days(count: usize, missed: &[Date], unknown: &[Date]) -> String {
    let names = |dates: &[Date]| -> String {
        let names: Vec<String> = dates.iter().copied().map(format::short_weekday).collect();
        names.join(", ")
    };
    let all = |dates: &[Date]| dates.len() == count && count > 1;
    let part = |on_all: &str, on_some: &str, dates: &[Date]| match dates {
        [] => None,
        dates if all(dates) => Some(say(on_all, &[("count", count.into())])),
        dates => Some(say(on_some, &[("days", names(dates).into())])),
    };
    let parts: Vec<String> = [
        part("week-missed-on-all", "week-missed-on", missed),
        part("week-unknown-on-all", "week-unknown-on", unknown),
    ]
    .into_iter()
    .flatten()
    .collect();
    match parts.is_empty() {
        false => parts.join("; "),
        true => say("week-met-on-all", &[("count", count.into())]),
    }
}

/// Where the rules of a week can be read.
pub fn rules_on(date: Date) -> String {
    say("week-rules-on", &[("date", format::date(date).into())])
}

/// A service whose group has no meal pattern.
pub fn no_pattern(kind: MealKind, group: &str) -> String {
    say(
        "week-no-pattern",
        &[
            ("meal", named::meal(kind).to_string().into()),
            ("group", named::group(group).into()),
        ],
    )
}

/// The average beside the figure that decides.
pub fn on_average(figure: &str) -> String {
    say("week-on-average", &[("figure", figure.into())])
}

/// A figure between two bounds.
pub fn between(low: &str, high: &str) -> String {
    say(
        "week-between",
        &[("low", low.into()), ("high", high.into())],
    )
}

/// An expanded uncertainty, with a coverage factor of 2.
pub fn give_or_take(margin: &str, at_least: bool) -> String {
    match at_least {
        true => say("week-give-or-take-more", &[("margin", margin.into())]),
        false => format!("± {margin}"),
    }
}

/// How sure a verdict is.
pub fn likelihood(likelihood: Likelihood) -> Say {
    match likelihood {
        Likelihood::Within => Say("week-surely-kept"),
        Likelihood::LikelyWithin => Say("week-probably-kept"),
        Likelihood::TooCloseToTell => Say("week-too-close"),
        Likelihood::LikelyOutside => Say("week-probably-not"),
        Likelihood::Outside => Say("week-surely-not"),
    }
}

/// How many requirements are met: all of them, or the others.
pub fn count_of(count: usize, all: bool) -> String {
    let key = if all { "week-all-of" } else { "week-others" };
    say(key, &[("count", count.into())])
}

/// The dataset's standard errors are not there.
pub fn no_evidence(problem: &str) -> String {
    say("week-no-evidence", &[("problem", problem.into())])
}

pub const NOTHING_CARRIES: Say = Say("week-nothing-carries");
pub const PER_SERVING: Say = Say("week-per-serving");

/// How many requirements are not met besides those that are named.
pub fn and_more(count: usize) -> String {
    say("week-and-more", &[("count", count.into())])
}

pub const READINGS: Say = Say("week-readings");

#[cfg(test)]
mod tests {
    use super::*;

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
