//! What is proposed for a line.

use super::measure::ChangeBounds;
use super::reason::Reason;
use crate::analysis;
use crate::components::Component;
use crate::exact::{Digits, PartialSum, round_half_up};
use crate::foods::{FoodId, NutrientId};
use crate::recipe::{Recipe, RecipeLine};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::fmt;

/// What is done to the line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum Change {
    /// Another food takes its place.
    Food {
        /// Which.
        food: FoodId,
        /// Its description.
        description: String,
    },
    /// Another food takes half of its place.
    Half {
        /// Which.
        food: FoodId,
        /// Its description.
        description: String,
    },
    /// The kitchen does something else with it.
    Move {
        /// Name of the move in its table.
        id: String,
        /// In words.
        words: String,
    },
}

/// A nutrient of a serving, before and after.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct NutrientChange {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// A serving before, as far as it is known.
    pub before: PartialSum,
    /// A serving after.
    pub after: PartialSum,
    /// The change in a serving, in the nutrient's unit, or what bounds it.
    pub change: ChangeBounds,
}

impl NutrientChange {
    /// By how much the two sums differ as they are printed; nothing where the
    /// change is not known.
    pub fn printed(&self, digits: Digits) -> Option<Decimal> {
        let exact = self.change.exact()?;
        let printed = analysis::change(&self.before, &self.after, digits);
        Some(printed.unwrap_or_else(|| round_half_up(exact, digits)))
    }
}

/// The credit of a serving, before and after.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct CreditChange {
    /// Toward which component.
    pub component: Component,
    /// What counted before.
    pub before: Decimal,
    /// What counts after.
    pub after: Decimal,
    /// False where a line of unknown credit could add to the one or the other.
    pub complete: bool,
}

/// What a proposal changes in a serving.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Effect {
    /// Calories, saturated fat, sodium, added sugars, sugars, and the goals.
    pub nutrients: Vec<NutrientChange>,
    /// The components that a serving credits or credited.
    pub credits: Vec<CreditChange>,
    /// The change of the cost, where prices are known.
    pub cost: Option<Decimal>,
}

impl Effect {
    /// The change of one nutrient.
    pub fn change(&self, nutrient: NutrientId) -> Option<ChangeBounds> {
        let found = self.nutrients.iter().find(|row| row.nutrient == nutrient);
        found.map(|row| row.change)
    }
}

/// A proposal for a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Proposal {
    /// What is done.
    pub change: Change,
    /// The lines that take the old one's place.
    pub lines: Vec<RecipeLine>,
    /// What that changes in a serving.
    pub effect: Effect,
    /// Why it is proposed, the most telling first.
    pub reasons: Vec<Reason>,
    /// Rank value, for the order only.
    pub score: i32,
}

/// All that is proposed for a line.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Proposals {
    /// Other foods, best first.
    pub foods: Vec<Proposal>,
    /// Other ways, best first.
    pub moves: Vec<Proposal>,
    /// Foods that play the part and are not proposed.
    pub left_out: LeftOut,
}

/// How many foods that play the part are not proposed, and why. Only the first
/// reason that was found is counted, and only until enough foods were found.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct LeftOut {
    /// It is unknown whether they would move a goal.
    pub unknown: usize,
    /// The calories of a serving would leave the band, or are unknown.
    pub energy: usize,
    /// A serving would credit less.
    pub credit: usize,
    /// Words point to an allergen that the recipe does not have, or has less
    /// surely.
    pub allergens: usize,
}

/// The recipe with a proposal in place of its line; unchanged where it has no
/// such line.
pub fn apply(recipe: &Recipe, line: usize, proposal: &Proposal) -> Recipe {
    let mut recipe = recipe.clone();
    if line < recipe.lines.len() {
        recipe
            .lines
            .splice(line..=line, proposal.lines.iter().cloned());
    }
    recipe
}

/// Why nothing can be proposed for a line.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum SwapProblem {
    /// The recipe has no such line, or the line is no ingredient.
    NoIngredient,
    /// The line names another recipe of the book.
    NamesRecipe,
    /// No food is known for the line.
    NoFood,
    /// The weight of the line is not known.
    NoWeight,
    /// The recipe cannot be analysed.
    NotAnalysed,
    /// Nothing is to be moved.
    NoGoal,
}

impl fmt::Display for SwapProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::NoIngredient => "this line is no ingredient: choose a line that names a food",
            Self::NamesRecipe => {
                "this line names another recipe: open that recipe and swap its ingredients"
            }
            Self::NoFood => "no food is chosen for this line: choose one first",
            Self::NoWeight => {
                "the weight of this line is not known: enter an amount that can be weighed"
            }
            Self::NotAnalysed => {
                "the recipe cannot be analysed: mend what it reports, then look for swaps"
            }
            Self::NoGoal => "choose at least one goal, such as less sodium",
        })
    }
}

impl std::error::Error for SwapProblem {}
