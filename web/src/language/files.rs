//! The language files, as they are compiled into the page.

use super::Language;

macro_rules! files {
    ($folder:literal: $($name:literal),+ $(,)?) => {
        &[$(($name, include_str!(concat!("../../language/", $folder, "/", $name, ".ftl")))),+]
    };
}

macro_rules! views {
    ($folder:literal) => {
        files!($folder: "about", "batch", "chart", "claims", "credits", "facts", "files", "find", "foods",
            "format", "frame", "guide", "help", "kitchen", "line", "lists", "month", "named", "parents", "plan", "problem", "recipe",
            "review", "rules", "stated", "sure", "swaps", "trouble", "used", "versions", "week")
    };
}

/// A file: its name and its text.
pub(super) type File = (&'static str, &'static str);

/// The files that every language has.
pub(super) fn of(language: Language) -> &'static [File] {
    match language {
        Language::English => views!("en"),
        Language::Spanish => views!("es"),
    }
}

/// The texts of the tables, which English reads in the tables themselves.
pub(super) fn of_tables(language: Language) -> &'static [File] {
    match language {
        Language::English => &[],
        Language::Spanish => files!("es": "table"),
    }
}
