//! What is cooked: each recipe once, whatever it goes into, with its lines
//! weighed out and its pans counted.

use super::pans::{PanCount, PanProblem, pans_for, serving_volume};
use super::scale::Shown;
use super::{Kitchen, KitchenWay, WeighedAs};
use crate::recipe::{LineAmount, LineKind, Recipe, RecipeId};
use crate::reference::RecipeStudy;
use crate::units::{Grams, Servings, Unit, VolumeUnit, read_amount};
use rust_decimal::Decimal;
use serde::Serialize;
use std::collections::BTreeMap;

/// One line of a recipe in the amount that is cooked.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct WeighOut {
    /// Index of the line in its recipe.
    pub line: usize,
    /// Whether it is a heading.
    pub heading: bool,
    /// The line without its amount: "onions, chopped".
    pub words: String,
    /// The weight, as the line states it; nothing where it is not known.
    pub exact: Option<Grams>,
    /// What that is the weight of.
    pub weighed_as: WeighedAs,
    /// What the scale shows of it; nothing where that is nought.
    pub shown: Option<Shown>,
    /// The line's own measure in this amount, where it is no weight.
    pub measure: Option<(Decimal, Unit)>,
    /// The recipe that the line names, and how many batches of it.
    pub recipe: Option<(RecipeId, Decimal)>,
}

/// A recipe to cook.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct CookItem {
    /// Which recipe.
    pub recipe: RecipeId,
    /// Servings that go to the table as they are.
    pub served: Servings,
    /// Batches of the recipe in all, also for other recipes.
    pub batches: Decimal,
    /// Servings in all.
    pub servings: Servings,
    /// The recipes that it goes into, each with the batches that they take.
    pub goes_into: Vec<(RecipeId, Decimal)>,
    /// How many recipes lead from it to the table: a recipe within another is
    /// cooked before it.
    pub depth: usize,
    /// Its lines.
    pub lines: Vec<WeighOut>,
    /// Its pans, where the office says which; of what goes to the table.
    pub pans: Option<Result<PanCount, PanProblem>>,
    /// How the office cooks it.
    pub way: Option<KitchenWay>,
}

/// A recipe of the menu that cannot be cooked by its book.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct NotCooked {
    /// Which recipe: it is not in the book, or its servings are not known.
    pub recipe: RecipeId,
    /// The servings asked for.
    pub servings: Servings,
}

#[derive(Debug, Default)]
struct Needed {
    served: Servings,
    batches: Decimal,
    goes_into: BTreeMap<RecipeId, Decimal>,
    depth: usize,
}

impl<'a> Kitchen<'a> {
    /// All that is cooked for these servings: recipes within others first, and
    /// each once. What cannot be cooked is told apart.
    pub fn cook_list(
        &self,
        menu: &BTreeMap<RecipeId, Servings>,
    ) -> (Vec<CookItem>, Vec<NotCooked>) {
        let mut needed: BTreeMap<&RecipeId, Needed> = BTreeMap::new();
        let mut not_cooked = Vec::new();
        for (id, servings) in menu
            .iter()
            .filter(|(_, servings)| **servings > Servings::ZERO)
        {
            let analysed = self
                .recipe(id)
                .and_then(|(_, study)| Some(study.analysis.as_ref().ok()?.servings));
            let Some(of_batch) = analysed else {
                not_cooked.push(NotCooked {
                    recipe: id.clone(),
                    servings: *servings,
                });
                continue;
            };
            let batches = servings.servings() / of_batch.servings();
            self.need(&mut needed, id, batches, None);
            if let Some(found) = needed.get_mut(id) {
                found.served += *servings;
            }
        }
        let mut items: Vec<CookItem> = needed
            .into_iter()
            .filter_map(|(id, needed)| self.item(id, needed))
            .collect();
        items.sort_by_key(|item| std::cmp::Reverse(item.depth));
        (items, not_cooked)
    }

    /// Adds a recipe and all recipes within it. The studies have found every
    /// recipe that needs itself, and name none there.
    fn need(
        &self,
        needed: &mut BTreeMap<&'a RecipeId, Needed>,
        id: &RecipeId,
        batches: Decimal,
        user: Option<(&RecipeId, usize)>,
    ) {
        let Some((recipe, study)) = self.recipe(id) else {
            return;
        };
        let entry = needed.entry(&recipe.id).or_default();
        entry.batches += batches;
        if let Some((user, depth)) = user {
            *entry.goes_into.entry(user.clone()).or_default() += batches;
            entry.depth = entry.depth.max(depth);
        }
        let depth = entry.depth + 1;
        for (_, within, share) in self.within(recipe, study) {
            self.need(needed, within, batches * share, Some((id, depth)));
        }
    }

