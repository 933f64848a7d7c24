//! One change of a week, as a planner would make it.

use crate::book::Book;
use crate::recipe::{Recipe, RecipeId, RecipeLine, ServingSize};
use crate::swaps;
use crate::units::Servings;
use crate::week::{Choice, Date, Week, WeekId};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// Where a choice stands in its week.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct ChoicePlace {
    /// Index of the day.
    pub day: usize,
    /// Index of the meal in the day.
    pub meal: usize,
    /// Index of the offer in the meal.
    pub offer: usize,
    /// Index of the choice in the offer.
    pub choice: usize,
}

impl ChoicePlace {
    /// Every choice of a week with its place.
    pub fn all(week: &Week) -> impl Iterator<Item = (Self, &Choice)> {
        week.days.iter().enumerate().flat_map(|(day, of_day)| {
            of_day.meals.iter().enumerate().flat_map(move |(meal, of)| {
                of.offers.iter().enumerate().flat_map(move |(offer, of)| {
                    of.choices.iter().enumerate().map(move |(choice, found)| {
                        let place = Self {
                            day,
                            meal,
                            offer,
                            choice,
                        };
                        (place, found)
                    })
                })
            })
        })
    }

    /// The choice at this place.
    pub fn of(self, week: &Week) -> Option<&Choice> {
        let meal = week.days.get(self.day)?.meals.get(self.meal)?;
        meal.offers.get(self.offer)?.choices.get(self.choice)
    }
}

/// What is done to a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "way")]
pub enum LineWay {
    /// Another food or another way of handling it.
    Swap {
        /// Which.
        change: swaps::Change,
    },
    /// Another amount of the same food.
    Amount {
        /// How many times the old one.
        share: Decimal,
    },
}

/// How much of a dish is a serving.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Portion {
    /// Servings of the whole recipe.
    pub servings: Servings,
    /// Size of a serving, where the number follows from it.
    pub size: Option<ServingSize>,
    /// Words for a serving.
    pub words: String,
}

impl Portion {
    /// As a recipe has it.
    pub fn of(recipe: &Recipe) -> Self {
        Self {
            servings: recipe.servings,
            size: recipe.serving_size,
            words: recipe.serving_words.clone(),
        }
    }
}

/// One change. Whatever it does not name stays: planned servings and planned
/// meals above all.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum WeekChange {
    /// Other lines in place of a recipe's line, wherever the recipe is served.
    Line {
        /// Which recipe.
        recipe: RecipeId,
        /// Index of the line; the line itself goes before it.
        line: usize,
        /// The line as it stands.
        was: RecipeLine,
        /// What takes its place.
        lines: Vec<RecipeLine>,
        /// What is done.
        #[serde(flatten)]
        way: LineWay,
    },
    /// Another portion of a recipe, wherever it is served.
    Portion {
        /// Which recipe.
        recipe: RecipeId,
        /// How many times the old portion.
        share: Decimal,
        /// As it stands.
        was: Portion,
        /// As it becomes.
        becomes: Portion,
    },
    /// Another recipe of the book for one choice.
    Choice {
        /// Where.
        place: ChoicePlace,
        /// On which day.
        date: Date,
        /// What is served.
        was: RecipeId,
        /// What is served instead.
        becomes: RecipeId,
    },
}

impl WeekChange {
    /// The recipe that is changed, if one is.
    pub fn recipe(&self) -> Option<&RecipeId> {
        match self {
            Self::Line { recipe, .. } | Self::Portion { recipe, .. } => Some(recipe),
            Self::Choice { .. } => None,
        }
    }

    /// The recipe with this change; nothing where the change is of something
    /// else, or no longer fits.
    pub fn in_recipe(&self, of: &Recipe) -> Option<Recipe> {
        if self.recipe() != Some(&of.id) {
            return None;
        }
        let mut changed = of.clone();
        match self {
            Self::Line {
                line, was, lines, ..
            } => {
                let at = nearest(&of.lines, *line, was)?;
                changed.lines.splice(at..=at, lines.iter().cloned());
            }
            Self::Portion { was, becomes, .. } => {
                if Portion::of(of) != *was {
                    return None;
                }
                changed.servings = becomes.servings;
                changed.serving_size = becomes.size;
                changed.serving_words.clone_from(&becomes.words);
            }
            Self::Choice { .. } => return None,
        }
        Some(changed)
    }

    /// The week with this change; nothing where the change is of something
    /// else, or no longer fits.
    pub fn in_week(&self, of: &Week) -> Option<Week> {
        let Self::Choice {
            place,
            date,
            was,
            becomes,
        } = self
        else {
            return None;
        };
        let fits = of.days.get(place.day)?.date == *date && place.of(of)?.recipe == *was;
        let mut changed = of.clone();
        let meal = changed.days.get_mut(place.day)?.meals.get_mut(place.meal)?;
        let offer = meal.offers.get_mut(place.offer)?;
        offer
            .choices
            .get_mut(place.choice)?
            .recipe
            .clone_from(becomes);
        fits.then_some(changed)
    }

    /// Makes the change in a book. False, and nothing is changed, where it no
    /// longer fits.
    pub fn apply(&self, book: &mut Book, week: &WeekId) -> bool {
        for recipe in &mut book.recipes {
            if let Some(changed) = self.in_recipe(recipe) {
                *recipe = changed;
                return true;
            }
        }
        for planned in &mut book.weeks {
            if planned.id != *week {
                continue;
            }
            if let Some(changed) = self.in_week(planned) {
                *planned = changed;
                return true;
            }
        }
        false
    }
}

/// The line that is meant: the one at its old index, or the nearest that is
/// the same, where lines before it have come or gone.
fn nearest(lines: &[RecipeLine], index: usize, wanted: &RecipeLine) -> Option<usize> {
    let same = lines.iter().enumerate().filter(|(_, line)| *line == wanted);
    same.map(|(at, _)| at).min_by_key(|at| at.abs_diff(index))
}
