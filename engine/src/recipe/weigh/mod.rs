//! From a reading and a food to a weight.
//!
//! | route | module | when |
//! |---|---|---|
//! | stated mass | here | the line says a mass |
//! | volume | [`by_volume`] | the food has a volume measure; others of the same food are scaled by the exact ratio of the units |
//! | count | [`by_count`] | the food has a measure of that piece, size or container |
//!
//! A volume is only ever weighed by a volume measure of the same food, and a
//! count by a count: no density is made up.

mod by_count;
mod by_volume;
mod candidate;
mod measure_words;
mod problem;

use super::doubt::Doubt;
use super::line::{LineAmount, LineKind, LineReading};
use crate::foods::{FoodId, FoodTable, Measure};
use crate::units::{Amount, Grams, MassUnit, Millilitres, Quantity, Unit, VolumeUnit};
use candidate::LineWords;
use rust_decimal::Decimal;
use serde::Serialize;

pub use problem::WeighProblem;

/// A measure of a food, with all that is needed to name it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct NamedMeasure {
    /// The dataset's running number among the food's measures.
    pub number: u16,
    /// Number of units described.
    pub amount: Decimal,
    /// The dataset's words.
    pub words: String,
    /// Weight of `amount` units.
    pub grams: Grams,
}

impl From<&Measure> for NamedMeasure {
    fn from(measure: &Measure) -> Self {
        Self {
            number: measure.number,
            amount: measure.amount,
            words: measure.words.clone(),
            grams: measure.grams,
        }
    }
}

/// How a weight was found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum Route {
    /// A person has set the weight.
    Corrected,
    /// The line states it.
    StatedMass,
    /// By a measure of the food.
    Measure {
        /// Which.
        measure: NamedMeasure,
    },
}

/// A step of the arithmetic, in the order of computing. The last division is
/// the only one.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum Step {
    /// The amount that the line asks for.
    Asked {
        /// As read.
        quantity: Quantity,
    },
    /// The middle of a range is used.
    Middle {
        /// Number of the quantity's unit.
        amount: Amount,
    },
    /// The size of a unit of mass.
    Mass {
        /// The unit.
        unit: MassUnit,
        /// One of it.
        grams: Grams,
    },
    /// How many of the measure's unit make one of the line's.
    Ratio {
        /// The line's unit.
        one: VolumeUnit,
        /// How many.
        holds: Amount,
        /// The measure's unit.
        of: VolumeUnit,
    },
    /// What the measure weighs.
    Measure {
        /// The measure.
        measure: NamedMeasure,
    },
}

/// A weight with the way it was found.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct Weighed {
    /// Weight of the line.
    pub grams: Grams,
    /// The least that it may be, by the line's range and the measures that
    /// fit equally well.
    pub low: Grams,
    /// The most that it may be.
    pub high: Grams,
    /// How it was found.
    pub route: Route,
    /// The arithmetic.
    pub steps: Vec<Step>,
    /// What a person may want to look at.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub doubts: Vec<Doubt>,
}

impl Weighed {
    /// A weight that a person has set.
    pub const fn corrected(grams: Grams) -> Self {
        Self {
            grams,
            low: grams,
            high: grams,
            route: Route::Corrected,
            steps: Vec::new(),
            doubts: Vec::new(),
        }
    }
}

/// Weighs what a line asks for, of one food.
///
/// # Errors
/// When the line or the food does not say enough; each problem says what a
/// person can do.
pub fn weigh(
    foods: &FoodTable,
    food: FoodId,
    reading: &LineReading,
) -> Result<Weighed, WeighProblem> {
    if reading.kind != LineKind::Ingredient {
        return Err(WeighProblem::NotAnIngredient);
    }
    let Some(entry) = foods.food(food) else {
        return Err(WeighProblem::UnknownFood { food });
    };
    let measures = foods.measures(food);
    let words = LineWords::new(reading, &entry.description);
    match &reading.amount {
        LineAmount::Absent => Err(WeighProblem::NoAmount),
        LineAmount::Faulty { error } => Err(WeighProblem::Faulty {
            error: error.clone(),
        }),
        LineAmount::Stated { quantity } => by_kind(quantity, measures, &words).or_else(|problem| {
            // "1 bunch (2 cups)" of a food that has no bunch.
            let beside = reading.beside.as_ref().ok_or_else(|| problem.clone())?;
            by_kind(beside, measures, &words).map_err(|_| problem)
        }),
        LineAmount::Vague {
            words: typed,
            quantity,
        } => {
            let vague = || WeighProblem::Vague {
                words: typed.clone(),
            };
            let quantity = quantity.as_ref().ok_or_else(vague)?;
            by_kind(quantity, measures, &words).map_err(|_| vague())
        }
    }
}

