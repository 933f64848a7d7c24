//! Propagation through sums and through a share of energy.

use super::{Composition, Evidence};
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
        .filter_map(|part| Some(foods.per_100_g(part.food, nutrient)? * part.weight.grams()))
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
    let mut variance = Decimal::ZERO;
    let mut assumed = Decimal::ZERO;
    let mut at_least = false;
    for (food, (weight, weight_variance)) in composition.by_food() {
        let known = Known::gather(foods, evidence, food, terms);
        let of_values = (weight * weight + weight_variance) * known.variance;
        let of_weights = weight_variance * known.value * known.value;
        variance += of_values + of_weights;
        assumed += (weight * weight + weight_variance) * known.assumed;
        at_least |= known.at_least;
    }
    let per_100_g = Decimal::ONE_HUNDRED;
    Uncertainty {
        standard: root(variance) / per_100_g,
        assumed: if variance.is_zero() {
            Decimal::ZERO
        } else {
            assumed / variance
        },
        at_least,
    }
}

/// One food's combined value per 100 g with its variance.
struct Known {
    value: Decimal,
    variance: Decimal,
    assumed: Decimal,
    at_least: bool,
}

impl Known {
    fn gather(
        foods: &FoodTable,
        evidence: &Evidence,
        food: FoodId,
        terms: &[(NutrientId, Decimal)],
    ) -> Self {
        let mut known = Self {
            value: Decimal::ZERO,
            variance: Decimal::ZERO,
            assumed: Decimal::ZERO,
            at_least: false,
        };
        for (nutrient, coefficient) in terms {
            let Some(value) = foods.per_100_g(food, *nutrient) else {
                continue;
            };
            known.value += coefficient * value;
            let Some(error) = evidence.value_error(foods, food, *nutrient) else {
                known.at_least = true;
                continue;
            };
            let variance = (coefficient * error.standard) * (coefficient * error.standard);
            known.variance += variance;
            if error.origin.is_assumed() {
                known.assumed += variance;
            }
        }
        known
    }
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
