//! The limits of one service: in force on a date, and those that come later.

use super::lines::{Line, allowed, heading};
use super::words;
use crate::components::{Select, StandingNote};
use crate::language::{Say, in_english};
use crate::page::{Page, use_page};
use crate::views::week;
use engine::rules::{Force, Period};
use engine::week::{Date, Service};
use yew::prelude::*;

/// On which day.
#[derive(Clone, PartialEq, Properties)]
pub struct InForceProps {
    /// The day.
    pub date: Date,
}

/// The lists, for a service that is chosen above them.
#[component]
pub fn InForce(props: &InForceProps) -> Html {
    let page = use_page();
    let chosen = use_state(|| 0_usize);
    let services = services(&page);
    let Some(service) = services.get(*chosen).or(services.first()) else {
        return Html::default();
    };
    let names: Vec<AttrValue> = services
        .iter()
        .map(|service| week::words::service(service.kind, &service.group.0).into())
        .collect();
    let on_choose = {
        let chosen = chosen.clone();
        Callback::from(move |index| chosen.set(index))
    };
    let later = later(&page, service, props.date);
    html! {<>
        <Select id="rules-service" data_test="rules-service" label={words::SERVICE} {names}
            chosen={Some(*chosen)} {on_choose} />
        { for sections(&page, service, props.date).into_iter().map(|(title, lines)| html! {
            <section class="rule-section" data-test="rule-section">
                <h3>{ title }</h3>
                { table(&lines) }
            </section>
        }) }
        if !later.is_empty() {
            <details class="rule-section" data-test="rules-later">
                <summary>{ words::LATER }</summary>
                { table(&later) }
            </details>
        }
    </>}
}

/// All that is in force for one service on a date, for a printed record.
pub fn record(page: &Page, service: &Service, date: Date) -> Html {
    html! {
        { for sections(page, service, date).into_iter().map(|(title, lines)| html! {<>
            <h4>{ title }</h4>
            { table_with("review-rule-table", &lines) }
        </>}) }
    }
}

/// Every meal with every group that some table names for it.
fn services(page: &Page) -> Vec<Service> {
    let reference = &page.tables.reference;
    let of_kind = |kind| {
        let groups = week::groups(reference, kind).into_iter();
        groups.map(move |group| Service { kind, group })
    };
    // Lunch first: it is what most come for.
    let mut kinds = week::KINDS;
    kinds.swap(0, 1);
    kinds.into_iter().flat_map(of_kind).collect()
}

fn sections(page: &Page, service: &Service, date: Date) -> Vec<(Say, Vec<Line>)> {
    let reference = &page.tables.reference;
    let average = reference.specifications.in_force(service, date);
    let mut sections = vec![(words::AVERAGE, average.map(Line::from).collect::<Vec<_>>())];
    for (force, period) in [
        (Force::Required, Period::Day),
        (Force::Required, Period::Week),
        (Force::Choice, Period::Day),
        (Force::Guidance, Period::Day),
        (Force::Guidance, Period::Week),
    ] {
        let rows = reference
            .meal_patterns
            .in_force(service, date, force, period);
        sections.push((heading(force, period), rows.map(Line::from).collect()));
    }
    let rules = reference.week_rules.in_force(service, date);
    sections.push((words::SHARES, rules.map(Line::from).collect()));
    sections.retain(|(_, lines)| !lines.is_empty());
    sections
}

/// What will be in force after a date and is not on it, soonest first.
fn later(page: &Page, service: &Service, date: Date) -> Vec<Line> {
    let reference = &page.tables.reference;
    let switches = &page.contents().rest.switches;
    let limits = reference.specifications.rows().iter().filter(|row| {
        row.meal == service.kind
            && row.group == service.group
            && allowed(row.only_when.as_ref(), switches)
    });
    let amounts = reference.meal_patterns.rows().iter().filter(|row| {
        row.meal == service.kind
            && row.group == service.group
            && allowed(row.only_when.as_ref(), switches)
    });
    let rules = reference
        .week_rules
        .rows()
        .iter()
        .filter(|row| row.speaks_of(service) && allowed(row.only_when.as_ref(), switches));
    let all = limits
        .map(Line::from)
        .chain(amounts.map(Line::from))
        .chain(rules.map(Line::from));
    let mut later: Vec<Line> = all.filter(|line| line.from > date).collect();
    later.sort_by_key(|line| line.from);
    later
}

/// A table that becomes a list where the screen is narrow.
fn table(lines: &[Line]) -> Html {
    table_with("index-table rule-table", lines)
}

fn table_with(class: &'static str, lines: &[Line]) -> Html {
    html! {
        <table {class}>
            <thead><tr>
                <th scope="col">{ words::ASKED }</th>
                <th scope="col">{ words::LIMIT }</th>
                <th scope="col">{ words::WHEN }</th>
                <th scope="col">{ words::WHERE }</th>
                <th scope="col">{ words::HOW_SURE }</th>
            </tr></thead>
            <tbody>{ for lines.iter().map(|line| html! {
                <tr data-test="rule" data-status={line.status.clone()}>
                    <th scope="row">{ &line.words }</th>
                    <td class="rule-limit">{ &line.limit }</td>
                    <td data-label={words::WHEN}>{ &line.when }</td>
                    <td data-label={words::WHERE}>{ &line.paragraph }
                        <span class="note rule-source">{ in_english(&line.source) }</span></td>
                    <td data-label={words::HOW_SURE}>
                        <StandingNote status={line.status.clone()} always={true} />
                    </td>
                </tr>
            }) }</tbody>
        </table>
    }
}
