//! What fills a day: each day's average meal and the choices that make it up.

use crate::exact::PartialSum;
use crate::foods::NutrientId;
use crate::recipe::RecipeId;
use crate::units::Servings;
use crate::week::{Date, ServedRecipe, Service, Week};
use rust_decimal::Decimal;
use serde::Serialize;

/// A choice's part in its day's average meal.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct DayPart {
    /// The part of the meal that it stands in.
    pub part: String,
    /// Which recipe.
    pub recipe: RecipeId,
    /// What it brings, in the nutrient's unit, with what is missing.
    pub amount: PartialSum,
}

/// The average meal of one day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct DayShare {
    /// The day.
    pub date: Date,
    /// Meals planned on it.
    pub meals: Servings,
    /// What the average meal of the day has of the nutrient.
    pub total: PartialSum,
    /// What makes it up, in the order of the plan; a recipe
    /// comes once in each part of the meal.
    pub parts: Vec<DayPart>,
}

/// Each day of a service that is planned for someone. `recipes` must be sorted
/// by name; choices that it lacks are left out, for [`crate::week::average`]
/// has reported them.
pub fn day_shares(
    week: &Week,
    service: &Service,
    recipes: &[ServedRecipe<'_>],
    nutrient: NutrientId,
) -> Vec<DayShare> {
    let meals = week.meals_of(service);
    let planned = meals.filter(|(_, meal)| meal.planned_meals > Servings::ZERO);
    planned
        .map(|(date, meal)| {
            let mut parts: Vec<DayPart> = Vec::new();
            let mut total = PartialSum::default();
            let choices = meal.offers.iter().flat_map(|offer| {
                let title = &offer.title;
                offer.planned_choices().map(move |choice| (title, choice))
            });
            for (title, choice) in choices {
                let found = recipes.binary_search_by_key(&&choice.recipe, |(id, _)| *id);
                let per_serving = found
                    .ok()
                    .and_then(|index| recipes[index].1.per_serving(nutrient));
                let Some(per_serving) = per_serving else {
                    continue;
                };
                let share: Decimal = choice.planned.servings() / meal.planned_meals.servings();
                let amount = per_serving.scaled(share);
                total.merge(&amount);
                let is_it =
                    |part: &&mut DayPart| part.recipe == choice.recipe && part.part == *title;
                match parts.iter_mut().find(is_it) {
                    Some(part) => part.amount.merge(&amount),
                    None => parts.push(DayPart {
                        part: title.clone(),
                        recipe: choice.recipe.clone(),
                        amount,
                    }),
                }
            }
            DayShare {
                date,
                meals: meal.planned_meals,
                total,
                parts,
            }
        })
        .collect()
}
