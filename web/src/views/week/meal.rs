//! One meal of a day.

use super::day::KINDS;
use super::moving::{Handle, Thing, use_target};
use super::offer::OfferView;
use super::{Edit, groups, words};
use crate::components::{NumberField, Select};
use crate::named;
use crate::page::use_page;
use crate::state::{MealAt, OfferAt, WeekEdit};
use engine::units::Servings;
use engine::week::Week;
use std::rc::Rc;
use yew::prelude::*;

/// Which meal.
#[derive(Clone, PartialEq, Properties)]
pub struct MealViewProps {
    /// Its week.
    pub week: Rc<Week>,
    /// Index of its day.
    pub day: usize,
    /// Its index in the day.
    pub meal: usize,
    /// How to change the week.
    pub edit: Edit,
}

/// The meal with its parts.
#[component]
pub fn MealView(props: &MealViewProps) -> Html {
    let page = use_page();
    let at = MealAt {
        day: props.day,
        meal: props.meal,
    };
    let (ondragover, ondrop) = use_target(Thing::Meal(at));
    let day = props.week.days.get(at.day);
    let Some((day, meal)) = day.and_then(|day| Some((day, day.meals.get(at.meal)?))) else {
        return Html::default();
    };
    let id = format!("meal-{}-{}", at.day, at.meal);
    let name = words::service(meal.kind, &meal.group.0);
    let full_name = format!("{name}, {}", words::day(day.date));
    let mut groups = groups(&page.tables.reference, meal.kind);
    if !groups.contains(&meal.group) {
        groups.push(meal.group.clone());
    }
    let kind = props
        .edit
        .reform(move |index: usize| WeekEdit::Kind(at, KINDS[index]));
    let group = {
        let groups = groups.clone();
        props
            .edit
            .reform(move |index: usize| WeekEdit::Group(at, groups[index].clone()))
    };
    let planned = props
        .edit
        .reform(move |value| WeekEdit::PlannedMeals(at, Servings::new(value)));
    let add = props
        .edit
        .reform(move |_| WeekEdit::AddOffer(at, words::NEW_PART.to_string()));
    let remove = props.edit.reform(move |_| WeekEdit::RemoveMeal(at));
    html! {
        <section class="meal" aria-labelledby={id.clone()} data-test="meal" {ondragover} {ondrop}>
            <h4 id={id.clone()} class="for-readers">{ &full_name }</h4>
            <div class="meal-head">
                <Select id={format!("{id}-kind")} label={words::MEAL} hide_label={true}
                    names={KINDS.iter().map(|kind| words::meal_name(*kind).into()).collect::<Vec<AttrValue>>()}
                    chosen={KINDS.iter().position(|kind| *kind == meal.kind)} on_choose={kind} />
                <Select id={format!("{id}-group")} label={words::GROUP} hide_label={true}
                    names={groups.iter().map(|group| named::group(&group.0).into()).collect::<Vec<AttrValue>>()}
                    chosen={groups.iter().position(|group| *group == meal.group)} on_choose={group} />
                <Handle thing={Thing::Meal(at)} name={full_name.clone()} />
                <button type="button" class="quiet small" onclick={remove}
                    aria-label={words::of(words::REMOVE_MEAL, &full_name)}>{ "×" }</button>
                <NumberField id={format!("{id}-planned")} data_test="planned-meals"
                    label={words::PLANNED_MEALS} value={Some(meal.planned_meals.servings())}
                    on_change={planned} />
            </div>
            { for (0..meal.offers.len()).map(|offer| html! {
                <OfferView key={offer} week={props.week.clone()} at={OfferAt { meal: at, offer }}
                    edit={props.edit.clone()} />
            }) }
            <button type="button" class="quiet" data-test="add-part" onclick={add}>{ words::ADD_PART }</button>
        </section>
    }
}
