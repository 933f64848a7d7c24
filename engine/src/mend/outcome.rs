//! What a search has found, in the form that a page or a script gets.

use super::change::WeekChange;
use super::demand::Standing;
use crate::allergens::Allergen;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// How a requirement moves.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Effect {
    /// As the week stands.
    pub before: Standing,
    /// As it would stand with this change alone.
    pub after: Standing,
}

/// One change of a plan, with what it does.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct PlannedChange {
    /// What is changed.
    pub change: WeekChange,
    /// How far it takes the dish from what it was, 0 to 100, by the table of
    /// steps.
    pub departure: u16,
    /// The requirements that it moves, when it is made alone.
    pub effects: Vec<Effect>,
    /// Allergens to which words point in the new dish and not in the old one.
    /// Other allergens may be in either: the labels must be read.
    pub allergens: Vec<Allergen>,
    /// What it adds to the cost of the week; nothing where a price is missing.
    pub cost: Option<Decimal>,
}

/// A plan: all of its changes together bring the week inside its limits. That
/// was checked by the engine, exactly.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Plan {
    /// The changes.
    pub changes: Vec<PlannedChange>,
    /// How the week stands with all of them.
    pub after: Vec<Standing>,
}

/// How good a plan is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum Proof {
    /// No plan of the changes that were looked at has fewer, and none with as
    /// many takes the dishes less far.
    Least,
    /// It has at most so many changes more than the least.
    AtMostMore {
        /// So many.
        changes: u32,
    },
}

/// How a search ends.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum Outcome {
    /// Every requirement is kept by its margin already, or unknown.
    NothingToMend,
    /// There is a plan.
    Mended {
        /// The plan.
        plan: Plan,
        /// How good it is.
        proof: Proof,
    },
    /// No set of the changes that were looked at keeps all of these together.
    Impossible {
        /// Requirements that cannot be kept together, as the week stands with
        /// them. Without any one of them there is a plan for the others.
        because: Vec<Standing>,
        /// False where it was not proven of each that the others can be kept
        /// without it.
        smallest: bool,
    },
    /// Nothing is known: the search was stopped, or the solver gave up.
    NotFound {
        /// Whether it was stopped.
        stopped: bool,
    },
}

/// What a search is doing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Doing {
    /// Looking for changes that could help.
    Looking,
    /// Looking for the fewest of them.
    Choosing,
    /// No plan was found: making sure that there is none, and why.
    Explaining,
    /// Nothing any more.
    Done,
}

/// How far a search has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Progress {
    /// What it is doing.
    pub doing: Doing,
    /// Of the looking, how many pieces are done …
    pub looked: usize,
    /// … and how many there are.
    pub to_look: usize,
    /// How many changes were found that could help.
    pub changes: usize,
    /// How many plans the engine has checked.
    pub checked: usize,
    /// How many of these did not pass.
    pub refused: usize,
    /// Changes of the best plan so far.
    pub best: Option<u32>,
    /// No plan has fewer changes than this.
    pub least: u32,
}
