//! The languages, which of them is spoken, and how a message is put together.

use super::files;
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use std::cell::{Cell, OnceCell};
use unic_langid::{LanguageIdentifier, langid};

/// A language of the page.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Language {
    /// English of the United States.
    English,
    /// Spanish of the United States.
    Spanish,
}

impl Language {
    /// All of them, in the order in which they are offered.
    pub const ALL: [Self; 2] = [Self::English, Self::Spanish];

    /// The tag by BCP 47.
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en-US",
            Self::Spanish => "es-US",
        }
    }

    /// The language's name in itself.
    pub fn own_name(self) -> &'static str {
        match self {
            Self::English => "English",
            Self::Spanish => "Español",
        }
    }

    /// The language that a tag by BCP 47 asks for, by its primary subtag.
    pub fn from_tag(tag: &str) -> Option<Self> {
        let primary = tag.split('-').next().unwrap_or_default();
        Self::ALL.into_iter().find(|language| {
            language
                .tag()
                .split('-')
                .next()
                .is_some_and(|own| own.eq_ignore_ascii_case(primary))
        })
    }

    fn identifier(self) -> LanguageIdentifier {
        match self {
            Self::English => langid!("en-US"),
            Self::Spanish => langid!("es-US"),
        }
    }
}

type Bundle = FluentBundle<FluentResource>;

thread_local! {
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
    static ENGLISH: OnceCell<Bundle> = const { OnceCell::new() };
    static SPANISH: OnceCell<Bundle> = const { OnceCell::new() };
}

/// The language that is spoken.
pub fn spoken() -> Language {
    SPOKEN.get()
}

/// Speaks another language from now on. What is drawn already stays until it
/// is drawn again.
pub fn speak(language: Language) {
    SPOKEN.set(language);
}

/// A message in a language; where that language lacks it, in English; where
/// there is none at all, its key, so that the gap is seen.
pub fn say_in(language: Language, key: &str, arguments: &[(&str, FluentValue<'_>)]) -> String {
    worded(language, key, arguments)
        .or_else(|| worded(Language::English, key, arguments))
        .unwrap_or_else(|| key.to_owned())
}

/// A message of that very language, if it has it.
pub(super) fn worded(
    language: Language,
    key: &str,
    arguments: &[(&str, FluentValue<'_>)],
) -> Option<String> {
    with_bundle(language, |bundle| {
        let pattern = bundle.get_message(key)?.value()?;
        let arguments: FluentArgs<'_> = arguments
            .iter()
            .map(|(name, value)| (*name, value.clone()))
            .collect();
        // What goes wrong shows in the text; the tests look through every message.
        let mut problems = Vec::new();
        Some(
            bundle
                .format_pattern(pattern, Some(&arguments), &mut problems)
                .into_owned(),
        )
    })
}

fn with_bundle<T>(language: Language, use_it: impl FnOnce(&Bundle) -> T) -> T {
    let slot = match language {
        Language::English => &ENGLISH,
        Language::Spanish => &SPANISH,
    };
    slot.with(|slot| use_it(slot.get_or_init(|| read(language))))
}

fn read(language: Language) -> Bundle {
    let mut bundle = Bundle::new(vec![language.identifier()]);
    // The marks are for words of another direction of writing; there are none here.
    bundle.set_use_isolating(false);
    for (_, text) in files::of(language).iter().chain(files::of_tables(language)) {
        let resource = match FluentResource::try_new((*text).to_owned()) {
            Ok(resource) | Err((resource, _)) => resource,
        };
        // A key that is there twice keeps its first wording; the tests allow none.
        drop(bundle.add_resource(resource));
    }
    bundle
}
