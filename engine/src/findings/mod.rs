//! Findings: each requirement met, missed or unknown, and what carries it.

mod carrier;
mod check;

pub use carrier::{Carrier, carriers};
pub use check::{Finding, Verdict, check};
