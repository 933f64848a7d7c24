//! One day of a week.

use super::meal::MealView;
use super::moving::{Handle, Thing, use_target};
use super::{Edit, groups, next_date, words};
use crate::components::{DateField, Select};
use crate::page::use_page;
use crate::state::WeekEdit;
use engine::week::{Date, MealKind, Week};
use std::rc::Rc;
use yew::prelude::*;

/// Meals that can be planned.
pub const KINDS: [MealKind; 4] = [
    MealKind::Breakfast,
    MealKind::Lunch,
    MealKind::Snack,
    MealKind::Supper,
];

/// Which day.
#[derive(Clone, PartialEq, Properties)]
pub struct DayViewProps {
    /// Its week.
    pub week: Rc<Week>,
    /// Its index in the week.
    pub day: usize,
    /// How to change the week.
    pub edit: Edit,
}

/// The day with its meals.
#[component]
pub fn DayView(props: &DayViewProps) -> Html {
    let at = props.day;
    let (ondragover, ondrop) = use_target(Thing::Day(at));
    let clash = use_state(|| false);
    let Some(day) = props.week.days.get(at) else {
        return Html::default();
    };
    let name = words::day(day.date);
    let on_change = {
        let (props, clash) = (props.clone(), clash.clone());
        Callback::from(move |date: Date| {
            let taken = |(index, day): (usize, &engine::week::Day)| index != at && day.date == date;
            let is_taken = props.week.days.iter().enumerate().any(taken);
            clash.set(is_taken);
            if !is_taken {
                props.edit.emit(WeekEdit::DayDate(at, date));
            }
        })
    };
    let copy = {
        let (edit, next) = (props.edit.clone(), next_date(&props.week));
        Callback::from(move |_| edit.emit(WeekEdit::CopyDay(at, next)))
    };
    let remove = {
        let edit = props.edit.clone();
        Callback::from(move |_| edit.emit(WeekEdit::RemoveDay(at)))
    };
    let heading = format!("day-{at}");
    html! {
        <section class="day" aria-labelledby={heading.clone()} data-test="day" data-date={day.date.to_string()}
            {ondragover} {ondrop}>
            <header class="day-head">
                <h3 id={heading}>{ crate::format::weekday(day.date) }</h3>
                <Handle thing={Thing::Day(at)} name={name.clone()} />
                <DateField id={format!("date-{at}")} hide_label={true}
                    label={words::of(words::DATE, &name)} value={day.date} {on_change} />
                if *clash { <p class="field-problem" role="alert">{ words::SAME_DAY }</p> }
            </header>
            { for (0..day.meals.len()).map(|meal| html! {
                <MealView key={meal} week={props.week.clone()} day={at} {meal} edit={props.edit.clone()} />
            }) }
            <AddMeal day={at} {name} edit={props.edit.clone()} />
            <p class="day-ways">
                <button type="button" class="quiet" data-test="copy-day" onclick={copy}>
                    { words::COPY_DAY }
                </button>
                <button type="button" class="quiet" data-test="remove-day" onclick={remove}>
                    { words::REMOVE_DAY }
                </button>
            </p>
        </section>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct AddMealProps {
    day: usize,
    name: String,
    edit: Edit,
}

/// Adds a meal: which, and for whom, in one choice.
#[component]
fn AddMeal(props: &AddMealProps) -> Html {
    let page = use_page();
    let services: Vec<_> = KINDS
        .iter()
        .flat_map(|kind| {
            let groups = groups(&page.tables.reference, *kind);
            groups.into_iter().map(|group| (*kind, group))
        })
        .collect();
    let names = std::iter::once(words::ADD_MEAL.into())
        .chain(
            services
                .iter()
                .map(|(kind, group)| AttrValue::from(words::service(*kind, &group.0))),
        )
        .collect::<Vec<_>>();
    let on_choose = {
        let (day, edit) = (props.day, props.edit.clone());
        Callback::from(move |index: usize| {
            // The first name only says what the others do.
            let chosen = index.checked_sub(1).and_then(|index| services.get(index));
            if let Some((kind, group)) = chosen.cloned() {
                edit.emit(WeekEdit::AddMeal {
                    day,
                    kind,
                    group,
                    parts: words::usual_parts(kind),
                });
            }
        })
    };
    html! {
        <div class="add-meal">
            <Select id={format!("add-meal-{}", props.day)} data_test="add-meal"
                label={words::of(words::ADD_MEAL, &props.name)} hide_label={true}
                {names} chosen={Some(0)} {on_choose} />
        </div>
    }
}
