//! Foods from FoodData Central's CSV download: three of its tables.

use super::fdc_json::same_unit;
use super::{ImportError, OwnFood, OwnSource, Stated};
use crate::foods::Nutrient;
use crate::tables::{self, TableError};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::Deserialize;
use std::collections::BTreeMap;

/// The texts of the tables that foods are read from.
#[derive(Debug, Clone, Copy)]
pub struct FdcTables<'a> {
    /// `food.csv`
    pub food: &'a str,
    /// `food_nutrient.csv`
    pub food_nutrient: &'a str,
    /// `nutrient.csv`
    pub nutrient: &'a str,
}

#[derive(Deserialize)]
struct FoodRow {
    fdc_id: u64,
    description: String,
}

#[derive(Deserialize)]
struct ValueRow {
    fdc_id: u64,
    nutrient_id: u32,
    amount: Option<Decimal>,
}

#[derive(Deserialize)]
struct NutrientRow {
    id: u32,
    unit_name: String,
    nutrient_nbr: String,
}

/// Reads foods, numbering them from `first_number`, in the order of food.csv.
///
/// # Errors
/// When a table lacks a column or a row cannot be read.
pub fn from_fdc_csv(
    texts: FdcTables<'_>,
    nutrients: &[Nutrient],
    first_number: u32,
) -> Result<Vec<OwnFood>, ImportError> {
    let mut ours = BTreeMap::new();
    for row in read::<NutrientRow>("nutrient.csv", texts.nutrient)? {
        // Some numbers carry a decimal ("205.2") that no kept nutrient has.
        let number = row.nutrient_nbr.parse().ok();
        let known = nutrients.iter().find(|known| Some(known.id.0) == number);
        if let Some(known) = known.filter(|known| same_unit(&known.unit, &row.unit_name)) {
            ours.insert(row.id, known.id);
        }
    }
    let mut values: BTreeMap<u64, Vec<Stated>> = BTreeMap::new();
    for row in read::<ValueRow>("food_nutrient.csv", texts.food_nutrient)? {
        if let (Some(nutrient), Some(amount)) = (ours.get(&row.nutrient_id), row.amount) {
            values.entry(row.fdc_id).or_default().push(Stated {
                nutrient: *nutrient,
                amount,
            });
        }
    }
    let foods = read::<FoodRow>("food.csv", texts.food)?;
    Ok(foods
        .into_iter()
        .zip(first_number..)
        .map(|(row, number)| OwnFood {
            number,
            description: row.description,
            ingredients: String::new(),
            measures: Vec::new(),
            source: OwnSource::Values {
                per: Grams::new(Decimal::ONE_HUNDRED),
                values: values.remove(&row.fdc_id).unwrap_or_default(),
                reference: format!("FoodData Central {}", row.fdc_id),
            },
        })
        .collect())
}

fn read<T: serde::de::DeserializeOwned>(table: &str, text: &str) -> Result<Vec<T>, ImportError> {
    let rows = tables::read(table, text).map_err(|error: TableError| {
        ImportError::new(
            format!("{table}, line {}", error.line),
            error.problem,
            "take the file as FoodData Central offers it for download",
        )
    })?;
    Ok(rows.into_iter().map(|row| row.row).collect())
}
