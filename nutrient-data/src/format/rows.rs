//! The decoded assets: plain rows and columns.

use super::Scaled;

/// Stands in a column of mantissas where the dataset has no value. Missing is not zero.
pub const MISSING: i32 = i32::MIN;

/// Stands in [`ProvenanceColumn::data_points`] where the dataset has no value.
pub const NO_VALUE: u16 = u16::MAX;

/// One food.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FoodRow {
    /// The dataset's number of the food (NDB number), written with five digits.
    pub number: u32,
    /// Code of its food group, see [`GroupRow`].
    pub group: u16,
    /// Full description.
    pub description: String,
    /// Other names of the food; empty where there are none.
    pub common_names: String,
    /// Company that made it; empty where there is none.
    pub manufacturer: String,
    /// Inedible part (peel, bone …) in percent of the weight as purchased.
    pub refuse_percent: Option<u8>,
    /// What the inedible part is; empty where there is none.
    pub refuse_description: String,
    /// Grams of protein in a gram of nitrogen.
    pub nitrogen_factor: Option<Scaled>,
    /// Kilocalories in a gram of protein.
    pub protein_factor: Option<Scaled>,
    /// Kilocalories in a gram of fat.
    pub fat_factor: Option<Scaled>,
    /// Kilocalories in a gram of carbohydrate.
    pub carbohydrate_factor: Option<Scaled>,
}

/// One food group.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct GroupRow {
    /// The dataset's code, written with four digits.
    pub code: u16,
    /// Its name.
    pub name: String,
}

/// One nutrient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NutrientRow {
    /// The dataset's number of the nutrient.
    pub number: u16,
    /// INFOODS tagname. Not unique: both units of vitamin D carry `VITD`.
    pub tagname: String,
    /// Name with the dataset's wording.
    pub name: String,
    /// Unit of the values, which are all for 100 g of the edible part: `kcal`, `g`, `mg`, `µg`, `IU`.
    pub unit: String,
    /// Decimals to which the dataset gives the values.
    pub decimals: u8,
    /// Place in the dataset's own order of presentation.
    pub order: u16,
}

/// One household measure of one food.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MeasureRow {
    /// Index of the food in [`FoodsAsset::foods`].
    pub food: u32,
    /// The dataset's running number among the measures of this food.
    pub seq: u8,
    /// How many of the measure: 1, 0.5, 3 …
    pub amount: Scaled,
    /// The measure in words: `cup, chopped`.
    pub words: String,
    /// Grams that the amount weighs.
    pub grams: Scaled,
}

/// The values of one nutrient, for 100 g of the edible part of each food.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ValueColumn {
    /// Number of the nutrient.
    pub nutrient: u16,
    /// Digits after the decimal point in every mantissa.
    pub scale: u8,
    /// One for each food, in the order of the foods; [`MISSING`] where there is no value.
    pub mantissas: Vec<i32>,
}

/// What the first analysis needs.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FoodsAsset {
    /// Sorted by number.
    pub foods: Vec<FoodRow>,
    /// Sorted by code.
    pub groups: Vec<GroupRow>,
    /// Sorted by number.
    pub nutrients: Vec<NutrientRow>,
    /// Sorted by food, then by running number.
    pub measures: Vec<MeasureRow>,
    /// One column for each of the nutrients, in the same order.
    pub values: Vec<ValueColumn>,
}

/// Where the values of one nutrient come from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProvenanceColumn {
    /// Number of the nutrient.
    pub nutrient: u16,
    /// Digits after the decimal point in every standard error.
    pub se_scale: u8,
    /// Number of analyses behind each value: 0 where it was calculated or imputed, [`NO_VALUE`]
    /// where there is no value.
    pub data_points: Vec<u16>,
    /// Standard error of the mean in the nutrient's unit; [`MISSING`] where it is not given.
    pub standard_errors: Vec<i32>,
    /// Place in [`ProvenanceAsset::sources`] counted from 1; 0 where there is no value.
    pub sources: Vec<u8>,
    /// Place in [`ProvenanceAsset::derivations`] counted from 1; 0 where none is given.
    pub derivations: Vec<u8>,
}

/// What one code stands for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CodeRow {
    /// The dataset's code.
    pub code: String,
    /// Its meaning.
    pub description: String,
}

/// One footnote to a food.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FootnoteRow {
    /// Index of the food in [`ProvenanceAsset::food_numbers`].
    pub food: u32,
    /// Number of the footnote among those of this food; one note may stand for several nutrients.
    pub seq: u8,
    /// What it belongs to: `D` the description, `M` the measures, `N` a nutrient.
    pub subject: char,
    /// The nutrient, for subject `N`; it need not be one of the nutrients kept.
    pub nutrient: Option<u16>,
    /// The note.
    pub text: String,
}

/// How well one household measure is known.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct MeasureEvidence {
    /// Number of weighings, where given.
    pub data_points: Option<u16>,
    /// Standard deviation of the weight in grams, where given.
    pub standard_deviation: Option<Scaled>,
}

/// Where the figures come from; may arrive later than the [`FoodsAsset`].
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ProvenanceAsset {
    /// The foods that every column follows; the same as in the [`FoodsAsset`] of the same release.
    pub food_numbers: Vec<u32>,
    /// Scientific name of each food; empty where none is given.
    pub scientific_names: Vec<String>,
    /// One for each of [`FoodsAsset::measures`], in the same order.
    pub measures: Vec<MeasureEvidence>,
    /// One column for each of the nutrients, in the same order as in the [`FoodsAsset`].
    pub columns: Vec<ProvenanceColumn>,
    /// Source codes: what kind of data a value is.
    pub sources: Vec<CodeRow>,
    /// Derivation codes: how a value was arrived at.
    pub derivations: Vec<CodeRow>,
    /// Sorted by food.
    pub footnotes: Vec<FootnoteRow>,
}
