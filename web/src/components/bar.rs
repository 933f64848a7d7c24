//! A bar beside a figure that says the same in digits.

use yew::prelude::*;

/// What a bar shows.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct BarProps {
    /// Length in whole percent, as text.
    pub percent: AttrValue,
}

/// A decoration: the table around it holds the figures.
#[component]
pub fn Bar(props: &BarProps) -> Html {
    // An SVG attribute: the content policy allows no inline style.
    let width = format!("{}%", props.percent);
    html! {
        <svg class="bar" aria-hidden="true" focusable="false">
            <rect class="bar-room" width="100%" height="100%" />
            <rect class="bar-fill" width={width} height="100%" />
        </svg>
    }
}
