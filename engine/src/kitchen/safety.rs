//! Cooking and holding temperatures that a recipe's foods call for.

use crate::foods::{Food, FoodGroup};
use crate::tables::{self, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// Shown with every temperature.
pub const CAUTION: &str = "Figures for planning, from the sources named. State and local food codes, your food safety plan and the advice of your health authority come first. Check with a clean, calibrated thermometer in the thickest part.";

/// Which set of figures a row belongs to. Consumer advice and the retail code
/// differ and are never mixed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Guidance {
    /// USDA FSIS advice to consumers.
    #[serde(rename = "consumer")]
    Consumer,
    /// FDA's model Food Code for retail and food service.
    #[serde(rename = "food code")]
    FoodCode,
}

/// What the temperature is for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Step {
    /// Lowest internal temperature of cooking.
    Cook,
    /// Holding for service.
    Hold,
    /// Cooling after cooking.
    Cool,
    /// Reheating what was cooled.
    Reheat,
    /// Keeping and date marking.
    Date,
}

/// How a dish waits for service.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Held {
    /// Hot.
    Hot,
    /// Cold.
    Cold,
}

/// One row of the table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct SafetyStep {
    /// Which set it belongs to.
    pub guidance: Guidance,
    /// What it is for.
    pub step: Step,
    /// Which food, in words.
    pub what: String,
    #[serde(skip_serializing)]
    terms: String,
    #[serde(skip_serializing)]
    groups: String,
    /// Only where the dish is held so; nothing for any dish.
    #[serde(skip_serializing)]
    held: Option<Held>,
    /// Temperature, °C, converted from the published °F.
    pub celsius: Decimal,
    /// Temperature, °F, as published.
    pub fahrenheit: Decimal,
    /// How long, in words; may be empty.
    pub duration: String,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where the figure was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
}

impl SafetyStep {
    /// Whether the row speaks of all food, whatever it is.
    fn is_general(&self) -> bool {
        self.terms.is_empty() && self.groups.is_empty()
    }

    fn speaks_of(&self, food: &Food) -> bool {
        let description = food.description.to_lowercase();
        let in_group = list(&self.groups).any(|code| code.parse() == Ok(food.group.0));
        let named = list(&self.terms).any(|term| {
            description
                .split(|c: char| !c.is_alphanumeric())
                .any(|word| word == term)
        });
        match (self.terms.is_empty(), self.groups.is_empty()) {
            (true, _) => in_group,
            (_, true) => named,
            _ => in_group && named,
        }
    }
}

fn list(text: &str) -> impl Iterator<Item = &str> {
    text.split(';')
        .map(str::trim)
        .filter(|item| !item.is_empty())
}

/// The table of temperatures.
#[derive(Debug, Clone)]
pub struct FoodSafety(Vec<SafetyStep>);

impl FoodSafety {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, names a group that is no code, or its two
    /// temperatures disagree.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "food_safety";
        let mut rows = Vec::new();
        for tables::Row { line, row } in tables::read::<SafetyStep>(TABLE, text)? {
            check(&row).map_err(|problem| TableError {
                table: TABLE.to_owned(),
                line,
                problem,
            })?;
            rows.push(row);
        }
        Ok(Self(rows))
    }

    /// All rows, in table order.
    pub fn rows(&self) -> &[SafetyStep] {
        &self.0
    }

    /// What to cook, hold, cool and reheat a dish of these foods by: for each
    /// food the hottest cooking row that speaks of it, hottest first within
    /// each set, then the general rows. Ground meat is no intact meat, though
    /// both rows name its group. Rows for dishes that are held otherwise than
    /// this one are left out, where it is known how.
    pub fn steps_for<'a>(&'a self, foods: &[&Food], held: Option<Held>) -> Vec<&'a SafetyStep> {
        let is_of_dish =
            |row: &&SafetyStep| row.held.is_none() || held.is_none() || row.held == held;
        let mut steps: Vec<&SafetyStep> = self
            .0
            .iter()
            .filter(is_of_dish)
            .filter(|row| row.is_general() || foods.iter().any(|food| self.is_hottest(row, food)))
            .collect();
        steps.sort_by(|a, b| {
            (a.guidance, a.step)
                .cmp(&(b.guidance, b.step))
                .then_with(|| b.fahrenheit.cmp(&a.fahrenheit))
        });
        steps
    }

    /// Whether a row speaks of a food, and no hotter one of its set does.
    fn is_hottest(&self, row: &SafetyStep, food: &Food) -> bool {
        let of_set = |other: &&SafetyStep| {
            (other.guidance, other.step) == (row.guidance, row.step) && other.speaks_of(food)
        };
        let hottest = self.0.iter().filter(of_set).map(|row| row.fahrenheit).max();
        row.speaks_of(food) && hottest == Some(row.fahrenheit)
    }
}

fn check(row: &SafetyStep) -> Result<(), String> {
    if let Some(code) = list(&row.groups).find(|code| code.parse().map(FoodGroup).is_err()) {
        return Err(format!("\"{code}\" is not a food group code"));
    }
    let converted = (row.fahrenheit - Decimal::from(32)) * Decimal::from(5) / Decimal::from(9);
    if (converted - row.celsius).abs() > Decimal::new(5, 2) {
        return Err(format!(
            "{} °F is not {} °C: enter {} in celsius",
            row.fahrenheit,
            row.celsius,
            crate::exact::round_half_up(converted, crate::exact::Digits(1))
        ));
    }
    Ok(())
}
