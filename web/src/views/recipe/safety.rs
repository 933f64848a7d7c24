//! Allergens and temperatures that the recipe's words point to, with the
//! cautions that belong to them.

use super::{CardProps, words};
use crate::language::of_table;
use crate::page::use_page;
use engine::allergens::{CAUTION, Presence};
use engine::kitchen::{self, Guidance};
use yew::prelude::*;

/// The section.
#[component]
pub fn Safety(props: &CardProps) -> Html {
    let page = use_page();
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    let reference = &page.tables.reference;
    let foods: Vec<_> = props
        .study
        .parts
        .iter()
        .filter_map(|part| reference.foods.food(part.food?))
        .collect();
    let steps = reference.food_safety.steps_for(&foods, None);
    let code = steps
        .iter()
        .filter(|step| step.guidance == Guidance::FoodCode);
    let named = |presence: Presence| {
        props
            .study
            .allergens
            .iter()
            .filter(move |allergen| allergen.finding.presence == presence)
    };
    html! {
        <section class="safety" aria-labelledby="safety">
            <h2 id="safety">{ words::ALLERGENS }</h2>
            <ul data-test="allergens">
                { for [Presence::Contains, Presence::MayBePresent].into_iter().flat_map(|presence| {
                    named(presence).map(move |allergen| html! {
                        <li>{ words::allergen(allergen) }</li>
                    })
                }) }
                <li>{ words::OTHER_ALLERGENS }</li>
            </ul>
            <p class="note">{ of_table(CAUTION) }</p>
            <details>
                <summary>{ words::TEMPERATURES }</summary>
                <ul>
                    { for code.map(|step| html! { <li>{ words::temperature(step) }</li> }) }
                </ul>
                <p class="note">{ of_table(kitchen::CAUTION) }</p>
            </details>
        </section>
    }
}
