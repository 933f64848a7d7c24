//! Household measures of an own food, by which recipe lines are weighed.

use super::editor::Edit;
use super::words;
use crate::components::NumberField;
use crate::state::FoodEdit;
use engine::own_foods::OwnMeasure;
use engine::units::Grams;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The measures of one food.
#[derive(Clone, PartialEq, Properties)]
pub struct MeasuresProps {
    /// The measures.
    pub measures: Vec<OwnMeasure>,
    /// How to change the food.
    pub edit: Edit,
}

/// The fields.
#[component]
pub fn Measures(props: &MeasuresProps) -> Html {
    let add = props.edit.reform(|_: MouseEvent| FoodEdit::AddMeasure);
    html! {
        <fieldset class="own-measures">
            <legend>{ words::MEASURES }</legend>
            <p class="hint">{ words::MEASURES_HINT }</p>
            <ul>{ for props.measures.iter().enumerate().map(|(at, one)| row(at, one, &props.edit)) }</ul>
            <button type="button" id="add-measure" class="quiet" onclick={add}>
                { words::ADD_MEASURE }
            </button>
        </fieldset>
    }
}

fn row(at: usize, measure: &OwnMeasure, edit: &Edit) -> Html {
    let amount = {
        let measure = measure.clone();
        edit.reform(move |amount| {
            FoodEdit::Measure(
                at,
                OwnMeasure {
                    amount,
                    ..measure.clone()
                },
            )
        })
    };
    let grams = {
        let measure = measure.clone();
        edit.reform(move |grams| {
            FoodEdit::Measure(
                at,
                OwnMeasure {
                    grams: Grams::new(grams),
                    ..measure.clone()
                },
            )
        })
    };
    let named = {
        let measure = measure.clone();
        edit.reform(move |event: InputEvent| {
            let words = event.target_unchecked_into::<HtmlInputElement>().value();
            FoodEdit::Measure(
                at,
                OwnMeasure {
                    words,
                    ..measure.clone()
                },
            )
        })
    };
    let remove = edit.reform(move |_: MouseEvent| FoodEdit::RemoveMeasure(at));
    let (number, weighs) = (words::nth_measure(at + 1), measure.grams > Grams::ZERO);
    html! {
        <li key={at} class="own-measure" data-test="own-measure">
            <NumberField id={format!("measure-{at}-amount")} hide_label={true}
                label={words::of(words::AMOUNT, &number)} value={Some(measure.amount)}
                on_change={amount} />
            <input type="text" autocomplete="off" aria-label={words::of(words::MEASURE_WORDS, &number)}
                placeholder={words::MEASURE_EXAMPLE} value={measure.words.clone()} oninput={named} />
            <NumberField id={format!("measure-{at}-grams")} hide_label={true} unit={words::GRAMS}
                label={words::of(words::WEIGHT, &number)}
                value={weighs.then(|| measure.grams.grams())} on_change={grams} />
            <button type="button" class="quiet small" onclick={remove}
                aria-label={words::of(words::REMOVE_MEASURE, &number)}>{ "×" }</button>
        </li>
    }
}
