//! In what order a kitchen works: what is done the day before, what is made
//! early and held cold, what is cooked for hot holding, what waits for service.
//!
//! It rests on words of the recipe's lines and method, which a table lists,
//! and on the minutes that the office states.

use super::{CookItem, Kitchen};
use crate::kitchen::Held;
use crate::recipe::RecipeId;
use crate::tables::{self, TableError};
use serde::{Deserialize, Serialize};
use std::cmp::Reverse;

/// What a word of the table means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Means {
    #[serde(rename = "day before")]
    DayBefore,
    Early,
    Last,
    #[serde(rename = "held hot")]
    HeldHot,
    #[serde(rename = "held cold")]
    HeldCold,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "lowercase")]
enum Place {
    Line,
    Method,
}

#[derive(Debug, Clone, Deserialize)]
struct PrepRow {
    means: Means,
    place: Place,
    words: String,
}

/// Words that tell when a step is done and how a dish is held.
#[derive(Debug, Clone)]
pub struct PrepWords(Vec<PrepRow>);

impl PrepWords {
    /// Reads the table.
    ///
    /// # Errors
    /// When a row is incomplete.
    pub fn from_csv(text: &str) -> Result<Self, TableError> {
        let rows = tables::read("prep_words", text)?;
        Ok(Self(rows.into_iter().map(|row| row.row).collect()))
    }

    fn found(&self, place: Place, text: &str) -> impl Iterator<Item = Means> {
        let text = text.to_lowercase();
        self.0
            .iter()
            .filter(move |row| row.place == place && text.contains(&row.words))
            .map(|row| row.means)
    }
}

/// When a step is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "camelCase")]
pub enum Moment {
    /// The day before, or earlier.
    DayBefore,
    /// Early on the day.
    Early,
    /// So that it is ready for service.
    ForService,
    /// Just before or at service.
    Last,
}

/// A step of the day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PrepStep {
    /// When.
    pub moment: Moment,
    /// Of which recipe.
    pub recipe: RecipeId,
    /// The words of the recipe that say so; empty for the cooking itself.
    pub said: String,
    /// Minutes before service at which it begins, where the office states
    /// them.
    pub minutes: Option<u32>,
    /// How the dish is held afterwards, where its words say so.
    pub held: Option<Held>,
}

impl Kitchen<'_> {
    /// The steps of a day in their order. Recipes within others come before
    /// these; of others those that take longest come first.
    pub fn prep_order(&self, items: &[CookItem]) -> Vec<PrepStep> {
        let mut steps: Vec<(Moment, Reverse<usize>, Reverse<u32>, PrepStep)> = Vec::new();
        for item in items {
            let minutes = item.way.as_ref().and_then(|way| way.minutes);
            let place = |moment| (moment, Reverse(item.depth), Reverse(minutes.unwrap_or(0)));
            for (moment, said) in self.said(&item.recipe) {
                let (moment, depth, longest) = place(moment);
                let step = PrepStep {
                    moment,
                    recipe: item.recipe.clone(),
                    said,
                    minutes: None,
                    held: None,
                };
                steps.push((moment, depth, longest, step));
            }
            let held = self.held(&item.recipe);
            let moment = match held {
                Some(Held::Cold) => Moment::Early,
                _ => Moment::ForService,
            };
            let (moment, depth, longest) = place(moment);
            let step = PrepStep {
                moment,
                recipe: item.recipe.clone(),
                said: String::new(),
                minutes,
                held,
            };
            steps.push((moment, depth, longest, step));
        }
        steps.sort_by_key(|(moment, depth, longest, _)| (*moment, *depth, *longest));
        steps.into_iter().map(|(_, _, _, step)| step).collect()
    }

    /// Lines and sentences that are no part of the cooking itself.
    fn said(&self, id: &RecipeId) -> Vec<(Moment, String)> {
        let Some((recipe, _)) = self.recipe(id) else {
            return Vec::new();
        };
        let lines = recipe
            .lines
            .iter()
            .map(|line| (Place::Line, line.text.trim()));
        let sentences = sentences(&recipe.method).map(|sentence| (Place::Method, sentence));
        lines
            .chain(sentences)
            .filter_map(|(place, text)| {
                let moments = self.reference.prep_words.found(place, text);
                let moment = moments.filter_map(moment_of).min()?;
                Some((moment, text.to_owned()))
            })
            .collect()
    }

    /// How a dish is held; hot where its words say both, for it is then
    /// cooked.
    pub fn held(&self, id: &RecipeId) -> Option<Held> {
        let (recipe, _) = self.recipe(id)?;
        let words = &self.reference.prep_words;
        let means: Vec<Means> = words.found(Place::Method, &recipe.method).collect();
        if means.contains(&Means::HeldHot) {
            Some(Held::Hot)
        } else if means.contains(&Means::HeldCold) {
            Some(Held::Cold)
        } else {
            None
        }
    }
}

const fn moment_of(means: Means) -> Option<Moment> {
    match means {
        Means::DayBefore => Some(Moment::DayBefore),
        Means::Early => Some(Moment::Early),
        Means::Last => Some(Moment::Last),
        Means::HeldHot | Means::HeldCold => None,
    }
}

/// Sentences of a text, with their marks.
fn sentences(text: &str) -> impl Iterator<Item = &str> {
    text.split_inclusive(['.', ';', '\n'])
        .map(str::trim)
        .filter(|sentence| !sentence.is_empty())
}
