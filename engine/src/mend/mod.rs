//! The fewest changes that bring a week inside its limits.
//!
//! | step | module | does |
//! |---|---|---|
//! | ask | [`ask`] | what is wanted, what must stay, what was declined |
//! | stand | [`ground`], [`demand`] | the week as it stands, and what a plan owes to each requirement |
//! | look | [`gather`], [`candidate`] | changes that could help, each studied exactly |
//! | write | [`build`], [`model`] | columns and rows, in binary floats |
//! | choose | [`hunt`], [`solve`] | the least plan: solved, checked by the engine, cut off where it does not pass |
//! | solve | [`simplify`], [`tree`], [`node`], [`branch`], [`seek`], [`anew`], [`linear`], [`dictionary`], [`exchange`], [`proof`]; [`pose`] | branch and bound over linear programs, every bound proven from the rows; the general solver beside it |
//! | explain | [`conflict`] | where nothing passes: the requirements that conflict |
//! | tell | [`outcome`] | the plan, or why there is none |
//!
//! Floats choose; the engine decides. Every plan is made in a copy of the book
//! and studied by [`Reference::study_week`](crate::reference::Reference::study_week)
//! before anything is said of it. Planned servings and planned meals stay.

mod anew;
mod ask;
mod branch;
mod build;
mod candidate;
mod change;
mod conflict;
mod demand;
mod dictionary;
mod exchange;
mod gather;
mod ground;
mod hunt;
mod linear;
mod model;
mod node;
mod outcome;
mod pose;
mod proof;
mod search;
mod seek;
mod simplify;
#[cfg(test)]
mod small;
mod solve;
mod steps;
mod tree;

pub use ask::{Ask, Lock, Ways};
pub use change::{ChoicePlace, LineWay, Portion, WeekChange};
pub use demand::{Requirement, Standing, standings};
pub use ground::Tools;
pub use model::{Column, Model, Row};
pub use outcome::{Doing, Effect, Outcome, Plan, PlannedChange, Progress, Proof};
pub use search::{MendError, Search};
pub use solve::{Answer, solve};
