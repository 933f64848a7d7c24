//! What else could go in a line's place, in a panel under the line: what is
//! asked, what is proposed, and the figures of a proposal that is tried.

mod asked;
mod entry;
mod moved;
mod proposal;
mod reasons;
mod search;
mod tried;
mod verdicts;
mod words;

pub use entry::SwapWay;
pub use moved::{WEEK_NUTRIENTS, WeekMoves, digits, unit};
pub use words::nutrient as nutrient_name;

use crate::language::Say;
use crate::page::{focus, on_escape, use_page, use_title};
use crate::state::{Action, RecipeEdit};
use asked::{Asked, AskedForm};
use engine::recipe::Recipe;
use engine::swaps::{LeftOut, Proposal};
use proposal::ProposalCard;
use search::{Search, has_prices, use_search};
use std::ops::Range;
use std::rc::Rc;
use tried::Tried;
use yew::prelude::*;

/// Id of the panel's first stop of the keyboard.
const CLOSE: &str = "close-swaps";

/// Which line of which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct SwapsPanelProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// Index of the line.
    pub line: usize,
    /// Told when the panel is to be closed.
    pub close: Callback<()>,
}

/// The panel.
#[component]
pub fn SwapsPanel(props: &SwapsPanelProps) -> Html {
    let page = use_page();
    let asked = use_state(Asked::default);
    // The proposal whose figures are shown: its place among all.
    let tried = use_state(|| None::<usize>);
    use_effect_with(props.line, |_| focus(CLOSE));
    let SwapsPanelProps { recipe, line, .. } = props;
    let text = (recipe.lines.get(*line)).map_or("", |line| line.text.trim());
    use_title(&words::title_of(text));
    let search = use_search(&page, recipe, *line, &asked);
    use_effect_with(search.found.clone(), {
        let tried = tried.setter();
        // Another list has other proposals in its places.
        move |_| tried.set(None)
    });
    let on_ask = {
        let asked = asked.clone();
        Callback::from(move |changed| asked.set(changed))
    };
    let on_try = {
        let tried = tried.clone();
        Callback::from(move |which: Option<usize>| tried.set(which))
    };
    let take = {
        let (page, recipe, line) = (page.clone(), recipe.clone(), *line);
        let close = props.close.clone();
        Callback::from(move |proposal: Proposal| {
            let old = recipe.lines.get(line).map_or("", |line| &line.text);
            let told = words::taken(old, &texts(&proposal));
            let lines = proposal.lines;
            page.act(Action::Recipe(
                recipe.id.clone(),
                RecipeEdit::Swap { line, lines },
            ));
            page.tell(told, true);
            close.emit(());
        })
    };
    let found = match &search.found {
        Some(Ok(found)) => Some(found.clone()),
        _ => None,
    };
    let onkeydown = on_escape(&props.close);
    let onclose = props.close.reform(|_: MouseEvent| ());
    let card = |at: usize, number: usize| {
        let Some(proposal) = found.as_ref().and_then(|found| found.get(at)) else {
            return Html::default();
        };
        let is_tried = *tried == Some(at);
        let on_try = on_try.reform(move |()| (!is_tried).then_some(at));
        html! {
            <ProposalCard key={at} {at} {number} proposal={proposal.clone()} {is_tried}
                shown={asked.first()} weeks={search.weeks.get(at).cloned()} {on_try}
                on_take={take.clone()} />
        }
    };
    let shown = found.as_ref().and_then(|found| found.get((*tried)?));
    html! {
        <div class="swaps" role="dialog" aria-label={words::title_of(text)} data-test="swaps"
            {onkeydown}>
            <div class="swaps-head">
                <div>
                    <strong>{ words::TITLE }</strong>
                    <span class="swaps-line" data-test="old-line">{ text.to_owned() }</span>
                </div>
                <button type="button" class="quiet" id={CLOSE} onclick={onclose}>
                    { crate::words::CLOSE }
                </button>
            </div>
            <p class="hint">{ words::LEAD }</p>
            <div class="swaps-columns">
                <div class="swaps-asked">
                    <Tried recipe={recipe.clone()} line={*line} proposal={shown.cloned()}
                        weeks={(*tried).and_then(|at| search.weeks.get(at).cloned())}
                        on_take={take.clone()} on_put_back={on_try.reform(|()| None)} />
                    <AskedForm asked={(*asked).clone()} has_prices={has_prices(page.contents())} {on_ask} />
                </div>
                <div class="swaps-found" aria-busy={search.is_looking.to_string()}>
                    <p role="status" class="note" data-test="swaps-state">{ state(&search) }</p>
                    if let Some(Err(problem)) = &search.found {
                        <p class="problem" role="alert" data-test="swaps-problem">{ problem }</p>
                    }
                    if let Some(found) = &found {
                        { list(words::FOODS, 0..found.foods(), &card) }
                        { list(words::MOVES, found.foods()..found.len(), &card) }
                        { left_out(&found.left_out()) }
                    }
                </div>
            </div>
        </div>
    }
}

/// The new lines, one behind the other.
fn texts(proposal: &Proposal) -> String {
    let texts: Vec<&str> = proposal.lines.iter().map(|line| line.text.trim()).collect();
    texts.join(" + ")
}

fn state(search: &Search) -> String {
    match &search.found {
        _ if search.is_looking => words::LOOKING.to_string(),
        Some(Ok(found)) => words::found(found.foods(), found.len() - found.foods()),
        _ => String::new(),
    }
}

/// The proposals of one sort; `card` draws one by its place among all, and its
/// place among its likes.
fn list(title: Say, places: Range<usize>, card: &dyn Fn(usize, usize) -> Html) -> Html {
    if places.is_empty() {
        return Html::default();
    }
    let first = places.start;
    html! {
        <section class="swaps-list">
            <h2>{ title }</h2>
            { for places.map(|at| card(at, at - first + 1)) }
        </section>
    }
}

/// What plays the part and is not proposed, with the reason.
fn left_out(left_out: &LeftOut) -> Html {
    let rows = words::left_out(left_out);
    if rows.is_empty() {
        return Html::default();
    }
    html! {
        <section class="swaps-left-out" data-test="left-out">
            <h2>{ words::LEFT_OUT }</h2>
            <p class="hint">{ words::LEFT_OUT_HINT }</p>
            <ul>{ for rows.into_iter().map(|row| html! { <li>{ row }</li> }) }</ul>
        </section>
    }
}
