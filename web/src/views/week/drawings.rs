//! The week drawn: what fills each day up to the limit of a nutrient, and how
//! the average meal lies in its ranges.

use super::moving_words as words;
use super::requirement::limit;
use super::words::{day, service as service_name};
use crate::components::Select;
use crate::components::chart::{FillChart, FillRow, Mark, RangeChart, RangeRow, Segment};
use crate::format;
use crate::language::of_table;
use crate::named;
use crate::page::{Page, use_page};
use crate::tables::StudiedWeek;
use crate::words::{UNKNOWN, title_or_untitled};
use engine::exact::{Digits, PartialSum};
use engine::findings::{Finding, Verdict};
use engine::foods::NutrientId;
use engine::reference::ServiceStudy;
use engine::rules::{Basis, Bound};
use engine::week::Week;
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct DrawingsProps {
    /// The week.
    pub week: Rc<Week>,
    /// How it stands.
    pub study: StudiedWeek,
}

/// The section of drawings.
#[component]
pub fn Drawings(props: &DrawingsProps) -> Html {
    let page = use_page();
    let nutrient = use_state(|| NutrientId::SODIUM);
    let Ok(study) = &*props.study else {
        return Html::default();
    };
    if study.services.is_empty() {
        return Html::default();
    }
    let nutrients = page.tables.reference.foods.nutrients();
    let names: Vec<AttrValue> = nutrients
        .iter()
        .map(|one| named::nutrient(one).into())
        .collect();
    let chosen = nutrients.iter().position(|one| one.id == *nutrient);
    let on_choose = {
        let ids: Vec<NutrientId> = nutrients.iter().map(|one| one.id).collect();
        let nutrient = nutrient.clone();
        Callback::from(move |index: usize| nutrient.set(ids[index]))
    };
    html! {
        <section class="drawings" aria-labelledby="drawings">
            <h2 id="drawings">{ words::DRAWINGS }</h2>
            <Select id="drawn-nutrient" label={words::NUTRIENT} {names} {chosen} {on_choose} />
            { for study.services.iter().enumerate().map(|(index, service)| html! {
                <div class="service">
                    { fills(&page, &props.week, service, *nutrient, index) }
                    { ranges(&page, &props.week, service, index) }
                </div>
            }) }
        </section>
    }
}

/// A sum as it is printed, with its unit.
fn figure(sum: &PartialSum, digits: Digits, unit: &str) -> String {
    format::known(sum, digits)
        .map_or_else(|| UNKNOWN.to_string(), |figure| format!("{figure} {unit}"))
}

/// Each day's average meal, filled part by part.
fn fills(
    page: &Page,
    week: &Week,
    service: &ServiceStudy,
    nutrient: NutrientId,
    index: usize,
) -> Html {
    let of = &service.average.service;
    let Some(entry) = page.tables.reference.foods.nutrient(nutrient) else {
        return Html::default();
    };
    let printed = |sum: &PartialSum| figure(sum, entry.decimals, &entry.unit);
    let days = page.tables.day_shares(week, page.contents(), of, nutrient);
    let mut kinds: Vec<String> = Vec::new();
    for part in days.iter().flat_map(|day| &day.parts) {
        if !kinds.contains(&part.part) {
            kinds.push(part.part.clone());
        }
    }
    let dish = |id: &engine::recipe::RecipeId| {
        let recipe = page.contents().recipe(id);
        recipe.map_or_else(|| id.0.clone(), |recipe| title_or_untitled(&recipe.title))
    };
    let rows: Vec<FillRow> = days
        .iter()
        .map(|one| {
            let mut segments: Vec<Segment> = one
                .parts
                .iter()
                .map(|part| Segment {
                    name: words::dish_of(&part.part, &dish(&part.recipe)).into(),
                    kind: kinds
                        .iter()
                        .position(|kind| *kind == part.part)
                        .unwrap_or(0),
                    amount: part.amount.known,
                    figure: printed(&part.amount).into(),
                })
                .collect();
            segments.sort_by_key(|segment| segment.kind);
            FillRow {
                name: day(one.date).into(),
                total: printed(&one.total).into(),
                segments,
            }
        })
        .collect();
    let most = days.iter().max_by_key(|day| day.total.known);
    let (Some(most), Some(average)) = (most, service.average.amount(nutrient)) else {
        return Html::default();
    };
    let summary = words::fills_summary(&printed(&average), &printed(&most.total), most.date);
    let marks: Vec<Mark> = service
        .findings
        .iter()
        .map(|sure| &sure.finding.rule)
        .filter(|rule| rule.nutrient == nutrient && rule.basis == Basis::PerMeal)
        .map(|rule| Mark {
            at: rule.limit,
            name: limit(rule.bound, rule.limit, &rule.unit).into(),
        })
        .collect();
    let kinds: Vec<AttrValue> = kinds.into_iter().map(AttrValue::from).collect();
    html! {
        <FillChart id={format!("fills-{index}")} {summary} {kinds} {rows} {marks}
            title={words::fills(&named::nutrient(entry), &service_name(of.kind, &of.group.0))} />
    }
}

