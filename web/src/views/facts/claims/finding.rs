//! One claim: what it rests on, what must stand beside it, or what it lacks.

use super::words;
use crate::components::VerdictMark;
use crate::format;
use crate::language::of_table;
use engine::claims::{ClaimFinding, ClaimOutcome, CriterionFinding, CriterionOutcome, Needed};
use engine::findings::Verdict;
use yew::prelude::*;

/// A claim that may be offered.
pub fn proven(finding: &ClaimFinding) -> Html {
    html! {
        <li data-test="claim" data-claim={finding.claim.clone()}>
            <strong class="claim-name">{ &finding.claim }</strong>
            <ul>
                { for finding.criteria.iter().map(criterion) }
                { for finding.needed.iter().map(needed) }
            </ul>
        </li>
    }
}

/// A claim about which nothing can be said, with what is missing.
pub fn silent(finding: &ClaimFinding) -> Html {
    let missing = match &finding.outcome {
        ClaimOutcome::Silent { missing } => missing.as_slice(),
        ClaimOutcome::Proven | ClaimOutcome::NotMet => &[],
    };
    html! {
        <li data-test="claim" data-claim={finding.claim.clone()}>
            <details>
                <summary>
                    <strong class="claim-name">{ &finding.claim }</strong>
                    { ": " }{ words::missing(missing) }
                </summary>
                <ul>{ for finding.criteria.iter().map(criterion) }</ul>
            </details>
        </li>
    }
}

/// A claim that the food does not meet, with the criteria that fail.
pub fn not_met(finding: &ClaimFinding) -> Html {
    let fails = |criterion: &&CriterionFinding| criterion.outcome == CriterionOutcome::Fails;
    html! {
        <li data-test="claim" data-claim={finding.claim.clone()}>
            <strong class="claim-name">{ &finding.claim }</strong>
            <ul>{ for finding.criteria.iter().filter(fails).map(criterion) }</ul>
        </li>
    }
}

/// Something that must stand beside a claim, or a caution.
pub fn needed(needed: &Needed) -> Html {
    html! {
        <li class="needed">
            { of_table(&needed.words) }
            if !needed.certain { { " " }{ words::MAY_BE_NEEDED } }
            <span class="note">{ " " }{ words::cited(&needed.citation) }</span>
        </li>
    }
}

fn criterion(criterion: &CriterionFinding) -> Html {
    let verdict = match &criterion.outcome {
        CriterionOutcome::Holds => Verdict::Met,
        CriterionOutcome::Fails => Verdict::Missed,
        CriterionOutcome::Unknown { .. } => Verdict::Unknown,
    };
    let figure = criterion
        .figure
        .map(|figure| format::number(figure, criterion.digits));
    html! {
        <li>
            <VerdictMark {verdict} />{ " " }
            { words::criterion(&criterion.words, figure.as_deref(), criterion.limit.as_ref()) }
            <span class="note">{ " " }{ words::cited(&criterion.citation) }</span>
        </li>
    }
}
