//! Meal patterns: how much of each component a meal or a week must offer.

use super::dated::{Condition, Dated, DatedTable, Switches};
use super::specification::Bound;
use crate::components::Component;
use crate::tables::TableError;
use crate::week::{Counted, Date, GradeGroup, MealKind, Service};
use rust_decimal::Decimal;
use serde::de::IntoDeserializer;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// What a pattern counts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Subject {
    /// A component or a subgroup.
    Of(Component),
    /// Vegetables of any subgroup beyond what the subgroups ask for.
    AdditionalVegetables,
    /// Grains and meats/meat alternates together, in any mix.
    GrainsOrMeats,
}

const ADDITIONAL: &str = "additional vegetables";
const GRAINS_OR_MEATS: &str = "grains or meats and meat alternates";

impl<'de> Deserialize<'de> for Subject {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let text = String::deserialize(deserializer)?;
        match text.as_str() {
            ADDITIONAL => Ok(Self::AdditionalVegetables),
            GRAINS_OR_MEATS => Ok(Self::GrainsOrMeats),
            component => Component::deserialize(component.into_deserializer()).map(Self::Of),
        }
    }
}

impl Serialize for Subject {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Of(component) => component.serialize(serializer),
            Self::AdditionalVegetables => serializer.serialize_str(ADDITIONAL),
            Self::GrainsOrMeats => serializer.serialize_str(GRAINS_OR_MEATS),
        }
    }
}

/// Over what time an amount is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Period {
    /// Each day by itself.
    Day,
    /// A school week of five days; shorter and longer ones in proportion.
    Week,
}

/// How binding an amount is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Force {
    /// It must be kept.
    Required,
    /// A help for planning; nothing follows from missing it.
    Guidance,
    /// One of several of which only some need to be kept, as in a snack.
    Choice,
}

/// One amount, as a row of the table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all(serialize = "camelCase"))]
pub struct MealPattern {
    /// Which meal.
    pub meal: MealKind,
    /// For whom.
    pub group: GradeGroup,
    /// What is counted.
    pub component: Subject,
    /// Over what time.
    pub period: Period,
    /// Minimum or maximum.
    pub bound: Bound,
    /// The amount, in `unit`.
    pub amount: Decimal,
    /// cup, oz eq or fl oz.
    pub unit: String,
    /// How binding it is.
    pub force: Force,
    /// Which meal a student might take counts.
    pub counted: Counted,
    /// In a week that is not of five days, the amount in proportion is rounded
    /// to a multiple of this.
    pub scaled_to: Option<Decimal>,
    /// First day in force.
    pub from: Date,
    /// Last day in force; open where none is set.
    pub until: Option<Date>,
    /// Only with a switch in this state.
    pub only_when: Option<Condition>,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where the figure was read.
    pub source: String,
    /// How sure the figure is.
    pub status: String,
    /// What is asked, in words.
    pub words: String,
}

impl Dated for MealPattern {
    fn from(&self) -> Date {
        self.from
    }

    fn until(&self) -> Option<Date> {
        self.until
    }

    fn only_when(&self) -> Option<&Condition> {
        self.only_when.as_ref()
    }

    fn same_limit(&self, other: &Self) -> bool {
        let subject = |row: &Self| {
            let is_minimum = row.bound == Bound::AtLeast;
            (row.meal, row.component, row.period, row.force, is_minimum)
        };
        subject(self) == subject(other) && self.group == other.group
    }

    fn problem(&self) -> Option<String> {
        if self.amount < Decimal::ZERO {
            return Some("the amount is below zero: enter zero or more".into());
        }
        if self.scaled_to.is_some_and(|step| step <= Decimal::ZERO) {
            return Some("scaled_to must be above zero, or left empty".into());
        }
        let unit = match self.component {
            Subject::Of(component) => component.unit(),
            Subject::AdditionalVegetables => Component::Vegetables.unit(),
            Subject::GrainsOrMeats => Component::Grains.unit(),
        };
        (self.unit != unit).then(|| {
            format!(
                "\"{}\" is not how this component is counted: enter it in {unit}",
                self.unit
            )
        })
    }
}

/// The table of meal patterns.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct MealPatterns(DatedTable<MealPattern>);

impl MealPatterns {
    /// Reads the table; all switches are on.
    ///
    /// # Errors
    /// When a row is incomplete, or two rows on the same amount are in force on
    /// the same day.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        DatedTable::from_csv("meal_patterns", text).map(Self)
    }

    /// Adds an office's own amounts, in the same form. They stand beside the
    /// others, also on the same component, and may be for groups that only the
    /// office has.
    ///
    /// # Errors
    /// As [`Self::from_csv`].
    pub fn and_own(self, text: &str) -> Result<Self, TableError> {
        DatedTable::from_csv("own meal patterns", text).map(|own| Self(self.0.and(own)))
    }

    /// The switches that rows ask about.
    pub fn switches(&self) -> impl Iterator<Item = &str> {
        self.0.switches()
    }

    /// The same table with the switches as an office has set them.
    pub fn with(self, switches: Switches) -> Self {
        Self(self.0.with(switches))
    }

    /// The amounts for a service on a date, of one force and period.
    pub fn in_force<'a>(
        &'a self,
        service: &'a Service,
        date: Date,
        force: Force,
        period: Period,
    ) -> impl Iterator<Item = &'a MealPattern> {
        self.0.in_force(date).filter(move |row| {
            row.meal == service.kind
                && row.group == service.group
                && row.force == force
                && row.period == period
        })
    }

    /// The groups that have a pattern for a meal, in table order.
    pub fn groups(&self, meal: MealKind) -> Vec<GradeGroup> {
        let mut groups: Vec<GradeGroup> = Vec::new();
        for row in self.0.rows().iter().filter(|row| row.meal == meal) {
            if !groups.contains(&row.group) {
                groups.push(row.group.clone());
            }
        }
        groups
    }

    /// All rows in table order.
    pub fn rows(&self) -> &[MealPattern] {
        self.0.rows()
    }
}
