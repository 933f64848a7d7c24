//! Recipes as a table: one row for each ingredient line, with all that a
//! person has set right about it.
//!
//! What belongs to the whole recipe stands in its first row only. A line that
//! has several treatments or stated credits takes as many rows, all with its
//! number. Text is made [`harmless`](super::cells); numbers stay numbers.
//!
//! Coming in, a table needs two columns: `title`, in the first row of each
//! recipe, and `ingredient`. All others may be missing.

mod columns;
mod read;
mod write;

pub use columns::Column;
pub use read::read;
pub use write::write;
