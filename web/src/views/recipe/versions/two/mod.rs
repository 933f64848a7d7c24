//! Two forms of a recipe side by side: lines, figures, credits, allergens.

mod align;
mod allergens;
mod credits;
mod figures;
mod lines;

pub use allergens::Allergens;
pub use credits::Credits;
pub use figures::{FIGURES, Figures};
pub use lines::Lines;

use crate::tables::StudiedRecipe;
use engine::recipe::Recipe;
use std::rc::Rc;
use yew::prelude::*;

/// One of the two forms.
#[derive(Debug, Clone, PartialEq)]
pub struct Side {
    /// What it is called.
    pub name: AttrValue,
    /// The recipe in this form.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
}

/// Both of them.
#[derive(Clone, PartialEq, Properties)]
pub struct TwoProps {
    /// The forms, from left to right.
    pub sides: [Side; 2],
}
