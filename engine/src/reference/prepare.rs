//! One line from its reading to what arithmetic takes: edible, cooked, kept.

use super::Reference;
use crate::foods::{FoodId, NutrientId};
use crate::recipe::{Correction, LineKind, ReadLine, RecipeId, Route, WeighedLine};
use crate::units::Grams;
use crate::yields::{AmountBasis, CookedYield, EdiblePortion, Treatment};
use rust_decimal::Decimal;
use serde::Serialize;
use std::fmt;

use super::sub_recipe::SubRecipeProblem;

/// A line with every step between its words and its figures.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct LineStudy {
    /// What the line says, and its weight as stated.
    pub read: ReadLine,
    /// The other recipe that the line names, if it does.
    pub recipe: Option<RecipeId>,
    /// The weight without its refuse.
    pub edible: Option<EdiblePortion>,
    /// How it counts once it is cooked, if a person has said so.
    pub cooked: Option<CookedYield>,
    /// Share of each nutrient that stays through that, where both entries have
    /// a value; empty for a line that is not cooked.
    pub retained: Vec<Retained>,
    /// What the dataset and the tables offer for cooking it; empty where the
    /// food is not raw.
    pub can_be_cooked: Vec<CookedYield>,
    /// What drains, rinses or fries away.
    pub treatments: Vec<Treatment>,
    /// What keeps the line from being computed.
    pub problem: Option<PrepareProblem>,
}

/// The share of one nutrient that stays through cooking.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Retained {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Share, 1 for all of it.
    pub share: Decimal,
}

/// Why a line cannot be taken to the dish, besides what its reading reports.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum PrepareProblem {
    /// No route leads from the raw to the cooked entry.
    NoYield {
        /// The raw food.
        raw: FoodId,
        /// The cooked entry that was chosen.
        cooked: FoodId,
    },
    /// A weight that a person has set is below zero.
    NegativeWeight,
    /// Another recipe is meant, and it cannot be used.
    SubRecipe(SubRecipeProblem),
}

impl fmt::Display for PrepareProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoYield { raw, cooked } => write!(
                out,
                "there is no yield from {raw} to {cooked}: weigh the cooked food and enter its weight"
            ),
            Self::NegativeWeight => {
                out.write_str("the weight is below zero: enter zero or more grams")
            }
            Self::SubRecipe(problem) => problem.fmt(out),
        }
    }
}

impl Reference {
    /// Takes a line that names a food to the dish.
    pub(super) fn prepare(
        &self,
        index: usize,
        read: ReadLine,
        correction: &Correction,
    ) -> (LineStudy, Option<WeighedLine>) {
        let mut study = LineStudy {
            recipe: None,
            edible: self.edible(&read, correction),
            cooked: None,
            retained: Vec::new(),
            can_be_cooked: read
                .food
                .map(|food| self.yields.proposals(&self.foods, food))
                .unwrap_or_default(),
            treatments: correction
                .treatments
                .iter()
                .flat_map(|id| self.treatments.of(id))
                .cloned()
                .collect(),
            problem: None,
            read,
        };
        if study.read.reading.kind != LineKind::Ingredient {
            return (study, None);
        }
        let mut part = self.edible_part(index, &study);
        part.keeps = self.treatments.keeps(&correction.treatments);
        if part.weight.is_some_and(|weight| weight < Grams::ZERO) {
            study.problem = Some(PrepareProblem::NegativeWeight);
            part = WeighedLine::new(index, part.food, None);
        }
        let part = self.cook(part, correction, &mut study);
        (study, Some(part))
    }

    /// The refuse comes off a weight that is meant as purchased. Measures of
    /// the dataset are for the edible portion already, and so is a weight that
    /// a person has set.
    fn edible(&self, read: &ReadLine, correction: &Correction) -> Option<EdiblePortion> {
        let weighed = read.weight.as_ref().ok()?;
        let food = self.foods.food(read.food?)?;
        let stated_mass = matches!(weighed.route, Route::StatedMass);
        let basis = correction
            .basis
            .or_else(|| self.basis_words.basis(&read.text))
            .filter(|_| stated_mass)
            .unwrap_or(AmountBasis::EdiblePortion);
        Some(
            self.trim_yields
                .edible_portion(food, weighed.grams, basis, &read.text),
        )
    }

    fn edible_part(&self, index: usize, study: &LineStudy) -> WeighedLine {
        let food = study.read.food;
        let Ok(weighed) = &study.read.weight else {
            return WeighedLine::new(index, food, None);
        };
        // Of a food that is not known the weight still counts: nothing else of
        // that weight is known, and coverage must say so.
        let Some(edible) = &study.edible else {
            return WeighedLine {
                bounds: Some((weighed.low, weighed.high)),
                ..WeighedLine::new(index, food, Some(weighed.grams))
            };
        };
        WeighedLine {
            bounds: Some((weighed.low * edible.low, weighed.high * edible.high)),
            ..WeighedLine::new(index, food, Some(edible.edible))
        }
    }

    /// Puts the cooked entry in the raw one's place, if a person has said so.
    fn cook(
        &self,
        part: WeighedLine,
        correction: &Correction,
        study: &mut LineStudy,
    ) -> WeighedLine {
        let Some((cooked, raw)) = correction.cooked.as_ref().zip(part.food) else {
            return part;
        };
        let weights = part.weight.zip(cooked.weight);
        let Some(found) = self
            .yields
            .cooked_yield(&self.foods, raw, cooked.food, weights)
        else {
            study.problem = Some(PrepareProblem::NoYield {
                raw,
                cooked: cooked.food,
            });
            return WeighedLine::new(part.line, Some(cooked.food), None);
        };
        let weight = part.weight.map(|weight| weight * found.factor);
        let bounds = part
            .bounds
            .map(|(low, high)| (low * found.low, high * found.high));
        study.retained = self.retained(&found, raw);
        study.cooked = Some(found);
        WeighedLine {
            food: Some(cooked.food),
            weight,
            bounds,
            ..part
        }
    }

    fn retained(&self, cooked: &CookedYield, raw: FoodId) -> Vec<Retained> {
        let nutrients = self.foods.nutrients().iter();
        nutrients
            .filter_map(|nutrient| {
                Some(Retained {
                    nutrient: nutrient.id,
                    share: cooked.retention(&self.foods, raw, nutrient.id)?,
                })
            })
            .collect()
    }
}
