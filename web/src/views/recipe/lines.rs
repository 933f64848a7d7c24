//! The ingredient lines: one text, and beside each line its reading.
//!
//! The text is a single field, so that it is written, marked and pasted like
//! any text. Behind it lies a copy of each line with the same font and width:
//! it gives the row its height when a line wraps, and the reading stands in
//! the same row.

use super::correction::CorrectionPanel;
use super::reading::{Level, Reading, reading_of};
use super::swaps::{SwapWay, SwapsPanel};
use super::{Edit, words};
use crate::page::{focus, go, use_page};
use crate::route::Route;
use crate::state::RecipeEdit;
use crate::tables::StudiedRecipe;
use engine::recipe::Recipe;
use std::rc::Rc;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct LinesProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// How to change it.
    pub edit: Edit,
    /// The line whose reading is open for correction.
    pub open: Option<usize>,
    /// Opens the reading of a line, or closes it.
    pub set_open: Callback<Option<usize>>,
    /// The line for which it is asked what else could go there.
    pub swaps: Option<usize>,
}

/// Id of a line's reading in the document.
pub fn reading_id(line: usize) -> String {
    format!("reading-{line}")
}

/// Id of the way from a line to what else could go there.
fn swap_way_id(line: usize) -> String {
    format!("swap-way-{line}")
}

const FIELD: &str = "ingredients";

/// The lines and their readings.
#[component]
pub fn Lines(props: &LinesProps) -> Html {
    let page = use_page();
    let in_hand = use_state(|| 0_usize);
    let lines = &props.recipe.lines;
    let text = lines
        .iter()
        .map(|line| line.text.as_str())
        .collect::<Vec<_>>()
        .join("\n");
    let oninput = {
        let (props, in_hand) = (props.clone(), in_hand.clone());
        Callback::from(move |event: InputEvent| {
            let field = event.target_unchecked_into::<HtmlTextAreaElement>();
            in_hand.set(line_of_caret(&field));
            props.set_open.emit(None);
            if props.swaps.is_some() {
                go(&Route::Recipe(props.recipe.id.clone()));
            }
            props.edit.emit(RecipeEdit::Lines(field.value()));
        })
    };
    let readings: Vec<Option<Reading>> = (0..lines.len())
        .map(|line| reading_of(&page, &props.recipe, &props.study, line))
        .collect();
    // One reading takes part in the Tab order: the one of the line in hand, or
    // the nearest before it.
    let has_reading = |line: &usize| readings.get(*line).is_some_and(Option::is_some);
    let tab_stop = (0..=*in_hand)
        .rev()
        .find(has_reading)
        .or_else(|| (0..lines.len()).find(has_reading));
    let rows = readings.iter().enumerate().map(|(line, reading)| {
        let is_in_hand = line == *in_hand;
        html! {
            <div key={line} class={classes!("line", is_in_hand.then_some("in-hand"))}>
                // A space keeps the height of an empty line.
                <div class="line-copy" aria-hidden="true">{ &lines[line].text }{ "\u{200b}" }</div>
                <div class="line-reading" role="listitem">
                    if let Some(reading) = reading {
                        { button(props, reading, line, tab_stop == Some(line), &readings, &in_hand) }
                        if reading.level != Level::Aside {
                            <SwapWay id={swap_way_id(line)} recipe={props.recipe.id.clone()} {line}
                                text={lines[line].text.clone()} is_tab_stop={tab_stop == Some(line)} />
                        }
                    }
                    if props.swaps == Some(line) {
                        <SwapsPanel recipe={props.recipe.clone()} {line} close={closing_swaps(props, line)} />
                    }
                    if props.open == Some(line) {
                        <CorrectionPanel recipe={props.recipe.clone()} study={props.study.clone()}
                            edit={props.edit.clone()} {line} close={closing(props, line)} />
                    }
                </div>
            </div>
        }
    });
    html! {
        <section class="ingredients">
            <label for={FIELD} class="section-label">{ words::INGREDIENTS }</label>
            <p id="ingredients-hint" class="hint">{ words::INGREDIENTS_HINT }</p>
            <div class="lines">
                <textarea id={FIELD} aria-describedby="ingredients-hint" placeholder={words::EXAMPLE}
                    value={text} {oninput} onkeyup={track(&in_hand)} onclick={track_click(&in_hand)} />
                <div class="line-rows" role="list" aria-label={words::READINGS}>
                    { for rows }
                </div>
            </div>
            <p class="for-readers" role="status">
                { words::lines_read(props.study.ingredient_count(), props.study.open_count()) }
            </p>
        </section>
    }
}

