//! Which language a person has chosen: kept in this browser, and at first the
//! one that the browser asks for.

use super::{Language, speak};
use gloo::storage::{LocalStorage, Storage};
use yew::prelude::*;

/// Under this name the tag of the language is kept. `web/shell/start.js` reads
/// it too.
const KEY: &str = "gramwright.language";

/// The language that is spoken, and how to speak another.
#[derive(Debug, Clone, PartialEq)]
pub struct LanguageChoice {
    /// The language.
    pub language: Language,
    /// Speaks another, and keeps the choice.
    pub choose: Callback<Language>,
}

/// The choice; whoever uses this hook is drawn again when it changes.
#[hook]
pub fn use_language() -> LanguageChoice {
    let language = use_state(|| {
        let first = first();
        speak_on_page(first);
        first
    });
    let choose = {
        let language = language.clone();
        Callback::from(move |other: Language| {
            speak_on_page(other);
            // Where the browser stores nothing the choice holds until the page is closed.
            drop(LocalStorage::set(KEY, other.tag()));
            language.set(other);
        })
    };
    LanguageChoice {
        language: *language,
        choose,
    }
}

fn first() -> Language {
    let kept: Option<String> = LocalStorage::get(KEY).ok();
    let asked = || gloo::utils::window().navigator().language();
    kept.or_else(asked)
        .as_deref()
        .and_then(Language::from_tag)
        .unwrap_or(Language::English)
}

/// Speaks a language, and says so to readers of the screen.
fn speak_on_page(language: Language) {
    speak(language);
    let page = gloo::utils::document_element();
    // It fails only for a name that no attribute can have.
    drop(page.set_attribute("lang", language.tag()));
}
