//! From what a finding rests on to the place in the plan where it was entered.

use super::words;
use crate::state::{ChoiceAt, MealAt, OfferAt};
use engine::recipe::RecipeId;
use engine::week::{Date, Service, Week};
use yew::prelude::*;

/// Id of a part of a meal in the document.
pub fn part_id(at: OfferAt) -> String {
    format!("part-{}-{}-{}", at.meal.day, at.meal.meal, at.offer)
}

/// Id of the field with a choice's planned servings.
pub fn planned_field(at: ChoiceAt) -> String {
    format!("{}-{}", part_id(at.offer), at.choice)
}

/// Where a recipe is first chosen in a service on a day.
fn find(week: &Week, service: &Service, date: Date, recipe: &RecipeId) -> Option<ChoiceAt> {
    let days = week.days.iter().enumerate();
    let mut meals = days
        .filter(|(_, day)| day.date == date)
        .flat_map(|(at, day)| {
            let meals = day.meals.iter().enumerate();
            meals.map(move |(meal, one)| (MealAt { day: at, meal }, one))
        });
    meals.find_map(|(meal, one)| {
        if one.kind != service.kind || one.group != service.group {
            return None;
        }
        let parts = one.offers.iter().enumerate();
        let mut choices = parts.flat_map(|(offer, part)| {
            let offer = OfferAt { meal, offer };
            let choices = part.choices.iter().enumerate();
            choices.map(move |(choice, one)| (ChoiceAt { offer, choice }, one))
        });
        let (at, _) = choices.find(|(_, choice)| choice.recipe == *recipe)?;
        Some(at)
    })
}

/// The day of a choice, as a way to its place in the plan.
pub fn day_way(week: &Week, service: &Service, date: Date, recipe: &RecipeId) -> Html {
    let Some(at) = find(week, service, date, recipe) else {
        return html! { { words::day(date) } };
    };
    let field = planned_field(at);
    let onclick = Callback::from(move |_| crate::page::focus(&field));
    html! {
        <button type="button" class="as-text way" data-test="to-choice" {onclick}
            title={words::TO_CHOICE}>{ words::day(date) }</button>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::units::Servings;
    use engine::week::{Choice, Day, GradeGroup, Meal, MealKind, Offer, WeekId};
    use rust_decimal::Decimal;

    #[test]
    fn a_choice_is_found_in_its_service() {
        let lunch = |group: &str, recipes: &[&str]| Meal {
            kind: MealKind::Lunch,
            group: GradeGroup(group.into()),
            planned_meals: Servings::new(Decimal::ONE),
            offers: vec![Offer {
                title: String::new(),
                take: 1,
                choices: recipes
                    .iter()
                    .map(|recipe| Choice {
                        recipe: RecipeId((*recipe).into()),
                        planned: Servings::new(Decimal::ONE),
                    })
                    .collect(),
            }],
        };
        let date: Date = "2026-11-30".parse().unwrap();
        let week = Week {
            id: WeekId("w".into()),
            title: String::new(),
            days: vec![Day {
                date,
                meals: vec![lunch("K-5", &["milk"]), lunch("9-12", &["pear", "milk"])],
            }],
        };
        let service = |group: &str| Service {
            kind: MealKind::Lunch,
            group: GradeGroup(group.into()),
        };
        let milk = RecipeId("milk".into());
        for (group, field) in [
            ("K-5", Some("part-0-0-0-0")),
            ("9-12", Some("part-0-1-0-1")),
            ("6-8", None),
        ] {
            let found = find(&week, &service(group), date, &milk).map(planned_field);
            assert_eq!(found.as_deref(), field, "{group}");
        }
    }
}
