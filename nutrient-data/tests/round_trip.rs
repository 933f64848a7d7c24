//! The assets hold everything that the committed tables hold, digit for digit: the tables are
//! written again from the decoded assets and compared byte for byte.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use nutrient_data::format::{
    CodeRow, FoodsAsset, MISSING, NO_VALUE, NutrientRow, ProvenanceAsset, Scaled, decode_foods,
    decode_provenance, encode_foods, encode_provenance,
};
use nutrient_data::{asset, tables};

/// The tables of SR28 that are committed, by path below `sr28`.
fn committed_tables() -> BTreeMap<PathBuf, String> {
    let root = tables::committed_folder().join("sr28");
    let mut found = BTreeMap::new();
    for folder in [root.clone(), root.join("values")] {
        for entry in fs::read_dir(&folder).unwrap() {
            let path = entry.unwrap().path();
            if path.is_file() {
                let text = fs::read_to_string(&path).unwrap();
                found.insert(path.strip_prefix(&root).unwrap().to_owned(), text);
            }
        }
    }
    found
}

fn decoded() -> (FoodsAsset, ProvenanceAsset) {
    let (foods, provenance) = asset::committed();
    (
        decode_foods(foods).unwrap(),
        decode_provenance(provenance).unwrap(),
    )
}

#[test]
fn tables_written_from_the_assets_are_the_committed_tables() {
    let (foods, provenance) = decoded();
    let mut written = BTreeMap::from([
        ("foods.csv".into(), foods_table(&foods, &provenance)),
        ("groups.csv".into(), groups_table(&foods)),
        ("nutrients.csv".into(), nutrients_table(&foods)),
        ("measures.csv".into(), measures_table(&foods, &provenance)),
        ("source_codes.csv".into(), codes_table(&provenance.sources)),
        (
            "derivation_codes.csv".into(),
            codes_table(&provenance.derivations),
        ),
        ("footnotes.csv".into(), footnotes_table(&foods, &provenance)),
    ]);
    for (place, nutrient) in measured(&foods) {
        let name = format!("{}-{}.csv", nutrient.number, nutrient.tagname);
        let table = values_table(place, &foods, &provenance);
        written.insert(Path::new("values").join(name), table);
    }
    let committed = committed_tables();
    assert!(written.keys().eq(committed.keys()), "other tables");
    for (path, text) in &written {
        let pairs = text.lines().zip(committed[path].lines());
        for (line, (written, committed)) in pairs.enumerate() {
            assert_eq!(written, committed, "{} line {}", path.display(), line + 1);
        }
        assert_eq!(text, &committed[path], "{}", path.display());
    }
}

#[test]
fn encoding_the_decoded_assets_gives_the_same_bytes() {
    let (foods, provenance) = decoded();
    let (foods_file, provenance_file) = asset::committed();
    assert!(encode_foods(&foods) == *foods_file);
    assert!(encode_provenance(&provenance) == *provenance_file);
}

#[test]
fn added_nutrients_have_a_column_of_missing_values() {
    let (foods, provenance) = decoded();
    let place = foods
        .nutrients
        .iter()
        .position(|n| n.tagname == "SUGAD")
        .unwrap();
    assert!(
        foods.values[place]
            .mantissas
            .iter()
            .all(|&value| value == MISSING)
    );
    assert!(
        provenance.columns[place]
            .sources
            .iter()
            .all(|&source| source == 0)
    );
    assert!(foods.nutrients.is_sorted_by(|a, b| a.number < b.number));
}

/// The nutrients that SR28 has, with their place among all.
fn measured(foods: &FoodsAsset) -> impl Iterator<Item = (usize, &NutrientRow)> {
    let nutrients = foods.nutrients.iter().enumerate();
    nutrients.filter(|(_, nutrient)| nutrient.tagname != "SUGAD")
}

fn csv_text<const N: usize>(heading: [&str; N], rows: impl Iterator<Item = [String; N]>) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    writer.write_record(heading).unwrap();
    rows.for_each(|row| writer.write_record(row).unwrap());
    String::from_utf8(writer.into_inner().unwrap()).unwrap()
}

fn or_empty(value: Option<impl ToString>) -> String {
    value.map_or_else(String::new, |value| value.to_string())
}

