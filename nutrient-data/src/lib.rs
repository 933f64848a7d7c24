//! Tables of SR28 and of the rules, and the compact asset made from them.

pub mod format;
pub mod rules;
