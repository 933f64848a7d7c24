//! Files on the user's machine: given out as downloads, taken in by choice.

use gloo::file::{Blob, ObjectUrl};
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Gives the user a text as a file.
pub fn save_text(name: &str, text: &str) {
    let form = if name.ends_with(".csv") {
        "text/csv"
    } else {
        "application/json"
    };
    let url = ObjectUrl::from(Blob::new_with_options(text, Some(form)));
    let Ok(link) = gloo::utils::document().create_element("a") else {
        return;
    };
    // Plain attributes of a new element: setting them cannot fail.
    drop(link.set_attribute("href", &url));
    drop(link.set_attribute("download", name));
    if let Some(link) = link.dyn_ref::<HtmlElement>() {
        link.click();
    }
    // The browser reads the blob after this returns.
    gloo::timers::callback::Timeout::new(60_000, move || drop(url)).forget();
}
