//! All weeks of the book.

use super::requirement::{of_week, tally_counts};
use super::{today, words};
use crate::named;
use crate::page::use_page;
use crate::route::Route;
use crate::state::{Action, Contents};
use crate::tables::StudiedWeek;
use crate::words::title_or_untitled;
use engine::week::Date;
use yew::prelude::*;

/// Days of a new week: Monday to Friday.
const SCHOOL_DAYS: i64 = 5;

/// The view of all weeks.
#[component]
pub fn WeekIndex() -> Html {
    let page = use_page();
    let contents = page.contents();
    let add = {
        let page = page.clone();
        let monday = next_monday(contents);
        Callback::from(move |_| {
            page.act(Action::AddWeek {
                title: words::week_of(monday),
                dates: (0..SCHOOL_DAYS).map(|day| monday.plus_days(day)).collect(),
            });
            page.tell(words::added(monday), true);
        })
    };
    html! {
        <div class="index">
            <h1>{ words::TITLE }</h1>
            <p class="lead">{ words::LEAD }</p>
            <div class="ways">
                <button type="button" id="new-week" class="main-way" onclick={add}>{ words::NEW }</button>
                <a class="button" id="to-month" href={Route::Month(None).fragment()}>
                    { super::moving_words::TO_MONTH }
                </a>
            </div>
            if contents.weeks.is_empty() {
                <p>{ words::NONE }</p>
            } else {
                <table class="index-table">
                    <thead><tr>
                        <th scope="col">{ words::COLUMN_WEEK }</th>
                        <th scope="col">{ words::COLUMN_DAYS }</th>
                        <th scope="col">{ words::COLUMN_FINDINGS }</th>
                    </tr></thead>
                    <tbody>{ for contents.weeks.iter().map(|week| {
                        let route = Route::Week(week.id.clone());
                        let standing = match &*page.tables.study_week(week, contents) {
                            Ok(_) => tally(&page.tables.study_week(week, contents)),
                            Err(problem) => named::week(problem, contents),
                        };
                        html! {
                            <tr key={week.id.0.clone()}>
                                <th scope="row">
                                    <a href={route.fragment()} data-test="week-link">
                                        { title_or_untitled(&week.title) }
                                    </a>
                                </th>
                                <td>{ words::days(week.days.len()) }</td>
                                <td>{ standing }</td>
                            </tr>
                        }
                    }) }</tbody>
                </table>
            }
        </div>
    }
}

fn tally(study: &StudiedWeek) -> String {
    let (met, missed, unknown) = tally_counts(&of_week(study));
    words::tally(met, missed, unknown)
}

/// The Monday after the last planned day, or this week's.
fn next_monday(contents: &Contents) -> Date {
    let days = contents.weeks.iter().flat_map(|week| &week.days);
    match days.map(|day| day.date).max() {
        Some(last) => last.monday().plus_days(7),
        None => today().monday(),
    }
}
