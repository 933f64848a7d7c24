//! Pieces of interface that several views use.

mod bar;
mod footer;
mod header;
mod left_out;
mod number_field;
mod picker;
mod select;
mod standing;
mod unit_field;
mod verdict;

pub use bar::Bar;
pub use footer::Footer;
pub use header::Header;
pub use left_out::LeftOut;
pub use number_field::NumberField;
pub use picker::{Pick, Picker};
pub use select::Select;
pub use standing::StandingNote;
pub use unit_field::{MASSES, Measured, UnitField, VOLUMES};
pub use verdict::VerdictMark;
