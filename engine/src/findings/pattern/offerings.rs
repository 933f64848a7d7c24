//! Shares of what is offered, options, kinds of products, days and meals.

use super::setting::Setting;
use super::{CitedLimit, PatternFinding};
use crate::components::{Component, LineCredit, Mark, PartCredit, RecipeCredits};
use crate::exact::Bounds;
use crate::foods::FoodId;
use crate::recipe::RecipeId;
use crate::rules::{Bound, Subject, WeekRule};
use crate::week::{Choice, Counted, Date, Meal};
use rust_decimal::Decimal;
use std::collections::BTreeSet;

const AT_MOST_NONE: (Bound, Decimal) = (Bound::AtMost, Decimal::ZERO);

/// The marked part of all that the week offers of a component, in percent. Each
/// choice counts once on each day that offers it. Nothing when the week offers
/// none.
pub(super) fn share(setting: &Setting<'_>, rule: &WeekRule) -> Option<PatternFinding> {
    let (component, mark) = (rule.component?, *rule.marks.first()?);
    let marked = |choice: &Choice| setting.marked(choice, component, mark);
    let all = setting.week(Counted::Offered, |choice| {
        setting.amount(choice, Subject::Of(component))
    });
    let part = setting.week(Counted::Offered, marked);
    let percent = |amount: Decimal| amount * Decimal::ONE_HUNDRED / all.low;
    let figure = match all.high {
        Some(high) if high <= Decimal::ZERO => return None,
        Some(_) => Bounds {
            low: percent(part.low),
            high: part.high.map(percent),
        },
        // What is not known may all bear the mark, or none of it.
        None => Bounds {
            low: Decimal::ZERO,
            high: Some(Decimal::ONE_HUNDRED),
        },
    };
    let rule = CitedLimit::of_rule(rule, AT_MOST_NONE);
    Some(
        PatternFinding::new(setting, None, rule, figure).carried_by(setting.carriers(None, marked)),
    )
}

/// The most that a student can take in the week of the marked part.
pub(super) fn largest(setting: &Setting<'_>, rule: &WeekRule) -> PatternFinding {
    let marked = |choice: &Choice| match (rule.component, rule.marks.first()) {
        (Some(component), Some(mark)) => setting.marked(choice, component, *mark),
        _ => Bounds::ZERO,
    };
    let figure = setting.week(Counted::Largest, marked);
    PatternFinding::new(
        setting,
        None,
        CitedLimit::of_rule(rule, AT_MOST_NONE),
        figure,
    )
    .averaging(setting.week(Counted::Average, marked))
    .carried_by(setting.carriers(None, marked))
}

/// Different foods of a component with all the marks to choose from on a day.
/// Where a service has several meals, the one with the fewest counts.
pub(super) fn options(setting: &Setting<'_>, rule: &WeekRule, date: Date) -> PatternFinding {
    let has_marks = |part: &PartCredit| rule.marks.iter().all(|mark| part.marks.contains(mark));
    let figure = setting
        .meals(Some(date))
        .map(|(_, meal)| {
            let found = products(setting, rule, meal).filter(|(_, _, part)| has_marks(part));
            let different: BTreeSet<Product> = found.map(|(product, ..)| product).collect();
            count(different.len(), is_complete(setting, rule, meal))
        })
        .reduce(Bounds::min)
        .unwrap_or(Bounds::ZERO);
    let carriers = setting.carriers(Some(date), |choice| match rule.component {
        Some(component) => setting.amount(choice, Subject::Of(component)),
        None => Bounds::ZERO,
    });
    PatternFinding::new(
        setting,
        Some(date),
        CitedLimit::of_rule(rule, AT_MOST_NONE),
        figure,
    )
    .carried_by(carriers)
}

