//! Choices, meals and days that change their place in a week. A move of
//! something that is not there, or to nowhere, does nothing.

use super::action::{ChoiceAt, MealAt};
use engine::week::{Choice, Meal, Offer, Week};

/// Moves a choice so that it stands at `to`; an index beyond the last is the
/// end. In a part that offers the recipe already the servings are added.
pub(super) fn choice(week: &mut Week, from: ChoiceAt, to: ChoiceAt) -> Option<()> {
    // The place is looked up first: nothing is taken out that has nowhere to go.
    part(week, to)?;
    let taken = take(week, from)?;
    let same = from.offer == to.offer;
    put(&mut part(week, to)?.choices, to.choice, taken, same);
    Some(())
}

/// Moves a choice to the same part of the same meal on another day. A day that
/// lacks the meal or the part gets it.
pub(super) fn choice_to_day(week: &mut Week, from: ChoiceAt, day: usize) -> Option<()> {
    let meal = week
        .days
        .get(from.offer.meal.day)?
        .meals
        .get(from.offer.meal.meal)?;
    let offer = meal.offers.get(from.offer.offer)?;
    let (kind, group, planned) = (meal.kind, meal.group.clone(), meal.planned_meals);
    let (title, part_take) = (offer.title.clone(), offer.take);
    if day >= week.days.len() || day == from.offer.meal.day {
        return None;
    }
    let taken = take(week, from)?;
    let meals = &mut week.days.get_mut(day)?.meals;
    let is_it = |meal: &Meal| meal.kind == kind && meal.group == group;
    let at = meals.iter().position(is_it).unwrap_or_else(|| {
        meals.push(Meal {
            kind,
            group,
            planned_meals: planned,
            offers: Vec::new(),
        });
        meals.len() - 1
    });
    let offers = &mut meals.get_mut(at)?.offers;
    let part = offers.iter().position(|offer| offer.title == title);
    let part = part.unwrap_or_else(|| {
        offers.push(Offer {
            title,
            take: part_take,
            choices: Vec::new(),
        });
        offers.len() - 1
    });
    put(&mut offers.get_mut(part)?.choices, usize::MAX, taken, false);
    Some(())
}

/// Moves a meal so that it stands at `to`.
pub(super) fn meal(week: &mut Week, from: MealAt, to: MealAt) -> Option<()> {
    week.days.get(to.day)?;
    let meals = &mut week.days.get_mut(from.day)?.meals;
    if from.meal >= meals.len() {
        return None;
    }
    let taken = meals.remove(from.meal);
    let meals = &mut week.days.get_mut(to.day)?.meals;
    meals.insert(to.meal.min(meals.len()), taken);
    Some(())
}

/// Exchanges what two days serve; their dates stay.
pub(super) fn exchange(week: &mut Week, one: usize, other: usize) -> Option<()> {
    if one.max(other) >= week.days.len() || one == other {
        return None;
    }
    let meals = std::mem::take(&mut week.days[one].meals);
    week.days[one].meals = std::mem::replace(&mut week.days[other].meals, meals);
    Some(())
}

fn part(week: &mut Week, at: ChoiceAt) -> Option<&mut Offer> {
    let meal = week
        .days
        .get_mut(at.offer.meal.day)?
        .meals
        .get_mut(at.offer.meal.meal)?;
    meal.offers.get_mut(at.offer.offer)
}

fn take(week: &mut Week, at: ChoiceAt) -> Option<Choice> {
    let choices = &mut part(week, at)?.choices;
    (at.choice < choices.len()).then(|| choices.remove(at.choice))
}

