//! What a change of a recipe does to the average meals of a week, and to the
//! verdicts on it.

use super::measure::{ChangeBounds, change};
use super::proposal::NutrientChange;
use super::verdicts::{VerdictChange, verdict_changes};
use crate::book::Book;
use crate::foods::NutrientId;
use crate::mend::{Standing, standings};
use crate::recipe::{Recipe, RecipeId, WeighedLine};
use crate::reference::{RecipeStudy, Reference, uses};
use crate::week::{NutrientAverage, ServedRecipe, Service, Week, WeekError, WeekId, average};
use serde::Serialize;
use std::borrow::{Borrow, Cow};

/// The average meal of a service, before and after.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ServiceChange {
    /// Which meal, for whom.
    pub service: Service,
    /// The nutrients that were asked for.
    pub nutrients: Vec<NutrientChange>,
}

impl ServiceChange {
    fn reversed(self) -> Self {
        let back = |row: NutrientChange| NutrientChange {
            nutrient: row.nutrient,
            before: row.after,
            after: row.before,
            change: row.change.reversed(),
        };
        Self {
            service: self.service,
            nutrients: self.nutrients.into_iter().map(back).collect(),
        }
    }
}

/// What a change of a recipe does to one week.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct WeekChange {
    /// Which week.
    pub week: WeekId,
    /// Its title.
    pub title: String,
    /// The services that are reached, or why that cannot be said.
    pub services: Result<Vec<ServiceChange>, WeekError>,
    /// The requirements on these services whose verdict becomes another one,
    /// and those that stay missed.
    pub verdicts: Vec<VerdictChange>,
}

impl WeekChange {
    /// The same change the other way round.
    pub fn reversed(self) -> Self {
        let services = self.services.map(|services| {
            let services = services.into_iter();
            services.map(ServiceChange::reversed).collect()
        });
        let verdicts = self.verdicts.into_iter();
        Self {
            services,
            verdicts: verdicts.map(VerdictChange::reversed).collect(),
            ..self
        }
    }
}

/// A week that a recipe reaches, as it stands.
#[derive(Debug)]
struct Reached<'a, S> {
    week: &'a Week,
    /// Of all that it serves.
    studies: Vec<(RecipeId, S)>,
    /// Nothing where the week cannot be studied.
    standings: Vec<Standing>,
}

/// The weeks that a recipe reaches, by itself or within other recipes, with
/// the studies of all that they serve: made once, so that many changes of the
/// recipe can be tried.
#[derive(Debug)]
pub struct Reach<'a, S> {
    reference: &'a Reference,
    book: &'a Book,
    weeks: Vec<Reached<'a, S>>,
}

impl<'a, S: Borrow<RecipeStudy>> Reach<'a, S> {
    /// Finds the weeks; `study` studies a recipe of the book as it stands.
    pub fn new(
        reference: &'a Reference,
        book: &'a Book,
        id: &RecipeId,
        mut study: impl FnMut(&'a Recipe) -> S,
    ) -> Self {
        let weeks = uses(book, id).weeks;
        let weeks = weeks.iter().filter_map(|week| book.week(week));
        let mut reached = |week: &'a Week| {
            let recipes = week.recipes().into_iter();
            let recipes = recipes.filter_map(|name| Some((book.recipe(&name)?, name)));
            let studies: Vec<(RecipeId, S)> = recipes
                .map(|(recipe, name)| (name, study(recipe)))
                .collect();
            Reached {
                standings: stands(reference, week, &studies),
                week,
                studies,
            }
        };
        Self {
            reference,
            book,
            weeks: weeks.map(&mut reached).collect(),
        }
    }

    /// What these weeks would be with `changed` in place of the recipe of its
    /// name.
    pub fn with(&self, changed: &Recipe, nutrients: &[NutrientId]) -> Vec<WeekChange> {
        let change = |reached: &Reached<'a, S>| {
            let Reached { week, studies, .. } = reached;
            let after = studies_with(self.reference, self.book, studies, changed);
            let services = per_average_meal(self.reference, week, studies, &after, nutrients);
            let verdicts = services.as_ref().map_or_else(
                |_| Vec::new(),
                |services| {
                    let is_reached = |service: &Service| {
                        services.iter().any(|change| change.service == *service)
                    };
                    let after = stands(self.reference, week, &after);
                    verdict_changes(&reached.standings, &after, is_reached)
                },
            );
            WeekChange {
                week: week.id.clone(),
                title: week.title.clone(),
                services,
                verdicts,
            }
        };
        self.weeks.iter().map(change).collect()
    }
}

/// How a week stands with these studies; nothing where it cannot be studied.
fn stands<S: Borrow<RecipeStudy>>(
    reference: &Reference,
    week: &Week,
    studies: &[(RecipeId, S)],
) -> Vec<Standing> {
    let study = reference.study_week_with(week, studies);
    study.as_ref().map(standings).unwrap_or_default()
}

/// What the average meals of a week become with other studies of its recipes,
/// in the order of the first. Services that the change does not reach are left
/// out.
///
/// # Errors
/// When a choice names a recipe that is missing or cannot be analysed, or
/// planned numbers make no sense.
fn per_average_meal<S: Borrow<RecipeStudy>>(
    reference: &Reference,
    week: &Week,
    studies: &[(RecipeId, S)],
    after: &[(RecipeId, Cow<'_, RecipeStudy>)],
    nutrients: &[NutrientId],
) -> Result<Vec<ServiceChange>, WeekError> {
    let moved = |id: &RecipeId, nutrient| {
        let at = studies.iter().position(|(name, _)| name == id)?;
        let (was, is) = (studies[at].1.borrow(), &*after[at].1);
        Some(per_serving(reference, was, is, nutrient))
    };
    let mut changes = Vec::new();
    for service in week.services() {
        let was = average(week, &service, &served(studies), nutrients)?;
        let is = average(week, &service, &served(after), nutrients)?;
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

/// The studies with another form of one recipe; those that nothing changes are
/// taken over. Recipes that name others are studied again, for they may name
/// this one.
fn studies_with<'s, S: Borrow<RecipeStudy>>(
    reference: &Reference,
    book: &Book,
    studies: &'s [(RecipeId, S)],
    changed: &Recipe,
) -> Vec<(RecipeId, Cow<'s, RecipeStudy>)> {
    let mut with = book.clone();
    for recipe in &mut with.recipes {
        if recipe.id == changed.id {
            recipe.clone_from(changed);
        }
    }
    let study = |(id, study): &'s (RecipeId, S)| {
        let was = study.borrow();
        let names_others = was.lines.iter().any(|line| line.recipe.is_some());
        let again = *id == changed.id || names_others;
        let recipe = with.recipe(id).filter(|_| again);
        let is = recipe.map(|recipe| Cow::Owned(reference.study_recipe(&with, recipe)));
        (id.clone(), is.unwrap_or(Cow::Borrowed(was)))
    };
    studies.iter().map(study).collect()
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
fn served<S: Borrow<RecipeStudy>>(studies: &[(RecipeId, S)]) -> Vec<ServedRecipe<'_>> {
    let mut served: Vec<ServedRecipe<'_>> = studies
        .iter()
        .filter_map(|(id, study)| Some((id, study.borrow().analysis.as_ref().ok()?)))
        .collect();
    served.sort_by_key(|(id, _)| *id);
    served
}
