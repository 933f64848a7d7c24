//! What rows of rules have in common: dates in force, and switches with which
//! an office settles which reading of the rules it follows.

use crate::tables::{self, Row, TableError};
use crate::week::{Date, GradeGroup};
use serde::de::DeserializeOwned;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::collections::BTreeSet;

/// A condition on a switch, written "whole milk act: on".
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
pub struct Condition {
    /// Name of the switch.
    pub switch: String,
    /// How it has to stand.
    pub on: bool,
}

impl Serialize for Condition {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let state = if self.on { "on" } else { "off" };
        serializer.collect_str(&format_args!("{}: {state}", self.switch))
    }
}

impl<'de> Deserialize<'de> for Condition {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        let (switch, on) = match text.rsplit_once(':') {
            Some((switch, state)) if state.trim() == "on" => (switch, true),
            Some((switch, state)) if state.trim() == "off" => (switch, false),
            _ => {
                return Err(serde::de::Error::custom(format!(
                    "\"{text}\" is no condition: write the switch's name, a colon, and on or off"
                )));
            }
        };
        Ok(Self {
            switch: switch.trim().to_owned(),
            on,
        })
    }
}

/// How the switches stand: each is on until it is turned off.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(transparent)]
pub struct Switches {
    off: BTreeSet<String>,
}

impl Switches {
    /// Turns a switch on or off.
    pub fn set(&mut self, switch: &str, on: bool) {
        if on {
            self.off.remove(switch);
        } else {
            self.off.insert(switch.to_owned());
        }
    }

    /// How a switch stands.
    pub fn is_on(&self, switch: &str) -> bool {
        !self.off.contains(switch)
    }

    fn allow(&self, condition: Option<&Condition>) -> bool {
        condition.is_none_or(|condition| self.is_on(&condition.switch) == condition.on)
    }
}

/// A row that is in force from a day on, perhaps until another.
pub trait Dated {
    /// First day in force.
    fn from(&self) -> Date;
    /// Last day in force; open where none is set.
    fn until(&self) -> Option<Date>;
    /// The condition on a switch, if it has one.
    fn only_when(&self) -> Option<&Condition>;
    /// True when two rows speak of the same limit, so that only one of them
    /// may be in force on a day.
    fn same_limit(&self, other: &Self) -> bool;
    /// What is wrong with the row in itself, and how to mend it.
    fn problem(&self) -> Option<String>;
}

/// True when the row is in force on `date` with the switches as they stand.
fn in_force(row: &impl Dated, date: Date, switches: &Switches) -> bool {
    row.from() <= date
        && row.until().is_none_or(|until| date <= until)
        && switches.allow(row.only_when())
}

/// Finds what else is wrong with a row.
type Also<'a, T> = &'a dyn Fn(&T) -> Option<String>;

fn read<T: Dated + DeserializeOwned>(
    table: &str,
    text: &str,
    also: Also<'_, T>,
) -> Result<Vec<T>, TableError> {
    let rows: Vec<Row<T>> = tables::read(table, text)?;
    for (index, Row { line, row }) in rows.iter().enumerate() {
        let problem = |problem: String| TableError {
            table: table.to_owned(),
            line: *line,
            problem,
        };
        let wrong = row.problem().or_else(|| dates_problem(row));
        if let Some(words) = wrong.or_else(|| also(row)) {
            return Err(problem(words));
        }
        if let Some(other) = rows[..index].iter().find(|other| overlap(row, &other.row)) {
            return Err(problem(format!(
                "in force on the same days as line {}: end one on the day before the other begins",
                other.line
            )));
        }
    }
    Ok(rows.into_iter().map(|row| row.row).collect())
}

/// A table of dated rows, with an office's own rows and switches.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DatedTable<T> {
    rows: Vec<T>,
    switches: Switches,
}

impl<T: Dated + DeserializeOwned> DatedTable<T> {
    /// Reads a table; all switches are on.
    ///
    /// # Errors
    /// When a row is incomplete, ends before it begins, or two rows on the same
    /// limit are in force on the same day.
    pub fn from_csv(table: &str, text: &str) -> Result<Self, TableError> {
        Self::checked(table, text, &|_| None)
    }

    /// Reads a table whose rows are looked at once more.
    ///
    /// # Errors
    /// As [`Self::from_csv`], and when `also` finds something wrong.
    pub fn checked(table: &str, text: &str, also: Also<'_, T>) -> Result<Self, TableError> {
        Ok(Self {
            rows: read(table, text, also)?,
            switches: Switches::default(),
        })
    }

    /// Adds an office's own rows. They stand beside the others, also where they
    /// speak of the same limit.
    pub fn and(mut self, own: Self) -> Self {
        self.rows.extend(own.rows);
        self
    }

    /// The same table with the switches as an office has set them.
    pub fn with(self, switches: Switches) -> Self {
        Self { switches, ..self }
    }

    /// All rows in table order, in force or not.
    pub fn rows(&self) -> &[T] {
        &self.rows
    }

    /// The switches that rows ask about.
    pub fn switches(&self) -> impl Iterator<Item = &str> {
        let conditions = self.rows.iter().filter_map(Dated::only_when);
        conditions.map(|condition| condition.switch.as_str())
    }

    /// The rows in force on a day.
    pub fn in_force(&self, date: Date) -> impl Iterator<Item = &T> {
        self.rows
            .iter()
            .filter(move |row| in_force(*row, date, &self.switches))
    }
}

/// What is wrong with the groups of a row, by the groups that its meal has.
pub fn group_problem(groups: &[GradeGroup], known: &[GradeGroup]) -> Option<String> {
    let stranger = groups.iter().find(|group| !known.contains(group))?;
    let known: Vec<&str> = known.iter().map(|group| group.0.as_str()).collect();
    // In parts with colons between, so that each can be said in another language.
    Some(format!(
        "unknown grade group: \"{}\": enter one of those for this meal: {}",
        stranger.0,
        known.join(", ")
    ))
}

fn dates_problem(row: &impl Dated) -> Option<String> {
    let until = row.until().filter(|until| *until < row.from())?;
    Some(format!(
        "ends on {until}, before it begins on {}: exchange the dates",
        row.from()
    ))
}

fn overlap<T: Dated>(a: &T, b: &T) -> bool {
    let exclude_each_other = matches!(
        (a.only_when(), b.only_when()),
        (Some(a), Some(b)) if a.switch == b.switch && a.on != b.on
    );
    a.same_limit(b)
        && !exclude_each_other
        && a.until().is_none_or(|until| b.from() <= until)
        && b.until().is_none_or(|until| a.from() <= until)
}
