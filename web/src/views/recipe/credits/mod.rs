//! What a serving credits toward the meal components, how each line comes to
//! it, and what a person states instead.

mod line;
mod record;
mod sheet;
mod state_it;
mod stated;
mod words;

pub use record::CreditRecord;
pub use sheet::CreditSheet;

use super::CardProps;
use crate::components::{Help, Select, Topic};
use crate::format;
use crate::state::RecipeEdit;
use engine::components::{BeansRole, Component, Credit, RecipeCredits};
use engine::exact::Digits;
use line::CreditedLine;
use stated::Stated;
use yew::prelude::*;

/// The section; nothing while the recipe has no totals.
#[component]
pub fn Credits(props: &CardProps) -> Html {
    let Some(credits) = &props.study.credits else {
        return Html::default();
    };
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    html! {
        <section class="credits" aria-labelledby="credits" data-test="credits">
            <h2 id="credits">{ words::TITLE }</h2>
            <p class="hint">{ words::HINT }{ " " }<Help topic={Topic::Credits} /></p>
            if known(credits).next().is_some() {
                { table(credits) }
            } else if credits.per_serving.is_empty() {
                <p>{ words::NOTHING_CREDITS }</p>
            }
            if let Some(open) = open(credits) {
                <p class="unknown" data-test="credits-open">{ open }</p>
            }
            if let Some(is_rich) = credits.dough_is_whole_grain_rich {
                <p class="note" data-test="credit-dough">{ words::dough(is_rich) }</p>
            }
            if has_beans(credits) { { beans(props) } }
            <Stated ..props.clone() />
            <details class="credit-lines" data-test="credit-lines">
                <summary>{ words::LINES }</summary>
                <p class="hint">{ words::LINES_HINT }</p>
                { for credits.lines.iter().enumerate().map(|(index, credit)| html! {
                    <CreditedLine key={index} card={props.clone()} credit={credit.clone()} number={index} />
                }) }
            </details>
        </section>
    }
}

/// Components toward which something is known to be credited.
fn known(credits: &RecipeCredits) -> impl Iterator<Item = &Credit> {
    let rows = credits.per_serving.iter();
    rows.filter(|credit| !credit.exact.is_zero())
}

/// Components of which nothing is known, though some line could add to them.
fn open(credits: &RecipeCredits) -> Option<String> {
    let rows = credits.per_serving.iter();
    let open: Vec<Component> = rows
        .filter(|credit| credit.exact.is_zero())
        .map(|credit| credit.component)
        .collect();
    (!open.is_empty()).then(|| words::open(&open))
}

fn table(credits: &RecipeCredits) -> Html {
    html! {
        <table class="credit-table" data-test="credit-table">
            <thead><tr>
                <th scope="col">{ words::COMPONENT }</th>
                <th scope="col" class="number">{ words::CREDITED }</th>
                <th scope="col" class="number">{ words::EXACT }</th>
                <th scope="col">{ words::COMPLETE }</th>
            </tr></thead>
            <tbody>{ for known(credits).map(row) }</tbody>
        </table>
    }
}

fn row(credit: &Credit) -> Html {
    let is_subgroup = Component::SUBGROUPS.contains(&credit.component);
    html! {
        <tr class={classes!(is_subgroup.then_some("subgroup"))}
            data-component={credit.component.to_string()}>
            <th scope="row">{ words::component(credit.component) }</th>
            <td class="number" data-test="credited"><strong>{ credited(credit) }</strong></td>
            <td class="number">{ words::amount(&exact(credit), &credit.unit) }</td>
            <td class={classes!((!credit.complete).then_some("unknown"))}>
                { words::complete(credit.complete) }
            </td>
        </tr>
    }
}

/// A component's name.
pub fn component_name(component: Component) -> String {
    words::component(component)
}

/// What counts: "2 oz eq", "at least 1/2 cup".
pub fn credited(credit: &Credit) -> String {
    let amount = words::amount(&format::eighths(credit.credited), &credit.unit);
    match credit.complete {
        true => amount,
        false => words::at_least(&amount),
    }
}

fn exact(credit: &Credit) -> String {
    format::short(credit.exact, Digits(4))
}

/// Whether it matters as what beans are served.
fn has_beans(credits: &RecipeCredits) -> bool {
    credits.beans != BeansRole::default() || credits.parts(Component::Beans).next().is_some()
}

const ROLES: [BeansRole; 2] = [BeansRole::Vegetable, BeansRole::MeatAlternate];

fn beans(props: &CardProps) -> Html {
    let names = vec![words::BEANS_VEGETABLE.into(), words::BEANS_MEAT.into()];
    let chosen = ROLES.iter().position(|role| *role == props.recipe.beans);
    let on_choose = props
        .edit
        .reform(|index: usize| RecipeEdit::Beans(ROLES[index]));
    html! {
        <p class="credit-beans">
            <Select id="beans-role" data_test="beans-role" label={words::BEANS} {names} {chosen}
                {on_choose} />
            { " " }<span class="note">{ words::BEANS_HINT }</span>
        </p>
    }
}
