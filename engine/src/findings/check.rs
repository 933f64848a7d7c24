//! Compares a week's averages with the limits in force.

use crate::exact::{Digits, PartialSum, rounding::telling_digits};
use crate::foods::NutrientId;
use crate::rules::{Basis, Bound, DietarySpecification, LeftOut, Specifications};
use crate::week::{MealAverage, Service};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// Whether a requirement is kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "lowercase")]
pub enum Verdict {
    /// Kept, whatever the missing values are.
    Met,
    /// Broken, whatever the missing values are.
    Missed,
    /// Missing values could decide it either way.
    Unknown,
}

/// One requirement compared with one week.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Finding {
    /// Whose meal.
    pub service: Service,
    /// The requirement.
    pub rule: DietarySpecification,
    /// The week's figure in the rule's unit; nothing when it cannot be stated
    /// at all. A lower bound when `complete` is false.
    pub figure: Option<Decimal>,
    /// Decimal places that show on which side of the limit the figure lies.
    pub digits: Digits,
    /// Whether every value that the figure needs is known.
    pub complete: bool,
    /// Share of the food's known mass whose value is known, 0 to 1.
    pub coverage: Decimal,
    /// Kept, broken or unknown.
    pub verdict: Verdict,
}

/// Checks the averages of one service against the rules in force on the
/// week's first day.
pub fn check(average: &MealAverage, rules: &Specifications) -> Vec<Finding> {
    let Some(date) = average.days.iter().min() else {
        return Vec::new();
    };
    rules
        .in_force(&average.service, *date)
        .map(|rule| finding(average, rule))
        .collect()
}

pub(crate) fn finding(average: &MealAverage, rule: &DietarySpecification) -> Finding {
    let unlisted = PartialSum {
        missing: 1,
        ..PartialSum::default()
    };
    let amount = average.counted(rule).unwrap_or(unlisted);
    let energy = average.amount(NutrientId::ENERGY).unwrap_or(unlisted);
    let figure = match rule.basis {
        Basis::PerMeal => Some(amount.known),
        Basis::ShareOfEnergy => share_of_energy(&amount, &energy, rule),
    };
    let known = Known {
        amount: amount.is_complete(),
        energy: energy.is_complete(),
    };
    Finding {
        service: average.service.clone(),
        rule: rule.clone(),
        figure,
        digits: digits(figure, rule),
        complete: known.all_of(rule),
        coverage: amount.coverage(),
        verdict: known.verdict(figure.map(|figure| holds(figure, rule)), rule),
    }
}

impl MealAverage {
    /// The average that a rule counts, if it was asked for: without fluid milk,
    /// where the rule leaves it out.
    fn counted(&self, rule: &DietarySpecification) -> Option<PartialSum> {
        let amount = self.amount(rule.nutrient)?;
        match rule.leaves_out {
            None => Some(amount),
            Some(LeftOut::FluidMilk) => {
                let milk = self.fluid_milk.iter();
                milk.filter(|row| row.nutrient == rule.nutrient)
                    .map(|row| amount.without(&row.amount))
                    .next()
            }
        }
    }

    /// The average of one nutrient, if it was asked for.
    pub fn amount(&self, nutrient: NutrientId) -> Option<PartialSum> {
        self.nutrients
            .iter()
            .find(|row| row.nutrient == nutrient)
            .map(|row| row.amount)
    }
}

fn share_of_energy(
    amount: &PartialSum,
    energy: &PartialSum,
    rule: &DietarySpecification,
) -> Option<Decimal> {
    let kcal = amount.known * rule.kcal_per_gram?;
    (energy.known > Decimal::ZERO).then(|| kcal * Decimal::ONE_HUNDRED / energy.known)
}

fn holds(figure: Decimal, rule: &DietarySpecification) -> bool {
    rule.bound.holds(figure, rule.limit)
}

/// Whether all is known of what a rule's figure needs.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Known {
    /// The nutrient's amount.
    pub amount: bool,
    /// The energy.
    pub energy: bool,
}

impl Known {
    /// Whether the rule's figure is complete.
    pub fn all_of(self, rule: &DietarySpecification) -> bool {
        self.amount && (rule.basis == Basis::PerMeal || self.energy)
    }

    /// The verdict on a figure that keeps the limit or does not; nothing where
    /// there is no figure.
    ///
    /// A missing value can only add: an incomplete sum that is already over a
    /// maximum stays over it, and one that already reaches a minimum reaches
    /// it. An incomplete energy makes a share neither a lower nor an upper
    /// bound.
    pub fn verdict(self, holds: Option<bool>, rule: &DietarySpecification) -> Verdict {
        let bounded = rule.basis == Basis::PerMeal || self.energy;
        let complete = self.all_of(rule);
        let is_minimum = rule.bound == Bound::AtLeast;
        match holds.filter(|_| bounded) {
            Some(true) if complete || is_minimum => Verdict::Met,
            Some(false) if complete || !is_minimum => Verdict::Missed,
            _ => Verdict::Unknown,
        }
    }
}

impl DietarySpecification {
    /// The decimal places with which its figure is printed, if these tell.
    pub(crate) fn fewest_digits(&self) -> Digits {
        Digits(match self.basis {
            Basis::PerMeal => 0,
            Basis::ShareOfEnergy => 1,
        })
    }
}

fn digits(figure: Option<Decimal>, rule: &DietarySpecification) -> Digits {
    let fewest = rule.fewest_digits();
    figure.map_or(fewest, |figure| {
        telling_digits(figure, fewest, |figure| holds(figure, rule))
    })
}
