//! Hatchings by which kinds are told apart.

use yew::prelude::*;

/// How many kinds can be told apart; further ones share the last.
pub const KINDS: usize = 8;

/// The hatching of a kind.
fn lines(kind: usize) -> &'static str {
    match kind {
        0 => "",
        1 => "M0 8 8 0 M-2 2 2 -2 M6 10 10 6",
        2 => "M0 4 H8",
        3 => "M4 0 V8",
        4 => "M0 0 8 8 M-2 6 2 10 M6 -2 10 2",
        5 => "M0 4 H8 M4 0 V8",
        6 => "M3 3 h2 v2 h-2 z",
        _ => "M0 8 8 0 M0 0 8 8",
    }
}

/// The id of a kind's hatching in a drawing.
pub fn id(chart: &str, kind: usize) -> String {
    format!("{chart}-hatch-{}", kind.min(KINDS - 1))
}

/// The definitions that a drawing begins with.
pub fn definitions(chart: &str, kinds: usize) -> Html {
    let one = |kind: usize| {
        html! {
            <pattern id={id(chart, kind)} patternUnits="userSpaceOnUse" width="8" height="8">
                <rect class={classes!("hatch-ground", format!("hatch-{kind}"))} width="8" height="8" />
                <path class="hatch-line" d={lines(kind)} />
            </pattern>
        }
    };
    html! { <defs>{ for (0..kinds.min(KINDS)).map(one) }</defs> }
}

/// A patch of a kind's hatching for a list of kinds.
pub fn patch(chart: &str, kind: usize) -> Html {
    html! {
        <svg class="hatch-patch" width="22" height="14" aria-hidden="true" focusable="false">
            <rect class="chart-edge" x="0.5" y="0.5" width="21" height="13"
                fill={format!("url(#{})", id(chart, kind))} />
        </svg>
    }
}
