//! Exact decimal arithmetic: where rounding is done and where missing values
//! are kept apart from zero.
#![deny(clippy::float_arithmetic)]

pub mod partial_sum;
pub mod rounding;

pub use partial_sum::PartialSum;
pub use rounding::{Digits, round_half_up};
