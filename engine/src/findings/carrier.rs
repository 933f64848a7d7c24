//! What carries a figure: which day and choice bring how much of it.

use crate::foods::NutrientId;
use crate::recipe::RecipeId;
use crate::week::{Date, ServedRecipe, Service, Week};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// One choice's part in a week's average.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Carrier {
    /// On which day.
    pub date: Date,
    /// Which recipe.
    pub recipe: RecipeId,
    /// Its known part of the average meal, in the nutrient's unit.
    pub amount: Decimal,
    /// Share of the known total, 0 to 1; nothing where that is zero.
    pub share: Option<Decimal>,
    /// True when some of it is unknown.
    pub incomplete: bool,
}

/// Every choice's part in the average meal of `service`, largest first.
/// `recipes` must be sorted by name; choices that it lacks are left out, for
/// [`crate::week::average`] has reported them.
pub fn carriers(
    week: &Week,
    service: &Service,
    recipes: &[ServedRecipe<'_>],
    nutrient: NutrientId,
) -> Vec<Carrier> {
    let meals: Decimal = week
        .meals_of(service)
        .map(|(_, meal)| meal.planned_meals.servings())
        .sum();
    if meals <= Decimal::ZERO {
        return Vec::new();
    }
    let mut carriers: Vec<Carrier> = week
        .meals_of(service)
        .flat_map(|(date, meal)| meal.choices().map(move |choice| (date, choice)))
        .filter_map(|(date, choice)| {
            let index = recipes
                .binary_search_by_key(&&choice.recipe, |(id, _)| *id)
                .ok()?;
            let per_serving = recipes[index].1.per_serving(nutrient)?;
            Some(Carrier {
                date,
                recipe: choice.recipe.clone(),
                amount: per_serving.known * choice.planned.servings() / meals,
                share: None,
                incomplete: !per_serving.is_complete(),
            })
        })
        .collect();
    let total: Decimal = carriers.iter().map(|carrier| carrier.amount).sum();
    if !total.is_zero() {
        for carrier in &mut carriers {
            carrier.share = Some(carrier.amount / total);
        }
    }
    carriers.sort_by(|a, b| b.amount.cmp(&a.amount).then(a.date.cmp(&b.date)));
    carriers
}
