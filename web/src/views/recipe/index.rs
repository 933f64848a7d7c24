//! All recipes of the book.

use super::figures::{BigFigure, FIGURES};
use super::words;
use crate::components::use_in_parts;
use crate::format;
use crate::page::{Page, use_page};
use crate::route::Route;
use crate::state::Action;
use crate::tables::StudiedRecipe;
use crate::words::{UNKNOWN, title_or_untitled};
use engine::components::BeansRole;
use engine::exact::Digits;
use engine::recipe::{Recipe, RecipeId};
use engine::units::Servings;
use rust_decimal::Decimal;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The recipes whose titles have all these words, in any order.
pub fn find<'a>(
    recipes: &'a [Rc<Recipe>],
    words: &str,
) -> impl Iterator<Item = &'a Rc<Recipe>> + use<'a> {
    let wanted: Vec<String> = words.split_whitespace().map(str::to_lowercase).collect();
    recipes.iter().filter(move |recipe| {
        let title = recipe.title.to_lowercase();
        wanted.iter().all(|word| title.contains(word.as_str()))
    })
}

/// A card with nothing on it; the desk gives it a name of its own.
fn blank() -> Recipe {
    Recipe {
        id: RecipeId(String::new()),
        title: words::NEW_TITLE.to_string(),
        servings: Servings::new(Decimal::ONE_HUNDRED),
        serving_words: String::new(),
        serving_size: None,
        finished_weight: None,
        lines: Vec::new(),
        beans: BeansRole::default(),
        method: String::new(),
    }
}

/// The view of all recipes.
#[component]
pub fn RecipeIndex() -> Html {
    let page = use_page();
    let wanted = use_state(String::new);
    let oninput = {
        let wanted = wanted.clone();
        Callback::from(move |event: InputEvent| {
            wanted.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let add = {
        let page = page.clone();
        Callback::from(move |_| {
            let recipe = blank();
            let id = page.contents().free_recipe_id(&recipe.title);
            page.act(Action::AddRecipe(recipe));
            crate::page::go(&Route::Recipe(id));
        })
    };
    let recipes = &page.contents().recipes;
    let found: Vec<&Rc<Recipe>> = find(recipes, &wanted).collect();
    let parts = use_in_parts((*wanted).clone(), found.len());
    html! {
        <div class="index">
            <h1>{ words::TITLE }</h1>
            <p class="lead">{ words::LEAD }</p>
            <div class="ways">
                <span class="field">
                    <label for="find-recipe">{ words::FIND }</label>
                    <input id="find-recipe" type="search" autocomplete="off"
                        value={(*wanted).clone()} {oninput} />
                </span>
                <button type="button" id="new-recipe" class="main-way" onclick={add}>{ words::NEW }</button>
            </div>
            if recipes.is_empty() {
                <p>{ words::NONE }</p>
            } else if found.is_empty() {
                <p role="status">{ words::NONE_FOUND }</p>
            } else {
                <table class="index-table">
                    <thead><tr>
                        <th scope="col">{ words::COLUMN_RECIPE }</th>
                        <th scope="col" class="number">{ words::COLUMN_SERVINGS }</th>
                        { for FIGURES.iter().map(|figure| html! {
                            <th scope="col" class="number">
                                { figure.name }{ " " }<small>{ figure.unit }</small>
                            </th>
                        }) }
                        <th scope="col">{ words::COLUMN_OPEN }</th>
                    </tr></thead>
                    <tbody>
                        { for found.into_iter().take(parts.shown()).map(|recipe| row(&page, recipe)) }
                    </tbody>
                </table>
                { parts.more() }
            }
        </div>
    }
}

/// As entered, or as it follows from the size of a serving.
fn servings(recipe: &Recipe, study: &StudiedRecipe) -> String {
    let servings = match &study.analysis {
        Ok(analysis) => analysis.servings,
        Err(_) => recipe.servings,
    };
    format::short(servings.servings(), Digits(2))
}

fn row(page: &Page, recipe: &Rc<Recipe>) -> Html {
    let study = page.tables.study(recipe, page.contents());
    let known = |figure: &BigFigure| {
        let analysis = study.analysis.as_ref().ok()?;
        format::known(&analysis.per_serving(figure.nutrient)?, figure.digits)
    };
    html! {
        <tr key={recipe.id.0.clone()} data-test="recipe-row" data-recipe={recipe.id.0.clone()}>
            <th scope="row">
                <a href={Route::Recipe(recipe.id.clone()).fragment()} data-test="recipe-link">
                    { title_or_untitled(&recipe.title) }
                </a>
            </th>
            <td class="number" data-label={words::COLUMN_SERVINGS}>
                { servings(recipe, &study) }
            </td>
            { for FIGURES.iter().map(|figure| html! {
                <td class="number" data-label={figure.name}>
                    { known(figure).unwrap_or_else(|| UNKNOWN.to_string()) }
                </td>
            }) }
            <td data-label={words::COLUMN_OPEN}>{ words::open_lines(study.open_count()) }</td>
        </tr>
    }
}
