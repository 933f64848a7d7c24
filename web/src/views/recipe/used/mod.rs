//! Where a recipe is used: the recipes that are made with it, and the weeks
//! that serve it, with what has moved there since the card was last kept.

mod words;

use super::swaps::{WEEK_NUTRIENTS, WeekMoves};
use crate::page::{Page, use_page};
use crate::route::Route;
use crate::state::Contents;
use crate::words::title_or_untitled;
use engine::recipe::{Recipe, RecipeId};
use engine::reference::{Uses, uses};
use engine::swaps::{Reach, WeekChange};
use gloo::timers::callback::Timeout;
use std::rc::Rc;
use yew::prelude::*;

/// For so many milliseconds nothing is typed before it is looked.
const PAUSE: u32 = 250;

/// Which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct UsedProps {
    /// The recipe as it stands.
    pub recipe: Rc<Recipe>,
}

/// The section.
#[component]
pub fn Used(props: &UsedProps) -> Html {
    let page = use_page();
    let recipe = &props.recipe;
    let contents = page.contents();
    let found = use_uses(&recipe.id, contents);
    let kept = contents.kept(&recipe.id).filter(|kept| *kept != recipe);
    // What has moved is worked out when it is asked for.
    let is_open = use_state(|| false);
    let ontoggle = {
        let is_open = is_open.clone();
        Callback::from(move |event: Event| {
            let details = event.target_unchecked_into::<web_sys::Element>();
            is_open.set(details.has_attribute("open"));
        })
    };
    let Some(Uses {
        recipes,
        further,
        weeks,
    }) = &*found
    else {
        return Html::default();
    };
    html! {
        <section class="used" aria-labelledby="used" data-test="used">
            <h2 id="used">{ words::TITLE }</h2>
            if recipes.is_empty() && weeks.is_empty() {
                <p class="hint">{ words::NOWHERE }</p>
            }
            { list(words::IN_RECIPES, recipes.iter().map(|id| recipe_way(contents, id))) }
            { list(words::THROUGH_THEM, further.iter().map(|id| recipe_way(contents, id))) }
            { list(words::IN_WEEKS, weeks.iter().filter_map(|id| {
                let week = contents.week(id)?;
                let route = Route::Week(id.clone());
                Some((route, title_or_untitled(&week.title)))
            })) }
            if let (Some(kept), false) = (kept, weeks.is_empty()) {
                <details data-test="moved-since" {ontoggle}>
                    <summary>{ words::MOVED }</summary>
                    if *is_open { <Moved recipe={recipe.clone()} kept={kept.clone()} /> }
                </details>
            }
        </section>
    }
}

/// Where a recipe is used, once typing has paused: each line of the book is
/// looked at, which must not hold up a letter. Until then what it was.
#[hook]
fn use_uses(id: &RecipeId, contents: &Contents) -> UseStateHandle<Option<Uses>> {
    let found = use_state(|| None);
    use_effect_with((id.clone(), contents.clone()), {
        let found = found.clone();
        move |(id, contents)| {
            let (id, contents) = (id.clone(), contents.clone());
            let look = move || found.set(Some(uses(&contents.book(), &id)));
            let timer = Timeout::new(PAUSE, look);
            move || drop(timer)
        }
    });
    found
}

fn recipe_way(contents: &Contents, id: &RecipeId) -> (Route, String) {
    let recipe = contents.recipe(id);
    let title = recipe.map_or_else(|| id.0.clone(), |recipe| title_or_untitled(&recipe.title));
    (Route::Recipe(id.clone()), title)
}

fn list(title: crate::language::Say, ways: impl Iterator<Item = (Route, String)>) -> Html {
    let ways: Vec<_> = ways.collect();
    if ways.is_empty() {
        return Html::default();
    }
    html! {<>
        <h3>{ title }</h3>
        <ul>{ for ways.into_iter().map(|(route, title)| html! {
            <li><a href={route.fragment()} data-test="used-in">{ title }</a></li>
        }) }</ul>
    </>}
}

#[derive(Clone, PartialEq, Properties)]
struct MovedProps {
    recipe: Rc<Recipe>,
    kept: Rc<Recipe>,
}

/// What has moved in each week since the card was last kept.
#[component]
fn Moved(props: &MovedProps) -> Html {
    let page = use_page();
    let key = (props.clone(), page.contents().clone());
    let weeks = use_memo(key, |(props, contents)| {
        Rc::new(since_kept(&page, contents, props))
    });
    html! { <WeekMoves weeks={(*weeks).clone()} /> }
}

/// The averages as they stand are at hand; what they were with the kept form
/// is worked out, and told the other way round.
fn since_kept(page: &Page, contents: &Contents, props: &MovedProps) -> Vec<WeekChange> {
    let book = contents.book();
    let tables = &page.tables;
    let reach = Reach::new(&tables.reference, &book, &props.recipe.id, |one| {
        let of_contents = contents.recipe(&one.id).cloned();
        let one = of_contents.unwrap_or_else(|| Rc::new(one.clone()));
        tables.study(&one, contents)
    });
    let weeks = reach.with(&props.kept, &WEEK_NUTRIENTS);
    weeks.into_iter().map(WeekChange::reversed).collect()
}
