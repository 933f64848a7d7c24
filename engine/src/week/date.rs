//! Calendar dates as text in ISO 8601 form, checked against the calendar.

use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::fmt;
use std::str::FromStr;

/// A calendar day, written `2026-11-30`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Date(time::Date);

/// Why a text is not a date.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DateError(String);

impl fmt::Display for DateError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            out,
            "\"{}\" is not a day of the calendar: write year-month-day, as in 2026-11-30",
            self.0
        )
    }
}

impl std::error::Error for DateError {}

impl Date {
    /// The day that many days later.
    pub fn plus_days(self, days: i64) -> Self {
        Self(self.0.saturating_add(time::Duration::days(days)))
    }

    /// How many days this day comes after `other`; negative when before.
    pub fn days_since(self, other: Self) -> i64 {
        (self.0 - other.0).whole_days()
    }

    /// The next day from Monday to Friday.
    pub fn next_weekday(self) -> Self {
        let mut next = self.plus_days(1);
        while matches!(
            next.0.weekday(),
            time::Weekday::Saturday | time::Weekday::Sunday
        ) {
            next = next.plus_days(1);
        }
        next
    }

    /// The Monday of this day's week, which begins on Monday (ISO 8601).
    pub fn monday(self) -> Self {
        self.plus_days(-i64::from(self.0.weekday().number_days_from_monday()))
    }

    /// The first day of this day's month.
    pub fn first_of_month(self) -> Self {
        self.plus_days(1 - i64::from(self.0.day()))
    }

    /// The first day of the month after this day's.
    pub fn first_of_next_month(self) -> Self {
        // No month has more than 31 days, and none less than 28.
        self.first_of_month().plus_days(31).first_of_month()
    }

    /// The first day of the month before this day's.
    pub fn first_of_last_month(self) -> Self {
        self.first_of_month().plus_days(-1).first_of_month()
    }

    /// Number of the month, from 1.
    pub fn month(self) -> u8 {
        u8::from(self.0.month())
    }

    /// The year.
    pub fn year(self) -> i32 {
        self.0.year()
    }

    /// Number of the day in its month, from 1.
    pub fn day_of_month(self) -> u8 {
        self.0.day()
    }

    /// English name of the weekday.
    pub fn weekday(self) -> String {
        self.0.weekday().to_string()
    }
}

impl FromStr for Date {
    type Err = DateError;

    fn from_str(text: &str) -> Result<Self, DateError> {
        let wrong = || DateError(text.to_owned());
        let parts: Vec<&str> = text.split('-').collect();
        let [year, month, day] = parts[..] else {
            return Err(wrong());
        };
        if (year.len(), month.len(), day.len()) != (4, 2, 2) {
            return Err(wrong());
        }
        let month: u8 = month.parse().map_err(|_| wrong())?;
        time::Date::from_calendar_date(
            year.parse().map_err(|_| wrong())?,
            month.try_into().map_err(|_| wrong())?,
            day.parse().map_err(|_| wrong())?,
        )
        .map(Self)
        .map_err(|_| wrong())
    }
}

impl fmt::Display for Date {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (year, month, day) = self.0.to_calendar_date();
        write!(out, "{year:04}-{:02}-{day:02}", u8::from(month))
    }
}

impl Serialize for Date {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Date {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_days_of_the_calendar() {
        for good in ["2026-11-30", "2028-02-29", "2027-07-01"] {
            assert_eq!(good.parse::<Date>().unwrap().to_string(), good);
        }
        for bad in [
            "2026-02-29",
            "2026-13-01",
            "30.11.2026",
            "2026-1-3",
            "",
            "soon",
        ] {
            assert!(bad.parse::<Date>().is_err(), "{bad}");
        }
    }

    #[test]
    fn days_pass() {
        let friday: Date = "2026-11-27".parse().unwrap();
        assert_eq!(friday.plus_days(3).to_string(), "2026-11-30");
        assert_eq!(friday.weekday(), "Friday");
        assert_eq!(friday.plus_days(-3).days_since(friday), -3);
    }

    /// Weekdays: any calendar of November 2026.
    #[test]
    fn school_days_skip_the_weekend() {
        for (day, next, monday) in [
            ("2026-11-26", "2026-11-27", "2026-11-23"),
            ("2026-11-27", "2026-11-30", "2026-11-23"),
            ("2026-11-28", "2026-11-30", "2026-11-23"),
            ("2026-11-30", "2026-12-01", "2026-11-30"),
        ] {
            let day: Date = day.parse().unwrap();
            assert_eq!(day.next_weekday().to_string(), next, "after {day}");
            assert_eq!(day.monday().to_string(), monday, "week of {day}");
        }
    }
}
