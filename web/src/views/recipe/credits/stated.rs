//! The credits that the office states itself, all of the recipe's together.

use super::words;
use crate::format;
use crate::state::RecipeEdit;
use crate::views::recipe::CardProps;
use engine::components::StatedCredit;
use yew::prelude::*;

/// The list; nothing where no credit is stated.
#[component]
pub fn Stated(props: &CardProps) -> Html {
    let lines = props.recipe.lines.iter().enumerate();
    let stated: Vec<(usize, usize, &StatedCredit)> = lines
        .flat_map(|(line, of)| {
            let credits = of.correction.credits.iter().enumerate();
            credits.map(move |(index, credit)| (line, index, credit))
        })
        .collect();
    if stated.is_empty() {
        return Html::default();
    }
    html! {
        <div class="stated-credits" data-test="stated-credits">
            <h3>{ words::STATED_TITLE }</h3>
            <ul>{ for stated.into_iter().map(|(line, index, credit)| item(props, line, index, credit)) }</ul>
        </div>
    }
}

fn item(props: &CardProps, line: usize, index: usize, credit: &StatedCredit) -> Html {
    let of = &props.recipe.lines[line];
    let take_back = {
        let mut correction = of.correction.clone();
        correction.credits.remove(index);
        let edit = RecipeEdit::Correct { line, correction };
        props.edit.reform(move |_: MouseEvent| edit.clone())
    };
    let still_holds = {
        let mut correction = of.correction.clone();
        correction.credits[index].stated_for = None;
        let edit = RecipeEdit::Correct { line, correction };
        props.edit.reform(move |_: MouseEvent| edit.clone())
    };
    let words = words::stated_credit(
        &format::stated(credit.amount),
        credit.component,
        &credit.marks,
        &credit.reason,
    );
    html! {
        <li>
            <strong>{ &of.text }</strong>{ ": " }{ words }{ " " }
            if let Some(line) = &credit.stated_for {
                <span class="unknown" data-test="stated-for">{ words::stated_for(line) }</span>{ " " }
                <button type="button" data-test="still-holds" onclick={still_holds}>
                    { words::STILL_HOLDS }
                </button>{ " " }
            }
            <button type="button" data-test="take-back-credit" onclick={take_back}>
                { words::TAKE_BACK }
            </button>
        </li>
    }
}
