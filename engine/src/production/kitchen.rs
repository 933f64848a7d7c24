//! What production looks things up in.

use super::Production;
use crate::recipe::{Recipe, RecipeId};
use crate::reference::{RecipeStudy, Reference, batches_asked};
use rust_decimal::Decimal;
use std::collections::BTreeMap;

/// The tables, what the office keeps of its kitchens, and its recipes with
/// what is found out about them.
#[derive(Debug, Clone)]
pub struct Kitchen<'a> {
    /// Foods and tables.
    pub reference: &'a Reference,
    /// Schools, packs, pans.
    pub production: &'a Production,
    recipes: BTreeMap<&'a RecipeId, (&'a Recipe, &'a RecipeStudy)>,
}

impl<'a> Kitchen<'a> {
    /// A kitchen with these recipes.
    pub fn new(
        reference: &'a Reference,
        production: &'a Production,
        recipes: impl IntoIterator<Item = (&'a Recipe, &'a RecipeStudy)>,
    ) -> Self {
        Self {
            reference,
            production,
            recipes: recipes
                .into_iter()
                .map(|(recipe, study)| (&recipe.id, (recipe, study)))
                .collect(),
        }
    }

    /// A recipe with what is found out about it.
    pub fn recipe(&self, id: &RecipeId) -> Option<(&'a Recipe, &'a RecipeStudy)> {
        self.recipes.get(id).copied()
    }

    /// The recipes that a recipe's lines name: the line, the recipe, and how
    /// many batches of it one batch takes.
    pub fn within<'s>(
        &self,
        recipe: &Recipe,
        study: &'s RecipeStudy,
    ) -> Vec<(usize, &'s RecipeId, Decimal)> {
        let lines = study.lines.iter().zip(&recipe.lines).enumerate();
        lines
            .filter_map(|(index, (line, text))| {
                let id = line.recipe.as_ref()?;
                let (_, of) = self.recipe(id)?;
                let servings = of.analysis.as_ref().ok()?.servings;
                let reading = &line.read.reading;
                let batches = batches_asked(text, reading, servings, of.batch_weight)?;
                Some((index, id, batches))
            })
            .collect()
    }
}