fn put(choices: &mut Vec<Choice>, index: usize, choice: Choice, same_part: bool) {
    let twin = choices.iter_mut().find(|one| one.recipe == choice.recipe);
    match twin {
        Some(twin) if !same_part => twin.planned += choice.planned,
        _ => choices.insert(index.min(choices.len()), choice),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::state::OfferAt;
    use engine::recipe::RecipeId;
    use engine::units::Servings;
    use engine::week::{Day, GradeGroup, MealKind, WeekId};
    use rust_decimal::Decimal;

    /// A day is written `a5 b3 | c2`: parts with recipes and servings.
    fn week(days: &[&str]) -> Week {
        let choice = |text: &str| Choice {
            recipe: RecipeId(text[..1].into()),
            planned: Servings::new(text[1..].parse().unwrap()),
        };
        let offer = |(index, part): (usize, &str)| Offer {
            title: format!("part {index}"),
            take: 1,
            choices: part.split_whitespace().map(choice).collect(),
        };
        let date: engine::week::Date = "2026-11-30".parse().unwrap();
        let day = |(index, text): (usize, &&str)| Day {
            date: date.plus_days(index as i64),
            meals: match *text {
                "" => Vec::new(),
                text => vec![Meal {
                    kind: MealKind::Lunch,
                    group: GradeGroup("K-5".into()),
                    planned_meals: Servings::new(Decimal::TEN),
                    offers: text.split('|').enumerate().map(offer).collect(),
                }],
            },
        };
        Week {
            id: WeekId("w".into()),
            title: String::new(),
            days: days.iter().enumerate().map(day).collect(),
        }
    }

    fn written(week: &Week) -> Vec<String> {
        let choice = |one: &Choice| format!("{}{}", one.recipe.0, one.planned.servings());
        let part = |offer: &Offer| {
            let choices: Vec<String> = offer.choices.iter().map(choice).collect();
            choices.join(" ")
        };
        let day = |day: &Day| {
            let offers = day.meals.iter().flat_map(|meal| &meal.offers);
            offers.map(part).collect::<Vec<_>>().join("|")
        };
        week.days.iter().map(day).collect()
    }

    fn at(day: usize, offer: usize, choice: usize) -> ChoiceAt {
        let meal = MealAt { day, meal: 0 };
        ChoiceAt {
            offer: OfferAt { meal, offer },
            choice,
        }
    }

    #[test]
    fn choices_move_within_and_between_parts() {
        for (from, to, after) in [
            (at(0, 0, 0), at(0, 0, 1), ["b3 a5|c2", "d4"]),
            (at(0, 0, 1), at(0, 0, 0), ["b3 a5|c2", "d4"]),
            (at(0, 0, 0), at(0, 1, 0), ["b3|a5 c2", "d4"]),
            (at(0, 0, 0), at(1, 0, 9), ["b3|c2", "d4 a5"]),
            (at(0, 0, 7), at(1, 0, 0), ["a5 b3|c2", "d4"]),
            (at(0, 0, 0), at(1, 3, 0), ["a5 b3|c2", "d4"]),
        ] {
            let mut plan = week(&["a5 b3|c2", "d4"]);
            choice(&mut plan, from, to);
            assert_eq!(written(&plan), after, "{from:?} to {to:?}");
        }
    }

    #[test]
    fn servings_of_one_recipe_in_one_part_are_added() {
        let mut plan = week(&["a5 b3", "a4"]);
        choice(&mut plan, at(1, 0, 0), at(0, 0, 0));
        assert_eq!(written(&plan), ["a9 b3", ""]);
    }

    #[test]
    fn a_day_gets_the_meal_and_the_part_that_it_lacks() {
        let mut plan = week(&["a5|c2", "", "d4"]);
        choice_to_day(&mut plan, at(0, 1, 0), 1);
        choice_to_day(&mut plan, at(0, 0, 0), 2);
        assert_eq!(written(&plan), ["|", "c2", "d4 a5"]);
        assert_eq!(
            plan.days[1].meals[0].planned_meals,
            plan.days[0].meals[0].planned_meals
        );
        assert_eq!(choice_to_day(&mut plan, at(2, 0, 0), 9), None);
    }

    #[test]
    fn days_exchange_what_they_serve() {
        let mut plan = week(&["a5", "b3"]);
        let dates: Vec<_> = plan.days.iter().map(|day| day.date).collect();
        exchange(&mut plan, 0, 1);
        assert_eq!(written(&plan), ["b3", "a5"]);
        assert_eq!(
            plan.days.iter().map(|day| day.date).collect::<Vec<_>>(),
            dates
        );
        assert_eq!(exchange(&mut plan, 0, 2), None);
    }

    #[test]
    fn a_meal_moves_to_another_day() {
        let mut plan = week(&["a5", "b3"]);
        meal(
            &mut plan,
            MealAt { day: 0, meal: 0 },
            MealAt { day: 1, meal: 0 },
        );
        assert_eq!(written(&plan), ["", "a5|b3"]);
    }
}
