//! Making the two asset files from the committed tables.

mod foods;
mod provenance;

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::OnceLock;

use crate::format::{encode_foods, encode_provenance};
use crate::tables::{self, Row, TableError};

/// File name of the foods asset.
pub const FOODS_FILE: &str = "sr28.foods.bin";
/// File name of the provenance asset.
pub const PROVENANCE_FILE: &str = "sr28.provenance.bin";

/// Makes the foods asset and the provenance asset from the tables in a folder.
///
/// # Errors
/// [`TableError`] with the file, the line and the cell.
pub fn build(tables: &Path) -> Result<(Vec<u8>, Vec<u8>), TableError> {
    let foods = foods::collect(tables)?;
    let provenance = provenance::collect(tables, &foods)?;
    Ok((encode_foods(&foods), encode_provenance(&provenance)))
}

/// The foods asset and the provenance asset of the committed tables, made once in a run: for
/// native tests.
///
/// # Panics
/// If the committed tables cannot be used.
pub fn committed() -> &'static (Vec<u8>, Vec<u8>) {
    static ASSETS: OnceLock<(Vec<u8>, Vec<u8>)> = OnceLock::new();
    ASSETS.get_or_init(|| {
        build(&tables::committed_folder()).unwrap_or_else(|error| panic!("{error}"))
    })
}

/// Places of the foods, by number.
type FoodPlaces = BTreeMap<u32, u32>;

/// The place of the food that a row names in its column `food`.
fn food_place(places: &FoodPlaces, row: &Row<'_>) -> Result<u32, TableError> {
    let place = places.get(&row.whole("food")?).copied();
    place.ok_or_else(|| row.wrong("food", "the number of a food in foods.csv"))
}

/// Notes that rows must rise by a key, as the importer writes them.
struct Rising<K>(Option<K>);

impl<K: Ord> Rising<K> {
    fn check(&mut self, key: K, row: &Row<'_>, column: &'static str) -> Result<(), TableError> {
        if self.0.as_ref().is_some_and(|before| *before >= key) {
            return Err(row.wrong(column, "something that comes after the line before"));
        }
        self.0 = Some(key);
        Ok(())
    }
}
