//! All foods that a recipe may name: the dataset's and the office's own.

use super::dataset::Dataset;
use super::own::OwnEntry;
use super::{Food, FoodGroup, FoodId, Measure, Nutrient, NutrientId};
use nutrient_data::format::AssetError;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::sync::Arc;

/// Foods, their measures and their nutrient values per 100 g edible portion.
///
/// Cheap to clone: the dataset is shared.
#[derive(Debug, Clone)]
pub struct FoodTable {
    dataset: Arc<Dataset>,
    /// The office's own foods, sorted by number.
    own: Arc<Vec<OwnEntry>>,
}

impl FoodTable {
    /// Reads the dataset's asset.
    ///
    /// # Errors
    /// When the bytes are damaged, foreign or of another version.
    pub fn from_asset(bytes: &[u8]) -> Result<Self, AssetError> {
        Ok(Self {
            dataset: Arc::new(Dataset::from_asset(bytes)?),
            own: Arc::default(),
        })
    }

    /// The same dataset with these foods of the office's own. Of two entries
    /// with one number the first is taken.
    pub fn with_own(&self, mut own: Vec<OwnEntry>) -> Self {
        own.sort_by_key(|entry| entry.food.id);
        own.dedup_by_key(|entry| entry.food.id);
        Self {
            dataset: Arc::clone(&self.dataset),
            own: Arc::new(own),
        }
    }

    fn own(&self, id: FoodId) -> Option<&OwnEntry> {
        let index = self.own.binary_search_by_key(&id, |entry| entry.food.id);
        index.ok().map(|index| &self.own[index])
    }

    /// The dataset's foods in the order of their numbers.
    pub fn foods(&self) -> &[Food] {
        &self.dataset.foods
    }

    /// The office's own foods in the order of their numbers.
    pub fn own_foods(&self) -> impl Iterator<Item = &Food> {
        self.own.iter().map(|entry| &entry.food)
    }

    /// One food, or nothing if the table has no such number.
    pub fn food(&self, id: FoodId) -> Option<&Food> {
        match id {
            FoodId::Sr28(_) => self.dataset.row(id).map(|row| &self.dataset.foods[row]),
            FoodId::Own(_) => self.own(id).map(|entry| &entry.food),
        }
    }

    /// Name of a food group.
    pub fn group_name(&self, group: FoodGroup) -> Option<&str> {
        self.dataset
            .groups
            .iter()
            .find(|(code, _)| *code == group)
            .map(|(_, name)| name.as_str())
    }

    /// Household measures of a food; empty for an unknown food.
    pub fn measures(&self, id: FoodId) -> &[Measure] {
        match id {
            FoodId::Sr28(_) => self
                .dataset
                .row(id)
                .map_or(&[], |row| self.dataset.measures(row)),
            FoodId::Own(_) => self.own(id).map_or(&[], |entry| &entry.measures),
        }
    }

    /// All nutrients in the dataset's order.
    pub fn nutrients(&self) -> &[Nutrient] {
        &self.dataset.nutrients
    }

    /// One nutrient's definition.
    pub fn nutrient(&self, id: NutrientId) -> Option<&Nutrient> {
        self.nutrients().iter().find(|nutrient| nutrient.id == id)
    }

    /// Value per 100 g edible portion in the nutrient's own unit, exactly as
    /// the dataset writes it; nothing where there is none.
    pub fn per_100_g(&self, food: FoodId, nutrient: NutrientId) -> Option<Decimal> {
        match food {
            FoodId::Sr28(_) => self.dataset.per_100_g(self.dataset.row(food)?, nutrient),
            FoodId::Own(_) => Some(self.own(food)?.value(nutrient)?.per_100_g),
        }
    }

    /// The same value as a binary float, for ranking.
    pub(crate) fn about_per_100_g(&self, food: FoodId, nutrient: NutrientId) -> Option<f64> {
        match food {
            FoodId::Sr28(_) => self
                .dataset
                .about_per_100_g(self.dataset.row(food)?, nutrient),
            FoodId::Own(_) => self.per_100_g(food, nutrient)?.to_f64(),
        }
    }

    /// Decimal places of the dataset's values of a nutrient.
    pub fn places(&self, nutrient: NutrientId) -> u32 {
        self.dataset.places(nutrient)
    }

    /// Bounds of a value that stands for an interval, as a label's does;
    /// nothing for the dataset's values.
    pub fn interval_per_100_g(
        &self,
        food: FoodId,
        nutrient: NutrientId,
    ) -> Option<(Decimal, Decimal)> {
        let value = self.own(food)?.value(nutrient)?;
        Some((value.low, value.high))
    }
}
