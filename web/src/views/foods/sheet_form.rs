//! The values of a specification sheet or a food table, for a given weight.

use super::editor::Edit;
use super::words;
use crate::components::NumberField;
use crate::named;
use crate::page::use_page;
use crate::state::FoodEdit;
use engine::foods::Nutrient;
use engine::own_foods::{OwnFood, OwnSource, Stated};
use engine::units::Grams;
use yew::prelude::*;

/// Which food.
#[derive(Clone, PartialEq, Properties)]
pub struct SheetFormProps {
    /// The food; its source has values.
    pub food: OwnFood,
    /// How to change it.
    pub edit: Edit,
}

/// The fields: first the nutrients that a label has too, then all others.
#[component]
pub fn SheetForm(props: &SheetFormProps) -> Html {
    let page = use_page();
    let OwnSource::Values { per, values, .. } = &props.food.source else {
        return Html::default();
    };
    let on_change = props
        .edit
        .reform(|value| FoodEdit::Weight(Grams::new(value)));
    let reference = &page.tables.reference;
    let nutrients = reference.foods.nutrients();
    let of_label: Vec<&Nutrient> = reference
        .label
        .nutrients()
        .filter_map(|row| reference.foods.nutrient(row.nutrient))
        .collect();
    let others: Vec<&Nutrient> = nutrients
        .iter()
        .filter(|nutrient| of_label.iter().all(|other| other.id != nutrient.id))
        .collect();
    let is_stated = |nutrient: &&Nutrient| values.iter().any(|one| one.nutrient == nutrient.id);
    let open = others.iter().any(is_stated);
    let field = |nutrient: &Nutrient| field(nutrient, values, &props.edit);
    html! {
        <fieldset class="label-form">
            <legend>{ words::SHEET }</legend>
            <p class="hint">{ words::SHEET_HINT }</p>
            <NumberField id="food-per" data_test="food-per" label={words::PER}
                unit={words::GRAMS} value={Some(per.grams())} {on_change} />
            <ul class="label-rows">{ for of_label.into_iter().map(field) }</ul>
            <details {open}>
                <summary>{ words::MORE_ON_SHEET }</summary>
                <ul class="label-rows">{ for others.into_iter().map(field) }</ul>
            </details>
        </fieldset>
    }
}

fn field(nutrient: &Nutrient, values: &[Stated], edit: &Edit) -> Html {
    let id = nutrient.id;
    let value = values.iter().find(|one| one.nutrient == id);
    html! {
        <li key={u32::from(id.0)} class="label-row">
            <NumberField id={format!("sheet-{}", id.0)} data_test="sheet-figure"
                label={named::nutrient(nutrient)} unit={named::unit(&nutrient.unit)}
                value={value.map(|one| one.amount)}
                on_change={edit.reform(move |amount| FoodEdit::Amount(id, Some(amount)))}
                on_clear={edit.reform(move |()| FoodEdit::Amount(id, None))} />
        </li>
    }
}
