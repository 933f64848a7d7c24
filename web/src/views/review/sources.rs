//! Where the values come from: the dataset, and the packages and sheets of the
//! office's own foods.

use super::{Dish, part, words};
use crate::language::description;
use crate::page::Page;
use engine::foods::FoodId;
use engine::own_foods::OwnSource;
use std::collections::BTreeSet;
use yew::prelude::*;

/// The citation of the dataset, and every food that the week uses.
pub fn sources(page: &Page, dishes: &[Dish]) -> Html {
    let parts = dishes.iter().flat_map(|(_, study)| &study.parts);
    let foods: BTreeSet<FoodId> = parts.filter_map(|part| part.food).collect();
    let table = &page.tables.reference.foods;
    let body = html! {<>
        <p>{ words::SOURCES_HOW }</p>
        <p>{ words::CITATION }</p>
        <table>
            <thead><tr>
                <th scope="col">{ words::NUMBER }</th>
                <th scope="col">{ words::FOOD }</th>
                <th scope="col">{ words::SOURCE }</th>
            </tr></thead>
            <tbody>{ for foods.iter().filter_map(|id| {
                let food = table.food(*id)?;
                Some(html! {
                    <tr data-test="review-food">
                        <td class="number">{ id.to_string() }</td>
                        <th scope="row">{ description(food) }</th>
                        <td>{ source(page, *id) }</td>
                    </tr>
                })
            }) }</tbody>
        </table>
    </>};
    part("review-sources", words::SOURCES, body)
}

fn source(page: &Page, food: FoodId) -> String {
    let FoodId::Own(number) = food else {
        return words::DATASET.to_string();
    };
    match page.contents().own_food(number).map(|own| &own.source) {
        Some(OwnSource::Label { reference, .. }) => words::label(reference),
        Some(OwnSource::Values { reference, .. }) => words::values(reference),
        None => String::new(),
    }
}
