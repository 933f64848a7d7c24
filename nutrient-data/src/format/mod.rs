//! The compact form of the tables that the page loads: two files, each table written by column.
//!
//! | asset | content |
//! |---|---|
//! | `sr28.foods.bin` | foods, groups, nutrients, measures, values: what an analysis needs |
//! | `sr28.provenance.bin` | data points, standard errors, codes, footnotes: may come later |
//!
//! [`encode_foods`] and [`encode_provenance`] stand beside their decoders and are exact inverses:
//! every digit of the tables comes back, trailing zeros included. A file carries a mark, its
//! kind, a [`VERSION`], its length and a CRC-32; [`AssetError`] tells apart what can be wrong.
//! No files, clocks or browsers here: bytes in, rows out, and back.

mod columns;
mod envelope;
mod error;
mod expected;
mod foods;
mod provenance;
mod rows;
mod scaled;

pub use envelope::VERSION;
pub use error::AssetError;
pub use foods::{decode_foods, encode_foods};
pub use provenance::{decode_provenance, encode_provenance};
pub use rows::{
    CodeRow, FoodRow, FoodsAsset, FootnoteRow, GroupRow, MISSING, MeasureEvidence, MeasureRow,
    NO_VALUE, NutrientRow, ProvenanceAsset, ProvenanceColumn, ValueColumn,
};
pub use scaled::Scaled;
