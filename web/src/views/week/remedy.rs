//! From a missed figure to a remedy: what would mend the week, or the line of a
//! dish that brings most of it, and what else could go there.

use super::moving_words as words;
use super::requirement::{Carried, Requirement};
use crate::page::{Page, leads_to};
use crate::route::Route;
use engine::analysis::contributions;
use engine::findings::Verdict;
use engine::recipe::RecipeId;
use yew::prelude::*;

/// The way to what would mend the week; nothing where the requirement is kept
/// or unknown.
pub fn mend_way(requirement: &Requirement) -> Html {
    if requirement.verdict != Verdict::Missed {
        return Html::default();
    }
    html! {
        <a class="remedy" data-test="to-mend" href="#mend" onclick={leads_to("mend")}>
            { words::TO_MEND }
            <span class="for-readers">{ ": " }{ &requirement.what }</span>
        </a>
    }
}

/// The way to the swaps of the heaviest line; nothing where the requirement is
/// kept, or asks for more of something.
pub fn swap_way(page: &Page, requirement: &Requirement, recipe: &RecipeId) -> Html {
    let Carried::ByNutrient(nutrient) = requirement.carried else {
        return Html::default();
    };
    if requirement.verdict != Verdict::Missed {
        return Html::default();
    }
    let Some(recipe) = page.contents().recipe(recipe) else {
        return Html::default();
    };
    let study = page.tables.study(recipe, page.contents());
    let parts = contributions(&page.tables.reference.foods, &study.parts, nutrient);
    let heaviest = parts.iter().max_by_key(|part| part.amount);
    let Some((part, line)) = heaviest.and_then(|part| Some((part, recipe.lines.get(part.line)?)))
    else {
        return Html::default();
    };
    html! {
        <a class="remedy" data-test="remedy" href={Route::Swaps(recipe.id.clone(), part.line).fragment()}>
            { words::swap_line(line.text.trim()) }
        </a>
    }
}
