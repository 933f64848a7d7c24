//! Rules as dated rows: the date of a week chooses the ones in force.

mod citation;
mod specification;

pub use citation::{Citation, Standing};
pub use specification::{Basis, Bound, DietarySpecification, Specifications};
