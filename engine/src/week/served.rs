//! What a meal offers of something, as a student may take it.

use super::{Choice, Meal, MealAverage, NutrientAverage, Offer, Service, Week};
use crate::components::{CreditDefinitions, RecipeCredits};
use crate::exact::{Bounds, PartialSum};
use crate::foods::{FoodId, FoodTable, NutrientId};
use crate::recipe::RecipeId;
use crate::units::{Grams, Servings};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A recipe's credits under the name by which weeks refer to it.
pub type CreditedRecipe<'a> = (&'a RecipeId, &'a RecipeCredits);

/// Which of the meals that a student might take is counted.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Counted {
    /// The meal that brings least: from each offer as many choices as may be
    /// taken, the least-crediting ones.
    Smallest,
    /// The meal that brings most.
    Largest,
    /// Every choice once, whether or not one student could take them all.
    Offered,
    /// The average of the meals planned.
    Average,
}

impl Offer {
    /// The choices of which servings are planned: one of which none is planned
    /// is not offered.
    pub fn planned_choices(&self) -> impl Iterator<Item = &Choice> {
        self.choices
            .iter()
            .filter(|choice| choice.planned > Servings::ZERO)
    }
}

/// Counts over one meal, which must be planned for someone, what `amount` gives
/// for a serving of each choice.
pub fn counted(meal: &Meal, how: Counted, amount: impl Fn(&Choice) -> Bounds) -> Bounds {
    let each = |offer: &Offer| -> Vec<(Servings, Bounds)> {
        offer
            .planned_choices()
            .map(|choice| (choice.planned, amount(choice)))
            .collect()
    };
    match how {
        Counted::Smallest | Counted::Largest => meal
            .offers
            .iter()
            .map(|offer| {
                let amounts = each(offer).into_iter().map(|(_, amount)| amount).collect();
                taken(amounts, offer.take, how == Counted::Largest)
            })
            .sum(),
        Counted::Offered => meal
            .offers
            .iter()
            .flat_map(each)
            .map(|(_, amount)| amount)
            .sum(),
        Counted::Average => meal
            .offers
            .iter()
            .flat_map(each)
            .map(|(planned, amount)| {
                amount.times(planned.servings() / meal.planned_meals.servings())
            })
            .sum(),
    }
}

/// The least or the most that `take` of the choices bring.
///
/// The known parts bound it from below. From above it is bounded by the
/// choices that are fully known: for the least, enough of them must be so; for
/// the most, all.
fn taken(amounts: Vec<Bounds>, take: u32, most: bool) -> Bounds {
    let take = take as usize;
    let sum = |mut values: Vec<Decimal>| -> Decimal {
        values.sort();
        if most {
            values.reverse();
        }
        values.into_iter().take(take).sum()
    };
    let highs: Vec<Decimal> = amounts.iter().filter_map(|amount| amount.high).collect();
    let needed = match most {
        true => amounts.len(),
        false => amounts.len().min(take),
    };
    Bounds {
        high: (highs.len() >= needed).then(|| sum(highs)),
        low: sum(amounts.into_iter().map(|amount| amount.low).collect()),
    }
}

impl MealAverage {
    /// Adds what fluid milk brings of some nutrients, for the limits that leave
    /// it out. `recipes` must be sorted by name.
    pub fn with_fluid_milk(
        mut self,
        foods: &FoodTable,
        definitions: &CreditDefinitions,
        week: &Week,
        recipes: &[CreditedRecipe<'_>],
        nutrients: &[NutrientId],
    ) -> Self {
        let average = |nutrient: &NutrientId| NutrientAverage {
            nutrient: *nutrient,
            amount: fluid_milk(foods, definitions, week, &self.service, recipes, *nutrient)
                .divided(self.planned_meals.servings()),
        };
        if self.planned_meals > Servings::ZERO {
            let averages = nutrients.iter().map(average).collect();
            self.fluid_milk = averages;
        }
        self
    }
}

fn fluid_milk(
    foods: &FoodTable,
    definitions: &CreditDefinitions,
    week: &Week,
    service: &Service,
    recipes: &[CreditedRecipe<'_>],
    nutrient: NutrientId,
) -> PartialSum {
    let choices = week.meals_of(service).flat_map(|(_, meal)| meal.choices());
    let milk = choices
        .filter(|choice| choice.planned > Servings::ZERO)
        .filter_map(|choice| Some((choice.planned, credits_of(recipes, choice)?)))
        .flat_map(|(planned, credits)| {
            let milk = credits.fluid_milk(definitions).into_iter();
            milk.map(move |(food, grams)| (food, grams * planned.servings()))
        });
    milk_total(foods, milk, nutrient)
}

/// What so much of so many milks contains of a nutrient.
pub(crate) fn milk_total(
    foods: &FoodTable,
    milk: impl Iterator<Item = (FoodId, Grams)>,
    nutrient: NutrientId,
) -> PartialSum {
    let mut total = PartialSum::default();
    for (food, mass) in milk {
        let value = foods
            .per_100_g(food, nutrient)
            .map(|per_100_g| per_100_g * mass.grams() / Decimal::ONE_HUNDRED);
        total.add(mass, value);
    }
    total
}

/// The credits of a choice's recipe; nothing if it has none.
pub fn credits_of<'a>(
    recipes: &[CreditedRecipe<'a>],
    choice: &Choice,
) -> Option<&'a RecipeCredits> {
    recipes
        .binary_search_by_key(&&choice.recipe, |(id, _)| *id)
        .ok()
        .map(|index| recipes[index].1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn bounds(text: &str) -> Bounds {
        match text.strip_suffix('+') {
            Some(low) => Bounds::at_least(low.parse().unwrap()),
            None => Bounds::exactly(text.parse().unwrap()),
        }
    }

    /// Worked by hand; a plus means that some of the choice is unknown.
    #[test]
    fn a_student_takes_the_least_or_the_most() {
        for (amounts, take, most, expected) in [
            ("0.5 0.25 1", 1, false, (("0.25"), Some("0.25"))),
            ("0.5 0.25 1", 2, false, ("0.75", Some("0.75"))),
            ("0.5 0.25 1", 2, true, ("1.5", Some("1.5"))),
            ("0.5 0.25", 3, false, ("0.75", Some("0.75"))),
            ("0.5 0+ 1", 1, false, ("0", Some("0.5"))),
            ("0.5 0+ 1", 2, false, ("0.5", Some("1.5"))),
            ("0.5 0+", 2, false, ("0.5", None)),
            ("0.5 0+ 1", 1, true, ("1", None)),
            ("", 1, false, ("0", Some("0"))),
        ] {
            let read = amounts.split_whitespace().map(bounds).collect();
            let result = taken(read, take, most);
            let (low, high): (&str, Option<&str>) = expected;
            assert_eq!(result.low, low.parse().unwrap(), "{amounts}, take {take}");
            assert_eq!(
                result.high,
                high.map(|high| high.parse().unwrap()),
                "{amounts}, take {take}"
            );
        }
    }
}
