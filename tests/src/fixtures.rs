//! The committed dataset, read once per test program.

use engine::foods::{FoodTable, Provenance};
use engine::reference::Reference;
use engine::uncertainty::Evidence;
use std::sync::OnceLock;

/// The table of foods made from the committed tables.
pub fn foods() -> &'static FoodTable {
    static FOODS: OnceLock<FoodTable> = OnceLock::new();
    FOODS.get_or_init(|| {
        FoodTable::from_asset(&nutrient_data::asset::committed().0)
            .expect("the asset of the committed tables")
    })
}

/// The standard errors made from the committed tables.
pub fn evidence() -> &'static Evidence {
    static EVIDENCE: OnceLock<Evidence> = OnceLock::new();
    EVIDENCE.get_or_init(|| {
        let provenance = Provenance::from_asset(&nutrient_data::asset::committed().1)
            .expect("the asset of the committed tables");
        Evidence::new(foods(), provenance)
    })
}

/// All tables with the dataset and its standard errors.
pub fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| {
        let (foods, provenance) = nutrient_data::asset::committed();
        Reference::committed(foods)
            .and_then(|reference| reference.with_provenance(provenance))
            .expect("the committed tables")
    })
}
