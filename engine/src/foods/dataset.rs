//! The dataset's foods with their values, by column.

use super::{Food, FoodId, Measure, Nutrient, NutrientId};
use nutrient_data::format::{AssetError, FoodsAsset, MISSING, Scaled, decode_foods};
use rust_decimal::Decimal;
use std::ops::Range;

use super::FoodGroup;
use crate::exact::Digits;
use crate::units::Grams;

/// The values of one nutrient for all foods, as scaled integers that keep the
/// dataset's digits.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct ValueColumn {
    nutrient: NutrientId,
    scale: u32,
    mantissas: Vec<i32>,
}

impl ValueColumn {
    /// The value for the food at `row`, or nothing where the dataset has none.
    fn value(&self, row: usize) -> Option<Decimal> {
        match self.mantissas[row] {
            MISSING => None,
            mantissa => Some(Decimal::new(mantissa.into(), self.scale)),
        }
    }
}

/// The dataset: foods, their measures and their nutrient values per 100 g
/// edible portion.
#[derive(Debug)]
pub(super) struct Dataset {
    pub(super) foods: Vec<Food>,
    pub(super) groups: Vec<(FoodGroup, String)>,
    pub(super) nutrients: Vec<Nutrient>,
    measures: Vec<Measure>,
    /// For each food, where its measures are.
    measures_of: Vec<Range<usize>>,
    columns: Vec<ValueColumn>,
}

fn decimal(scaled: Scaled) -> Decimal {
    Decimal::new(scaled.mantissa.into(), scaled.scale.into())
}

impl Dataset {
    /// Reads the dataset's asset.
    pub(super) fn from_asset(bytes: &[u8]) -> Result<Self, AssetError> {
        Ok(Self::from_decoded(decode_foods(bytes)?))
    }

    fn from_decoded(asset: FoodsAsset) -> Self {
        let measures_of = measure_ranges(&asset);
        let mut columns: Vec<ValueColumn> = asset
            .values
            .into_iter()
            .map(|column| ValueColumn {
                nutrient: NutrientId(column.nutrient),
                scale: column.scale.into(),
                mantissas: column.mantissas,
            })
            .collect();
        columns.sort_by_key(|column| column.nutrient);
        Self {
            foods: asset
                .foods
                .into_iter()
                .map(|row| Food {
                    id: FoodId::Sr28(row.number),
                    group: FoodGroup(row.group),
                    description: row.description,
                    common_names: row.common_names,
                    manufacturer: row.manufacturer,
                    refuse_percent: row.refuse_percent,
                    refuse_description: row.refuse_description,
                })
                .collect(),
            groups: asset
                .groups
                .into_iter()
                .map(|row| (FoodGroup(row.code), row.name))
                .collect(),
            nutrients: asset
                .nutrients
                .into_iter()
                .map(|row| Nutrient {
                    id: NutrientId(row.number),
                    tagname: row.tagname,
                    name: row.name,
                    unit: row.unit,
                    decimals: Digits(row.decimals.into()),
                })
                .collect(),
            measures: asset
                .measures
                .into_iter()
                .map(|row| Measure {
                    number: row.seq.into(),
                    amount: decimal(row.amount),
                    words: row.words,
                    grams: Grams::new(decimal(row.grams)),
                })
                .collect(),
            measures_of,
            columns,
        }
    }

    /// Where a food stands, if it is in the dataset.
    pub(super) fn row(&self, id: FoodId) -> Option<usize> {
        self.foods.binary_search_by_key(&id, |food| food.id).ok()
    }

    /// Household measures of the food at a row.
    pub(super) fn measures(&self, row: usize) -> &[Measure] {
        &self.measures[self.measures_of[row].clone()]
    }

    /// Value of the food at a row per 100 g edible portion, with the dataset's
    /// own digits; nothing where it has none.
    pub(super) fn per_100_g(&self, row: usize, nutrient: NutrientId) -> Option<Decimal> {
        self.column(nutrient)?.value(row)
    }

    /// The same as a binary float.
    pub(super) fn about_per_100_g(&self, row: usize, nutrient: NutrientId) -> Option<f64> {
        let column = self.column(nutrient)?;
        match column.mantissas[row] {
            MISSING => None,
            mantissa => Some(f64::from(mantissa) / 10_f64.powi(column.scale.cast_signed())),
        }
    }

    /// Decimal places of a nutrient's values; none for one without values.
    pub(super) fn places(&self, nutrient: NutrientId) -> u32 {
        self.column(nutrient).map_or(0, |column| column.scale)
    }

    fn column(&self, nutrient: NutrientId) -> Option<&ValueColumn> {
        let found = self
            .columns
            .binary_search_by_key(&nutrient, |column| column.nutrient);
        found.ok().map(|at| &self.columns[at])
    }
}

/// Where each food's measures lie in the asset's list, which is sorted by food.
fn measure_ranges(asset: &FoodsAsset) -> Vec<Range<usize>> {
    let mut start = 0;
    (0..asset.foods.len())
        .map(|food| {
            let end = start
                + asset.measures[start..]
                    .iter()
                    .take_while(|measure| measure.food as usize == food)
                    .count();
            let range = start..end;
            start = end;
            range
        })
        .collect()
}
