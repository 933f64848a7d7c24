//! How the panel is set: type sizes, rules and bars, as data for the view.

use super::{Form, LABEL_LAYOUT};
use crate::rules::Citation;
use crate::tables::{self, Row, TableError};
use serde::{Deserialize, Serialize};

/// Which panels a layout fact speaks of.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum LayoutScope {
    /// Every panel.
    #[serde(rename = "any")]
    Any,
    /// The vertical panel.
    #[serde(rename = "vertical")]
    Vertical,
    /// The vertical panel with two columns of amounts.
    #[serde(rename = "dual column")]
    DualColumn,
    /// The tabular panel of small packages.
    #[serde(rename = "tabular")]
    Tabular,
    /// The linear panel of small packages.
    #[serde(rename = "linear")]
    Linear,
    /// The simplified panel, in whichever form.
    #[serde(rename = "simplified")]
    Simplified,
}

/// Whether a layout fact binds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum LayoutStanding {
    /// The regulation asks for it.
    #[serde(rename = "required")]
    Required,
    /// The agency's illustrations show it; the regulation is silent.
    #[serde(rename = "illustration")]
    Illustration,
}

/// One fact of the layout: `part` has `property` of `value` `unit`.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all(serialize = "camelCase"))]
pub struct LayoutFact {
    /// Which panels.
    pub form: LayoutScope,
    /// Which part of the panel.
    pub part: String,
    /// Which property of it.
    pub property: String,
    /// A number or a word.
    pub value: String,
    /// pt for points; empty for a word.
    pub unit: String,
    /// Whether it binds.
    pub standing: LayoutStanding,
    /// In words.
    pub words: String,
    /// Where it stands.
    #[serde(flatten)]
    pub citation: Citation,
}

/// All facts of the layout.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Layout {
    facts: Vec<LayoutFact>,
    /// How many of the nutrients that are always listed must be insignificant
    /// for the simplified panel.
    pub(super) simplified_from: usize,
}

impl Layout {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, a fact comes twice, or the condition of the
    /// simplified panel is missing.
    pub(super) fn from_csv(text: &str) -> Result<Self, TableError> {
        let problem = |line: u64, problem: String| TableError {
            table: LABEL_LAYOUT.to_owned(),
            line,
            problem,
        };
        let rows: Vec<Row<LayoutFact>> = tables::read(LABEL_LAYOUT, text)?;
        for (index, Row { line, row }) in rows.iter().enumerate() {
            let twice = rows[..index].iter().find(|Row { row: other, .. }| {
                (other.form, &other.part, &other.property) == (row.form, &row.part, &row.property)
            });
            if let Some(other) = twice {
                return Err(problem(
                    *line,
                    format!("says again what line {} says: keep one", other.line),
                ));
            }
        }
        let simplified_from = rows
            .iter()
            .find(|row| row.row.form == LayoutScope::Simplified)
            .and_then(|row| row.row.value.parse().ok())
            .ok_or_else(|| problem(0, "does not say from how many insignificant nutrients the simplified panel is allowed: add the row".into()))?;
        Ok(Self {
            facts: rows.into_iter().map(|row| row.row).collect(),
            simplified_from,
        })
    }

    /// The facts for one form of panel.
    pub(super) fn of(&self, form: Form, dual: bool) -> Vec<LayoutFact> {
        let scope = match (form, dual) {
            (Form::Vertical, false) => LayoutScope::Vertical,
            (Form::Vertical, true) => LayoutScope::DualColumn,
            (Form::Tabular, _) => LayoutScope::Tabular,
            (Form::Linear, _) => LayoutScope::Linear,
        };
        self.facts
            .iter()
            .filter(|fact| fact.form == LayoutScope::Any || fact.form == scope)
            .cloned()
            .collect()
    }
}
