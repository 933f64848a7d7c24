//! The office's packs and prices.

use super::{Edit, use_edit, words};
use crate::components::{DateField, MASSES, NumberField, Pick, Picker, Select, UnitField, VOLUMES};
use crate::language::{food_name, lang_of_food};
use crate::page::{Page, use_page};
use crate::state::ProductionEdit;
use engine::foods::FoodId;
use engine::production::{Pack, PackSize};
use engine::units::{Grams, MassUnit, Millilitres, VolumeUnit};
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Foods offered for what is typed.
const OFFERED: usize = 12;

/// The section.
#[component]
pub fn Packs() -> Html {
    let page = use_page();
    let edit = use_edit();
    let search = use_callback(page.clone(), |typed: String, page| found(page, &typed));
    let on_pick = Callback::from({
        let edit = edit.clone();
        move |key: AttrValue| {
            if let Ok(food) = key.parse::<FoodId>() {
                edit.emit(ProductionEdit::AddPack(Pack {
                    food,
                    words: String::new(),
                    size: PackSize::Weight {
                        grams: MassUnit::Pound.grams(),
                    },
                    price: None,
                    priced_on: None,
                }));
            }
        }
    });
    let packs = &page.contents().rest.production.packs;
    html! {
        <section class="packs" aria-labelledby="packs">
            <h2 id="packs">{ words::PACKS }</h2>
            <p class="hint">{ words::PACKS_HINT }</p>
            <Picker id="add-pack" data_test="add-pack" label={words::ADD_PACK} {search} {on_pick} />
            if !packs.is_empty() {
                <details>
                    <summary>{ words::packs_kept(packs.len()) }</summary>
                    <div class="wide">
                        <table class="plain-table">
                            <thead><tr>
                                <th scope="col">{ words::FOOD }</th>
                                <th scope="col">{ words::PACK }</th>
                                <th scope="col">{ words::HOLDS }</th>
                                <th scope="col">{ words::PRICE }</th>
                                <th scope="col">{ words::PRICED_ON }</th>
                                <th scope="col"><span class="for-readers">{ words::REMOVE }</span></th>
                            </tr></thead>
                            <tbody>{ for packs.iter().enumerate().map(|(index, pack)| {
                                row(&page, index, pack, &edit)
                            }) }</tbody>
                        </table>
                    </div>
                </details>
            }
        </section>
    }
}

fn found(page: &Page, typed: &str) -> Vec<Pick> {
    let found = page.tables.foods_found(typed, OFFERED).take(OFFERED);
    found
        .map(|food| Pick::food(food, AttrValue::default()))
        .collect()
}

fn row(page: &Page, index: usize, pack: &Pack, edit: &Edit) -> Html {
    let food = page.tables.reference.foods.food(pack.food);
    let name = food.map_or_else(|| pack.food.to_string(), |food| food.description.clone());
    let change = {
        let pack = pack.clone();
        move |to: &dyn Fn(&mut Pack)| {
            let mut pack = pack.clone();
            to(&mut pack);
            ProductionEdit::Pack(index, pack)
        }
    };
    let words_typed = {
        let change = change.clone();
        edit.reform(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            change(&|pack| pack.words.clone_from(&text))
        })
    };
    let (priced, unpriced) = (change.clone(), change.clone());
    let (dated, undated) = (change.clone(), change.clone());
    let on_price = edit.reform(move |value| priced(&|pack| pack.price = Some(value)));
    let no_price = edit.reform(move |()| unpriced(&|pack| pack.price = None));
    let on_date = edit.reform(move |date| dated(&|pack| pack.priced_on = Some(date)));
    let no_date = edit.reform(move |()| undated(&|pack| pack.priced_on = None));
    let remove = edit.reform(move |_| ProductionEdit::RemovePack(index));
    let words_id = format!("pack-words-{index}");
    // What tells the labels of one row from those of the others.
    let of = html! {<>{ ": " }{ food_name(pack.food, &name) }</>};
    html! {
        <tr data-test="pack" data-food={pack.food.to_string()}>
            <th scope="row" lang={lang_of_food(pack.food)}>{ &name }</th>
            <td>
                <label class="for-readers" for={words_id.clone()}>{ words::PACK }{ of.clone() }</label>
                <input id={words_id} type="text" autocomplete="off" value={pack.words.clone()}
                    oninput={words_typed} />
            </td>
            <td>
                { size(index, &of, pack, edit) }
                if page.tables.reference.pack_weight(pack).is_none() {
                    <p class="problem">{ words::NO_PACK_WEIGHT }</p>
                }
            </td>
            <td><NumberField id={format!("price-{index}")} data_test="price" hide_label={true}
                label={words::PRICE} of={of.clone()} value={pack.price}
                on_change={on_price} on_clear={Some(no_price)} /></td>
            <td><DateField id={format!("priced-on-{index}")} hide_label={true}
                label={words::PRICED_ON} of={of.clone()} value={pack.priced_on}
                on_change={on_date} on_clear={Some(no_date)} /></td>
            <td><button type="button" class="quiet small" onclick={remove}>
                <span aria-hidden="true">{ "×" }</span>
                <span class="for-readers">{ words::REMOVE }{ of }</span>
            </button></td>
        </tr>
    }
}

/// What a pack holds, by weight or by volume.
fn size(index: usize, of: &Html, pack: &Pack, edit: &Edit) -> Html {
    let names: Vec<AttrValue> = vec![words::WEIGHT.into(), words::VOLUME.into()];
    let sized = {
        let pack = pack.clone();
        move |size| {
            ProductionEdit::Pack(
                index,
                Pack {
                    size,
                    ..pack.clone()
                },
            )
        }
    };
    let on_choose = {
        let sized = sized.clone();
        edit.reform(move |index: usize| {
            sized(match index {
                0 => PackSize::Weight {
                    grams: MassUnit::Pound.grams(),
                },
                _ => PackSize::Volume {
                    millilitres: VolumeUnit::Gallon.millilitres(),
                },
            })
        })
    };
    let (chosen, value, units) = match pack.size {
        PackSize::Weight { grams } => (0, grams.grams(), MASSES),
        PackSize::Volume { millilitres } => (1, millilitres.millilitres(), VOLUMES),
    };
    let by_weight = chosen == 0;
    let on_change = edit.reform(move |value: Decimal| {
        sized(match by_weight {
            true => PackSize::Weight {
                grams: Grams::new(value),
            },
            false => PackSize::Volume {
                millilitres: Millilitres::new(value),
            },
        })
    });
    html! {
        <div class="filling">
            <Select id={format!("pack-by-{index}")} hide_label={true} label={words::HOLDS} of={of.clone()}
                {names} chosen={Some(chosen)} {on_choose} />
            <UnitField key={chosen} hide_label={true} id={format!("pack-{index}")} label={words::HOLDS}
                of={of.clone()} {units} value={Some(value)} {on_change} />
        </div>
    }
}
