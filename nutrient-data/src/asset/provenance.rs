//! Collects the provenance asset from its tables.

use std::path::Path;

use super::{FoodPlaces, Rising, food_place, foods};
use crate::format::{
    CodeRow, FoodsAsset, FootnoteRow, MISSING, MeasureEvidence, NO_VALUE, NutrientRow,
    ProvenanceAsset, ProvenanceColumn,
};
use crate::tables::{self, Row, Table, TableError};

/// Decimals of every standard error in SR28.
const SE_SCALE: u8 = 3;

/// The foods come from the foods asset, so that both assets have the same order.
pub(super) fn collect(folder: &Path, asset: &FoodsAsset) -> Result<ProvenanceAsset, TableError> {
    let places = foods::places(&asset.foods);
    let sources = read_codes(folder, &tables::SOURCE_CODES)?;
    let derivations = read_codes(folder, &tables::DERIVATION_CODES)?;
    let columns = asset.nutrients.iter().zip(&asset.values);
    let columns = columns
        .map(|(nutrient, values)| {
            let unknown = values.mantissas.iter().all(|&value| value == MISSING);
            let mut column = empty_column(nutrient.number, places.len());
            if !unknown {
                fill_column(
                    &mut column,
                    folder,
                    nutrient,
                    &places,
                    &sources,
                    &derivations,
                )?;
            }
            Ok(column)
        })
        .collect::<Result<_, TableError>>()?;
    Ok(ProvenanceAsset {
        food_numbers: asset.foods.iter().map(|food| food.number).collect(),
        scientific_names: read_scientific_names(folder)?,
        measures: read_evidence(folder)?,
        columns,
        sources,
        derivations,
        footnotes: read_footnotes(folder, &places)?,
    })
}

fn read_codes(folder: &Path, table: &'static Table) -> Result<Vec<CodeRow>, TableError> {
    tables::read(folder, table.path, table.columns, |row| {
        Ok(CodeRow {
            code: row.text("code").to_owned(),
            description: row.text("description").to_owned(),
        })
    })
}

fn read_scientific_names(folder: &Path) -> Result<Vec<String>, TableError> {
    let table = tables::FOODS;
    tables::read(folder, table.path, table.columns, |row| {
        Ok(row.text("scientific_name").to_owned())
    })
}

fn read_evidence(folder: &Path) -> Result<Vec<MeasureEvidence>, TableError> {
    let table = tables::MEASURES;
    tables::read(folder, table.path, table.columns, |row| {
        Ok(MeasureEvidence {
            data_points: row.whole_or_none("data_points")?,
            standard_deviation: row.decimal_or_none("standard_deviation")?,
        })
    })
}

fn empty_column(nutrient: u16, foods: usize) -> ProvenanceColumn {
    ProvenanceColumn {
        nutrient,
        se_scale: SE_SCALE,
        data_points: vec![NO_VALUE; foods],
        standard_errors: vec![MISSING; foods],
        sources: vec![0; foods],
        derivations: vec![0; foods],
    }
}

fn fill_column(
    column: &mut ProvenanceColumn,
    folder: &Path,
    nutrient: &NutrientRow,
    places: &FoodPlaces,
    sources: &[CodeRow],
    derivations: &[CodeRow],
) -> Result<(), TableError> {
    let path = tables::values_path(&nutrient.number.to_string(), &nutrient.tagname);
    tables::read(folder, &path, tables::VALUE_COLUMNS, |row| {
        let place = food_place(places, row)? as usize;
        column.data_points[place] = data_points(row)?;
        column.standard_errors[place] = standard_error(row)?;
        column.sources[place] = code_place(row, "source", sources)?;
        if !row.text("derivation").is_empty() {
            column.derivations[place] = code_place(row, "derivation", derivations)?;
        }
        Ok(())
    })?;
    Ok(())
}

fn data_points(row: &Row<'_>) -> Result<u16, TableError> {
    let points = row.whole("data_points")?;
    if points == NO_VALUE {
        return Err(row.wrong("data_points", "a number below 65,535"));
    }
    Ok(points)
}

fn standard_error(row: &Row<'_>) -> Result<i32, TableError> {
    match row.decimal_or_none("standard_error")? {
        None => Ok(MISSING),
        Some(error) if error.scale == SE_SCALE => Ok(error.mantissa),
        Some(_) => Err(row.wrong("standard_error", "a number with three decimals")),
    }
}

/// Place of the code in its table, counted from 1.
fn code_place(row: &Row<'_>, column: &'static str, codes: &[CodeRow]) -> Result<u8, TableError> {
    let place = codes
        .iter()
        .position(|known| known.code == row.text(column));
    place
        .and_then(|place| u8::try_from(place + 1).ok())
        .ok_or_else(|| row.wrong(column, "a code of the table of codes"))
}

fn read_footnotes(folder: &Path, places: &FoodPlaces) -> Result<Vec<FootnoteRow>, TableError> {
    let mut rising = Rising(None);
    let table = tables::FOOTNOTES;
    tables::read(folder, table.path, table.columns, |row| {
        let note = FootnoteRow {
            food: food_place(places, row)?,
            seq: row.whole("seq")?,
            subject: subject(row)?,
            nutrient: row.whole_or_none("nutrient")?,
            text: row.text("text").to_owned(),
        };
        rising.check((note.food, note.seq, note.nutrient), row, "seq")?;
        Ok(note)
    })
}

fn subject(row: &Row<'_>) -> Result<char, TableError> {
    match row.text("subject") {
        "D" => Ok('D'),
        "M" => Ok('M'),
        "N" => Ok('N'),
        _ => Err(row.wrong("subject", "D, M or N")),
    }
}
