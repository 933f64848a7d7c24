//! Rows of requirements on the average meal.

use super::super::demand::Owed;
use super::super::gather::to_f64;
use super::super::ground::Tools;
use super::super::model::{Model, Sum};
use super::{OfService, ROOM};
use crate::foods::NutrientId;
use crate::reference::RecipeStudy;
use crate::rules::{Basis, Bound, DietarySpecification, LeftOut};
use crate::units::Servings;

impl OfService<'_> {
    /// The rows of all averages.
    pub(super) fn averages(&self, model: &mut Model) {
        for (at, demand) in self.demands() {
            let Some(rule) = &demand.of_average else {
                continue;
            };
            let minimum = rule.bound == Bound::AtLeast;
            // What is unknown is missed only by a known part above a maximum.
            let on_amount = rule.basis == Basis::PerMeal;
            if demand.owed == Owed::NotBroken && (minimum || !on_amount) {
                continue;
            }
            let aim = to_f64(demand.aim());
            let Some(sum) = self.average(|study| figure(self.tools, study, rule, aim)) else {
                continue;
            };
            let (limit, scale) = match rule.basis {
                Basis::PerMeal => (aim, aim.abs().max(f64::MIN_POSITIVE)),
                Basis::ShareOfEnergy => {
                    let energy = |study: &RecipeStudy| per_serving(study, NutrientId::ENERGY);
                    let energy = self.average(energy).map_or(0.0, |sum| sum.constant);
                    (0.0, (energy * aim).abs().max(1.0))
                }
            };
            let mut scaled = Sum::default();
            scaled.add_times(1.0 / scale, &sum);
            let name = self.named(&demand.now.requirement.words);
            if minimum {
                model.at_least(name, vec![at], scaled, limit / scale - ROOM);
            } else {
                model.at_most(name, vec![at], scaled, limit / scale + ROOM);
            }
        }
    }

    /// The average over meals of what a serving brings; nothing where it is
    /// not known of some recipe whether it brings any.
    fn average(&self, of: impl Fn(&RecipeStudy) -> Option<f64>) -> Option<Sum> {
        let meals = self.ground.week.meals_of(self.service);
        let meals: Servings = meals.map(|(_, meal)| meal.planned_meals).sum();
        let meals = to_f64(meals.servings());
        let mut sum = Sum::default();
        for slot in &self.slots {
            let weight = to_f64(slot.choice.planned.servings()) / meals;
            let now = of(self.study(&slot.choice.recipe)?)?;
            sum.constant += weight * now;
            for (at, after) in self.movers(slot) {
                sum.add(at, weight * (of(after)? - now));
            }
        }
        Some(sum)
    }
}

/// What a serving brings to a rule's figure; for a share of calories, what it
/// brings to the difference that the share is compared by.
fn figure(
    tools: Tools<'_>,
    study: &RecipeStudy,
    rule: &DietarySpecification,
    aim: f64,
) -> Option<f64> {
    let mut amount = per_serving(study, rule.nutrient)?;
    if rule.leaves_out == Some(LeftOut::FluidMilk) {
        let reference = tools.reference;
        let credits = study.credits.as_ref()?;
        let milk = credits.fluid_milk(&reference.credit_rules.definitions);
        for (food, grams) in milk {
            let value = reference.foods.per_100_g(food, rule.nutrient);
            amount -= value.map_or(0.0, |value| to_f64(value * grams.grams()) / 100.0);
        }
    }
    match rule.basis {
        Basis::PerMeal => Some(amount),
        Basis::ShareOfEnergy => {
            let kcal = to_f64(rule.kcal_per_gram?);
            Some(amount * kcal * 100.0 - aim * per_serving(study, NutrientId::ENERGY)?)
        }
    }
}

fn per_serving(study: &RecipeStudy, nutrient: NutrientId) -> Option<f64> {
    let analysis = study.analysis.as_ref().ok()?;
    Some(to_f64(analysis.per_serving(nutrient)?.known))
}
