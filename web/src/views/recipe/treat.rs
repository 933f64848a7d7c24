//! How a line is treated: what the weight means, whether it is cooked, what
//! drains or fries away.

use super::correction::{Change, Correct};
use super::{phrases, words};
use crate::components::Select;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::foods::FoodTable;
use engine::recipe::{CookedAs, Correction};
use engine::yields::{AmountBasis, CookedYield, Treatment, TreatmentId};
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
            if let Some(percent) = refuse { { basis(props, percent) } }
            if !line.can_be_cooked.is_empty() { { cooked(props, foods, &line.can_be_cooked) } }
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

fn basis(props: &TreatProps, refuse_percent: u8) -> Html {
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
    html! { <Select id="correction-basis" label={words::BASIS} {names} {chosen} {on_choose} /> }
}

fn cooked(props: &TreatProps, foods: &FoodTable, offers: &[CookedYield]) -> Html {
    let described = offers.iter().map(|offer| {
        let food = foods.food(offer.cooked);
        let name = food.map_or_else(|| offer.cooked.to_string(), |food| food.description.clone());
        AttrValue::from(words::cooked_as(&name, &phrases::yield_route(&offer.route)))
    });
    let names: Vec<AttrValue> = std::iter::once(words::NOT_COOKED.into())
        .chain(described)
        .collect();
    let choices: Vec<_> = std::iter::once(None)
        .chain(offers.iter().map(|offer| Some(offer.cooked)))
        .collect();
    let chosen_food = props.correction.cooked.as_ref().map(|cooked| cooked.food);
    let chosen = choices.iter().position(|food| *food == chosen_food);
    let on_choose = props.correct.reform(move |index: usize| -> Change {
        let cooked = choices[index].map(|food| CookedAs { food, weight: None });
        Box::new(move |correction| correction.cooked = cooked)
    });
    html! { <Select id="correction-cooked" label={words::COOKED} {names} {chosen} {on_choose} /> }
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