/// The limits of one figure of the average meal, both sides together.
struct Range<'a> {
    findings: Vec<&'a Finding>,
}

fn ranges(page: &Page, week: &Week, service: &ServiceStudy, index: usize) -> Html {
    let mut ranges: Vec<Range<'_>> = Vec::new();
    for sure in &service.findings {
        let finding = &sure.finding;
        let same = |range: &&mut Range<'_>| {
            let rule = &range.findings[0].rule;
            rule.nutrient == finding.rule.nutrient
                && rule.basis == finding.rule.basis
                && rule.leaves_out == finding.rule.leaves_out
        };
        match ranges.iter_mut().find(same) {
            Some(range) => range.findings.push(finding),
            None => ranges.push(Range {
                findings: vec![finding],
            }),
        }
    }
    if ranges.is_empty() {
        return Html::default();
    }
    let met = |range: &&Range<'_>| range.findings.iter().all(|one| one.verdict == Verdict::Met);
    let within = ranges.iter().filter(met).count();
    let summary = words::ranges_summary(within, ranges.len());
    let of = &service.average.service;
    let rows: Vec<RangeRow> = ranges
        .iter()
        .map(|range| row(page, week, service, range))
        .collect();
    html! {
        <RangeChart id={format!("ranges-{index}")} {summary} {rows}
            title={words::ranges(&service_name(of.kind, &of.group.0))} />
    }
}

fn row(page: &Page, week: &Week, service: &ServiceStudy, range: &Range<'_>) -> RangeRow {
    let first = range.findings[0];
    let rule = &first.rule;
    let foods = &page.tables.reference.foods;
    let side = |least: bool| {
        let of_side = range
            .findings
            .iter()
            .filter(move |one| (one.rule.bound == Bound::AtLeast) == least);
        of_side.map(|one| one.rule.limit)
    };
    let words: Vec<String> = range
        .findings
        .iter()
        .map(|one| limit(one.rule.bound, one.rule.limit, &one.rule.unit))
        .collect();
    let at = first
        .figure
        .filter(|_| first.complete || !first.coverage.is_zero());
    let printed = at.map(|at| {
        let figure = format!("{} {}", format::number(at, first.digits), rule.unit);
        match first.complete {
            true => figure,
            false => format!("≥ {figure}"),
        }
    });
    // A day's share of calories is no figure of the week: only amounts are
    // drawn day by day, and those that count all of the meal.
    let by_day = rule.basis == Basis::PerMeal && rule.leaves_out.is_none();
    let days = by_day.then(|| {
        page.tables.day_shares(
            week,
            page.contents(),
            &service.average.service,
            rule.nutrient,
        )
    });
    let days = days
        .into_iter()
        .flatten()
        .map(|one| {
            let figure = figure(&one.total, Digits(0), &rule.unit);
            (
                AttrValue::from(day(one.date)),
                one.total.known,
                AttrValue::from(figure),
            )
        })
        .collect();
    let name = foods
        .nutrient(rule.nutrient)
        .map_or_else(String::new, named::nutrient);
    let name = match rule.basis {
        Basis::PerMeal => name,
        Basis::ShareOfEnergy => of_table(&rule.words),
    };
    RangeRow {
        name: name.into(),
        at,
        figure: printed.unwrap_or_else(|| UNKNOWN.to_string()).into(),
        least: side(true).max(),
        most: side(false).min(),
        range: words.join(", ").into(),
        days,
    }
}
