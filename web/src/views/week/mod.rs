//! Weeks: the plan of days, meals and choices, and how it stands against the
//! limits.

mod day;
mod drawings;
mod findings;
mod index;
mod meal;
mod moving;
mod moving_words;
mod offer;
mod places;
mod readings;
mod remedy;
mod requirement;
mod sheet;
mod strip;
pub(crate) mod words;

pub use day::KINDS;
pub use index::WeekIndex;
pub use requirement::{Requirement, limit, of_week, requirements, tally_counts};

use crate::components::{DateField, SaveWeek};
use crate::page::{Page, go, use_page, use_title};
use crate::route::Route;
use crate::state::{Action, WeekEdit};
use crate::words::title_or_untitled;
use day::DayView;
use drawings::Drawings;
use engine::calendar::{OnBreak, lay_out};
use engine::reference::Reference;
use engine::week::{Date, GradeGroup, MealKind, Week, WeekId};
use findings::FindingsView;
use moving::Mover;
use std::rc::Rc;
use strip::Strip;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Weekdays in a week.
const WEEKDAYS: usize = 5;

/// Days in a week.
const MOST_DAYS: usize = 7;

/// Which week.
#[derive(Clone, PartialEq, Properties)]
pub struct WeekViewProps {
    /// The week.
    pub id: WeekId,
}

/// How a part of the view changes its week.
pub type Edit = Callback<WeekEdit>;

/// The view of one week.
#[component]
pub fn WeekView(props: &WeekViewProps) -> Html {
    let page = use_page();
    use_effect_with((), {
        let evidence = page.evidence.clone();
        move |()| evidence.ask()
    });
    let title = page
        .contents()
        .week(&props.id)
        .map(|week| week.title.as_str());
    use_title(&title_or_untitled(title.unwrap_or_default()));
    let Some(week) = page.contents().week(&props.id) else {
        return html! {<>
            <p class="back"><a href={Route::Weeks.fragment()}>{ words::ALL_WEEKS }</a></p>
            <p class="problem" role="alert">{ words::not_in_book(&props.id.0) }</p>
        </>};
    };
    let study = page.tables.study_week(week, page.contents());
    let edit: Edit = {
        let (page, id) = (page.clone(), props.id.clone());
        Callback::from(move |edit| page.act(Action::Week(id.clone(), edit)))
    };
    let add_day = {
        let (edit, date) = (edit.clone(), next_date(week));
        Callback::from(move |_| edit.emit(WeekEdit::AddDay(date)))
    };
    html! {
        <Mover week={week.clone()} edit={edit.clone()}>
        <div class="week">
            <p class="back"><a href={Route::Weeks.fragment()}>{ words::ALL_WEEKS }</a></p>
            <h1 class="for-readers">{ title_or_untitled(&week.title) }</h1>
            { head(&page, week, &edit) }
            <Strip study={study.clone()} />
            <h2 class="for-readers">{ words::PLAN }</h2>
            <div class="week-days">
                { for (0..week.days.len()).map(|day| html! {
                    <DayView key={day} week={week.clone()} {day} edit={edit.clone()} />
                }) }
                <div class="week-more">
                    if week.days.is_empty() { <p>{ words::NO_DAYS }</p> }
                    <button type="button" id="add-day" onclick={add_day}>{ words::ADD_DAY }</button>
                </div>
            </div>
            <FindingsView week={week.clone()} study={study.clone()} />
            // On paper the drawings stand below the plan.
            <sheet::WeekSheet week={week.clone()} />
            <Drawings week={week.clone()} {study} />
            <crate::views::mend::MendView week={week.clone()} />
            <readings::Readings />
        </div>
        </Mover>
    }
}

/// Title and first day.
fn head(page: &Page, week: &Rc<Week>, edit: &Edit) -> Html {
    let title = edit.reform(|event: InputEvent| {
        WeekEdit::Title(event.target_unchecked_into::<HtmlInputElement>().value())
    });
    let first = week.days.iter().map(|day| day.date).min();
    html! {
        <div class="week-head">
            <span class="field title-field">
                <label for="week-title" class="for-readers">{ words::WEEK_TITLE }</label>
                <input id="week-title" type="text" autocomplete="off"
                    value={week.title.clone()} oninput={title} />
            </span>
            if let Some(first) = first {
                <span class="field">
                    <DateField id="week-start" label={words::START} value={first}
                        on_change={edit.reform(WeekEdit::Start)} />
                </span>
            }
            { ways(page, week) }
        </div>
    }
}

