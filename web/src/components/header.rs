//! The header: views, steps back and forth, whether the book is stored.

use super::Find;
use crate::language::{Language, LanguageChoice, Say};
use crate::page::use_page;
use crate::route::Route;
use crate::saving::SaveState;
use crate::state::Action;
use crate::words;
use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// What the header shows.
#[derive(Clone, PartialEq, Properties)]
pub struct HeaderProps {
    /// The view that is open.
    pub route: Route,
    /// Whether the book is stored.
    pub saving: SaveState,
}

/// The header.
#[component]
pub fn Header(props: &HeaderProps) -> Html {
    let page = use_page();
    let act = |action: Action| {
        let page = page.clone();
        Callback::from(move |_: MouseEvent| page.act(action.clone()))
    };
    let desk = &page.desk.0;
    let saved = match props.saving {
        SaveState::Demo => words::DEMO,
        SaveState::Saved => words::SAVED,
        SaveState::Waiting => words::SAVING,
        SaveState::Failed(_) => words::NOT_SAVED,
    };
    let is_recipe = matches!(
        props.route,
        Route::Recipes
            | Route::Recipe(_)
            | Route::Swaps(..)
            | Route::Versions(_)
            | Route::Facts(_)
            | Route::RecipeForFamilies(_)
    );
    let is_week = matches!(
        props.route,
        Route::Weeks
            | Route::Week(_)
            | Route::Month(_)
            | Route::WeekForFamilies(_)
            | Route::Review(_)
    );
    let is_kitchen = matches!(props.route, Route::Kitchen(..) | Route::Buying(..));
    let is_food = matches!(props.route, Route::Foods | Route::Food(_));
    let is_rules = matches!(props.route, Route::Rules(_));
    html! {
        <header class="page-header">
            <a class="skip" href="#content" onclick={skip()}>{ words::SKIP }</a>
            <a class="mark" href={Route::Recipes.fragment()}>{ words::NAME }</a>
            <nav aria-label={words::VIEWS}>
                { link(Route::Recipes, words::RECIPES, is_recipe) }
                { link(Route::Weeks, words::WEEKS, is_week) }
                { link(Route::Kitchen(None, None), crate::views::kitchen::words::TITLE, is_kitchen) }
                { link(Route::Foods, words::FOODS, is_food) }
                { link(Route::Rules(None), words::RULES, is_rules) }
                { link(Route::About, words::ABOUT, props.route == Route::About) }
            </nav>
            <Find />
            <span class="steps">
                <button type="button" id="undo" disabled={!desk.can_undo()} onclick={act(Action::Undo)}>
                    { words::UNDO }
                </button>
                <button type="button" id="redo" disabled={!desk.can_redo()} onclick={act(Action::Redo)}>
                    { words::REDO }
                </button>
            </span>
            <span id="save-state" role="status">{ saved }</span>
            { languages(&page.language) }
        </header>
    }
}

fn link(route: Route, text: Say, is_here: bool) -> Html {
    html! {
        <a href={route.fragment()} aria-current={is_here.then_some("page")}>{ text }</a>
    }
}

/// The choice of a language, each named in itself.
fn languages(choice: &LanguageChoice) -> Html {
    let onchange = choice.choose.reform(|event: Event| {
        let select = event.target_unchecked_into::<HtmlSelectElement>();
        let index = usize::try_from(select.selected_index()).unwrap_or_default();
        Language::ALL
            .get(index)
            .copied()
            .unwrap_or(Language::English)
    });
    let option = |language: &Language| {
        html! {
            <option lang={language.tag()} selected={*language == choice.language}>
                { language.own_name() }
            </option>
        }
    };
    html! {
        <span class="language">
            <label for="language" class="for-readers">{ words::LANGUAGE }</label>
            <select id="language" {onchange}>{ for Language::ALL.iter().map(option) }</select>
        </span>
    }
}

/// Moves the focus without changing the address, which names the view.
fn skip() -> Callback<MouseEvent> {
    Callback::from(|event: MouseEvent| {
        event.prevent_default();
        crate::page::focus(crate::page::CONTENT);
    })
}
