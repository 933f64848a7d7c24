//! Each requirement: figure, limit, verdict, what carries it, where it stands.

use super::places::day_way;
use super::remedy::{mend_way, swap_way};
use super::requirement::{Asked, Carried, CarriedBy, Requirement, requirements, shown};
use super::words;
use crate::components::{Bar, Help, StandingNote, Topic, VerdictMark};
use crate::format;
use crate::language::Say;
use crate::page::{Page, use_page};
use crate::route::Route;
use crate::tables::StudiedWeek;
use crate::words::title_or_untitled;
use engine::week::{Service, Week};
use std::rc::Rc;
use yew::prelude::*;

/// How many carriers are shown.
const MOST_CARRIERS: usize = 10;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct FindingsViewProps {
    /// The week.
    pub week: Rc<Week>,
    /// How it stands.
    pub study: StudiedWeek,
}

/// All findings.
#[component]
pub fn FindingsView(props: &FindingsViewProps) -> Html {
    let page = use_page();
    let Ok(study) = &*props.study else {
        return Html::default();
    };
    html! {
        <section class="findings" aria-labelledby="findings">
            <h2 id="findings" tabindex="-1">{ words::FINDINGS }</h2>
            <p class="hint">{ words::AVERAGES }{ " " }<Help topic={Topic::Verdicts} /></p>
            if let Some(problem) = page.evidence_problem() {
                <p class="hint">{ words::no_evidence(&problem) }</p>
            }
            { for study.services.iter().map(|service| {
                let of = &service.average.service;
                let patterns = page.tables.reference.meal_patterns.groups(of.kind);
                let average = &service.average;
                let name = words::service(of.kind, &of.group.0);
                let meals = format::group(average.planned_meals.servings());
                let requirements = requirements(service);
                html! {
                    <section class="service" data-test="service"
                        data-service={format!("{} {}", average.service.kind, average.service.group)}>
                        <h3>{ name } { " " }
                            <span class="note">{ words::over(&meals, average.days.len()) }</span>
                        </h3>
                        if let Some(date) = average.days.iter().min() {
                            <p class="hint">
                                <a href={Route::Rules(Some(*date)).fragment()}>{ words::rules_on(*date) }</a>
                            </p>
                        }
                        if !patterns.contains(&of.group) {
                            <p class="problem" data-test="no-pattern">
                                { words::no_pattern(of.kind, &of.group.0) }
                            </p>
                        }
                        if requirements.is_empty() { <p>{ words::NO_LIMITS }</p> } else {
                            { for GROUPS.iter().map(|(asked, title)| {
                                group(&props.week, of, &requirements, *asked, *title)
                            }) }
                        }
                    </section>
                }
            }) }
        </section>
    }
}

const GROUPS: [(Asked, Say); 3] = [
    (Asked::AverageMeal, words::OF_AVERAGE_MEAL),
    (Asked::Week, words::OF_WEEK),
    (Asked::EachDay, words::OF_EACH_DAY),
];

