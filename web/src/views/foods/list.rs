//! The office's own foods.

use super::words;
use crate::page::use_page;
use crate::route::Route;
use crate::words::title_or_untitled;
use engine::foods::FoodId;
use engine::own_foods::{OwnFood, OwnSource};
use yew::prelude::*;

/// The list.
#[component]
pub fn OwnFoodList() -> Html {
    let page = use_page();
    let foods = &page.contents().rest.own_foods;
    if foods.is_empty() {
        return html! { <p data-test="no-own-foods">{ words::NONE }</p> };
    }
    let row = |food: &OwnFood| {
        let route = Route::Food(FoodId::Own(food.number));
        let (kind, reference) = match &food.source {
            OwnSource::Label { reference, .. } => (words::FROM_LABEL, reference),
            OwnSource::Values { reference, .. } => (words::FROM_SHEET, reference),
        };
        let problem = page.own.of_food(food.number);
        html! {
            <tr key={food.number} data-test="own-food" data-number={food.number.to_string()}>
                <th scope="row"><a href={route.fragment()}>{ title_or_untitled(&food.description) }</a></th>
                <td>{ kind }</td>
                <td data-label={words::REFERENCE}>{ reference }</td>
                <td>
                    if let Some(problem) = problem {
                        <span class="problem" data-test="own-food-problem">{ words::problem(problem) }</span>
                    } else {
                        { words::IN_USE }
                    }
                </td>
            </tr>
        }
    };
    html! {
        <table class="index-table">
            <thead><tr>
                <th scope="col">{ words::COLUMN_FOOD }</th>
                <th scope="col">{ words::COLUMN_KIND }</th>
                <th scope="col">{ words::REFERENCE }</th>
                <th scope="col">{ words::COLUMN_STATE }</th>
            </tr></thead>
            <tbody>{ for foods.iter().map(row) }</tbody>
        </table>
    }
}
