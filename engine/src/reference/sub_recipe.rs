//! Recipes as ingredients of recipes.

use crate::book::{Shelf, plain_title};
use crate::recipe::{LineAmount, LineReading, Recipe, RecipeId, RecipeLine};
use crate::units::{Grams, Servings, Unit};
use rust_decimal::Decimal;
use serde::Serialize;
use std::fmt;

/// Why a recipe cannot stand in a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum SubRecipeProblem {
    /// A recipe needs itself, on this path.
    Cycle {
        /// Titles from the recipe back to itself.
        path: Vec<String>,
    },
    /// The book has no recipe of this name.
    NotInBook {
        /// The name.
        recipe: RecipeId,
    },
    /// The amount does not say how much of the batch is meant.
    AmountUnclear {
        /// Title of the recipe in the line.
        title: String,
    },
    /// The recipe in the line cannot be analysed itself.
    NotAnalysed {
        /// Its title.
        title: String,
    },
}

impl fmt::Display for SubRecipeProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Cycle { path } => write!(
                out,
                "the recipe needs itself: {}: take it out of one of these recipes",
                path.join(" → ")
            ),
            Self::NotInBook { recipe } => write!(
                out,
                "the book has no recipe \"{}\": write it, or name another food",
                recipe.0
            ),
            Self::AmountUnclear { title } => write!(
                out,
                "how much of \"{title}\"? Give servings, batches or a weight, as in \"4 servings\", \"1/2 batch\", \"2 lb\""
            ),
            Self::NotAnalysed { title } => write!(
                out,
                "\"{title}\" cannot be analysed itself: open it and mend what it reports"
            ),
        }
    }
}

/// The recipe that a line names: the one that a person chose, or the one whose
/// title the food words are.
pub(super) fn named_recipe<'a>(
    book: &'a dyn Shelf,
    line: &RecipeLine,
    reading: &LineReading,
) -> Option<Result<&'a Recipe, SubRecipeProblem>> {
    if let Some(id) = &line.correction.recipe {
        let not_in_book = || SubRecipeProblem::NotInBook { recipe: id.clone() };
        return Some(book.by_name(id).ok_or_else(not_in_book));
    }
    if line.correction.food.is_some() {
        return None;
    }
    let named = plain_title(&reading.food_words);
    (!named.is_empty())
        .then(|| book.by_title(&named))
        .flatten()
        .map(Ok)
}

/// Words for a share of a batch that are no servings.
const BATCH: [&str; 2] = ["batch", "recipe"];

/// Words for servings.
const SERVING: [&str; 2] = ["serving", "portion"];

/// How many batches of a recipe a line asks for; nothing where its amount does
/// not say. `batch` is the finished weight of one batch.
pub fn batches(
    line: &RecipeLine,
    reading: &LineReading,
    servings: Servings,
    batch: Grams,
) -> Option<Decimal> {
    let of_weight = |weight: Grams| (batch > Grams::ZERO).then(|| weight.grams() / batch.grams());
    if let Some(weight) = line.correction.weight {
        return of_weight(weight);
    }
    let LineAmount::Stated { quantity } = &reading.amount else {
        return None;
    };
    let amount = quantity.used();
    match &quantity.unit {
        Unit::Mass(unit) => of_weight(Grams::new(amount.of(unit.grams().grams()))),
        Unit::Count(count) => {
            let noun = count.noun.as_deref()?;
            if BATCH.contains(&noun) {
                Some(amount.to_decimal())
            } else if SERVING.contains(&noun) {
                Some(amount.to_decimal() / servings.servings())
            } else {
                None
            }
        }
        Unit::Volume(_) => None,
    }
}
