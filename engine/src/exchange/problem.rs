//! What is wrong with a text, where, and how to mend it.

use std::fmt;

/// Why a text cannot be used. It changed nothing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Problem {
    /// Where in the text.
    pub place: Place,
    /// What is wrong.
    pub trouble: Trouble,
}

/// A place in a text.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Place {
    /// Line of the text, from 1; nothing when the whole is meant.
    pub line: Option<u64>,
    /// Which part: "recipes[2].servings", or the name of a column; empty when
    /// the whole is meant.
    pub part: String,
}

/// What is wrong.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Trouble {
    /// It is no JSON.
    NotJson,
    /// It ends too early.
    CutOff,
    /// It is JSON of something else.
    NoBook,
    /// It holds recipes, not a book.
    RecipesOnly,
    /// It was written by a later version, which is given.
    Newer(u32),
    /// A part that is needed is not there.
    Missing(String),
    /// A part is there twice.
    Twice(String),
    /// What stands there is of another kind than it must be.
    Unfit(String),
    /// A word that is not one of these.
    UnknownWord {
        /// The word.
        word: String,
        /// Those that can stand there.
        known: String,
    },
    /// Two recipes, weeks or foods of the book have this name.
    SameName(String),
    /// It holds no recipe.
    NoRecipes,
    /// A table without this column.
    NoColumn(String),
    /// A row has another number of cells than the first.
    RaggedRow,
    /// The text in a column of numbers.
    NoNumber(String),
    /// A row before any recipe.
    RowWithoutRecipe,
}

impl Problem {
    /// Something that is wrong with the whole.
    pub fn whole(trouble: Trouble) -> Self {
        Self {
            place: Place::default(),
            trouble,
        }
    }

    /// Something that is wrong in a line.
    pub fn in_line(line: u64, part: &str, trouble: Trouble) -> Self {
        Self {
            place: Place {
                line: (line > 0).then_some(line),
                part: part.to_owned(),
            },
            trouble,
        }
    }
}

impl fmt::Display for Place {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match (self.line, self.part.as_str()) {
            (None, part) => out.write_str(part),
            (Some(line), "") => write!(out, "line {line}"),
            (Some(line), part) => write!(out, "line {line}, {part}"),
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.place != Place::default() {
            write!(out, "{}: ", self.place)?;
        }
        self.trouble.fmt(out)
    }
}

impl fmt::Display for Trouble {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotJson => {
                out.write_str("this is no JSON: choose a file that this page has saved")
            }
            Self::CutOff => out.write_str(
                "the text is no complete JSON: it may have been cut off, take an earlier copy",
            ),
            Self::NoBook => out.write_str(
                "this is JSON, but no book: choose a file that this page has saved as a book",
            ),
            Self::RecipesOnly => {
                out.write_str("this file holds recipes, not a book: bring it in as recipes")
            }
            Self::Newer(version) => write!(
                out,
                "the book has version {version}, which is later than this page reads: open it with a newer page"
            ),
            Self::Missing(name) => write!(
                out,
                "\"{name}\" is missing: compare it with a book that this page has saved"
            ),
            Self::Twice(name) => write!(out, "\"{name}\" is there twice: take one of them out"),
            Self::Unfit(found) => write!(
                out,
                "{found} does not fit here: compare it with a book that this page has saved"
            ),
            Self::UnknownWord { word, known } => {
                write!(out, "\"{word}\" is not known here: write one of {known}")
            }
            Self::SameName(name) => {
                write!(out, "two have the name \"{name}\": rename one of them")
            }
            Self::NoRecipes => out
                .write_str("there is no recipe in it: choose a table or JSON-LD file with recipes"),
            Self::NoColumn(name) => write!(
                out,
                "there is no column \"{name}\": name it in the first row"
            ),
            Self::RaggedRow => out.write_str(
                "the row has another number of cells than the first: set it right in a spreadsheet",
            ),
            Self::NoNumber(text) => {
                write!(
                    out,
                    "\"{text}\" is not a number: write digits, as in 250 or 2.5"
                )
            }
            Self::RowWithoutRecipe => out.write_str(
                "the row belongs to no recipe: put its title in the first row of each recipe",
            ),
        }
    }
}

impl std::error::Error for Problem {}
