//! Switches: which of two readings of a rule the office follows.

use super::words;
use crate::page::use_page;
use crate::state::Action;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// All switches that the tables know.
#[component]
pub fn Switches() -> Html {
    let page = use_page();
    let switch = |index: usize, name: &str| {
        let on = page.contents().rest.switches.is_on(name);
        let onchange = {
            let (page, name) = (page.clone(), name.to_owned());
            Callback::from(move |event: Event| {
                let on = event.target_unchecked_into::<HtmlInputElement>().checked();
                page.act(Action::Switch(name.clone(), on));
            })
        };
        let (id, about) = (format!("switch-{index}"), format!("switch-{index}-about"));
        let (title, explanation) = words::switch(name);
        html! {
            <li class="switch" data-test="switch" data-name={name.to_owned()}>
                <p class="check">
                    <input id={id.clone()} type="checkbox" checked={on} {onchange}
                        aria-describedby={about.clone()} />
                    <label for={id}>{ title }</label>
                    <span class="note">{ if on { words::ON } else { words::OFF } }</span>
                </p>
                <p id={about} class="hint">{ explanation }</p>
            </li>
        }
    };
    let names = page.tables.reference.switches();
    html! {<>
        <p>{ words::SWITCHES_LEAD }</p>
        <ul class="switches">
            { for names.iter().enumerate().map(|(index, name)| switch(index, name)) }
        </ul>
    </>}
}
