//! How the week stands, in one strip that stays in sight while planning.

use super::findings::{figure, limit};
use super::words;
use crate::components::VerdictMark;
use crate::tables::StudiedWeek;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct StripProps {
    pub study: StudiedWeek,
}

/// The strip.
#[component]
pub fn Strip(props: &StripProps) -> Html {
    let study = match &*props.study {
        Ok(study) => study,
        Err(problem) => {
            return html! {
                <div class="strip"><p class="problem" role="alert" data-test="week-problem">{ problem }</p></div>
            };
        }
    };
    let to_findings = Callback::from(|event: MouseEvent| {
        event.prevent_default();
        crate::page::focus("findings");
    });
    html! {
        <div class="strip" role="status" data-test="strip">
            { for study.services.iter().map(|service| {
                let name = &service.average.service;
                html! {
                    <p class="strip-service">
                        <strong>{ words::service(name.kind, &name.group.0) }</strong>
                        { for service.findings.iter().map(|sure| &sure.finding).map(|finding| html! {
                            <span class="strip-finding" data-verdict={format!("{:?}", finding.verdict)}>
                                <VerdictMark verdict={finding.verdict} />
                                { " " }{ &finding.rule.words }{ " " }
                                <span class="figure">{ figure(finding) }</span>
                                <span class="note">{ " (" }{ limit(&finding.rule) }{ ")" }</span>
                            </span>
                        }) }
                    </p>
                }
            }) }
            if study.services.is_empty() {
                <p>{ words::NO_MEALS }</p>
            } else {
                <a href="#findings" onclick={to_findings}>{ words::TO_FINDINGS }</a>
            }
        </div>
    }
}
