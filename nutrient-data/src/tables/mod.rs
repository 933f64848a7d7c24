//! The committed tables under `tables/`: their names and columns, reading them, and what can be
//! wrong with them. Importing writes by the same names and columns.

mod error;
mod read;

use std::path::PathBuf;

pub use error::TableError;
pub(crate) use read::{Row, read};

/// A table: a CSV file in UTF-8 with a heading, ended by line feeds.
pub(crate) struct Table {
    /// Path below the folder of tables.
    pub path: &'static str,
    /// The columns in order.
    pub columns: &'static [&'static str],
}

pub(crate) const FOODS: Table = Table {
    path: "sr28/foods.csv",
    columns: &[
        "number",
        "group",
        "description",
        "common_names",
        "manufacturer",
        "scientific_name",
        "refuse_percent",
        "refuse_description",
        "nitrogen_factor",
        "protein_factor",
        "fat_factor",
        "carbohydrate_factor",
    ],
};

pub(crate) const GROUPS: Table = Table {
    path: "sr28/groups.csv",
    columns: &["code", "name"],
};

pub(crate) const MEASURES: Table = Table {
    path: "sr28/measures.csv",
    columns: &[
        "food",
        "seq",
        "amount",
        "measure",
        "grams",
        "data_points",
        "standard_deviation",
    ],
};

pub(crate) const NUTRIENTS: Table = Table {
    path: "sr28/nutrients.csv",
    columns: &["number", "tagname", "name", "unit", "decimals", "order"],
};

pub(crate) const SOURCE_CODES: Table = Table {
    path: "sr28/source_codes.csv",
    columns: &["code", "description"],
};

pub(crate) const DERIVATION_CODES: Table = Table {
    path: "sr28/derivation_codes.csv",
    columns: &["code", "description"],
};

pub(crate) const FOOTNOTES: Table = Table {
    path: "sr28/footnotes.csv",
    columns: &["food", "seq", "subject", "nutrient", "text"],
};

/// Columns of every file of values; its path is given by [`values_path`].
pub(crate) const VALUE_COLUMNS: &[&str] = &[
    "food",
    "value",
    "data_points",
    "standard_error",
    "source",
    "derivation",
];

/// The nutrients that importing keeps.
pub(crate) const KEPT_NUTRIENTS: Table = Table {
    path: "kept_nutrients.csv",
    columns: &["number", "tagname"],
};

/// Nutrients that SR28 does not have and the rules ask for; written by hand.
pub(crate) const ADDED_NUTRIENTS: Table = Table {
    path: "added/nutrients.csv",
    columns: &[
        "number", "tagname", "name", "unit", "decimals", "order", "note",
    ],
};

/// Path of the file of values of one nutrient.
pub(crate) fn values_path(number: &str, tagname: &str) -> String {
    format!("sr28/values/{number}-{tagname}.csv")
}

/// The folder of committed tables, in the source tree that this program was built from.
pub fn committed_folder() -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "tables"].iter().collect()
}
