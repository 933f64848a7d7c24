//! Words of the view of a month.

use crate::language::{Say, say};
use engine::week::Date;
use rust_decimal::prelude::ToPrimitive;

pub const ALL_WEEKS: Say = Say("month-all-weeks");
pub const LEAD: Say = Say("month-lead");
pub const LAST_MONTH: Say = Say("month-last");
pub const NEXT_MONTH: Say = Say("month-next");
pub const PRINT: Say = Say("month-print");
pub const WEEK_STANDS: Say = Say("month-week-stands");
pub const NO_SCHOOL: Say = Say("month-no-school");
pub const WHY: Say = Say("month-why");
pub const OPEN: Say = Say("month-open");
pub const CLOSE: Say = Say("month-close");
pub const PLANNED_ANYWAY: Say = Say("month-planned-anyway");
pub const TWICE: Say = Say("month-twice");
pub const NO_MEALS: Say = Say("month-no-meals");
pub const CYCLES: Say = Say("month-cycles");
pub const CYCLES_HINT: Say = Say("month-cycles-hint");
pub const NEW_CYCLE: Say = Say("month-new-cycle");
pub const ADD_CYCLE: Say = Say("month-add-cycle");
pub const CYCLE_TITLE: Say = Say("month-cycle-title");
pub const ON_BREAK: Say = Say("month-on-break");
pub const WAITS: Say = Say("month-waits");
pub const RUNS_ON: Say = Say("month-runs-on");
pub const LOST_WEEK: Say = Say("month-lost-week");
pub const ADD_WEEK: Say = Say("month-add-week");
pub const FROM: Say = Say("month-from");
pub const TO: Say = Say("month-to");

fn count(count: usize) -> i64 {
    count.to_i64().unwrap_or(i64::MAX)
}

/// A month's name and year.
pub fn month(date: Date) -> String {
    let arguments = [
        ("month", i64::from(date.month()).into()),
        ("year", date.year().to_string().into()),
    ];
    say("month-name", &arguments)
}

/// The number of a day in its month.
pub fn day_in_month(date: Date) -> String {
    date.day_of_month().to_string()
}

/// How many days a week has.
pub fn days(days: usize) -> String {
    say("month-days", &[("count", count(days).into())])
}

fn named(key: &str, name: &str) -> String {
    say(key, &[("name", name.into())])
}

/// Why a day has no school.
pub fn why(day: &str) -> String {
    named("month-why-of", day)
}

/// Takes the mark off a day.
pub fn open(day: &str) -> String {
    named("month-open-of", day)
}

/// Marks a day.
pub fn close(day: &str) -> String {
    named("month-close-of", day)
}

/// Takes a named thing out.
pub fn remove(name: &str) -> String {
    named("month-remove", name)
}

/// Moves a week forward in its cycle.
pub fn earlier(name: &str) -> String {
    named("month-earlier", name)
}

/// Moves a week back in its cycle.
pub fn later(name: &str) -> String {
    named("month-later", name)
}

/// Something to do with a named thing.
pub fn of(what: Say, name: &str) -> String {
    let arguments = [("what", what.to_string().into()), ("name", name.into())];
    say("month-of", &arguments)
}

/// Title of a laid week.
pub fn laid_title(cycle: &str, monday: Date) -> String {
    let arguments = [("cycle", cycle.into()), ("date", monday.to_string().into())];
    say("month-laid-title", &arguments)
}

/// The step that lays a cycle.
pub fn lay_out(weeks: usize, days: usize) -> String {
    let arguments = [("weeks", count(weeks).into()), ("days", count(days).into())];
    say("month-lay-out", &arguments)
}

/// Weeks were added.
pub fn laid(weeks: usize) -> String {
    say("month-laid", &[("weeks", count(weeks).into())])
}

/// Days that are planned already.
pub fn already(days: usize) -> String {
    say("month-already", &[("days", count(days).into())])
}
