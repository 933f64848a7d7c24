//! Tables of kitchen knowledge as text; the engine reads and checks them.

/// Kitchen words and the dataset's words or numbers for the same food.
pub const SYNONYMS: &str = include_str!("../kitchen/synonyms.csv");
