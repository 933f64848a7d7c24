//! Each requirement: figure, limit, verdict, what carries it, where it stands.

use super::words;
use crate::components::{Bar, VerdictMark};
use crate::format;
use crate::page::use_page;
use crate::route::Route;
use crate::tables::StudiedWeek;
use crate::words::title_or_untitled;
use engine::exact::Digits;
use engine::findings::{Carrier, Finding};
use engine::rules::{Basis, DietarySpecification};
use engine::week::Week;
use std::rc::Rc;
use yew::prelude::*;

/// Status of figures that were read in their source.
const VERIFIED: &str = "verified";

/// How many carriers are shown.
const MOST_CARRIERS: usize = 8;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct FindingsViewProps {
    /// The week.
    pub week: Rc<Week>,
    /// How it stands.
    pub study: StudiedWeek,
}

/// The figure of a finding with its unit.
pub fn figure(finding: &Finding) -> String {
    let unit = &finding.rule.unit;
    match finding.figure {
        Some(_) if !finding.complete && finding.coverage.is_zero() => words::UNKNOWN.to_owned(),
        None => words::UNKNOWN.to_owned(),
        Some(figure) => {
            let number = format::number(figure, finding.digits);
            match (finding.complete, finding.rule.basis) {
                (true, _) => format!("{number} {unit}"),
                (false, Basis::PerMeal) => format!("≥ {number} {unit}"),
                (false, Basis::ShareOfEnergy) => words::of_the_known(&format!("{number} {unit}")),
            }
        }
    }
}

/// A limit in words.
pub fn limit(rule: &DietarySpecification) -> String {
    let limit = format::group(rule.limit);
    words::limit(rule.bound, &format!("{limit} {}", rule.unit))
}

/// All findings.
#[component]
pub fn FindingsView(props: &FindingsViewProps) -> Html {
    let Ok(study) = &*props.study else {
        return Html::default();
    };
    html! {
        <section class="findings" aria-labelledby="findings">
            <h2 id="findings" tabindex="-1">{ words::FINDINGS }</h2>
            <p class="hint">{ words::AVERAGES }</p>
            { for study.services.iter().map(|service| {
                let average = &service.average;
                let name = words::service(average.service.kind, &average.service.group.0);
                let meals = format::group(average.planned_meals.servings());
                html! {
                    <section class="service">
                        <h3>{ name } <span class="note">{ words::over(&meals, average.days.len()) }</span></h3>
                        if service.findings.is_empty() { <p>{ words::NO_LIMITS }</p> } else {
                            <ul class="finding-list">
                                { for service.findings.iter().map(|sure| html! {
                                    <FindingRow week={props.week.clone()} finding={sure.finding.clone()} />
                                }) }
                            </ul>
                        }
                    </section>
                }
            }) }
        </section>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct FindingRowProps {
    week: Rc<Week>,
    finding: Finding,
}

#[component]
fn FindingRow(props: &FindingRowProps) -> Html {
    let finding = &props.finding;
    let rule = &finding.rule;
    let known = format::percent_known(finding.coverage);
    html! {
        <li class="finding" data-test="finding" data-nutrient={rule.nutrient.0.to_string()}
            data-verdict={format!("{:?}", finding.verdict)}>
            <dl class="finding-line">
                <div class="finding-what"><dt>{ words::REQUIREMENT }</dt><dd>{ &rule.words }</dd></div>
                <div class="finding-figure"><dt>{ words::FIGURE }</dt><dd class="figure">{ figure(finding) }</dd></div>
                <div><dt>{ words::LIMIT }</dt><dd>{ limit(rule) }</dd></div>
                <div><dt>{ words::VERDICT }</dt><dd><VerdictMark verdict={finding.verdict} /></dd></div>
                <div><dt>{ words::COVERAGE }</dt><dd>{ words::known_for(&known) }</dd></div>
                <div class="finding-where"><dt>{ words::CITATION }</dt><dd>
                    { &rule.paragraph }
                    if rule.status != VERIFIED { <span class="problem">{ " " }{ words::FROM_MEMORY }</span> }
                </dd></div>
            </dl>
            <Carriers week={props.week.clone()} finding={finding.clone()} />
        </li>
    }
}

/// What carries a figure: day, recipe, amount.
#[component]
fn Carriers(props: &FindingRowProps) -> Html {
    let page = use_page();
    let open = use_state(|| false);
    let ontoggle = {
        let open = open.clone();
        Callback::from(move |event: Event| {
            let element = event.target_unchecked_into::<web_sys::Element>();
            open.set(element.has_attribute("open"));
        })
    };
    let rule = &props.finding.rule;
    let body = (*open).then(|| {
        let carriers = page.tables.carriers(
            &props.week,
            page.contents(),
            &props.finding.service,
            rule.nutrient,
        );
        let nutrient = page.tables.reference.foods.nutrient(rule.nutrient);
        let unit = nutrient
            .map(|nutrient| nutrient.unit.clone())
            .unwrap_or_default();
        carrier_table(&page, &carriers, &unit)
    });
    html! {
        <details {ontoggle} data-test="carriers">
            <summary>{ words::CARRIERS }<span class="for-readers">{ ": " }{ &rule.words }</span></summary>
            { body }
        </details>
    }
}

fn carrier_table(page: &crate::page::Page, carriers: &[Carrier], unit: &str) -> Html {
    html! {
        <table class="bars">
            <thead><tr>
                <th scope="col">{ words::DAY }</th>
                <th scope="col">{ words::RECIPE }</th>
                <th scope="col" class="number">{ words::AMOUNT }</th>
                <th scope="col" colspan="2">{ words::SHARE }</th>
            </tr></thead>
            <tbody>{ for carriers.iter().take(MOST_CARRIERS).map(|carrier| {
                let recipe = page.contents().recipe(&carrier.recipe);
                let title = recipe.map_or(carrier.recipe.0.as_str(), |r| title_or_untitled(&r.title));
                let share = carrier.share.map(format::percent).unwrap_or_default();
                html! {
                    <tr>
                        <td>{ words::day(carrier.date) }</td>
                        <th scope="row">
                            <a href={Route::Recipe(carrier.recipe.clone()).fragment()}>{ title }</a>
                        </th>
                        <td class="number">
                            { format::number(carrier.amount, Digits(1)) }{ " " }{ unit }
                            if carrier.incomplete { <span class="note">{ " " }{ words::PARTLY }</span> }
                        </td>
                        <td class="number">if !share.is_empty() { { &share }{ " %" } }</td>
                        <td class="bar-cell"><Bar percent={share} /></td>
                    </tr>
                }
            }) }</tbody>
        </table>
    }
}
