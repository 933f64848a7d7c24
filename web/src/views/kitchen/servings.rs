//! Each choice of the day with its servings at each school.

use super::{use_edit, words};
use crate::components::NumberField;
use crate::format;
use crate::page::use_page;
use crate::state::ProductionEdit;
use crate::views::week::words::service;
use crate::words::title_or_untitled;
use engine::production::{SharedChoice, Site, SiteServings, shared_day};
use engine::units;
use engine::week::{Date, Week};
use std::rc::Rc;
use yew::prelude::*;

/// Which day.
#[derive(Clone, PartialEq, Properties)]
pub struct ServingsProps {
    /// The week.
    pub week: Rc<Week>,
    /// The day.
    pub date: Date,
}

/// The table of choices and schools.
#[component]
pub fn Servings(props: &ServingsProps) -> Html {
    let page = use_page();
    let edit = use_edit();
    let production = &page.contents().rest.production;
    let shared = shared_day(production, &props.week, props.date);
    if shared.is_empty() {
        return html! { <p>{ words::NOTHING_PLANNED }</p> };
    }
    let title_of = |choice: &SharedChoice| {
        let recipe = page.contents().recipe(&choice.recipe);
        recipe.map_or_else(
            || choice.recipe.0.clone(),
            |recipe| title_or_untitled(&recipe.title),
        )
    };
    let cell = |index: usize, choice: &SharedChoice, site: &Site, title: &str| {
        let Some(at) = choice.sites.iter().find(|one| one.site == site.id) else {
            return html! { <td class="number">{ words::NOT_SERVED }</td> };
        };
        field(index, choice, site, at, title, props.date, &edit)
    };
    html! {
        <section class="site-servings" aria-labelledby="site-servings">
            <h2 id="site-servings">{ words::SERVINGS }</h2>
            <p class="hint">{ words::SERVINGS_HINT }</p>
            <div class="wide">
                <table class="plain-table">
                    <thead><tr>
                        <th scope="col">{ words::MEAL }</th>
                        <th scope="col">{ words::DISH }</th>
                        <th scope="col" class="number">{ words::PLANNED }</th>
                        { for production.sites.iter().map(|site| html! {
                            <th scope="col">{ &site.name }</th>
                        }) }
                    </tr></thead>
                    <tbody>{ for shared.iter().enumerate().map(|(index, choice)| {
                        let title = title_of(choice);
                        html! {
                            <tr data-test="shared" data-recipe={choice.recipe.0.clone()}>
                                <td>{ service(choice.service.kind, &choice.service.group.0) }</td>
                                <th scope="row">
                                    { &title }
                                    if let Some(problem) = &choice.problem {
                                        <p class="problem" data-test="share-problem">
                                            { words::share_problem(problem) }
                                        </p>
                                    }
                                </th>
                                <td class="number">{ format::group(choice.planned.servings()) }</td>
                                { for production.sites.iter().map(|site| cell(index, choice, site, &title)) }
                            </tr>
                        }
                    }) }</tbody>
                </table>
            </div>
        </section>
    }
}

/// A school's servings: its share, or what is stated; emptied it is its share.
fn field(
    index: usize,
    choice: &SharedChoice,
    site: &Site,
    at: &SiteServings,
    title: &str,
    date: Date,
    edit: &super::Edit,
) -> Html {
    let state = {
        let (choice, site) = (choice.clone(), site.id.clone());
        move |servings| ProductionEdit::State {
            date,
            service: choice.service.clone(),
            recipe: choice.recipe.clone(),
            site: site.clone(),
            servings,
        }
    };
    let on_change = {
        let state = state.clone();
        edit.reform(move |value| state(Some(units::Servings::new(value))))
    };
    let on_clear = edit.reform(move |()| state(None));
    html! {
        <td class={classes!("number", at.stated.then_some("stated"))} data-site={site.id.0.clone()}>
            <NumberField id={format!("servings-{index}-{}", site.id.0)} data_test="site-servings"
                label={words::servings_at(title, &site.name, at.stated)} hide_label={true}
                value={Some(at.servings.servings())} {on_change} on_clear={Some(on_clear)} />
            if at.stated { <small>{ words::STATED }</small> }
        </td>
    }
}