fn group(
    week: &Rc<Week>,
    service: &Service,
    requirements: &[Requirement],
    of: Asked,
    title: Say,
) -> Html {
    let rows: Vec<&Requirement> = requirements.iter().filter(|one| one.of == of).collect();
    if rows.is_empty() {
        return Html::default();
    }
    html! {
        <div class="finding-group">
            <h4>{ title }{ " " }<Help topic={help(of)} /></h4>
            <ul class="finding-list">
                { for rows.into_iter().map(|requirement| html! {
                    <FindingRow week={week.clone()} service={service.clone()}
                        requirement={requirement.clone()} />
                }) }
            </ul>
        </div>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct FindingRowProps {
    week: Rc<Week>,
    service: Service,
    requirement: Requirement,
}

#[component]
fn FindingRow(props: &FindingRowProps) -> Html {
    let requirement = &props.requirement;
    html! {
        <li class="finding" data-test="finding" data-verdict={format!("{:?}", requirement.verdict)}
            data-of={format!("{:?}", requirement.of)} data-what={requirement.what.clone()}>
            <dl class="finding-line">
                <div class="finding-what"><dt>{ words::REQUIREMENT }</dt><dd>{ &requirement.what }</dd></div>
                <div class="finding-figure">
                    <dt>{ words::FIGURE }</dt><dd class="figure">{ &requirement.figure }</dd>
                </div>
                <div><dt>{ words::LIMIT }</dt><dd>{ &requirement.limit }</dd></div>
                <div><dt>{ words::VERDICT }</dt><dd><VerdictMark verdict={requirement.verdict} /></dd></div>
                <div><dt>{ beside(requirement.of) }</dt><dd>{ &requirement.known }</dd></div>
                <div class="finding-where"><dt>{ words::CITATION }</dt><dd>
                    { &requirement.paragraph }
                    { " " }<StandingNote status={requirement.status.clone()} />
                </dd></div>
            </dl>
            { mend_way(requirement) }
            <Carriers ..props.clone() />
        </li>
    }
}

fn help(of: Asked) -> Topic {
    match of {
        Asked::AverageMeal => Topic::AverageMeal,
        Asked::Week => Topic::WeekOffer,
        Asked::EachDay => Topic::DayOffer,
    }
}

/// What stands beside a figure.
fn beside(of: Asked) -> Say {
    match of {
        Asked::AverageMeal => words::COVERAGE,
        Asked::Week => words::AS_PLANNED,
        Asked::EachDay => words::DAYS,
    }
}

/// What carries a figure: day, recipe, amount; folded up at first.
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
    let requirement = &props.requirement;
    let body = (*open).then(|| {
        let carriers = match &requirement.carried {
            Carried::By(carriers) => carriers.clone(),
            Carried::ByNutrient(nutrient) => {
                let tables = &page.tables;
                let carriers =
                    tables.carriers(&props.week, page.contents(), &props.service, *nutrient);
                let nutrient = tables.reference.foods.nutrient(*nutrient);
                shown(&carriers, nutrient.map_or("", |nutrient| &nutrient.unit))
            }
        };
        html! {<>
            { days(requirement) }
            if carriers.is_empty() { <p>{ words::NOTHING_CARRIES }</p> } else {
                { carrier_table(&page, props, &carriers) }
            }
        </>}
    });
    html! {
        <details {ontoggle} data-test="carriers">
            <summary>
                { words::CARRIERS }<span class="for-readers">{ ": " }{ &requirement.what }</span>
            </summary>
            { body }
        </details>
    }
}

/// A requirement on days, day by day.
fn days(requirement: &Requirement) -> Html {
    if requirement.days.is_empty() {
        return Html::default();
    }
    html! {
        <ul class="finding-days">
            { for requirement.days.iter().map(|day| html! {
                <li>
                    { words::day(day.date) }{ ": " }{ &day.figure }{ " " }
                    <VerdictMark verdict={day.verdict} />
                </li>
            }) }
        </ul>
    }
}

fn carrier_table(page: &Page, props: &FindingRowProps, carriers: &[CarriedBy]) -> Html {
    let (week, service) = (&props.week, &props.service);
    let has_shares = carriers.iter().any(|carrier| carrier.share.is_some());
    html! {
        <table class="bars">
            <thead><tr>
                <th scope="col">{ words::DAY }</th>
                <th scope="col">{ words::RECIPE }</th>
                <th scope="col" class="number">
                    { if has_shares { words::AMOUNT } else { words::PER_SERVING } }
                </th>
                if has_shares { <th scope="col" colspan="2">{ words::SHARE }</th> }
            </tr></thead>
            <tbody>{ for carriers.iter().take(MOST_CARRIERS).map(|carrier| {
                let recipe = page.contents().recipe(&carrier.recipe);
                let title = recipe.map_or_else(|| carrier.recipe.0.clone(), |r| title_or_untitled(&r.title));
                html! {
                    <tr>
                        <td>{ day_way(week, service, carrier.date, &carrier.recipe) }</td>
                        <th scope="row">
                            <a href={Route::Recipe(carrier.recipe.clone()).fragment()}>{ title }</a>
                            { swap_way(page, &props.requirement, &carrier.recipe) }
                        </th>
                        <td class="number">{ &carrier.amount }</td>
                        if let Some(share) = &carrier.share {
                            <td class="number">{ share }{ " %" }</td>
                            <td class="bar-cell"><Bar percent={share.clone()} /></td>
                        }
                    </tr>
                }
            }) }</tbody>
        </table>
    }
}