/// The line in which the caret stands.
fn line_of_caret(field: &HtmlTextAreaElement) -> usize {
    // A field of text always tells its selection.
    let caret = field.selection_start().ok().flatten().unwrap_or_default();
    let before = field
        .value()
        .encode_utf16()
        .take(caret as usize)
        .collect::<Vec<u16>>();
    before
        .iter()
        .filter(|unit| **unit == u16::from(b'\n'))
        .count()
}

fn track(in_hand: &UseStateHandle<usize>) -> Callback<KeyboardEvent> {
    let in_hand = in_hand.clone();
    Callback::from(move |event: KeyboardEvent| {
        in_hand.set(line_of_caret(&event.target_unchecked_into()));
    })
}

fn track_click(in_hand: &UseStateHandle<usize>) -> Callback<MouseEvent> {
    let in_hand = in_hand.clone();
    Callback::from(move |event: MouseEvent| {
        in_hand.set(line_of_caret(&event.target_unchecked_into()));
    })
}

fn closing(props: &LinesProps, line: usize) -> Callback<()> {
    let set_open = props.set_open.clone();
    Callback::from(move |()| {
        set_open.emit(None);
        focus(&reading_id(line));
    })
}

/// The panel is part of the address, which leads to the card alone again.
fn closing_swaps(props: &LinesProps, line: usize) -> Callback<()> {
    let route = Route::Recipe(props.recipe.id.clone());
    Callback::from(move |()| {
        go(&route);
        focus(&swap_way_id(line));
    })
}

fn button(
    props: &LinesProps,
    reading: &Reading,
    line: usize,
    is_tab_stop: bool,
    readings: &[Option<Reading>],
    in_hand: &UseStateHandle<usize>,
) -> Html {
    let is_open = props.open == Some(line);
    let onclick = {
        let set_open = props.set_open.clone();
        Callback::from(move |_| set_open.emit((!is_open).then_some(line)))
    };
    let neighbour = |forward: bool| {
        let has = |line: &usize| readings[*line].is_some();
        if forward {
            (line + 1..readings.len()).find(has)
        } else {
            (0..line).rev().find(has)
        }
    };
    let (above, below) = (neighbour(false), neighbour(true));
    // The keyboard goes on from here to what else could go in this line.
    let onfocus = {
        let in_hand = in_hand.clone();
        Callback::from(move |_: FocusEvent| in_hand.set(line))
    };
    let onkeydown = Callback::from(move |event: KeyboardEvent| {
        let target = match event.key().as_str() {
            "ArrowUp" => above,
            "ArrowDown" => below,
            _ => return,
        };
        event.prevent_default();
        if let Some(line) = target {
            focus(&reading_id(line));
        }
    });
    html! {
        <button type="button" id={reading_id(line)} data-test="reading" data-line={line.to_string()}
            class={classes!("reading", reading.level.class())}
            tabindex={if is_tab_stop { "0" } else { "-1" }}
            title={format!("{}\n{}", reading.food, reading.how)}
            aria-expanded={is_open.to_string()} {onclick} {onkeydown} {onfocus}>
            { reading.level.mark() }
            <span class="for-readers">{ words::line(line + 1) }</span>
            <span class="reading-food" data-test="reading-food" lang={reading.lang}>{ &reading.food }</span>
            <span class="reading-how" data-test="reading-how">{ &reading.how }</span>
            <span class="reading-grams" data-test="reading-grams">{ &reading.grams }</span>
        </button>
    }
}
