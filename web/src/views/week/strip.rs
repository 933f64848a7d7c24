//! How the week stands, in one strip that stays in sight while planning: what
//! is missed and what is unknown in full, what is met as a number.

use super::requirement::{Requirement, requirements};
use super::words;
use crate::components::VerdictMark;
use crate::named;
use crate::page::{leads_to, use_page};
use crate::tables::StudiedWeek;
use engine::findings::Verdict;
use engine::reference::ServiceStudy;
use yew::prelude::*;

/// How many requirements are named before the rest is only counted.
const MOST_SHOWN: usize = 4;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct StripProps {
    /// How the week stands.
    pub study: StudiedWeek,
}

/// The strip.
#[component]
pub fn Strip(props: &StripProps) -> Html {
    let page = use_page();
    let study = match &*props.study {
        Ok(study) => study,
        Err(problem) => {
            return html! {
                <div class="strip">
                    <p class="problem" role="alert" data-test="week-problem">{ named::week(problem, page.contents()) }</p>
                </div>
            };
        }
    };
    html! {
        <div class="strip" role="status" data-test="strip">
            { for study.services.iter().map(service) }
            if study.services.is_empty() {
                <p>{ words::NO_MEALS }</p>
            } else {
                <a href="#findings" onclick={leads_to("findings")}>{ words::TO_FINDINGS }</a>
            }
        </div>
    }
}

fn service(service: &ServiceStudy) -> Html {
    let name = &service.average.service;
    let (met, mut rest): (Vec<_>, Vec<_>) = requirements(service)
        .into_iter()
        .partition(|requirement| requirement.verdict == Verdict::Met);
    rest.sort_by_key(|requirement| requirement.verdict == Verdict::Unknown);
    html! {
        <p class="strip-service">
            <strong>{ words::service(name.kind, &name.group.0) }</strong>
            { for rest.iter().take(MOST_SHOWN).map(item) }
            if rest.len() > MOST_SHOWN {
                <span>{ words::and_more(rest.len() - MOST_SHOWN) }</span>
            }
            if !met.is_empty() {
                <span class="strip-finding" data-verdict="Met">
                    { words::count_of(met.len(), rest.is_empty()) }{ " " }
                    <VerdictMark verdict={Verdict::Met} />
                </span>
            }
        </p>
    }
}

fn item(requirement: &Requirement) -> Html {
    html! {
        <span class="strip-finding" data-verdict={format!("{:?}", requirement.verdict)}>
            <VerdictMark verdict={requirement.verdict} />
            { " " }{ &requirement.what }{ " " }
            <span class="figure">{ &requirement.figure }</span>
            <span class="note">{ " (" }{ &requirement.limit }{ ")" }</span>
        </span>
    }
}
