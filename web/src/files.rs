//! Files on the user's machine: given out as downloads, taken in by choice.

use gloo::file::{Blob, ObjectUrl};
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;

/// Gives the user a text as a file.
pub fn save_text(name: &str, text: &str) {
    let form = match name.rsplit_once('.') {
        Some((_, "csv")) => "text/csv",
        Some((_, "html")) => "text/html",
        Some((_, "jsonld")) => "application/ld+json",
        _ => "application/json",
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

/// A title as part of the name of a file: "Beef & Bean Chili" becomes
/// `beef-bean-chili`.
pub fn plain_name(title: &str, fallback: &str) -> String {
    let letters = title.to_lowercase();
    let words = letters.split(|c: char| !c.is_alphanumeric());
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    if words.is_empty() {
        fallback.to_owned()
    } else {
        words.join("-")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_of_files_are_plain() {
        for (title, name) in [
            ("Beef & Bean Chili", "beef-bean-chili"),
            ("../etc: Crème", "etc-crème"),
            (" … ", "recipe"),
        ] {
            assert_eq!(plain_name(title, "recipe"), name);
        }
    }
}
