//! How a line is treated: what the weight means, whether it is cooked, what
//! drains or fries away.

use super::cooked::Cooked;
use super::correction::{Change, Correct};
use super::words;
use crate::components::Select;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::recipe::Correction;
use engine::yields::{AmountBasis, Treatment, TreatmentId, TrimRoute};
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Which line.
#[derive(Clone, PartialEq, Properties)]
pub struct TreatProps {
    /// What is found out about the recipe.
    pub study: StudiedRecipe,
    /// Index of the line.
    pub line: usize,
    /// What has been set right.
    pub correction: Correction,
    /// How to set it right.
    pub correct: Correct,
}

/// The choices, folded up unless one of them was made.
#[component]
pub fn Treat(props: &TreatProps) -> Html {
    let page = use_page();
    let Some(line) = props.study.lines.get(props.line) else {
        return Html::default();
    };
    let foods = &page.tables.reference.foods;
    let takes_off = line
        .edible
        .as_ref()
        .is_some_and(|edible| edible.route != TrimRoute::Nothing);
    let refuse = line
        .read
        .food
        .and_then(|food| foods.food(food))
        .and_then(|food| food.refuse_percent)
        .filter(|percent| *percent > 0);
    let correction = &props.correction;
    let is_used = correction.basis.is_some()
        || correction.cooked.is_some()
        || !correction.treatments.is_empty();
    html! {
        <details open={is_used} data-test="treat">
            <summary>{ words::TREAT }</summary>
            if refuse.is_some() || takes_off || correction.basis.is_some() {
                { basis(props, refuse) }
            }
            if line.read.food.is_some() {
                <Cooked offers={line.can_be_cooked.clone()} retained={line.retained.clone()}
                    correction={correction.clone()}
                    correct={props.correct.clone()} />
            }
            <fieldset>
                <legend class="note">{ words::LOSSES }</legend>
                { for treatments(page.tables.reference.treatments.rows()).map(|treatment| {
                    check(props, treatment)
                }) }
            </fieldset>
        </details>
    }
}

const BASES: [Option<AmountBasis>; 3] = [
    None,
    Some(AmountBasis::AsPurchased),
    Some(AmountBasis::EdiblePortion),
];

fn basis(props: &TreatProps, refuse_percent: Option<u8>) -> Html {
    let names: Vec<AttrValue> = vec![
        words::BASIS_BY_WORDS.into(),
        words::as_purchased(refuse_percent).into(),
        words::EDIBLE.into(),
    ];
    let on_choose = props.correct.reform(|index: usize| -> Change {
        Box::new(move |correction| correction.basis = BASES[index])
    });
    let chosen = BASES
        .iter()
        .position(|basis| *basis == props.correction.basis);
    html! { <Select id="correction-basis" data_test="correction-basis" label={words::BASIS} {names} {chosen} {on_choose} /> }
}

/// Each treatment once; several rows may have one id.
fn treatments(rows: &[Treatment]) -> impl Iterator<Item = &Treatment> {
    rows.iter().enumerate().filter_map(|(index, row)| {
        let is_first = rows[..index].iter().all(|other| other.id != row.id);
        is_first.then_some(row)
    })
}

fn check(props: &TreatProps, treatment: &Treatment) -> Html {
    let id: TreatmentId = treatment.id.clone();
    let field = format!("treat-{}", id.0);
    let is_on = props.correction.treatments.contains(&id);
    let onchange = props.correct.reform(move |event: Event| -> Change {
        let on = event.target_unchecked_into::<HtmlInputElement>().checked();
        let id = id.clone();
        Box::new(move |correction| {
            correction.treatments.retain(|other| *other != id);
            if on {
                correction.treatments.push(id);
            }
        })
    });
    html! {
        <p class="check">
            <input id={field.clone()} type="checkbox" checked={is_on} {onchange} />
            <label for={field}>{ words::treatment(treatment) }</label>
        </p>
    }
}
