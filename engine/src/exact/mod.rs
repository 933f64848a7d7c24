//! Exact decimal arithmetic: where rounding is done and where missing values
//! are kept apart from zero.
#![deny(clippy::float_arithmetic)]

pub mod bounds;
pub mod partial_sum;
pub mod rounding;

pub use bounds::Bounds;
pub use partial_sum::{FigureStatus, PartialSum};
pub use rounding::{Digits, round_half_up};