    fn item(&self, id: &RecipeId, needed: Needed) -> Option<CookItem> {
        let (recipe, study) = self.recipe(id)?;
        let analysis = study.analysis.as_ref().ok()?;
        let way = self.production.way(id).cloned();
        let panning = way.as_ref().and_then(|way| way.pan.as_ref());
        let serving = (serving_volume(recipe), analysis.sure_serving_mass());
        let pans = panning
            .filter(|_| needed.served > Servings::ZERO)
            .map(|panning| pans_for(&self.reference.pans, panning, needed.served, serving));
        Some(CookItem {
            recipe: id.clone(),
            served: needed.served,
            batches: needed.batches,
            servings: analysis.servings * needed.batches,
            goes_into: needed.goes_into.into_iter().collect(),
            depth: needed.depth,
            lines: self.weigh_out(recipe, study, needed.batches),
            pans,
            way,
        })
    }

    /// A recipe's lines for so many batches.
    pub fn weigh_out(
        &self,
        recipe: &Recipe,
        study: &RecipeStudy,
        batches: Decimal,
    ) -> Vec<WeighOut> {
        let scale = self
            .reference
            .scales
            .named(self.production.scale.as_deref());
        let within = self.within(recipe, study);
        let share = |line: usize| {
            let found = within.iter().find(|(index, _, _)| *index == line);
            found.map(|(_, id, share)| ((*id).clone(), *share * batches))
        };
        let lines = study.lines.iter().enumerate();
        lines
            .filter(|(_, line)| line.read.reading.kind != LineKind::Blank)
            .map(|(index, line)| {
                let read = &line.read;
                let exact = match line.recipe {
                    // The batches say how much of another recipe is taken.
                    Some(_) => None,
                    None => read
                        .weight
                        .as_ref()
                        .ok()
                        .map(|weight| weight.grams * batches),
                };
                WeighOut {
                    line: index,
                    heading: read.reading.kind == LineKind::Heading,
                    words: without_amount(&read.text),
                    exact,
                    weighed_as: exact
                        .map_or_else(WeighedAs::default, |_| self.reference.weighed_as(line)),
                    shown: exact.and_then(|weight| scale.show(weight)),
                    measure: measure(&read.reading.amount, batches),
                    recipe: share(index),
                }
            })
            .collect()
    }
}

/// The line's own measure, where it is no weight.
fn measure(amount: &LineAmount, batches: Decimal) -> Option<(Decimal, Unit)> {
    let LineAmount::Stated { quantity } = amount else {
        return None;
    };
    let amount = quantity.used().of(batches);
    match &quantity.unit {
        Unit::Mass(_) => None,
        Unit::Volume(unit) => Some(spooned(amount, *unit)),
        unit => Some((amount, unit.clone())),
    }
}

/// Units that a kitchen has vessels for, each with the next smaller one and
/// the share below which that is taken: a quarter of a gallon is a quart, and
/// nobody fills seven hundredths of a cup. Common practice, no source.
const SMALLER: [(VolumeUnit, VolumeUnit, Decimal); 5] = [
    (VolumeUnit::Gallon, VolumeUnit::Quart, HALF),
    (VolumeUnit::Quart, VolumeUnit::Cup, HALF),
    (VolumeUnit::Pint, VolumeUnit::Cup, HALF),
    (VolumeUnit::Cup, VolumeUnit::Tablespoon, QUARTER),
    (VolumeUnit::Tablespoon, VolumeUnit::Teaspoon, Decimal::ONE),
];

/// The same upwards, with how many are counted at most: nobody counts 17
/// tablespoons where a cup is at hand.
const LARGER: [(VolumeUnit, VolumeUnit, Decimal); 2] = [
    (
        VolumeUnit::Teaspoon,
        VolumeUnit::Tablespoon,
        Decimal::from_parts(6, 0, 0, false, 0),
    ),
    (
        VolumeUnit::Tablespoon,
        VolumeUnit::Cup,
        Decimal::from_parts(8, 0, 0, false, 0),
    ),
];

const HALF: Decimal = Decimal::from_parts(5, 0, 0, false, 1);
const QUARTER: Decimal = Decimal::from_parts(25, 0, 0, false, 2);

/// A volume in the unit by which it can be measured out.
fn spooned(amount: Decimal, unit: VolumeUnit) -> (Decimal, Unit) {
    let smaller = SMALLER
        .iter()
        .find(|(of, _, least)| *of == unit && amount < *least);
    let larger = LARGER
        .iter()
        .find(|(of, _, most)| *of == unit && amount >= *most);
    match smaller.or(larger) {
        Some((_, other, _)) => spooned(other.number_in(unit.of(amount)), *other),
        None => (amount, Unit::Volume(unit)),
    }
}

fn without_amount(text: &str) -> String {
    match read_amount(text) {
        Ok(Some(read)) if !read.rest.trim().is_empty() => read.rest.trim().to_owned(),
        _ => text.trim().to_owned(),
    }
}
