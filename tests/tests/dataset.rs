//! The committed tables and the data files against the published text files of SR28.
//!
//! Source of the files: see [`gramwright_tests::release`].

use std::collections::BTreeMap;
use std::fs;
use std::path::PathBuf;
use std::sync::OnceLock;

use gramwright_tests::release;
use nutrient_data::format::{
    FoodsAsset, MISSING, ProvenanceAsset, Scaled, decode_foods, decode_provenance,
};
use nutrient_data::{asset, import, tables};

fn foods() -> &'static FoodsAsset {
    static FOODS: OnceLock<FoodsAsset> = OnceLock::new();
    FOODS.get_or_init(|| decode_foods(&asset::committed().0).unwrap())
}

fn provenance() -> &'static ProvenanceAsset {
    static PROVENANCE: OnceLock<ProvenanceAsset> = OnceLock::new();
    PROVENANCE.get_or_init(|| decode_provenance(&asset::committed().1).unwrap())
}

/// Rows of a published file, split by hand and not by the importer.
fn published(file: &str) -> Vec<Vec<String>> {
    let bytes = fs::read(release::folder().join(file)).unwrap();
    // The texts compared below are ASCII but for a few letters, which Latin-1 shares with Unicode.
    let text: String = bytes.into_iter().map(char::from).collect();
    let rows = text.split("\r\n").filter(|line| !line.is_empty());
    let cells = |row: &str| row.split('^').map(|cell| cell.replace('~', "")).collect();
    rows.map(cells).collect()
}

fn places() -> BTreeMap<String, usize> {
    let foods = foods().foods.iter().enumerate();
    foods
        .map(|(place, food)| (format!("{:05}", food.number), place))
        .collect()
}

#[test]
fn importing_again_gives_the_committed_tables() {
    let folder = tables::committed_folder();
    let files = import::read_release(release::folder(), &folder).unwrap_or_else(|e| panic!("{e}"));
    for file in &files {
        let committed = fs::read(folder.join(&file.path)).unwrap();
        assert!(
            file.content == committed,
            "{} differs; import again",
            file.path
        );
    }
    let count = |folder: PathBuf| {
        let entries = fs::read_dir(folder).unwrap();
        entries
            .filter(|entry| entry.as_ref().unwrap().path().is_file())
            .count()
    };
    let committed = count(folder.join("sr28")) + count(folder.join("sr28/values"));
    assert_eq!(
        files.len(),
        committed,
        "a committed table is not made by importing"
    );
}

/// Totals: SR28, Documentation and User Guide, September 2015.
#[test]
fn the_release_has_its_published_size() {
    assert_eq!(published("FOOD_DES.txt").len(), 8_789);
    assert_eq!(published("NUT_DATA.txt").len(), 679_045);
    assert_eq!(published("WEIGHT.txt").len(), 15_438);
    assert_eq!(foods().foods.len(), 8_789);
    assert_eq!(foods().measures.len(), 15_438);
}

#[test]
fn every_kept_value_has_its_published_digits() {
    let (foods, provenance, places) = (foods(), provenance(), places());
    let columns: BTreeMap<String, usize> = foods
        .nutrients
        .iter()
        .map(|n| n.number.to_string())
        .zip(0..)
        .collect();
    let mut compared = vec![0; foods.nutrients.len()];
    for row in published("NUT_DATA.txt") {
        let Some(&column) = columns.get(&row[1]) else {
            continue;
        };
        let food = places[&row[0]];
        let values = &foods.values[column];
        let mantissa = values.mantissas[food];
        let value = Scaled {
            mantissa,
            scale: values.scale,
        };
        assert_eq!(value.to_string(), row[2], "{row:?}");
        let origin = &provenance.columns[column];
        assert_eq!(origin.data_points[food].to_string(), row[3], "{row:?}");
        let error = Scaled {
            mantissa: origin.standard_errors[food],
            scale: origin.se_scale,
        };
        let error = if error.mantissa == MISSING {
            String::new()
        } else {
            error.to_string()
        };
        assert_eq!(error, row[4], "{row:?}");
        let source = &provenance.sources[usize::from(origin.sources[food]) - 1];
        assert_eq!(source.code, row[5], "{row:?}");
        let derivation = usize::from(origin.derivations[food]).checked_sub(1);
        let derivation = derivation.map_or("", |place| &provenance.derivations[place].code);
        assert_eq!(derivation, row[6], "{row:?}");
        compared[column] += 1;
    }
    for (column, compared) in compared.into_iter().enumerate() {
        let there = foods.values[column]
            .mantissas
            .iter()
            .filter(|&&m| m != MISSING);
        assert_eq!(
            there.count(),
            compared,
            "{}: values that are not published",
            foods.nutrients[column].name
        );
    }
}

#[test]
fn foods_and_measures_are_the_published_ones() {
    let (foods, places) = (foods(), places());
    for (food, row) in foods.foods.iter().zip(published("FOOD_DES.txt")) {
        assert_eq!(format!("{:05}", food.number), row[0]);
        assert_eq!(format!("{:04}", food.group), row[1], "{row:?}");
        assert_eq!(food.description, row[2], "{row:?}");
        assert_eq!(food.common_names, row[4], "{row:?}");
        assert_eq!(food.manufacturer, row[5], "{row:?}");
    }
    for (measure, row) in foods.measures.iter().zip(published("WEIGHT.txt")) {
        assert_eq!(measure.food as usize, places[&row[0]], "{row:?}");
        assert_eq!(measure.seq.to_string(), row[1], "{row:?}");
        // The release leaves out the zero before the point.
        assert_eq!(
            measure.amount.to_string().trim_start_matches('0'),
            row[2],
            "{row:?}"
        );
        assert_eq!(measure.words, row[3], "{row:?}");
        assert_eq!(measure.grams.to_string(), row[4], "{row:?}");
    }
}
