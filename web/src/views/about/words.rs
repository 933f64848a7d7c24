//! Words of the view of sources and files.

use crate::language::{Say, say};

pub const TITLE: Say = Say("about-title");
pub const LEAD: Say = Say("about-lead");

pub const FILES_HEADING: Say = Say("about-files-heading");
pub const FILES: Say = Say("about-files");
pub const OFFICE: Say = Say("about-office");
pub const EMPTY: Say = Say("about-empty");
pub const DEMO: Say = Say("about-demo");
pub const EMPTIED: Say = Say("about-emptied");
pub const DEMO_OPENED: Say = Say("about-demo-opened");

/// Name of the file for an office's book.
pub fn file_name(office: &str) -> String {
    let plain: String = office
        .to_lowercase()
        .chars()
        .map(|c| if c.is_alphanumeric() { c } else { '-' })
        .collect();
    match plain.trim_matches('-') {
        "" => "recipe-book.json".to_owned(),
        plain => format!("{plain}-book.json"),
    }
}

/// A file cannot be opened.
pub fn not_opened(name: &str, why: &str) -> String {
    say(
        "about-not-opened",
        &[("name", name.into()), ("why", why.into())],
    )
}

pub const IS_NOT_HEADING: Say = Say("about-is-not-heading");
pub const LIMITS: [Say; 4] = [
    Say("about-limits-1"),
    Say("about-limits-2"),
    Say("about-limits-3"),
    Say("about-limits-4"),
];

pub const DATA_HEADING: Say = Say("about-data-heading");
pub const DATA: [Say; 2] = [Say("about-data-1"), Say("about-data-2")];
/// As the publisher asks to be cited; a title is not translated.
pub const CITATION: &str = "US Department of Agriculture, Agricultural Research Service, Nutrient Data \
     Laboratory. USDA National Nutrient Database for Standard Reference, Release 28. Version Current: \
     September 2015, slightly revised May 2016.";

pub const FIGURES_HEADING: Say = Say("about-figures-heading");
/// A sign or a word of the figures, and what it means.
pub const FIGURES: [(Say, Say); 5] = [
    (Say("about-at-least"), Say("about-at-least-means")),
    (Say("about-known-for"), Say("about-known-for-means")),
    (Say("about-unknown"), Say("about-unknown-means")),
    (Say("about-verdicts"), Say("about-verdicts-means")),
    (Say("about-change"), Say("about-change-means")),
];

pub const PRIVACY_HEADING: Say = Say("about-privacy-heading");
pub const PRIVACY: Say = Say("about-privacy");

pub const LANGUAGES_HEADING: Say = Say("about-languages-heading");
pub const LANGUAGES: Say = Say("about-languages");
