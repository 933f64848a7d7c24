//! Propagated uncertainties against simulation.
//!
//! Source of the method: JCGM 101:2008 (GUM Supplement 1), propagation of
//! distributions by a Monte Carlo method. Values are drawn from normal
//! distributions, weights from rectangular ones; the spread of the simulated
//! totals must agree with the propagated standard uncertainty.

use engine::foods::{FoodId, NutrientId};
use engine::rules::Bound;
use engine::uncertainty::{
    Composition, Ingredient, Likelihood, Origin, Uncertainty, likelihood, of_amount,
    of_share_of_energy,
};
use engine::units::Grams;
use gramwright_tests::fixtures::{evidence, foods};
use rand::SeedableRng;
use rand_chacha::ChaCha8Rng;
use rand_distr::{Distribution, Normal, Uniform};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::collections::BTreeMap;

const DRAWS: usize = 60_000;

/// Food, weight and half width of the weight, in grams. Cheddar stands in two
/// lines on purpose: its error is one error.
const LINES: [(u32, i64, i64); 6] = [
    (1009, 60, 3),   // Cheese, cheddar
    (1009, 25, 5),   // Cheese, cheddar, again
    (1123, 100, 5),  // Egg, whole, raw, fresh
    (11124, 80, 10), // Carrots, raw
    (20444, 90, 9),  // Rice, white, long-grain, regular, raw, unenriched
    (2047, 2, 1),    // Salt, table
];

fn composition() -> Composition {
    let grams = |value: i64| Grams::new(Decimal::from(value));
    Composition::new(
        LINES
            .iter()
            .map(|&(food, weight, half)| {
                Ingredient::between(
                    FoodId::Sr28(food),
                    grams(weight),
                    grams(weight - half),
                    grams(weight + half),
                )
            })
            .collect(),
    )
}

fn float(value: Decimal) -> f64 {
    value.to_f64().expect("a decimal in the range of a float")
}

/// One draw of every line's weight and every food's values.
fn draw(rng: &mut ChaCha8Rng, nutrients: &[NutrientId]) -> Vec<f64> {
    let mut values: BTreeMap<(u32, NutrientId), f64> = BTreeMap::new();
    let mut totals = vec![0.0; nutrients.len()];
    for &(number, weight, half) in &LINES {
        let food = FoodId::Sr28(number);
        let range = Uniform::new((weight - half) as f64, (weight + half) as f64);
        let weight = range.expect("a range").sample(rng);
        for (total, &nutrient) in totals.iter_mut().zip(nutrients) {
            let Some(mean) = foods().per_100_g(food, nutrient) else {
                continue;
            };
            let value = *values.entry((number, nutrient)).or_insert_with(|| {
                let error = evidence().value_error(foods(), food, nutrient);
                let spread = error.map_or(0.0, |error| float(error.standard));
                Normal::new(float(mean), spread)
                    .expect("a spread")
                    .sample(rng)
            });
            *total += weight * value / 100.0;
        }
    }
    totals
}

fn standard_deviation(samples: &[f64]) -> f64 {
    let mean = samples.iter().sum::<f64>() / samples.len() as f64;
    let squares: f64 = samples.iter().map(|x| (x - mean).powi(2)).sum();
    (squares / (samples.len() - 1) as f64).sqrt()
}

fn assert_agrees(propagated: Uncertainty, simulated: f64, tolerance: f64, what: &str) {
    let ratio = float(propagated.standard) / simulated;
    assert!(
        (ratio - 1.0).abs() < tolerance,
        "{what}: propagated {}, simulated {simulated}, ratio {ratio}",
        propagated.standard
    );
}

#[test]
fn sums_agree_with_simulation() {
    let mut rng = ChaCha8Rng::seed_from_u64(28);
    let nutrients = [
        NutrientId::ENERGY,
        NutrientId::PROTEIN,
        NutrientId::SATURATED_FAT,
        NutrientId::SODIUM,
        NutrientId::CALCIUM,
    ];
    let draws: Vec<Vec<f64>> = (0..DRAWS).map(|_| draw(&mut rng, &nutrients)).collect();
    for (index, &nutrient) in nutrients.iter().enumerate() {
        let samples: Vec<f64> = draws.iter().map(|totals| totals[index]).collect();
        let propagated = of_amount(foods(), evidence(), &composition(), nutrient);
        assert!(propagated.standard > Decimal::ZERO);
        // Sampling error of a standard deviation is 1/√(2n), here 0.3 %.
        assert_agrees(
            propagated,
            standard_deviation(&samples),
            0.015,
            &format!("{nutrient:?}"),
        );
    }
}

#[test]
fn shares_of_energy_agree_with_simulation() {
    let mut rng = ChaCha8Rng::seed_from_u64(9);
    let nutrients = [NutrientId::SATURATED_FAT, NutrientId::ENERGY];
    let samples: Vec<f64> = (0..DRAWS)
        .map(|_| draw(&mut rng, &nutrients))
        .map(|totals| totals[0] * 9.0 * 100.0 / totals[1])
        .collect();
    let propagated = of_share_of_energy(
        foods(),
        evidence(),
        &composition(),
        NutrientId::SATURATED_FAT,
        Decimal::from(9),
    )
    .expect("the lines have energy");
    // Linear in the errors, so a little off for a ratio.
    assert_agrees(
        propagated,
        standard_deviation(&samples),
        0.03,
        "share of energy",
    );
}

#[test]
fn scaling_scales_and_repeating_does_not_average_out() {
    let once = of_amount(foods(), evidence(), &composition(), NutrientId::SODIUM);
    let double = composition().scaled(Decimal::TWO);
    let scaled = of_amount(foods(), evidence(), &double, NutrientId::SODIUM);
    assert!((scaled.standard - once.standard * Decimal::TWO).abs() < Decimal::new(1, 9));
}

#[test]
fn assumed_errors_say_so() {
    // The dataset gives a standard error for some values only.
    let of = |number, nutrient| {
        evidence()
            .value_error(foods(), FoodId::Sr28(number), nutrient)
            .expect("a known value")
    };
    let counts = foods().foods().iter().fold([0, 0], |mut counts, food| {
        if let Some(error) = evidence().value_error(foods(), food.id, NutrientId::SODIUM) {
            counts[usize::from(error.origin.is_assumed())] += 1;
        }
        counts
    });
    assert!(counts[0] > 1000 && counts[1] > 1000, "{counts:?}");
    assert_eq!(of(1123, NutrientId::PROTEIN).origin, Origin::Dataset);
}

#[test]
fn likelihoods_by_distance() {
    let uncertainty = Uncertainty {
        // Printed as ± 41 with the coverage factor 2.
        standard: Decimal::new(205, 1),
        assumed: Decimal::ZERO,
        at_least: false,
    };
    for (figure, bound, expected) in [
        (1_060, Bound::AtMost, Likelihood::Within),
        (1_086, Bound::AtMost, Likelihood::LikelyWithin),
        (1_100, Bound::AtMost, Likelihood::TooCloseToTell),
        (1_120, Bound::AtMost, Likelihood::TooCloseToTell),
        (1_140, Bound::AtMost, Likelihood::LikelyOutside),
        (1_160, Bound::AtMost, Likelihood::Outside),
        (1_160, Bound::AtLeast, Likelihood::Within),
        (1_060, Bound::AtLeast, Likelihood::Outside),
    ] {
        let graded = likelihood(figure.into(), 1_110.into(), bound, &uncertainty);
        assert_eq!(graded, expected, "{figure} {bound:?}");
    }
}
