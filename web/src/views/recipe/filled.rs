//! What fills a serving with a nutrient, line by line, up to the limits of the
//! meals that it may stand in.

use crate::components::chart::{FillChart, FillRow, Mark, Segment};
use crate::format;
use crate::language::{Say, say};
use crate::named;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use crate::views::week::words::service;
use crate::views::week::{limit, today};
use crate::words::UNKNOWN;
use engine::analysis::contributions;
use engine::foods::NutrientId;
use engine::recipe::Recipe;
use engine::rules::{Basis, Bound};
use engine::week::{MealKind, Service};
use rust_decimal::Decimal;
use std::cmp::Reverse;
use std::rc::Rc;
use yew::prelude::*;

const OTHERS: Say = Say("chart-other-lines");
const SERVING: Say = Say("chart-one-serving");

/// Lines that are told apart; the others are one kind.
const MOST_KINDS: usize = 6;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct FilledProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// The nutrient.
    pub nutrient: NutrientId,
}

/// The drawing.
#[component]
pub fn Filled(props: &FilledProps) -> Html {
    let page = use_page();
    let reference = &page.tables.reference;
    let Some(nutrient) = reference.foods.nutrient(props.nutrient) else {
        return Html::default();
    };
    let Ok(analysis) = &props.study.analysis else {
        return Html::default();
    };
    let Some(whole) = analysis.per_serving(props.nutrient) else {
        return Html::default();
    };
    let printed = |amount: Decimal| {
        format!(
            "{} {}",
            format::number(amount, nutrient.decimals),
            nutrient.unit
        )
    };
    let mut parts = contributions(&reference.foods, &props.study.parts, props.nutrient);
    parts.sort_by_key(|part| Reverse(part.amount));
    let text = |line: usize| {
        let line = props.recipe.lines.get(line);
        line.map_or_else(String::new, |line| line.text.clone())
    };
    let segments: Vec<Segment> = parts
        .iter()
        .enumerate()
        .map(|(index, part)| {
            let amount = part
                .amount
                .map(|amount| amount / analysis.servings.servings());
            Segment {
                name: text(part.line).into(),
                kind: index.min(MOST_KINDS),
                amount: amount.unwrap_or_default(),
                figure: amount.map_or_else(|| UNKNOWN.to_string(), printed).into(),
            }
        })
        .collect();
    if segments.is_empty() {
        return Html::default();
    }
    let mut kinds: Vec<AttrValue> = segments
        .iter()
        .take(MOST_KINDS)
        .map(|one| one.name.clone())
        .collect();
    if segments.len() > MOST_KINDS {
        kinds.push(OTHERS.into());
    }
    // Of what a meal may hold at most, the first group's lunch: the strictest.
    let kind = MealKind::Lunch;
    let groups = reference.meal_patterns.groups(kind);
    let marks: Vec<Mark> = groups
        .into_iter()
        .map(|group| Service { kind, group })
        .flat_map(|of| {
            let name = service(of.kind, &of.group.0);
            let rules = reference.specifications.in_force(&of, today());
            rules
                .filter(|rule| {
                    rule.nutrient == props.nutrient
                        && rule.basis == Basis::PerMeal
                        && rule.bound != Bound::AtLeast
                })
                .map(|rule| Mark {
                    at: rule.limit,
                    name: say(
                        "chart-named",
                        &[
                            ("name", name.as_str().into()),
                            ("figure", limit(rule.bound, rule.limit, &rule.unit).into()),
                        ],
                    )
                    .into(),
                })
                .collect::<Vec<_>>()
        })
        .take(1)
        .collect();
    let total = format::known(&whole, nutrient.decimals).map_or_else(
        || UNKNOWN.to_string(),
        |figure| format!("{figure} {}", nutrient.unit),
    );
    let title = say(
        "chart-serving-filled",
        &[("nutrient", named::nutrient(nutrient).into())],
    );
    let summary = say(
        "chart-serving-summary",
        &[
            ("total", total.as_str().into()),
            ("line", kinds[0].as_str().into()),
        ],
    );
    html! {
        <FillChart id="serving-filled" {title} {summary} {kinds} {marks}
            rows={vec![FillRow { name: SERVING.into(), total: total.into(), segments }]} />
    }
}
