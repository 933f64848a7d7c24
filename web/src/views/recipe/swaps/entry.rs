//! The way from a line to what else could go there.

use super::words;
use crate::route::Route;
use engine::recipe::RecipeId;
use yew::prelude::*;

/// For which line.
#[derive(Clone, PartialEq, Properties)]
pub struct SwapWayProps {
    /// The recipe.
    pub recipe: RecipeId,
    /// Index of the line.
    pub line: usize,
    /// The line's text.
    pub text: AttrValue,
    /// Id of the link in the document, where something leads back to it.
    #[prop_or_default]
    pub id: Option<AttrValue>,
    /// Whether the Tab key stops here.
    #[prop_or(true)]
    pub is_tab_stop: bool,
}

/// A link, drawn as two arrows that change places.
#[component]
pub fn SwapWay(props: &SwapWayProps) -> Html {
    let route = Route::Swaps(props.recipe.clone(), props.line);
    html! {
        <a class="swap-way" id={props.id.clone()} href={route.fragment()} data-test="swap-way"
            data-line={props.line.to_string()} title={words::TITLE}
            tabindex={if props.is_tab_stop { "0" } else { "-1" }}
            aria-label={words::title_of(&props.text)}>
            <svg viewBox="0 0 16 16" aria-hidden="true">
                <path d="M2 5.5 H12 M9 2.5 12.5 5.5 9 8.5" />
                <path d="M14 10.5 H4 M7 7.5 3.5 10.5 7 13.5" />
            </svg>
        </a>
    }
}
