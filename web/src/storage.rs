//! The browser's storage: the book as one text under one key. It is read once,
//! written after changes, and never overwritten when it holds something else
//! than what this page last read or wrote. Beside it, under a key of their own,
//! lie the steps that can be taken back: the book goes before them where there
//! is no room for both.

use crate::book_file::read_saved;
use crate::state::{Contents, History, Saved};
use crate::stored_text::StoredText;
use engine::exchange::Problem;
use std::cell::RefCell;
use web_sys::Storage;

const KEY: &str = "gramwright.book";
const HISTORY: &str = "gramwright.history";
/// Bytes of steps that are stored, at first and while there is no room for so
/// many. A browser gives a page about five million characters, and the book
/// needs most of them. Our own judgement.
const HISTORY_ROOM: [usize; 4] = [1_000_000, 250_000, 60_000, 0];
/// Unreadable texts are moved to this key with a number behind it.
const ASIDE: &str = "gramwright.book.unreadable.";

/// What was in the storage when the page opened.
#[derive(Debug, Clone, PartialEq)]
pub enum Found {
    /// Nothing: a first visit.
    Nothing,
    /// A book.
    Book(Box<Saved>),
    /// A text that is no book. It stays where it is.
    Unreadable {
        /// The text as found.
        text: String,
        /// Why it cannot be read.
        why: Problem,
    },
    /// The browser lets this page store nothing.
    Refused,
}

/// Why a book was not stored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SaveProblem {
    /// The browser lets this page store nothing.
    Refused,
    /// There is no room left, or the browser would not say.
    Full,
    /// Another tab has stored something since.
    ChangedElsewhere,
    /// What is stored cannot be read, and nobody has said what to do with it.
    HoldsUnreadable,
}

/// This page's hold on the storage.
#[derive(Debug)]
pub struct Store {
    /// What the storage held when this page last read or wrote it.
    last: RefCell<Option<String>>,
    unreadable: RefCell<bool>,
    text: RefCell<StoredText>,
}

fn storage() -> Option<Storage> {
    gloo::utils::window().local_storage().ok().flatten()
}

fn stored() -> Option<String> {
    storage()?.get_item(KEY).ok().flatten()
}

fn free_aside(storage: &Storage) -> String {
    let is_free = |key: &String| storage.get_item(key).is_ok_and(|text| text.is_none());
    (1..)
        .map(|number| format!("{ASIDE}{number}"))
        .find(is_free)
        .unwrap_or_default()
}

impl Store {
    /// Reads the storage.
    pub fn open() -> (Self, Found) {
        let store = Self {
            last: RefCell::new(stored()),
            unreadable: RefCell::new(false),
            text: RefCell::default(),
        };
        let found = store.read();
        (store, found)
    }

    fn read(&self) -> Found {
        if storage().is_none() {
            return Found::Refused;
        }
        let Some(text) = self.last.borrow().clone() else {
            return Found::Nothing;
        };
        match read_saved(&text) {
            Ok(saved) => Found::Book(Box::new(saved)),
            Err(why) => {
                self.unreadable.replace(true);
                Found::Unreadable { text, why }
            }
        }
    }

    /// Reads what another tab has stored.
    pub fn read_again(&self) -> Found {
        self.last.replace(stored());
        self.unreadable.replace(false);
        self.read()
    }

    /// From now on this page's book counts, whatever another tab has stored.
    pub fn overrule(&self) {
        self.last.replace(stored());
    }

    /// Moves an unreadable text out of the way, where it stays as it is.
    ///
    /// # Errors
    /// When there is no room for it; then it stays in its place.
    pub fn put_unreadable_aside(&self) -> Result<(), SaveProblem> {
        let storage = storage().ok_or(SaveProblem::Refused)?;
        if let Some(text) = self.last.borrow().as_deref() {
            let aside = free_aside(&storage);
            // Removed first: there may be room for one copy only.
            storage.remove_item(KEY).map_err(|_| SaveProblem::Full)?;
            if storage.set_item(&aside, text).is_err() {
                storage.set_item(KEY, text).map_err(|_| SaveProblem::Full)?;
                return Err(SaveProblem::Full);
            }
        }
        self.last.replace(None);
        self.unreadable.replace(false);
        Ok(())
    }

    /// The steps around the book that was read, if they are those of this very
    /// text.
    pub fn history(&self) -> Option<History> {
        let of = mark(self.last.borrow().as_deref()?);
        let text = storage()?.get_item(HISTORY).ok().flatten()?;
        History::read(&text, &of)
    }

    /// Stores a book, and of the steps around it what there is room for.
    ///
    /// # Errors
    /// When the browser refuses, or something else would be lost. Then what is
    /// stored stays as it is.
    pub fn save(&self, contents: &Contents, history: &History) -> Result<(), SaveProblem> {
        let storage = storage().ok_or(SaveProblem::Refused)?;
        if *self.unreadable.borrow() {
            return Err(SaveProblem::HoldsUnreadable);
        }
        if stored() != *self.last.borrow() {
            return Err(SaveProblem::ChangedElsewhere);
        }
        let text = self.text.borrow_mut().write(contents);
        let text = text.map_err(|_| SaveProblem::Refused)?;
        if storage.set_item(KEY, &text).is_err() {
            // The book is worth more than the way to it.
            let freed = storage.remove_item(HISTORY);
            freed.map_err(|_| SaveProblem::Full)?;
            storage
                .set_item(KEY, &text)
                .map_err(|_| SaveProblem::Full)?;
        }
        save_history(&storage, history, &mark(&text));
        self.last.replace(Some(text));
        Ok(())
    }
}

/// Stores as many steps as there is room for. That some were left out stands
/// in what is stored; where not even that can be, the book has no steps.
fn save_history(storage: &Storage, history: &History, of: &str) {
    let mut rooms = HISTORY_ROOM.iter();
    let stored = rooms.any(|room| {
        let text = history.text(of, *room);
        storage.set_item(HISTORY, &text).is_ok()
    });
    if !stored {
        drop(storage.remove_item(HISTORY));
    }
}

/// Tells a stored text from any other: its length and its check sum.
fn mark(text: &str) -> String {
    format!("{}-{:08x}", text.len(), crc32fast::hash(text.as_bytes()))
}
