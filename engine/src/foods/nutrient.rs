//! Nutrients, named by the dataset's own numbers.

use crate::exact::Digits;
use serde::{Deserialize, Serialize};

/// A nutrient by its SR28 number (`Nutr_No`).
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct NutrientId(pub u16);

/// The nutrients that a computation refers to by name. All others are reached
/// through the table.
impl NutrientId {
    /// Protein, g.
    pub const PROTEIN: Self = Self(203);
    /// Total fat, g.
    pub const FAT: Self = Self(204);
    /// Carbohydrate by difference, g.
    pub const CARBOHYDRATE: Self = Self(205);
    /// Energy, kcal.
    pub const ENERGY: Self = Self(208);
    /// Ethyl alcohol, g.
    pub const ALCOHOL: Self = Self(221);
    /// Water, g.
    pub const WATER: Self = Self(255);
    /// Total sugars, g.
    pub const SUGARS: Self = Self(269);
    /// Dietary fibre, g.
    pub const FIBRE: Self = Self(291);
    /// Calcium, mg.
    pub const CALCIUM: Self = Self(301);
    /// Iron, mg.
    pub const IRON: Self = Self(303);
    /// Potassium, mg.
    pub const POTASSIUM: Self = Self(306);
    /// Sodium, mg.
    pub const SODIUM: Self = Self(307);
    /// Vitamin D (D2 + D3), µg.
    pub const VITAMIN_D: Self = Self(328);
    /// Added sugars, g. SR28 has no such value: missing until a source gives it.
    pub const ADDED_SUGARS: Self = Self(539);
    /// Cholesterol, mg.
    pub const CHOLESTEROL: Self = Self(601);
    /// Trans fatty acids, g.
    pub const TRANS_FAT: Self = Self(605);
    /// Saturated fatty acids, g.
    pub const SATURATED_FAT: Self = Self(606);
}

/// A nutrient as the dataset defines it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Nutrient {
    /// The dataset's number.
    pub id: NutrientId,
    /// INFOODS tagname, empty where the dataset has none.
    pub tagname: String,
    /// The dataset's name.
    pub name: String,
    /// Unit of values, per 100 g of edible food: g, mg, µg, IU, kcal.
    pub unit: String,
    /// Decimal places to which the dataset rounds.
    pub decimals: Digits,
}
