//! Propagation through sums and through a share of energy.

use super::{Composition, Evidence, Ingredient};
use crate::exact::rounding::guarded;
use crate::foods::{FoodId, FoodTable, NutrientId};
use crate::rules::Bound;
use rust_decimal::{Decimal, MathematicalOps};
use serde::{Deserialize, Serialize};

/// A standard uncertainty and what it rests on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Uncertainty {
    /// Standard uncertainty, in the unit of the figure.
    pub standard: Decimal,
    /// Share of its square that rests on assumed errors, 0 to 1.
    pub assumed: Decimal,
    /// True when some food has a value but not even an assumed error: the
    /// uncertainty is then at least as large as stated.
    pub at_least: bool,
}

impl Uncertainty {
    /// Half the width of the interval in which the figure lies with a level of
    /// confidence of about 95 percent: twice the standard uncertainty (JCGM
    /// 100:2008, 6.3.3).
    pub fn expanded(&self) -> Decimal {
        self.standard * Decimal::TWO
    }
}

/// Uncertainty of the amount of `nutrient` in `composition`.
pub fn of_amount(
    foods: &FoodTable,
    evidence: &Evidence,
    composition: &Composition,
    nutrient: NutrientId,
) -> Uncertainty {
    of_combination(foods, evidence, composition, &[(nutrient, Decimal::ONE)])
}

/// Uncertainty of the percentage of energy that comes from `nutrient`, of
/// which a gram yields `kcal_per_gram`; nothing where there is no energy.
///
/// For a ratio R = A ÷ B, to first order dR = (dA − R·dB) ÷ B.
pub fn of_share_of_energy(
    foods: &FoodTable,
    evidence: &Evidence,
    composition: &Composition,
    nutrient: NutrientId,
    kcal_per_gram: Decimal,
) -> Option<Uncertainty> {
    let amount = total(foods, composition, nutrient) * kcal_per_gram;
    let energy = total(foods, composition, NutrientId::ENERGY);
    if energy <= Decimal::ZERO {
        return None;
    }
    let ratio = amount / energy;
    let mut uncertainty = of_combination(
        foods,
        evidence,
        composition,
        &[(nutrient, kcal_per_gram), (NutrientId::ENERGY, -ratio)],
    );
    uncertainty.standard = uncertainty.standard * Decimal::ONE_HUNDRED / energy;
    Some(uncertainty)
}

fn total(foods: &FoodTable, composition: &Composition, nutrient: NutrientId) -> Decimal {
    composition
        .ingredients()
        .iter()
        .filter_map(|part| {
            let value = foods.per_100_g(part.food, nutrient)?;
            Some(value * part.weight.grams() * part.kept(nutrient))
        })
        .sum::<Decimal>()
        / Decimal::ONE_HUNDRED
}

/// Uncertainty of a sum of nutrients, each times a coefficient. Values are
/// independent between foods and between nutrients; a weight is shared by all
/// nutrients of its line. For a product of two independent quantities
/// var(w·v) = v²·var(w) + w²·var(v) + var(w)·var(v), exactly.
fn of_combination(
    foods: &FoodTable,
    evidence: &Evidence,
    composition: &Composition,
    terms: &[(NutrientId, Decimal)],
) -> Uncertainty {
    let mut all = Variance::default();
    for (food, parts) in composition.by_food() {
        for &(nutrient, coefficient) in terms {
            all.add_value_error(foods, evidence, food, &parts, nutrient, coefficient);
        }
        for part in parts {
            let value = combined_value(foods, part, terms);
            all.total += square(part.tolerance.grams() * value);
        }
    }
    Uncertainty {
        standard: root(all.total) / Decimal::ONE_HUNDRED,
        assumed: if all.total.is_zero() {
            Decimal::ZERO
        } else {
            all.assumed / all.total
        },
        at_least: all.at_least,
    }
}

/// A variance as it is gathered, for values per 100 g.
#[derive(Default)]
struct Variance {
    total: Decimal,
    assumed: Decimal,
    at_least: bool,
}

impl Variance {
    /// Adds what the error of one food's value of one nutrient brings.
    fn add_value_error(
        &mut self,
        foods: &FoodTable,
        evidence: &Evidence,
        food: FoodId,
        parts: &[&Ingredient],
        nutrient: NutrientId,
        coefficient: Decimal,
    ) {
        if foods.per_100_g(food, nutrient).is_none() {
            return;
        }
        let Some(error) = evidence.value_error(foods, food, nutrient) else {
            self.at_least = true;
            return;
        };
        let weight: Decimal = parts
            .iter()
            .map(|part| part.weight.grams() * part.kept(nutrient))
            .sum();
        let weight_variance: Decimal = parts
            .iter()
            .map(|part| square(part.tolerance.grams() * part.kept(nutrient)))
            .sum();
        let variance = square(coefficient * error.standard) * (square(weight) + weight_variance);
        self.total += variance;
        if error.origin.is_assumed() {
            self.assumed += variance;
        }
    }
}

/// What a gram of an ingredient adds to the combination, times 100.
fn combined_value(
    foods: &FoodTable,
    part: &Ingredient,
    terms: &[(NutrientId, Decimal)],
) -> Decimal {
    terms
        .iter()
        .filter_map(|&(nutrient, coefficient)| {
            let value = foods.per_100_g(part.food, nutrient)?;
            Some(coefficient * value * part.kept(nutrient))
        })
        .sum()
}

fn square(value: Decimal) -> Decimal {
    value * value
}

fn root(variance: Decimal) -> Decimal {
    guarded(variance).sqrt().unwrap_or(Decimal::ZERO)
}

/// How likely a figure keeps its limit, given its uncertainty.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Likelihood {
    /// On the right side by two standard uncertainties or more.
    Within,
    /// On the right side by one to two.
    LikelyWithin,
    /// Nearer to the limit than one standard uncertainty, on either side.
    TooCloseToTell,
    /// On the wrong side by one to two.
    LikelyOutside,
    /// On the wrong side by two or more.
    Outside,
}

/// Grades the distance of a figure from its limit in standard uncertainties;
/// two of them are the usual coverage factor (JCGM 100:2008, 6.3.3).
pub fn likelihood(
    figure: Decimal,
    limit: Decimal,
    bound: Bound,
    uncertainty: &Uncertainty,
) -> Likelihood {
    let inside = match bound {
        Bound::AtLeast => figure - limit,
        Bound::AtMost | Bound::Below => limit - figure,
    };
    let once = uncertainty.standard;
    let twice = once * Decimal::TWO;
    if inside >= twice && (inside > Decimal::ZERO || bound != Bound::Below) {
        Likelihood::Within
    } else if inside <= -twice {
        Likelihood::Outside
    } else if inside >= once {
        Likelihood::LikelyWithin
    } else if inside <= -once {
        Likelihood::LikelyOutside
    } else {
        Likelihood::TooCloseToTell
    }
}
