//! What must stay: days, choices, recipes and lines, to be ticked.

use super::Wishes;
use super::words;
use crate::page::{Page, use_page};
use crate::views::week::words as week_words;
use crate::words::title_or_untitled;
use engine::mend::{ChoicePlace, Lock};
use engine::recipe::{Recipe, RecipeId};
use engine::week::{Date, Week};
use std::collections::BTreeSet;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What is marked, and how to mark.
#[derive(Clone, PartialEq, Properties)]
pub struct KeepProps {
    /// The week.
    pub week: Rc<Week>,
    /// What is wished.
    pub wishes: Wishes,
    /// Wishes something else.
    pub wish: Callback<Wishes>,
}

/// The marks, folded up at first.
#[component]
pub fn Keep(props: &KeepProps) -> Html {
    let page = use_page();
    let week = &props.week;
    let dates: BTreeSet<Date> = week.days.iter().map(|day| day.date).collect();
    let served: BTreeSet<&RecipeId> = ChoicePlace::all(week)
        .map(|(_, choice)| &choice.recipe)
        .collect();
    html! {
        <details class="mend-keep">
            <summary>
                { words::KEEP } { " (" } { words::keep_count(props.wishes.locks.len()) } { ")" }
            </summary>
            <p class="hint">{ words::KEEP_HINT }</p>
            <fieldset>
                <legend>{ words::KEEP_DAYS }</legend>
                { for dates.into_iter().map(|date| {
                    tick(props, &week_words::day(date), Lock::Day { date })
                }) }
            </fieldset>
            <fieldset>
                <legend>{ words::KEEP_CHOICES }</legend>
                { for ChoicePlace::all(week).map(|(place, choice)| {
                    let title = title_of(&page, &choice.recipe);
                    let day = &week.days[place.day];
                    let meal = &day.meals[place.meal];
                    let meal = week_words::service(meal.kind, &meal.group.0);
                    let name = format!("{}, {meal}: {title}", week_words::day(day.date));
                    tick(props, &name, Lock::Choice { place })
                }) }
            </fieldset>
            <fieldset>
                <legend>{ words::KEEP_RECIPES }</legend>
                { for served.into_iter().filter_map(|id| page.contents().recipe(id)).map(|recipe| {
                    of_recipe(props, recipe)
                }) }
            </fieldset>
        </details>
    }
}

fn title_of(page: &Page, id: &RecipeId) -> String {
    let recipe = page.contents().recipe(id);
    recipe.map_or_else(|| id.0.clone(), |recipe| title_or_untitled(&recipe.title))
}

fn of_recipe(props: &KeepProps, recipe: &Recipe) -> Html {
    let title = title_or_untitled(&recipe.title);
    let whole = Lock::Recipe {
        recipe: recipe.id.clone(),
    };
    let lines = recipe.lines.iter().enumerate();
    let lines = lines.filter(|(_, line)| !line.text.trim().is_empty());
    html! {
        <div class="mend-keep-recipe">
            { tick(props, &title, whole) }
            { for lines.map(|(at, line)| {
                let lock = Lock::Line { recipe: recipe.id.clone(), line: at };
                tick(props, &line.text, lock)
            }) }
        </div>
    }
}

fn tick(props: &KeepProps, name: &str, lock: Lock) -> Html {
    let checked = props.wishes.locks.contains(&lock);
    let onchange = {
        let (wishes, wish) = (props.wishes.clone(), props.wish.clone());
        Callback::from(move |event: Event| {
            let on = event.target_unchecked_into::<HtmlInputElement>().checked();
            let mut changed = wishes.clone();
            changed.locks.retain(|other| *other != lock);
            if on {
                changed.locks.push(lock.clone());
            }
            wish.emit(changed);
        })
    };
    html! {
        <label class="tick"><input type="checkbox" {checked} {onchange} />{ " " }{ name }</label>
    }
}
