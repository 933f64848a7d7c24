//! Months and cycle menus against calendars of 2026 and 2027.

use engine::calendar::{Calendar, DayKind, OnBreak, lay_out, month_weeks};
use engine::week::{Date, Day, Week, WeekId};

fn date(text: &str) -> Date {
    text.parse().unwrap()
}

/// A week with these days from some Monday on, 0 for Monday.
fn week(name: &str, days: &[i64]) -> Week {
    let monday = date("2025-09-01");
    Week {
        id: WeekId(name.into()),
        title: String::new(),
        days: days
            .iter()
            .map(|day| Day {
                date: monday.plus_days(*day),
                meals: Vec::new(),
            })
            .collect(),
    }
}

fn closed(days: &[&str]) -> Calendar {
    let mut calendar = Calendar::default();
    for day in days {
        calendar.close(date(day), String::new());
    }
    calendar
}

/// Thanksgiving of 2026 is Thursday, November 26.
#[test]
fn a_cycle_is_laid_around_holidays() {
    let (a, b) = (week("a", &[0, 1, 2, 3, 4]), week("b", &[0, 1, 2, 3, 4]));
    let recess = ["2026-11-26", "2026-11-27"];
    let whole_week = [
        "2026-11-23",
        "2026-11-24",
        "2026-11-25",
        "2026-11-26",
        "2026-11-27",
    ];
    for (days_off, on_break, laid) in [
        (
            &recess[..],
            OnBreak::Wait,
            "a 11-16 5, b 11-23 3, a 11-30 5, b 12-07 3",
        ),
        (
            &whole_week[..],
            OnBreak::Wait,
            "a 11-16 5, b 11-30 5, a 12-07 3",
        ),
        (
            &whole_week[..],
            OnBreak::RunOn,
            "a 11-16 5, a 11-30 5, b 12-07 3",
        ),
    ] {
        let found = lay_out(
            &[&a, &b],
            date("2026-11-16"),
            date("2026-12-09"),
            &closed(days_off),
            on_break,
        );
        let told: Vec<String> = found
            .iter()
            .map(|week| {
                format!(
                    "{} {} {}",
                    week.from.0,
                    &week.monday.to_string()[5..],
                    week.days.len()
                )
            })
            .collect();
        assert_eq!(told.join(", "), laid, "{on_break:?}");
    }
}

#[test]
fn days_keep_their_weekdays() {
    let short = week("a", &[1, 3]);
    let laid = lay_out(
        &[&short],
        date("2026-12-02"),
        date("2026-12-11"),
        &Calendar::default(),
        OnBreak::Wait,
    );
    let days: Vec<String> = laid
        .iter()
        .flat_map(|week| &week.days)
        .map(|day| day.date.to_string())
        .collect();
    assert_eq!(days, ["2026-12-03", "2026-12-08", "2026-12-10"]);
    assert!(
        lay_out(
            &[],
            date("2026-12-02"),
            date("2026-12-11"),
            &Calendar::default(),
            OnBreak::Wait
        )
        .is_empty()
    );
}

/// November 1, 2026 is a Sunday, and February 2027 begins on a Monday and has
/// four weeks: any calendar.
#[test]
fn a_month_has_the_weeks_that_touch_it() {
    for (day, mondays) in [
        ("2026-11-26", "10-26 11-02 11-09 11-16 11-23 11-30"),
        ("2027-02-14", "02-01 02-08 02-15 02-22"),
        ("2028-02-29", "01-31 02-07 02-14 02-21 02-28"),
    ] {
        let found: Vec<String> = month_weeks(date(day))
            .iter()
            .map(|day| day.to_string()[5..].to_owned())
            .collect();
        assert_eq!(found.join(" "), mondays, "{day}");
    }
    assert_eq!(date("2026-12-15").first_of_next_month(), date("2027-01-01"));
    assert_eq!(date("2027-01-31").first_of_next_month(), date("2027-02-01"));
    assert_eq!(date("2027-03-31").first_of_last_month(), date("2027-02-01"));
}

#[test]
fn days_off_are_marked_and_unmarked() {
    let mut calendar = closed(&["2026-12-25", "2026-12-24"]);
    calendar.close(date("2026-12-25"), "Christmas".into());
    assert_eq!(calendar.no_school.len(), 2);
    assert_eq!(calendar.kind(date("2026-12-25")), DayKind::NoSchool);
    assert_eq!(calendar.kind(date("2026-12-26")), DayKind::Weekend);
    assert_eq!(calendar.kind(date("2026-12-23")), DayKind::School);
    calendar.open(date("2026-12-25"));
    assert_eq!(calendar.kind(date("2026-12-25")), DayKind::School);
}
