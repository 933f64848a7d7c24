//! The batch and how servings are taken from it.

use super::{CardProps, Edit, words};
use crate::components::{NumberField, Select};
use crate::format;
use crate::state::RecipeEdit;
use engine::exact::Digits;
use engine::recipe::{Recipe, ServingSize};
use engine::units::{Grams, Millilitres};
use rust_decimal::Decimal;
use yew::prelude::*;

/// The fields, folded up unless one of them is used.
#[component]
pub fn Portion(props: &CardProps) -> Html {
    let recipe = &props.recipe;
    let is_used = recipe.finished_weight.is_some() || recipe.serving_size.is_some();
    let weight = |weight: Option<Grams>| RecipeEdit::FinishedWeight(weight);
    let on_choose = {
        let (edit, recipe) = (props.edit.clone(), recipe.clone());
        Callback::from(move |index: usize| {
            let size = first_size(index, &recipe);
            edit.emit(RecipeEdit::ServingSize(size));
        })
    };
    let batch = format::number(props.study.batch_weight.grams(), Digits(0));
    html! {
        <details class="portion" open={is_used} data-test="portion">
            <summary>{ words::PORTION }</summary>
            <NumberField id="finished-weight" label={words::FINISHED_WEIGHT} unit={words::GRAMS}
                value={recipe.finished_weight.map(Grams::grams)}
                on_change={props.edit.reform(move |value| weight(Some(Grams::new(value))))}
                on_clear={props.edit.reform(move |()| weight(None))} />
            if recipe.finished_weight.is_none() {
                <p class="hint">{ words::ingredients_weigh(&batch) }</p>
            }
            <Select id="serving-by" label={words::SERVINGS_FOLLOW}
                names={vec![
                    words::AS_STATED.into(), words::BY_WEIGHT.into(),
                    words::BY_VOLUME.into(), words::BY_COUNT.into(),
                ]}
                chosen={Some(kind_of(recipe.serving_size))} {on_choose} />
            { size_fields(recipe, &props.edit) }
            if let (Some(_), Ok(analysis)) = (recipe.serving_size, &props.study.analysis) {
                <p class="hint" data-test="makes">
                    { words::makes(&format::number(analysis.servings.servings(), Digits(1))) }
                </p>
            }
        </details>
    }
}

/// Index of the way in which servings are counted.
fn kind_of(size: Option<ServingSize>) -> usize {
    match size {
        None => 0,
        Some(ServingSize::Weight { .. }) => 1,
        Some(ServingSize::Volume { .. }) => 2,
        Some(ServingSize::Count { .. }) => 3,
    }
}

/// A size to start from: one of as many as the recipe says that it makes.
fn first_size(kind: usize, recipe: &Recipe) -> Option<ServingSize> {
    match kind {
        1 => Some(ServingSize::Weight {
            serving: Grams::ZERO,
        }),
        2 => Some(ServingSize::Volume {
            serving: Millilitres::ZERO,
            batch: Millilitres::ZERO,
        }),
        3 => Some(ServingSize::Count {
            serving: Decimal::ONE,
            batch: recipe.servings.servings(),
        }),
        _ => None,
    }
}

fn size_fields(recipe: &Recipe, edit: &Edit) -> Html {
    let set = |with: fn(Decimal, ServingSize) -> ServingSize| {
        let size = recipe.serving_size;
        edit.reform(move |value| RecipeEdit::ServingSize(size.map(|size| with(value, size))))
    };
    let (serving, batch, unit) = match recipe.serving_size {
        None => return Html::default(),
        Some(ServingSize::Weight { serving }) => (serving.grams(), None, words::GRAMS),
        Some(ServingSize::Volume { serving, batch }) => (
            serving.millilitres(),
            Some(batch.millilitres()),
            words::MILLILITRES,
        ),
        Some(ServingSize::Count { serving, batch }) => (serving, Some(batch), words::PIECES),
    };
    let set_serving = set(|value, size| match size {
        ServingSize::Weight { .. } => ServingSize::Weight {
            serving: Grams::new(value),
        },
        ServingSize::Volume { batch, .. } => ServingSize::Volume {
            serving: Millilitres::new(value),
            batch,
        },
        ServingSize::Count { batch, .. } => ServingSize::Count {
            serving: value,
            batch,
        },
    });
    let set_batch = set(|value, size| match size {
        ServingSize::Weight { .. } => size,
        ServingSize::Volume { serving, .. } => ServingSize::Volume {
            serving,
            batch: Millilitres::new(value),
        },
        ServingSize::Count { serving, .. } => ServingSize::Count {
            serving,
            batch: value,
        },
    });
    html! {<>
        <NumberField id="serving-size" label={words::ONE_SERVING} {unit} value={Some(serving)}
            on_change={set_serving} />
        if let Some(batch) = batch {
            <NumberField id="batch-size" label={words::WHOLE_BATCH} {unit} value={Some(batch)}
                on_change={set_batch} />
        }
    </>}
}
