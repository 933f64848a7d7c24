//! Changes of one recipe.

use super::action::RecipeEdit;
use super::lines::{Aside, rewrite, swap};
use engine::recipe::Recipe;

/// Applies one change.
pub(super) fn apply(recipe: &mut Recipe, edit: RecipeEdit, aside: &mut Vec<Aside>) {
    match edit {
        RecipeEdit::Title(title) => recipe.title = title,
        RecipeEdit::Servings(servings) => recipe.servings = servings,
        RecipeEdit::ServingWords(serving) => recipe.serving_words = serving,
        RecipeEdit::Lines(text) => rewrite(recipe, &text, aside),
        RecipeEdit::Method(method) => recipe.method = method,
        RecipeEdit::ServingSize(size) => recipe.serving_size = size,
        RecipeEdit::FinishedWeight(weight) => recipe.finished_weight = weight,
        RecipeEdit::Beans(role) => recipe.beans = role,
        RecipeEdit::Correct { line, correction } => {
            if let Some(line) = recipe.lines.get_mut(line) {
                line.correction = correction;
            }
        }
        RecipeEdit::Swap { line, lines } => swap(recipe, line, lines, aside),
    }
}
