//! What is thrown when a call cannot be answered.

use super::engine::to_js;
use engine::exchange::json_part::part;
use serde::{Deserialize, Serialize};
use std::fmt;
use wasm_bindgen::prelude::*;

/// At which stage a call failed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum ErrorKind {
    /// The food tables are damaged, foreign or of another version.
    Tables,
    /// An argument does not have the form that the declarations give.
    Input,
    /// The book is ambiguous, or its own foods or limits cannot be used.
    Book,
    /// The recipe has no figures.
    Recipe,
    /// The week cannot be studied.
    Week,
}

/// Why a call was not answered.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct ApiError {
    /// At which stage.
    pub kind: ErrorKind,
    /// Where in the argument: "recipe.lines[2].text"; the argument's name
    /// where the whole is meant.
    pub r#where: String,
    /// What is wrong.
    pub message: String,
    /// What to do about it.
    pub remedy: String,
}

impl ApiError {
    /// An error about a whole argument.
    pub fn new(kind: ErrorKind, place: &str, message: impl fmt::Display, remedy: &str) -> Self {
        Self {
            kind,
            r#where: place.to_owned(),
            message: message.to_string(),
            remedy: remedy.to_owned(),
        }
    }

    /// An error about a part of an argument, which was read as `text`.
    pub fn input(argument: &str, text: &str, error: &serde_json::Error) -> Self {
        let part = part(text, error);
        let place = match part.as_str() {
            "" => argument.to_owned(),
            part if part.starts_with('[') => format!("{argument}{part}"),
            part => format!("{argument}.{part}"),
        };
        // Lines and columns are those of a text that the caller has not seen.
        let told = error.to_string();
        let what = told.split(" at line ").next().unwrap_or_default();
        Self {
            kind: ErrorKind::Input,
            r#where: place,
            message: what.to_owned(),
            remedy: "compare it with the declarations; numbers are written as text, as in \"2.5\""
                .to_owned(),
        }
    }
}

impl From<ApiError> for JsValue {
    fn from(error: ApiError) -> Self {
        // A few texts: they always have a JavaScript form.
        to_js(&error).unwrap_or_else(|_| Self::from_str(&error.message))
    }
}
