//! The record of a week for a review: everything that a figure rests on, on
//! one printout.

mod assumptions;
mod findings;
mod menus;
mod overrides;
mod recipes;
mod rules;
mod running;
mod sources;
mod words;

/// Leads to the record.
pub use words::TO_REVIEW;

use crate::page::{Page, use_page, use_title};
use crate::route::Route;
use crate::tables::StudiedRecipe;
use crate::views::week::words as week_words;
use crate::words::title_or_untitled;
use engine::recipe::{Recipe, RecipeId};
use engine::week::{Week, WeekId};
use running::use_running_head;
use std::rc::Rc;
use yew::prelude::*;

/// Which week.
#[derive(Clone, PartialEq, Properties)]
pub struct ReviewViewProps {
    /// The week.
    pub id: WeekId,
}

/// A recipe of the week with what is found out about it.
type Dish = (Rc<Recipe>, StudiedRecipe);

/// The view.
#[component]
pub fn ReviewView(props: &ReviewViewProps) -> Html {
    let page = use_page();
    use_effect_with((), {
        let evidence = page.evidence.clone();
        move |()| evidence.ask()
    });
    let week = page.contents().week(&props.id).cloned();
    let title = week.as_ref().map_or("", |week| week.title.as_str());
    let title = title_or_untitled(title);
    use_title(&words::title(&title));
    use_running_head(&words::running_head(&title, page.contents().office()));
    let Some(week) = week else {
        return html! {<>
            <p class="back"><a href={Route::Weeks.fragment()}>{ week_words::ALL_WEEKS }</a></p>
            <p class="problem" role="alert">{ week_words::not_in_book(&props.id.0) }</p>
        </>};
    };
    let dishes = dishes(&page, &week);
    html! {
        <div class="review-view">
            <p class="back"><a href={Route::Week(props.id.clone()).fragment()}>
                { words::back(&title) }
            </a></p>
            <div class="ways">
                <button type="button" id="print" class="main-way" onclick={Callback::from(|_| {
                    // Printing has no outcome to tell.
                    drop(gloo::utils::window().print());
                })}>{ words::PRINT }</button>
            </div>
            <article class="review" data-test="review">
                <h1>{ words::title(&title) }</h1>
                <p>{ page.contents().office().to_owned() }</p>
                <p class="review-stand"><strong>{ words::NOT_CERTIFIED }</strong></p>
                { menus::menus(&page, &week) }
                { findings::findings(&page, &week) }
                { recipes::recipes(&page, &dishes) }
                { rules::rules(&page, &week) }
                { sources::sources(&page, &dishes) }
                { assumptions::assumptions(&dishes) }
                { overrides::overrides(&page, &dishes) }
            </article>
        </div>
    }
}

/// The recipes of the week, each once, by title, with those that their lines
/// name.
fn dishes(page: &Page, week: &Week) -> Vec<Dish> {
    let mut names: Vec<RecipeId> = week.recipes();
    let mut dishes: Vec<Dish> = Vec::new();
    while let Some(name) = names.pop() {
        let is_there = dishes.iter().any(|(recipe, _)| recipe.id == name);
        let Some(recipe) = page.contents().recipe(&name).filter(|_| !is_there) else {
            continue;
        };
        let study = page.tables.study(recipe, page.contents());
        names.extend(study.lines.iter().filter_map(|line| line.recipe.clone()));
        dishes.push((recipe.clone(), study));
    }
    dishes.sort_by(|(a, _), (b, _)| a.title.cmp(&b.title));
    dishes
}

/// A part of the record under its heading.
fn part(id: &'static str, heading: crate::language::Say, body: Html) -> Html {
    html! {
        <section class="review-part" aria-labelledby={id} tabindex="0">
            <h2 {id}>{ heading }</h2>
            { body }
        </section>
    }
}
