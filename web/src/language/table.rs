//! Texts of the tables in the other language. The tables are in English, and
//! their texts are the keys: a text that changes loses its translation, and a
//! test says so, instead of keeping one that no longer fits.

use super::spoken::{Language, spoken, worded};
use engine::foods::{Food, FoodId};
use yew::prelude::*;

/// A text of a table, of the dataset's own words, or of an error, in the
/// language that is spoken; as it stands where that language has no words for
/// it.
pub fn of_table(text: &str) -> String {
    of_table_in(spoken(), text)
}

/// The same in a language.
pub fn of_table_in(language: Language, text: &str) -> String {
    match language {
        Language::English => text.to_owned(),
        language => worded(language, &key(text), &[]).unwrap_or_else(|| text.to_owned()),
    }
}

/// Words of the dataset or of a publication, which are in English whatever is
/// spoken, and marked so for readers of the screen (WCAG 2.2, 3.1.2).
pub fn in_english(text: &str) -> Html {
    match english() {
        None => html! { { text } },
        lang => html! { <span {lang}>{ text }</span> },
    }
}

/// The description of a food, marked where it is in another language.
pub fn description(food: &Food) -> Html {
    food_name(food.id, &food.description)
}

/// The same for a description that came by another way than its food.
pub fn food_name(food: FoodId, description: &str) -> Html {
    match lang_of_food(food) {
        None => html! { { description } },
        Some(_) => in_english(description),
    }
}

/// A message with a name in it that keeps its own marks: `message` is worded
/// for a mark of the name's place.
pub fn naming(message: impl FnOnce(&str) -> String, name: &Html) -> Html {
    const PLACE: &str = "\u{1}";
    let worded = message(PLACE);
    match worded.split_once(PLACE) {
        Some((before, after)) => html! {<>{ before }{ name.clone() }{ after }</>},
        None => html! { { worded } },
    }
}

/// What an element with a food's description has as its `lang`. The dataset's
/// are in English; an office writes its own as it speaks.
pub fn lang_of_food(food: FoodId) -> Option<&'static str> {
    match food {
        FoodId::Sr28(_) => english(),
        FoodId::Own(_) => None,
    }
}

/// The mark of English; nothing where it is spoken anyway.
fn english() -> Option<&'static str> {
    (spoken() != Language::English).then_some("en")
}

/// The message for a text: its letters and digits with hyphens between.
pub(super) fn key(text: &str) -> String {
    let mut key = String::from("table");
    for word in text
        .split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
    {
        key.push('-');
        key.extend(word.chars().filter(char::is_ascii));
    }
    key
}

/// The same for a text that puts several together with colons between, as
/// errors do: what is wrong, and how to mend it.
pub fn of_table_in_parts(text: &str) -> String {
    let parts: Vec<String> = text.split(": ").map(of_table).collect();
    parts.join(": ")
}
