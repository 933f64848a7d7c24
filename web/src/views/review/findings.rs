//! How the week stands: figure, limit and verdict of each requirement.

use super::{part, words};
use crate::components::{StandingNote, VerdictMark};
use crate::named;
use crate::page::Page;
use crate::views::week::{Requirement, requirements};
use engine::reference::ServiceStudy;
use engine::week::Week;
use std::rc::Rc;
use yew::prelude::*;

/// The requirements of each service.
pub fn findings(page: &Page, week: &Rc<Week>) -> Html {
    let study = page.tables.study_week(week, page.contents());
    let body = match &*study {
        Err(problem) => html! { <p class="problem">{ named::week(problem, page.contents()) }</p> },
        Ok(study) => html! {<>
            <p>{ words::FINDINGS_HOW }</p>
            { for study.services.iter().map(service) }
        </>},
    };
    part("review-findings", words::FINDINGS, body)
}

fn service(service: &ServiceStudy) -> Html {
    let average = &service.average;
    html! {
        <table class="review-findings" data-test="review-service">
            <caption>{ words::service(average) }</caption>
            <thead><tr>
                <th scope="col">{ words::REQUIREMENT }</th>
                <th scope="col">{ words::FIGURE }</th>
                <th scope="col">{ words::LIMIT }</th>
                <th scope="col">{ words::VERDICT }</th>
                <th scope="col">{ words::KNOWN }</th>
                <th scope="col">{ words::PARAGRAPH }</th>
            </tr></thead>
            <tbody>{ for requirements(service).iter().map(row) }</tbody>
        </table>
    }
}

fn row(requirement: &Requirement) -> Html {
    html! {
        <tr data-test="review-finding" data-verdict={format!("{:?}", requirement.verdict)}>
            <th scope="row">{ &requirement.what }</th>
            <td>{ &requirement.figure }</td>
            <td>{ &requirement.limit }</td>
            <td><VerdictMark verdict={requirement.verdict} /></td>
            <td>{ &requirement.known }</td>
            <td>{ &requirement.paragraph }{ " " }
                <StandingNote status={requirement.status.clone()} /></td>
        </tr>
    }
}
