//! How sure a total is: standard uncertainties by the law of propagation
//! (JCGM 100:2008, the GUM, section 5.1).
//!
//! Three things make a figure uncertain, and each is kept apart until the end:
//! the dataset's standard errors, the rounding of label values, and the
//! tolerance of the amounts. A food that occurs in several lines, recipes or
//! days has one error, not several, so errors are gathered by food before they
//! are squared.

mod composition;
mod evidence;
mod propagate;

pub use composition::{Composition, Ingredient};
pub use evidence::{Evidence, Origin, ValueError};
pub use propagate::{Likelihood, Uncertainty, likelihood, of_amount, of_share_of_energy};
