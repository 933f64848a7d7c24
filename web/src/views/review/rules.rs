//! The rules in force for the week's meals, with dates and paragraph.

use super::{part, words};
use crate::page::Page;
use crate::views::rules::record;
use crate::views::week::words as week_words;
use engine::week::Week;
use yew::prelude::*;

/// The tables of each service, on its first day.
pub fn rules(page: &Page, week: &Week) -> Html {
    let services = week.services();
    let first = |service| week.meals_of(service).map(|(date, _)| date).min();
    let body = html! {<>
        <p>{ words::RULES_HOW }</p>
        { for services.iter().filter_map(|service| {
            let date = first(service)?;
            Some(html! {
                <section class="review-rules" data-test="review-rules">
                    <h3>{ words::on_day(
                        &week_words::service(service.kind, &service.group.0),
                        date,
                    ) }</h3>
                    { record(page, service, date) }
                </section>
            })
        }) }
    </>};
    part("review-rules", words::RULES, body)
}
