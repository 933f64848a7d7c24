//! The sheet of one kitchen: menu, order of work, what is cooked, temperatures.

use super::cook::CookPart;
use super::{ask, words};
use crate::format;
use crate::language::of_table;
use crate::page::{Page, use_page};
use crate::views::week::words::service;
use crate::words::title_or_untitled;
use engine::allergens;
use engine::kitchen::{self, Guidance, SafetyStep, Step};
use engine::production::{KitchenDay, Moment, PrepStep};
use engine::recipe::RecipeId;
use std::rc::Rc;
use yew::prelude::*;
use yew::virtual_dom::VTag;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct KitchenSheetProps {
    /// The day.
    pub day: Rc<KitchenDay>,
    /// Level of the sheet's headings.
    pub heading: u8,
}

/// A heading of this level.
pub fn heading(level: u8, text: Html) -> Html {
    let mut tag = VTag::new(format!("h{level}"));
    tag.add_child(text);
    tag.into()
}

/// The title of a recipe of the book.
pub fn title_of(page: &Page, id: &RecipeId) -> String {
    let recipe = page.contents().recipe(id);
    recipe.map_or_else(|| id.0.clone(), |recipe| title_or_untitled(&recipe.title))
}

/// The sheet.
#[component]
pub fn KitchenSheet(props: &KitchenSheetProps) -> Html {
    let page = use_page();
    let day = &props.day;
    let production = &page.contents().rest.production;
    let site = day.site.as_ref().and_then(|id| production.site(id));
    let name = site.map_or_else(|| words::ALL_SCHOOLS.to_string(), |site| site.name.clone());
    let head = |text: Html| heading(props.heading, text);
    if day.menu.is_empty() {
        return html! { <p data-test="nothing-here">{ words::NOTHING_HERE }</p> };
    }
    html! {
        <article class="site-sheet" data-test="site-sheet">
            <p class="sheet-title">{ &name }{ ", " }{ format::day(day.date) }</p>
            <p class="sheet-small">{ page.contents().office().to_owned() }</p>
            <div class="site-sheet-top">
                <div>
                    { head(html! { { words::MENU } }) }
                    { menu(&page, day) }
                </div>
                <div>
                    { head(html! { { words::ORDER } }) }
                    { order(&page, &day.order) }
                </div>
            </div>
            { head(html! { { words::COOK } }) }
            <div class="cook-parts">
                { for day.cook.iter().map(|item| html! {
                    <CookPart item={item.clone()} heading={props.heading + 1} />
                }) }
                { for day.not_cooked.iter().map(|not| html! {
                    <p class="problem">
                        { words::not_cooked(&title_of(&page, &not.recipe), &format::group(not.servings.servings())) }
                    </p>
                }) }
            </div>
            { head(html! { { words::TEMPERATURES } }) }
            { general(&page, day) }
            <p class="sheet-small">{ of_table(kitchen::CAUTION) }</p>
            <p class="sheet-small">{ of_table(allergens::CAUTION) }</p>
        </article>
    }
}

fn menu(page: &Page, day: &KitchenDay) -> Html {
    let mut before = None;
    html! {
        <table class="sheet-table"><tbody>
            { for day.menu.iter().map(|row| {
                let is_new = before.replace(&row.service) != Some(&row.service);
                html! {<>
                    if is_new {
                        <tr><th colspan="3" scope="colgroup" class="sheet-meal-name">
                            { service(row.service.kind, &row.service.group.0) }
                        </th></tr>
                    }
                    <tr>
                        <td>{ &row.part }</td>
                        <th scope="row">{ title_of(page, &row.recipe) }</th>
                        <td class="number">{ format::group(row.servings.servings()) }</td>
                    </tr>
                </>}
            }) }
        </tbody></table>
    }
}

fn order(page: &Page, steps: &[PrepStep]) -> Html {
    let moments = [
        Moment::DayBefore,
        Moment::Early,
        Moment::ForService,
        Moment::Last,
    ];
    html! {
        <dl class="prep-order">
            { for moments.into_iter().filter(|moment| steps.iter().any(|step| step.moment == *moment)).map(|moment| html! {<>
                <dt>{ words::moment(moment) }</dt>
                <dd><ul>{ for steps.iter().filter(|step| step.moment == moment).map(|step| html! {
                    <li data-test="prep-step">{ words::step(step, &title_of(page, &step.recipe)) }</li>
                }) }</ul></dd>
            </>}) }
        </dl>
    }
}

/// Rows of the food code that a recipe's own foods call for.
pub fn cooking<'a>(steps: &[&'a SafetyStep]) -> Vec<&'a SafetyStep> {
    let own = |step: &&&SafetyStep| step.guidance == Guidance::FoodCode && step.step == Step::Cook;
    steps.iter().filter(own).copied().collect()
}

/// What holds for every dish: holding, cooling, reheating, keeping.
fn general(page: &Page, day: &KitchenDay) -> Html {
    let recipes = day.cook.iter().map(|item| item.recipe.clone());
    let rows = ask(page, recipes, |kitchen| {
        let mut rows: Vec<SafetyStep> = Vec::new();
        for item in &day.cook {
            for step in kitchen.temperatures(&item.recipe) {
                let is_general = step.guidance == Guidance::FoodCode && step.step != Step::Cook;
                if is_general && !rows.contains(step) {
                    rows.push(step.clone());
                }
            }
        }
        rows
    });
    html! {
        <ul class="sheet-temperatures">
            { for rows.iter().map(|step| html! { <li>{ words::temperature(step) }</li> }) }
        </ul>
    }
}
