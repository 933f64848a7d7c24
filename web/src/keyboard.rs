//! The keyboard stays where one is at work. A step may take away the element
//! that has it, as when a day is removed by its own button; it would fall on
//! the document's body then, and one would come by the whole page again.

use crate::page::CONTENT;
use gloo::events::EventListener;
use wasm_bindgen::JsCast;
use web_sys::{Element, EventTarget, HtmlElement};
use yew::prelude::*;

/// What gets the keyboard. No fields: a touch screen would open its keys.
const TAKES_IT: &str = "button:not(:disabled), a[href], summary";

/// An element with its place among its parent's children.
type Place = (Element, usize);

/// Gives the keyboard to the nearest element that is left, after each drawing
/// that has taken its own away.
#[hook]
pub fn use_kept_keyboard() {
    let way = use_mut_ref(Vec::<Place>::new);
    use_effect_with((), {
        let way = way.clone();
        move |()| {
            let document = gloo::utils::document();
            let listener = EventListener::new(&document, "focusin", move |event| {
                *way.borrow_mut() = way_up(event.target());
            });
            move || drop(listener)
        }
    });
    use_effect(move || {
        // Whoever gets the keyboard is written down at once.
        let way = way.borrow().clone();
        regain(&way);
    });
}

/// The element and all around it, from within.
fn way_up(target: Option<EventTarget>) -> Vec<Place> {
    let first = target.and_then(|target| target.dyn_into::<Element>().ok());
    std::iter::successors(first, |element| element.parent_element())
        .map(|element| {
            let before = |one: &Element| one.previous_element_sibling();
            let at = std::iter::successors(before(&element), before).count();
            (element, at)
        })
        .collect()
}

fn regain(way: &[Place]) {
    let is_gone = |(element, _): &&Place| !element.is_connected();
    if has_place() || !way.first().as_ref().is_some_and(is_gone) {
        return;
    }
    let gone = way.iter().take_while(is_gone).count();
    let (_, at) = way[gone - 1];
    // What has moved up into its place, or stands before it now.
    let near = way.get(gone).and_then(|(around, _)| child(around, at));
    let around = way[gone..].iter().map(|(element, _)| element.clone());
    for element in near.into_iter().chain(around) {
        give(&element);
        if has_place() {
            return;
        }
    }
}

/// Whether an element has the keyboard.
fn has_place() -> bool {
    let focus = gloo::utils::document().active_element();
    focus.is_some_and(|focus| focus.tag_name() != "BODY")
}

/// The child at a place, or the last before it.
fn child(around: &Element, at: usize) -> Option<Element> {
    let next = |one: &Element| one.next_element_sibling();
    std::iter::successors(around.first_element_child(), next)
        .take(at + 1)
        .last()
}

/// To the element itself if it can have it, else to the first in it.
fn give(element: &Element) {
    let takes_it = element.matches(&format!("{TAKES_IT}, #{CONTENT}"));
    let found = match takes_it {
        Ok(true) => Some(element.clone()),
        // The words of the constant are a selector.
        _ => element.query_selector(TAKES_IT).ok().flatten(),
    };
    if let Some(found) = found.and_then(|found| found.dyn_into::<HtmlElement>().ok()) {
        // What is hidden does not take it; the next is asked then.
        drop(found.focus());
    }
}
