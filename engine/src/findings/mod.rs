//! Findings: each requirement met, missed or unknown, and what carries it.

mod carrier;
mod check;
mod days;
mod pattern;

pub use carrier::{Carrier, carriers};
pub use check::{Finding, Verdict, check};
pub(crate) use check::{Known, finding};
pub use days::{DayPart, DayShare, day_shares};
pub(crate) use pattern::{AmountRow, Setting, amount_rows, giving};
pub use pattern::{CitedLimit, PatternCarrier, PatternFinding, PatternTables, check_pattern};
