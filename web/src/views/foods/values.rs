//! A food's values per 100 g: with the interval for which a label's figure
//! stands, or with what the dataset says of how it was found.

use super::words;
use crate::format;
use crate::language::in_english;
use crate::named;
use crate::page::{Page, use_page};
use engine::foods::{FoodId, Nutrient};
use yew::prelude::*;

/// Which food.
#[derive(Clone, PartialEq, Properties)]
pub struct ValuesProps {
    /// The food.
    pub id: FoodId,
}

/// The table.
#[component]
pub fn Values(props: &ValuesProps) -> Html {
    let page = use_page();
    let is_own = matches!(props.id, FoodId::Own(_));
    let evidence = page.tables.reference.evidence.as_ref();
    let notes = evidence.map(|evidence| evidence.provenance().footnotes(props.id));
    let last_column = match (is_own, evidence.is_some()) {
        (true, _) => Some(words::INTERVAL),
        (false, true) => Some(words::PROVENANCE),
        (false, false) => None,
    };
    // A label is silent on most nutrients: they are named in one sentence.
    let is_shown = |nutrient: &&Nutrient| !is_own || has_value(&page, props.id, nutrient);
    let (shown, missing): (Vec<_>, Vec<_>) = page
        .tables
        .reference
        .foods
        .nutrients()
        .iter()
        .partition(is_shown);
    html! {
        <section class="nutrients food-values" aria-labelledby="values">
            <h2 id="values">{ words::VALUES }</h2>
            <p class="hint">{ if is_own { words::OWN_VALUES_HINT } else { words::VALUES_HINT } }</p>
            <table data-test="food-values">
                <thead><tr>
                    <th scope="col">{ words::NUTRIENT }</th>
                    <th scope="col" class="number">{ words::PER_100_G }</th>
                    <th scope="col" class="unit">{ words::UNIT }</th>
                    if let Some(title) = last_column { <th scope="col">{ title }</th> }
                </tr></thead>
                <tbody>
                    { for shown.into_iter().map(|nutrient| {
                        row(&page, props.id, nutrient, last_column.is_some())
                    }) }
                </tbody>
            </table>
            if !missing.is_empty() {
                <p class="note" data-test="no-values">{ words::no_value_for(&missing) }</p>
            }
            { for notes.into_iter().flatten().map(|note| html! { <p class="note">{ in_english(note) }</p> }) }
        </section>
    }
}

fn has_value(page: &Page, food: FoodId, nutrient: &Nutrient) -> bool {
    let foods = &page.tables.reference.foods;
    foods.per_100_g(food, nutrient.id).is_some()
}

fn row(page: &Page, food: FoodId, nutrient: &Nutrient, has_last: bool) -> Html {
    let value = page.tables.reference.foods.per_100_g(food, nutrient.id);
    let figure = value.map(|value| format::number(value, nutrient.decimals));
    let is_known = figure.is_some();
    html! {
        <tr data-nutrient={nutrient.id.0.to_string()}>
            <th scope="row">{ named::nutrient(nutrient) }</th>
            <td class={classes!("number", (!is_known).then_some("unknown"))}>
                { figure.unwrap_or_else(|| words::NO_VALUE.to_string()) }
            </td>
            <td class="unit">{ named::unit(&nutrient.unit) }</td>
            if has_last { <td class="note">{ behind(page, food, nutrient) }</td> }
        </tr>
    }
}

/// What stands behind a value.
fn behind(page: &Page, food: FoodId, nutrient: &Nutrient) -> String {
    let reference = &page.tables.reference;
    if let Some((low, high)) = reference.foods.interval_per_100_g(food, nutrient.id) {
        let print = |value| format::number(value, nutrient.decimals);
        return if low == high {
            words::AS_STATED.to_string()
        } else {
            words::between(&print(low), &print(high))
        };
    }
    let evidence = reference.evidence.as_ref();
    let source = evidence.and_then(|one| one.provenance().value_source(food, nutrient.id));
    source.map_or_else(String::new, |source| words::provenance(&source))
}
