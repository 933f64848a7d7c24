//! What people have decided in place of the program, with their reasons.

use super::{Dish, part, words};
use crate::format;
use crate::language::{description, naming, of_table};
use crate::page::Page;
use crate::words::title_or_untitled;
use engine::components::BeansRole;
use engine::recipe::{Correction, RecipeLine};
use engine::reference::LineStudy;
use engine::units::Grams;
use yew::prelude::*;

/// One decision.
struct Override {
    recipe: String,
    line: String,
    what: Html,
    reason: Option<String>,
}

/// Decisions on readings, credits, weights and rules.
pub fn overrides(page: &Page, dishes: &[Dish]) -> Html {
    let chosen = dishes.iter().flat_map(|(recipe, _)| &recipe.lines);
    let chosen = chosen.filter(|line| line.correction.food.is_some()).count();
    let all: Vec<Override> = dishes
        .iter()
        .flat_map(|dish| of_recipe(page, dish))
        .collect();
    let rest = &page.contents().rest;
    let switches = page.tables.reference.switches();
    let off = switches.iter().filter(|name| !rest.switches.is_on(name));
    let own = crate::state::OwnTable::ALL
        .into_iter()
        .filter(|table| table.text(&rest.own_rules).is_some());
    let body = html! {<>
        <ul>
            <li>{ words::foods_chosen(chosen) }</li>
            { for off.map(|name| html! { <li>{ words::not_followed(name) }</li> }) }
            { for own.map(|table| html! {
                <li>{ words::own_limits(&crate::words::own_table::name(table).to_string()) }</li>
            }) }
        </ul>
        if all.is_empty() { <p>{ words::NO_OVERRIDES }</p> } else {
            <table>
                <thead><tr>
                    <th scope="col">{ words::RECIPE }</th>
                    <th scope="col">{ words::LINE }</th>
                    <th scope="col">{ words::DECIDED }</th>
                    <th scope="col">{ words::REASON }</th>
                </tr></thead>
                <tbody>{ for all.iter().map(|one| html! {
                    <tr data-test="review-override">
                        <th scope="row">{ &one.recipe }</th>
                        <td>{ &one.line }</td>
                        <td>{ &one.what }</td>
                        <td>{ match &one.reason {
                            Some(reason) => reason.clone(),
                            None => words::NO_REASON.to_string(),
                        } }</td>
                    </tr>
                }) }</tbody>
            </table>
        }
    </>};
    part("review-overrides", words::OVERRIDES, body)
}

fn of_recipe(page: &Page, (recipe, study): &Dish) -> Vec<Override> {
    let title = title_or_untitled(&recipe.title);
    let whole = |what: String| Override {
        recipe: title.clone(),
        line: words::WHOLE.to_string(),
        what: what.into(),
        reason: None,
    };
    let mut all = Vec::new();
    if let Some(weight) = recipe.finished_weight {
        all.push(whole(words::finished(&format::grams(weight))));
    }
    if recipe.serving_size.is_some() {
        all.push(whole(words::SIZED.to_string()));
    }
    if recipe.beans == BeansRole::MeatAlternate {
        all.push(whole(words::BEANS.to_string()));
    }
    for (line, of) in recipe.lines.iter().zip(&study.lines) {
        all.extend(of_line(page, &title, line, of));
    }
    all
}

fn of_line(page: &Page, title: &str, line: &RecipeLine, of: &LineStudy) -> Vec<Override> {
    let told = decisions(page, &line.correction, of);
    told.into_iter()
        .map(|(what, reason)| Override {
            recipe: title.to_owned(),
            line: line.text.clone(),
            what,
            reason,
        })
        .collect()
}

/// What was decided about a line, besides its food.
fn decisions(page: &Page, set: &Correction, of: &LineStudy) -> Vec<(Html, Option<String>)> {
    let mut told = Vec::new();
    if let Some(weight) = set.weight {
        told.push((words::weighs(&format::grams(weight)).into(), None));
    }
    if let Some(basis) = set.basis {
        told.push((words::basis(basis).into(), None));
    }
    if let Some(cooked) = &set.cooked {
        let food = page.tables.reference.foods.food(cooked.food);
        let food = food.map_or_else(|| cooked.food.to_string().into(), description);
        let weight = cooked.weight.map(Grams::grams).map(format::stated);
        let what = naming(|food| words::cooked(food, weight.as_deref()), &food);
        told.push((what, None));
    }
    if let Some(id) = &set.recipe {
        let recipe = page.contents().recipe(id);
        let title = recipe.map_or(id.0.as_str(), |recipe| recipe.title.as_str());
        told.push((words::other_recipe(title).into(), None));
    }
    if !set.treatments.is_empty() {
        let treated = of.treatments.iter();
        let treated = treated.map(|one| (of_table(&one.words).into(), None));
        told.extend(treated);
    }
    for credit in &set.credits {
        let what = words::credit(
            &format::stated(credit.amount),
            credit.component,
            &credit.marks,
        );
        // It was stated before the line was changed: that is for a person to see.
        let what = match &credit.stated_for {
            Some(line) => words::stated_for(&what, line),
            None => what,
        };
        let reason = credit.reason.trim();
        told.push((what.into(), (!reason.is_empty()).then(|| reason.to_owned())));
    }
    told
}
