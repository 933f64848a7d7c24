//! What a serving counts toward the components of a school meal.

use super::{CardProps, words};
use crate::components::Select;
use crate::format;
use crate::state::RecipeEdit;
use engine::components::{BeansRole, Component, Credit};
use yew::prelude::*;

const ROLES: [BeansRole; 2] = [BeansRole::Vegetable, BeansRole::MeatAlternate];

/// The section; nothing where there are no totals.
#[component]
pub fn Credits(props: &CardProps) -> Html {
    let Some(credits) = &props.study.credits else {
        return Html::default();
    };
    if props.study.ingredient_count() == 0 {
        return Html::default();
    }
    let has_beans = credits
        .per_serving
        .iter()
        .any(|credit| credit.component == Component::Beans && !credit.exact.is_zero());
    let is_other_role = props.recipe.beans != BeansRole::default();
    let on_choose = props
        .edit
        .reform(|index: usize| RecipeEdit::Beans(ROLES[index]));
    html! {
        <section class="credits" aria-labelledby="credits">
            <h2 id="credits">{ words::CREDITS }</h2>
            if credits.per_serving.is_empty() {
                <p class="hint">{ words::NO_CREDITS }</p>
            } else {
                <table class="bars" data-test="credits">
                    <thead class="for-readers"><tr>
                        <th scope="col">{ words::COMPONENT }</th>
                        <th scope="col">{ words::COUNTED }</th>
                    </tr></thead>
                    <tbody>{ for credits.per_serving.iter().map(row) }</tbody>
                </table>
            }
            if has_beans || is_other_role {
                <Select id="beans" label={words::BEANS}
                    names={vec![words::AS_VEGETABLE.into(), words::AS_MEAT_ALTERNATE.into()]}
                    chosen={ROLES.iter().position(|role| *role == props.recipe.beans)} {on_choose} />
            }
            <details>
                <summary>{ words::CREDIT_LINES }</summary>
                <ul>
                    { for credits.lines.iter().map(|line| {
                        let text = props.recipe.lines.get(line.line).map(|line| line.text.clone());
                        let rule = line.rule.as_ref();
                        html! {
                            <li>
                                <strong>{ text }</strong>{ ": " }{ &line.reason }
                                if let Some(rule) = rule {
                                    <span class="note">{ words::credit_rule(rule) }</span>
                                }
                            </li>
                        }
                    }) }
                </ul>
            </details>
        </section>
    }
}

fn row(credit: &Credit) -> Html {
    let amount = format!("{} {}", format::group(credit.credited), credit.unit);
    let is_unknown = !credit.complete && credit.credited.is_zero();
    html! {
        <tr>
            <th scope="row">{ credit.component.to_string() }</th>
            <td class={classes!("number", is_unknown.then_some("unknown"))}>
                { match (credit.complete, is_unknown) {
                    (true, _) => amount,
                    (false, true) => words::UNKNOWN.to_owned(),
                    (false, false) => format!("≥ {amount}"),
                } }
            </td>
        </tr>
    }
}
