//! How the search ended.

use super::plan::PlanView;
use super::said;
use super::{Wishes, words};
use crate::named;
use engine::mend::{Outcome, Proof, Standing};
use engine::week::Week;
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct OutcomeProps {
    /// The week.
    pub week: Rc<Week>,
    /// How it ended.
    pub outcome: Rc<Outcome>,
    /// How many changes were looked at.
    pub found: usize,
    /// What is wished.
    pub wishes: Wishes,
    /// Wishes something else.
    pub wish: Callback<Wishes>,
    /// Looks again.
    pub find: Callback<Wishes>,
}

/// The end of a search, to which the keyboard goes.
#[component]
pub fn OutcomeView(props: &OutcomeProps) -> Html {
    let (told, rest) = match &*props.outcome {
        Outcome::NothingToMend => (words::NONE_NEEDED.to_string(), Html::default()),
        Outcome::NotFound { stopped: true } => (words::STOPPED.to_string(), Html::default()),
        Outcome::NotFound { stopped: false } => (words::GAVE_UP.to_string(), Html::default()),
        Outcome::Impossible { because, smallest } => (
            words::impossible(because.len(), props.found),
            because_of(because, *smallest),
        ),
        Outcome::Mended { plan, proof } => {
            let count = plan.changes.len();
            let told = match proof {
                Proof::Least => words::least(count, props.found),
                Proof::AtMostMore { changes } => words::best(count, *changes, props.found),
            };
            (told, html! { <PlanView ..props.clone() /> })
        }
    };
    html! {
        <div class="mend-outcome">
            <p id="mend-outcome" tabindex="-1" data-test="mend-outcome">{ told }</p>
            { declined(props) }
            { rest }
        </div>
    }
}

fn because_of(because: &[Standing], smallest: bool) -> Html {
    html! {<>
        <ul data-test="mend-because">
            { for because.iter().map(|standing| {
                let asked = &standing.requirement;
                html! {
                    <li>
                        { said::requirement(asked) } { ": " }
                        { named::counted(&said::figure(standing.figure, standing.digits), &asked.unit) }
                        { ", " } { said::limit(asked) }
                    </li>
                }
            }) }
        </ul>
        if !smallest { <p class="hint">{ words::NOT_SMALLEST }</p> }
        <p class="hint">{ words::IMPOSSIBLE_WAY }</p>
    </>}
}

/// How many changes were declined, and the way back.
fn declined(props: &OutcomeProps) -> Html {
    let count = props.wishes.declined.len();
    if count == 0 {
        return Html::default();
    }
    let forget = {
        let (wishes, wish) = (props.wishes.clone(), props.wish.clone());
        let find = props.find.clone();
        Callback::from(move |_| {
            let wishes = Wishes {
                declined: Vec::new(),
                ..wishes.clone()
            };
            wish.emit(wishes.clone());
            find.emit(wishes);
        })
    };
    html! {
        <p class="note">
            { words::declined(count) } { " " }
            <button type="button" class="as-text" onclick={forget}>{ words::FORGET }</button>
        </p>
    }
}
