//! What no solution undercuts, by weak duality, from the matrix itself.
//!
//! Whatever each row is said to be worth, `Σ cost × column` is at least what
//! the rows' bounds come to at that worth, and what is left of each column's
//! cost at the bound where it is least. Only how good the bound is depends on
//! the worths: they may come from any arithmetic (Neumaier and Shcherbina 2004).

use super::dictionary::Dictionary;
use super::linear::Linear;

/// Rows may be missed by so much, as the solver's own may: nothing is proven
/// that holds within them by less.
pub(super) const LOOSE: f64 = 1e-7;

/// A cost so little below nothing is none, where a column has no upper bound.
const NOTHING: f64 = 1e-11;

/// The error of a sum of floats, as a share of its terms.
const ROUNDING: f64 = 1e-13;

/// A lower bound, with what is left of each column's cost.
#[derive(Debug, Clone, Default)]
pub(super) struct Proof {
    /// What no solution undercuts.
    pub bound: f64,
    /// By column: choosing one more costs at least so much beyond the bound,
    /// or, below nothing, leaving it out.
    pub prices: Vec<f64>,
}

impl Proof {
    /// By what the rows are worth in a dictionary.
    pub fn of(linear: &Linear, dictionary: &Dictionary) -> Self {
        Self::by(linear, dictionary, linear.costs.clone(), dictionary.worth())
    }

    /// That there is no solution, if so: by the quantity that could not be
    /// brought within its bounds.
    pub fn is_impossible(linear: &Linear, dictionary: &Dictionary) -> bool {
        let none = vec![0.0; linear.width()];
        Self::by(linear, dictionary, none, dictionary.against()).bound > 0.0
    }

    fn by(
        linear: &Linear,
        dictionary: &Dictionary,
        mut prices: Vec<f64>,
        worths: impl Iterator<Item = (usize, f64)>,
    ) -> Self {
        let mut bound = 0.0;
        let mut size = 0.0;
        for (row, worth) in worths {
            let (lower, upper) = dictionary.bounds(linear.width() + row);
            let at = if worth > 0.0 {
                lower - LOOSE
            } else {
                upper + LOOSE
            };
            if at.is_finite() {
                bound += worth * at;
                size += (worth * at).abs();
                for (column, by) in &linear.rows[row] {
                    prices[*column] -= worth * by;
                }
            }
        }
        for (column, price) in prices.iter().enumerate() {
            let (lower, upper) = dictionary.bounds(column);
            let at = if *price >= 0.0 { lower } else { upper };
            if at.is_finite() {
                bound += price * at;
                size += (price * at).abs();
            } else if *price < -NOTHING {
                bound = f64::NEG_INFINITY;
            }
        }
        bound -= ROUNDING * size;
        Self { bound, prices }
    }
}
