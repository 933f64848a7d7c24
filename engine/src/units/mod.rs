//! Newtypes that carry their unit, unit words, and amounts read from text.

mod newtypes;

pub use newtypes::{Grams, Kilocalories, Milligrams, Millilitres, Percent, Servings};
