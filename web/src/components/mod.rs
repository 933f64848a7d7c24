//! Pieces of interface that several views use.

mod bar;
pub mod chart;
mod date_field;
mod find;
mod footer;
mod header;
mod help;
mod in_parts;
mod left_out;
mod number_field;
mod picker;
mod save_as;
mod select;
mod standing;
mod tour;
mod unit_field;
mod verdict;

pub use bar::Bar;
pub use date_field::DateField;
pub use find::{FIELD as FIND_FIELD, Find};
pub use footer::Footer;
pub use header::Header;
pub use help::{Help, Topic};
#[cfg(test)]
pub(crate) use help::{PARTS as HELP_PARTS, message_key as help_key};
pub use in_parts::{InParts, use_in_parts};
pub use left_out::LeftOut;
pub use number_field::NumberField;
pub use picker::{Pick, Picker};
pub use save_as::{SaveRecipe, SaveWeek, save_all_recipes};
pub use select::Select;
pub use standing::StandingNote;
pub use tour::{Guide, Tour, use_guide};
pub use unit_field::{MASSES, Measured, UnitField, VOLUMES};
pub use verdict::VerdictMark;
