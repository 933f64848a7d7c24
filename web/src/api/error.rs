//! What is thrown when a call cannot be answered.

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

    /// An error about a part of an argument.
    pub fn input<E: fmt::Display>(argument: &str, error: &serde_path_to_error::Error<E>) -> Self {
        let path = error.path().to_string();
        let place = match path.as_str() {
            "." => argument.to_owned(),
            path => format!("{argument}.{path}"),
        };
        Self {
            kind: ErrorKind::Input,
            r#where: place,
            message: error.inner().to_string(),
            remedy: "compare it with the declarations; numbers are written as text, as in \"2.5\""
                .to_owned(),
        }
    }
}

impl From<ApiError> for JsValue {
    fn from(error: ApiError) -> Self {
        // A few texts: they always have a JavaScript form.
        serde_wasm_bindgen::to_value(&error).unwrap_or_else(|_| Self::from_str(&error.message))
    }
}
