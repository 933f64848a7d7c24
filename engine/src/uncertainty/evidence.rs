//! The error of one value: from the dataset, or assumed from its food group.

use super::composition::rectangular;
use crate::foods::{FoodGroup, FoodId, FoodTable, NutrientId, Provenance};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::collections::BTreeMap;

/// Where a standard uncertainty comes from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Origin {
    /// The dataset's own standard error.
    Dataset,
    /// The rounding that the law asks of a label value.
    LabelRounding,
    /// The median relative standard error of its food group.
    AssumedFromGroup,
    /// The median relative standard error of all foods, where its group has
    /// too few.
    AssumedFromAll,
}

impl Origin {
    /// True where no measurement of this very food stands behind it.
    pub fn is_assumed(self) -> bool {
        matches!(self, Self::AssumedFromGroup | Self::AssumedFromAll)
    }
}

/// The standard uncertainty of a value per 100 g.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub struct ValueError {
    /// Standard uncertainty, in the nutrient's unit per 100 g.
    pub standard: Decimal,
    /// Where it comes from.
    pub origin: Origin,
}

/// A group needs this many foods with a standard error before its median is
/// taken for those without. Common practice, no source.
const FEWEST_FOODS: usize = 5;

/// Standard errors, and the relative ones assumed where there are none.
#[derive(Debug, Clone)]
pub struct Evidence {
    provenance: Provenance,
    by_group: BTreeMap<(NutrientId, FoodGroup), Decimal>,
    by_nutrient: BTreeMap<NutrientId, Decimal>,
}

impl Evidence {
    /// Takes the medians of the dataset's relative standard errors.
    pub fn new(foods: &FoodTable, provenance: Provenance) -> Self {
        let mut by_group = BTreeMap::new();
        let mut by_nutrient = BTreeMap::new();
        for nutrient in foods.nutrients() {
            let mut groups: BTreeMap<FoodGroup, Vec<Relative>> = BTreeMap::new();
            for (food, error) in provenance.standard_errors(nutrient.id) {
                let found = foods.food(food).zip(foods.per_100_g(food, nutrient.id));
                if let Some((food, value)) = found.filter(|(_, value)| *value > Decimal::ZERO) {
                    let errors = groups.entry(food.group).or_default();
                    errors.push(Relative { error, value });
                }
            }
            let mut all: Vec<Relative> = groups.values().flatten().copied().collect();
            if let Some(median) = median(&mut all) {
                by_nutrient.insert(nutrient.id, median);
            }
            for (group, mut errors) in groups {
                if let Some(median) = median(&mut errors) {
                    by_group.insert((nutrient.id, group), median);
                }
            }
        }
        Self {
            provenance,
            by_group,
            by_nutrient,
        }
    }

    /// The dataset's provenance.
    pub fn provenance(&self) -> &Provenance {
        &self.provenance
    }

    /// The error of a known value; nothing where the value is missing, or
    /// where no food at all has a standard error to go by.
    pub fn value_error(
        &self,
        foods: &FoodTable,
        food: FoodId,
        nutrient: NutrientId,
    ) -> Option<ValueError> {
        let value = foods.per_100_g(food, nutrient)?;
        if let Some(standard) = self.provenance.standard_error(food, nutrient) {
            return Some(ValueError {
                standard,
                origin: Origin::Dataset,
            });
        }
        if let Some((low, high)) = foods.interval_per_100_g(food, nutrient) {
            return Some(ValueError {
                standard: rectangular(low, high),
                origin: Origin::LabelRounding,
            });
        }
        let group = foods.food(food)?.group;
        let (relative, origin) = match self.by_group.get(&(nutrient, group)) {
            Some(relative) => (relative, Origin::AssumedFromGroup),
            None => (self.by_nutrient.get(&nutrient)?, Origin::AssumedFromAll),
        };
        Some(ValueError {
            standard: value * relative,
            origin,
        })
    }
}

/// The standard error of a value above zero, both of one nutrient: so all that
/// are compared have the same decimal places.
#[derive(Debug, Clone, Copy)]
struct Relative {
    error: Decimal,
    value: Decimal,
}

impl Relative {
    /// Which is the smaller share, by their digits and without a quotient:
    /// there are a hundred thousand.
    fn order(&self, other: &Self) -> Ordering {
        let ours = self.error.mantissa() * other.value.mantissa();
        ours.cmp(&(other.error.mantissa() * self.value.mantissa()))
    }
}

/// The middle one; nothing for too few.
fn median(errors: &mut [Relative]) -> Option<Decimal> {
    if errors.len() < FEWEST_FOODS {
        return None;
    }
    let middle = errors.len() / 2;
    let (_, median, _) = errors.select_nth_unstable_by(middle, Relative::order);
    Some(median.error / median.value)
}
