//! Rules as dated rows: the date of a week chooses the ones in force.

mod specification;

pub use specification::{Basis, Bound, DietarySpecification, Specifications};
