//! Dietary specifications: limits on the average meal of a week.

use super::dated::{Condition, Dated, DatedTable, Switches, group_problem};
use super::pattern::MealPatterns;
use crate::exact::rounding::guarded;
use crate::foods::NutrientId;
use crate::tables::TableError;
use crate::week::{Date, GradeGroup, MealKind, Service};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What of the average meal is limited.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Basis {
    /// The amount in the average meal, in the nutrient's unit.
    #[serde(rename = "per meal")]
    PerMeal,
    /// The nutrient's energy as percent of the average meal's energy.
    #[serde(rename = "share of energy")]
    ShareOfEnergy,
}

/// On which side of the limit a figure must lie.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Bound {
    /// Not less than the limit.
    #[serde(rename = "at least")]
    AtLeast,
    /// Not more than the limit.
    #[serde(rename = "at most")]
    AtMost,
    /// Less than the limit.
    #[serde(rename = "below")]
    Below,
}

impl Bound {
    /// Whether a figure, free of the noise of its divisions, lies on the right
    /// side of the limit.
    pub fn holds(self, figure: Decimal, limit: Decimal) -> bool {
        let figure = guarded(figure);
        match self {
            Self::AtLeast => figure >= limit,
            Self::AtMost => figure <= limit,
            Self::Below => figure < limit,
        }
    }
}

/// What the figure leaves out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum LeftOut {
    /// What fluid milk brings.
    #[serde(rename = "fluid milk")]
    FluidMilk,
}

/// One limit, as a row of the table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct DietarySpecification {
    /// Which meal.
    pub meal: MealKind,
    /// For whom.
    pub group: GradeGroup,
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// What of it is limited.
    pub basis: Basis,
    /// Energy of a gram of it, kcal; for a share of energy.
    pub kcal_per_gram: Option<Decimal>,
    /// On which side of the limit to be.
    pub bound: Bound,
    /// The limit, in `unit`.
    pub limit: Decimal,
    /// kcal, mg or percent.
    pub unit: String,
    /// What the figure leaves out.
    pub leaves_out: Option<LeftOut>,
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
    /// How sure the figure is: "verified" or "from memory".
    pub status: String,
    /// What is limited, in words.
    pub words: String,
}

impl Dated for DietarySpecification {
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
            (row.meal, row.nutrient, row.basis, is_minimum)
        };
        subject(self) == subject(other) && self.group == other.group
    }

    fn problem(&self) -> Option<String> {
        (self.basis == Basis::ShareOfEnergy && self.kcal_per_gram.is_none())
            .then(|| "a share of energy needs kcal_per_gram: enter 9 for fat, 4 for sugars".into())
    }
}

/// The table of dietary specifications.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Specifications(DatedTable<DietarySpecification>);

