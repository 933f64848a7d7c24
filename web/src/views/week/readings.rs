//! Rules that are not settled, and which reading of them the office follows.

use super::words;
use crate::page::use_page;
use crate::state::Action;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The switches; nothing where the tables have none.
#[component]
pub fn Readings() -> Html {
    let page = use_page();
    let switches = page.tables.reference.switches();
    if switches.is_empty() {
        return Html::default();
    }
    html! {
        <details class="readings">
            <summary>{ words::READINGS }</summary>
            <p class="hint">{ words::READINGS_HINT }</p>
            { for switches.into_iter().enumerate().map(|(index, switch)| {
                let id = format!("switch-{index}");
                let is_on = page.contents().rest.switches.is_on(&switch);
                let onchange = {
                    let (page, switch) = (page.clone(), switch.clone());
                    Callback::from(move |event: Event| {
                        let on = event.target_unchecked_into::<HtmlInputElement>().checked();
                        page.act(Action::Switch(switch.clone(), on));
                    })
                };
                html! {
                    <p class="check">
                        <input id={id.clone()} type="checkbox" checked={is_on} {onchange} />
                        <label for={id}>{ words::switch(&switch) }</label>
                    </p>
                }
            }) }
        </details>
    }
}
