//! A month at a glance: which days have school, what is planned for them, how
//! each week stands; and cycle menus laid over dates.

mod cycles;
mod grid;
mod words;

use crate::page::{use_page, use_title};
use crate::route::Route;
use crate::views::week::today;
use cycles::Cycles;
use engine::week::Date;
use grid::Grid;
use yew::prelude::*;

pub use words::day_in_month;

/// Which month.
#[derive(Clone, PartialEq, Properties)]
pub struct MonthViewProps {
    /// A day of it; today where none is named.
    pub date: Option<Date>,
}

/// The view of a month.
#[component]
pub fn MonthView(props: &MonthViewProps) -> Html {
    let page = use_page();
    // The month of the first planned day still to come, or of the last one.
    let planned = || {
        page.contents()
            .weeks
            .iter()
            .flat_map(|week| &week.days)
            .map(|day| day.date)
    };
    let now = today();
    let date = props.date.unwrap_or_else(|| {
        let next = planned().filter(|date| *date >= now).min();
        next.or_else(|| planned().max()).unwrap_or(now)
    });
    let first = date.first_of_month();
    let title = words::month(first);
    use_title(&title);
    html! {
        <div class="month">
            <p class="back"><a href={Route::Weeks.fragment()}>{ words::ALL_WEEKS }</a></p>
            <h1>{ title }</h1>
            <p class="lead">{ words::LEAD }</p>
            <p class="month-ways">
                <a id="last-month" href={Route::Month(Some(first.first_of_last_month())).fragment()}>
                    { words::LAST_MONTH }
                </a>
                <a id="next-month" href={Route::Month(Some(first.first_of_next_month())).fragment()}>
                    { words::NEXT_MONTH }
                </a>
                <button type="button" id="print" onclick={Callback::from(|_| {
                    drop(gloo::utils::window().print());
                })}>{ words::PRINT }</button>
            </p>
            <Grid {first} />
            <Cycles {first} />
        </div>
    }
}
