//! Where the dataset's values come from, and how sure it says they are.

use super::{FoodId, NutrientId};
use nutrient_data::format::{
    AssetError, MISSING, NO_VALUE, ProvenanceAsset, ProvenanceColumn, decode_provenance,
};
use rust_decimal::Decimal;
use serde::Serialize;

/// What stands behind one value of the dataset.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ValueSource {
    /// Number of analyses; zero where the value was calculated or imputed.
    pub data_points: u16,
    /// Standard error of the mean, in the nutrient's unit.
    pub standard_error: Option<Decimal>,
    /// Kind of source, in the dataset's words.
    pub source: Option<String>,
    /// How the value was derived, in the dataset's words.
    pub derivation: Option<String>,
}

/// The dataset's provenance, loaded after the values themselves.
#[derive(Debug, Clone)]
pub struct Provenance(ProvenanceAsset);

impl Provenance {
    /// Reads the provenance asset.
    ///
    /// # Errors
    /// When the bytes are damaged, foreign or of another version.
    pub fn from_asset(bytes: &[u8]) -> Result<Self, AssetError> {
        decode_provenance(bytes).map(Self)
    }

    /// The standard error of a value; nothing where the dataset gives none.
    pub fn standard_error(&self, food: FoodId, nutrient: NutrientId) -> Option<Decimal> {
        let (column, row) = self.place(food, nutrient)?;
        standard_error_at(column, row)
    }

    /// All standard errors of a nutrient that the dataset gives, in the order
    /// of foods and with the same decimal places.
    pub fn standard_errors(
        &self,
        nutrient: NutrientId,
    ) -> impl Iterator<Item = (FoodId, Decimal)> + '_ {
        let column = self.column(nutrient).into_iter();
        column.flat_map(|column| {
            let foods = self.0.food_numbers.iter().enumerate();
            foods.filter_map(|(row, number)| {
                Some((FoodId::Sr28(*number), standard_error_at(column, row)?))
            })
        })
    }

    /// All that is known of a value; nothing where the dataset has no value.
    pub fn value_source(&self, food: FoodId, nutrient: NutrientId) -> Option<ValueSource> {
        let (column, row) = self.place(food, nutrient)?;
        if column.data_points[row] == NO_VALUE {
            return None;
        }
        // Codes are numbered from 1; zero stands for "not given".
        let words = |codes: &[nutrient_data::format::CodeRow], code: u8| {
            let index = usize::from(code).checked_sub(1)?;
            codes.get(index).map(|row| row.description.clone())
        };
        Some(ValueSource {
            data_points: column.data_points[row],
            standard_error: standard_error_at(column, row),
            source: words(&self.0.sources, column.sources[row]),
            derivation: words(&self.0.derivations, column.derivations[row]),
        })
    }

    /// The dataset's footnotes on a food, in its order.
    pub fn footnotes(&self, food: FoodId) -> Vec<&str> {
        self.notes(food, |_| true)
    }

    /// Those of them that concern a nutrient: notes on the food as a whole and
    /// on this very value.
    pub fn footnotes_on(&self, food: FoodId, nutrient: NutrientId) -> Vec<&str> {
        self.notes(food, |of| of.is_none_or(|of| of == nutrient.0))
    }

    fn notes(&self, food: FoodId, wanted: impl Fn(Option<u16>) -> bool) -> Vec<&str> {
        let Some(row) = self.row(food) else {
            return Vec::new();
        };
        self.0
            .footnotes
            .iter()
            .filter(|note| note.food as usize == row && wanted(note.nutrient))
            .map(|note| note.text.as_str())
            .collect()
    }

    fn row(&self, food: FoodId) -> Option<usize> {
        match food {
            FoodId::Sr28(number) => self.0.food_numbers.binary_search(&number).ok(),
            FoodId::Own(_) => None,
        }
    }

    fn place(&self, food: FoodId, nutrient: NutrientId) -> Option<(&ProvenanceColumn, usize)> {
        let row = self.row(food)?;
        Some((self.column(nutrient)?, row))
    }

    fn column(&self, nutrient: NutrientId) -> Option<&ProvenanceColumn> {
        let mut columns = self.0.columns.iter();
        columns.find(|column| column.nutrient == nutrient.0)
    }
}

fn standard_error_at(column: &ProvenanceColumn, row: usize) -> Option<Decimal> {
    match column.standard_errors[row] {
        MISSING => None,
        mantissa => Some(Decimal::new(mantissa.into(), column.se_scale.into())),
    }
}
