//! How sure the figures are, and where each comes from.

mod carbohydrate;
mod part;
mod slip;
mod words;

pub use carbohydrate::Carbohydrate;
pub use slip::OriginSlip;
pub use words::SLIP_HINT;

use crate::evidence::EvidenceState;
use crate::format;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::exact::Digits;
use engine::foods::NutrientId;
use engine::reference::ServingAmount;
use engine::uncertainty::Uncertainty;
use std::collections::BTreeMap;
use std::rc::Rc;
use yew::prelude::*;

/// The amounts of all nutrients in a serving, by nutrient.
pub type Amounts = BTreeMap<NutrientId, ServingAmount>;

/// The amounts of a serving with their uncertainty, found out once for each
/// study; empty where the recipe has no totals.
#[hook]
pub fn use_amounts(study: &StudiedRecipe) -> Rc<Amounts> {
    let page = use_page();
    let is_sure = page.tables.reference.evidence.is_some();
    use_memo((study.clone(), is_sure), move |(study, _)| {
        let reference = &page.tables.reference;
        let nutrients = reference.foods.nutrients().iter();
        nutrients
            .filter_map(|nutrient| {
                let amount = reference.serving_amount(study, nutrient.id)?;
                Some((nutrient.id, amount))
            })
            .collect()
    })
}

/// The uncertainty of a figure of which something is known and which may be
/// off at all.
fn uncertainty(amount: &ServingAmount) -> Option<Uncertainty> {
    let is_known = !amount.amount.known_mass.grams().is_zero();
    amount
        .uncertainty
        .filter(|uncertainty| is_known && !uncertainty.standard.is_zero())
}

/// How far a figure may be off: "± 14", "± at least 14".
pub fn plus_minus(amount: &ServingAmount, digits: Digits) -> Option<String> {
    let uncertainty = uncertainty(amount)?;
    let printed = format::plus_minus(uncertainty.expanded(), digits);
    Some(match uncertainty.at_least {
        true => printed.replacen('±', &words::PLUS_MINUS_AT_LEAST.to_string(), 1),
        false => printed,
    })
}

/// What the uncertainty of a figure rests on.
pub fn rests_on(amount: &ServingAmount) -> Option<String> {
    uncertainty(amount).map(|uncertainty| words::rests_on(uncertainty.assumed))
}

/// How much of the uncertainty is assumed, in as few words as a table has room
/// for.
pub fn assumed(amount: &ServingAmount) -> Option<String> {
    uncertainty(amount).map(|uncertainty| words::assumed(uncertainty.assumed))
}

/// Why it cannot be said how sure the figures are, with a way to try again.
#[component]
pub fn Missing() -> Html {
    let page = use_page();
    let again = {
        let evidence = page.evidence.clone();
        Callback::from(move |_: MouseEvent| evidence.ask())
    };
    match &page.evidence.state {
        EvidenceState::Done => Html::default(),
        EvidenceState::Unasked | EvidenceState::Going => {
            html! { <p class="hint" role="status">{ words::GOING }</p> }
        }
        EvidenceState::Failed(problem) => html! {
            <p class="problem" role="status" data-test="sureness-problem">
                { words::failed(problem) }{ " " }
                <button type="button" data-test="sureness-again" onclick={again}>
                    { crate::words::TRY_AGAIN }
                </button>
            </p>
        },
    }
}
