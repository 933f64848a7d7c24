//! Words of moving and copying what a week plans, of its drawings, and of the
//! ways to a remedy.

use crate::language::{Say, say};
use engine::week::Date;

pub const UP: Say = Say("plan-up");
pub const DOWN: Say = Say("plan-down");
pub const DAY_BACK: Say = Say("plan-day-back");
pub const DAY_ON: Say = Say("plan-day-on");
pub const DONE: Say = Say("plan-done");
pub const COPY_WEEK: Say = Say("plan-copy-week");
pub const TO_KITCHEN: Say = Say("plan-to-kitchen");
pub const TO_MONTH: Say = Say("plan-to-month");
pub const DRAWINGS: Say = Say("plan-drawings");
pub const NUTRIENT: Say = Say("plan-nutrient");
pub const TO_MEND: Say = Say("plan-to-mend");

/// Moves a named thing.
pub fn move_it(name: &str) -> String {
    say("plan-move", &[("name", name.into())])
}

/// A day as the place of a move.
pub fn to_day(date: Date) -> String {
    let weekday = date.days_since(date.monday());
    say("plan-to-day", &[("weekday", weekday.into())])
}

/// A week was copied.
pub fn copied(monday: Date) -> String {
    say("plan-copied", &[("date", monday.to_string().into())])
}

/// A week could not be copied.
pub fn nothing_to_copy(monday: Date) -> String {
    say(
        "plan-nothing-to-copy",
        &[("date", monday.to_string().into())],
    )
}

/// Title of the drawing of days.
pub fn fills(nutrient: &str, service: &str) -> String {
    let arguments = [("nutrient", nutrient.into()), ("service", service.into())];
    say("plan-fills", &arguments)
}

/// What the drawing of days says.
pub fn fills_summary(average: &str, most: &str, day: Date) -> String {
    let weekday = day.days_since(day.monday());
    let arguments = [
        ("average", average.into()),
        ("most", most.into()),
        ("weekday", weekday.into()),
    ];
    say("plan-fills-summary", &arguments)
}

/// Title of the drawing of ranges.
pub fn ranges(service: &str) -> String {
    say("plan-ranges", &[("service", service.into())])
}

/// What the drawing of ranges says.
pub fn ranges_summary(within: usize, all: usize) -> String {
    let arguments = [
        ("within", i64::try_from(within).unwrap_or(i64::MAX).into()),
        ("all", i64::try_from(all).unwrap_or(i64::MAX).into()),
    ];
    say("plan-ranges-summary", &arguments)
}

/// What else could go for a line.
pub fn swap_line(line: &str) -> String {
    say("plan-swap-line", &[("line", line.into())])
}

/// A part of a meal and a dish in it.
pub fn dish_of(part: &str, dish: &str) -> String {
    say(
        "plan-dish-of",
        &[("part", part.into()), ("dish", dish.into())],
    )
}
