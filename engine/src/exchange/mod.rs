//! What goes out of the book and comes into it: texts for files, and the way
//! back. Nothing here reads a file; a text that cannot be used says what is
//! wrong, where, and how to mend it.
//!
//! | module | form | ways |
//! |---|---|---|
//! | [`book_file`] | the whole book as JSON, by the published [schema](BOOK_SCHEMA) | both |
//! | [`recipe_csv`] | recipes as a table, one row a line, with all that was set right | both |
//! | [`recipe_ld`] | recipes as JSON-LD in the words of schema.org | both; what was set right stays behind |
//! | [`nutrient_csv`] | figures as a table | out |
//! | [`cells`] | cells of a table that a spreadsheet could take for a formula | both |
//! | [`json_part`] | which part of a JSON text does not fit | |
//! | [`bring_in()`] | recipes from elsewhere under names that are free | in |

pub mod book_file;
mod bring_in;
pub mod cells;
pub mod json_part;
pub mod nutrient_csv;
mod problem;
pub mod recipe_csv;
pub mod recipe_ld;

pub use book_file::{BOOK_SCHEMA, read_book, write_book};
pub use bring_in::{Arrival, Arriving, bring_in};
pub use problem::{Place, Problem, Trouble};

use crate::recipe::Recipe;

/// Recipes that a text holds, and what of it was not taken over.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Incoming {
    /// The recipes, in the order of the text. A recipe without a name of its
    /// own has an empty one.
    pub recipes: Vec<Recipe>,
    /// What a person should know before they are brought in.
    pub remarks: Vec<Remark>,
}

/// Something that was not taken over as it stood.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Remark {
    /// Title of the recipe.
    pub title: String,
    /// What about it.
    pub about: About,
}

/// What a remark is about.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum About {
    /// No number of servings: it has to be stated before there are figures.
    NoServings,
    /// The yield is no number of servings, as in "1 loaf".
    YieldInWords(String),
    /// Stated nutrition is left behind: figures are computed from the lines.
    NutritionLeft,
    /// No ingredient lines.
    NoLines,
}

impl std::fmt::Display for About {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        match self {
            Self::NoServings => {
                out.write_str("no number of servings is stated: state it on the card")
            }
            Self::YieldInWords(words) => write!(
                out,
                "the yield \"{words}\" is no number of servings: state it on the card"
            ),
            Self::NutritionLeft => out.write_str(
                "the stated nutrition is not taken over: figures are computed from the lines",
            ),
            Self::NoLines => out.write_str("it has no ingredients: write them on the card"),
        }
    }
}

/// Recipes from a text of either form: a table or JSON-LD.
///
/// # Errors
/// When the text holds no recipes, or some that cannot be read.
pub fn read_recipes(text: &str) -> Result<Incoming, Problem> {
    let start = text.trim_start_matches('\u{feff}').trim_start();
    if start.starts_with(['{', '[']) {
        recipe_ld::read(text)
    } else {
        recipe_csv::read(text)
    }
}
