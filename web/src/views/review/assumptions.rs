//! What was assumed: how figures are computed, and each reading that may be
//! meant otherwise.

use super::{Dish, part, words};
use crate::views::recipe::{doubt, problem_of};
use crate::words::title_or_untitled;
use engine::recipe::LineKind;
use yew::prelude::*;

/// The assumptions of the method, and those of single lines.
pub fn assumptions(dishes: &[Dish]) -> Html {
    let unmeasured: Vec<String> = dishes
        .iter()
        .filter(|(_, study)| !study.batch_weight_measured)
        .map(|(recipe, _)| title_or_untitled(&recipe.title))
        .collect();
    let lines = dishes.iter().flat_map(open_lines);
    let lines: Vec<(String, String, String)> = lines.collect();
    let body = html! {<>
        <ul>{ for words::METHODS.iter().map(|text| html! { <li>{ *text }</li> }) }
            if !unmeasured.is_empty() { <li>{ words::unmeasured(&unmeasured.join("; ")) }</li> }
        </ul>
        if lines.is_empty() { <p>{ words::NO_DOUBTS }</p> } else {
            <table>
                <caption>{ words::DOUBTS }</caption>
                <thead><tr>
                    <th scope="col">{ words::RECIPE }</th>
                    <th scope="col">{ words::LINE }</th>
                    <th scope="col">{ words::TAKEN_AS }</th>
                </tr></thead>
                <tbody>{ for lines.iter().map(|(recipe, line, what)| html! {
                    <tr data-test="review-doubt">
                        <th scope="row">{ recipe }</th><td>{ line }</td><td>{ what }</td>
                    </tr>
                }) }</tbody>
            </table>
        }
    </>};
    part("review-assumptions", words::ASSUMPTIONS, body)
}

/// Lines that are not counted, or that were taken one way and may be meant
/// another.
fn open_lines((recipe, study): &Dish) -> Vec<(String, String, String)> {
    let lines = study.lines.iter().zip(&recipe.lines);
    lines
        .filter(|(of, _)| of.read.reading.kind == LineKind::Ingredient)
        .filter_map(|(of, line)| {
            let problem = problem_of(of).into_iter();
            let doubts = of.read.doubts.iter().map(doubt);
            let all: Vec<String> = problem.chain(doubts).collect();
            let title = title_or_untitled(&recipe.title);
            (!all.is_empty()).then(|| (title, line.text.clone(), all.join("; ")))
        })
        .collect()
}
