//! Pans: what they hold, and how many a dish needs.

use super::{Filling, Panning};
use crate::exact::rounding::{guarded, round_up_to};
use crate::recipe::{Recipe, ServingSize};
use crate::tables::{self, Row, TableError};
use crate::units::{Grams, Millilitres, Servings, Unit, VolumeUnit, read_amount};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::fmt;

/// A pan.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Pan {
    /// Its name in the table.
    #[serde(rename = "pan")]
    pub name: String,
    /// What it is, in words.
    pub words: String,
    /// What it holds when it is filled for service, in US quarts; nothing for
    /// a pan that is not filled by volume.
    pub quarts: Option<Decimal>,
    /// Where that was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
}

/// The table of pans.
#[derive(Debug, Clone)]
pub struct Pans(Vec<Pan>);

impl Pans {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete, a name comes twice, or a pan holds nothing.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        const TABLE: &str = "pans";
        let mut pans: Vec<Pan> = Vec::new();
        for Row { line, row } in tables::read::<Pan>(TABLE, text)? {
            let wrong = |problem: String| TableError {
                table: TABLE.to_owned(),
                line,
                problem,
            };
            if row.quarts.is_some_and(|quarts| quarts <= Decimal::ZERO) {
                return Err(wrong("a pan must hold more than nothing".to_owned()));
            }
            if pans.iter().any(|pan| pan.name == row.name) {
                return Err(wrong(format!("the pan \"{}\" comes twice", row.name)));
            }
            pans.push(row);
        }
        Ok(Self(pans))
    }

    /// All pans in table order.
    pub fn all(&self) -> &[Pan] {
        &self.0
    }

    /// A pan by its name.
    pub fn named(&self, name: &str) -> Option<&Pan> {
        self.0.iter().find(|pan| pan.name == name)
    }
}

/// How many pans a dish needs.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PanCount {
    /// The pan.
    pub pan: Pan,
    /// Servings that one pan holds.
    pub holds: Servings,
    /// Pans, the last one perhaps not full.
    pub pans: Decimal,
    /// Servings in the last pan.
    pub in_last: Servings,
}

/// Why pans cannot be counted.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum PanProblem {
    /// The table has no such pan.
    NoSuchPan {
        /// The name.
        pan: String,
    },
    /// The pan is not filled by volume.
    NoCapacity,
    /// The recipe does not say the volume of a serving.
    NoServingVolume,
    /// The recipe does not say the weight of a serving.
    NoServingWeight,
    /// A pan that holds nothing.
    HoldsNothing,
}

impl fmt::Display for PanProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoSuchPan { pan } => write!(
                out,
                "the table has no pan \"{pan}\": choose one of the table"
            ),
            Self::NoCapacity => out.write_str(
                "this pan is not filled by volume: state the servings or the weight in a pan",
            ),
            Self::NoServingVolume => out.write_str(
                "the recipe does not say the volume of a serving: begin its serving with a volume, as in \"3/4 cup\", or state the servings in a pan",
            ),
            Self::NoServingWeight => out.write_str(
                "not every line has a weight, so that of a serving is not known: mend the lines, or state the servings in a pan",
            ),
            Self::HoldsNothing => {
                out.write_str("what is stated for a pan is zero or less: enter more than zero")
            }
        }
    }
}

/// The volume of one serving: as its size says, or its words where they begin
/// with a volume ("3/4 cup", "1 cup pasta with sauce").
pub fn serving_volume(recipe: &Recipe) -> Option<Millilitres> {
    if let Some(ServingSize::Volume { serving, .. }) = recipe.serving_size {
        return Some(serving);
    }
    let read = read_amount(&recipe.serving_words).ok()??;
    match read.quantity.unit {
        Unit::Volume(unit) => {
            let each = unit.millilitres().millilitres();
            Some(Millilitres::new(read.quantity.used().of(each)))
        }
        Unit::Mass(_) | Unit::Count(_) => None,
    }
}

/// Counts the pans for so many servings.
///
/// # Errors
/// When it cannot be told how many servings a pan holds.
pub fn pans_for(
    pans: &Pans,
    panning: &Panning,
    servings: Servings,
    (volume, weight): (Option<Millilitres>, Option<Grams>),
) -> Result<PanCount, PanProblem> {
    let pan = pans
        .named(&panning.pan)
        .ok_or_else(|| PanProblem::NoSuchPan {
            pan: panning.pan.clone(),
        })?;
    let above_zero = |size: Decimal| Some(size).filter(|size| *size > Decimal::ZERO);
    let holds = match panning.filling {
        Filling::Servings { servings } => servings.servings(),
        Filling::Volume => {
            let quarts = pan.quarts.ok_or(PanProblem::NoCapacity)?;
            let serving = volume.and_then(|volume| above_zero(volume.millilitres()));
            let serving = serving.ok_or(PanProblem::NoServingVolume)?;
            VolumeUnit::Quart.of(quarts).millilitres() / serving
        }
        Filling::Weight { grams } => {
            let serving = weight.and_then(|weight| above_zero(weight.grams()));
            grams.grams() / serving.ok_or(PanProblem::NoServingWeight)?
        }
    };
    let holds = above_zero(guarded(holds)).ok_or(PanProblem::HoldsNothing)?;
    let needed = servings.servings();
    let count = round_up_to(needed / holds, Decimal::ONE);
    let before_last = (count - Decimal::ONE).max(Decimal::ZERO) * holds;
    Ok(PanCount {
        pan: pan.clone(),
        holds: Servings::new(holds),
        pans: count,
        in_last: Servings::new(guarded(needed - before_last)),
    })
}
