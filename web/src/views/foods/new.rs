//! Beginning a new food: it is in the book at once, and filled in on its page.

use super::words;
use crate::page::{go, use_page};
use crate::route::Route;
use crate::state::Action;
use engine::foods::FoodId;
use engine::own_foods::{OwnFood, OwnSource};
use engine::units::Grams;
use rust_decimal::Decimal;
use yew::prelude::*;

/// The ways to begin.
#[component]
pub fn NewFood() -> Html {
    let page = use_page();
    let begin = |source: OwnSource| {
        let page = page.clone();
        Callback::from(move |_: MouseEvent| {
            let number = page.contents().free_food_number();
            page.act(Action::AddFoods(vec![OwnFood {
                number,
                description: String::new(),
                ingredients: String::new(),
                measures: Vec::new(),
                source: source.clone(),
            }]));
            go(&Route::Food(FoodId::Own(number)));
        })
    };
    let label = begin(OwnSource::Label {
        serving: Grams::ZERO,
        declared: Vec::new(),
        reference: String::new(),
    });
    let sheet = begin(OwnSource::Values {
        per: Grams::new(Decimal::ONE_HUNDRED),
        values: Vec::new(),
        reference: String::new(),
    });
    html! {
        <div class="ways">
            <button type="button" id="new-label-food" class="main-way" onclick={label}>
                { words::NEW_LABEL }
            </button>
            <button type="button" id="new-sheet-food" onclick={sheet}>{ words::NEW_SHEET }</button>
        </div>
    }
}
