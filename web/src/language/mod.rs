//! What the page says, in the language of the person who reads it.
//!
//! The words stand in Fluent files, `web/language/en` and `web/language/es`,
//! one file per view. A view keeps a module `words` of [`Say`] constants and
//! of functions that call [`say`]; the key of a message begins with the name
//! of its file.

mod choice;
mod files;
mod spoken;
mod table;

pub use choice::{LanguageChoice, use_language};
pub use fluent_bundle::FluentValue;
pub use spoken::{Language, say_in, speak, spoken};
pub use table::{
    description, food_name, in_english, lang_of_food, naming, of_table, of_table_in,
    of_table_in_parts,
};

use std::fmt;
use yew::html::IntoPropValue;
use yew::{AttrValue, Html};

/// A message without arguments, by its key. It is worded when it is drawn, so
/// that it follows the language.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Say(pub &'static str);

/// A message with arguments, in the language that is spoken.
pub fn say(key: &str, arguments: &[(&str, FluentValue<'_>)]) -> String {
    say_in(spoken(), key, arguments)
}

impl fmt::Display for Say {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(&say(self.0, &[]))
    }
}

impl From<Say> for String {
    fn from(message: Say) -> Self {
        message.to_string()
    }
}

impl From<Say> for AttrValue {
    fn from(message: Say) -> Self {
        message.to_string().into()
    }
}

impl IntoPropValue<AttrValue> for Say {
    fn into_prop_value(self) -> AttrValue {
        self.into()
    }
}

impl IntoPropValue<Option<AttrValue>> for Say {
    fn into_prop_value(self) -> Option<AttrValue> {
        Some(self.into())
    }
}

impl IntoPropValue<Html> for Say {
    fn into_prop_value(self) -> Html {
        Html::from(self.to_string())
    }
}

impl IntoPropValue<Html> for &Say {
    fn into_prop_value(self) -> Html {
        (*self).into_prop_value()
    }
}

impl IntoPropValue<String> for Say {
    fn into_prop_value(self) -> String {
        self.into()
    }
}

#[cfg(test)]
mod tests;
