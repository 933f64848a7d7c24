//! What the number of servings rests on: a number as entered, or the size of a
//! serving and of the batch; and the measured weight of the finished batch.

mod words;

use super::CardProps;
use crate::components::{MASSES, NumberField, Select, UnitField, VOLUMES};
use crate::format;
use crate::state::RecipeEdit;
use engine::exact::{Digits, round_half_up};
use engine::recipe::ServingSize;
use engine::units::{Grams, Millilitres, VolumeUnit};
use rust_decimal::Decimal;
use yew::prelude::*;

/// By what a serving is sized.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum By {
    Number,
    Weight,
    Volume,
    Count,
}

const WAYS: [By; 4] = [By::Number, By::Weight, By::Volume, By::Count];

fn by(size: Option<ServingSize>) -> By {
    match size {
        None => By::Number,
        Some(ServingSize::Weight { .. }) => By::Weight,
        Some(ServingSize::Volume { .. }) => By::Volume,
        Some(ServingSize::Count { .. }) => By::Count,
    }
}

/// The size with which another way begins: figures to overwrite that leave the
/// number of servings as it is.
fn first_size(way: By, props: &CardProps) -> Option<ServingSize> {
    let analysis = props.study.analysis.as_ref().ok();
    let servings = analysis.map_or(props.recipe.servings, |analysis| analysis.servings);
    match way {
        By::Number => None,
        By::Weight => Some(ServingSize::Weight {
            serving: analysis.map_or(Grams::ZERO, |analysis| {
                Grams::new(round_half_up(analysis.serving_mass().grams(), Digits(0)))
            }),
        }),
        By::Volume => {
            let serving = VolumeUnit::Cup.millilitres();
            let batch = serving * servings.servings();
            Some(ServingSize::Volume { serving, batch })
        }
        By::Count => Some(ServingSize::Count {
            serving: Decimal::ONE,
            batch: servings.servings(),
        }),
    }
}

/// The fields, folded up unless one of them is in use.
#[component]
pub fn Batch(props: &CardProps) -> Html {
    let recipe = &props.recipe;
    let is_used = recipe.serving_size.is_some() || recipe.finished_weight.is_some();
    let way = by(recipe.serving_size);
    let on_way = {
        let props = props.clone();
        Callback::from(move |index: usize| {
            let size = first_size(WAYS[index], &props);
            props.edit.emit(RecipeEdit::ServingSize(size));
        })
    };
    html! {
        <details class="batch" open={is_used} data-test="portion">
            <summary>{ words::TITLE }</summary>
            <p class="fields">
                <Select id="serving-by" data_test="serving-by" label={words::WAY}
                    names={words::WAYS.map(AttrValue::from).to_vec()}
                    chosen={WAYS.iter().position(|one| *one == way)} on_choose={on_way} />
                { size(props) }
            </p>
            if way != By::Number { { makes(props) } }
            { finished(props) }
        </details>
    }
}

fn size(props: &CardProps) -> Html {
    let set = |with: fn(ServingSize, Decimal) -> ServingSize| {
        let size = props.recipe.serving_size;
        props.edit.reform(move |value: Decimal| {
            RecipeEdit::ServingSize(size.map(|size| with(size, value)))
        })
    };
    match props.recipe.serving_size {
        None => Html::default(),
        Some(ServingSize::Weight { serving }) => html! {
            <UnitField id="serving-size" data_test="serving-size" label={words::SERVING} units={MASSES}
                value={Some(serving.grams())} on_change={set(with_serving)} />
        },
        Some(ServingSize::Volume { serving, batch }) => html! {<>
            <UnitField id="serving-size" data_test="serving-size" label={words::SERVING} units={VOLUMES}
                value={Some(serving.millilitres())} on_change={set(with_serving)} />
            <UnitField id="batch-size" data_test="batch-size" label={words::BATCH} units={VOLUMES}
                value={Some(batch.millilitres())} on_change={set(with_batch)} />
        </>},
        Some(ServingSize::Count { serving, batch }) => html! {<>
            <NumberField id="serving-size" data_test="serving-size" label={words::SERVING}
                unit={words::PIECES} value={Some(serving)} on_change={set(with_serving)} />
            <NumberField id="batch-size" data_test="batch-size" label={words::BATCH}
                unit={words::PIECES} value={Some(batch)} on_change={set(with_batch)} />
        </>},
    }
}

fn with_serving(size: ServingSize, value: Decimal) -> ServingSize {
    match size {
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
    }
}

fn with_batch(size: ServingSize, value: Decimal) -> ServingSize {
    match size {
        ServingSize::Weight { .. } => size,
        ServingSize::Volume { serving, .. } => ServingSize::Volume {
            serving,
            batch: Millilitres::new(value),
        },
        ServingSize::Count { serving, .. } => ServingSize::Count {
            serving,
            batch: value,
        },
    }
}

/// The number of servings that follows.
fn makes(props: &CardProps) -> Html {
    match &props.study.analysis {
        Ok(analysis) => html! {
            <p data-test="makes">
                { words::makes(&format::short(analysis.servings.servings(), Digits(2))) }
            </p>
        },
        Err(problem) => html! {
            <p class="problem" role="alert">
                { super::phrases::sentence(&crate::named::study(problem)) }
            </p>
        },
    }
}

fn finished(props: &CardProps) -> Html {
    let edit = |weight: Option<Grams>| RecipeEdit::FinishedWeight(weight);
    let sum = (!props.study.batch_weight_measured).then(|| format::grams(props.study.batch_weight));
    html! {
        <p class="fields">
            <UnitField id="finished-weight" data_test="finished-weight" label={words::FINISHED}
                units={MASSES} value={props.recipe.finished_weight.map(Grams::grams)}
                on_change={props.edit.reform(move |value| edit(Some(Grams::new(value))))}
                on_clear={props.edit.reform(move |()| edit(None))} />
            <span class="note">{ words::finished_hint(sum.as_deref(), by(props.recipe.serving_size) == By::Weight) }</span>
        </p>
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_size_changes_and_the_other_stays() {
        let dec = Decimal::from;
        let pieces = |serving, batch| ServingSize::Count {
            serving: dec(serving),
            batch: dec(batch),
        };
        assert_eq!(with_serving(pieces(1, 48), dec(2)), pieces(2, 48));
        assert_eq!(with_batch(pieces(1, 48), dec(60)), pieces(1, 60));
        let weight = ServingSize::Weight {
            serving: Grams::new(dec(100)),
        };
        assert_eq!(with_batch(weight, dec(7)), weight);
        assert_eq!(by(Some(weight)), By::Weight);
    }
}
