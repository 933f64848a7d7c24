//! Which of the book's own foods and limits are not in use, with ways to mend
//! them.

use crate::page::use_page;
use crate::route::Route;
use crate::words::{self, own_table, title_or_untitled};
use engine::foods::FoodId;
use yew::prelude::*;

/// The notice; nothing where all is in use.
#[component]
pub fn LeftOut() -> Html {
    let page = use_page();
    if page.own.is_empty() {
        return Html::default();
    }
    let foods = page.own.foods.iter().map(|(number, _)| {
        let food = page.contents().own_food(*number);
        let name = title_or_untitled(food.map_or("", |food| &food.description));
        html! {
            <li><a href={Route::Food(FoodId::Own(*number)).fragment()}>{ name }</a></li>
        }
    });
    let tables = page.own.tables.iter().map(|(table, _)| {
        html! {
            <li><a href={Route::Rules(None).fragment()}>{ own_table::name(*table) }</a></li>
        }
    });
    html! {
        <div class="notice notice-problem left-out" data-test="left-out">
            <p>{ words::LEFT_OUT }</p>
            <ul>{ for foods.chain(tables) }</ul>
        </div>
    }
}
