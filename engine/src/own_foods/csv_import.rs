//! Own foods from a CSV: one food a line, one column per nutrient.
//!
//! The header names the columns: `description`, `grams` (the weight that the
//! values are for), optionally `ingredients`, `measure` and `measure grams`,
//! and any nutrients by their INFOODS tagname or their SR28 number. An empty
//! cell is a missing value, not zero.

use super::{ImportError, OwnFood, OwnMeasure, OwnSource, Stated};
use crate::foods::{Nutrient, NutrientId};
use crate::units::Grams;
use csv::StringRecord;
use rust_decimal::Decimal;

/// What a column holds.
enum Column {
    Description,
    Grams,
    Ingredients,
    Measure,
    MeasureGrams,
    Nutrient(NutrientId),
}

/// Reads foods, numbering them from `first_number`. `reference` says where the
/// file comes from.
///
/// # Errors
/// At the first cell that cannot be read, naming line and column.
pub fn from_csv(
    text: &str,
    nutrients: &[Nutrient],
    first_number: u32,
    reference: &str,
) -> Result<Vec<OwnFood>, ImportError> {
    let mut reader = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(text.trim_start_matches('\u{feff}').as_bytes());
    let headers = reader.headers().cloned().map_err(|e| damaged(&e))?;
    let columns = columns(&headers, nutrients)?;
    let mut foods = Vec::new();
    for (record, number) in reader.records().zip(first_number..) {
        let record = record.map_err(|e| damaged(&e))?;
        foods.push(food(&record, &headers, &columns, number, reference)?);
    }
    Ok(foods)
}

fn damaged(cause: &csv::Error) -> ImportError {
    let line = cause.position().map_or(1, csv::Position::line);
    ImportError::new(
        format!("line {line}"),
        cause.to_string(),
        "give every line as many cells as the header has",
    )
}

fn columns(headers: &StringRecord, nutrients: &[Nutrient]) -> Result<Vec<Column>, ImportError> {
    let columns = headers
        .iter()
        .map(|header| column(header, nutrients))
        .collect::<Result<Vec<_>, _>>()?;
    for (name, there) in [
        (
            "description",
            columns.iter().any(|c| matches!(c, Column::Description)),
        ),
        ("grams", columns.iter().any(|c| matches!(c, Column::Grams))),
    ] {
        if !there {
            return Err(ImportError::new(
                "the header",
                format!("there is no column \"{name}\""),
                "name the columns description, grams, and the nutrients by tagname, as in ENERC_KCAL or NA",
            ));
        }
    }
    Ok(columns)
}

fn column(header: &str, nutrients: &[Nutrient]) -> Result<Column, ImportError> {
    Ok(match header.to_lowercase().as_str() {
        "description" => Column::Description,
        "grams" => Column::Grams,
        "ingredients" => Column::Ingredients,
        "measure" => Column::Measure,
        "measure grams" => Column::MeasureGrams,
        _ => Column::Nutrient(nutrient(header, nutrients)?),
    })
}

/// Vitamin D has one tagname for two units; the first in the dataset's order
/// of numbers would be IU, so a tagname alone is refused for it.
fn nutrient(header: &str, nutrients: &[Nutrient]) -> Result<NutrientId, ImportError> {
    let named: Vec<&Nutrient> = nutrients
        .iter()
        .filter(|nutrient| {
            nutrient.tagname.eq_ignore_ascii_case(header) || nutrient.id.0.to_string() == header
        })
        .collect();
    match named[..] {
        [one] => Ok(one.id),
        [] => Err(ImportError::new(
            format!("the header, column \"{header}\""),
            "no nutrient has this tagname or number",
            "use an INFOODS tagname such as NA or FASAT, or the SR28 number, or leave the column out",
        )),
        _ => Err(ImportError::new(
            format!("the header, column \"{header}\""),
            "the tagname stands for more than one unit",
            "use the SR28 number: 328 for vitamin D in µg, 324 in IU",
        )),
    }
}

fn food(
    record: &StringRecord,
    headers: &StringRecord,
    columns: &[Column],
    number: u32,
    reference: &str,
) -> Result<OwnFood, ImportError> {
    let line = record.position().map_or(0, csv::Position::line);
    let mut food = Cells::default();
    for ((cell, header), column) in record.iter().zip(headers).zip(columns) {
        let figure = || amount(cell, line, header);
        match column {
            Column::Description => cell.clone_into(&mut food.description),
            Column::Ingredients => cell.clone_into(&mut food.ingredients),
            Column::Measure => cell.clone_into(&mut food.measure),
            Column::Grams => food.per = figure()?,
            Column::MeasureGrams => food.measure_grams = figure()?,
            Column::Nutrient(nutrient) => {
                if let Some(amount) = figure()? {
                    food.values.push(Stated {
                        nutrient: *nutrient,
                        amount,
                    });
                }
            }
        }
    }
    food.build(line, number, reference)
}

fn amount(cell: &str, line: u64, header: &str) -> Result<Option<Decimal>, ImportError> {
    if cell.is_empty() {
        return Ok(None);
    }
    let place = || format!("line {line}, column \"{header}\"");
    let amount = Decimal::from_str_exact(cell).map_err(|_| {
        ImportError::new(
            place(),
            format!("\"{cell}\" is not a number"),
            "write digits with a decimal point, or leave the cell empty for a missing value",
        )
    })?;
    if amount < Decimal::ZERO {
        return Err(ImportError::new(
            place(),
            format!("{amount} is below zero"),
            "enter zero or more",
        ));
    }
    Ok(Some(amount))
}

/// The cells of one line.
#[derive(Default)]
struct Cells {
    description: String,
    ingredients: String,
    measure: String,
    per: Option<Decimal>,
    measure_grams: Option<Decimal>,
    values: Vec<Stated>,
}

impl Cells {
    fn build(self, line: u64, number: u32, reference: &str) -> Result<OwnFood, ImportError> {
        if self.description.is_empty() {
            return Err(ImportError::new(
                format!("line {line}, column \"description\""),
                "the food has no name",
                "describe it",
            ));
        }
        let per = self.per.filter(|per| *per > Decimal::ZERO).ok_or_else(|| {
            ImportError::new(
                format!("line {line}, column \"grams\""),
                "the weight that the values are for is missing or zero",
                "enter 100 for values per 100 g, or the weight of the serving",
            )
        })?;
        let measures = self
            .measure_grams
            .filter(|_| !self.measure.is_empty())
            .map(|grams| OwnMeasure {
                amount: Decimal::ONE,
                words: self.measure,
                grams: Grams::new(grams),
            });
        Ok(OwnFood {
            number,
            description: self.description,
            ingredients: self.ingredients,
            measures: measures.into_iter().collect(),
            source: OwnSource::Values {
                per: Grams::new(per),
                values: self.values,
                reference: reference.to_owned(),
            },
        })
    }
}
