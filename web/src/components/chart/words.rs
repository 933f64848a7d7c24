//! Words of drawings.

use crate::language::{Say, say};

pub const AS_TABLE: Say = Say("chart-as-table");
pub const BAR: Say = Say("chart-bar");
pub const PART: Say = Say("chart-part");
pub const FIGURE: Say = Say("chart-figure");
pub const WHOLE: Say = Say("chart-whole");
pub const RANGE: Say = Say("chart-range");
pub const AVERAGE: Say = Say("chart-average");
pub const EACH_DAY: Say = Say("chart-each-day");

/// A part and its figure.
pub fn part(name: &str, figure: &str) -> String {
    say(
        "chart-named",
        &[("name", name.into()), ("figure", figure.into())],
    )
}
