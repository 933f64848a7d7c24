//! What one line credits: the sum, and on request the arithmetic, the rule and
//! a way to state something else.

use super::state_it::StateIt;
use super::words;
use crate::format;
use crate::language::description;
use crate::page::use_page;
use crate::views::recipe::CardProps;
use engine::components::{Component, CouldAdd, LineCredit, RecipeCredits};
use engine::exact::Digits;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct CreditedLineProps {
    /// The card.
    pub card: CardProps,
    /// What the line credits. A line that names another recipe has several.
    pub credit: LineCredit,
    /// Its number among all that are shown.
    pub number: usize,
}

/// The line, folded up.
#[component]
pub fn CreditedLine(props: &CreditedLineProps) -> Html {
    let page = use_page();
    let CreditedLineProps { card, credit, .. } = props;
    let Some(credits) = &card.study.credits else {
        return Html::default();
    };
    let Some(line) = card.recipe.lines.get(credit.line) else {
        return Html::default();
    };
    let foods = &page.tables.reference.foods;
    let food = credit.food.and_then(|id| foods.food(id));
    let is_stated = !line.correction.credits.is_empty();
    html! {
        <details class="credit-line" data-test="credit-line" data-line={credit.line.to_string()}>
            <summary>
                <span class="credit-line-text">{ &line.text }</span>
                <span class={classes!("credit-line-sum", credit.unknown.map(|_| "unknown"))}>
                    { sum(credits, credit) }
                </span>
            </summary>
            if let Some(food) = food { <p class="note">{ description(food) }</p> }
            if is_stated {
                <p>{ words::stated(&credit.reason) }</p>
            } else {
                { arithmetic(credits, credit) }
                if !credit.steps.iter().any(|step| step.words == credit.reason) {
                    <p data-test="credit-reason">{ words::reason(&credit.reason) }</p>
                }
                if let Some(rule) = &credit.rule { <p class="note">{ words::rule(rule) }</p> }
            }
            <StateIt card={card.clone()} line={credit.line} toward={toward(credit)} form={props.number} />
        </details>
    }
}

/// The component that a person will most likely state.
fn toward(credit: &LineCredit) -> Component {
    let could_add = match credit.unknown {
        Some(CouldAdd::Only(component)) => Some(component),
        _ => None,
    };
    let first = credit.parts.first().map(|part| part.component);
    first.or(could_add).unwrap_or(Component::MeatAlternates)
}

/// "1.42 oz eq meats and meat alternates", "nothing", "unknown".
pub fn sum(credits: &RecipeCredits, credit: &LineCredit) -> String {
    let parts: Vec<String> = credit
        .parts
        .iter()
        .map(|part| {
            let amount = format::short(credits.in_a_serving(part), Digits(3));
            words::part(&amount, part)
        })
        .collect();
    match (credit.unknown, parts.is_empty()) {
        (Some(could_add), _) => words::unknown(could_add),
        (None, true) => words::NOTHING.to_string(),
        (None, false) => parts.join(", "),
    }
}

/// The steps from the weight of a line to what it credits.
pub fn arithmetic(credits: &RecipeCredits, credit: &LineCredit) -> Html {
    let (Some(weight), Some(first)) = (credit.weight, credit.parts.first()) else {
        return Html::default();
    };
    let unit = first.component.unit();
    let short = |value| format::short(value, Digits(4));
    html! {
        <ol class="credit-steps" data-test="credit-steps">
            <li>{ words::edible_weight(&format::short(weight.grams(), Digits(3))) }</li>
            { for credit.steps.iter().map(|step| {
                html! { <li>{ words::step(step, &format::short(step.by, Digits(9))) }</li> }
            }) }
            <li>{ words::result(
                &words::amount(&short(first.amount), unit),
                &format::group(credits.servings.servings()),
                &words::amount(&short(credits.in_a_serving(first)), unit),
            ) }</li>
        </ol>
    }
}
