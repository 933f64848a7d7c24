//! The plan: each change in words with what it moves, to accept or to decline.

use super::outcome::OutcomeProps;
use super::said;
use super::words;
use crate::named;
use crate::page::{Page, focus, use_page};
use crate::state::Action;
use engine::exact::Digits;
use engine::findings::Verdict;
use engine::mend::{Effect, Outcome, PlannedChange, WeekChange};
use yew::prelude::*;

/// The changes of a plan.
#[component]
pub fn PlanView(props: &OutcomeProps) -> Html {
    let page = use_page();
    let Outcome::Mended { plan, .. } = &*props.outcome else {
        return Html::default();
    };
    let made = |change: &WeekChange| {
        props.wishes.made.contains(change) && !said::fits(page.contents(), &props.week, change)
    };
    let all_made = plan.changes.iter().all(|planned| made(&planned.change));
    html! {<>
        <p class="hint">{ words::CHECKED }</p>
        <ol class="mend-plan">
            { for plan.changes.iter().enumerate().map(|(at, planned)| {
                let made = made(&planned.change);
                html! { <li key={at} data-test="mend-change">{ one(&page, props, at, planned, made) }</li> }
            }) }
        </ol>
        if all_made { <p id="mend-all-made" tabindex="-1" role="status">{ words::ALL_MADE }</p> }
    </>}
}

fn accept_id(at: usize) -> String {
    format!("mend-accept-{at}")
}

fn one(page: &Page, props: &OutcomeProps, at: usize, planned: &PlannedChange, made: bool) -> Html {
    let said = said::change(page.contents(), &props.week, &planned.change);
    let fits = said::fits(page.contents(), &props.week, &planned.change);
    html! {<>
        <p class="mend-said">{ said.clone() }</p>
        if !planned.allergens.is_empty() {
            <p class="problem">{ words::allergens(&allergens(planned)) }</p>
        }
        { effects(&planned.effects) }
        <p class="mend-ways-out">
            if made {
                <span data-test="mend-made">{ words::MADE }</span>
            } else if fits {
                <button type="button" id={accept_id(at)} aria-label={words::accept_of(&said)}
                    onclick={accept(page, props, at, &planned.change, said.clone())}>
                    { words::ACCEPT }
                </button>
                { " " }
                <button type="button" id={format!("mend-decline-{at}")} aria-label={words::decline_of(&said)}
                    onclick={decline(props, &planned.change)}>{ words::DECLINE }</button>
            } else {
                <span class="problem">{ words::MISFIT }</span>
            }
        </p>
    </>}
}

fn allergens(planned: &PlannedChange) -> String {
    let names = planned.allergens.iter();
    let names = names.map(|allergen| named::allergen(*allergen).to_string());
    names.collect::<Vec<_>>().join(", ")
}

/// Makes the change: one step, to be taken back like any other. The keyboard
/// goes to the next change that is open.
fn accept(
    page: &Page,
    props: &OutcomeProps,
    at: usize,
    change: &WeekChange,
    said: String,
) -> Callback<MouseEvent> {
    let (page, change, week) = (page.clone(), change.clone(), props.week.id.clone());
    let (wishes, wish) = (props.wishes.clone(), props.wish.clone());
    let next = next_open(props, &page, at);
    Callback::from(move |_| {
        page.act(Action::Mend(week.clone(), change.clone()));
        let mut wishes = wishes.clone();
        wishes.made.push(change.clone());
        wish.emit(wishes);
        page.tell(words::accepted(&said), true);
        let next = next.clone();
        // It is there once the page has been drawn again.
        gloo::timers::callback::Timeout::new(0, move || focus(&next)).forget();
    })
}

/// The button of the next change that can be accepted, or the closing words.
fn next_open(props: &OutcomeProps, page: &Page, at: usize) -> String {
    let Outcome::Mended { plan, .. } = &*props.outcome else {
        return String::new();
    };
    let count = plan.changes.len();
    let open = (1..count).map(|step| (at + step) % count);
    let mut open = open.filter(|other| {
        let change = &plan.changes[*other].change;
        said::fits(page.contents(), &props.week, change)
    });
    open.next()
        .map_or_else(|| "mend-all-made".to_owned(), accept_id)
}

/// Leaves the change out and looks again.
fn decline(props: &OutcomeProps, change: &WeekChange) -> Callback<MouseEvent> {
    let (wishes, wish, find) = (props.wishes.clone(), props.wish.clone(), props.find.clone());
    let change = change.clone();
    Callback::from(move |_| {
        let mut wishes = wishes.clone();
        wishes.declined.push(change.clone());
        wish.emit(wishes.clone());
        find.emit(wishes);
    })
}

/// What a change moves: what is missed now first.
fn effects(effects: &[Effect]) -> Html {
    if effects.is_empty() {
        return html! { <p class="note">{ words::NO_EFFECT }</p> };
    }
    let missed = |effect: &&Effect| effect.before.verdict != Verdict::Missed;
    let mut sorted: Vec<&Effect> = effects.iter().collect();
    sorted.sort_by_key(missed);
    html! {
        <table class="mend-effects">
            <caption class="for-readers">{ words::EFFECTS }</caption>
            <thead><tr>
                <th scope="col">{ words::EFFECT_WHAT }</th>
                <th scope="col" class="number">{ words::EFFECT_BEFORE }</th>
                <th scope="col" class="number">{ words::EFFECT_AFTER }</th>
                <th scope="col">{ words::EFFECT_LIMIT }</th>
            </tr></thead>
            <tbody>{ for sorted.into_iter().map(|effect| {
                let asked = &effect.before.requirement;
                let digits = telling(effect);
                html! {
                    <tr data-test="mend-effect">
                        <th scope="row">{ said::requirement(asked) }</th>
                        <td class="number">{ said::figure(effect.before.figure, digits) }</td>
                        <td class="number">{ said::figure(effect.after.figure, digits) }</td>
                        <td>{ said::limit(asked) }</td>
                    </tr>
                }
            }) }</tbody>
        </table>
    }
}

/// Decimals that show a difference, three at most.
fn telling(effect: &Effect) -> Digits {
    let fewest = effect.before.digits.max(effect.after.digits);
    let alike = |digits: &Digits| {
        let shown = |standing: &engine::mend::Standing| said::figure(standing.figure, *digits);
        shown(&effect.before) == shown(&effect.after)
    };
    let mut digits = fewest;
    while alike(&digits) && digits < Digits(3) {
        digits = Digits(digits.0 + 1);
    }
    digits
}
