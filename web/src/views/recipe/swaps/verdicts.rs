//! What becomes of the limits of the weeks with a proposal: which would be met
//! or missed that are not so now, and which stay missed.

use super::words;
use crate::components::VerdictMark;
use crate::views::mend::{required, required_limit};
use engine::swaps::{VerdictChange, WeekChange};
use yew::prelude::*;

/// The limits, each with its verdict in word and mark; those first whose
/// verdict becomes another one.
pub fn verdicts(weeks: &[WeekChange]) -> Html {
    let of_week = |week: &'_ WeekChange| {
        let changes = week.verdicts.iter().cloned();
        let title = week.title.clone();
        changes
            .map(move |change| (title.clone(), change))
            .collect::<Vec<_>>()
    };
    let mut all: Vec<(String, VerdictChange)> = weeks.iter().flat_map(of_week).collect();
    all.sort_by_key(|(_, change)| change.before == change.after);
    if all.is_empty() {
        return html! { <p class="note" data-test="verdicts-stay">{ words::VERDICTS_STAY }</p> };
    }
    html! {
        <ul class="swap-verdicts" aria-label={words::VERDICTS}>
            { for all.iter().map(|(week, change)| one(week, change)) }
        </ul>
    }
}

fn one(week: &str, change: &VerdictChange) -> Html {
    let what = required(&change.requirement);
    let limit = required_limit(&change.requirement);
    let stays = change.before == change.after;
    html! {
        <li data-test="week-verdict" data-verdict={change.after.map(|after| format!("{after:?}"))}>
            { words::limit_of_week(week, &what, &limit) }{ " " }
            if let Some(verdict) = change.after {
                { if stays { words::STAYS } else { words::BECOMES } }{ " " }
                <VerdictMark {verdict} />
            } else {
                { words::NOT_ASKED }
            }
        </li>
    }
}
