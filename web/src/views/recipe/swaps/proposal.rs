//! One proposal: the new line, what it changes, why, and two ways on.

use super::moved::{in_weeks, moved};
use super::search::Weeks;
use super::verdicts::verdicts;
use super::{reasons, words};
use crate::language::{food_name, naming, of_table};
use crate::page::{Page, use_page};
use engine::foods::NutrientId;
use engine::swaps::{Change, Proposal};
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct ProposalCardProps {
    /// Its place among all.
    pub at: usize,
    /// Its place among its likes, from 1.
    pub number: usize,
    /// The proposal.
    pub proposal: Proposal,
    /// What it does to the weeks; nothing until that is worked out.
    pub weeks: Option<Weeks>,
    /// The nutrient that is shown of the weeks.
    pub shown: NutrientId,
    /// Whether its figures are shown.
    pub is_tried: bool,
    /// Told when it is tried, or put back.
    pub on_try: Callback<()>,
    /// Told when it is taken.
    pub on_take: Callback<Proposal>,
}

/// The card.
#[component]
pub fn ProposalCard(props: &ProposalCardProps) -> Html {
    let page = use_page();
    let foods = &page.tables.reference.foods;
    let proposal = &props.proposal;
    let title = title(&proposal.change);
    let id = format!("swap-{}", props.at);
    let on_try = props.on_try.reform(|_: MouseEvent| ());
    let on_take = {
        let proposal = proposal.clone();
        props.on_take.reform(move |_: MouseEvent| proposal.clone())
    };
    // Buttons of the same words are told apart by the proposal's name.
    let of_it = html! { <span class="for-readers">{ ": " }{ title.clone() }</span> };
    html! {
        <article class={classes!("swap", props.is_tried.then_some("is-tried"))}
            aria-labelledby={id.clone()} data-test="proposal" data-at={props.at.to_string()}>
            <h3 id={id}>
                <span class="swap-number">{ words::number(props.number) }</span>{ " " }
                <span data-test="proposal-title">{ title }</span>
            </h3>
            <ul class="swap-lines" aria-label={words::NEW_LINES}>
                { for proposal.lines.iter().map(|line| html! {
                    <li data-test="new-line">{ &line.text }</li>
                }) }
            </ul>
            <p class="note">{ words::IN_A_SERVING }</p>
            <dl class="swap-moves">
                { for proposal.effect.nutrients.iter().map(|row| html! {
                    <div data-nutrient={row.nutrient.0.to_string()}>
                        <dt>{ words::nutrient(foods, row.nutrient) }</dt>
                        <dd data-test="serving-move">{ moved(foods, row) }</dd>
                    </div>
                }) }
                if let Some(cost) = proposal.effect.cost {
                    <div><dt>{ words::COST }</dt><dd>{ words::cost_change(cost) }</dd></div>
                }
            </dl>
            { weeks(&page, props) }
            <ul class="swap-reasons" aria-label={words::WHY}>
                { for reasons::told(foods, &proposal.reasons).into_iter().map(|reason| html! {
                    <li>{ reason }</li>
                }) }
            </ul>
            <p class="swap-ways">
                <button type="button" data-test="try" aria-pressed={props.is_tried.to_string()}
                    onclick={on_try}>{ words::TRY }{ of_it.clone() }</button>
                <button type="button" class="main-way" data-test="take"
                    onclick={on_take}>{ words::TAKE }{ of_it }</button>
            </p>
        </article>
    }
}

/// What a proposal is called.
pub fn title(change: &Change) -> Html {
    match change {
        Change::Food { food, description } => food_name(*food, description),
        Change::Half { food, description } => naming(words::half, &food_name(*food, description)),
        Change::Move { words, .. } => html! { { of_table(words) } },
    }
}

/// How the average meals move, by the nutrient that is asked for first; the
/// tried proposal shows all that limits are about.
fn weeks(page: &Page, props: &ProposalCardProps) -> Html {
    let Some(weeks) = &props.weeks else {
        return html! { <p class="note">{ words::WEEKS_COMING }</p> };
    };
    let lines = in_weeks(page, weeks, props.shown);
    if lines.is_empty() {
        return html! { <p class="note">{ words::NO_WEEKS }</p> };
    }
    html! {
        <>
            <ul class="swap-weeks" aria-label={words::IN_WEEKS}>
                { for lines.into_iter().map(|line| html! { <li data-test="week-move">{ line }</li> }) }
            </ul>
            { verdicts(weeks) }
        </>
    }
}
