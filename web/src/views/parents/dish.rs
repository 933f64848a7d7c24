//! One dish: panel, allergens, carbohydrate count.

use super::allergens::allergens;
use super::carbohydrate::carbohydrate;
use super::panel::panel;
use super::words;
use crate::language::Language;
use crate::page::{Page, use_page};
use crate::tables::StudiedRecipe;
use engine::label::{FactsPanel, PanelOptions, nutrition_facts};
use engine::recipe::Recipe;
use std::rc::Rc;
use yew::prelude::*;

/// Which dish.
#[derive(Clone, PartialEq, Properties)]
pub struct DishProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// In which language.
    pub tongue: Language,
}

/// The dish.
#[component]
pub fn Dish(props: &DishProps) -> Html {
    let page = use_page();
    let (tongue, study) = (props.tongue, &props.study);
    let facts_of_it = facts_of(&page, &props.recipe, study);
    let is_complete = facts_of_it.is_none_or(|facts| facts.complete);
    html! {
        <div class="family-dish">
            <div class="family-facts">
                { facts(&page, &props.recipe, study, tongue) }
                if !is_complete {
                    <p class="family-note">{ words::text(tongue, "parents-incomplete") }</p>
                }
            </div>
            <div class="family-words">
                <section>
                    <h2>{ words::text(tongue, "parents-allergens") }</h2>
                    { allergens(&props.recipe, study, tongue) }
                </section>
                <section>
                    <h2>{ words::text(tongue, "parents-carbohydrate") }</h2>
                    { carbohydrate(&page, study, tongue) }
                </section>
            </div>
        </div>
    }
}

/// The Nutrition Facts of a serving, or that there are none.
pub fn facts(page: &Page, recipe: &Recipe, study: &StudiedRecipe, tongue: Language) -> Html {
    match facts_of(page, recipe, study) {
        Some(facts) => panel(&facts, recipe, tongue),
        None => html! {
            <p class="family-note">{ words::text(tongue, "parents-no-figures") }</p>
        },
    }
}

fn facts_of(page: &Page, recipe: &Recipe, study: &StudiedRecipe) -> Option<FactsPanel> {
    let analysis = study.analysis.as_ref().ok()?;
    let options = PanelOptions {
        serving_words: recipe.serving_words.clone(),
        ..PanelOptions::default()
    };
    let facts = nutrition_facts(analysis, &page.tables.reference.label, &options);
    (study.ingredient_count() > 0).then_some(facts)
}