fn ways(page: &Page, week: &Rc<Week>) -> Html {
    let remove = {
        let (page, week) = (page.clone(), week.clone());
        Callback::from(move |_| {
            page.act(Action::RemoveWeek(week.id.clone()));
            let text = crate::words::taken_out(&title_or_untitled(&week.title));
            page.tell(text, true);
            go(&Route::Weeks);
        })
    };
    let copy = {
        let (page, week) = (page.clone(), week.clone());
        Callback::from(move |_| copy_on(&page, &week))
    };
    let first = week.days.iter().map(|day| day.date).min();
    html! {
        <div class="ways">
            <button type="button" id="print" onclick={Callback::from(|_| {
                drop(gloo::utils::window().print());
            })}>{ words::PRINT }</button>
            <a class="button" id="to-review" href={Route::Review(week.id.clone()).fragment()}>
                { crate::views::review::TO_REVIEW }
            </a>
            <a class="button" id="to-families"
                href={Route::WeekForFamilies(week.id.clone()).fragment()}>
                { crate::views::parents::TO_FAMILIES }
            </a>
            <button type="button" id="copy-week" onclick={copy}>{ moving_words::COPY_WEEK }</button>
            <a class="button" id="to-kitchen" href={Route::Kitchen(Some(week.id.clone()), None).fragment()}>
                { moving_words::TO_KITCHEN }
            </a>
            <a class="button" id="to-month" href={Route::Month(first).fragment()}>{ moving_words::TO_MONTH }</a>
            <button type="button" id="remove-week" onclick={remove}>{ words::REMOVE_WEEK }</button>
            <SaveWeek week={week.clone()} />
        </div>
    }
}

/// Adds a copy of the week after all that is planned, without the days that
/// have no school, and goes to it.
fn copy_on(page: &Page, week: &Rc<Week>) {
    let contents = page.contents();
    let planned = contents.weeks.iter().flat_map(|week| &week.days);
    let Some(last) = planned.map(|day| day.date).max() else {
        return;
    };
    let monday = last.monday().plus_days(7);
    let sunday = monday.plus_days(6);
    let calendar = &contents.rest.calendar;
    let laid = lay_out(&[&**week], monday, sunday, calendar, OnBreak::Wait);
    let Some(laid) = laid.into_iter().next() else {
        page.tell(moving_words::nothing_to_copy(monday), false);
        return;
    };
    let title = words::week_of(monday);
    let id = contents.free_week_id(&title);
    page.act(Action::AddWeeks(vec![Week {
        id: id.clone(),
        title,
        days: laid.days,
    }]));
    page.tell(moving_words::copied(monday), true);
    go(&Route::Week(id));
}

/// The day after the last one, weekends left out unless the week has all its
/// weekdays; or today's.
fn next_date(week: &Week) -> Date {
    let dates = || week.days.iter().map(|day| day.date);
    let (Some(first), Some(last)) = (dates().min(), dates().max()) else {
        return today();
    };
    let next = last.next_weekday();
    let has_room = (WEEKDAYS..MOST_DAYS).contains(&week.days.len());
    if has_room && next.monday() != first.monday() {
        last.plus_days(1)
    } else {
        next
    }
}

/// The grade and age groups that have limits or a pattern for a meal.
pub fn groups(reference: &Reference, kind: MealKind) -> Vec<GradeGroup> {
    let mut groups = reference.specifications.groups(kind);
    for group in reference.meal_patterns.groups(kind) {
        if !groups.contains(&group) {
            groups.push(group);
        }
    }
    groups
}

/// Today in the user's time zone.
pub fn today() -> Date {
    let now = js_sys::Date::new_0();
    let text = format!(
        "{:04}-{:02}-{:02}",
        now.get_full_year(),
        now.get_month() + 1,
        now.get_date()
    );
    // The clock gives days of the calendar; the fallback is a year's first.
    text.parse()
        .or_else(|_| "2026-01-01".parse())
        .expect("a day of the calendar")
}
