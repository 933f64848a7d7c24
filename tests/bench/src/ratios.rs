//! The measured medians as a table of ratios.

use anyhow::{Context, Result};
use serde_json::Value;
use std::fmt::Write;
use std::fs;
use std::path::Path;

/// How two times should compare.
#[derive(Debug, Clone, Copy)]
enum Goal {
    /// The other takes at least so many times as long.
    Faster(f64),
    /// Ours takes at most so many times as long.
    Within(f64),
}

/// Two measured things and how they should compare.
struct Pair {
    what: &'static str,
    ours: &'static str,
    other: &'static str,
    goal: Goal,
}

const PAIRS: &[Pair] = &[
    Pair {
        what: "district year, against SQLite in memory",
        ours: "year/ours",
        other: "year/sqlite",
        goal: Goal::Faster(100.0),
    },
    Pair {
        what: "district year, against a columnar dataframe (polars)",
        ours: "year/ours",
        other: "year/polars",
        goal: Goal::Faster(10.0),
    },
    Pair {
        what: "bare nutrient product, against scipy's sparse product",
        ours: "product/ours",
        other: "product/scipy",
        goal: Goal::Within(1.0),
    },
    Pair {
        what: "the same in WebAssembly",
        ours: "product/wasm",
        other: "product/scipy",
        goal: Goal::Within(1.5),
    },
    Pair {
        what: "one line edited, against the full recompute of a district year",
        ours: "edit/1 district",
        other: "recompute/1 district",
        goal: Goal::Faster(1000.0),
    },
    Pair {
        what: "the same in a book ten times as large",
        ours: "edit/10 districts",
        other: "recompute/10 districts",
        goal: Goal::Faster(1000.0),
    },
    Pair {
        what: "the same in a book a hundred times as large",
        ours: "edit/100 districts",
        other: "recompute/100 districts",
        goal: Goal::Faster(1000.0),
    },
    Pair {
        what: "an edit in a book a hundred times as large, against one in the small book",
        ours: "edit/100 districts",
        other: "edit/1 district",
        goal: Goal::Within(3.0),
    },
    Pair {
        what: "ranking all foods for a line, against one pass over the columns it reads",
        ours: "swaps/rank",
        other: "swaps/pass",
        goal: Goal::Within(3.0),
    },
];

/// The table of all pairs that have been measured, in Markdown; `folder` is
/// where the times are kept.
///
/// # Errors
/// When a file of times cannot be read.
pub fn table(folder: &Path) -> Result<String> {
    let mut table =
        String::from("| What | Ours | Other | Ratio | Goal | |\n|---|---|---|---|---|---|\n");
    for pair in PAIRS {
        let Some((ours, other)) = median(folder, pair.ours)?.zip(median(folder, pair.other)?)
        else {
            continue;
        };
        let (ratio, goal, met) = match pair.goal {
            Goal::Faster(times) => {
                let ratio = other / ours;
                (
                    format!("{ratio:.0}× as fast"),
                    format!("≥ {times}×"),
                    ratio >= times,
                )
            }
            Goal::Within(times) => {
                let ratio = ours / other;
                (
                    format!("{ratio:.2}× its time"),
                    format!("≤ {times}×"),
                    ratio <= times,
                )
            }
        };
        let met = if met { "met" } else { "missed" };
        let (ours, other) = (duration(ours), duration(other));
        let what = pair.what;
        writeln!(
            table,
            "| {what} | {ours} | {other} | {ratio} | {goal} | {met} |"
        )?;
    }
    Ok(table)
}

/// Median nanoseconds of a measured thing; nothing where it was not measured.
fn median(folder: &Path, name: &str) -> Result<Option<f64>> {
    let path = folder.join(name).join("new/estimates.json");
    if !path.exists() {
        return Ok(None);
    }
    let text = fs::read_to_string(&path)?;
    let estimates: Value = serde_json::from_str(&text)?;
    let median = estimates["median"]["point_estimate"].as_f64();
    median.map(Some).with_context(|| path.display().to_string())
}

fn duration(nanoseconds: f64) -> String {
    match nanoseconds {
        ns if ns < 1e3 => format!("{ns:.0} ns"),
        ns if ns < 1e6 => format!("{:.2} µs", ns / 1e3),
        ns if ns < 1e9 => format!("{:.2} ms", ns / 1e6),
        ns => format!("{:.2} s", ns / 1e9),
    }
}
