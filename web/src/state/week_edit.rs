//! Changes of one week. A change of something that is not there does nothing.

use super::action::{ChoiceAt, MealAt, OfferAt, WeekEdit};
use super::week_moves;
use engine::recipe::RecipeId;
use engine::units::Servings;
use engine::week::{Choice, Date, Day, GradeGroup, Meal, MealKind, Offer, Week};

/// Applies one change.
pub(super) fn apply(week: &mut Week, edit: WeekEdit) -> Option<()> {
    match edit {
        WeekEdit::Title(title) => week.title = title,
        WeekEdit::Start(date) => move_to(week, date)?,
        WeekEdit::DayDate(day, date) => {
            week.days.get_mut(day)?.date = date;
            week.days.sort_by_key(|day| day.date);
        }
        WeekEdit::AddDay(date) => week.days.push(Day {
            date,
            meals: Vec::new(),
        }),
        WeekEdit::RemoveDay(day) => remove(&mut week.days, day)?,
        WeekEdit::CopyDay(day, date) => {
            let copy = Day {
                date,
                ..week.days.get(day)?.clone()
            };
            week.days.push(copy);
        }
        WeekEdit::AddMeal {
            day,
            kind,
            group,
            parts,
        } => {
            let meal = new_meal(week, kind, group, parts);
            week.days.get_mut(day)?.meals.push(meal);
        }
        WeekEdit::RemoveMeal(at) => remove(&mut week.days.get_mut(at.day)?.meals, at.meal)?,
        WeekEdit::Kind(at, kind) => meal(week, at)?.kind = kind,
        WeekEdit::Group(at, group) => meal(week, at)?.group = group,
        WeekEdit::PlannedMeals(at, planned) => meal(week, at)?.planned_meals = planned,
        WeekEdit::AddOffer(at, title) => meal(week, at)?.offers.push(new_offer(title)),
        WeekEdit::RemoveOffer(at) => remove(&mut meal(week, at.meal)?.offers, at.offer)?,
        WeekEdit::OfferTitle(at, title) => offer(week, at)?.title = title,
        WeekEdit::Take(at, take) => offer(week, at)?.take = take,
        WeekEdit::AddChoice(at, recipe) => add_choice(week, at, recipe)?,
        WeekEdit::RemoveChoice(at) => remove(&mut offer(week, at.offer)?.choices, at.choice)?,
        WeekEdit::ChoiceRecipe(at, recipe) => choice(week, at)?.recipe = recipe,
        WeekEdit::Planned(at, planned) => choice(week, at)?.planned = planned,
        WeekEdit::MoveChoice(from, to) => week_moves::choice(week, from, to)?,
        WeekEdit::ChoiceToDay(from, day) => week_moves::choice_to_day(week, from, day)?,
        WeekEdit::MoveMeal(from, to) => week_moves::meal(week, from, to)?,
        WeekEdit::ExchangeDays(one, other) => week_moves::exchange(week, one, other)?,
    }
    Some(())
}

fn meal(week: &mut Week, at: MealAt) -> Option<&mut Meal> {
    week.days.get_mut(at.day)?.meals.get_mut(at.meal)
}

fn offer(week: &mut Week, at: OfferAt) -> Option<&mut Offer> {
    meal(week, at.meal)?.offers.get_mut(at.offer)
}

fn choice(week: &mut Week, at: ChoiceAt) -> Option<&mut Choice> {
    offer(week, at.offer)?.choices.get_mut(at.choice)
}

fn remove<T>(list: &mut Vec<T>, index: usize) -> Option<()> {
    (index < list.len()).then(|| {
        list.remove(index);
    })
}

/// Moves all days by as many days as the first has to move.
fn move_to(week: &mut Week, date: Date) -> Option<()> {
    let first = week.days.iter().map(|day| day.date).min()?;
    let days = date.days_since(first);
    for day in &mut week.days {
        day.date = day.date.plus_days(days);
    }
    Some(())
}

fn new_offer(title: String) -> Offer {
    Offer {
        title,
        take: 1,
        choices: Vec::new(),
    }
}

/// A meal with the number and the parts of the last one of its kind.
fn new_meal(week: &Week, kind: MealKind, group: GradeGroup, parts: Vec<String>) -> Meal {
    let like = week
        .days
        .iter()
        .flat_map(|day| &day.meals)
        .rfind(|meal| meal.kind == kind && meal.group == group);
    let offers = match like {
        Some(like) => like
            .offers
            .iter()
            .map(|offer| Offer {
                choices: Vec::new(),
                ..offer.clone()
            })
            .collect(),
        None => parts.into_iter().map(new_offer).collect(),
    };
    Meal {
        kind,
        group,
        planned_meals: like.map_or(Servings::ZERO, |like| like.planned_meals),
        offers,
    }
}

/// Adds a choice of which nothing is planned unless it is the only one: then
/// every planned meal gets it.
fn add_choice(week: &mut Week, at: OfferAt, recipe: RecipeId) -> Option<()> {
    let meals = meal(week, at.meal)?.planned_meals;
    let choices = &mut offer(week, at)?.choices;
    let planned = if choices.is_empty() {
        meals
    } else {
        Servings::ZERO
    };
    choices.push(Choice { recipe, planned });
    Some(())
}
