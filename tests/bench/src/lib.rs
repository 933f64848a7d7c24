//! The engine beside general-purpose engines, on the same generated work in
//! the same run.
//!
//! | module | what |
//! |---|---|
//! | [`work`] | a generated district year as plain numbers, written down for rivals |
//! | [`sqlite`] | the year in SQL |
//! | [`rival`] | programs that time themselves when asked |
//! | [`export`] | a district's tables as Parquet files |
//! | [`ratios`] | the measured times as a table of ratios |

pub mod export;
pub mod ratios;
pub mod rival;
pub mod sqlite;
pub mod work;
