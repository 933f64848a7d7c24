//! The language files, as they are compiled into the page.

use super::Language;

macro_rules! files {
    ($folder:literal: $($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("../../language/", $folder, "/", $name, ".ftl")))),+]
    };
}

/// The files of a language: name and text.
pub(super) fn of(language: Language) -> &'static [(&'static str, &'static str)] {
    match language {
        Language::English => files!("en": "frame"),
        Language::Spanish => files!("es": "frame"),
    }
}
