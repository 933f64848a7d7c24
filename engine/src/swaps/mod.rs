//! What could stand in a line's place: other foods and other ways.
//!
//! | step | module | does |
//! |---|---|---|
//! | know | [`kinds`], [`words`], [`index`] | sorts all foods by the part that they play, by name and by state |
//! | rank | [`rank`], [`gain`] | orders them by how well they fit and what the goals gain |
//! | write | [`naming`], [`line_text`], [`bench`] | writes the new line in the amount that the part asks for |
//! | judge | [`judge`], [`measure`] | studies the changed recipe and keeps what must be kept |
//! | tell | [`proposal`], [`reason`], [`week`], [`verdicts`] | exact differences, reasons that read as words, and what becomes of the weeks |
//!
//! Ranking uses binary floats and whole thousandths; whatever is shown comes
//! from a study of the changed recipe. A proposal is one to try and to taste:
//! the label of the product in the store room goes before the table.

mod bench;
mod gain;
mod goals;
mod index;
mod judge;
mod kinds;
mod line_text;
mod measure;
mod moves;
mod naming;
mod proposal;
mod propose;
mod rank;
mod reason;
mod share;
mod verdicts;
mod week;
mod words;

pub use goals::{Aim, CreditDemand, EnergyBand, Goal, Goals, Price, SwapOptions};
pub use index::SwapIndex;
pub use kinds::AmountBy;
pub use measure::ChangeBounds;
pub use proposal::{
    Change, CreditChange, Effect, LeftOut, NutrientChange, Proposal, Proposals, SwapProblem, apply,
};
pub use propose::{propose, rank};
pub use reason::Reason;
pub(crate) use share::{line_in_share, serving_in_share};
pub use verdicts::VerdictChange;
pub use week::{Reach, ServiceChange, WeekChange};

use crate::book::Shelf;
use crate::recipe::Recipe;
use crate::reference::RecipeStudy;

/// Which line of which recipe.
#[derive(Debug, Clone, Copy)]
pub struct Place<'a> {
    /// The recipes that lines may name.
    pub book: &'a dyn Shelf,
    /// The recipe.
    pub recipe: &'a Recipe,
    /// Its study as it stands.
    pub study: &'a RecipeStudy,
    /// Index of the line.
    pub line: usize,
}
