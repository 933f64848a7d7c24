//! What an office decides about the labels of its recipes.

use crate::claims::ClaimOptions;
use crate::label::PanelOptions;
use crate::recipe::RecipeId;
use serde::{Deserialize, Serialize};

/// A recipe's Nutrition Facts panel and claims, as the office wants them.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeLabel {
    /// Of which recipe; no other label is of it.
    pub recipe: RecipeId,
    /// The panel. The words for a serving are the recipe's.
    #[serde(default)]
    pub panel: PanelOptions,
    /// What is said of the food, for its claims. The weight of a serving is the
    /// panel's.
    #[serde(default)]
    pub claims: ClaimOptions,
    /// The recipe that comparative claims compare with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub compared_with: Option<RecipeId>,
}

impl RecipeLabel {
    /// The label of a recipe about which nothing is decided.
    pub fn plain(recipe: RecipeId) -> Self {
        Self {
            recipe,
            panel: PanelOptions::default(),
            claims: ClaimOptions::default(),
            compared_with: None,
        }
    }

    /// Whether nothing is decided: a book does not hold such a label.
    pub fn is_plain(&self) -> bool {
        *self == Self::plain(self.recipe.clone())
    }
}
