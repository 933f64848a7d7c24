//! Words about where a recipe is used.

use crate::language::Say;

pub const TITLE: Say = Say("used-title");
pub const NOWHERE: Say = Say("used-nowhere");
pub const IN_RECIPES: Say = Say("used-in-recipes");
pub const THROUGH_THEM: Say = Say("used-through-them");
pub const IN_WEEKS: Say = Say("used-in-weeks");
pub const MOVED: Say = Say("used-moved");
