//! Shared helpers of the checks.

pub mod demo;
pub mod fixtures;
pub mod random;
pub mod release;
pub mod sql;
pub mod typed;
