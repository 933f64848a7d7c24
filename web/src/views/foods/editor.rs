//! The form of one of the office's own foods. Every change is in the book at
//! once; what cannot be used yet stays as it was typed, and says why.

use super::label_form::LabelForm;
use super::measures::Measures;
use super::sheet_form::SheetForm;
use super::words;
use crate::page::{Page, go, use_page};
use crate::route::Route;
use crate::state::{Action, FoodEdit};
use crate::words::title_or_untitled;
use engine::own_foods::{OwnFood, OwnSource};
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

/// How a part of the form changes its food.
pub type Edit = Callback<FoodEdit>;

/// Which food.
#[derive(Clone, PartialEq, Properties)]
pub struct EditorProps {
    /// The food as it is kept.
    pub food: OwnFood,
}

/// The form.
#[component]
pub fn Editor(props: &EditorProps) -> Html {
    let page = use_page();
    let food = &props.food;
    let number = food.number;
    let edit: Edit = {
        let page = page.clone();
        Callback::from(move |edit| page.act(Action::Food(number, edit)))
    };
    let description = edit.reform(|event: InputEvent| {
        FoodEdit::Description(event.target_unchecked_into::<HtmlInputElement>().value())
    });
    let reference = edit.reform(|event: InputEvent| {
        FoodEdit::Reference(event.target_unchecked_into::<HtmlInputElement>().value())
    });
    let ingredients = edit.reform(|event: InputEvent| {
        FoodEdit::Ingredients(event.target_unchecked_into::<HtmlTextAreaElement>().value())
    });
    let (OwnSource::Label { reference: of, .. } | OwnSource::Values { reference: of, .. }) =
        &food.source;
    let problem = page.own.of_food(number);
    html! {
        <section class="food-form" data-test="food-form">
            if let Some(problem) = problem {
                <p class="field-problem" role="alert" data-test="food-problem">
                    { words::not_in_use(problem) }
                </p>
            } else {
                <p class="hint" role="status" data-test="food-in-use">{ words::FOOD_IN_USE }</p>
            }
            <p class="wide-field">
                <label for="food-description">{ words::DESCRIPTION }</label>
                <input id="food-description" type="text" autocomplete="off"
                    placeholder={words::DESCRIPTION_HINT}
                    value={food.description.clone()} oninput={description} />
            </p>
            <p class="wide-field">
                <label for="food-reference">{ words::REFERENCE_FIELD }</label>
                <input id="food-reference" type="text" autocomplete="off"
                    placeholder={words::REFERENCE_HINT} value={of.clone()} oninput={reference} />
            </p>
            { match &food.source {
                OwnSource::Label { .. } => html! { <LabelForm food={food.clone()} edit={edit.clone()} /> },
                OwnSource::Values { .. } => html! { <SheetForm food={food.clone()} edit={edit.clone()} /> },
            } }
            <p class="wide-field">
                <label for="food-ingredients">{ words::INGREDIENTS }</label>
                <textarea id="food-ingredients" rows="3" value={food.ingredients.clone()}
                    oninput={ingredients} />
                <span class="hint">{ words::INGREDIENTS_HINT }</span>
            </p>
            <Measures measures={food.measures.clone()} edit={edit.clone()} />
            { ways(&page, food) }
        </section>
    }
}

fn ways(page: &Page, food: &OwnFood) -> Html {
    let remove = {
        let (page, food) = (page.clone(), food.clone());
        Callback::from(move |_| {
            page.act(Action::RemoveFood(food.number));
            let text = crate::words::taken_out(&title_or_untitled(&food.description));
            page.tell(text, true);
            go(&Route::Foods);
        })
    };
    html! {
        <div class="ways">
            <button type="button" id="remove-food" onclick={remove}>{ words::REMOVE }</button>
        </div>
    }
}
