//! Which nutrients the panel lists, in which order and under which conditions.

use super::bands::{Bands, Figure, Rounding};
use super::{Audience, DailyValue, LABEL_NUTRIENTS};
use crate::foods::NutrientId;
use crate::rules::Citation;
use crate::tables::{self, Row, TableError};
use rust_decimal::Decimal;
use serde::{Deserialize, Deserializer, Serialize};

/// The parts of the panel between its heavy bars.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum RowGroup {
    /// Calories.
    #[serde(rename = "energy")]
    Energy,
    /// From total fat to protein.
    #[serde(rename = "main")]
    Main,
    /// Vitamins and minerals.
    #[serde(rename = "vitamin or mineral")]
    VitaminOrMineral,
}

/// Whether the full panel lists a nutrient.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Listed {
    /// On every full panel.
    #[serde(rename = "always")]
    Always,
    /// Where the office asks for it.
    #[serde(rename = "on request")]
    OnRequest,
}

/// Whether the simplified panel lists a nutrient.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum InSimplified {
    /// Also in an insignificant amount.
    #[serde(rename = "always")]
    Always,
    /// Only in a significant amount.
    #[serde(rename = "if significant")]
    IfSignificant,
}

/// Whether a row has a percent Daily Value.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum PercentRule {
    /// It has.
    #[serde(rename = "shown")]
    Shown,
    /// It has none.
    #[serde(rename = "none")]
    None,
    /// Only from an amount corrected for protein quality, and needed only for
    /// ages 1 to 3.
    #[serde(rename = "corrected")]
    Corrected,
}

/// In what an insignificant amount is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum MeasuredIn {
    /// The nutrient's unit.
    #[serde(rename = "amount")]
    Amount,
    /// Percent of the Daily Value.
    #[serde(rename = "percent")]
    Percent,
}

#[derive(Debug, Clone, PartialEq, Eq, Deserialize)]
struct NutrientRow {
    nutrient: NutrientId,
    name: String,
    in_text: String,
    unit: String,
    line: String,
    short_line: String,
    group: RowGroup,
    indent: u8,
    #[serde(deserialize_with = "yes_or_no")]
    bold: bool,
    listed: Listed,
    simplified: InSimplified,
    percent: PercentRule,
    #[serde(with = "rust_decimal::serde::str")]
    insignificant_below: Decimal,
    measured_in: MeasuredIn,
    omitted_by: Option<NutrientId>,
    #[serde(with = "rust_decimal::serde::str_option")]
    omitted_below: Option<Decimal>,
    #[serde(flatten)]
    citation: Citation,
}

fn yes_or_no<'de, D: Deserializer<'de>>(deserializer: D) -> Result<bool, D::Error> {
    match String::deserialize(deserializer)?.as_str() {
        "yes" => Ok(true),
        "no" => Ok(false),
        other => Err(serde::de::Error::custom(format!(
            "\"{other}\" is neither yes nor no"
        ))),
    }
}

/// When a row may be left out of the full panel and named below it instead.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Omission {
    /// Whose amount decides: saturated fat goes by total fat.
    pub by: NutrientId,
    /// The amount must be below this, measured as the row's own.
    pub below: Decimal,
}

/// What the label regulations say of one nutrient.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct LabelNutrient {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Name on the panel.
    pub name: String,
    /// Name inside a sentence.
    pub in_text: String,
    /// Unit on the panel: g, mg, mcg, mcg DFE; empty for calories.
    pub unit: String,
    /// The row's text, with `{}` for the amount.
    pub line: String,
    /// The same with the permitted abbreviations.
    pub short_line: String,
    /// Part of the panel.
    pub group: RowGroup,
    /// Level of indent.
    pub indent: u8,
    /// Whether the name is in bold type.
    pub bold: bool,
    /// Whether the full panel lists it.
    pub listed: Listed,
    /// Whether the simplified panel lists it.
    pub simplified: InSimplified,
    /// Whether it has a percent Daily Value.
    pub percent: PercentRule,
    /// Below this an amount is insignificant.
    pub insignificant_below: Decimal,
    /// In what that is measured.
    pub measured_in: MeasuredIn,
    /// When the full panel may leave it out.
    pub omission: Option<Omission>,
    /// Where the row's rule stands.
    pub citation: Citation,
    /// Rounding of its amount.
    pub amounts: Bands,
    daily_values: Vec<DailyValue>,
}

impl LabelNutrient {
    /// Its Daily Value for an audience, if the table has one.
    pub fn daily_value(&self, audience: Audience) -> Option<&DailyValue> {
        self.daily_values
            .iter()
            .find(|value| value.audience == audience)
    }
}

/// Reads the rows of the panel and joins each with its rounding and its Daily
/// Values.
///
/// # Errors
/// When a row is incomplete, a nutrient comes twice, has no rounding, or has a
/// Daily Value in another unit.
pub(super) fn read(
    text: &str,
    rounding: &mut Rounding,
    daily_values: &[DailyValue],
) -> Result<Vec<LabelNutrient>, TableError> {
    tables::read(LABEL_NUTRIENTS, text)?
        .into_iter()
        .map(|Row { line, row }| {
            let problem = |problem: String| TableError {
                table: LABEL_NUTRIENTS.to_owned(),
                line,
                problem,
            };
            join(row, rounding, daily_values, &problem)
        })
        .collect()
}

fn join(
    row: NutrientRow,
    rounding: &mut Rounding,
    daily_values: &[DailyValue],
    problem: &dyn Fn(String) -> TableError,
) -> Result<LabelNutrient, TableError> {
    let daily_values: Vec<DailyValue> = daily_values
        .iter()
        .filter(|value| value.nutrient == Some(row.nutrient))
        .cloned()
        .collect();
    if let Some(value) = daily_values.iter().find(|value| value.unit != row.unit) {
        return Err(problem(format!(
            "{} is in {} here and its Daily Value in {}: use one unit",
            row.name, row.unit, value.unit
        )));
    }
    let omission = match (row.omitted_by, row.omitted_below) {
        (Some(by), Some(below)) => Some(Omission { by, below }),
        (None, None) => None,
        _ => {
            return Err(problem(
                "fill both omitted_by and omitted_below, or neither".into(),
            ));
        }
    };
    Ok(LabelNutrient {
        nutrient: row.nutrient,
        amounts: rounding.take(Figure::Amount(row.nutrient))?,
        name: row.name,
        in_text: row.in_text,
        unit: row.unit,
        line: row.line,
        short_line: row.short_line,
        group: row.group,
        indent: row.indent,
        bold: row.bold,
        listed: row.listed,
        simplified: row.simplified,
        percent: row.percent,
        insignificant_below: row.insignificant_below,
        measured_in: row.measured_in,
        omission,
        citation: row.citation,
        daily_values,
    })
}
