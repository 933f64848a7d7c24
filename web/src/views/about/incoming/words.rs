//! Words of files that come in and go out.

use crate::language::{Say, say};
use engine::book::Book;
use engine::exchange::{Arrival, Arriving};

pub const OPEN: Say = Say("files-open");
pub const OTHERS: Say = Say("files-others");
pub const OTHERS_HOW: Say = Say("files-others-how");
pub const SCHEMA: Say = Say("files-schema");
pub const SAME_BOOK: Say = Say("files-same-book");
pub const NOTHING_YET: Say = Say("files-nothing-yet");
pub const LEAVE: Say = Say("files-leave");
pub const TAKE_BOOK: Say = Say("files-take-book");
pub const BOOK_INSTEAD: Say = Say("files-book-instead");
pub const LIST: Say = Say("files-list");
pub const RECIPE: Say = Say("files-recipe");
pub const LINES: Say = Say("files-lines");
pub const SERVINGS: Say = Say("files-servings");
pub const BECOMES: Say = Say("files-becomes");

/// What a file would bring.
pub fn heading(name: &str) -> String {
    say("files-heading", &[("name", name.into())])
}

/// What is in a book.
pub fn book(book: &Book) -> String {
    say(
        "files-book",
        &[
            ("office", book.office.as_str().into()),
            ("recipes", book.recipes.len().into()),
            ("weeks", book.weeks.len().into()),
            ("foods", book.own_foods.len().into()),
        ],
    )
}

/// The button that brings recipes in.
pub fn take_recipes(count: usize) -> String {
    say("files-take-recipes", &[("count", count.into())])
}

/// A book lies open.
pub fn opened(name: &str) -> String {
    say("files-opened", &[("name", name.into())])
}

/// Recipes have come in.
pub fn brought_in(count: usize, name: &str) -> String {
    say(
        "files-brought-in",
        &[("count", count.into()), ("name", name.into())],
    )
}

/// What becomes of a recipe.
pub fn becomes(one: &Arriving) -> String {
    match one.arrival {
        Arrival::New => say("files-new", &[]),
        Arrival::Present => say("files-present", &[]),
        Arrival::Beside => say("files-beside", &[]),
    }
}
