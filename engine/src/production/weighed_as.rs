//! In what state a line's food lies on the scale: raw or cooked, before or
//! after what is inedible is taken off.

use crate::reference::{LineStudy, Reference};
use crate::yields::{AmountBasis, Doneness, TrimRoute, doneness};
use serde::Serialize;

/// What the weight of a line is the weight of, as far as that makes a
/// difference.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct WeighedAs {
    /// Raw or cooked; nothing where the line's own words say so, or where
    /// nothing tells.
    pub doneness: Option<Doneness>,
    /// As purchased or edible portion; nothing where both weigh the same.
    pub basis: Option<AmountBasis>,
}

impl Reference {
    /// What the stated weight of a line is the weight of.
    pub(super) fn weighed_as(&self, line: &LineStudy) -> WeighedAs {
        WeighedAs {
            doneness: self.told_doneness(line),
            basis: self.told_basis(line),
        }
    }

    /// A line that counts as cooked is stated raw: its yield leads from there.
    fn told_doneness(&self, line: &LineStudy) -> Option<Doneness> {
        let food = self.foods.food(line.read.food?)?;
        let of_food = doneness::doneness(food);
        let found = match &line.cooked {
            Some(_) => of_food.or(Some(Doneness::Raw)),
            None => of_food,
        };
        found.filter(|found| doneness::said(&line.read.text, true) != Some(*found))
    }

    fn told_basis(&self, line: &LineStudy) -> Option<AmountBasis> {
        let food = self.foods.food(line.read.food?)?;
        let portion = line.edible.as_ref()?;
        let text = &line.read.text;
        let purchased = AmountBasis::AsPurchased;
        let as_purchased = self
            .trim_yields
            .edible_portion(food, portion.stated, purchased, text);
        (as_purchased.route != TrimRoute::Nothing).then_some(portion.basis)
    }
}
