//! The credits on paper with all of their arithmetic, for who checks them.

use super::line::{arithmetic, sum};
use super::{credited, exact, known, open, words};
use crate::language::description;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::recipe::Recipe;
use std::rc::Rc;
use yew::prelude::*;

/// What is recorded.
#[derive(Clone, PartialEq, Properties)]
pub struct CreditRecordProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
}

/// What a serving credits, and line by line how it comes to that.
#[component]
pub fn CreditRecord(props: &CreditRecordProps) -> Html {
    let page = use_page();
    let Some(credits) = &props.study.credits else {
        return html! { <p>{ words::NOTHING_CREDITS }</p> };
    };
    let foods = &page.tables.reference.foods;
    html! {
        <div class="credit-record" data-test="credit-record">
            <p>{ for known(credits).map(|credit| html! {
                <span class="credit-record-sum">
                    { words::component(credit.component) }{ ": " }
                    <strong>{ credited(credit) }</strong>
                    { " (" }{ words::EXACT }{ ": " }
                    { words::amount(&exact(credit), &credit.unit) }{ ") " }
                </span>
            }) }</p>
            if known(credits).next().is_none() { <p>{ words::NOTHING_CREDITS }</p> }
            if let Some(open) = open(credits) { <p>{ open }</p> }
            <ul>{ for credits.lines.iter().map(|credit| {
                let line = props.recipe.lines.get(credit.line);
                let is_stated = line.is_some_and(|line| !line.correction.credits.is_empty());
                let food = credit.food.and_then(|id| foods.food(id));
                html! {
                    <li>
                        { line.map(|line| line.text.clone()) }{ ": " }
                        <strong>{ sum(credits, credit) }</strong>
                        if let Some(food) = food { { " – " }{ description(food) } }
                        if is_stated {
                            <p>{ words::stated(&credit.reason) }</p>
                        } else {
                            { arithmetic(credits, credit) }
                            if !credit.steps.iter().any(|step| step.words == credit.reason) {
                                <p>{ words::reason(&credit.reason) }</p>
                            }
                            if let Some(rule) = &credit.rule { <p>{ words::rule(rule) }</p> }
                        }
                    </li>
                }
            }) }</ul>
        </div>
    }
}
