//! What a serving of a recipe costs, line by line.

use super::buying::{CENTS, money};
use super::{ask, words};
use crate::components::chart::{FillChart, FillRow, Segment};
use crate::format;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::exact::Digits;
use engine::recipe::Recipe;
use rust_decimal::Decimal;
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct CostProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
}

/// The section; nothing where the office keeps no packs.
#[component]
pub fn Cost(props: &CostProps) -> Html {
    let page = use_page();
    if page.contents().rest.production.packs.is_empty() {
        return Html::default();
    }
    let lines = props.study.lines.iter();
    let made_with = lines.filter_map(|line| line.recipe.clone());
    let cost = ask(&page, made_with, |kitchen| {
        kitchen.recipe_cost(&props.recipe, &props.study)
    });
    let Some((cost, servings)) =
        cost.zip(props.study.analysis.as_ref().ok().map(|one| one.servings))
    else {
        return Html::default();
    };
    let per_serving = |amount: Decimal| amount / servings.servings();
    let mut lines: Vec<Segment> = cost
        .lines
        .iter()
        .map(|(need, amount)| {
            let figure = amount.map_or_else(
                || words::UNKNOWN.to_string(),
                |amount| words::money(&format::number(per_serving(amount), Digits(3))),
            );
            Segment {
                name: need.text.clone().into(),
                kind: 0,
                amount: amount.map(per_serving).unwrap_or_default(),
                figure: figure.into(),
            }
        })
        .collect();
    // Dearest first: these are told apart, the others are one kind.
    lines.sort_by_key(|line| std::cmp::Reverse(line.amount));
    for (kind, line) in lines.iter_mut().enumerate() {
        line.kind = kind.min(MOST_KINDS);
    }
    let mut kinds: Vec<AttrValue> = lines
        .iter()
        .take(MOST_KINDS)
        .map(|line| line.name.clone())
        .collect();
    if lines.len() > MOST_KINDS {
        kinds.push(words::OTHER_LINES.into());
    }
    let total = money(&cost.per_serving);
    html! {
        <section class="recipe-cost" aria-labelledby="recipe-cost">
            <h2 id="recipe-cost">{ words::COST_OF_SERVING }</h2>
            <p data-test="cost-of-serving"><strong>{ &total }</strong></p>
            <FillChart id="cost-chart" title={words::COST_OF_SERVING} summary={words::COST_HINT} {kinds}
                rows={vec![FillRow {
                    name: words::ONE_SERVING.into(),
                    // How much of it is known stands above; here it would not fit.
                    total: format::known(&cost.per_serving, CENTS)
                        .map_or_else(|| words::UNKNOWN.to_string(), |known| words::money(&known))
                        .into(),
                    segments: lines,
                }]} marks={Vec::new()} />
        </section>
    }
}

/// Lines that are told apart in the drawing.
const MOST_KINDS: usize = 5;
