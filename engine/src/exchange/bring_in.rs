//! Recipes from elsewhere, under names that are free.

use crate::recipe::{Recipe, RecipeId};
use std::collections::{BTreeMap, BTreeSet};

/// A recipe on its way into the book.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Arriving {
    /// The recipe, under the name that it will have.
    pub recipe: Recipe,
    /// What becomes of it.
    pub arrival: Arrival,
}

/// What becomes of a recipe from elsewhere.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Arrival {
    /// Nothing in the book has its name.
    New,
    /// The book has the very same recipe: there is nothing to do.
    Present,
    /// Another recipe of the book has its name: it comes in beside that one,
    /// under a new name.
    Beside,
}

/// Finds a place for each recipe. `free_name` makes a name from a title that
/// none of the taken ones is. Lines that name a recipe of the same text follow
/// it to its new name.
pub fn bring_in<'a>(
    present: impl Iterator<Item = &'a Recipe>,
    incoming: Vec<Recipe>,
    free_name: impl Fn(&str, &BTreeSet<String>) -> String,
) -> Vec<Arriving> {
    let present: BTreeMap<&RecipeId, &Recipe> =
        present.map(|recipe| (&recipe.id, recipe)).collect();
    let mut taken: BTreeSet<String> = present.keys().map(|id| id.0.clone()).collect();
    let mut renamed = BTreeMap::new();
    let mut met = BTreeSet::new();
    let mut arriving: Vec<Arriving> = incoming
        .into_iter()
        .map(|mut recipe| {
            let arrival = match present.get(&recipe.id) {
                Some(same) if **same == recipe => Arrival::Present,
                Some(_) => Arrival::Beside,
                None => Arrival::New,
            };
            let is_free = !recipe.id.0.is_empty() && !taken.contains(&recipe.id.0);
            if arrival != Arrival::Present && !is_free {
                let name = RecipeId(free_name(&recipe.title, &taken));
                let before = std::mem::replace(&mut recipe.id, name.clone());
                // Of two with one name, lines mean the first.
                if !met.contains(&before) {
                    renamed.insert(before.clone(), name);
                }
                met.insert(before);
            } else {
                met.insert(recipe.id.clone());
            }
            taken.insert(recipe.id.0.clone());
            Arriving { recipe, arrival }
        })
        .collect();
    renamed.remove(&RecipeId(String::new()));
    for arriving in &mut arriving {
        if arriving.arrival == Arrival::Present {
            continue;
        }
        for line in &mut arriving.recipe.lines {
            if let Some(name) = line
                .correction
                .recipe
                .as_ref()
                .and_then(|id| renamed.get(id))
            {
                line.correction.recipe = Some(name.clone());
            }
        }
    }
    arriving
}