/// SR28 leaves out the zero before the point in amounts and in standard deviations.
fn without_leading_zero(value: Scaled) -> String {
    let text = value.to_string();
    text.strip_prefix("0.")
        .map_or(text.clone(), |rest| format!(".{rest}"))
}

fn foods_table(foods: &FoodsAsset, provenance: &ProvenanceAsset) -> String {
    let heading = [
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
    ];
    let rows = foods.foods.iter().zip(&provenance.scientific_names);
    csv_text(
        heading,
        rows.map(|(food, scientific_name)| {
            [
                format!("{:05}", food.number),
                format!("{:04}", food.group),
                food.description.clone(),
                food.common_names.clone(),
                food.manufacturer.clone(),
                scientific_name.clone(),
                or_empty(food.refuse_percent),
                food.refuse_description.clone(),
                or_empty(food.nitrogen_factor),
                or_empty(food.protein_factor),
                or_empty(food.fat_factor),
                or_empty(food.carbohydrate_factor),
            ]
        }),
    )
}

fn groups_table(foods: &FoodsAsset) -> String {
    let groups = foods.groups.iter();
    csv_text(
        ["code", "name"],
        groups.map(|group| [format!("{:04}", group.code), group.name.clone()]),
    )
}

fn nutrients_table(foods: &FoodsAsset) -> String {
    csv_text(
        ["number", "tagname", "name", "unit", "decimals", "order"],
        measured(foods).map(|(_, nutrient)| {
            [
                nutrient.number.to_string(),
                nutrient.tagname.clone(),
                nutrient.name.clone(),
                nutrient.unit.clone(),
                nutrient.decimals.to_string(),
                nutrient.order.to_string(),
            ]
        }),
    )
}

fn measures_table(foods: &FoodsAsset, provenance: &ProvenanceAsset) -> String {
    let heading = [
        "food",
        "seq",
        "amount",
        "measure",
        "grams",
        "data_points",
        "standard_deviation",
    ];
    let rows = foods.measures.iter().zip(&provenance.measures);
    csv_text(
        heading,
        rows.map(|(measure, evidence)| {
            [
                food_number(foods, measure.food),
                measure.seq.to_string(),
                without_leading_zero(measure.amount),
                measure.words.clone(),
                measure.grams.to_string(),
                or_empty(evidence.data_points),
                or_empty(evidence.standard_deviation.map(without_leading_zero)),
            ]
        }),
    )
}

fn codes_table(codes: &[CodeRow]) -> String {
    let rows = codes.iter();
    csv_text(
        ["code", "description"],
        rows.map(|row| [row.code.clone(), row.description.clone()]),
    )
}

fn footnotes_table(foods: &FoodsAsset, provenance: &ProvenanceAsset) -> String {
    csv_text(
        ["food", "seq", "subject", "nutrient", "text"],
        provenance.footnotes.iter().map(|note| {
            [
                food_number(foods, note.food),
                format!("{:02}", note.seq),
                note.subject.to_string(),
                or_empty(note.nutrient),
                note.text.clone(),
            ]
        }),
    )
}

fn values_table(place: usize, foods: &FoodsAsset, provenance: &ProvenanceAsset) -> String {
    let heading = [
        "food",
        "value",
        "data_points",
        "standard_error",
        "source",
        "derivation",
    ];
    let (values, origin) = (&foods.values[place], &provenance.columns[place]);
    assert_eq!(values.nutrient, origin.nutrient);
    let code = |codes: &[CodeRow], place: u8| match place {
        0 => String::new(),
        place => codes[usize::from(place) - 1].code.clone(),
    };
    let decimal = |mantissa: i32, scale: u8| {
        or_empty((mantissa != MISSING).then_some(Scaled { mantissa, scale }))
    };
    let there = (0..foods.foods.len()).filter(|&i| values.mantissas[i] != MISSING);
    csv_text(
        heading,
        there.map(|i| {
            assert_ne!(origin.data_points[i], NO_VALUE);
            [
                food_number(foods, i as u32),
                decimal(values.mantissas[i], values.scale),
                origin.data_points[i].to_string(),
                decimal(origin.standard_errors[i], origin.se_scale),
                code(&provenance.sources, origin.sources[i]),
                code(&provenance.derivations, origin.derivations[i]),
            ]
        }),
    )
}

fn food_number(foods: &FoodsAsset, place: u32) -> String {
    format!("{:05}", foods.foods[place as usize].number)
}
