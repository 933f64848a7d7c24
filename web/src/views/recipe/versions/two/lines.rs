//! The lines of both forms, the same ones side by side.

use super::TwoProps;
use super::align::align;
use crate::format;
use crate::views::recipe::reading::weight_of;
use crate::views::recipe::versions::words;
use engine::recipe::Recipe;
use yew::prelude::*;

/// The table.
#[component]
pub fn Lines(props: &TwoProps) -> Html {
    let [left, right] = &props.sides;
    let (left_texts, right_texts) = (texts(&left.recipe), texts(&right.recipe));
    let rows = align(&left_texts, &right_texts).into_iter();
    let rows = rows.filter(|(l, r)| {
        let is_blank = |text: Option<&str>| text.is_none_or(|text| text.trim().is_empty());
        !(is_blank(l.map(|at| left_texts[at])) && is_blank(r.map(|at| right_texts[at])))
    });
    let cells = |side: usize, at: Option<usize>| {
        let side = &props.sides[side];
        let text = at.map(|at| side.recipe.lines[at].text.clone());
        let weight = at.and_then(|at| weight_of(&side.study, at));
        html! {<>
            <td>{ text.unwrap_or_default() }</td>
            <td class="number">{ weight.map(format::grams).unwrap_or_default() }</td>
        </>}
    };
    html! {
        <table class="two two-lines" data-test="two-lines">
            <caption>{ words::LINES }</caption>
            <thead><tr>
                <th scope="col">{ &left.name }</th>
                <th scope="col" class="number">{ words::WEIGHT }</th>
                <th scope="col"><span class="for-readers">{ words::DIFFERS }</span></th>
                <th scope="col">{ &right.name }</th>
                <th scope="col" class="number">{ words::WEIGHT }</th>
            </tr></thead>
            <tbody>
                { for rows.map(|(l, r)| {
                    let differs = match (l, r) {
                        (Some(l), Some(r)) => left.recipe.lines[l] != right.recipe.lines[r],
                        _ => true,
                    };
                    html! {
                        <tr class={classes!(differs.then_some("differs"))}>
                            { cells(0, l) }
                            <td>if differs { <span class="differs-mark" role="img" aria-label={words::DIFFERS}>
                                { "≠" }
                            </span> }</td>
                            { cells(1, r) }
                        </tr>
                    }
                }) }
            </tbody>
        </table>
    }
}

fn texts(recipe: &Recipe) -> Vec<&str> {
    recipe.lines.iter().map(|line| line.text.trim()).collect()
}
