//! Versions of a recipe that an office keeps beside the one that it cooks.

use crate::recipe::{Recipe, RecipeId};
use crate::week::Date;
use serde::{Deserialize, Serialize};

/// A recipe as it stood once, under a name of its own.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Version {
    /// What the office calls it; no other version of the recipe has this name.
    pub name: String,
    /// The day on which it was kept, where that is known.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kept_on: Option<Date>,
    /// The recipe as it stood. Its id tells of which recipe this is a version.
    pub recipe: Recipe,
}

impl Version {
    /// True for the version of that name of a recipe.
    pub fn is(&self, recipe: &RecipeId, name: &str) -> bool {
        self.recipe.id == *recipe && self.name == name
    }
}
