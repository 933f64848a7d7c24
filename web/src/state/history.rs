//! The steps that can be taken back, and those that can be done again.
//!
//! In memory there may be any number. When the page is closed they are stored
//! beside the book, the nearest first, as far as there is room; how many were
//! left out is counted and told.

use super::contents::Contents;
use super::steps::Step;
use serde::{Deserialize, Serialize};
use serde_json::value::RawValue;
use std::cell::OnceCell;
use std::rc::Rc;

/// The steps on both sides of a state.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct History {
    /// Each leads to the state before it; the nearest is the last.
    past: Vec<Rc<Noted>>,
    /// Each leads to the state after it; the nearest is the last.
    future: Vec<Rc<Noted>>,
    /// Steps before the oldest that were not kept.
    cut: usize,
}

/// A step with the text by which it is stored, once that was asked for.
#[derive(Debug)]
struct Noted {
    step: Step,
    text: OnceCell<Box<RawValue>>,
}

impl Noted {
    fn new(step: Step) -> Rc<Self> {
        Rc::new(Self {
            step,
            text: OnceCell::new(),
        })
    }

    fn text(&self) -> &RawValue {
        self.text.get_or_init(|| {
            // Plain data with text keys: it always has a JSON form.
            let text = serde_json::value::to_raw_value(&self.step);
            text.unwrap_or_else(|_| RawValue::NULL.to_owned())
        })
    }
}

impl PartialEq for Noted {
    fn eq(&self, other: &Self) -> bool {
        std::ptr::eq(self, other) || self.step == other.step
    }
}

/// What is stored.
#[derive(Serialize)]
struct StoredRef<'a> {
    of: &'a str,
    cut: usize,
    past: &'a [&'a RawValue],
    future: &'a [&'a RawValue],
}

#[derive(Deserialize)]
struct Stored {
    of: String,
    cut: usize,
    past: Vec<Step>,
    future: Vec<Step>,
}

impl History {
    /// Whether there is a step to take back.
    pub fn can_go_back(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step to do again.
    pub fn can_go_on(&self) -> bool {
        !self.future.is_empty()
    }

    /// How many steps can be taken back.
    pub fn steps_back(&self) -> usize {
        self.past.len()
    }

    /// How many steps before the oldest were not kept.
    pub fn cut(&self) -> usize {
        self.cut
    }

    /// Notes a step from one state to another. What could be done again is
    /// gone then.
    pub(super) fn note(&mut self, from: &Contents, to: &Contents) {
        self.past.push(Noted::new(Step::between(to, from)));
        self.future.clear();
    }

    /// The last step leads from `from` to another state now.
    pub(super) fn note_further(&mut self, from: &Contents, to: &Contents) {
        self.past.pop();
        self.note(from, to);
    }

    /// Takes the last step back: gives the state before it.
    pub(super) fn back(&mut self, state: &Contents) -> Option<Contents> {
        let before = self.past.pop()?.step.from(state)?;
        self.future.push(Noted::new(Step::between(&before, state)));
        Some(before)
    }

    /// Does the step again that was taken back last: gives the state after it.
    pub(super) fn on(&mut self, state: &Contents) -> Option<Contents> {
        let after = self.future.pop()?.step.from(state)?;
        self.past.push(Noted::new(Step::between(&after, state)));
        Some(after)
    }

    /// The text that is stored, of about `room` bytes at most. `of` is the mark
    /// of the book that it belongs to. What can be done again comes first, for
    /// a new step would end it anyway.
    pub fn text(&self, of: &str, room: usize) -> String {
        let mut left = room;
        let future = nearest(&self.future, &mut left);
        let past = nearest(&self.past, &mut left);
        let stored = StoredRef {
            of,
            cut: self.cut + self.past.len() - past.len(),
            past: &past,
            future: &future,
        };
        serde_json::to_string(&stored).unwrap_or_default()
    }

    /// Reads what was stored for a book with this mark; nothing where it
    /// belongs to another, or cannot be read.
    pub fn read(text: &str, of: &str) -> Option<Self> {
        let stored: Stored = serde_json::from_str(text).ok()?;
        let noted = |steps: Vec<Step>| steps.into_iter().map(Noted::new).collect();
        (stored.of == of).then(|| Self {
            past: noted(stored.past),
            future: noted(stored.future),
            cut: stored.cut,
        })
    }
}

/// The texts of the nearest steps, for which there is room.
fn nearest<'a>(steps: &'a [Rc<Noted>], room: &mut usize) -> Vec<&'a RawValue> {
    let mut texts = Vec::new();
    for noted in steps.iter().rev() {
        let text = noted.text();
        match room.checked_sub(text.get().len()) {
            Some(left) => *room = left,
            None => break,
        }
        texts.push(text);
    }
    texts.reverse();
    texts
}
