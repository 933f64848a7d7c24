//! What a change of a recipe does to the average meals of a week.

use super::measure::{ChangeBounds, change};
use super::proposal::NutrientChange;
use crate::book::Book;
use crate::foods::NutrientId;
use crate::recipe::{Recipe, RecipeId, WeighedLine};
use crate::reference::{RecipeStudy, Reference};
use crate::week::{NutrientAverage, ServedRecipe, Service, Week, WeekError, average};
use serde::Serialize;

/// The average meal of a service, before and after.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ServiceChange {
    /// Which meal, for whom.
    pub service: Service,
    /// The nutrients that were asked for.
    pub nutrients: Vec<NutrientChange>,
}

/// What the average meals of a week would be with `changed` in place of the
/// recipe of its name. `studies` are those of the week's recipes as they
/// stand; recipes that name others are studied again, for they may name this
/// one. Services that the change does not reach are left out.
///
/// # Errors
/// When a choice names a recipe that is missing or cannot be analysed, or
/// planned numbers make no sense.
pub fn per_average_meal(
    reference: &Reference,
    book: &Book,
    week: &Week,
    studies: &[(RecipeId, RecipeStudy)],
    changed: &Recipe,
    nutrients: &[NutrientId],
) -> Result<Vec<ServiceChange>, WeekError> {
    let mut with = book.clone();
    for recipe in &mut with.recipes {
        if recipe.id == changed.id {
            recipe.clone_from(changed);
        }
    }
    let mut after = studies.to_vec();
    for (id, study) in &mut after {
        let names_others = study.lines.iter().any(|line| line.recipe.is_some());
        if (*id == changed.id || names_others)
            && let Some(recipe) = with.recipe(id)
        {
            *study = reference.study_recipe(&with, recipe);
        }
    }
    let moved = |id: &RecipeId, nutrient| {
        let of = |studies: &'_ [(RecipeId, RecipeStudy)]| {
            studies.iter().position(|(name, _)| name == id)
        };
        let (was, is) = (&studies[of(studies)?].1, &after[of(&after)?].1);
        Some(per_serving(reference, was, is, nutrient))
    };
    let mut changes = Vec::new();
    for service in week.services() {
        let was = average(week, &service, &served(studies), nutrients)?;
        let is = average(week, &service, &served(&after), nutrients)?;
        if was == is {
            continue;
        }
        let of = |(before, after): (NutrientAverage, NutrientAverage)| {
            let choices = week.meals_of(&service).flat_map(|(_, meal)| meal.choices());
            let whole = choices
                .filter_map(|choice| {
                    let one = moved(&choice.recipe, before.nutrient)?;
                    Some(one.times(choice.planned.servings()))
                })
                .fold(ChangeBounds::NONE, ChangeBounds::plus);
            NutrientChange {
                nutrient: before.nutrient,
                before: before.amount,
                after: after.amount,
                change: whole.divided(was.planned_meals.servings()),
            }
        };
        let pairs = was.nutrients.iter().cloned().zip(is.nutrients);
        changes.push(ServiceChange {
            nutrients: pairs.map(of).collect(),
            service: service.clone(),
        });
    }
    Ok(changes)
}

/// How a serving of a recipe moves: what is the same before and after says
/// nothing, even where it is unknown.
fn per_serving(
    reference: &Reference,
    was: &RecipeStudy,
    is: &RecipeStudy,
    nutrient: NutrientId,
) -> ChangeBounds {
    let (Ok(before), Ok(after)) = (&was.analysis, &is.analysis) else {
        return ChangeBounds::UNKNOWN;
    };
    if before.servings == after.servings {
        let gone = only_in(&was.parts, &is.parts);
        let come = only_in(&is.parts, &was.parts);
        let moved = change(&reference.foods, &gone, &come, nutrient);
        return moved.divided(before.servings.servings());
    }
    match (before.per_serving(nutrient), after.per_serving(nutrient)) {
        (Some(was), Some(is)) => ChangeBounds::of_totals(&was, &is),
        _ => ChangeBounds::UNKNOWN,
    }
}

/// The parts of one list that the other has not, or has fewer times.
fn only_in<'p>(parts: &'p [WeighedLine], others: &[WeighedLine]) -> Vec<&'p WeighedLine> {
    let same = |one: &WeighedLine, two: &WeighedLine| {
        one.food == two.food && one.weight == two.weight && one.keeps == two.keeps
    };
    let count = |list: &[WeighedLine], part| list.iter().filter(|one| same(one, part)).count();
    parts
        .iter()
        .enumerate()
        .filter(|(at, part)| count(&parts[..*at], part) >= count(others, part))
        .map(|(_, part)| part)
        .collect()
}

/// Analyses sorted by name, as averages want them.
fn served(studies: &[(RecipeId, RecipeStudy)]) -> Vec<ServedRecipe<'_>> {
    let mut served: Vec<ServedRecipe<'_>> = studies
        .iter()
        .filter_map(|(id, study)| Some((id, study.analysis.as_ref().ok()?)))
        .collect();
    served.sort_by_key(|(id, _)| *id);
    served
}
