//! How a line that is weighed raw counts once it is cooked: an entry that the
//! tables or the dataset lead to, or any other that was weighed after cooking.

use super::correction::{Change, Correct, food_picks};
use super::{phrases, words};
use crate::components::{MASSES, Picker, Select, UnitField};
use crate::format;
use crate::language::lang_of_food;
use crate::named;
use crate::page::use_page;
use engine::exact::Digits;
use engine::foods::{FoodId, FoodTable};
use engine::recipe::{CookedAs, Correction};
use engine::reference::Retained;
use engine::units::Grams;
use engine::yields::CookedYield;
use rust_decimal::Decimal;
use yew::prelude::*;

/// Which line.
#[derive(Clone, PartialEq, Properties)]
pub struct CookedProps {
    /// What the tables and the dataset offer.
    pub offers: Vec<CookedYield>,
    /// What stays through cooking, by the entries that are chosen.
    pub retained: Vec<Retained>,
    /// What has been set right.
    pub correction: Correction,
    /// How to set it right.
    pub correct: Correct,
}

/// The choice, and the measured weight once something is chosen.
#[component]
pub fn Cooked(props: &CookedProps) -> Html {
    let page = use_page();
    let looks_for_other = use_state(|| false);
    let search = use_callback(page.clone(), |typed: String, page| food_picks(page, &typed));
    let foods = &page.tables.reference.foods;
    let cooked = props.correction.cooked.as_ref();
    let entries: Vec<FoodId> = props.offers.iter().map(|offer| offer.cooked).collect();
    let other = entries.len() + 1;
    // An option takes no marks inside it: most of its text is the food's name.
    let langs = std::iter::once(None)
        .chain(entries.iter().map(|entry| lang_of_food(*entry)))
        .collect::<Vec<_>>();
    let chosen = match cooked {
        _ if *looks_for_other => other,
        None => 0,
        Some(cooked) => entries
            .iter()
            .position(|entry| *entry == cooked.food)
            .map_or(other, |index| index + 1),
    };
    let on_choose = {
        let (looks_for_other, correct) = (looks_for_other.clone(), props.correct.clone());
        Callback::from(move |index: usize| {
            looks_for_other.set(index == other);
            if index != other {
                let entry = index.checked_sub(1).and_then(|index| entries.get(index));
                correct.emit(count_as(entry.copied()));
            }
        })
    };
    let on_pick = {
        let (looks_for_other, correct) = (looks_for_other.clone(), props.correct.clone());
        Callback::from(move |key: AttrValue| {
            looks_for_other.set(false);
            correct.emit(count_as(key.parse().ok()));
        })
    };
    html! {
        <div class="cooked" data-test="cooked">
            <Select id="correction-cooked" data_test="correction-cooked" label={words::COOKED}
                names={names(foods, &props.offers)} {langs} chosen={Some(chosen)} {on_choose} />
            if *looks_for_other {
                <Picker id="cooked-entry" data_test="cooked-entry" label={words::COOKED_ENTRY} {search}
                    {on_pick} />
            }
            if let Some(cooked) = cooked {
                if chosen == other { <p class="note" lang={lang_of_food(cooked.food)}>{ name(foods, cooked.food) }</p> }
                { measured(props, cooked) }
                { retained(foods, &props.retained) }
            }
        </div>
    }
}

fn names(foods: &FoodTable, offers: &[CookedYield]) -> Vec<AttrValue> {
    let described = offers.iter().map(|offer| {
        let yields = words::yields(
            &format::short(offer.factor, Digits(2)),
            &format::short(offer.low, Digits(2)),
            &format::short(offer.high, Digits(2)),
            &phrases::yield_route(&offer.route),
        );
        words::cooked_as(&name(foods, offer.cooked), &yields).into()
    });
    std::iter::once(words::NOT_COOKED.into())
        .chain(described)
        .chain([words::COOKED_OTHER.into()])
        .collect()
}

fn name(foods: &FoodTable, id: FoodId) -> String {
    let food = foods.food(id);
    food.map_or_else(|| id.to_string(), |food| food.description.clone())
}

fn count_as(food: Option<FoodId>) -> Change {
    Box::new(move |correction| {
        correction.cooked = food.map(|food| CookedAs { food, weight: None });
    })
}

/// The weight after cooking, where somebody has put it on the scale.
fn measured(props: &CookedProps, cooked: &CookedAs) -> Html {
    let set = |weight: Option<Decimal>| -> Change {
        Box::new(move |correction| {
            if let Some(cooked) = &mut correction.cooked {
                cooked.weight = weight.map(Grams::new);
            }
        })
    };
    html! {<>
        <UnitField id="cooked-weight" data_test="cooked-weight" label={words::COOKED_WEIGHT}
            units={MASSES} value={cooked.weight.map(Grams::grams)}
            on_change={props.correct.reform(move |value| set(Some(value)))}
            on_clear={props.correct.reform(move |()| set(None))} />
        <p class="note">{ words::COOKED_WEIGHT_HINT }</p>
    </>}
}

/// How much of each nutrient the two entries leave, for who wants to know
/// whether they fit each other.
fn retained(foods: &FoodTable, retained: &[Retained]) -> Html {
    if retained.is_empty() {
        return Html::default();
    }
    let share = |of: &Retained| {
        let nutrient = foods.nutrient(of.nutrient);
        let name = nutrient.map_or_else(String::new, named::nutrient);
        html! { <li>{ name }{ ": " }{ format::percent(of.share) }{ " %" }</li> }
    };
    html! {
        <details data-test="retained">
            <summary>{ words::RETAINED }</summary>
            <p class="note">{ words::RETAINED_HINT }</p>
            <ul>{ for retained.iter().map(share) }</ul>
        </details>
    }
}
