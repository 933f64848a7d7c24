//! Tables of kitchen knowledge as text; the engine reads and checks them.

/// Kitchen words and the dataset's words or numbers for the same food.
pub const SYNONYMS: &str = include_str!("../kitchen/synonyms.csv");

/// Words for units, sizes, containers and pieces, with the unit they mean.
pub const UNITS: &str = include_str!("../kitchen/units.csv");

/// Number words and fraction signs with their values.
pub const NUMBERS: &str = include_str!("../kitchen/numbers.csv");

/// Trade numbers of cans with the dimensions by which the dataset names them.
pub const CANS: &str = include_str!("../kitchen/cans.csv");

/// Words that make an amount vague, approximate, optional or open-ended.
pub const VAGUE: &str = include_str!("../kitchen/vague.csv");

/// Words that tell whether a weight is as purchased or edible portion.
pub const AMOUNT_BASIS: &str = include_str!("../kitchen/amount_basis.csv");

/// Grams of cooked food per gram of raw food.
pub const COOKING_YIELDS: &str = include_str!("../kitchen/cooking_yields.csv");

/// Shares of a line that drain, rinse or fry away.
pub const TREATMENTS: &str = include_str!("../kitchen/treatments.csv");

/// Words for what is done to a food, and for the state that it is in.
pub const PREPARATION: &str = include_str!("../kitchen/preparation.csv");

/// The size that is meant where a line counts a food and says no size; the
/// row without a food is for all others.
pub const DEFAULT_SIZES: &str = include_str!("../kitchen/default_sizes.csv");

/// Edible or drained weight per gram as purchased.
pub const TRIM_YIELDS: &str = include_str!("../kitchen/trim_yields.csv");

/// Kinds of food by the part that they play in a dish.
pub const SWAP_KINDS: &str = include_str!("../kitchen/swap_kinds.csv");

/// What words of a description say when foods are compared.
pub const SWAP_WORDS: &str = include_str!("../kitchen/swap_words.csv");

/// What a kitchen can do besides taking another food.
pub const MOVES: &str = include_str!("../kitchen/moves.csv");

/// Steps in which kitchen scales show weights.
pub const SCALES: &str = include_str!("../kitchen/scales.csv");

/// Pans with what they hold.
pub const PANS: &str = include_str!("../kitchen/pans.csv");

/// Words of recipes that tell when a step is done and how a dish is held.
pub const PREP_WORDS: &str = include_str!("../kitchen/prep_words.csv");

/// How a week may be changed: the steps of amounts and portions, and how far
/// each kind of change takes a dish from what it was.
pub const WEEK_CHANGES: &str = include_str!("../kitchen/week_changes.csv");
