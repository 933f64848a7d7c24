//! Wording that the regulation prescribes or that a reader needs beside the
//! panel.

use super::{Audience, LABEL_STATEMENTS};
use crate::rules::Citation;
use crate::tables::{self, Row, TableError};
use serde::{Deserialize, Serialize};

/// One wording with its citation.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all(serialize = "camelCase"))]
pub struct Statement {
    #[serde(skip_serializing)]
    key: String,
    #[serde(skip_serializing)]
    audience: Option<Audience>,
    /// The words; `{}` stands for a list of names.
    pub words: String,
    /// Where the wording stands.
    #[serde(flatten)]
    pub citation: Citation,
}

/// All wordings of the panel.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct Statements {
    footnote_four_and_over: Statement,
    footnote_one_to_three: Statement,
    pub(super) insignificant: Statement,
    pub(super) exempt: Statement,
    pub(super) protein_percent: Statement,
    pub(super) ingredient_weight: Statement,
}

impl Statements {
    /// Reads the table.
    ///
    /// # Errors
    /// When a wording is missing or one is left over.
    pub(super) fn from_csv(text: &str) -> Result<Self, TableError> {
        let mut rows: Vec<Row<Statement>> = tables::read(LABEL_STATEMENTS, text)?;
        let mut take = |key: &str, audience: Option<Audience>| {
            let found = rows
                .iter()
                .position(|row| row.row.key == key && row.row.audience == audience);
            found
                .map(|index| rows.remove(index).row)
                .ok_or_else(|| TableError {
                    table: LABEL_STATEMENTS.to_owned(),
                    line: 0,
                    problem: format!("has no wording \"{key}\" for {audience:?}: add it"),
                })
        };
        let statements = Self {
            footnote_four_and_over: take("footnote", Some(Audience::FourAndOver))?,
            footnote_one_to_three: take("footnote", Some(Audience::OneToThree))?,
            insignificant: take("insignificant", None)?,
            exempt: take("exempt", None)?,
            protein_percent: take("protein percent", Some(Audience::OneToThree))?,
            ingredient_weight: take("ingredient weight", None)?,
        };
        match rows.first() {
            Some(row) => Err(TableError {
                table: LABEL_STATEMENTS.to_owned(),
                line: row.line,
                problem: format!("nothing uses the wording \"{}\": remove it", row.row.key),
            }),
            None => Ok(statements),
        }
    }

    pub(super) fn footnote(&self, audience: Audience) -> &Statement {
        match audience {
            Audience::FourAndOver => &self.footnote_four_and_over,
            Audience::OneToThree => &self.footnote_one_to_three,
        }
    }
}
