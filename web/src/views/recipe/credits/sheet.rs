//! The credits on paper.

use super::line::sum;
use super::{credited, exact, known, open, words};
use crate::format;
use crate::tables::StudiedRecipe;
use engine::recipe::Recipe;
use std::rc::Rc;
use yew::prelude::*;

/// What is printed.
#[derive(Clone, PartialEq, Properties)]
pub struct CreditSheetProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
}

/// The table of credits, what every line brings, and what the office states.
#[component]
pub fn CreditSheet(props: &CreditSheetProps) -> Html {
    let Some(credits) = &props.study.credits else {
        return Html::default();
    };
    if credits.per_serving.is_empty() {
        return Html::default();
    }
    let lines = &props.recipe.lines;
    let text = |line: usize| lines.get(line).map(|line| line.text.clone());
    let stated = lines.iter().flat_map(|line| {
        let credits = line.correction.credits.iter();
        credits.map(move |credit| (line, credit))
    });
    html! {
        <section class="credit-sheet">
            <h2>{ words::TITLE }</h2>
            <table><tbody>{ for known(credits).map(|credit| html! {
                <tr>
                    <th scope="row">{ words::component(credit.component) }</th>
                    <td class="number">{ credited(credit) }</td>
                    <td class="number">
                        { words::EXACT }{ ": " }{ words::amount(&exact(credit), &credit.unit) }
                    </td>
                </tr>
            }) }</tbody></table>
            if let Some(open) = open(credits) { <p class="sheet-small">{ open }</p> }
            <ul class="sheet-small">{ for credits.lines.iter().map(|credit| html! {
                <li>{ text(credit.line) }{ ": " }{ sum(credits, credit) }</li>
            }) }</ul>
            { for stated.map(|(line, credit)| html! {
                <p class="sheet-small">
                    { words::STATED_TITLE }{ ": " }{ &line.text }{ ": " }
                    { words::stated_credit(
                        &format::stated(credit.amount), credit.component, &credit.marks, &credit.reason,
                    ) }
                    if let Some(line) = &credit.stated_for {
                        { ", " }{ words::stated_for(line) }
                    }
                </p>
            }) }
        </section>
    }
}
