//! The menus with the servings that are planned.

use super::{part, words};
use crate::format;
use crate::page::Page;
use crate::words::title_or_untitled;
use engine::week::{Choice, Meal, Week};
use yew::prelude::*;

/// Each day's meals.
pub fn menus(page: &Page, week: &Week) -> Html {
    let body = html! {
        { for week.days.iter().map(|day| html! {
            <section class="review-day">
                <h3>{ words::day(day.date) }</h3>
                { for day.meals.iter().map(|one| meal(page, one)) }
            </section>
        }) }
    };
    part("review-menus", words::MENUS, body)
}

fn meal(page: &Page, meal: &Meal) -> Html {
    let title = |choice: &Choice| {
        let recipe = page.contents().recipe(&choice.recipe);
        recipe.map_or_else(
            || choice.recipe.0.clone(),
            |recipe| title_or_untitled(&recipe.title),
        )
    };
    let rows = meal.offers.iter().flat_map(|offer| {
        offer.choices.iter().map(move |choice| {
            html! {
                <tr>
                    <td>{ words::offer(&offer.title, offer.take) }</td>
                    <th scope="row">{ title(choice) }</th>
                    <td class="number">{ format::group(choice.planned.servings()) }</td>
                </tr>
            }
        })
    });
    html! {
        <table data-test="review-meal">
            <caption>{ words::meal(meal) }</caption>
            <thead><tr>
                <th scope="col">{ words::PART }</th>
                <th scope="col">{ words::DISH }</th>
                <th scope="col" class="number">{ words::PLANNED }</th>
            </tr></thead>
            <tbody>{ for rows }</tbody>
        </table>
    }
}
