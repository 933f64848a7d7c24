//! Recipes as sums take them: rows of values with their grams.

use super::near::CONVERTED;
use super::near::float;
use super::values::{LANE, RowWeight, ValueRows};
use crate::analysis::{NutrientTotal, RecipeAnalysis, sum};
use crate::foods::{FoodId, NutrientId};
use crate::recipe::{RecipeId, WeighedLine};
use crate::reference::{RecipeStudy, Reference};
use crate::units::{Grams, Servings};
use std::borrow::Borrow;

/// What a week needs of a recipe.
#[derive(Debug, Clone, PartialEq)]
pub struct PlannedRecipe {
    /// Number of servings; nothing where the recipe cannot be analysed.
    pub servings: Option<Servings>,
    /// The foods with their weights.
    pub parts: Vec<WeighedLine>,
    /// Fluid milk served as such: food and grams in a serving.
    pub milk: Vec<(FoodId, Grams)>,
}

impl PlannedRecipe {
    /// From a study.
    pub fn of(reference: &Reference, study: &RecipeStudy) -> Self {
        let definitions = &reference.credit_rules.definitions;
        let credits = study.credits.as_ref();
        Self {
            servings: study.analysis.as_ref().ok().map(|found| found.servings),
            parts: study.parts.clone(),
            milk: credits.map_or_else(Vec::new, |credits| credits.fluid_milk(definitions)),
        }
    }
}

/// All recipes with their totals.
#[derive(Debug)]
pub(super) struct Kitchen {
    pub values: ValueRows,
    recipes: Vec<Cooked>,
    /// Totals by recipe and lane, in hundredths of the whole numbers of
    /// [`ValueRows`].
    totals: Vec<[f64; LANE]>,
    /// By recipe and lane: what is missing from them.
    missing: Vec<u16>,
    /// Names with places, sorted.
    places: Vec<(RecipeId, usize)>,
    /// The most lines that a recipe has.
    most_lines: usize,
}

#[derive(Debug)]
struct Cooked {
    planned: PlannedRecipe,
    lines: Vec<RowWeight>,
    servings: f64,
    /// A part without weight: something is missing from every nutrient.
    unweighed: bool,
    /// A weight or value below zero: the bounds of errors do not hold.
    negative: bool,
}

impl Kitchen {
    pub fn new<S: Borrow<RecipeStudy>>(reference: &Reference, studies: &[(RecipeId, S)]) -> Self {
        let values = ValueRows::new(&reference.foods);
        let lanes = values.lanes();
        let mut kitchen = Self {
            values,
            recipes: Vec::new(),
            totals: vec![[0.0; LANE]; studies.len() * lanes],
            missing: vec![0; studies.len() * lanes],
            places: Vec::new(),
            most_lines: 0,
        };
        for (at, (id, study)) in studies.iter().enumerate() {
            let planned = PlannedRecipe::of(reference, study.borrow());
            let cooked = kitchen.cook(reference, planned);
            kitchen.recipes.push(cooked);
            kitchen.places.push((id.clone(), at));
        }
        kitchen.places.sort();
        kitchen
    }

    fn cook(&mut self, reference: &Reference, planned: PlannedRecipe) -> Cooked {
        self.most_lines = self.most_lines.max(planned.parts.len());
        let mut lines = Vec::new();
        let mut negative = false;
        for part in &planned.parts {
            let Some(weight) = part.weight else { continue };
            let row = self.values.row_of(&reference.foods, part);
            negative |= weight < Grams::ZERO || self.values.is_negative(row);
            lines.push(RowWeight {
                row,
                grams: float(weight.grams()),
            });
        }
        Cooked {
            lines,
            servings: planned
                .servings
                .map_or(0.0, |number| float(number.servings())),
            unweighed: planned.parts.iter().any(|part| part.weight.is_none()),
            negative,
            planned,
        }
    }

    pub fn len(&self) -> usize {
        self.recipes.len()
    }

    pub fn place_of(&self, recipe: &RecipeId) -> Option<usize> {
        let found = self.places.binary_search_by_key(&recipe, |(id, _)| id);
        found.ok().map(|at| self.places[at].1)
    }

    pub fn replace(&mut self, reference: &Reference, recipe: usize, planned: PlannedRecipe) {
        self.recipes[recipe] = self.cook(reference, planned);
    }

    pub fn reweigh(&mut self, recipe: usize, part: usize, weight: Grams) {
        let cooked = &mut self.recipes[recipe];
        let parts = &mut cooked.planned.parts;
        let before = parts[..part].iter().filter(|part| part.weight.is_some());
        let line = before.count();
        assert!(
            parts[part].weight.is_some(),
            "only a weighed part is weighed again"
        );
        parts[part].weight = Some(weight);
        cooked.negative |= weight < Grams::ZERO;
        cooked.lines[line].grams = float(weight.grams());
    }

    /// Adds up a recipe's lines.
    pub fn add_up(&mut self, recipe: usize) {
        let lanes = self.values.lanes();
        let at = recipe * lanes..(recipe + 1) * lanes;
        let cooked = &self.recipes[recipe];
        let missing = &mut self.missing[at.clone()];
        self.values
            .add_up(&cooked.lines, &mut self.totals[at], missing);
        if cooked.unweighed {
            missing.fill(u16::MAX);
        }
    }

    /// A recipe's totals and what is missing from them.
    pub fn totals(&self, recipe: usize) -> (&[[f64; LANE]], &[u16]) {
        let lanes = self.values.lanes();
        let at = recipe * lanes..(recipe + 1) * lanes;
        (&self.totals[at.clone()], &self.missing[at])
    }

    /// How many roundings lie behind a total at most: those of the values and
    /// weights, one product, the sums.
    pub fn roundings(&self) -> usize {
        2 * CONVERTED + 2 + self.most_lines
    }

    pub fn servings(&self, recipe: usize) -> f64 {
        self.recipes[recipe].servings
    }

    pub fn is_negative(&self, recipe: usize) -> bool {
        self.recipes[recipe].negative
    }

    pub fn planned(&self, recipe: usize) -> &PlannedRecipe {
        &self.recipes[recipe].planned
    }

    /// A recipe's exact totals of some nutrients; nothing where it cannot be
    /// analysed. Its mass is not asked for and left at zero.
    pub fn analysis(
        &self,
        reference: &Reference,
        recipe: usize,
        nutrients: &[NutrientId],
    ) -> Option<RecipeAnalysis> {
        let planned = &self.recipes[recipe].planned;
        let total = |nutrient: &NutrientId| NutrientTotal {
            nutrient: *nutrient,
            total: sum(&reference.foods, &planned.parts, *nutrient),
        };
        Some(RecipeAnalysis {
            servings: planned.servings?,
            mass: Grams::ZERO,
            mass_measured: false,
            unknown_lines: Vec::new(),
            totals: nutrients.iter().map(total).collect(),
        })
    }
}
