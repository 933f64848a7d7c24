//! Words about the batch and the size of a serving.

use crate::language::{Say, say};

pub const TITLE: Say = Say("batch-title");
pub const WAY: Say = Say("batch-way");
pub const WAYS: [Say; 4] = [
    Say("batch-ways-1"),
    Say("batch-ways-2"),
    Say("batch-ways-3"),
    Say("batch-ways-4"),
];
pub const SERVING: Say = Say("batch-serving");
pub const BATCH: Say = Say("batch-batch");
pub const PIECES: Say = Say("batch-pieces");
pub const FINISHED: Say = Say("batch-finished");

/// The number of servings that follows from the sizes.
pub fn makes(servings: &str) -> String {
    say("batch-makes", &[("servings", servings.into())])
}

/// What is taken where the batch was not weighed, and what follows from its
/// weight.
pub fn finished_hint(sum: Option<&str>, servings_follow: bool) -> String {
    let sum = sum.map(|sum| format!(", {sum}")).unwrap_or_default();
    let key = match servings_follow {
        true => "batch-finished-servings-follow",
        false => "batch-finished-weight-follows",
    };
    say(key, &[("sum", sum.into())])
}
