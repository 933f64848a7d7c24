//! What an office keeps of the school year.

use crate::week::{Date, WeekId};
use serde::{Deserialize, Serialize};

/// A day without school.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct NoSchool {
    /// The day.
    pub date: Date,
    /// Why, in words; may be empty.
    #[serde(default)]
    pub words: String,
}

/// A cycle menu's name inside the book.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct CycleId(pub String);

/// What a week without any school does to a cycle.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum OnBreak {
    /// The cycle waits: its next week comes after the break.
    #[default]
    Wait,
    /// The cycle runs on: the week that falls into the break is not served.
    RunOn,
}

/// Weeks of menus that follow each other and begin again.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Cycle {
    /// Name inside the book.
    pub id: CycleId,
    /// Title as printed.
    pub title: String,
    /// Its weeks in order.
    pub weeks: Vec<WeekId>,
    /// What a week without school does.
    #[serde(default)]
    pub on_break: OnBreak,
}

/// Days without school, and cycle menus.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", default)]
pub struct Calendar {
    /// Days without school, in order.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub no_school: Vec<NoSchool>,
    /// Cycle menus in the order of the book.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub cycles: Vec<Cycle>,
}

impl Calendar {
    /// Whether nothing is kept.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// The day without school, if this is one.
    pub fn no_school(&self, date: Date) -> Option<&NoSchool> {
        self.no_school.iter().find(|day| day.date == date)
    }

    /// Marks a day, or changes why.
    pub fn close(&mut self, date: Date, words: String) {
        self.no_school.retain(|day| day.date != date);
        self.no_school.push(NoSchool { date, words });
        self.no_school.sort_by_key(|day| day.date);
    }

    /// Takes the mark off a day.
    pub fn open(&mut self, date: Date) {
        self.no_school.retain(|day| day.date != date);
    }

    /// A cycle by its name.
    pub fn cycle(&self, id: &CycleId) -> Option<&Cycle> {
        self.cycles.iter().find(|cycle| cycle.id == *id)
    }
}
