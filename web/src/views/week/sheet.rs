//! The week as a sheet of paper: each day's meals with their planned servings.

use super::words;
use crate::format;
use crate::page::use_page;
use crate::words::title_or_untitled;
use engine::week::{Meal, Week};
use std::rc::Rc;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct WeekSheetProps {
    pub week: Rc<Week>,
}

/// The sheet; only printers show it.
#[component]
pub fn WeekSheet(props: &WeekSheetProps) -> Html {
    let page = use_page();
    let title_of = |choice: &engine::week::Choice| {
        let recipe = page.contents().recipe(&choice.recipe);
        recipe.map_or_else(
            || choice.recipe.0.clone(),
            |recipe| title_or_untitled(&recipe.title),
        )
    };
    let meal = |meal: &Meal| {
        html! {
            <div class="sheet-meal">
                <h3>{ words::service(meal.kind, &meal.group.0) }
                    { ", " }{ words::PLANNED_MEALS }{ " " }{ format::group(meal.planned_meals.servings()) }
                </h3>
                <table><tbody>{ for meal.offers.iter().flat_map(|offer| {
                    offer.choices.iter().map(|choice| html! {
                        <tr>
                            <td>{ &offer.title }</td>
                            <th scope="row">{ title_of(choice) }</th>
                            <td class="number">{ format::group(choice.planned.servings()) }</td>
                        </tr>
                    })
                }) }</tbody></table>
            </div>
        }
    };
    html! {
        <div class="sheet week-sheet" aria-hidden="true">
            <p class="sheet-title">{ title_or_untitled(&props.week.title) }</p>
            <p>{ page.contents().office().to_owned() }</p>
            { for props.week.days.iter().map(|day| html! {
                <section class="sheet-day">
                    <h2>{ words::day(day.date) }</h2>
                    { for day.meals.iter().map(meal) }
                </section>
            }) }
        </div>
    }
}
