//! Newtypes that carry their unit, unit words, and amounts read from text.

mod amount;
mod cursor;
mod error;
mod newtypes;
mod number;
mod parse;
mod quantity;
mod read_unit;
mod stated;
mod token;
mod unit;
pub mod vocabulary;

pub use amount::Amount;
pub use error::{LARGEST_AMOUNT, QuantityError};
pub use newtypes::{Grams, Kilocalories, Milligrams, Millilitres, Percent, Servings};
pub use parse::{ReadAmount, read_amount};
pub use quantity::Quantity;
pub use unit::{CountUnit, MassUnit, Size, Unit, VolumeUnit};
