//! What is bought: weights as purchased, in whole packs, with what they cost.

use super::{Kitchen, Pack, PackSize};
use crate::exact::PartialSum;
use crate::exact::rounding::{guarded, round_up_to};
use crate::foods::FoodId;
use crate::recipe::{LineKind, Recipe, RecipeId, weight_of_volume};
use crate::reference::{LineStudy, RecipeStudy, Reference};
use crate::units::{Grams, Servings};
use crate::yields::{AmountBasis, TrimRoute};
use rust_decimal::Decimal;
use serde::Serialize;
use std::collections::BTreeMap;

/// A line's food as it is bought.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Need {
    /// The recipe whose line it is.
    pub recipe: RecipeId,
    /// Index of the line.
    pub line: usize,
    /// The line as typed.
    pub text: String,
    /// The food, if it is known.
    pub food: Option<FoodId>,
    /// Weight of the edible portion, if it is known.
    pub edible: Option<Grams>,
    /// Weight as purchased, if it is known.
    pub purchased: Option<Grams>,
    /// What leads from the one to the other.
    pub route: Option<TrimRoute>,
}

/// A food to buy.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PurchaseRow {
    /// Which food.
    pub food: FoodId,
    /// Weight of the edible portion.
    pub edible: Grams,
    /// Weight as purchased.
    pub purchased: Grams,
    /// The recipes that need it.
    pub recipes: Vec<RecipeId>,
    /// Whole packs, where the office has one of this food whose weight is
    /// known.
    pub order: Option<PackOrder>,
}

/// Whole packs of one kind.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PackOrder {
    /// Index of the pack among the office's.
    pub pack: usize,
    /// How many.
    pub packs: Decimal,
    /// Weight of one.
    pub each: Grams,
    /// What is left when all that is needed is taken.
    pub left: Grams,
    /// What the packs cost, if their price is known.
    pub cost: Option<Decimal>,
}

/// Everything to buy.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct PurchaseList {
    /// Foods by group, then by description.
    pub rows: Vec<PurchaseRow>,
    /// Lines that cannot be bought by: their food or weight is not known.
    pub unlisted: Vec<Need>,
    /// What the whole packs cost, with how much of it is known.
    pub total: PartialSum,
}

/// What a recipe's lines cost.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeCost {
    /// Each line's food with what it costs, by the weight that is used.
    pub lines: Vec<(Need, Option<Decimal>)>,
    /// The batch.
    pub total: PartialSum,
    /// One serving.
    pub per_serving: PartialSum,
}

impl Reference {
    /// A line's food as it is bought; nothing for a line that is no food.
    /// Stated weights as purchased stay; from edible weights the way back is
    /// by the table's yield for what the line says, or the dataset's refuse.
    fn purchased(&self, line: &LineStudy, batches: Decimal) -> Option<Need> {
        let read = &line.read;
        if read.reading.kind != LineKind::Ingredient || line.recipe.is_some() {
            return None;
        }
        let stated = read
            .weight
            .as_ref()
            .ok()
            .map(|weight| weight.grams * batches);
        let food = read.food.and_then(|food| self.foods.food(food));
        let found = food.zip(stated).map(|(food, stated)| match &line.edible {
            Some(portion) if portion.basis == AmountBasis::AsPurchased => {
                (stated * portion.factor, stated, portion.route.clone())
            }
            _ => {
                let basis = AmountBasis::AsPurchased;
                let text = &read.text;
                let portion = self.trim_yields.edible_portion(food, stated, basis, text);
                (stated, stated / portion.factor, portion.route)
            }
        });
        Some(Need {
            recipe: RecipeId(String::new()),
            line: read.line,
            text: read.text.clone(),
            food: read.food,
            edible: found.as_ref().map(|(edible, _, _)| *edible),
            purchased: found.as_ref().map(|(_, purchased, _)| *purchased),
            route: found.map(|(_, _, route)| route),
        })
    }

    /// What a pack's contents weigh, if its food's measures can tell.
    pub fn pack_weight(&self, pack: &Pack) -> Option<Grams> {
        let weight = match pack.size {
            PackSize::Weight { grams } => Some(grams),
            PackSize::Volume { millilitres } => {
                weight_of_volume(&self.foods, pack.food, millilitres)
            }
        };
        weight.filter(|weight| *weight > Grams::ZERO)
    }
}

