//! The search over the dataset's foods and the office's own.

use super::words;
use crate::components::{Pick, Picker};
use crate::language::of_table;
use crate::page::{Page, go, use_page};
use crate::route::Route;
use yew::prelude::*;

/// Foods offered for what is typed.
const OFFERED: usize = 15;

/// The field; a food that is chosen opens on its page.
#[component]
pub fn LookUp() -> Html {
    let page = use_page();
    let search = use_callback(page, |typed: String, page| found(page, &typed));
    let on_pick = Callback::from(|key: AttrValue| {
        if let Ok(food) = key.parse() {
            go(&Route::Food(food));
        }
    });
    html! {
        <section class="look-up" aria-labelledby="look-up">
            <h2 id="look-up">{ words::LOOK_UP }</h2>
            <p class="lead">{ words::LOOK_UP_LEAD }{ " " }{ words::IN_ENGLISH }</p>
            <Picker id="find-food" data_test="find-food" label={words::FIND} hide_label={true}
                placeholder={words::FIND_HINT} {search} {on_pick} />
        </section>
    }
}

fn found(page: &Page, typed: &str) -> Vec<Pick> {
    let groups = &page.tables.reference.foods;
    let found = page.tables.foods_found(typed, OFFERED).take(OFFERED);
    found
        .map(|food| {
            let group = groups.group_name(food.group).map(of_table);
            let note = group.unwrap_or_else(|| words::YOUR_OWN.to_string());
            Pick::food(food, note.into())
        })
        .collect()
}
