//! One dish: panel, allergens, carbohydrate count.

use super::allergens::allergens;
use super::carbohydrate::carbohydrate;
use super::panel::panel;
use super::words;
use crate::language::Language;
use crate::page::{Page, use_page};
use crate::tables::StudiedRecipe;
use engine::label::{FactsPanel, Form, PanelOptions, nutrition_facts};
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
    let is_complete = facts_of_it.as_ref().is_none_or(|facts| facts.complete);
    let is_wide = facts_of_it
        .as_ref()
        .is_some_and(|facts| facts.form == Form::Tabular);
    html! {
        <div class="family-dish">
            <div class={classes!("family-facts", is_wide.then_some("family-facts-wide"))}>
                { facts(&page, facts_of_it, &props.recipe, tongue) }
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

/// The panel of one of a week's dishes. It stands in a narrow column beside
/// the others, so what is laid out side by side is one row below the other
/// here, as on a phone.
pub fn facts_in_column(
    page: &Page,
    recipe: &Recipe,
    study: &StudiedRecipe,
    tongue: Language,
) -> Html {
    let found = facts_of(page, recipe, study).map(|facts| FactsPanel {
        form: match facts.form {
            Form::Tabular => Form::Vertical,
            form => form,
        },
        ..facts
    });
    facts(page, found, recipe, tongue)
}

/// The Nutrition Facts of a serving, or that there are none.
fn facts(page: &Page, found: Option<FactsPanel>, recipe: &Recipe, tongue: Language) -> Html {
    match found {
        Some(facts) => panel(&facts, &page.tables.reference.label, recipe, tongue),
        None => html! {
            <p class="family-note">{ words::text(tongue, "parents-no-figures") }</p>
        },
    }
}

/// By what the office has decided about the recipe's label.
fn facts_of(page: &Page, recipe: &Recipe, study: &StudiedRecipe) -> Option<FactsPanel> {
    let analysis = study.analysis.as_ref().ok()?;
    let options = PanelOptions {
        serving_words: recipe.serving_words.clone(),
        // Families are shown one serving: see the panel.
        dual: false,
        ..page.contents().label(&recipe.id).panel
    };
    let facts = nutrition_facts(analysis, &page.tables.reference.label, &options);
    (study.ingredient_count() > 0).then_some(facts)
}
