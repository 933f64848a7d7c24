//! Shared helpers of the checks.

pub mod fixtures;
pub mod release;
