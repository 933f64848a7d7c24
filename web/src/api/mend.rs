//! The fewest changes that bring a week inside its limits.

use super::engine::{Engine, from_js, or_default, to_js};
use super::error::{ApiError, ErrorKind};
use ::engine::book::Book;
use ::engine::mend::{Ask, MendError, Outcome, Progress, Search, Tools};
use ::engine::reference::Reference;
use ::engine::swaps::SwapIndex;
use ::engine::week::WeekId;
use serde::Serialize;
use wasm_bindgen::prelude::*;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = include_str!("mend.d.ts");

/// A search that goes on as far as its caller lets it.
#[wasm_bindgen]
#[derive(Debug)]
pub struct Mending {
    reference: Reference,
    index: SwapIndex,
    search: Search,
}

/// The end of a search.
#[derive(Serialize)]
struct Mended<'a> {
    outcome: &'a Outcome,
    progress: Progress,
}

#[wasm_bindgen]
impl Mending {
    /// Works on for a moment, and tells how far it has come.
    ///
    /// # Errors
    /// None is known.
    #[wasm_bindgen(unchecked_return_type = "MendProgress")]
    pub fn step(&mut self) -> Result<JsValue, JsValue> {
        to_js(&self.search.step(tools(&self.reference, &self.index)))
    }

    /// Stops: what was found so far is the answer.
    ///
    /// # Errors
    /// None is known.
    #[wasm_bindgen(unchecked_return_type = "MendProgress")]
    pub fn stop(&mut self) -> Result<JsValue, JsValue> {
        self.search.stop(tools(&self.reference, &self.index));
        self.progress()
    }

    /// How far it has come.
    ///
    /// # Errors
    /// None is known.
    #[wasm_bindgen(unchecked_return_type = "MendProgress")]
    pub fn progress(&self) -> Result<JsValue, JsValue> {
        to_js(&self.search.progress())
    }

    /// How it ended; null while it has not.
    ///
    /// # Errors
    /// None is known.
    #[wasm_bindgen(unchecked_return_type = "MendOutcome | null")]
    pub fn outcome(&self) -> Result<JsValue, JsValue> {
        to_js(&self.search.outcome())
    }
}

#[wasm_bindgen]
impl Engine {
    /// Begins a search for the fewest changes that bring the week of that name
    /// inside its limits. Load the provenance first where margins are wanted.
    ///
    /// # Errors
    /// When an argument has another form, the book has no such week, or the
    /// week cannot be studied.
    pub fn mending(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Book")] book: JsValue,
        #[wasm_bindgen(js_name = weekId)] week_id: String,
        #[wasm_bindgen(unchecked_optional_param_type = "MendAsk")] ask: JsValue,
    ) -> Result<Mending, JsValue> {
        let book: Book = from_js("book", book)?;
        let ask: Ask = or_default("ask", ask)?;
        let reference = self.for_book(&book)?.into_owned();
        let index = SwapIndex::build(&reference).map_err(|error| {
            let remedy = "fetch the program again: its tables are damaged";
            ApiError::new(ErrorKind::Tables, "", error, remedy)
        })?;
        let search = Search::new(tools(&reference, &index), &book, &WeekId(week_id), ask);
        let search = search.map_err(not_begun)?;
        Ok(Mending {
            reference,
            index,
            search,
        })
    }

    /// The same search to its end. It can take seconds: in a page, call
    /// `mending` in a worker instead.
    ///
    /// # Errors
    /// As `mending`.
    #[wasm_bindgen(js_name = mendWeek, unchecked_return_type = "MendedWeek")]
    pub fn mend_week(
        &self,
        #[wasm_bindgen(unchecked_param_type = "Book")] book: JsValue,
        #[wasm_bindgen(js_name = weekId)] week_id: String,
        #[wasm_bindgen(unchecked_optional_param_type = "MendAsk")] ask: JsValue,
    ) -> Result<JsValue, JsValue> {
        let mut mending = self.mending(book, week_id, ask)?;
        let Mending {
            reference,
            index,
            search,
        } = &mut mending;
        search.finish(tools(reference, index));
        let progress = search.progress();
        match search.outcome() {
            Some(outcome) => to_js(&Mended { outcome, progress }),
            None => Ok(JsValue::NULL),
        }
    }
}

fn tools<'a>(reference: &'a Reference, index: &'a SwapIndex) -> Tools<'a> {
    Tools { reference, index }
}

fn not_begun(error: MendError) -> ApiError {
    match &error {
        MendError::NoWeek(_) => {
            let remedy = "name one of its weeks by its id";
            ApiError::new(ErrorKind::Week, "weekId", error, remedy)
        }
        MendError::Week(_) => {
            let remedy = "mend the day that is named";
            ApiError::new(ErrorKind::Week, "book.weeks", error, remedy)
        }
        MendError::Table(_) => {
            let remedy = "fetch the program again: its tables are damaged";
            ApiError::new(ErrorKind::Tables, "", error, remedy)
        }
    }
}
