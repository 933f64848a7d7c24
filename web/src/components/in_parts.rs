//! A long list, drawn part by part: a book of thousands of recipes opens as
//! fast as a small one.

use crate::language::{FluentValue, Say, say};
use yew::prelude::*;

/// How many entries a part has.
const PART: usize = 100;

/// How much of a list is drawn.
#[derive(Debug, Clone)]
pub struct InParts {
    shown: UseStateHandle<usize>,
    length: usize,
}

/// Draws a list from its first part again whenever `list` is another.
#[hook]
pub fn use_in_parts<L: PartialEq + 'static>(list: L, length: usize) -> InParts {
    let shown = use_state(|| PART);
    use_effect_with(list, {
        let shown = shown.setter();
        move |_| shown.set(PART)
    });
    InParts { shown, length }
}

impl InParts {
    /// How many entries to draw.
    pub fn shown(&self) -> usize {
        *self.shown
    }

    /// The way to the next part, below a list that has more.
    pub fn more(&self) -> Html {
        let left = self.length.saturating_sub(*self.shown);
        if left == 0 {
            return Html::default();
        }
        let onclick = {
            let shown = self.shown.clone();
            Callback::from(move |_| shown.set(*shown + PART))
        };
        let drawn = say(
            "lists-drawn",
            &[
                ("shown", FluentValue::from(*self.shown)),
                ("all", FluentValue::from(self.length)),
            ],
        );
        html! {
            <p class="ways">
                <span role="status">{ drawn }</span>
                <button type="button" data-test="more" {onclick}>{ Say("lists-more") }</button>
            </p>
        }
    }
}
