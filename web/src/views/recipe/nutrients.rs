//! All nutrients: per serving, per 100 g, in the whole recipe, and for how
//! much of the weight they are known.

use super::words;
use crate::format;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::analysis::RecipeAnalysis;
use engine::exact::PartialSum;
use engine::foods::{Nutrient, NutrientId};
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct NutrientsProps {
    /// What is found out about the recipe.
    pub study: StudiedRecipe,
    /// Told of the nutrient whose carriers are wanted.
    pub on_choose: Callback<NutrientId>,
}

/// The table.
#[component]
pub fn Nutrients(props: &NutrientsProps) -> Html {
    let page = use_page();
    let Ok(analysis) = &props.study.analysis else {
        return Html::default();
    };
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    html! {
        <section class="nutrients" aria-labelledby="nutrients">
            <h2 id="nutrients">{ words::NUTRIENTS }</h2>
            <p class="hint">{ words::NUTRIENTS_HINT }</p>
            <div class="scroll" tabindex="0" role="region" aria-label={words::NUTRIENT_TABLE}>
                <table data-test="nutrients">
                    <thead><tr>
                        <th scope="col">{ words::NUTRIENT }</th>
                        <th scope="col" class="number">{ words::PER_SERVING }</th>
                        <th scope="col" class="number">{ words::PER_100_G }</th>
                        <th scope="col" class="number">{ words::WHOLE }</th>
                        <th scope="col" class="unit">{ words::UNIT }</th>
                        <th scope="col" class="number">{ words::KNOWN_FOR }</th>
                    </tr></thead>
                    <tbody>
                        { for page.tables.reference.foods.nutrients().iter().map(|nutrient| {
                            row(analysis, nutrient, &props.on_choose)
                        }) }
                    </tbody>
                </table>
            </div>
        </section>
    }
}

fn row(analysis: &RecipeAnalysis, nutrient: &Nutrient, choose: &Callback<NutrientId>) -> Html {
    let id = nutrient.id;
    let cell = |sum: Option<PartialSum>| {
        let figure = sum.and_then(|sum| format::known(&sum, nutrient.decimals));
        let is_known = figure.is_some();
        html! {
            <td class={classes!("number", (!is_known).then_some("unknown"))}>
                { figure.unwrap_or_else(|| words::UNKNOWN.to_owned()) }
            </td>
        }
    };
    let coverage = analysis
        .total(id)
        .map(PartialSum::coverage)
        .unwrap_or_default();
    let onclick = {
        let choose = choose.clone();
        Callback::from(move |_| choose.emit(id))
    };
    html! {
        <tr key={u32::from(id.0)} data-nutrient={id.0.to_string()}>
            <th scope="row">
                <button type="button" class="as-text" {onclick}>{ &nutrient.name }</button>
            </th>
            { cell(analysis.per_serving(id)) }
            { cell(analysis.per_100_g(id)) }
            { cell(analysis.total(id).copied()) }
            <td class="unit">{ &nutrient.unit }</td>
            <td class="number">{ format::percent_known(coverage) }{ " %" }</td>
        </tr>
    }
}
