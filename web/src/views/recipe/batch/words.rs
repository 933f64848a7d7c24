//! Words about the batch and the size of a serving.

pub const TITLE: &str = "Size of a serving, weight of the batch";
pub const WAY: &str = "The number of servings";
pub const WAYS: [&str; 4] = [
    "is entered above",
    "follows from the weight of a serving",
    "follows from the volume of a serving",
    "follows from the pieces in a serving",
];
pub const SERVING: &str = "One serving";
pub const BATCH: &str = "The whole batch";
pub const PIECES: &str = "pieces";
pub const FINISHED: &str = "Measured weight of the finished batch";

/// The number of servings that follows from the sizes.
pub fn makes(servings: &str) -> String {
    format!("The batch makes {servings} servings.")
}

/// What is taken where the batch was not weighed, and what follows from its
/// weight.
pub fn finished_hint(sum: Option<&str>, servings_follow: bool) -> String {
    let sum = sum.map(|sum| format!(", {sum}")).unwrap_or_default();
    let follows = match servings_follow {
        true => "The number of servings and the figures per 100 g follow from it.",
        false => {
            "A serving’s weight and the figures per 100 g follow from it; what a serving contains \
             does not change."
        }
    };
    format!("While it is empty: the sum of the ingredients{sum}. {follows}")
}
