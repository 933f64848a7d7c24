//! Which line carries how much of a nutrient: a table whose shares are also
//! drawn as bars.

use super::swaps::SwapWay;
use super::words;
use crate::components::{Bar, Select};
use crate::format;
use crate::named;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::analysis::{Contribution, contributions};
use engine::foods::NutrientId;
use engine::recipe::Recipe;
use std::cmp::Reverse;
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct CarriersProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// The nutrient.
    pub nutrient: NutrientId,
    /// Told of another one.
    pub on_choose: Callback<NutrientId>,
}

/// The table.
#[component]
pub fn Carriers(props: &CarriersProps) -> Html {
    let page = use_page();
    let foods = &page.tables.reference.foods;
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    let nutrients = foods.nutrients();
    let names: Vec<AttrValue> = nutrients
        .iter()
        .map(|n| named::nutrient(n).into())
        .collect();
    let chosen = nutrients.iter().position(|n| n.id == props.nutrient);
    let ids: Vec<NutrientId> = nutrients.iter().map(|n| n.id).collect();
    let on_choose = props.on_choose.reform(move |index: usize| ids[index]);
    let mut parts = contributions(foods, &props.study.parts, props.nutrient);
    // Largest first; lines of which nothing is known come last.
    parts.sort_by_key(|part| Reverse(part.amount));
    html! {
        <section class="carriers" aria-labelledby="carriers">
            <h2 id="carriers" tabindex="-1">{ words::CARRIERS }</h2>
            <Select id="carrier-nutrient" label={words::CARRIERS_NUTRIENT} hide_label={true}
                {names} {chosen} {on_choose} />
            <table class="bars" data-test="carriers">
                <thead class="for-readers"><tr>
                    <th scope="col">{ words::LINE }</th>
                    <th scope="col">{ words::AMOUNT }</th>
                    <th scope="col">{ words::SHARE }</th>
                </tr></thead>
                <tbody>{ for parts.iter().map(|part| {
                    row(props, part, chosen.map(|index| &nutrients[index]))
                }) }</tbody>
            </table>
        </section>
    }
}

fn row(
    props: &CarriersProps,
    part: &Contribution,
    nutrient: Option<&engine::foods::Nutrient>,
) -> Html {
    let text = props
        .recipe
        .lines
        .get(part.line)
        .map(|line| line.text.clone());
    let share = part.share.map(format::percent);
    html! {
        <tr>
            <th scope="row">
                { text.clone() }
                { " " }
                <SwapWay recipe={props.recipe.id.clone()} line={part.line}
                    text={text.unwrap_or_default()} />
                if let Some(share) = &share { <Bar percent={share.clone()} /> }
            </th>
            <td class="number">
                if let (Some(amount), Some(nutrient)) = (part.amount, nutrient) {
                    { format::number(amount, nutrient.decimals) }{ " " }{ named::unit(&nutrient.unit) }
                } else {
                    <span class="unknown">{ words::UNKNOWN }</span>
                }
            </td>
            <td class="number">if let Some(share) = &share { { share }{ " %" } }</td>
        </tr>
    }
}
