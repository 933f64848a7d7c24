//! The choice of a week and of one of its days.

use super::words;
use crate::components::Select;
use crate::format;
use crate::page::use_page;
use crate::state::Contents;
use crate::words::title_or_untitled;
use engine::week::{Date, Week, WeekId};
use std::rc::Rc;
use yew::prelude::*;

/// A day of a week.
pub struct Picked {
    /// The week.
    pub week: Rc<Week>,
    /// The day.
    pub date: Date,
}

/// The week and day that are asked for, or the first there are; nothing where
/// no week has a day.
pub fn picked(contents: &Contents, week: Option<&WeekId>, date: Option<Date>) -> Option<Picked> {
    let asked = week.and_then(|id| contents.week(id));
    let first = || contents.weeks.iter().find(|week| !week.days.is_empty());
    let week = asked.filter(|week| !week.days.is_empty()).or_else(first)?;
    let has = |date: &Date| week.days.iter().any(|day| day.date == *date);
    let date = date
        .filter(has)
        .or_else(|| week.days.iter().map(|day| day.date).min())?;
    Some(Picked {
        week: week.clone(),
        date,
    })
}

/// What is chosen.
#[derive(Clone, PartialEq, Properties)]
pub struct PickDayProps {
    /// The week.
    pub week: Rc<Week>,
    /// The day; nothing for the whole week.
    pub date: Option<Date>,
    /// Whether the whole week can be chosen.
    #[prop_or_default]
    pub whole_week: bool,
    /// Told of another choice.
    pub on_pick: Callback<(WeekId, Option<Date>)>,
}

/// Two fields: week and day.
#[component]
pub fn PickDay(props: &PickDayProps) -> Html {
    let page = use_page();
    let weeks: Vec<Rc<Week>> = page
        .contents()
        .weeks
        .iter()
        .filter(|week| !week.days.is_empty())
        .cloned()
        .collect();
    let titles: Vec<AttrValue> = weeks
        .iter()
        .map(|week| title_or_untitled(&week.title).into())
        .collect();
    let chosen = weeks.iter().position(|week| week.id == props.week.id);
    let on_week = {
        let ids: Vec<WeekId> = weeks.iter().map(|week| week.id.clone()).collect();
        props
            .on_pick
            .reform(move |index: usize| (ids[index].clone(), None))
    };
    let dates: Vec<Option<Date>> = props
        .whole_week
        .then_some(None)
        .into_iter()
        .chain(props.week.days.iter().map(|day| Some(day.date)))
        .collect();
    let days: Vec<AttrValue> = dates
        .iter()
        .map(|date| match date {
            None => words::WHOLE_WEEK.into(),
            Some(date) => AttrValue::from(format::day(*date)),
        })
        .collect();
    let day = dates.iter().position(|date| *date == props.date);
    let on_day = {
        let id = props.week.id.clone();
        props
            .on_pick
            .reform(move |index: usize| (id.clone(), dates[index]))
    };
    html! {
        <div class="pick-day">
            <Select id="kitchen-week" label={words::WEEK} names={titles} {chosen} on_choose={on_week} />
            <Select id="kitchen-date" label={words::DAY} names={days} chosen={day} on_choose={on_day} />
        </div>
    }
}
