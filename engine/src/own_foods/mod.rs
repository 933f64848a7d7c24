//! Foods of the office's own: from a package label, a specification, a CSV, or
//! the public download formats of FoodData Central.
//!
//! What is kept is what the source says, with the source's own digits; values
//! per 100 g are worked out each time, and carry the interval for which a
//! rounded label figure stands.

mod csv_import;
mod error;
mod fdc_csv;
mod fdc_json;
mod model;
mod values;

pub use csv_import::from_csv;
pub use error::ImportError;
pub use fdc_csv::{FdcTables, from_fdc_csv};
pub use fdc_json::from_fdc_json;
pub use model::{Declared, OwnFood, OwnMeasure, OwnSource, Stated};
pub use values::entry;
