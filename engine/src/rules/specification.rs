//! Dietary specifications: limits on the average meal of a week.

use crate::exact::rounding::guarded;
use crate::foods::NutrientId;
use crate::tables::{self, Row, TableError};
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
    /// First day in force.
    pub from: Date,
    /// Last day in force; open where none is set.
    pub until: Option<Date>,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where the figure was read.
    pub source: String,
    /// How sure the figure is: "verified" or "from memory".
    pub status: String,
    /// What is limited, in words.
    pub words: String,
}

impl DietarySpecification {
    fn in_force(&self, date: Date) -> bool {
        self.from <= date && self.until.is_none_or(|until| date <= until)
    }

    /// Two rows speak of the same limit when these agree.
    fn subject(&self) -> (MealKind, &GradeGroup, NutrientId, Basis, bool) {
        let is_minimum = self.bound == Bound::AtLeast;
        (
            self.meal,
            &self.group,
            self.nutrient,
            self.basis,
            is_minimum,
        )
    }

    fn overlaps(&self, other: &Self) -> bool {
        self.subject() == other.subject()
            && self.until.is_none_or(|until| other.from <= until)
            && other.until.is_none_or(|until| self.from <= until)
    }
}

/// The table of dietary specifications.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Specifications(Vec<DietarySpecification>);

const TABLE: &str = "dietary_specifications";

impl Specifications {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, or two rows on the same limit are in force on
    /// the same day.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        let rows: Vec<Row<DietarySpecification>> = tables::read(TABLE, text)?;
        for (index, Row { line, row }) in rows.iter().enumerate() {
            check(row).map_err(|problem| problem_at(*line, problem))?;
            if let Some(other) = rows[..index].iter().find(|other| row.overlaps(&other.row)) {
                return Err(problem_at(
                    *line,
                    format!(
                        "in force on the same days as line {}: end one on the day before the other begins",
                        other.line
                    ),
                ));
            }
        }
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    /// The limits for a service on a date.
    pub fn in_force<'a>(
        &'a self,
        service: &'a Service,
        date: Date,
    ) -> impl Iterator<Item = &'a DietarySpecification> {
        self.0.iter().filter(move |row| {
            row.meal == service.kind && row.group == service.group && row.in_force(date)
        })
    }

    /// The groups that have limits for a meal, in table order.
    pub fn groups(&self, meal: MealKind) -> Vec<GradeGroup> {
        let mut groups: Vec<GradeGroup> = Vec::new();
        for row in self.0.iter().filter(|row| row.meal == meal) {
            if !groups.contains(&row.group) {
                groups.push(row.group.clone());
            }
        }
        groups
    }
}

fn problem_at(line: u64, problem: String) -> TableError {
    TableError {
        table: TABLE.to_owned(),
        line,
        problem,
    }
}

fn check(row: &DietarySpecification) -> Result<(), String> {
    if row.basis == Basis::ShareOfEnergy && row.kcal_per_gram.is_none() {
        return Err("a share of energy needs kcal_per_gram: enter 9 for fat, 4 for sugars".into());
    }
    match row.until {
        Some(until) if until < row.from => Err(format!(
            "ends on {until}, before it begins on {}: exchange the dates",
            row.from
        )),
        _ => Ok(()),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const HEADER: &str = "meal,group,nutrient,basis,kcal_per_gram,bound,limit,unit,from,until,paragraph,source,status,words";

    fn table(rows: &[&str]) -> Result<Specifications, TableError> {
        Specifications::from_csv(&format!("{HEADER}\n{}\n", rows.join("\n")))
    }

    #[test]
    fn the_committed_table_reads() {
        let table = Specifications::from_csv(nutrient_data::rules::DIETARY_SPECIFICATIONS).unwrap();
        let groups = table.groups(MealKind::Lunch);
        assert_eq!(groups.len(), 3);
    }

    #[test]
    fn overlapping_dates_are_refused() {
        let error = table(&[
            "lunch,K-5,307,per meal,,at most,1110,mg,2024-07-01,2027-07-01,p,s,verified,sodium",
            "lunch,K-5,307,per meal,,at most,935,mg,2027-07-01,,p,s,verified,sodium",
        ])
        .unwrap_err();
        assert_eq!(error.line, 3);
        assert!(error.to_string().contains("line 2"), "{error}");
    }

    #[test]
    fn damaged_rows_name_their_line() {
        for (row, word) in [
            (
                "lunch,K-5,307,per meal,,at most,much,mg,2024-07-01,,p,s,v,w",
                "limit",
            ),
            (
                "lunch,K-5,307,per meal,,at most,1,mg,2024-02-30,,p,s,v,w",
                "calendar",
            ),
            (
                "lunch,K-5,606,share of energy,,below,10,%,2024-07-01,,p,s,v,w",
                "kcal_per_gram",
            ),
            (
                "lunch,K-5,307,per meal,,at most,1,mg,2024-07-01,2023-07-01,p,s,v,w",
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
