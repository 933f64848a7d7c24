//! The panel as a value: everything printed is there as text.

use super::{Form, LayoutFact, PanelProblem, RowGroup, Statement};
use crate::exact::FigureStatus;
use crate::foods::NutrientId;
use crate::units::Servings;
use rust_decimal::Decimal;
use serde::Serialize;

/// One printed figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PanelCell {
    /// How much is known of it.
    pub status: FigureStatus,
    /// The known sum before rounding, in the label's unit; nothing if nothing
    /// is known.
    pub exact: Option<Decimal>,
    /// The amount with its unit: "8 g", "less than 5 mg", "at least 210 mg",
    /// "not known".
    pub amount: String,
    /// Name and amount as one text: "Includes 8 g Added Sugars".
    pub line: String,
    /// The same with the permitted abbreviations.
    pub short_line: String,
    /// Percent Daily Value: "10%", "at least 5%", "not known"; nothing where
    /// the regulation has none.
    pub percent: Option<String>,
}

/// One nutrient with a figure for each column.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PanelRow {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Its name on the panel.
    pub name: String,
    /// Part of the panel; heavy bars lie between parts.
    pub group: RowGroup,
    /// Level of indent, 0 to 2.
    pub indent: u8,
    /// Whether the name is in bold type.
    pub bold: bool,
    /// One figure for each column of the panel.
    pub cells: Vec<PanelCell>,
}

/// One column of figures.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PanelColumn {
    /// "Amount per serving" or "Amount per container".
    pub heading: String,
    /// For how many servings its figures are.
    pub servings: Servings,
}

/// A Nutrition Facts panel.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct FactsPanel {
    /// How it is laid out.
    pub form: Form,
    /// Type sizes, rules and bars of that form.
    pub layout: Vec<LayoutFact>,
    /// "8 servings per container".
    pub servings: String,
    /// "1 cup (240 g)".
    pub serving_size: String,
    /// One column, or two.
    pub columns: Vec<PanelColumn>,
    /// Calories.
    pub calories: PanelRow,
    /// All other rows in the regulation's order.
    pub rows: Vec<PanelRow>,
    /// The rows that are left out for their small amounts.
    pub left_out: Vec<NutrientId>,
    /// "Not a significant source of …", where rows are left out.
    pub insignificant: Option<String>,
    /// The footnote on percent Daily Values.
    pub footnote: Statement,
    /// What a reader must know besides.
    pub notes: Vec<Statement>,
    /// Whether the simplified panel is allowed for this food.
    pub simplified_allowed: bool,
    /// What of the office's options could not be followed.
    pub problems: Vec<PanelProblem>,
    /// Whether every figure is known.
    pub complete: bool,
}
