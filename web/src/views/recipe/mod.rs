//! Recipes: the list, and the card with its readings and figures.

mod batch;
mod carriers;
mod cooked;
mod correction;
mod credits;
mod figures;
mod filled;
mod glance;
mod head;
mod index;
mod lines;
mod nutrients;
mod phrases;
mod reading;
mod safety;
mod settle;
mod sheet;
mod sure;
mod swaps;
mod treat;
mod used;
mod versions;
mod within;
mod words;

pub use credits::CreditRecord;
pub use head::batch_yield;
pub use index::{RecipeIndex, find};
pub use phrases::{doubt, sentence};
pub use reading::{Reading, problem_of, reading_of};
pub use versions::VersionsView;

use crate::components::SaveRecipe;
use crate::page::{Page, focus_and_mark, go, use_page, use_title};
use crate::route::Route;
use crate::state::{Action, RecipeEdit};
use crate::tables::StudiedRecipe;
use crate::views::kitchen::Cost;
use crate::words::title_or_untitled;
use batch::Batch;
use carriers::Carriers;
use credits::Credits;
use engine::foods::NutrientId;
use engine::recipe::{Recipe, RecipeId};
use figures::Figures;
use filled::Filled;
use glance::Glance;
use head::Head;
use lines::Lines;
use nutrients::Nutrients;
use safety::Safety;
use settle::Settle;
use sheet::RecipeSheet;
use std::rc::Rc;
use sure::{Carbohydrate, OriginSlip, use_amounts};
use used::Used;
use web_sys::HtmlTextAreaElement;
use within::Within;
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
    /// The line for which it is asked what else could go there.
    #[prop_or_default]
    pub swaps: Option<usize>,
}

/// The view of one recipe.
#[component]
pub fn RecipeView(props: &RecipeViewProps) -> Html {
    let page = use_page();
    match page.contents().recipe(&props.id) {
        Some(recipe) => html! { <Card recipe={recipe.clone()} swaps={props.swaps} /> },
        None => not_in_book(&props.id),
    }
}

#[derive(Clone, PartialEq, Properties)]
struct CardOf {
    recipe: Rc<Recipe>,
    swaps: Option<usize>,
}

/// The card of a recipe of the book, and its figures.
#[component]
fn Card(props: &CardOf) -> Html {
    let page = use_page();
    // The line whose reading is open for correction.
    let open = use_state(|| None::<usize>);
    let nutrient = use_state(|| NutrientId::SODIUM);
    // The nutrient whose origin is shown.
    let origin = use_state(|| None::<NutrientId>);
    use_effect_with((), {
        let evidence = page.evidence.clone();
        move |()| evidence.ask()
    });
    let recipe = &props.recipe;
    let is_blank = recipe.lines.is_empty();
    use_effect_with((), move |()| {
        // A new card is written from its title on.
        if is_blank {
            focus_and_mark(head::TITLE_FIELD);
        }
    });
    use_title(&title_or_untitled(&recipe.title));
    let study = page.tables.study(recipe, page.contents());
    let amounts = use_amounts(&study);
    let kept = page
        .contents()
        .kept(&recipe.id)
        .filter(|kept| *kept != recipe);
    let before = kept.map(|kept| page.tables.study_kept(kept, page.contents()));
    let edit: Edit = {
        let (page, id) = (page.clone(), recipe.id.clone());
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
    let set_origin = {
        let origin = origin.clone();
        Callback::from(move |nutrient| origin.set(nutrient))
    };
    let on_open = set_origin.reform(Some);
    let put_away = set_origin.reform(|()| None);
    html! {
        <div class="recipe">
            <p class="back"><a href={Route::Recipes.fragment()}>{ words::ALL_RECIPES }</a></p>
            <h1 class="for-readers">{ title_or_untitled(&recipe.title) }</h1>
            <div class="recipe-columns">
                { ways(&page, recipe) }
                <article class="card">
                    <Head ..card.clone() />
                    <Batch ..card.clone() />
                    <Lines recipe={recipe.clone()} study={study.clone()} edit={edit.clone()}
                        open={*open} set_open={set_open.clone()} swaps={props.swaps} />
                    <Settle recipe={recipe.clone()} study={study.clone()} {set_open} />
                    <Within ..card.clone() />
                    { method(recipe, &edit) }
                    <Glance study={study.clone()} before={before.clone()} />
                </article>
                <div class="beside">
                    <Figures recipe={recipe.clone()} study={study.clone()} {before}
                        amounts={amounts.clone()} on_open={on_open.clone()} />
                    <Carriers recipe={recipe.clone()} study={study.clone()} nutrient={*nutrient}
                        on_choose={choose.clone()} />
                    <Filled recipe={recipe.clone()} study={study.clone()} nutrient={*nutrient} />
                    <Cost recipe={recipe.clone()} study={study.clone()} />
                    <Carbohydrate study={study.clone()} serving={recipe.serving_words.clone()}
                        on_open={on_open.clone()} />
                    <Safety ..card.clone() />
                </div>
                <div class="below">
                    <Credits ..card.clone() />
                    <Used recipe={recipe.clone()} />
                    <Nutrients study={study.clone()} {amounts} on_choose={choose}
                        on_open={on_open.clone()} />
                </div>
            </div>
            if let Some(nutrient) = *origin {
                <OriginSlip recipe={recipe.clone()} {study} {nutrient} on_choose={on_open}
                    close={put_away} />
            }
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
                crate::words::taken_out(&title_or_untitled(&recipe.title)),
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
            <a class="button" id="to-families"
                href={Route::RecipeForFamilies(recipe.id.clone()).fragment()}>
                { crate::views::parents::TO_FAMILIES }
            </a>
            <button type="button" id="print" onclick={Callback::from(|_| {
                drop(gloo::utils::window().print());
            })}>{ words::PRINT }</button>
            <a class="button" id="to-versions" href={Route::Versions(recipe.id.clone()).fragment()}>
                { versions::WAY }
            </a>
            <button type="button" id="copy-recipe" onclick={copy}>{ words::COPY }</button>
            <button type="button" id="remove-recipe" onclick={remove}>{ words::REMOVE }</button>
            <SaveRecipe recipe={recipe.clone()} />
        </div>
    }
}
