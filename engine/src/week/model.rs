//! What is kept of a planned week.

use super::Date;
use crate::recipe::RecipeId;
use crate::units::Servings;
use serde::{Deserialize, Serialize};
use std::cmp::Ordering;
use std::fmt;

/// A week's name inside its book.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct WeekId(pub String);

/// Which meal of the day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum MealKind {
    /// School breakfast, 7 CFR 220.8.
    Breakfast,
    /// School lunch, 7 CFR 210.10.
    Lunch,
    /// After-school snack, 7 CFR 210.10(o).
    Snack,
    /// Supper, 7 CFR 226.20.
    Supper,
}

impl fmt::Display for MealKind {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(match self {
            Self::Breakfast => "breakfast",
            Self::Lunch => "lunch",
            Self::Snack => "snack",
            Self::Supper => "supper",
        })
    }
}

/// A grade group by its name in the rule tables: "K-5", "6-8", "9-12", "ages
/// 6-12". Groups stand in the order of the pupils' grades, then of their ages.
#[derive(Debug, Clone, PartialEq, Eq, Hash, Serialize, Deserialize)]
#[serde(transparent)]
pub struct GradeGroup(pub String);

impl GradeGroup {
    /// Grades before ages, the youngest first, other names last.
    fn place(&self) -> (u8, u32) {
        let (is_of_ages, span) = match self.0.strip_prefix("ages ") {
            Some(span) => (1, span),
            None => (0, self.0.as_str()),
        };
        match span.split('-').next() {
            Some("K") => (is_of_ages, 0),
            Some(first) => first
                .parse()
                .map_or((u8::MAX, 0), |first| (is_of_ages, first)),
            None => (u8::MAX, 0),
        }
    }
}

impl Ord for GradeGroup {
    fn cmp(&self, other: &Self) -> Ordering {
        let by_age = self.place().cmp(&other.place());
        by_age.then_with(|| self.0.cmp(&other.0))
    }
}

impl PartialOrd for GradeGroup {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl fmt::Display for GradeGroup {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(&self.0)
    }
}

/// A week of menus.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Week {
    /// Name inside the book.
    pub id: WeekId,
    /// Title as printed.
    pub title: String,
    /// Days in order.
    pub days: Vec<Day>,
}

/// A day's meals.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Day {
    /// The date; it chooses the rules in force.
    pub date: Date,
    /// Meals served that day.
    pub meals: Vec<Meal>,
}

/// One meal service for one grade group.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Meal {
    /// Which meal.
    pub kind: MealKind,
    /// For whom.
    pub group: GradeGroup,
    /// Number of meals planned, by which the offer is shared.
    pub planned_meals: Servings,
    /// What is offered, part by part.
    pub offers: Vec<Offer>,
}

/// One part of a meal (main dish, fruit …) and the choices for it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Offer {
    /// What part of the meal this is.
    pub title: String,
    /// How many of the choices one student may take.
    pub take: u32,
    /// The choices.
    pub choices: Vec<Choice>,
}

/// A recipe on offer with the number of servings planned.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Choice {
    /// The recipe.
    pub recipe: RecipeId,
    /// Servings planned for the day.
    pub planned: Servings,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn groups_stand_in_the_order_of_ages() {
        let names = [
            "K-5",
            "K-8",
            "K-12",
            "6-8",
            "6-12",
            "9-12",
            "ages 1-2",
            "ages 6-12",
            "adults",
        ];
        let mut groups: Vec<GradeGroup> = names.map(|name| GradeGroup(name.to_owned())).into();
        groups.sort();
        let found: Vec<&str> = groups.iter().map(|group| group.0.as_str()).collect();
        let expected = [
            "K-12",
            "K-5",
            "K-8",
            "6-12",
            "6-8",
            "9-12",
            "ages 1-2",
            "ages 6-12",
            "adults",
        ];
        assert_eq!(found, expected);
    }
}
