//! The carbohydrate count of a serving, with the caution that belongs to it.

use super::words;
use crate::format;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::exact::Digits;
use engine::reference::ServingAmount;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct NurseProps {
    /// What is found out about the recipe.
    pub study: StudiedRecipe,
}

/// The count, folded up.
#[component]
pub fn Nurse(props: &NurseProps) -> Html {
    let page = use_page();
    let Some(count) = page.tables.reference.carbohydrate_count(&props.study) else {
        return Html::default();
    };
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    html! {
        <section class="nurse">
            <details data-test="carbohydrate">
                <summary>{ words::CARBOHYDRATE_COUNT }</summary>
                <dl class="pairs">
                    <dt>{ words::CARBOHYDRATE }</dt><dd>{ grams(&count.carbohydrate) }</dd>
                    <dt>{ words::OF_IT_FIBRE }</dt><dd>{ grams(&count.fibre) }</dd>
                </dl>
                <p class="note">{ count.caution }</p>
            </details>
        </section>
    }
}

fn grams(amount: &ServingAmount) -> String {
    match format::known(&amount.amount, Digits(1)) {
        Some(known) => format!("{known} g"),
        None => words::UNKNOWN.to_owned(),
    }
}
