//! Foods: the office's own with their forms and files, and the search over all
//! foods.

mod editor;
mod food;
mod import;
mod label_form;
mod list;
mod lookup;
mod measures;
mod new;
mod sheet_form;
mod values;
mod words;

pub use food::FoodView;

use crate::page::use_title;
use import::Import;
use list::OwnFoodList;
use lookup::LookUp;
use new::NewFood;
use yew::prelude::*;

/// The view of all foods.
#[component]
pub fn Foods() -> Html {
    use_title(&words::TITLE.to_string());
    html! {
        <div class="index foods">
            <h1>{ words::TITLE }</h1>
            <LookUp />
            <section aria-labelledby="own-foods">
                <h2 id="own-foods">{ words::OWN }</h2>
                <p class="lead">{ words::OWN_LEAD }</p>
                <NewFood />
                <OwnFoodList />
            </section>
            <Import />
        </div>
    }
}
