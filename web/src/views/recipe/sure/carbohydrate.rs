//! The carbohydrate count of a serving, for the school nurse, with the caution
//! that belongs to it.

use super::{plus_minus, rests_on, words};
use crate::components::{Help, Topic};
use crate::format;
use crate::language::{Say, of_table};
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::foods::NutrientId;
use engine::reference::ServingAmount;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct CarbohydrateProps {
    /// What is found out about the recipe.
    pub study: StudiedRecipe,
    /// Words for one serving.
    pub serving: AttrValue,
    /// Told of the nutrient whose origin is wanted; nothing on paper.
    #[prop_or_default]
    pub on_open: Option<Callback<NutrientId>>,
}

/// The count.
#[component]
pub fn Carbohydrate(props: &CarbohydrateProps) -> Html {
    let page = use_page();
    let reference = &page.tables.reference;
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    let Some(count) = reference.carbohydrate_count(&props.study) else {
        return Html::default();
    };
    let opening = |figure: String, nutrient: NutrientId| match &props.on_open {
        Some(open) => {
            let onclick = open.reform(move |_: MouseEvent| nutrient);
            html! { <button type="button" class="as-text" {onclick}>{ figure }</button> }
        }
        None => html! { { figure } },
    };
    let row = |name: Say, amount: &ServingAmount| {
        let digits = engine::exact::Digits(1);
        let figure = format::known(&amount.amount, digits);
        let off = plus_minus(amount, digits);
        let coverage = (!amount.amount.is_complete()).then(|| words::coverage(&amount.amount));
        let notes: Vec<String> = [coverage, rests_on(amount)].into_iter().flatten().collect();
        html! {
            <div>
                <dt>{ name }</dt>
                <dd data-test={format!("carbohydrate-{}", amount.nutrient.0)}>
                    if let Some(figure) = figure {
                        <strong>{ opening(format!("{figure} {}", words::GRAMS), amount.nutrient) }</strong>
                        if let Some(off) = off { { " " }{ off }{ " " }{ words::GRAMS } }
                    } else {
                        <span class="unknown">{ crate::words::UNKNOWN }</span>
                    }
                </dd>
                if !notes.is_empty() { <dd class="note">{ notes.join("; ") }</dd> }
            </div>
        }
    };
    html! {
        <section class="carbohydrate" data-test="carbohydrate">
            <h2>{ words::CARBOHYDRATE }</h2>
            if props.on_open.is_some() { <p class="helps"><Help topic={Topic::Carbohydrate} /></p> }
            if !props.serving.trim().is_empty() { <p class="note">{ props.serving.clone() }</p> }
            <dl>
                { row(words::CARBOHYDRATE_ROW, &count.carbohydrate) }
                { row(words::FIBRE_ROW, &count.fibre) }
            </dl>
            <p class="note caution">{ of_table(count.caution) }</p>
        </section>
    }
}