/// What a volume of a food weighs, by the food's own volume measures; nothing
/// where it has none.
pub fn weight_of_volume(foods: &FoodTable, food: FoodId, volume: Millilitres) -> Option<Grams> {
    let amount = Amount::from_digits(&volume.millilitres().normalize().to_string())?;
    let unit = Unit::Volume(VolumeUnit::Millilitre);
    let reading = LineReading {
        amount: LineAmount::Stated {
            quantity: Quantity::exactly(amount, unit),
        },
        ..LineReading::of(LineKind::Ingredient)
    };
    let weighed = weigh(foods, food, &reading).ok()?;
    Some(weighed.grams)
}

fn by_kind(
    quantity: &Quantity,
    measures: &[Measure],
    words: &LineWords,
) -> Result<Weighed, WeighProblem> {
    let found = match &quantity.unit {
        Unit::Mass(unit) => {
            let fluid = !words.from_container && has_fluid_ounce(measures);
            return Ok(by_mass(quantity, *unit, fluid));
        }
        Unit::Volume(unit) => by_volume::weigh(quantity, *unit, measures, words),
        Unit::Count(unit) => by_count::weigh(quantity, unit, measures, words),
    };
    found.ok_or_else(|| WeighProblem::NoSuchMeasure {
        wanted: quantity.clone(),
        has: measures.iter().map(NamedMeasure::from).collect(),
    })
}

/// Weighs what a line asks for when no food is known: only a mass says enough.
///
/// # Errors
/// What is wrong with the amount, and otherwise that there is no food.
pub(super) fn weigh_unknown(reading: &LineReading) -> Result<Weighed, WeighProblem> {
    match &reading.amount {
        _ if reading.kind != LineKind::Ingredient => Err(WeighProblem::NotAnIngredient),
        LineAmount::Absent => Err(WeighProblem::NoAmount),
        LineAmount::Faulty { error } => Err(WeighProblem::Faulty {
            error: error.clone(),
        }),
        LineAmount::Vague { words, .. } => Err(WeighProblem::Vague {
            words: words.clone(),
        }),
        LineAmount::Stated { quantity } => match quantity.unit {
            Unit::Mass(unit) => Ok(by_mass(quantity, unit, false)),
            _ => Err(WeighProblem::NoFood),
        },
    }
}

/// `fluid` tells whether the food is also measured by the fluid ounce.
fn by_mass(quantity: &Quantity, unit: MassUnit, fluid: bool) -> Weighed {
    let one = unit.grams();
    let weight = |amount: Amount| Grams::new(amount.of(one.grams()));
    let mut steps = asked(quantity);
    steps.push(Step::Mass { unit, grams: one });
    let taken_as_weight = unit == MassUnit::Ounce && fluid;
    Weighed {
        grams: weight(quantity.used()),
        low: weight(quantity.low),
        high: weight(quantity.high),
        route: Route::StatedMass,
        steps,
        doubts: taken_as_weight
            .then_some(Doubt::OuncesTakenAsWeight)
            .into_iter()
            .collect(),
    }
}

fn has_fluid_ounce(measures: &[Measure]) -> bool {
    measures.iter().any(|measure| {
        let volume = measure_words::read(measure).volume;
        volume.is_some_and(|(unit, _)| unit == VolumeUnit::FluidOunce)
    })
}

/// The first steps of every route.
fn asked(quantity: &Quantity) -> Vec<Step> {
    let mut steps = vec![Step::Asked {
        quantity: quantity.clone(),
    }];
    if quantity.is_range() {
        steps.push(Step::Middle {
            amount: quantity.used(),
        });
    }
    steps
}
