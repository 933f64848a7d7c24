//! What a kitchen's scale shows of a weight.

use crate::exact::rounding::round_half_up_to;
use crate::tables::{self, Row, TableError};
use crate::units::{Grams, MassUnit};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

#[derive(Debug, Clone, Deserialize)]
struct ScaleRow {
    scale: String,
    words: String,
    up_to_grams: Option<Grams>,
    unit: MassUnit,
    step: Decimal,
    larger: Option<MassUnit>,
    source: String,
    status: String,
}

/// Steps of a scale up to a weight.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ScaleStep {
    /// The heaviest load that is shown in these steps; nothing for the last.
    pub up_to: Option<Grams>,
    /// Unit of the display.
    pub unit: MassUnit,
    /// Steps of the display, in its unit.
    pub step: Decimal,
    /// Unit that whole multiples are told in: pounds of ounces.
    pub larger: Option<MassUnit>,
}

/// A scale.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Scale {
    /// Its name in the table.
    pub name: String,
    /// What it is, in words.
    pub words: String,
    /// Its steps, lightest loads first.
    pub steps: Vec<ScaleStep>,
    /// Where the steps come from.
    pub source: String,
    /// How sure they are.
    pub status: String,
}

/// A weight as a scale shows it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Shown {
    /// What is shown, in grams.
    pub grams: Grams,
    /// What is shown, largest unit first: 3 lb, 4.5 oz.
    pub parts: Vec<(Decimal, MassUnit)>,
}

impl Scale {
    /// What the scale shows; nothing where that would be nought: such a weight
    /// is measured, not weighed.
    pub fn show(&self, weight: Grams) -> Option<Shown> {
        let holds = |step: &&ScaleStep| step.up_to.is_none_or(|most| weight <= most);
        let step = self.steps.iter().find(holds)?;
        let number = round_half_up_to(step.unit.number_in(weight), step.step);
        if number <= Decimal::ZERO {
            return None;
        }
        Some(Shown {
            grams: step.unit.of(number),
            parts: parts(number, step),
        })
    }
}

/// Splits what is shown into the larger unit and the rest.
fn parts(number: Decimal, step: &ScaleStep) -> Vec<(Decimal, MassUnit)> {
    let split = step.larger.and_then(|larger| {
        let holds = larger.ratio_to(step.unit)?.to_decimal();
        let whole = (number / holds).trunc();
        (whole > Decimal::ZERO).then(|| (whole, larger, number - whole * holds))
    });
    match split {
        None => vec![(number, step.unit)],
        Some((whole, larger, rest)) if rest.is_zero() => vec![(whole, larger)],
        Some((whole, larger, rest)) => vec![(whole, larger), (rest, step.unit)],
    }
}

/// The table of scales.
#[derive(Debug, Clone)]
pub struct Scales(Vec<Scale>);

impl Scales {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, a step is not above zero, loads do not rise,
    /// or a scale's last row has a heaviest load.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "scales";
        let wrong = |line, problem: &str| TableError {
            table: TABLE.to_owned(),
            line,
            problem: problem.to_owned(),
        };
        let rows: Vec<Row<ScaleRow>> = tables::read(TABLE, text)?;
        let mut scales: Vec<Scale> = Vec::new();
        for Row { line, row } in rows {
            if row.step <= Decimal::ZERO {
                return Err(wrong(line, "the step must be above zero"));
            }
            if scales.last().is_none_or(|last| last.name != row.scale) {
                scales.push(Scale {
                    name: row.scale,
                    words: row.words,
                    steps: Vec::new(),
                    source: row.source,
                    status: row.status,
                });
            }
            let Some(scale) = scales.last_mut() else {
                continue;
            };
            let before = scale.steps.last().map(|step| step.up_to);
            let rises = match (before, row.up_to_grams) {
                (None, _) | (Some(Some(_)), None) => true,
                (Some(Some(before)), Some(now)) => before < now,
                (Some(None), _) => false,
            };
            if !rises {
                return Err(wrong(line, "loads must rise from row to row of a scale"));
            }
            scale.steps.push(ScaleStep {
                up_to: row.up_to_grams,
                unit: row.unit,
                step: row.step,
                larger: row.larger,
            });
        }
        let open = |scale: &Scale| scale.steps.last().is_some_and(|last| last.up_to.is_none());
        if scales.is_empty() || !scales.iter().all(open) {
            return Err(wrong(0, "the last row of each scale has no heaviest load"));
        }
        Ok(Self(scales))
    }

    /// All scales in table order.
    pub fn all(&self) -> &[Scale] {
        &self.0
    }

    /// A scale by its name; the first where no name is given or none fits.
    pub fn named(&self, name: Option<&str>) -> &Scale {
        let found = self
            .0
            .iter()
            .find(|scale| Some(scale.name.as_str()) == name);
        found.unwrap_or(&self.0[0])
    }
}
