//! The dataset's own raw and cooked entries of one food.
//!
//! Cooking moves water in and out and melts fat, but protein and carbohydrate
//! stay, nearly. Where both entries are analysed, the weight of cooked food
//! from a gram of raw food is therefore about
//!
//! yield = (component per 100 g raw) ÷ (component per 100 g cooked),
//!
//! and the spread between components tells how far to trust it. This is the
//! relation behind "true retention" (Murphy, Criner and Gray, 1975), read the
//! other way round.

use crate::foods::{Food, FoodId, FoodTable, NutrientId};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
use std::collections::BTreeSet;

/// A cooked entry for a raw one, with the yield that the two imply.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct CookedPair {
    /// The raw entry.
    pub raw: FoodId,
    /// The cooked entry.
    pub cooked: FoodId,
    /// Grams cooked per gram raw, by the most plentiful component that cooking
    /// keeps.
    pub factor: Decimal,
    /// Smallest that the factor may be.
    pub low: Decimal,
    /// Largest that the factor may be.
    pub high: Decimal,
    /// The component that `factor` is taken from; water stands for all that is
    /// not water.
    pub by: NutrientId,
}

/// Words of an entry that has not been cooked.
const RAW: [&str; 5] = ["raw", "dry", "uncooked", "unprepared", "unheated"];

/// Words of an entry that has.
pub(super) const COOKED: [&str; 18] = [
    "cooked",
    "boiled",
    "baked",
    "roasted",
    "broiled",
    "grilled",
    "braised",
    "fried",
    "stewed",
    "steamed",
    "microwaved",
    "simmered",
    "heated",
    "prepared",
    "poached",
    "scrambled",
    "rotisserie",
    "hard-boiled",
];

/// Words that say how, not what: they do not make another food of it.
const MANNER: [&str; 19] = [
    "flesh",
    "skin",
    "drained",
    "without",
    "with",
    "salt",
    "added",
    "moist",
    "dry",
    "heat",
    "pan-broiled",
    "pan-browned",
    "crumbles",
    "patty",
    "oven",
    "water",
    "fresh",
    "and",
    "no",
];

/// Per 100 g, at least this much of a component must be there before its ratio
/// is trusted. Common practice, no source.
const ENOUGH: Decimal = Decimal::from_parts(5, 0, 0, false, 0);

/// Components that cooking keeps, nearly.
const COMPONENTS: [NutrientId; 2] = [NutrientId::PROTEIN, NutrientId::CARBOHYDRATE];

/// How far a factor may be off, either way, as a share of it, whatever the
/// components say. Common practice, no source.
const LEAST_SPREAD: Decimal = Decimal::from_parts(5, 0, 0, false, 2);

/// Cooked entries for a raw one, those with the fewest other words first; none
/// for a food that does not say that it is raw.
pub fn cooked_pairs(foods: &FoodTable, raw: FoodId) -> Vec<CookedPair> {
    let Some(raw) = foods.food(raw) else {
        return Vec::new();
    };
    let raw_words = words(&raw.description);
    if !RAW.iter().any(|word| raw_words.contains(*word)) {
        return Vec::new();
    }
    let identity: Vec<&String> = raw_words
        .iter()
        .filter(|word| !RAW.contains(&word.as_str()) && !MANNER.contains(&word.as_str()))
        .collect();
    let mut found: Vec<(usize, CookedPair)> = foods
        .foods()
        .iter()
        .filter(|food| food.group == raw.group && food.manufacturer == raw.manufacturer)
        .filter_map(|food| {
            // Most have not even the letters of its words, which is told soonest.
            let letters = food.description.to_lowercase();
            if !identity.iter().all(|word| letters.contains(word.as_str())) {
                return None;
            }
            let candidate = words(&letters);
            let cooked = COOKED.iter().any(|word| candidate.contains(*word));
            let still_raw = candidate.contains("raw") || candidate.contains("unprepared");
            let same = identity.iter().all(|word| candidate.contains(*word));
            if !cooked || still_raw || !same {
                return None;
            }
            Some((other_words(&candidate, &identity), pair(foods, raw, food)?))
        })
        .collect();
    found.sort_by_key(|(others, pair)| (*others, pair.cooked));
    found.into_iter().map(|(_, pair)| pair).collect()
}

fn other_words(candidate: &BTreeSet<String>, identity: &[&String]) -> usize {
    candidate
        .iter()
        .filter(|word| {
            let word = word.as_str();
            !identity.iter().any(|known| *known == word)
                && !COOKED.contains(&word)
                && !MANNER.contains(&word)
        })
        .count()
}

fn pair(foods: &FoodTable, raw: &Food, cooked: &Food) -> Option<CookedPair> {
    let ratio = |component: &NutrientId| {
        let before = foods.per_100_g(raw.id, *component)?;
        let after = foods.per_100_g(cooked.id, *component)?;
        (before >= ENOUGH && after > Decimal::ZERO).then(|| (before, *component, before / after))
    };
    let mut ratios: Vec<(Decimal, NutrientId, Decimal)> =
        COMPONENTS.iter().filter_map(ratio).collect();
    // The more there is of a component, the better its ratio is known.
    ratios.sort_by_key(|(before, _, _)| std::cmp::Reverse(*before));
    if !is_meat(foods, raw.id) {
        ratios.extend(dry_matter(foods, raw.id, cooked.id));
    }
    let &(_, by, factor) = ratios.first()?;
    let low = ratios.iter().map(|(_, _, ratio)| *ratio).min()?;
    let high = ratios.iter().map(|(_, _, ratio)| *ratio).max()?;
    let spread = factor * LEAST_SPREAD;
    Some(CookedPair {
        raw: raw.id,
        cooked: cooked.id,
        factor,
        low: low.min(factor - spread),
        high: high.max(factor + spread),
        by,
    })
}

/// Meat sheds fat, so all that is not water is no component that it keeps.
fn is_meat(foods: &FoodTable, food: FoodId) -> bool {
    foods
        .per_100_g(food, NutrientId::CARBOHYDRATE)
        .is_none_or(|carbohydrate| carbohydrate < ENOUGH)
        && foods
            .per_100_g(food, NutrientId::PROTEIN)
            .is_some_and(|protein| protein >= ENOUGH)
}

/// All that is not water; what is left of vegetables that have little protein.
fn dry_matter(
    foods: &FoodTable,
    raw: FoodId,
    cooked: FoodId,
) -> Option<(Decimal, NutrientId, Decimal)> {
    let solids = |food| {
        foods
            .per_100_g(food, NutrientId::WATER)
            .map(|water| Decimal::ONE_HUNDRED - water)
            .filter(|solids| *solids > Decimal::ZERO)
    };
    let before = solids(raw)?;
    Some((before, NutrientId::WATER, before / solids(cooked)?))
}

pub(super) fn words(description: &str) -> BTreeSet<String> {
    description
        .split(|c: char| !c.is_alphanumeric() && c != '-' && c != '%')
        .filter(|word| !word.is_empty())
        .map(str::to_lowercase)
        .collect()
}
