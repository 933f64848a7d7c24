//! A cycle's weeks laid over the dates of a term.

use super::{Calendar, DayKind, OnBreak};
use crate::week::{Date, Day, Week, WeekId};

/// One week of a cycle on its dates.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LaidWeek {
    /// Monday of the week.
    pub monday: Date,
    /// The week of the cycle that it is made of.
    pub from: WeekId,
    /// Its days: those of that week that fall on school days.
    pub days: Vec<Day>,
}

/// Days in a week.
const DAYS: i64 = 7;

/// Lays `weeks` over the dates from `first` to `last`, over and over. A day
/// keeps its weekday. Days without school are left out, and so is a week that
/// has no other; `on_break` says what that does to the cycle. A week of which
/// some days lie before `first` or after `last` is short.
pub fn lay_out(
    weeks: &[&Week],
    first: Date,
    last: Date,
    calendar: &Calendar,
    on_break: OnBreak,
) -> Vec<LaidWeek> {
    let mut laid = Vec::new();
    if weeks.is_empty() {
        return laid;
    }
    let within = |date: Date| first <= date && date <= last;
    let mut turn = 0;
    let mut monday = first.monday();
    while monday <= last {
        let week = weeks[turn % weeks.len()];
        let days: Vec<Day> = week
            .days
            .iter()
            .filter_map(|day| {
                let date = monday.plus_days(day.date.days_since(day.date.monday()));
                (within(date) && calendar.no_school(date).is_none()).then(|| Day {
                    date,
                    meals: day.meals.clone(),
                })
            })
            .collect();
        // Whether the week has school is a matter of the calendar, not of what
        // the cycle plans for it.
        let has_school = (0..DAYS)
            .map(|day| monday.plus_days(day))
            .any(|date| within(date) && calendar.kind(date) == DayKind::School);
        if has_school || on_break == OnBreak::RunOn {
            turn += 1;
        }
        if has_school && !days.is_empty() {
            laid.push(LaidWeek {
                monday,
                from: week.id.clone(),
                days,
            });
        }
        monday = monday.plus_days(DAYS);
    }
    laid
}
