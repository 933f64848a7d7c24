//! How the day's recipes are cooked: into which pans, and how long before
//! service; and the scale of the kitchens.

use super::sheet::title_of;
use super::{use_edit, words};
use crate::components::{MASSES, NumberField, Select, UnitField};
use crate::language::of_table;
use crate::page::{Page, use_page};
use crate::state::ProductionEdit;
use engine::production::{Filling, KitchenWay, Panning, planned_servings};
use engine::recipe::RecipeId;
use engine::units::{Grams, Servings};
use engine::week::{Date, Week};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::rc::Rc;
use yew::prelude::*;

/// Which day.
#[derive(Clone, PartialEq, Properties)]
pub struct WaysProps {
    /// The week.
    pub week: Rc<Week>,
    /// The day.
    pub date: Date,
}

/// The section, folded up at first.
#[component]
pub fn Ways(props: &WaysProps) -> Html {
    let page = use_page();
    let edit = use_edit();
    let recipes = planned_servings(&props.week, Some(props.date));
    let scales = &page.tables.reference.scales;
    let production = &page.contents().rest.production;
    let in_use = scales.named(production.scale.as_deref());
    let names: Vec<AttrValue> = scales
        .all()
        .iter()
        .map(|scale| of_table(&scale.words).into())
        .collect();
    let chosen = scales.all().iter().position(|scale| scale == in_use);
    let on_choose = {
        let ids: Vec<String> = scales
            .all()
            .iter()
            .map(|scale| scale.name.clone())
            .collect();
        edit.reform(move |index: usize| ProductionEdit::Scale(ids[index].clone()))
    };
    html! {
        <section class="ways-of-cooking" aria-labelledby="ways">
            <h2 id="ways">{ words::WAYS }</h2>
            <p><Select id="scale" label={words::SCALE} {names} {chosen} {on_choose} /></p>
            <p class="hint">{ words::source(&in_use.source, &in_use.status) }</p>
            <details>
                <summary>{ words::PANS }</summary>
                <p class="hint">{ words::PANS_HINT }</p>
                <div class="wide">
                    <table class="plain-table">
                        <thead><tr>
                            <th scope="col">{ words::DISH }</th>
                            <th scope="col">{ words::PAN }</th>
                            <th scope="col">{ words::FILLED_BY }</th>
                            <th scope="col">{ words::MINUTES }</th>
                        </tr></thead>
                        <tbody>{ for recipes.keys().enumerate().map(|(index, recipe)| {
                            row(&page, index, recipe, &edit)
                        }) }</tbody>
                    </table>
                </div>
                <ul class="hint">{ for page.tables.reference.pans.all().iter().map(|pan| html! {
                    <li>{ words::pan_row(pan) }</li>
                }) }</ul>
            </details>
        </section>
    }
}

fn row(page: &Page, index: usize, recipe: &RecipeId, edit: &super::Edit) -> Html {
    let production = &page.contents().rest.production;
    let way = production.way(recipe).cloned().unwrap_or(KitchenWay {
        recipe: recipe.clone(),
        pan: None,
        minutes: None,
    });
    let title = title_of(page, recipe);
    let pans = page.tables.reference.pans.all();
    let names: Vec<AttrValue> = std::iter::once(words::NO_PAN.into())
        .chain(pans.iter().map(|pan| AttrValue::from(of_table(&pan.words))))
        .collect();
    let at = way
        .pan
        .as_ref()
        .and_then(|own| pans.iter().position(|pan| pan.name == own.pan));
    let on_pan = {
        let (way, ids) = (
            way.clone(),
            pans.iter().map(|pan| pan.name.clone()).collect::<Vec<_>>(),
        );
        edit.reform(move |index: usize| {
            let filling = way.pan.as_ref().map_or(Filling::Volume, |pan| pan.filling);
            let pan = index.checked_sub(1).and_then(|at| ids.get(at).cloned());
            ProductionEdit::Way(KitchenWay {
                pan: pan.map(|pan| Panning { pan, filling }),
                ..way.clone()
            })
        })
    };
    let on_minutes = {
        let way = way.clone();
        move |minutes: Option<Decimal>| {
            ProductionEdit::Way(KitchenWay {
                minutes: minutes.and_then(|minutes| minutes.to_u32()),
                ..way.clone()
            })
        }
    };
    let cleared = on_minutes.clone();
    html! {
        <tr data-test="way" data-recipe={recipe.0.clone()}>
            <th scope="row">{ &title }</th>
            <td><Select id={format!("pan-{index}")} hide_label={true} label={words::of(words::PAN, &title)}
                {names} chosen={Some(at.map_or(0, |at| at + 1))} on_choose={on_pan} /></td>
            <td>{ way.pan.clone().map(|pan| filling(index, &title, &way, &pan, edit)).unwrap_or_default() }</td>
            <td><NumberField id={format!("minutes-{index}")} hide_label={true} label={words::of(words::MINUTES, &title)}
                value={way.minutes.map(Decimal::from)}
                on_change={edit.reform(move |value| on_minutes(Some(value)))}
                on_clear={Some(edit.reform(move |()| cleared(None)))} /></td>
        </tr>
    }
}

/// By what a pan is filled: volume, servings or weight, and how many.
fn filling(index: usize, title: &str, way: &KitchenWay, pan: &Panning, edit: &super::Edit) -> Html {
    let names: Vec<AttrValue> = [words::BY_VOLUME, words::BY_SERVINGS, words::BY_WEIGHT]
        .into_iter()
        .map(AttrValue::from)
        .collect();
    let chosen = match pan.filling {
        Filling::Volume => 0,
        Filling::Servings { .. } => 1,
        Filling::Weight { .. } => 2,
    };
    let fill = {
        let (way, pan) = (way.clone(), pan.clone());
        move |filling| {
            ProductionEdit::Way(KitchenWay {
                pan: Some(Panning {
                    filling,
                    ..pan.clone()
                }),
                ..way.clone()
            })
        }
    };
    let on_choose = {
        let fill = fill.clone();
        edit.reform(move |index: usize| {
            fill(match index {
                1 => Filling::Servings {
                    servings: Servings::new(Decimal::from(25)),
                },
                2 => Filling::Weight {
                    grams: Grams::new(Decimal::from(4000)),
                },
                _ => Filling::Volume,
            })
        })
    };
    html! {
        <div class="filling">
            <Select id={format!("fill-{index}")} hide_label={true} label={words::of(words::FILLED_BY, title)}
                {names} chosen={Some(chosen)} {on_choose} />
            if let Filling::Servings { servings } = pan.filling {
                <NumberField id={format!("fill-servings-{index}")} hide_label={true} least={Decimal::ONE}
                    label={words::of(words::BY_SERVINGS, title)} value={Some(servings.servings())}
                    on_change={edit.reform({
                        let fill = fill.clone();
                        move |value| fill(Filling::Servings { servings: Servings::new(value) })
                    })} />
            }
            if let Filling::Weight { grams } = pan.filling {
                <UnitField id={format!("fill-weight-{index}")} hide_label={true} label={words::of(words::BY_WEIGHT, title)}
                    units={MASSES} value={Some(grams.grams())}
                    on_change={edit.reform(move |value| fill(Filling::Weight { grams: Grams::new(value) }))} />
            }
        </div>
    }
}