impl Kitchen<'_> {
    /// The foods that so many batches take, also within other recipes.
    pub fn needs(&self, recipe: &Recipe, study: &RecipeStudy, batches: Decimal) -> Vec<Need> {
        let within = self.within(recipe, study);
        let mut needs = Vec::new();
        for (index, line) in study.lines.iter().enumerate() {
            let found = within.iter().find(|(at, _, _)| *at == index);
            if let Some((id, share)) = found.map(|(_, id, share)| (*id, *share))
                && let Some((recipe, study)) = self.recipe(id)
            {
                needs.extend(self.needs(recipe, study, batches * share));
                continue;
            }
            let of_food = self.reference.purchased(line, batches);
            needs.extend(of_food.or_else(|| unknown(line)).map(|need| Need {
                recipe: recipe.id.clone(),
                ..need
            }));
        }
        needs
    }

    /// Everything to buy for these servings.
    pub fn purchase_list(&self, menu: &BTreeMap<RecipeId, Servings>) -> PurchaseList {
        let mut foods: BTreeMap<FoodId, PurchaseRow> = BTreeMap::new();
        let mut unlisted = Vec::new();
        for (id, servings) in menu {
            let Some((recipe, study)) = self.recipe(id) else {
                continue;
            };
            let Ok(analysis) = &study.analysis else {
                continue;
            };
            let batches = servings.servings() / analysis.servings.servings();
            for need in self.needs(recipe, study, batches) {
                let (Some(food), Some(edible), Some(purchased)) =
                    (need.food, need.edible, need.purchased)
                else {
                    unlisted.push(need);
                    continue;
                };
                let row = foods.entry(food).or_insert_with(|| PurchaseRow {
                    food,
                    edible: Grams::ZERO,
                    purchased: Grams::ZERO,
                    recipes: Vec::new(),
                    order: None,
                });
                row.edible += edible;
                row.purchased += purchased;
                if !row.recipes.contains(&need.recipe) {
                    row.recipes.push(need.recipe);
                }
            }
        }
        let mut rows: Vec<PurchaseRow> = foods.into_values().collect();
        let name = |row: &PurchaseRow| {
            let food = self.reference.foods.food(row.food);
            food.map(|food| (food.group, food.description.clone()))
        };
        rows.sort_by_key(name);
        let mut total = PartialSum::default();
        for row in &mut rows {
            row.order = self.order(row.food, row.purchased);
            let cost = row.order.as_ref().and_then(|order| order.cost);
            total.add(row.purchased, cost);
        }
        for _ in &unlisted {
            total.add_unweighed();
        }
        PurchaseList {
            rows,
            unlisted,
            total,
        }
    }

    /// Whole packs of a food: of several kinds the one that costs least for
    /// this weight; those of unknown price come last.
    fn order(&self, food: FoodId, needed: Grams) -> Option<PackOrder> {
        let packs = self.production.packs.iter().enumerate();
        let orders = packs.filter(|(_, pack)| pack.food == food);
        let mut orders: Vec<PackOrder> = orders
            .filter_map(|(index, pack)| {
                let each = self.reference.pack_weight(pack)?;
                let packs = round_up_to(needed.grams() / each.grams(), Decimal::ONE);
                Some(PackOrder {
                    pack: index,
                    packs,
                    each,
                    left: Grams::new(guarded((each * packs - needed).grams())),
                    cost: pack.price.map(|price| price * packs),
                })
            })
            .collect();
        orders.sort_by_key(|order| (order.cost.is_none(), order.cost));
        orders.into_iter().next()
    }

    /// What 100 g as purchased cost, by the pack in which they cost least.
    fn price(&self, food: FoodId) -> Option<Decimal> {
        let packs = self
            .production
            .packs
            .iter()
            .filter(|pack| pack.food == food);
        packs
            .filter_map(|pack| {
                let each = self.reference.pack_weight(pack)?.grams();
                Some(pack.price? * Decimal::ONE_HUNDRED / each)
            })
            .min()
    }

    /// What a recipe costs by the weight that it uses, whatever else is in the
    /// packs; nothing where its servings are not known.
    pub fn recipe_cost(&self, recipe: &Recipe, study: &RecipeStudy) -> Option<RecipeCost> {
        let servings = study.analysis.as_ref().ok()?.servings;
        let mut total = PartialSum::default();
        let mut lines = Vec::new();
        for need in self.needs(recipe, study, Decimal::ONE) {
            let price = need.food.and_then(|food| self.price(food));
            let cost = price
                .zip(need.purchased)
                .map(|(price, weight)| price * weight.grams() / Decimal::ONE_HUNDRED);
            match need.purchased {
                Some(weight) => total.add(weight, cost),
                None => total.add_unweighed(),
            }
            lines.push((need, cost));
        }
        Some(RecipeCost {
            lines,
            per_serving: total.divided(servings.servings()),
            total,
        })
    }

    /// Prices of 100 g edible portion, for the proposals of swaps: the
    /// dataset's refuse is paid for too.
    pub fn swap_prices(&self) -> Vec<crate::swaps::Price> {
        let mut foods: Vec<FoodId> = self.production.packs.iter().map(|pack| pack.food).collect();
        foods.sort();
        foods.dedup();
        foods
            .into_iter()
            .filter_map(|id| {
                let food = self.reference.foods.food(id)?;
                let one = Grams::new(Decimal::ONE);
                let yields = &self.reference.trim_yields;
                let portion = yields.edible_portion(food, one, AmountBasis::AsPurchased, "");
                Some(crate::swaps::Price {
                    food: id,
                    per_100_g: self.price(id)? / portion.factor,
                })
            })
            .collect()
    }
}

/// A line that names a recipe which cannot be used.
fn unknown(line: &LineStudy) -> Option<Need> {
    (line.read.reading.kind == LineKind::Ingredient).then(|| Need {
        recipe: RecipeId(String::new()),
        line: line.read.line,
        text: line.read.text.clone(),
        food: None,
        edible: None,
        purchased: None,
        route: None,
    })
}
