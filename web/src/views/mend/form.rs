//! What is asked: margin, kinds of change, what must stay.

use super::Wishes;
use super::keep::Keep;
use super::words;
use crate::language::Say;
use engine::mend::Ways;
use engine::week::Week;
use std::rc::Rc;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// The form's state, and how to change it.
#[derive(Clone, PartialEq, Properties)]
pub struct FormProps {
    /// The week.
    pub week: Rc<Week>,
    /// What is wished.
    pub wishes: Wishes,
    /// Wishes something else.
    pub wish: Callback<Wishes>,
}

const MARGINS: [(u8, Say); 3] = [
    (0, words::MARGIN_NONE),
    (1, words::MARGIN_ONCE),
    (2, words::MARGIN_TWICE),
];

type Switch = (&'static str, Say, fn(&mut Ways) -> &mut bool);

const WAYS: [Switch; 4] = [
    ("swaps", words::WAY_SWAPS, |ways| &mut ways.swaps),
    ("amounts", words::WAY_AMOUNTS, |ways| &mut ways.amounts),
    ("portions", words::WAY_PORTIONS, |ways| &mut ways.portions),
    ("choices", words::WAY_CHOICES, |ways| &mut ways.choices),
];

/// The form.
#[component]
pub fn Form(props: &FormProps) -> Html {
    let margin = {
        let (wishes, wish) = (props.wishes.clone(), props.wish.clone());
        Callback::from(move |event: Event| {
            let field = event.target_unchecked_into::<HtmlSelectElement>();
            wish.emit(Wishes {
                margin: field.value().parse().unwrap_or_default(),
                ..wishes.clone()
            });
        })
    };
    html! {
        <div class="mend-form">
            <span class="field">
                <label for="mend-margin">{ words::MARGIN }</label>
                <select id="mend-margin" onchange={margin}>
                    { for MARGINS.iter().map(|(times, words)| html! {
                        <option value={times.to_string()} selected={*times == props.wishes.margin}>
                            { *words }
                        </option>
                    }) }
                </select>
            </span>
            <fieldset class="mend-ways">
                <legend>{ words::WAYS }</legend>
                { for WAYS.iter().map(|switch| way(props, switch)) }
            </fieldset>
            <Keep week={props.week.clone()} wishes={props.wishes.clone()} wish={props.wish.clone()} />
        </div>
    }
}

fn way(props: &FormProps, (name, words, of): &Switch) -> Html {
    let mut ways = props.wishes.ways;
    let checked = *of(&mut ways);
    let of = *of;
    let onchange = {
        let (wishes, wish) = (props.wishes.clone(), props.wish.clone());
        Callback::from(move |event: Event| {
            let on = event.target_unchecked_into::<HtmlInputElement>().checked();
            let mut changed = wishes.clone();
            *of(&mut changed.ways) = on;
            wish.emit(changed);
        })
    };
    html! {
        <label class="tick">
            <input type="checkbox" id={format!("mend-way-{name}")} {checked} {onchange} />
            { " " }{ *words }
        </label>
    }
}
