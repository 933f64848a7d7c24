//! How figures move: "512 → 430 mg (−82)", in a serving and in the average
//! meals of weeks.

use super::words;
use crate::format;
use crate::named;
use crate::page::{Page, use_page};
use crate::route::Route;
use engine::exact::{Digits, PartialSum};
use engine::foods::{FoodTable, NutrientId};
use engine::swaps::{ChangeBounds, NutrientChange, ServiceChange, WeekChange};
use std::rc::Rc;
use yew::prelude::*;

/// The nutrients that are shown of a week: those that its limits are about.
pub const WEEK_NUTRIENTS: [NutrientId; 4] = [
    NutrientId::ENERGY,
    NutrientId::SATURATED_FAT,
    NutrientId::SODIUM,
    NutrientId::ADDED_SUGARS,
];

/// The decimals with which a nutrient is printed here: those of the large
/// figures, and one at most of the others.
pub fn digits(foods: &FoodTable, nutrient: NutrientId) -> Digits {
    let of_table = foods.nutrients().iter().find(|one| one.id == nutrient);
    Digits(of_table.map_or(0, |one| one.decimals.0.min(1)))
}

/// The unit of a nutrient; empty for calories, whose name says it.
pub fn unit(foods: &FoodTable, nutrient: NutrientId) -> &str {
    let of_table = foods.nutrients().iter().find(|one| one.id == nutrient);
    match nutrient {
        NutrientId::ENERGY => "",
        _ => of_table.map_or("", |one| one.unit.as_str()),
    }
}

/// Before, after and the change, with the unit.
pub fn moved(foods: &FoodTable, row: &NutrientChange) -> String {
    let digits = digits(foods, row.nutrient);
    let known = |sum: &PartialSum| format::known(sum, digits);
    let or_unknown = |known: Option<String>| known.unwrap_or_else(|| words::UNKNOWN.to_string());
    let with_unit = |known: String| {
        let text = format!("{known} {}", unit(foods, row.nutrient));
        text.trim_end().to_owned()
    };
    let after = or_unknown(known(&row.after).map(with_unit));
    let change = match row.printed(digits) {
        Some(change) => format::signed(change, digits),
        None => between(&row.change, digits),
    };
    words::moved(&or_unknown(known(&row.before)), &after, &change)
}

/// What is known of a change that is not known exactly.
fn between(change: &ChangeBounds, digits: Digits) -> String {
    let signed = |bound| format::signed(bound, digits);
    match (change.low.map(signed), change.high.map(signed)) {
        (Some(low), Some(high)) => words::between(&low, &high),
        (Some(low), None) => words::at_least(&low),
        (None, Some(high)) => words::at_most(&high),
        (None, None) => words::UNKNOWN.to_string(),
    }
}

/// The change of one nutrient in each service of the weeks, in one line each.
pub fn in_weeks(page: &Page, weeks: &[WeekChange], nutrient: NutrientId) -> Vec<String> {
    let (foods, contents) = (&page.tables.reference.foods, page.contents());
    let line = |week: &WeekChange, service: &ServiceChange| {
        let row = service
            .nutrients
            .iter()
            .find(|row| row.nutrient == nutrient)?;
        let service = words::service(&service.service);
        let name = words::nutrient(foods, nutrient);
        Some(words::in_week(
            &week.title,
            &service,
            &name,
            &moved(foods, row),
        ))
    };
    weeks
        .iter()
        .flat_map(|week| match &week.services {
            Ok(services) => services.iter().filter_map(|one| line(week, one)).collect(),
            Err(problem) => vec![words::week_problem(
                &week.title,
                &named::week(problem, contents),
            )],
        })
        .collect()
}

/// How weeks move.
#[derive(Clone, PartialEq, Properties)]
pub struct WeekMovesProps {
    /// The weeks.
    pub weeks: Rc<Vec<WeekChange>>,
}

/// A table for each week, with a row for each service.
#[component]
pub fn WeekMoves(props: &WeekMovesProps) -> Html {
    html! {
        <div class="week-moves" data-test="week-moves">
            { for props.weeks.iter().map(|week| html! { <WeekTable week={week.clone()} /> }) }
        </div>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct WeekTableProps {
    week: WeekChange,
}

#[component]
fn WeekTable(props: &WeekTableProps) -> Html {
    let page = use_page();
    let foods = &page.tables.reference.foods;
    let week = &props.week;
    let way = html! {
        <a href={Route::Week(week.week.clone()).fragment()}>{ &week.title }</a>
    };
    let services = match &week.services {
        Ok(services) if services.is_empty() => {
            return html! { <p>{ way }{ ": " }{ words::WEEK_STAYS }</p> };
        }
        Ok(services) => services,
        Err(problem) => {
            return html! { <p class="unknown">{ way }{ ": " }{ named::week(problem, page.contents()) }</p> };
        }
    };
    let row = |service: &ServiceChange| {
        let key = format!("{} {}", service.service.kind, service.service.group.0);
        html! {
            <tr data-service={key}>
                <th scope="row">{ words::service(&service.service) }</th>
                { for service.nutrients.iter().map(|row| html! {
                    <td class="number" data-nutrient={row.nutrient.0.to_string()}>
                        { moved(foods, row) }
                    </td>
                }) }
            </tr>
        }
    };
    html! {
        <div class="wide">
            <table class="moves" data-week={week.week.0.clone()}>
                <caption>{ way }</caption>
                <thead><tr>
                    <th scope="col">{ words::SERVICE }</th>
                    { for WEEK_NUTRIENTS.iter().map(|nutrient| html! {
                        <th scope="col" class="number">{ words::nutrient(foods, *nutrient) }</th>
                    }) }
                </tr></thead>
                <tbody>{ for services.iter().map(row) }</tbody>
            </table>
        </div>
    }
}
