//! Rows of the rule tables as lines to read.

use super::words;
use crate::language::{Say, of_table};
use crate::named;
use crate::views::week;
use engine::rules::{
    Condition, DietarySpecification, Force, Kind, MealPattern, Period, Switches, WeekRule,
};
use engine::week::Date;

/// A row in words.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// What is asked.
    pub words: String,
    /// The limit; empty where the rule has none.
    pub limit: String,
    /// First day in force.
    pub from: Date,
    /// Days in force, and the switch that it depends on.
    pub when: String,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where it was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
}

impl From<&DietarySpecification> for Line {
    fn from(row: &DietarySpecification) -> Self {
        Self {
            words: of_table(&row.words),
            limit: week::limit(row.bound, row.limit, &row.unit),
            from: row.from,
            when: when(row.from, row.until, row.only_when.as_ref()),
            paragraph: row.paragraph.clone(),
            source: row.source.clone(),
            status: row.status.clone(),
        }
    }
}

impl From<&MealPattern> for Line {
    fn from(row: &MealPattern) -> Self {
        Self {
            words: of_table(&row.words),
            limit: week::limit(row.bound, row.amount, &row.unit),
            from: row.from,
            when: when(row.from, row.until, row.only_when.as_ref()),
            paragraph: row.paragraph.clone(),
            source: row.source.clone(),
            status: row.status.clone(),
        }
    }
}

impl From<&WeekRule> for Line {
    fn from(row: &WeekRule) -> Self {
        let limit = row.limit.zip(row.bound);
        let limit = limit.map(|(limit, bound)| week::limit(bound, limit, &row.unit));
        // Rows that differ in nothing else differ in their component.
        let words = match (row.kind, row.component) {
            (Kind::SurplusCountsAsOther, Some(component)) => words::of_component(
                &named::component(component).to_string(),
                &of_table(&row.words),
            ),
            _ => of_table(&row.words),
        };
        Self {
            words,
            limit: limit.unwrap_or_default(),
            from: row.from,
            when: when(row.from, row.until, row.only_when.as_ref()),
            paragraph: row.paragraph.clone(),
            source: row.source.clone(),
            status: row.status.clone(),
        }
    }
}

fn when(from: Date, until: Option<Date>, condition: Option<&Condition>) -> String {
    let days = words::days_in_force(from, until);
    match condition {
        None => days,
        Some(condition) => words::while_switch(&days, &condition.switch, condition.on),
    }
}

/// Whether a row's switch stands as it needs.
pub fn allowed(condition: Option<&Condition>, switches: &Switches) -> bool {
    condition.is_none_or(|condition| switches.is_on(&condition.switch) == condition.on)
}

/// Under which heading an amount stands.
pub fn heading(force: Force, period: Period) -> Say {
    match (force, period) {
        (Force::Required, Period::Day) => words::EACH_DAY,
        (Force::Required, Period::Week) => words::EACH_WEEK,
        (Force::Choice, _) => words::OF_WHICH_SOME,
        (Force::Guidance, _) => words::GUIDANCE,
    }
}
