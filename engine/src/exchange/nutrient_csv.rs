//! Figures as tables, for a spreadsheet. A figure of which nothing is known
//! has an empty cell, never a nought; beside each stands how much of the food
//! it is known for.

use super::cells::harmless;
use crate::analysis::RecipeAnalysis;
use crate::exact::rounding::round_down_to;
use crate::exact::{Digits, FigureStatus, PartialSum, round_half_up};
use crate::foods::{FoodTable, Nutrient};
use crate::reference::WeekStudy;
use rust_decimal::Decimal;

/// The figures of one recipe, per serving and per 100 g.
pub fn of_recipe(foods: &FoodTable, title: &str, analysis: &RecipeAnalysis) -> String {
    let mut table = Table::new(&[
        "recipe",
        "nutrient number",
        "nutrient",
        "unit",
        "per serving",
        "per 100 g",
        "known",
        "known for, % of weight",
    ]);
    for nutrient in foods.nutrients() {
        let Some(serving) = analysis.per_serving(nutrient.id) else {
            continue;
        };
        let per_100_g = analysis.per_100_g(nutrient.id);
        table.row([
            harmless(title),
            nutrient.id.0.to_string(),
            harmless(&nutrient.name),
            harmless(&nutrient.unit),
            figure(&serving, nutrient),
            per_100_g.map_or_else(String::new, |sum| figure(&sum, nutrient)),
            state(&serving).to_owned(),
            coverage(&serving),
        ]);
    }
    table.text()
}

/// The averages of a week's services, per planned meal.
pub fn of_week(foods: &FoodTable, title: &str, study: &WeekStudy) -> String {
    let mut table = Table::new(&[
        "week",
        "meal",
        "grade group",
        "days",
        "planned meals",
        "nutrient number",
        "nutrient",
        "unit",
        "average per meal",
        "known",
        "known for, % of weight",
    ]);
    for service in &study.services {
        let average = &service.average;
        for row in &average.nutrients {
            let mut nutrients = foods.nutrients().iter();
            let Some(nutrient) = nutrients.find(|nutrient| nutrient.id == row.nutrient) else {
                continue;
            };
            table.row([
                harmless(title),
                average.service.kind.to_string(),
                harmless(&average.service.group.0),
                average.days.len().to_string(),
                average.planned_meals.servings().normalize().to_string(),
                nutrient.id.0.to_string(),
                harmless(&nutrient.name),
                harmless(&nutrient.unit),
                figure(&row.amount, nutrient),
                state(&row.amount).to_owned(),
                coverage(&row.amount),
            ]);
        }
    }
    table.text()
}

/// With the decimals of the dataset; what is known of an incomplete sum is
/// rounded down, so that it is surely reached.
fn figure(sum: &PartialSum, nutrient: &Nutrient) -> String {
    let Digits(places) = nutrient.decimals;
    let value = match sum.status() {
        FigureStatus::Missing => return String::new(),
        FigureStatus::Known => round_half_up(sum.known, nutrient.decimals),
        FigureStatus::LowerBound { .. } => round_down_to(sum.known, Decimal::new(1, places)),
    };
    format!("{value:.places$}", places = places as usize)
}

fn state(sum: &PartialSum) -> &'static str {
    match sum.status() {
        FigureStatus::Known => "known",
        FigureStatus::LowerBound { .. } => "at least",
        FigureStatus::Missing => "unknown",
    }
}

/// Rounded down, so that only all of it is 100. Nothing is said of a sum with
/// amounts that have no weight: no share of it is known.
fn coverage(sum: &PartialSum) -> String {
    if sum.unweighed > 0 {
        return String::new();
    }
    let percent = sum.coverage() * Decimal::ONE_HUNDRED;
    round_down_to(percent, Decimal::new(1, 1))
        .normalize()
        .to_string()
}

/// A table that is being written.
struct Table(csv::Writer<Vec<u8>>);

impl Table {
    fn new(header: &[&str]) -> Self {
        let mut table = csv::WriterBuilder::new()
            .terminator(csv::Terminator::CRLF)
            .from_writer(Vec::new());
        // Writing into memory does not fail.
        drop(table.write_record(header));
        Self(table)
    }

    fn row<const N: usize>(&mut self, cells: [String; N]) {
        drop(self.0.write_record(cells));
    }

    /// With the mark by which spreadsheets know UTF-8.
    fn text(self) -> String {
        let bytes = self.0.into_inner().unwrap_or_default();
        format!("\u{feff}{}", String::from_utf8_lossy(&bytes))
    }
}
