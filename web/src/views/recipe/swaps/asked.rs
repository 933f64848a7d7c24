//! What is asked of a swap: goals with their weights, the band of calories,
//! the credit, and how the amount is found.

use super::moved::WEEK_NUTRIENTS;
use super::words;
use crate::components::{NumberField, Select};
use engine::foods::NutrientId;
use engine::swaps::{Aim, AmountBy, CreditDemand, Goal, Goals, SwapOptions};
use engine::units::Kilocalories;
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// What can be moved, with its name in tests.
pub const AIMS: [(&str, Aim); 6] = [
    ("sodium", Aim::Less(NutrientId::SODIUM)),
    ("saturated-fat", Aim::Less(NutrientId::SATURATED_FAT)),
    ("added-sugars", Aim::Less(NutrientId::ADDED_SUGARS)),
    ("calories", Aim::Less(NutrientId::ENERGY)),
    ("fibre", Aim::More(NutrientId::FIBRE)),
    ("cost", Aim::LessCost),
];

/// By what the amount of a new food can be found; nothing leaves it to the kind
/// of food.
const AMOUNTS: [Option<AmountBy>; 4] = [
    None,
    Some(AmountBy::Volume),
    Some(AmountBy::Weight),
    Some(AmountBy::Credit),
];

/// The largest weight of a goal.
const MOST: u16 = 3;

/// What is asked.
#[derive(Debug, Clone, PartialEq)]
pub struct Asked {
    /// The weight of each goal, in the order of [`AIMS`].
    pub weights: [u16; AIMS.len()],
    /// What must be kept.
    pub options: SwapOptions,
}

impl Default for Asked {
    /// Less sodium, and what the engine asks where nothing is said.
    fn default() -> Self {
        let mut weights = [0; AIMS.len()];
        weights[0] = 1;
        Self {
            weights,
            options: SwapOptions::default(),
        }
    }
}

impl Asked {
    /// The goals that count.
    pub fn goals(&self) -> Goals {
        let goals = AIMS.iter().zip(self.weights);
        let goal = |(&(_, aim), weight)| Goal { aim, weight };
        Goals(goals.map(goal).filter(|goal| goal.weight > 0).collect())
    }

    /// The nutrient of the first goal that limits on weeks are about.
    pub fn first(&self) -> NutrientId {
        let goals = self.goals().0;
        let mut nutrients = goals.iter().filter_map(|goal| match goal.aim {
            Aim::Less(nutrient) | Aim::More(nutrient) => Some(nutrient),
            Aim::LessCost => None,
        });
        let limited = |nutrient: &NutrientId| WEEK_NUTRIENTS.contains(nutrient);
        nutrients.find(limited).unwrap_or(NutrientId::SODIUM)
    }
}

/// What is asked, and how it changes.
#[derive(Clone, PartialEq, Properties)]
pub struct AskedFormProps {
    /// What is asked now.
    pub asked: Asked,
    /// Whether the office has stated prices.
    pub has_prices: bool,
    /// Told what is asked from now on.
    pub on_ask: Callback<Asked>,
}

/// The form.
#[component]
pub fn AskedForm(props: &AskedFormProps) -> Html {
    let change = |change: Change| {
        let asked = props.asked.clone();
        props.on_ask.reform(move |value: Decimal| {
            let mut asked = asked.clone();
            change(&mut asked, Kilocalories::new(value));
            asked
        })
    };
    let options = &props.asked.options;
    let amount = AMOUNTS.iter().position(|by| *by == options.amount);
    let on_amount = {
        let asked = props.asked.clone();
        props.on_ask.reform(move |at: usize| {
            let mut asked = asked.clone();
            asked.options.amount = AMOUNTS[at];
            asked
        })
    };
    let on_credit = {
        let asked = props.asked.clone();
        props.on_ask.reform(move |event: Event| {
            let keep = event.target_unchecked_into::<HtmlInputElement>().checked();
            let mut asked = asked.clone();
            asked.options.credit = match keep {
                true => CreditDemand::Keep,
                false => CreditDemand::NotAsked,
            };
            asked
        })
    };
    let amounts: Vec<AttrValue> = AMOUNTS.iter().map(|by| words::amount_by(*by)).collect();
    html! {
        <section class="asked" aria-labelledby="asked">
            <h2 id="asked">{ words::ASKED }</h2>
            <fieldset>
                <legend>{ words::GOALS }</legend>
                <ul>{ for AIMS.iter().enumerate()
                    .filter(|(_, (_, aim))| props.has_prices || *aim != Aim::LessCost)
                    .map(|(at, aim)| goal(props, at, *aim)) }</ul>
            </fieldset>
            <fieldset>
                <legend>{ words::BAND }</legend>
                <NumberField id="band-fall" data_test="band-fall" label={words::FALL}
                    unit={words::KCAL} value={Some(options.energy.fall.kilocalories())}
                    on_change={change(|asked, value| asked.options.energy.fall = value)} />
                <NumberField id="band-rise" data_test="band-rise" label={words::RISE}
                    unit={words::KCAL} value={Some(options.energy.rise.kilocalories())}
                    on_change={change(|asked, value| asked.options.energy.rise = value)} />
            </fieldset>
            <fieldset>
                <legend>{ words::KEEPS }</legend>
                <p class="check">
                    <input id="keep-credit" type="checkbox" data-test="keep-credit"
                        checked={options.credit == CreditDemand::Keep} onchange={on_credit} />
                    <label for="keep-credit">{ words::KEEP_CREDIT }</label>
                </p>
                <Select id="amount-by" data_test="amount-by" label={words::AMOUNT_BY} names={amounts}
                    chosen={amount} on_choose={on_amount} />
                <p class="hint">{ words::ALLERGENS_KEPT }</p>
            </fieldset>
        </section>
    }
}

/// How a number changes what is asked.
type Change = fn(&mut Asked, Kilocalories);

fn goal(props: &AskedFormProps, at: usize, (key, aim): (&'static str, Aim)) -> Html {
    let names: Vec<AttrValue> = (0..=MOST).map(words::weight).collect();
    let weight = usize::from(props.asked.weights[at]);
    let on_choose = {
        let asked = props.asked.clone();
        props.on_ask.reform(move |weight: usize| {
            let mut asked = asked.clone();
            asked.weights[at] = u16::try_from(weight).unwrap_or(MOST);
            asked
        })
    };
    html! {
        <li>
            <Select id={format!("goal-{key}")} data_test={format!("goal-{key}")}
                label={words::aim(aim)} {names} chosen={Some(weight)} {on_choose} />
        </li>
    }
}
