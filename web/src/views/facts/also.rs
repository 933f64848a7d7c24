//! Nutrients that a panel lists only where somebody asks for them.

use super::words;
use crate::language::of_table;
use crate::page::use_page;
use engine::foods::NutrientId;
use engine::label::{Listed, PanelOptions};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What the office decides about the panel.
#[derive(Clone, PartialEq, Properties)]
pub struct AlsoProps {
    /// So far.
    pub options: PanelOptions,
    /// Told of every change.
    pub on_change: Callback<PanelOptions>,
}

/// The choice, folded up unless something is chosen.
#[component]
pub fn Also(props: &AlsoProps) -> Html {
    let page = use_page();
    let others = page.tables.reference.label.others().iter();
    let offered = others.filter(|row| row.listed == Listed::OnRequest);
    html! {
        <details class="facts-also" open={!props.options.also.is_empty()} data-test="facts-also">
            <summary>{ words::ALSO }</summary>
            <div>{ for offered.map(|row| check(props, row.nutrient, &of_table(&row.name))) }</div>
        </details>
    }
}

fn check(props: &AlsoProps, nutrient: NutrientId, name: &str) -> Html {
    let id = format!("also-{}", nutrient.0);
    let onchange = {
        let props = props.clone();
        Callback::from(move |event: Event| {
            let on = event.target_unchecked_into::<HtmlInputElement>().checked();
            let mut options = props.options.clone();
            options.also.retain(|other| *other != nutrient);
            if on {
                options.also.push(nutrient);
            }
            props.on_change.emit(options);
        })
    };
    html! {
        <p class="check">
            <input id={id.clone()} type="checkbox" checked={props.options.also.contains(&nutrient)}
                {onchange} />
            <label for={id}>{ name }</label>
        </p>
    }
}
