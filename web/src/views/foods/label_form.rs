//! The figures of a package's Nutrition Facts, in the label's order and as
//! they are printed.

use super::editor::Edit;
use super::words;
use crate::components::NumberField;
use crate::language::of_table;
use crate::page::use_page;
use crate::state::FoodEdit;
use engine::label::{LabelNutrient, LabelTables, Listed};
use engine::own_foods::{Declared, OwnFood, OwnSource, entry};
use engine::units::Grams;
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Which food.
#[derive(Clone, PartialEq, Properties)]
pub struct LabelFormProps {
    /// The food; its source is a label.
    pub food: OwnFood,
    /// How to change it.
    pub edit: Edit,
}

/// The fields.
#[component]
pub fn LabelForm(props: &LabelFormProps) -> Html {
    let page = use_page();
    let label = &page.tables.reference.label;
    let OwnSource::Label {
        serving, declared, ..
    } = &props.food.source
    else {
        return Html::default();
    };
    let is_given = *serving > Grams::ZERO;
    let on_change = props
        .edit
        .reform(|value| FoodEdit::Weight(Grams::new(value)));
    let (always, more): (Vec<_>, Vec<_>) = label
        .nutrients()
        .partition(|row| row.listed == Listed::Always);
    let has_more = |row: &&LabelNutrient| declared.iter().any(|one| one.nutrient == row.nutrient);
    let field = |row: &LabelNutrient| field(row, declared, label, &props.edit);
    html! {
        <fieldset class="label-form">
            <legend>{ words::LABEL }</legend>
            <p class="hint">{ words::LABEL_HINT }</p>
            <NumberField id="food-serving" data_test="food-serving" label={words::SERVING}
                unit={words::GRAMS} value={is_given.then(|| serving.grams())} {on_change} />
            <ul class="label-rows">{ for always.into_iter().map(field) }</ul>
            <details open={more.iter().any(has_more)}>
                <summary>{ words::MORE_ON_LABEL }</summary>
                <ul class="label-rows">{ for more.into_iter().map(field) }</ul>
            </details>
        </fieldset>
    }
}

fn field(row: &LabelNutrient, declared: &[Declared], label: &LabelTables, edit: &Edit) -> Html {
    let nutrient = row.nutrient;
    let figure = declared.iter().find(|one| one.nutrient == nutrient);
    let problem = figure.and_then(|figure| problem(figure, label));
    let oninput = edit.reform(move |event: InputEvent| {
        let text = event.target_unchecked_into::<HtmlInputElement>().value();
        FoodEdit::Printed(nutrient, text)
    });
    let id = format!("label-{}", nutrient.0);
    let problem_id = format!("{id}-problem");
    html! {
        <li key={u32::from(nutrient.0)} class={format!("label-row indent-{}", row.indent)}>
            <label for={id.clone()}>{ of_table(&row.name) }</label>
            <input id={id} type="text" autocomplete="off" data-test="label-figure"
                data-nutrient={nutrient.0.to_string()}
                value={figure.map(|one| one.printed.clone()).unwrap_or_default()} {oninput}
                aria-invalid={problem.is_some().then_some("true")}
                aria-describedby={problem.is_some().then(|| problem_id.clone())} />
            <span class="unit">{ &row.unit }</span>
            if let Some(problem) = problem {
                <span id={problem_id} class="field-problem" role="alert">{ problem }</span>
            }
        </li>
    }
}

/// What is wrong with one figure, whatever else is.
fn problem(figure: &Declared, label: &LabelTables) -> Option<String> {
    let alone = OwnFood {
        number: 0,
        description: String::new(),
        ingredients: String::new(),
        measures: Vec::new(),
        source: OwnSource::Label {
            serving: Grams::new(Decimal::ONE_HUNDRED),
            declared: vec![figure.clone()],
            reference: String::new(),
        },
    };
    let error = entry(&alone, label).err()?;
    Some(words::figure_problem(&error))
}
