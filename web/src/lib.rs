//! The Gramwright page: what the user sees, and what scripts may call.
//!
//! Nothing is computed here; every figure is the engine's.
//!
//! | module | what |
//! |---|---|
//! | [`state`] | the book on the desk, and the one function that changes it |
//! | [`tables`], [`evidence`] | the engine's tables and what it has found out so far |
//! | [`memo`], [`shelf`] | what was found out and still holds; recipes by name and title |
//! | [`own`] | what of a book's own foods and limits can be used |
//! | [`storage`], [`stored_text`], [`saving`], [`book_file`], [`files`], [`troubles`] | the browser's storage and files, and what can be wrong with them |
//! | [`worker`] | long work beside the page |
//! | [`route`] | which view the address asks for |
//! | [`app`], [`views`], [`components`] | what is drawn |
//! | [`api`] | the engine as JavaScript functions |
//! | [`words`], [`named`], [`language`], [`format`] | how it is said and printed |

pub mod api;
pub mod app;
pub mod book_file;
pub mod components;
pub mod evidence;
pub mod files;
pub mod format;
pub mod keyboard;
pub mod language;
pub mod memo;
pub mod named;
pub mod own;
pub mod page;
pub mod route;
pub mod saving;
pub mod shelf;
pub mod state;
pub mod storage;
pub mod stored_text;
pub mod tables;
pub mod troubles;
pub mod views;
pub mod words;
pub mod worker;

use wasm_bindgen::prelude::*;

/// Starts the page in the element that `index.html` keeps for it. Where there
/// is none, as in Node or in a page of somebody else's, nothing happens.
#[wasm_bindgen(start)]
pub fn start() {
    let document = web_sys::window().and_then(|window| window.document());
    let place = document.and_then(|document| document.get_element_by_id("app"));
    if let Some(place) = place {
        place.set_inner_html("");
        yew::Renderer::<app::App>::with_root(place).render();
    }
}
