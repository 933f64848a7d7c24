//! Rules on what a week of meals offers, besides amounts: shares, options and
//! product limits.

use super::dated::{Condition, Dated, DatedTable, Switches, group_problem};
use super::pattern::{MealPatterns, Period};
use super::specification::Bound;
use crate::components::{Component, Mark};
use crate::tables::{List, TableError};
use crate::week::{Date, GradeGroup, MealKind, Service};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What a rule looks at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Kind {
    /// The marked part of all offered of a component, in percent.
    #[serde(rename = "share of offerings")]
    ShareOfOfferings,
    /// The most that a student can take of the marked part of a component.
    #[serde(rename = "largest amount")]
    LargestAmount,
    /// Different foods of a component to choose from, with all the marks.
    #[serde(rename = "options")]
    Options,
    /// Every food of a component has one of the marks.
    #[serde(rename = "only products marked")]
    OnlyProductsMarked,
    /// Added sugars of every food with the mark, per amount of the food.
    #[serde(rename = "added sugars")]
    AddedSugars,
    /// Components of a choice that are offered in their amounts, without
    /// counting food with the mark.
    #[serde(rename = "components met")]
    ComponentsMet,
    /// Vegetables may stand in for fruits, and how different they must be.
    #[serde(rename = "vegetables for fruits")]
    VegetablesForFruits,
    /// More of a subgroup than it asks for counts toward other vegetables.
    #[serde(rename = "surplus counts as other")]
    SurplusCountsAsOther,
    /// In a week of fewer than five days the subgroups keep their amounts.
    #[serde(rename = "subgroups unchanged")]
    SubgroupsUnchanged,
    /// Days of the week that serve the meal.
    #[serde(rename = "days")]
    Days,
    /// Meals of a day, of any kind, that offer food with the mark to the group.
    #[serde(rename = "meals with")]
    MealsWith,
}

/// One rule, as a row of the table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all(serialize = "camelCase"))]
pub struct WeekRule {
    /// Name of the rule.
    pub id: String,
    /// Which meal.
    pub meal: MealKind,
    /// For whom; for all, if none is named.
    pub groups: List<GradeGroup>,
    /// Over what time.
    pub period: Period,
    /// What it looks at.
    pub kind: Kind,
    /// Of which component.
    pub component: Option<Component>,
    /// Food with which marks.
    pub marks: List<Mark>,
    /// Minimum or maximum.
    pub bound: Option<Bound>,
    /// The limit, in `unit`.
    pub limit: Option<Decimal>,
    /// Unit of the limit.
    pub unit: String,
    /// The limit is for so much …
    pub per: Option<Decimal>,
    /// … of this unit.
    pub per_unit: String,
    /// First day in force.
    pub from: Date,
    /// Last day in force; open where none is set.
    pub until: Option<Date>,
    /// Only with a switch in this state.
    pub only_when: Option<Condition>,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where it was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
    /// What is asked, in words.
    pub words: String,
}

impl WeekRule {
    fn needs(&self) -> (bool, bool, bool, bool) {
        let limit = !matches!(
            self.kind,
            Kind::OnlyProductsMarked | Kind::SurplusCountsAsOther | Kind::SubgroupsUnchanged
        );
        let component = matches!(
            self.kind,
            Kind::ShareOfOfferings
                | Kind::LargestAmount
                | Kind::Options
                | Kind::OnlyProductsMarked
                | Kind::SurplusCountsAsOther
        );
        let mark = matches!(
            self.kind,
            Kind::ShareOfOfferings
                | Kind::LargestAmount
                | Kind::OnlyProductsMarked
                | Kind::AddedSugars
                | Kind::MealsWith
        );
        let per = matches!(self.kind, Kind::AddedSugars | Kind::VegetablesForFruits);
        (limit, component, mark, per)
    }

    /// True when the rule speaks of a service.
    pub fn speaks_of(&self, service: &Service) -> bool {
        self.meal == service.kind
            && (self.groups.is_empty() || self.groups.contains(&service.group))
    }
}

impl Dated for WeekRule {
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
        let subject = |row: &Self| (row.meal, row.kind, row.component, row.bound, row.period);
        let shares_a_group = self.groups.is_empty()
            || other.groups.is_empty()
            || self.groups.iter().any(|group| other.groups.contains(group));
        // What one rule allows, another may not allow otherwise.
        let marks = self.marks == other.marks || self.kind == Kind::OnlyProductsMarked;
        subject(self) == subject(other) && marks && shares_a_group
    }

    fn problem(&self) -> Option<String> {
        let (limit, component, mark, per) = self.needs();
        if limit && (self.limit.is_none() || self.bound.is_none()) {
            return Some(
                "needs a bound and a limit: enter \"at least\" or \"at most\" and a number".into(),
            );
        }
        if component && self.component.is_none() {
            return Some("needs a component: enter the one that is counted".into());
        }
        if mark && self.marks.is_empty() {
            return Some("needs a mark: enter what food is meant, such as juice".into());
        }
        let positive = |value: Option<Decimal>| value.is_some_and(|value| value > Decimal::ZERO);
        (per && !positive(self.per))
            .then(|| "needs per and per_unit: enter for how much the limit is".into())
    }
}

/// The table of rules on a week.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WeekRules(DatedTable<WeekRule>);

impl WeekRules {
    /// Reads the table; all switches are on.
    ///
    /// # Errors
    /// When a row is incomplete, or two rows on the same limit are in force on
    /// the same day.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        DatedTable::from_csv("week_rules", text).map(Self)
    }

    /// Adds an office's own rules, in the same form. They stand beside the
    /// others, also on the same limit.
    ///
    /// # Errors
    /// As [`Self::own`].
    pub fn and_own(self, text: &str, patterns: &MealPatterns) -> Result<Self, TableError> {
        Self::own(text, patterns).map(|own| Self(self.0.and(own.0)))
    }

    /// Reads an office's own table.
    ///
    /// # Errors
    /// As [`Self::from_csv`], and when a row is for a group that no meal
    /// pattern has: it would never be looked at.
    pub fn own(text: &str, patterns: &MealPatterns) -> Result<Self, TableError> {
        DatedTable::checked("own week rules", text, &|row: &WeekRule| {
            group_problem(&row.groups, &patterns.groups(row.meal))
        })
        .map(Self)
    }

    /// The switches that rows ask about.
    pub fn switches(&self) -> impl Iterator<Item = &str> {
        self.0.switches()
    }

    /// The same table with the switches as an office has set them.
    pub fn with(self, switches: Switches) -> Self {
        Self(self.0.with(switches))
    }

    /// The rules for a service on a date.
    pub fn in_force<'a>(
        &'a self,
        service: &'a Service,
        date: Date,
    ) -> impl Iterator<Item = &'a WeekRule> {
        self.0
            .in_force(date)
            .filter(move |rule| rule.speaks_of(service))
    }

    /// The rules of one kind for a service on a date.
    pub fn of_kind<'a>(
        &'a self,
        kind: Kind,
        service: &'a Service,
        date: Date,
    ) -> impl Iterator<Item = &'a WeekRule> {
        self.in_force(service, date)
            .filter(move |rule| rule.kind == kind)
    }

    /// All rows in table order.
    pub fn rows(&self) -> &[WeekRule] {
        self.0.rows()
    }
}
