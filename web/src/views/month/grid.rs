//! The month's weeks, a row each: five days, and how the week stands.

use super::words;
use crate::components::VerdictMark;
use crate::format;
use crate::named;
use crate::page::{Page, use_page};
use crate::route::Route;
use crate::state::{Action, CalendarEdit};
use crate::views::week::{of_week, tally_counts};
use crate::words::title_or_untitled;
use engine::calendar::month_weeks;
use engine::findings::Verdict;
use engine::week::{Date, Week};
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Weekdays of a row.
const WEEKDAYS: i64 = 5;

/// Requirements that are named in a row before the rest is only counted.
const MOST_NAMED: usize = 3;

/// Which month.
#[derive(Clone, PartialEq, Properties)]
pub struct GridProps {
    /// Its first day.
    pub first: Date,
}

/// The table of the month.
#[component]
pub fn Grid(props: &GridProps) -> Html {
    let page = use_page();
    let rows = month_weeks(props.first).into_iter().map(|monday| {
        let days = (0..WEEKDAYS).map(|day| monday.plus_days(day));
        html! {
            <tr key={monday.to_string()} data-test="month-week" data-monday={monday.to_string()}>
                { for days.map(|date| cell(&page, props.first, date)) }
                <td class="month-standing">{ standing(&page, monday) }</td>
            </tr>
        }
    });
    html! {
        <div class="wide">
            <table class="month-grid">
                <caption class="for-readers">{ words::month(props.first) }</caption>
                <thead><tr>
                    { for (0..WEEKDAYS).map(|day| html! { <th scope="col">{ format::weekday(props.first.monday().plus_days(day)) }</th> }) }
                    <th scope="col">{ words::WEEK_STANDS }</th>
                </tr></thead>
                <tbody>{ for rows }</tbody>
            </table>
        </div>
    }
}

/// The weeks of the book that plan a day.
fn weeks_on(page: &Page, date: Date) -> impl Iterator<Item = &Rc<Week>> {
    let weeks = page.contents().weeks.iter();
    weeks.filter(move |week| week.days.iter().any(|day| day.date == date))
}

/// The services that are planned more than once on a day.
fn twice(page: &Page, date: Date) -> bool {
    let weeks = page.contents().weeks.iter();
    let days = weeks
        .flat_map(|week| &week.days)
        .filter(|day| day.date == date);
    let meals = days.flat_map(|day| &day.meals);
    let mut services: Vec<_> = meals.map(|meal| (meal.kind, &meal.group)).collect();
    services.sort();
    services.windows(2).any(|pair| pair[0] == pair[1])
}

fn cell(page: &Page, first: Date, date: Date) -> Html {
    let calendar = &page.contents().rest.calendar;
    let closed = calendar.no_school(date);
    let name = format::day(date);
    let outside = date.first_of_month() != first;
    let act = |edit: CalendarEdit| {
        let page = page.clone();
        Callback::from(move |_: MouseEvent| page.act(Action::Calendar(edit.clone())))
    };
    let plans = weeks_on(page, date).map(|week| {
        html! {
            <li><a href={Route::Week(week.id.clone()).fragment()}>{ title_or_untitled(&week.title) }</a></li>
        }
    });
    let has_plan = weeks_on(page, date).next().is_some();
    html! {
        <td class={classes!(outside.then_some("outside"), closed.map(|_| "no-school"))}
            data-test="month-day" data-date={date.to_string()}>
            <p class="month-date">{ words::day_in_month(date) }</p>
            if let Some(closed) = closed {
                <p class="month-closed">{ words::NO_SCHOOL }</p>
                <input type="text" class="quiet-field" autocomplete="off" aria-label={words::why(&name)}
                    placeholder={words::WHY.to_string()} value={closed.words.clone()} oninput={{
                        let page = page.clone();
                        Callback::from(move |event: InputEvent| {
                            let text = event.target_unchecked_into::<HtmlInputElement>().value();
                            page.act(Action::Calendar(CalendarEdit::Close(date, text)));
                        })
                    }} />
                if has_plan { <p class="problem">{ words::PLANNED_ANYWAY }</p> }
                <button type="button" class="quiet small" data-test="open-day" onclick={act(CalendarEdit::Open(date))}
                    aria-label={words::open(&name)}>{ words::OPEN }</button>
            } else {
                <button type="button" class="quiet small" data-test="close-day"
                    onclick={act(CalendarEdit::Close(date, String::new()))}
                    aria-label={words::close(&name)}>{ words::CLOSE }</button>
            }
            if has_plan { <ul class="month-plans">{ for plans }</ul> }
            if twice(page, date) { <p class="problem">{ words::TWICE }</p> }
        </td>
    }
}

/// Each week that has a day here: its length and its verdicts.
fn standing(page: &Page, monday: Date) -> Html {
    let in_row = |week: &&Rc<Week>| week.days.iter().any(|day| day.date.monday() == monday);
    let weeks = page.contents().weeks.iter().filter(in_row);
    html! {
        <ul>{ for weeks.map(|week| {
            let study = page.tables.study_week(week, page.contents());
            let days = week.days.len();
            let body = match &*study {
                Err(problem) => {
                    html! { <p class="problem">{ named::week(problem, page.contents()) }</p> }
                }
                Ok(_) => verdicts(&study),
            };
            html! {
                <li data-test="month-standing" data-week={week.id.0.clone()}>
                    <a href={Route::Week(week.id.clone()).fragment()}>{ title_or_untitled(&week.title) }</a>
                    { " " }<span class="note">{ words::days(days) }</span>
                    { body }
                </li>
            }
        }) }</ul>
    }
}

fn verdicts(study: &crate::tables::StudiedWeek) -> Html {
    let requirements = of_week(study);
    let (met, missed, unknown) = tally_counts(&requirements);
    let named = requirements
        .iter()
        .filter(|one| one.verdict == Verdict::Missed);
    html! {<>
        <p class="month-tally">
            { for [(Verdict::Missed, missed), (Verdict::Unknown, unknown), (Verdict::Met, met)]
                .into_iter()
                .filter(|(_, count)| *count > 0)
                .map(|(verdict, count)| html! {
                    <span>{ count }{ " " }<VerdictMark {verdict} /></span>
                }) }
            if requirements.is_empty() { { words::NO_MEALS } }
        </p>
        <ul class="month-missed">
            { for named.take(MOST_NAMED).map(|one| html! {
                <li>{ &one.what }{ ": " }{ &one.figure }{ " (" }{ &one.limit }{ ")" }</li>
            }) }
        </ul>
    </>}
}
