//! Allergens, as far as words point to them, and what that does not prove.

use super::words;
use crate::language::Language;
use crate::tables::StudiedRecipe;
use engine::allergens::Presence;
use engine::recipe::Recipe;
use engine::reference::RecipeAllergen;
use yew::prelude::*;

/// The three answers, each with its allergens, and the cautions.
pub fn allergens(recipe: &Recipe, study: &StudiedRecipe, tongue: Language) -> Html {
    html! {<>
        <dl class="family-allergens">
            { answer(recipe, study, tongue, Presence::Contains, "parents-contains") }
            { answer(recipe, study, tongue, Presence::MayBePresent, "parents-may") }
            { answer(recipe, study, tongue, Presence::Unknown, "parents-not-named") }
        </dl>
        if study.open_count() > 0 {
            <p class="family-note">{ words::open_lines(tongue, study.open_count()) }</p>
        }
        <p class="family-caution">{ words::text(tongue, "parents-allergen-caution") }</p>
    </>}
}

fn answer(
    recipe: &Recipe,
    study: &StudiedRecipe,
    tongue: Language,
    presence: Presence,
    key: &str,
) -> Html {
    let found: Vec<String> = with(study, presence)
        .map(|one| {
            let name = words::allergen(tongue, one.finding.allergen);
            let lines = one.lines.iter().filter_map(|at| recipe.lines.get(*at));
            let lines: Vec<&str> = lines.map(|line| line.text.trim()).collect();
            match lines.is_empty() {
                true => name,
                false => format!("{name} ({})", lines.join("; ")),
            }
        })
        .collect();
    html! {
        <div>
            <dt>{ words::text(tongue, key) }</dt>
            <dd data-test={format!("family-{}", key.trim_start_matches("parents-"))}>
                { listed(&found, tongue) }
            </dd>
        </div>
    }
}

fn listed(found: &[String], tongue: Language) -> Html {
    match found {
        [] => html! { { words::text(tongue, "parents-none") } },
        found => html! {
            <ul>{ for found.iter().map(|one| html! { <li>{ one }</li> }) }</ul>
        },
    }
}

/// The names of the allergens of one answer, in one line.
pub fn names(study: &StudiedRecipe, tongue: Language, presence: Presence) -> Option<String> {
    let names: Vec<String> = with(study, presence)
        .map(|one| words::allergen(tongue, one.finding.allergen))
        .collect();
    (!names.is_empty()).then(|| names.join(", "))
}

fn with(study: &StudiedRecipe, presence: Presence) -> impl Iterator<Item = &RecipeAllergen> {
    let found = study.allergens.iter();
    found.filter(move |one| one.finding.presence == presence)
}
