//! Where a recipe is used: in which recipes, and in which weeks.

use super::sub_recipe::named_recipe;
use crate::book::{Book, plain_title};
use crate::recipe::{Recipe, RecipeId, RecipeLine, read_line};
use crate::week::WeekId;
use serde::Serialize;
use std::collections::BTreeSet;

/// The places of a book that use a recipe.
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Uses {
    /// Recipes with a line that names it, in the order of the book.
    pub recipes: Vec<RecipeId>,
    /// Recipes that it reaches through those.
    pub further: Vec<RecipeId>,
    /// Weeks that serve it, or one of these recipes, in the order of the book.
    pub weeks: Vec<WeekId>,
}

impl Uses {
    /// True for the recipe's own name and for those of all that use it.
    fn reaches(&self, own: &RecipeId, id: &RecipeId) -> bool {
        own == id || self.recipes.contains(id) || self.further.contains(id)
    }
}

/// Looks where a recipe of a book is used. A recipe that it does not hold is
/// used nowhere.
pub fn uses(book: &Book, id: &RecipeId) -> Uses {
    let Some(recipe) = book.recipe(id) else {
        return Uses::default();
    };
    let mut found = Uses {
        recipes: naming(book, recipe),
        ..Uses::default()
    };
    let mut reached: BTreeSet<RecipeId> = found.recipes.iter().cloned().collect();
    reached.insert(id.clone());
    let mut next = found.recipes.clone();
    while let Some(one) = next.pop() {
        let Some(one) = book.recipe(&one) else {
            continue;
        };
        for user in naming(book, one) {
            if reached.insert(user.clone()) {
                next.push(user.clone());
                found.further.push(user);
            }
        }
    }
    let serves = |week: &crate::week::Week| week.recipes().iter().any(|of| found.reaches(id, of));
    let weeks = book.weeks.iter().filter(|week| serves(week));
    found.weeks = weeks.map(|week| week.id.clone()).collect();
    found
}

/// The other recipes with a line that names this one.
fn naming(book: &Book, recipe: &Recipe) -> Vec<RecipeId> {
    let title = plain_title(&recipe.title);
    let names = |line: &RecipeLine| {
        if line.correction.recipe.is_none() && !says(&line.text, &title) {
            return false;
        }
        let named = named_recipe(book, line, &read_line(&line.text));
        matches!(named, Some(Ok(named)) if named.id == recipe.id)
    };
    book.recipes
        .iter()
        .filter(|other| other.id != recipe.id && other.lines.iter().any(names))
        .map(|other| other.id.clone())
        .collect()
}

/// Whether a line can name a title at all: reading each line of a book would
/// take too long.
fn says(text: &str, title: &str) -> bool {
    !title.is_empty() && plain_title(text).contains(title)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::Servings;
    use crate::week::{Choice, Day, GradeGroup, Meal, MealKind, Offer, Week};
    use rust_decimal::Decimal;

    fn recipe(id: &str, title: &str, lines: &[&str]) -> Recipe {
        let line = |text: &&str| RecipeLine {
            text: (*text).to_owned(),
            ..RecipeLine::default()
        };
        Recipe {
            id: RecipeId(id.to_owned()),
            title: title.to_owned(),
            servings: Servings::new(Decimal::TEN),
            serving_words: String::new(),
            serving_size: None,
            finished_weight: None,
            lines: lines.iter().map(line).collect(),
            beans: Default::default(),
            method: String::new(),
        }
    }

    fn week(id: &str, recipe: &str) -> Week {
        let ten = Servings::new(Decimal::TEN);
        Week {
            id: WeekId(id.to_owned()),
            title: id.to_owned(),
            days: vec![Day {
                date: "2026-11-30".parse().expect("a day"),
                meals: vec![Meal {
                    kind: MealKind::Lunch,
                    group: GradeGroup("K-5".to_owned()),
                    planned_meals: ten,
                    offers: vec![Offer {
                        title: String::new(),
                        take: 1,
                        choices: vec![Choice {
                            recipe: RecipeId(recipe.to_owned()),
                            planned: ten,
                        }],
                    }],
                }],
            }],
        }
    }

    fn ids(found: &[RecipeId]) -> Vec<&str> {
        found.iter().map(|id| id.0.as_str()).collect()
    }

    #[test]
    fn a_recipe_is_found_through_others() {
        let mut book = Book::empty("Office");
        book.recipes = vec![
            recipe("sauce", "Tomato sauce", &["2 lb tomatoes"]),
            recipe("pasta", "Pasta bake", &["4 servings Tomato Sauce"]),
            recipe("canned", "Stew", &["3 lb tomato sauce"]),
            recipe(
                "other",
                "Other stew",
                &["3 lb tomato sauce, canned, low sodium"],
            ),
            recipe("tray", "Pasta tray", &["1 batch pasta bake"]),
        ];
        book.weeks = vec![week("one", "tray"), week("two", "canned")];
        let found = uses(&book, &RecipeId("sauce".into()));
        assert_eq!(ids(&found.recipes), ["pasta", "canned"]);
        assert_eq!(ids(&found.further), ["tray"]);
        assert_eq!(found.weeks.len(), 2);
        // A food that was chosen by hand is no recipe.
        book.recipes[2].lines[0].correction.food = Some(crate::foods::FoodId::Sr28(11549));
        let found = uses(&book, &RecipeId("sauce".into()));
        assert_eq!(ids(&found.recipes), ["pasta"]);
        assert_eq!(found.weeks, [WeekId("one".into())]);
    }

    #[test]
    fn a_circle_ends() {
        let mut book = Book::empty("Office");
        book.recipes = vec![
            recipe("a", "Base", &["1 batch broth"]),
            recipe("b", "Broth", &["1 batch base"]),
        ];
        let found = uses(&book, &RecipeId("a".into()));
        assert_eq!(ids(&found.recipes), ["b"]);
        assert!(found.further.is_empty());
        assert_eq!(uses(&book, &RecipeId("none".into())), Uses::default());
    }
}
