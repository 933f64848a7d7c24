//! Rules that are not settled, and which reading of them the office follows.

use super::words;
use crate::views::rules::Switches;
use yew::prelude::*;

/// The switches, folded up at first.
#[component]
pub fn Readings() -> Html {
    html! {
        <details class="readings">
            <summary>{ words::READINGS }</summary>
            <Switches />
        </details>
    }
}
