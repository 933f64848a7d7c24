//! What a planner asks for, and what must stay.

use super::change::{ChoicePlace, WeekChange};
use crate::recipe::RecipeId;
use crate::swaps::Price;
use crate::week::Date;
use serde::{Deserialize, Serialize};

/// Something that must stay as it is.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum Lock {
    /// A day: its choices, and the recipes that it serves.
    Day {
        /// Which.
        date: Date,
    },
    /// A choice, and the recipe that it serves.
    Choice {
        /// Where.
        place: ChoicePlace,
    },
    /// A recipe's lines and portion. Another recipe may take its place.
    Recipe {
        /// Which.
        recipe: RecipeId,
    },
    /// A line of a recipe.
    Line {
        /// Which recipe.
        recipe: RecipeId,
        /// Index of the line.
        line: usize,
    },
}

/// Which kinds of change are looked at.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", default)]
pub struct Ways {
    /// Other foods and other ways of handling them.
    pub swaps: bool,
    /// Other amounts.
    pub amounts: bool,
    /// Other portions.
    pub portions: bool,
    /// Other recipes of the book.
    pub choices: bool,
}

impl Default for Ways {
    fn default() -> Self {
        Self {
            swaps: true,
            amounts: true,
            portions: true,
            choices: true,
        }
    }
}

/// What is asked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", default)]
pub struct Ask {
    /// By how many standard uncertainties of the figure, as the week stands,
    /// an average must lie inside its limit. It counts for figures whose
    /// uncertainty is known.
    pub margin: u8,
    /// Kinds of change.
    pub ways: Ways,
    /// What must stay.
    pub locks: Vec<Lock>,
    /// Changes that the planner does not want.
    pub declined: Vec<WeekChange>,
    /// Whether, of plans with as many changes, a cheaper one is wanted.
    pub cost: bool,
    /// Prices, as far as they are known.
    pub prices: Vec<Price>,
    /// Of how many lines, those that carry most of what is missed, changes are
    /// looked at.
    pub most_lines: usize,
    /// How many foods are looked at for a line.
    pub foods_for_a_line: usize,
    /// How many recipes are looked at for a choice.
    pub recipes_for_a_choice: usize,
}

impl Default for Ask {
    fn default() -> Self {
        Self {
            margin: 1,
            ways: Ways::default(),
            locks: Vec::new(),
            declined: Vec::new(),
            cost: false,
            prices: Vec::new(),
            most_lines: 40,
            foods_for_a_line: 2,
            recipes_for_a_choice: 4,
        }
    }
}
