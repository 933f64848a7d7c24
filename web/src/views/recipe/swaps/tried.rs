//! The figures of a proposal that is tried, beside those of the card as it
//! stands: in a serving and in every week.

use super::moved::{WEEK_NUTRIENTS, WeekMoves};
use super::proposal::title;
use super::search::Weeks;
use super::verdicts::verdicts;
use super::words;
use crate::language::naming;
use crate::page::use_page;
use crate::views::recipe::versions::two::{Allergens, Credits, Figures, Side};
use engine::recipe::Recipe;
use engine::swaps::{Proposal, apply};
use std::rc::Rc;
use yew::prelude::*;

/// What is tried.
#[derive(Clone, PartialEq, Properties)]
pub struct TriedProps {
    /// The recipe as it stands.
    pub recipe: Rc<Recipe>,
    /// Index of the line.
    pub line: usize,
    /// The proposal, if one is tried.
    pub proposal: Option<Proposal>,
    /// What it does to the weeks; nothing until that is worked out.
    pub weeks: Option<Weeks>,
    /// Told when it is taken.
    pub on_take: Callback<Proposal>,
    /// Told when it is put back.
    pub on_put_back: Callback<()>,
}

/// The figures.
#[component]
pub fn Tried(props: &TriedProps) -> Html {
    let page = use_page();
    let contents = page.contents();
    let study = page.tables.study(&props.recipe, contents);
    let key = (props.recipe.clone(), props.line, props.proposal.clone());
    let with = use_memo(
        (key, contents.clone()),
        |((recipe, line, proposal), contents)| {
            let changed = Rc::new(apply(recipe, *line, proposal.as_ref()?));
            let study = page.tables.study_form(&changed, contents);
            Some(Side {
                name: words::WITH_IT.into(),
                recipe: changed,
                study,
            })
        },
    );
    let as_it_stands = Side {
        name: words::AS_IT_STANDS.into(),
        recipe: props.recipe.clone(),
        study,
    };
    let (Some(with), Some(proposal)) = (&*with, &props.proposal) else {
        return html! {
            <section class="tried" aria-labelledby="tried" data-test="nothing-tried">
                <h2 id="tried">{ words::TRIED }</h2>
                <p class="hint">{ words::NOTHING_TRIED }</p>
            </section>
        };
    };
    let sides = [as_it_stands, with.clone()];
    let on_take = {
        let proposal = proposal.clone();
        props.on_take.reform(move |_: MouseEvent| proposal.clone())
    };
    let on_put_back = props.on_put_back.reform(|_: MouseEvent| ());
    html! {
        <section class="tried" aria-labelledby="tried" data-test="tried">
            <h2 id="tried">{ words::TRIED }</h2>
            <p role="status" data-test="tried-what">{ naming(words::trying, &title(&proposal.change)) }</p>
            <Figures sides={sides.clone()} nutrients={WEEK_NUTRIENTS.to_vec()} />
            <Credits sides={sides.clone()} />
            <Allergens {sides} />
            <h3>{ words::IN_WEEKS }</h3>
            if let Some(weeks) = &props.weeks {
                if weeks.is_empty() {
                    <p class="note">{ words::NO_WEEKS }</p>
                } else {
                    <WeekMoves weeks={weeks.clone()} />
                    { verdicts(weeks) }
                }
            } else {
                <p class="note">{ words::WEEKS_COMING }</p>
            }
            <p class="swap-ways">
                <button type="button" data-test="put-back" onclick={on_put_back}>{ words::PUT_BACK }</button>
                <button type="button" class="main-way" data-test="take-tried" onclick={on_take}>
                    { words::TAKE }
                </button>
            </p>
        </section>
    }
}
