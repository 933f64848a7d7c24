//! A month as weeks from Monday on.

use super::Calendar;
use crate::week::Date;

/// What a day of the calendar is to a school.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum DayKind {
    /// A day with school.
    School,
    /// Marked as a day without.
    NoSchool,
    /// Saturday or Sunday.
    Weekend,
}

/// Weekdays with school, from Monday on.
const SCHOOL_DAYS: i64 = 5;

/// The Mondays of all weeks that have a day in the month of `date`.
pub fn month_weeks(date: Date) -> Vec<Date> {
    let first = date.first_of_month();
    let next = first.first_of_next_month();
    let mut mondays = Vec::new();
    let mut monday = first.monday();
    while monday < next {
        mondays.push(monday);
        monday = monday.plus_days(7);
    }
    mondays
}

impl Calendar {
    /// What a day is to a school.
    pub fn kind(&self, date: Date) -> DayKind {
        if date.days_since(date.monday()) >= SCHOOL_DAYS {
            DayKind::Weekend
        } else if self.no_school(date).is_some() {
            DayKind::NoSchool
        } else {
            DayKind::School
        }
    }
}
