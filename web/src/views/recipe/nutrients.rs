//! All nutrients: per serving with its uncertainty, per 100 g, in the whole
//! recipe, and for how much of the weight they are known.

use super::sure::{self, Amounts};
use super::words;
use crate::components::{Help, Topic};
use crate::format;
use crate::named;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::analysis::RecipeAnalysis;
use engine::exact::PartialSum;
use engine::foods::{Nutrient, NutrientId};
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct NutrientsProps {
    /// What is found out about the recipe.
    pub study: StudiedRecipe,
    /// The amounts of a serving with their uncertainty.
    pub amounts: Rc<Amounts>,
    /// Told of the nutrient whose carriers are wanted.
    pub on_choose: Callback<NutrientId>,
    /// Told of the nutrient whose origin is wanted.
    pub on_open: Callback<NutrientId>,
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
            <p class="helps"><Help topic={Topic::Nutrients} /></p>
            <p class="hint">{ words::NUTRIENTS_HINT }{ " " }{ sure::SLIP_HINT }</p>
            <sure::Missing />
            <div class="scroll" tabindex="0" role="region" aria-label={words::NUTRIENT_TABLE}>
                <table data-test="nutrients">
                    <thead><tr>
                        <th scope="col">{ words::NUTRIENT }</th>
                        <th scope="col" class="number">{ words::PER_SERVING }</th>
                        <th scope="col">{ words::PLUS_MINUS }{ " " }<Help topic={Topic::PlusMinus} /></th>
                        <th scope="col" class="number">{ words::PER_100_G }</th>
                        <th scope="col" class="number">{ words::WHOLE }</th>
                        <th scope="col" class="unit">{ words::UNIT }</th>
                        <th scope="col" class="number">{ words::KNOWN_FOR }{ " " }<Help topic={Topic::Coverage} /></th>
                        <th scope="col" class="assumed">{ words::ERRORS_ASSUMED }</th>
                    </tr></thead>
                    <tbody>
                        { for page.tables.reference.foods.nutrients().iter().map(|nutrient| {
                            row(props, analysis, nutrient)
                        }) }
                    </tbody>
                </table>
            </div>
        </section>
    }
}

fn row(props: &NutrientsProps, analysis: &RecipeAnalysis, nutrient: &Nutrient) -> Html {
    let id = nutrient.id;
    let figure = |sum: Option<PartialSum>| {
        let figure = sum.and_then(|sum| format::known(&sum, nutrient.decimals));
        let class = classes!("number", figure.is_none().then_some("unknown"));
        (class, figure.unwrap_or_else(|| words::UNKNOWN.to_string()))
    };
    let cell = |sum: Option<PartialSum>| {
        let (class, figure) = figure(sum);
        html! { <td {class}>{ figure }</td> }
    };
    let amount = props.amounts.get(&id);
    let off = amount.and_then(|amount| sure::plus_minus(amount, nutrient.decimals));
    let assumed = amount.and_then(sure::assumed);
    let (class, per_serving) = figure(analysis.per_serving(id));
    let coverage = analysis
        .total(id)
        .map(PartialSum::coverage)
        .unwrap_or_default();
    let onclick = props.on_choose.reform(move |_: MouseEvent| id);
    let open = props.on_open.reform(move |_: MouseEvent| id);
    html! {
        <tr key={u32::from(id.0)} data-nutrient={id.0.to_string()}>
            <th scope="row">
                <button type="button" class="as-text" {onclick}>{ named::nutrient(nutrient) }</button>
            </th>
            <td {class}>
                <button type="button" class="as-text" data-test="open-origin"
                    title={words::open_origin(&named::nutrient(nutrient))} onclick={open}>{ per_serving }</button>
            </td>
            <td class="off" data-test="plus-minus">{ off }</td>
            { cell(analysis.per_100_g(id)) }
            { cell(analysis.total(id).copied()) }
            <td class="unit">{ named::unit(&nutrient.unit) }</td>
            <td class="number">{ format::percent_known(coverage) }{ " %" }</td>
            <td class="assumed">{ assumed }</td>
        </tr>
    }
}
