//! Long work beside the page, in a worker: `web/shell/long_work.js` is the
//! other end.

use engine::book::Book;
use engine::mend::{Ask, Outcome, Progress};
use engine::week::WeekId;
use gloo::events::EventListener;
use serde::{Deserialize, Serialize};
use wasm_bindgen::JsValue;
use web_sys::{ErrorEvent, MessageEvent, Worker, WorkerOptions, WorkerType};
use yew::Callback;

/// Where the page's server keeps the worker's script.
const SCRIPT: &str = "long_work.js";

#[derive(Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
enum Order<'a> {
    Mend {
        book: &'a Book,
        week: &'a WeekId,
        ask: &'a Ask,
    },
    Stop,
}

/// What the worker tells.
#[derive(Debug, Clone, PartialEq, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum News {
    /// How far it has come.
    Progress {
        /// So far.
        progress: Progress,
    },
    /// The end.
    Outcome {
        /// How it ended.
        outcome: Outcome,
        /// How much was looked at.
        progress: Progress,
    },
    /// It could not be done, in the words of what went wrong.
    Problem {
        /// The words.
        message: String,
    },
}

/// Work that goes on. It ends when this is dropped.
#[derive(Debug)]
pub struct LongWork {
    worker: Worker,
    _listeners: [EventListener; 2],
}

impl LongWork {
    /// Starts a search for the fewest changes that mend a week.
    ///
    /// # Errors
    /// In the browser's words, when it starts no worker.
    pub fn mend(
        book: &Book,
        week: &WeekId,
        ask: &Ask,
        told: Callback<News>,
    ) -> Result<Self, String> {
        let options = WorkerOptions::new();
        options.set_type(WorkerType::Module);
        let worker = Worker::new_with_options(SCRIPT, &options).map_err(|error| said(&error))?;
        let news = EventListener::new(&worker, "message", {
            let told = told.clone();
            move |event| {
                use wasm_bindgen::JsCast;
                let data = event.dyn_ref::<MessageEvent>().map(MessageEvent::data);
                let text = data.and_then(|data| data.as_string()).unwrap_or_default();
                told.emit(match serde_json::from_str(&text) {
                    Ok(news) => news,
                    Err(error) => News::Problem {
                        message: error.to_string(),
                    },
                });
            }
        });
        let problem = EventListener::new(&worker, "error", move |event| {
            use wasm_bindgen::JsCast;
            let message = event.dyn_ref::<ErrorEvent>().map(ErrorEvent::message);
            told.emit(News::Problem {
                message: message.unwrap_or_default(),
            });
        });
        let work = Self {
            worker,
            _listeners: [news, problem],
        };
        work.send(&Order::Mend { book, week, ask })?;
        Ok(work)
    }

    /// Asks it to come to an end with what it has.
    ///
    /// # Errors
    /// In the browser's words, when it cannot be reached.
    pub fn stop(&self) -> Result<(), String> {
        self.send(&Order::Stop)
    }

    fn send(&self, order: &Order<'_>) -> Result<(), String> {
        let text = serde_json::to_string(order).map_err(|error| error.to_string())?;
        let sent = self.worker.post_message(&JsValue::from_str(&text));
        sent.map_err(|error| said(&error))
    }
}

impl Drop for LongWork {
    fn drop(&mut self) {
        self.worker.terminate();
    }
}

/// What an error of the browser says.
fn said(error: &JsValue) -> String {
    let message = js_sys::Reflect::get(error, &JsValue::from_str("message"));
    let message = message.ok().and_then(|message| message.as_string());
    message.unwrap_or_else(|| format!("{error:?}"))
}
