//! The lines that are not counted, with what to do about each.

use super::reading::problem_of;
use super::words;
use crate::tables::StudiedRecipe;
use engine::recipe::{LineKind, Recipe};
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct SettleProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// Opens the reading of a line.
    pub set_open: Callback<Option<usize>>,
}

/// The list; nothing when every line is counted.
#[component]
pub fn Settle(props: &SettleProps) -> Html {
    let open: Vec<(usize, String)> = props
        .study
        .lines
        .iter()
        .enumerate()
        .filter(|(_, line)| line.read.reading.kind == LineKind::Ingredient)
        .filter_map(|(index, line)| Some((index, problem_of(line)?)))
        .collect();
    if open.is_empty() {
        return Html::default();
    }
    html! {
        <section class="settle" aria-labelledby="settle">
            <h2 id="settle">{ words::settle(open.len()) }</h2>
            <ul>
                { for open.into_iter().map(|(line, problem)| {
                    let set_open = props.set_open.clone();
                    let onclick = Callback::from(move |_| set_open.emit(Some(line)));
                    let text = &props.study.lines[line].read.text;
                    html! {
                        <li data-test="to-settle" data-line={line.to_string()}>
                            <strong>{ text }</strong>
                            { ": " }{ problem }{ " " }
                            // Buttons of the same word are told apart by their lines.
                            <button type="button" {onclick}>
                                { words::SETTLE }<span class="for-readers">{ ": " }{ text }</span>
                            </button>
                        </li>
                    }
                }) }
            </ul>
        </section>
    }
}
