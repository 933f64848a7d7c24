//! Recipes that come in from elsewhere.

use super::contents::Contents;
use super::names::unique_name;
use engine::exchange::{Arrival, Arriving, bring_in};
use engine::recipe::Recipe;
use std::rc::Rc;

impl Contents {
    /// What would become of these recipes, were they brought in.
    pub fn arriving(&self, recipes: Vec<Recipe>) -> Vec<Arriving> {
        let present = self.recipes.iter().map(|recipe| &**recipe);
        bring_in(present, recipes, |title, taken| {
            unique_name(title, "recipe", taken.iter().map(String::as_str))
        })
    }

    /// Adds those that the book does not have yet. They are compared with how
    /// they came until somebody keeps them.
    pub(super) fn bring_in(&mut self, recipes: Vec<Recipe>) {
        for arriving in self.arriving(recipes) {
            if arriving.arrival != Arrival::Present {
                let recipe = Rc::new(arriving.recipe);
                self.kept.push(Rc::clone(&recipe));
                Rc::make_mut(&mut self.recipes).push(recipe);
            }
        }
    }
}