impl Specifications {
    /// Reads the table; all switches are on.
    ///
    /// # Errors
    /// When a row is incomplete, or two rows on the same limit are in force on
    /// the same day.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        DatedTable::from_csv("dietary_specifications", text).map(Self)
    }

    /// Adds an office's own limits, in the same form. They stand beside the
    /// others, also on the same nutrient.
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
        DatedTable::checked("own dietary limits", text, &|row: &DietarySpecification| {
            group_problem(std::slice::from_ref(&row.group), &patterns.groups(row.meal))
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

    /// The limits for a service on a date.
    pub fn in_force<'a>(
        &'a self,
        service: &Service,
        date: Date,
    ) -> impl Iterator<Item = &'a DietarySpecification> {
        self.0
            .in_force(date)
            .filter(move |row| row.meal == service.kind && row.group == service.group)
    }

    /// The nutrients of which some limit leaves out what fluid milk brings.
    pub fn leaving_out_milk(&self) -> Vec<NutrientId> {
        let rows = self.0.rows().iter();
        let mut nutrients: Vec<NutrientId> = rows
            .filter(|row| row.leaves_out == Some(LeftOut::FluidMilk))
            .map(|row| row.nutrient)
            .collect();
        nutrients.sort();
        nutrients.dedup();
        nutrients
    }

    /// All rows in table order.
    pub fn rows(&self) -> &[DietarySpecification] {
        self.0.rows()
    }

    /// The groups that have limits for a meal, in table order.
    pub fn groups(&self, meal: MealKind) -> Vec<GradeGroup> {
        let mut groups: Vec<GradeGroup> = Vec::new();
        for row in self.0.rows().iter().filter(|row| row.meal == meal) {
            if !groups.contains(&row.group) {
                groups.push(row.group.clone());
            }
        }
        groups
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEADER: &str = "meal,group,nutrient,basis,kcal_per_gram,bound,limit,unit,leaves_out,from,until,only_when,paragraph,source,status,words";

    fn table(rows: &[&str]) -> Result<Specifications, TableError> {
        Specifications::from_csv(&format!("{HEADER}\n{}\n", rows.join("\n")))
    }

    #[test]
    fn the_committed_table_reads() {
        let table = Specifications::from_csv(nutrient_data::rules::DIETARY_SPECIFICATIONS).unwrap();
        let groups = table.groups(MealKind::Lunch);
        let names: Vec<&str> = groups.iter().map(|group| group.0.as_str()).collect();
        assert_eq!(names, ["K-5", "6-8", "9-12", "K-8"]);
    }

    #[test]
    fn overlapping_dates_are_refused() {
        let error = table(&[
            "lunch,K-5,307,per meal,,at most,1110,mg,,2024-07-01,2027-07-01,,p,s,verified,sodium",
            "lunch,K-5,307,per meal,,at most,935,mg,,2027-07-01,,,p,s,verified,sodium",
        ])
        .unwrap_err();
        assert_eq!(error.line, 3);
        assert!(error.to_string().contains("line 2"), "{error}");
    }

    /// Whole Milk for Healthy Kids Act of 2025, signed on 14 January 2026: from
    /// that day saturated fat at lunch leaves out fluid milk, unless the office
    /// turns the Act off.
    #[test]
    fn the_act_is_a_dated_row_with_a_switch() {
        let table = Specifications::from_csv(nutrient_data::rules::DIETARY_SPECIFICATIONS).unwrap();
        let mut off = Switches::default();
        off.set("whole milk act", false);
        assert!(table.switches().all(|switch| switch == "whole milk act"));
        assert!(table.switches().next().is_some());
        let lunch = Service {
            kind: MealKind::Lunch,
            group: GradeGroup("K-5".into()),
        };
        for (table, date, left_out) in [
            (&table, "2026-01-13", None),
            (&table, "2026-01-14", Some(LeftOut::FluidMilk)),
            (&table.clone().with(off), "2026-01-14", None),
        ] {
            let fat: Vec<_> = table
                .in_force(&lunch, date.parse().unwrap())
                .filter(|row| row.nutrient == NutrientId::SATURATED_FAT)
                .map(|row| row.leaves_out)
                .collect();
            assert_eq!(fat, [left_out], "{date}");
        }
    }

    #[test]
    fn an_office_adds_its_own_limits() {
        let table = Specifications::from_csv(nutrient_data::rules::DIETARY_SPECIFICATIONS).unwrap();
        let own = "lunch,K-5,307,per meal,,at most,900,mg,,2026-08-01,,,board policy,s,own,sodium";
        let patterns = MealPatterns::from_csv(nutrient_data::rules::MEAL_PATTERNS).unwrap();
        let text = format!("{HEADER}\n{own}\n");
        let table = table.and_own(&text, &patterns).unwrap();
        let lunch = Service {
            kind: MealKind::Lunch,
            group: GradeGroup("K-5".into()),
        };
        let sodium = table
            .in_force(&lunch, "2026-11-30".parse().unwrap())
            .filter(|row| row.nutrient == NutrientId::SODIUM);
        assert_eq!(sodium.count(), 2);
    }

    #[test]
    fn damaged_rows_name_their_line() {
        for (row, word) in [
            (
                "lunch,K-5,307,per meal,,at most,much,mg,,2024-07-01,,,p,s,v,w",
                "limit",
            ),
            (
                "lunch,K-5,307,per meal,,at most,1,mg,,2024-02-30,,,p,s,v,w",
                "calendar",
            ),
            (
                "lunch,K-5,606,share of energy,,below,10,%,,2024-07-01,,,p,s,v,w",
                "kcal_per_gram",
            ),
            (
                "lunch,K-5,307,per meal,,at most,1,mg,,2024-07-01,2023-07-01,,p,s,v,w",
                "exchange",
            ),
            ("lunch,K-5,307,per meal", "columns"),
        ] {
            let error = table(&[row]).unwrap_err();
            assert_eq!(error.line, 2, "{error}");
            assert!(
                error.to_string().contains(word) || word == "columns" || word == "limit",
                "{error}"
            );
        }
    }
}
