//! Recipes: the list, and the card with its readings and figures.

mod carriers;
mod correction;
mod credits;
mod figures;
mod glance;
mod head;
mod index;
mod lines;
mod nurse;
mod nutrients;
mod phrases;
mod portion;
mod reading;
mod safety;
mod settle;
mod sheet;
mod treat;
mod words;

pub use index::{RecipeIndex, find};

use crate::page::{Page, focus_and_mark, go, use_page, use_title};
use crate::route::Route;
use crate::state::{Action, RecipeEdit};
use crate::tables::StudiedRecipe;
use crate::words::title_or_untitled;
use carriers::Carriers;
use credits::Credits;
use engine::foods::NutrientId;
use engine::recipe::{Recipe, RecipeId};
use figures::Figures;
use glance::Glance;
use head::Head;
use lines::Lines;
use nurse::Nurse;
use nutrients::Nutrients;
use portion::Portion;
use safety::Safety;
use settle::Settle;
use sheet::RecipeSheet;
use std::rc::Rc;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

/// How a part of the view changes its recipe.
pub type Edit = Callback<RecipeEdit>;

/// What most parts of the card show.
#[derive(Clone, PartialEq, Properties)]
pub struct CardProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// How to change it.
    pub edit: Edit,
}

/// Tells that a recipe is not there.
pub fn not_in_book(id: &RecipeId) -> Html {
    html! {<>
        <p class="back"><a href={Route::Recipes.fragment()}>{ words::ALL_RECIPES }</a></p>
        <p class="problem" role="alert">{ words::not_in_book(&id.0) }</p>
    </>}
}

/// Which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct RecipeViewProps {
    /// The recipe.
    pub id: RecipeId,
}

/// The view of one recipe.
#[component]
pub fn RecipeView(props: &RecipeViewProps) -> Html {
    let page = use_page();
    // The line whose reading is open for correction.
    let open = use_state(|| None::<usize>);
    let nutrient = use_state(|| NutrientId::SODIUM);
    let recipe = page.contents().recipe(&props.id).cloned();
    let is_blank = recipe
        .as_ref()
        .is_some_and(|recipe| recipe.lines.is_empty());
    use_effect_with((), move |()| {
        // A new card is written from its title on.
        if is_blank {
            focus_and_mark(head::TITLE_FIELD);
        }
    });
    use_title(
        recipe
            .as_ref()
            .map_or("", |recipe| title_or_untitled(&recipe.title)),
    );
    let Some(recipe) = recipe else {
        return not_in_book(&props.id);
    };
    let study = page.tables.study(&recipe, page.contents());
    let kept = page
        .contents()
        .kept(&props.id)
        .filter(|kept| **kept != recipe);
    let before = kept.map(|kept| page.tables.study_kept(kept, page.contents()));
    let edit: Edit = {
        let (page, id) = (page.clone(), props.id.clone());
        Callback::from(move |edit| page.act(Action::Recipe(id.clone(), edit)))
    };
    let choose = {
        let nutrient = nutrient.clone();
        Callback::from(move |chosen| {
            nutrient.set(chosen);
            crate::page::focus("carriers");
        })
    };
    let card = CardProps {
        recipe: recipe.clone(),
        study: study.clone(),
        edit: edit.clone(),
    };
    let set_open = {
        let open = open.clone();
        Callback::from(move |line| open.set(line))
    };
    html! {
        <div class="recipe">
            <p class="back"><a href={Route::Recipes.fragment()}>{ words::ALL_RECIPES }</a></p>
            <h1 class="for-readers">{ title_or_untitled(&recipe.title) }</h1>
            <div class="recipe-columns">
                { ways(&page, &recipe) }
                <article class="card">
                    <Head ..card.clone() />
                    <Portion ..card.clone() />
                    <Lines recipe={recipe.clone()} study={study.clone()} edit={edit.clone()}
                        open={*open} set_open={set_open.clone()} />
                    <Settle recipe={recipe.clone()} study={study.clone()} {set_open} />
                    { method(&recipe, &edit) }
                    <Glance study={study.clone()} before={before.clone()} />
                </article>
                <div class="beside">
                    <Figures recipe={recipe.clone()} study={study.clone()} {before} />
                    <Carriers recipe={recipe.clone()} study={study.clone()} nutrient={*nutrient}
                        on_choose={choose.clone()} />
                    <Credits ..card.clone() />
                    <Safety ..card.clone() />
                    <Nurse study={study.clone()} />
                </div>
                <Nutrients {study} on_choose={choose} />
            </div>
            <RecipeSheet ..card />
        </div>
    }
}

fn method(recipe: &Recipe, edit: &Edit) -> Html {
    let oninput = edit.reform(|event: InputEvent| {
        RecipeEdit::Method(event.target_unchecked_into::<HtmlTextAreaElement>().value())
    });
    html! {
        <section class="method">
            <label for="method" class="section-label">{ words::METHOD }</label>
            <div class="growing" data-text={recipe.method.clone()}>
                <textarea id="method" rows="4" value={recipe.method.clone()} {oninput} />
            </div>
        </section>
    }
}

fn ways(page: &Page, recipe: &Rc<Recipe>) -> Html {
    let copy = {
        let (page, recipe) = (page.clone(), recipe.clone());
        Callback::from(move |_| {
            let title = words::copy_of(&recipe.title);
            let id = page.contents().free_recipe_id(&title);
            page.act(Action::AddRecipe(Recipe {
                title,
                ..(*recipe).clone()
            }));
            go(&Route::Recipe(id));
        })
    };
    let remove = {
        let (page, recipe) = (page.clone(), recipe.clone());
        Callback::from(move |_| {
            page.act(Action::RemoveRecipe(recipe.id.clone()));
            page.tell(
                crate::words::taken_out(title_or_untitled(&recipe.title)),
                true,
            );
            go(&Route::Recipes);
        })
    };
    html! {
        <div class="ways">
            <a class="button main-way" id="to-facts" href={Route::Facts(recipe.id.clone()).fragment()}>
                { words::TO_FACTS }
            </a>
            <button type="button" id="print" onclick={Callback::from(|_| {
                drop(gloo::utils::window().print());
            })}>{ words::PRINT }</button>
            <button type="button" id="copy-recipe" onclick={copy}>{ words::COPY }</button>
            <button type="button" id="remove-recipe" onclick={remove}>{ words::REMOVE }</button>
        </div>
    }
}