/// Foods of a component on a day that bear none of the marks.
pub(super) fn kinds(setting: &Setting<'_>, rule: &WeekRule, date: Date) -> PatternFinding {
    let is_other = |part: &PartCredit| !part.marks.iter().any(|mark| rule.marks.contains(mark));
    let mut others = BTreeSet::new();
    let mut complete = true;
    for (_, meal) in setting.meals(Some(date)) {
        let found = products(setting, rule, meal).filter(|(_, _, part)| is_other(part));
        others.extend(found.map(|(product, recipe, _)| (product, recipe)));
        complete &= is_complete(setting, rule, meal);
    }
    let carriers = setting.carriers(Some(date), |choice| {
        let is_carrier = others.iter().any(|(_, recipe)| *recipe == choice.recipe);
        count(usize::from(is_carrier), true)
    });
    let mut cited = CitedLimit::of_rule(rule, AT_MOST_NONE);
    cited.unit = "other products".into();
    let products: BTreeSet<&Product> = others.iter().map(|(product, _)| product).collect();
    PatternFinding::new(setting, Some(date), cited, count(products.len(), complete))
        .carried_by(carriers)
}

/// Meals of the day, of any kind, that offer the group food with the mark.
pub(super) fn meals_with(setting: &Setting<'_>, rule: &WeekRule, date: Date) -> PatternFinding {
    let mark = rule.marks.first().copied();
    let figure = setting
        .all_meals(date)
        .map(|meal| {
            let has = |credits: &RecipeCredits| mark.is_some_and(|mark| credits.bears_mark(mark));
            match setting.offered(meal).any(|(_, credits)| has(credits)) {
                true => Bounds::exactly(Decimal::ONE),
                false
                    if setting
                        .offered(meal)
                        .all(|(_, credits)| credits.unknown().next().is_none()) =>
                {
                    Bounds::ZERO
                }
                false => Bounds {
                    low: Decimal::ZERO,
                    high: Some(Decimal::ONE),
                },
            }
        })
        .sum();
    let carriers = setting.carriers(Some(date), |choice| match mark {
        Some(mark) => Component::ALL
            .into_iter()
            .filter(|component| !Component::SUBGROUPS.contains(component))
            .map(|component| setting.marked(choice, component, mark))
            .sum(),
        None => Bounds::ZERO,
    });
    PatternFinding::new(
        setting,
        Some(date),
        CitedLimit::of_rule(rule, AT_MOST_NONE),
        figure,
    )
    .carried_by(carriers)
}

/// Days of the week that serve the meal.
pub(super) fn days(setting: &Setting<'_>, rule: &WeekRule) -> PatternFinding {
    let figure = count(setting.days().len(), true);
    PatternFinding::new(
        setting,
        None,
        CitedLimit::of_rule(rule, AT_MOST_NONE),
        figure,
    )
}

/// A food by which two options are told apart: a credit that the office states
/// without a food is one with its recipe.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord)]
enum Product {
    Food(FoodId),
    Recipe(RecipeId),
}

/// The lines of a meal's choices that credit toward the rule's component, in
/// choices that credit it at all.
fn products<'m>(
    setting: &'m Setting<'_>,
    rule: &'m WeekRule,
    meal: &'m Meal,
) -> impl Iterator<Item = (Product, RecipeId, &'m PartCredit)> {
    let component = rule.component;
    setting
        .offered(meal)
        .filter(move |(choice, _)| {
            component.is_some_and(|component| {
                setting.amount(choice, Subject::Of(component)).low > Decimal::ZERO
            })
        })
        .flat_map(move |(choice, credits)| {
            let parts = component.into_iter().flat_map(|c| credits.parts(c));
            parts.map(move |(line, part)| (product(line, choice), choice.recipe.clone(), part))
        })
}

fn product(line: &LineCredit, choice: &Choice) -> Product {
    match line.food {
        Some(food) => Product::Food(food),
        None => Product::Recipe(choice.recipe.clone()),
    }
}

fn is_complete(setting: &Setting<'_>, rule: &WeekRule, meal: &Meal) -> bool {
    setting.offered(meal).all(|(_, credits)| {
        rule.component
            .is_none_or(|component| credits.is_complete(component))
    })
}

fn count(number: usize, complete: bool) -> Bounds {
    let number = Decimal::from(number);
    if complete {
        Bounds::exactly(number)
    } else {
        Bounds::at_least(number)
    }
}

impl RecipeCredits {
    /// True when some of what the recipe credits is known to bear the mark.
    fn bears_mark(&self, mark: Mark) -> bool {
        Component::ALL
            .into_iter()
            .any(|component| self.marked_exactly(component, mark) > Decimal::ZERO)
    }
}
