//! A week: what is served on each day, and the facts of each dish.

use super::allergens::names;
use super::carbohydrate::in_cell;
use super::dish::facts_in_column;
use super::words;
use crate::format;
use crate::language::Language;
use crate::page::{Page, use_page};
use crate::tables::StudiedRecipe;
use crate::words::title_or_untitled;
use engine::allergens::Presence;
use engine::exact::Digits;
use engine::foods::NutrientId;
use engine::recipe::{Recipe, RecipeId};
use engine::units::Servings;
use engine::week::{Day, GradeGroup, Meal, MealKind, Week};
use std::rc::Rc;
use yew::prelude::*;

/// Which week.
#[derive(Clone, PartialEq, Properties)]
pub struct WeekPaperProps {
    /// The week.
    pub week: Rc<Week>,
    /// In which language.
    pub tongue: Language,
    /// Whether the panels of the dishes follow.
    pub with_panels: bool,
}

/// The meals of one kind on one day: for whom, and which dishes.
struct Served {
    kind: MealKind,
    groups: Vec<GradeGroup>,
    dishes: Vec<RecipeId>,
}

/// The week.
#[component]
pub fn WeekPaper(props: &WeekPaperProps) -> Html {
    let page = use_page();
    let tongue = props.tongue;
    let dishes = dishes_of(props.week.days.iter().flat_map(|day| &day.meals));
    html! {<>
        <p>{ words::text(tongue, "parents-week-how") }</p>
        <p class="family-caution">{ words::text(tongue, "parents-allergen-caution") }</p>
        <p class="family-caution">{ words::text(tongue, "parents-carbohydrate-caution") }</p>
        { for props.week.days.iter().map(|day| html! {
            <section class="family-day">
                <h2>{ words::day(tongue, day.date) }</h2>
                { for served(day).iter().map(|served| meal(&page, served, tongue)) }
            </section>
        }) }
        if props.with_panels { { panels(&page, &dishes, tongue) } }
    </>}
}

fn panels(page: &Page, dishes: &[RecipeId], tongue: Language) -> Html {
    html! {
        <section class="family-panels">
            <h2>{ words::text(tongue, "parents-panels") }</h2>
            <p class="family-note">{ words::text(tongue, "parents-incomplete") }</p>
            <div>{ for dishes.iter().filter_map(|id| {
                let (recipe, study) = of(page, id)?;
                Some(html! {
                    <section class="family-panel">
                        <h3>{ title_or_untitled(&recipe.title) }</h3>
                        { facts_in_column(page, &recipe, &study, tongue) }
                    </section>
                })
            }) }</div>
        </section>
    }
}

/// Groups that get the same kind of meal are told together: a serving is the
/// same for all.
fn served(day: &Day) -> Vec<Served> {
    let mut all: Vec<Served> = Vec::new();
    for meal in &day.meals {
        let place = match all.iter().position(|served| served.kind == meal.kind) {
            Some(place) => place,
            None => {
                all.push(Served {
                    kind: meal.kind,
                    groups: Vec::new(),
                    dishes: Vec::new(),
                });
                all.len() - 1
            }
        };
        let served = &mut all[place];
        if !served.groups.contains(&meal.group) {
            served.groups.push(meal.group.clone());
        }
        for dish in dishes_of([meal]) {
            if !served.dishes.contains(&dish) {
                served.dishes.push(dish);
            }
        }
    }
    all
}

/// What is planned for someone, each dish once.
fn dishes_of<'a>(meals: impl IntoIterator<Item = &'a Meal>) -> Vec<RecipeId> {
    let mut dishes = Vec::new();
    for choice in meals.into_iter().flat_map(Meal::choices) {
        if choice.planned > Servings::ZERO && !dishes.contains(&choice.recipe) {
            dishes.push(choice.recipe.clone());
        }
    }
    dishes
}

fn of(page: &Page, id: &RecipeId) -> Option<(Rc<Recipe>, StudiedRecipe)> {
    let recipe = page.contents().recipe(id)?;
    let study = page.tables.study(recipe, page.contents());
    Some((recipe.clone(), study))
}

fn meal(page: &Page, served: &Served, tongue: Language) -> Html {
    let text = |key| words::text(tongue, key);
    html! {
        <table class="family-meal">
            <caption>{ words::meal(tongue, served.kind, &served.groups) }</caption>
            <thead><tr>
                <th scope="col">{ text("parents-dish") }</th>
                <th scope="col" class="number">{ text("parents-calories") }</th>
                <th scope="col" class="number">{ text("parents-carbohydrate-short") }</th>
                <th scope="col">{ text("parents-allergens") }</th>
            </tr></thead>
            <tbody>{ for served.dishes.iter().filter_map(|id| {
                let (recipe, study) = of(page, id)?;
                Some(row(&recipe, &study, tongue))
            }) }</tbody>
        </table>
    }
}

fn row(recipe: &Recipe, study: &StudiedRecipe, tongue: Language) -> Html {
    let named = |presence, key: &str| {
        names(study, tongue, presence).map(|names| {
            html! {
                <span class="family-answer">
                    <strong>{ words::text(tongue, key) }{ ":" }</strong>{ " " }{ names }
                </span>
            }
        })
    };
    let contains = named(Presence::Contains, "parents-contains-short");
    let may = named(Presence::MayBePresent, "parents-may-short");
    let nothing =
        (contains.is_none() && may.is_none()).then(|| words::text(tongue, "parents-none-named"));
    html! {
        <tr data-test="family-dish" data-recipe={recipe.id.0.clone()}>
            <th scope="row">
                { title_or_untitled(&recipe.title) }
                if !recipe.serving_words.trim().is_empty() {
                    <small>{ &recipe.serving_words }</small>
                }
            </th>
            <td class="number">{ energy(study, tongue) }</td>
            <td class="number">{ in_cell(study, tongue) }</td>
            <td>{ contains }{ may }{ nothing }</td>
        </tr>
    }
}

/// Calories as a panel rounds them would differ from the panel's own digits by
/// nothing but the rounding: the whole number is enough for a table.
fn energy(study: &StudiedRecipe, tongue: Language) -> String {
    let analysis = study.analysis.as_ref().ok();
    let sum = analysis.and_then(|analysis| analysis.per_serving(NutrientId::ENERGY));
    let Some(sum) = sum.filter(|sum| !sum.known_mass.grams().is_zero()) else {
        return words::text(tongue, "parents-not-known");
    };
    let figure = format::number(sum.known, Digits(0));
    match sum.is_complete() {
        true => figure,
        false => words::at_least(tongue, &figure),
    }
}
