//! Averages of the meals offered, weighted by planned servings.
//!
//! 7 CFR 210.10(i)(1)-(3) and 220.8(i): a week's analysis weights each choice
//! by the servings planned of it. Over the days with a meal of one kind for
//! one grade group,
//!
//! average = Σ (planned servings × amount per serving) ÷ Σ planned meals.

use super::{Choice, Date, GradeGroup, Meal, MealKind, Week};
use crate::analysis::RecipeAnalysis;
use crate::exact::PartialSum;
use crate::foods::NutrientId;
use crate::recipe::RecipeId;
use crate::units::Servings;
use serde::{Deserialize, Serialize};
use std::fmt;

/// A recipe's analysis under the name by which weeks refer to it.
pub type ServedRecipe<'a> = (&'a RecipeId, &'a RecipeAnalysis);

/// One meal kind for one grade group: what a federal pattern speaks of.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub struct Service {
    /// Which meal.
    pub kind: MealKind,
    /// For whom.
    pub group: GradeGroup,
}

/// A nutrient's average per meal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct NutrientAverage {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Average per planned meal, with what is missing from it.
    pub amount: PartialSum,
}

/// The averages of one service over a week.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct MealAverage {
    /// Which service.
    pub service: Service,
    /// Days that serve it.
    pub days: Vec<Date>,
    /// Meals planned over these days.
    pub planned_meals: Servings,
    /// One average per nutrient asked for.
    pub nutrients: Vec<NutrientAverage>,
    /// What fluid milk brings of them, as far as that was asked for.
    pub fluid_milk: Vec<NutrientAverage>,
}

/// Why a week cannot be averaged.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum WeekError {
    /// A choice names a recipe that is not in the book.
    UnknownRecipe {
        /// On which day.
        date: Date,
        /// Which recipe.
        recipe: RecipeId,
    },
    /// A choice's planned servings are negative.
    NegativeServings {
        /// On which day.
        date: Date,
        /// Which recipe.
        recipe: RecipeId,
    },
    /// A meal is planned for no one, or for fewer.
    NoMeals {
        /// On which day.
        date: Date,
        /// Which meal.
        kind: MealKind,
        /// For which group.
        group: GradeGroup,
    },
}

impl fmt::Display for WeekError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::UnknownRecipe { date, recipe } => write!(
                out,
                "{date}: the recipe \"{}\" is not in the book: choose another or write it",
                recipe.0
            ),
            Self::NegativeServings { date, recipe } => write!(
                out,
                "{date}: the servings planned of \"{}\" are below zero: enter zero or more",
                recipe.0
            ),
            Self::NoMeals { date, kind, group } => write!(
                out,
                "{date}: {kind} for {group} has no planned meals: enter how many are planned, or take the meal off the day"
            ),
        }
    }
}

impl std::error::Error for WeekError {}

impl Week {
    /// The services that the week plans, each once, in order.
    pub fn services(&self) -> Vec<Service> {
        let mut services: Vec<Service> = self
            .days
            .iter()
            .flat_map(|day| &day.meals)
            .map(|meal| Service {
                kind: meal.kind,
                group: meal.group.clone(),
            })
            .collect();
        services.sort();
        services.dedup();
        services
    }

    /// The recipes that the week serves, each once, in the order of their names.
    pub fn recipes(&self) -> Vec<RecipeId> {
        let mut names: Vec<RecipeId> = self
            .days
            .iter()
            .flat_map(|day| &day.meals)
            .flat_map(Meal::choices)
            .map(|choice| choice.recipe.clone())
            .collect();
        names.sort();
        names.dedup();
        names
    }

    /// The meals of one service, with their dates.
    pub fn meals_of<'a>(&'a self, service: &'a Service) -> impl Iterator<Item = (Date, &'a Meal)> {
        self.days.iter().flat_map(move |day| {
            day.meals
                .iter()
                .filter(move |meal| meal.kind == service.kind && meal.group == service.group)
                .map(move |meal| (day.date, meal))
        })
    }
}

impl Meal {
    /// All choices of all offers.
    pub fn choices(&self) -> impl Iterator<Item = &Choice> {
        self.offers.iter().flat_map(|offer| &offer.choices)
    }
}

/// Averages `nutrients` over the meals of `service` in `week`. `recipes` must
/// be sorted by name.
///
/// # Errors
/// When a choice names an unknown recipe, or planned numbers make no sense.
pub fn average(
    week: &Week,
    service: &Service,
    recipes: &[ServedRecipe<'_>],
    nutrients: &[NutrientId],
) -> Result<MealAverage, WeekError> {
    let mut days = Vec::new();
    let mut planned_meals = Servings::ZERO;
    let mut totals = vec![PartialSum::default(); nutrients.len()];
    for (date, meal) in week.meals_of(service) {
        if meal.planned_meals <= Servings::ZERO {
            return Err(WeekError::NoMeals {
                date,
                kind: meal.kind,
                group: meal.group.clone(),
            });
        }
        days.push(date);
        planned_meals += meal.planned_meals;
        for choice in meal.choices() {
            let analysis = find(recipes, choice, date)?;
            for (total, nutrient) in totals.iter_mut().zip(nutrients) {
                if let Some(amount) = served(analysis, choice, *nutrient) {
                    total.merge(&amount);
                }
            }
        }
    }
    days.dedup();
    let nutrients = nutrients
        .iter()
        .zip(totals)
        .map(|(nutrient, total)| NutrientAverage {
            nutrient: *nutrient,
            amount: if days.is_empty() {
                total
            } else {
                total.divided(planned_meals.servings())
            },
        })
        .collect();
    Ok(MealAverage {
        service: service.clone(),
        days,
        planned_meals,
        nutrients,
        fluid_milk: Vec::new(),
    })
}

fn find<'a>(
    recipes: &[ServedRecipe<'a>],
    choice: &Choice,
    date: Date,
) -> Result<&'a RecipeAnalysis, WeekError> {
    let recipe = choice.recipe.clone();
    if choice.planned < Servings::ZERO {
        return Err(WeekError::NegativeServings { date, recipe });
    }
    recipes
        .binary_search_by_key(&&recipe, |(id, _)| *id)
        .map(|index| recipes[index].1)
        .map_err(|_| WeekError::UnknownRecipe { date, recipe })
}

/// What the planned servings of one choice bring. A choice of which none is
/// planned brings nothing, not even a missing value.
fn served(analysis: &RecipeAnalysis, choice: &Choice, nutrient: NutrientId) -> Option<PartialSum> {
    if choice.planned == Servings::ZERO {
        return None;
    }
    analysis.total(nutrient).map(|total| {
        total
            .scaled(choice.planned.servings())
            .divided(analysis.servings.servings())
    })
}
