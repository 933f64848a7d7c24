//! Whether an entry is of raw or of cooked food, by its own words.

use super::pair::{COOKED, words};
use crate::foods::{Food, FoodGroup, FoodId};
use serde::Serialize;

/// Whether food has been cooked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub enum Doneness {
    /// Not yet.
    Raw,
    /// Cooked.
    Cooked,
}

/// Groups whose foods are weighed raw by some and cooked by others. A roasted
/// nut or a baked roll is nothing that a kitchen has cooked.
const GROUPS: [FoodGroup; 11] = [
    FoodGroup(100),
    FoodGroup(500),
    FoodGroup(800),
    FoodGroup(900),
    FoodGroup(1000),
    FoodGroup(1100),
    FoodGroup(1300),
    FoodGroup(1500),
    LEGUMES,
    FoodGroup(1700),
    GRAINS,
];

/// Cereal grains and pasta, legumes and breakfast cereals: dry there means
/// that it is still to be cooked, elsewhere a powder.
const BOILED: [FoodGroup; 3] = [GRAINS, LEGUMES, FoodGroup(800)];

const GRAINS: FoodGroup = FoodGroup(2000);
const LEGUMES: FoodGroup = FoodGroup(1600);

/// Words of cooked entries that others have too: prepared mustard, heated milk.
const ALSO_OF_OTHERS: [&str; 2] = ["prepared", "heated"];

/// Words that pairs of entries take for a manner only, or do not meet.
const COOKED_TOO: [&str; 4] = ["pan-broiled", "pan-browned", "pan-fried", "hard-cooked"];

/// What an entry says; nothing where it does not tell, or where it is of no
/// food that is cooked.
pub fn doneness(food: &Food) -> Option<Doneness> {
    let is_own = matches!(food.id, FoodId::Own(_));
    if !is_own && !GROUPS.contains(&food.group) {
        return None;
    }
    said(&food.description, is_own || BOILED.contains(&food.group))
}

/// What words say of it.
pub fn said(text: &str, dry_is_raw: bool) -> Option<Doneness> {
    let words = words(text);
    let has = |word: &str| words.contains(word);
    let is_half_done = has("unprepared") || has("unheated");
    if has("raw") || has("uncooked") {
        Some(Doneness::Raw)
    } else if is_half_done {
        None
    } else if COOKED
        .iter()
        .chain(&COOKED_TOO)
        .any(|word| has(word) && !ALSO_OF_OTHERS.contains(word))
    {
        Some(Doneness::Cooked)
    } else {
        (dry_is_raw && has("dry")).then_some(Doneness::Raw)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(group: u16, description: &str) -> Option<Doneness> {
        doneness(&Food {
            id: "SR28:01001".parse().expect("a number"),
            group: FoodGroup(group),
            description: description.into(),
            common_names: String::new(),
            manufacturer: String::new(),
            refuse_percent: None,
            refuse_description: String::new(),
        })
    }

    /// Descriptions of the dataset.
    #[test]
    fn entries_tell_whether_they_are_raw_or_cooked() {
        for (group, description, told) in [
            (1100, "Onions, raw", Some(Doneness::Raw)),
            (2000, "Pasta, whole-wheat, dry", Some(Doneness::Raw)),
            (
                2000,
                "Rice, brown, long-grain, cooked",
                Some(Doneness::Cooked),
            ),
            (
                100,
                "Egg, whole, cooked, hard-boiled",
                Some(Doneness::Cooked),
            ),
            (
                100,
                "Milk, dry, nonfat, regular, with added vitamin A",
                None,
            ),
            (
                500,
                "Ground turkey, 93% lean, 7% fat, pan-broiled crumbles",
                Some(Doneness::Cooked),
            ),
            (200, "Mustard, prepared, yellow", None),
            (1200, "Nuts, almonds, dry roasted, with salt added", None),
            (1800, "Rolls, dinner, whole-wheat", None),
            (
                1100,
                "Corn, sweet, yellow, frozen, kernels cut off cob, unprepared",
                None,
            ),
            (
                500,
                "Chicken, broilers or fryers, breast, meat only, cooked, roasted",
                Some(Doneness::Cooked),
            ),
            (
                1100,
                "Potatoes, french fried, all types, salt added in processing, frozen, unprepared",
                None,
            ),
        ] {
            assert_eq!(of(group, description), told, "{description}");
        }
    }
}
