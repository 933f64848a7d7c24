//! Cycle menus: their weeks in order, and laying them over dates.

use super::words;
use crate::components::{DateField, Select};
use crate::language::Say;
use crate::page::{Page, use_page};
use crate::state::{Action, CalendarEdit};
use crate::words::title_or_untitled;
use engine::calendar::{Cycle, LaidWeek, OnBreak, lay_out};
use engine::week::{Date, Week, WeekId};
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Which month is shown: cycles are laid over it at first.
#[derive(Clone, PartialEq, Properties)]
pub struct CyclesProps {
    /// Its first day.
    pub first: Date,
}

/// The section of cycles.
#[component]
pub fn Cycles(props: &CyclesProps) -> Html {
    let page = use_page();
    let cycles = &page.contents().rest.calendar.cycles;
    let add = {
        let page = page.clone();
        Callback::from(move |_| {
            let title = words::NEW_CYCLE.to_string();
            page.act(Action::Calendar(CalendarEdit::AddCycle(title)));
        })
    };
    html! {
        <section class="cycles" aria-labelledby="cycles">
            <h2 id="cycles">{ words::CYCLES }</h2>
            <p class="hint">{ words::CYCLES_HINT }</p>
            { for cycles.iter().enumerate().map(|(index, cycle)| html! {
                <CycleView key={cycle.id.0.clone()} cycle={cycle.clone()} {index} first={props.first} />
            }) }
            <button type="button" id="add-cycle" onclick={add}>{ words::ADD_CYCLE }</button>
        </section>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct CycleViewProps {
    cycle: Cycle,
    index: usize,
    first: Date,
}

/// One cycle.
#[component]
fn CycleView(props: &CycleViewProps) -> Html {
    let page = use_page();
    let cycle = &props.cycle;
    let id = format!("cycle-{}", props.index);
    let act = {
        let page = page.clone();
        move |edit: CalendarEdit| page.act(Action::Calendar(edit))
    };
    let title = {
        let (act, id) = (act.clone(), cycle.id.clone());
        Callback::from(move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlInputElement>().value();
            act(CalendarEdit::CycleTitle(id.clone(), text));
        })
    };
    let remove = {
        let (act, id) = (act.clone(), cycle.id.clone());
        Callback::from(move |_| act(CalendarEdit::RemoveCycle(id.clone())))
    };
    let on_break = {
        let (act, id) = (act.clone(), cycle.id.clone());
        Callback::from(move |index: usize| {
            let on_break = if index == 0 {
                OnBreak::Wait
            } else {
                OnBreak::RunOn
            };
            act(CalendarEdit::OnBreak(id.clone(), on_break));
        })
    };
    html! {
        <div class="cycle" data-test="cycle">
            <div class="cycle-head">
                <input type="text" id={format!("{id}-title")} autocomplete="off"
                    aria-label={words::CYCLE_TITLE.to_string()} value={cycle.title.clone()} oninput={title} />
                <Select id={format!("{id}-break")} label={words::ON_BREAK}
                    names={vec![AttrValue::from(words::WAITS), words::RUNS_ON.into()]}
                    chosen={Some(usize::from(cycle.on_break == OnBreak::RunOn))} on_choose={on_break} />
                <button type="button" class="quiet small" onclick={remove}
                    aria-label={words::remove(&cycle.title)}>{ "×" }</button>
            </div>
            { weeks(&page, cycle, &id) }
            <LayOut cycle={cycle.clone()} {id} first={props.first} />
        </div>
    }
}

/// The cycle's weeks in order, with ways to change it.
fn weeks(page: &Page, cycle: &Cycle, id: &str) -> Html {
    let contents = page.contents();
    let name = |week: &WeekId| {
        let week = contents.week(week);
        week.map_or_else(
            || words::LOST_WEEK.to_string(),
            |week| title_or_untitled(&week.title),
        )
    };
    let set = |weeks: Vec<WeekId>| {
        let (page, cycle) = (page.clone(), cycle.id.clone());
        Callback::from(move |_: MouseEvent| {
            page.act(Action::Calendar(CalendarEdit::CycleWeeks(
                cycle.clone(),
                weeks.clone(),
            )));
        })
    };
    let moved = |from: usize, to: usize| {
        let mut weeks = cycle.weeks.clone();
        weeks.swap(from, to);
        set(weeks)
    };
    let without = |at: usize| {
        let mut weeks = cycle.weeks.clone();
        weeks.remove(at);
        set(weeks)
    };
    let last = cycle.weeks.len().saturating_sub(1);
    let names: Vec<AttrValue> = std::iter::once(words::ADD_WEEK.into())
        .chain(
            contents
                .weeks
                .iter()
                .map(|week| AttrValue::from(title_or_untitled(&week.title))),
        )
        .collect();
    let on_choose = {
        let ids: Vec<WeekId> = contents.weeks.iter().map(|week| week.id.clone()).collect();
        let (page, cycle) = (page.clone(), cycle.clone());
        Callback::from(move |index: usize| {
            let Some(id) = index.checked_sub(1).and_then(|at| ids.get(at)) else {
                return;
            };
            let weeks = cycle.weeks.iter().chain([id]).cloned().collect();
            page.act(Action::Calendar(CalendarEdit::CycleWeeks(
                cycle.id.clone(),
                weeks,
            )));
        })
    };
    html! {<>
        <ol class="cycle-weeks">
            { for cycle.weeks.iter().enumerate().map(|(at, week)| {
                let title = name(week);
                html! {
                    <li data-test="cycle-week">
                        <span>{ &title }</span>
                        <button type="button" class="quiet small" disabled={at == 0}
                            onclick={(at > 0).then(|| moved(at, at - 1))}
                            aria-label={words::earlier(&title)}>{ "↑" }</button>
                        <button type="button" class="quiet small" disabled={at == last}
                            onclick={(at < last).then(|| moved(at, at + 1))}
                            aria-label={words::later(&title)}>{ "↓" }</button>
                        <button type="button" class="quiet small" onclick={without(at)}
                            aria-label={words::remove(&title)}>{ "×" }</button>
                    </li>
                }
            }) }
        </ol>
        <Select id={format!("{id}-add")} data_test="cycle-add" label={words::of(words::ADD_WEEK, &cycle.title)}
            hide_label={true} {names} chosen={Some(0)} {on_choose} />
    </>}
}

#[derive(Clone, PartialEq, Properties)]
struct LayOutProps {
    cycle: Cycle,
    id: String,
    first: Date,
}

/// The weeks of a cycle over some dates, as the book will hold them.
fn laid(page: &Page, cycle: &Cycle, first: Date, last: Date) -> Vec<LaidWeek> {
    let contents = page.contents();
    let weeks: Vec<Rc<Week>> = cycle
        .weeks
        .iter()
        .filter_map(|id| contents.week(id).cloned())
        .collect();
    let weeks: Vec<&Week> = weeks.iter().map(|week| &**week).collect();
    lay_out(&weeks, first, last, &contents.rest.calendar, cycle.on_break)
}

/// How many of these days some week of the book plans already.
fn planned_already(page: &Page, laid: &[LaidWeek]) -> usize {
    let planned = |date: Date| {
        let weeks = page.contents().weeks.iter();
        weeks
            .flat_map(|week| &week.days)
            .any(|day| day.date == date)
    };
    let days = laid.iter().flat_map(|week| &week.days);
    days.filter(|day| planned(day.date)).count()
}

/// From which day to which, and the step itself.
#[component]
fn LayOut(props: &LayOutProps) -> Html {
    let page = use_page();
    let from = use_state(|| None::<Date>);
    let to = use_state(|| None::<Date>);
    let first = from.unwrap_or(props.first);
    let last = to.unwrap_or_else(|| first.first_of_next_month().plus_days(-1));
    let field = |id: &str, label: Say, day: Date, state: &UseStateHandle<Option<Date>>| {
        let (chosen, cleared) = (state.clone(), state.clone());
        let on_change = Callback::from(move |day| chosen.set(Some(day)));
        let on_clear = Callback::from(move |()| cleared.set(None));
        html! {
            <span class="field">
                <DateField id={format!("{}-{id}", props.id)} {label} value={day} {on_change} {on_clear} />
            </span>
        }
    };
    let weeks = laid(&page, &props.cycle, first, last);
    let already = planned_already(&page, &weeks);
    let days = weeks.iter().map(|week| week.days.len()).sum();
    let add = {
        let (page, cycle) = (page.clone(), props.cycle.clone());
        let weeks: Vec<Week> = weeks
            .iter()
            .map(|week| Week {
                id: week.from.clone(),
                title: words::laid_title(&cycle.title, week.monday),
                days: week.days.clone(),
            })
            .collect();
        Callback::from(move |_| {
            page.act(Action::AddWeeks(weeks.clone()));
            page.tell(words::laid(weeks.len()), true);
        })
    };
    html! {
        <div class="lay-out">
            { field("from", words::FROM, first, &from) }
            { field("to", words::TO, last, &to) }
            <button type="button" data-test="lay-out" onclick={add} disabled={weeks.is_empty()}>
                { words::lay_out(weeks.len(), days) }
            </button>
            if already > 0 { <p class="problem">{ words::already(already) }</p> }
        </div>
    }
}
