//! The schools: their names, and how many meals each usually serves.

use super::{use_edit, words};
use crate::components::NumberField;
use crate::page::{Page, use_page};
use crate::state::ProductionEdit;
use crate::views::week::words::service;
use engine::production::Site;
use engine::units::Servings;
use engine::week::Service;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The services that the book plans, and those that a school serves.
fn services(page: &Page) -> Vec<Service> {
    let contents = page.contents();
    let planned = contents.weeks.iter().flat_map(|week| week.services());
    let sites = &contents.rest.production.sites;
    let served = sites.iter().flat_map(|site| &site.serves);
    let mut services: Vec<Service> = planned
        .chain(served.map(|one| one.service.clone()))
        .collect();
    services.sort();
    services.dedup();
    services
}

/// The table of schools.
#[component]
pub fn Sites() -> Html {
    let page = use_page();
    let edit = use_edit();
    let services = services(&page);
    let sites = &page.contents().rest.production.sites;
    let add = edit.reform(|_| ProductionEdit::AddSite(words::NEW_SCHOOL.to_string()));
    html! {
        <section class="sites" aria-labelledby="sites">
            <h2 id="sites">{ words::SCHOOLS }</h2>
            <p class="hint">{ words::SCHOOLS_HINT }</p>
            if !sites.is_empty() {
                <div class="wide">
                    <table class="plain-table">
                        <thead><tr>
                            <th scope="col">{ words::SCHOOL }</th>
                            { for services.iter().map(|one| html! {
                                <th scope="col">{ service(one.kind, &one.group.0) }</th>
                            }) }
                            <th scope="col"><span class="for-readers">{ words::REMOVE }</span></th>
                        </tr></thead>
                        <tbody>{ for sites.iter().map(|site| row(site, &services, &edit)) }</tbody>
                    </table>
                </div>
            }
            <button type="button" id="add-site" onclick={add}>{ words::ADD_SCHOOL }</button>
        </section>
    }
}

fn row(site: &Site, services: &[Service], edit: &super::Edit) -> Html {
    let id = site.id.clone();
    let name = {
        let id = id.clone();
        edit.reform(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            ProductionEdit::SiteName(id.clone(), text)
        })
    };
    let remove = {
        let id = id.clone();
        edit.reform(move |_| ProductionEdit::RemoveSite(id.clone()))
    };
    html! {
        <tr key={id.0.clone()} data-test="site" data-site={id.0.clone()}>
            <th scope="row">
                <input type="text" autocomplete="off" aria-label={words::SCHOOL.to_string()}
                    value={site.name.clone()} oninput={name} />
            </th>
            { for services.iter().enumerate().map(|(index, one)| {
                let (id, of) = (id.clone(), one.clone());
                let on_change = edit.reform(move |value| {
                    ProductionEdit::SiteMeals(id.clone(), of.clone(), Servings::new(value))
                });
                html! {
                    <td>
                        <NumberField id={format!("meals-{}-{index}", site.id.0)} hide_label={true}
                            label={words::meals_at(&service(one.kind, &one.group.0), &site.name)}
                            value={Some(site.meals(one).servings())} {on_change} />
                    </td>
                }
            }) }
            <td>
                <button type="button" class="quiet small" onclick={remove}
                    aria-label={words::remove(&site.name)}>{ "×" }</button>
            </td>
        </tr>
    }
}
