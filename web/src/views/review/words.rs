//! Words of the record for a review.

use crate::format;
use crate::language::{Say, say};
use crate::named;
use crate::views::week::words as week_words;
use engine::components::{Component, Mark};
use engine::week::{Date, Meal, MealAverage};
use engine::yields::AmountBasis;

/// Leads to the record.
pub const TO_REVIEW: Say = Say("review-to");
pub const PRINT: Say = Say("review-print");
pub const NOT_CERTIFIED: Say = Say("review-not-certified");
pub const MENUS: Say = Say("review-menus");
pub const PART: Say = Say("review-part");
pub const DISH: Say = Say("review-dish");
pub const PLANNED: Say = Say("review-planned");
pub const FINDINGS: Say = Say("review-findings");
pub const FINDINGS_HOW: Say = Say("review-findings-how");
pub const REQUIREMENT: Say = Say("review-requirement");
pub const FIGURE: Say = Say("review-figure");
pub const LIMIT: Say = Say("review-limit");
pub const VERDICT: Say = Say("review-verdict");
pub const KNOWN: Say = Say("review-known");
pub const PARAGRAPH: Say = Say("review-paragraph");
pub const RECIPES: Say = Say("review-recipes");
pub const RECIPES_HOW: Say = Say("review-recipes-how");
pub const LINE: Say = Say("review-line");
pub const WEIGHT: Say = Say("review-weight");
pub const FOOD: Say = Say("review-food");
pub const HOW: Say = Say("review-how");
pub const METHOD: Say = Say("review-method");
pub const CREDITS: Say = Say("review-credits");
pub const RULES: Say = Say("review-rules");
pub const RULES_HOW: Say = Say("review-rules-how");
pub const SOURCES: Say = Say("review-sources");
pub const SOURCES_HOW: Say = Say("review-sources-how");
pub const CITATION: Say = Say("review-citation");
pub const NUMBER: Say = Say("review-number");
pub const SOURCE: Say = Say("review-source");
pub const DATASET: Say = Say("review-dataset");
pub const ASSUMPTIONS: Say = Say("review-assumptions");
pub const METHODS: [Say; 6] = [
    Say("review-method-values"),
    Say("review-method-missing"),
    Say("review-method-average"),
    Say("review-method-credit"),
    Say("review-method-smallest"),
    Say("review-method-allergens"),
];
pub const NO_DOUBTS: Say = Say("review-no-doubts");
pub const DOUBTS: Say = Say("review-doubts");
pub const RECIPE: Say = Say("review-recipe");
pub const TAKEN_AS: Say = Say("review-taken-as");
pub const OVERRIDES: Say = Say("review-overrides");
pub const NO_OVERRIDES: Say = Say("review-no-overrides");
pub const DECIDED: Say = Say("review-decided");
pub const REASON: Say = Say("review-reason");
pub const NO_REASON: Say = Say("review-no-reason");
pub const WHOLE: Say = Say("review-whole");
pub const SIZED: Say = Say("review-sized");
pub const BEANS: Say = Say("review-beans");

fn with(key: &str, name: &str, value: &str) -> String {
    say(key, &[(name, value.into())])
}

/// Title of the record.
pub fn title(week: &str) -> String {
    with("review-title", "week", week)
}

/// Heading of each printed page.
pub fn running_head(week: &str, office: &str) -> String {
    say(
        "review-running-head",
        &[("week", week.into()), ("office", office.into())],
    )
}

/// The way back to the plan.
pub fn back(week: &str) -> String {
    with("review-back", "week", week)
}

/// Heading of a day.
pub fn day(date: Date) -> String {
    week_words::day(date)
}

/// A meal with the number planned.
pub fn meal(meal: &Meal) -> String {
    say(
        "review-meal",
        &[
            (
                "service",
                week_words::service(meal.kind, &meal.group.0).into(),
            ),
            (
                "planned",
                format::group(meal.planned_meals.servings()).into(),
            ),
        ],
    )
}

/// A part of a meal, and how many of its choices one may take.
pub fn offer(title: &str, take: u32) -> String {
    match take {
        1 => title.to_owned(),
        take => say(
            "review-offer",
            &[("title", title.into()), ("take", take.into())],
        ),
    }
}

/// A service over its days.
pub fn service(average: &MealAverage) -> String {
    let of = &average.service;
    let meals = format::group(average.planned_meals.servings());
    say(
        "review-service",
        &[
            ("service", week_words::service(of.kind, &of.group.0).into()),
            ("meals", meals.into()),
            ("days", average.days.len().into()),
        ],
    )
}

/// Something on a day.
pub fn on_day(what: &str, date: Date) -> String {
    say(
        "review-on-day",
        &[("what", what.into()), ("day", date.to_string().into())],
    )
}

/// A food that a person chose.
pub fn chosen(food: &str) -> String {
    with("review-chosen", "food", food)
}

/// An own food by its package.
pub fn label(reference: &str) -> String {
    with("review-label", "reference", reference)
}

/// An own food by a sheet of values.
pub fn values(reference: &str) -> String {
    with("review-values", "reference", reference)
}

/// Recipes whose batch was not weighed.
pub fn unmeasured(recipes: &str) -> String {
    with("review-unmeasured", "recipes", recipes)
}

/// On how many lines the food was chosen.
pub fn foods_chosen(count: usize) -> String {
    say("review-foods-chosen", &[("count", count.into())])
}

/// A reading of a rule that is not followed.
pub fn not_followed(name: &str) -> String {
    with("review-not-followed", "name", name)
}

/// A table of own limits is in use.
pub fn own_limits(name: &str) -> String {
    with("review-own-limits", "name", name)
}

/// The batch was weighed.
pub fn finished(weight: &str) -> String {
    with("review-finished", "weight", weight)
}

/// A line was weighed.
pub fn weighs(weight: &str) -> String {
    with("review-weighs", "weight", weight)
}

/// What a stated weight means.
pub fn basis(basis: AmountBasis) -> String {
    match basis {
        AmountBasis::AsPurchased => say("review-as-purchased", &[]),
        AmountBasis::EdiblePortion => say("review-edible-portion", &[]),
    }
}

/// How a line counts once it is cooked.
pub fn cooked(food: &str, grams: Option<&str>) -> String {
    match grams {
        None => with("review-cooked", "food", food),
        Some(grams) => say(
            "review-cooked-measured",
            &[("food", food.into()), ("grams", grams.into())],
        ),
    }
}

/// Another recipe is meant.
pub fn other_recipe(title: &str) -> String {
    with("review-other-recipe", "title", title)
}

/// A stated credit.
pub fn credit(amount: &str, component: Component, marks: &[Mark]) -> String {
    let marks: Vec<String> = marks
        .iter()
        .map(|mark| named::mark(*mark).to_string())
        .collect();
    let marks = match marks.is_empty() {
        true => String::new(),
        false => format!(" ({})", marks.join(", ")),
    };
    say(
        "review-credit",
        &[
            ("amount", named::counted(amount, component.unit()).into()),
            (
                "component",
                format!("{}{marks}", named::component(component)).into(),
            ),
        ],
    )
}

/// A credit that was stated for another line.
pub fn stated_for(credit: &str, line: &str) -> String {
    say(
        "review-stated-for",
        &[("credit", credit.into()), ("line", line.into())],
    )
}
