//! Shared helpers of the checks.

pub mod demo;
pub mod district;
pub mod fixtures;
pub mod kitchen_swaps;
pub mod random;
pub mod release;
pub mod sql;
pub mod typed;
pub mod weeks;
