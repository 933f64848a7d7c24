//! A sum in which some terms are not known.

use crate::units::Grams;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// The sum of the known terms, and how much of the mass they stand for.
///
/// A missing term adds nothing to `known` but does add its mass to `mass`, so
/// that a total never passes for complete when it is not. A term whose mass is
/// unknown as well (an amount "to taste") is only counted.
#[derive(Debug, Clone, Copy, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct PartialSum {
    /// Sum of the terms that are known, in the nutrient's own unit.
    pub known: Decimal,
    /// Mass of all terms with a known mass.
    pub mass: Grams,
    /// Mass of the terms whose value is known.
    pub known_mass: Grams,
    /// Number of terms that have no known mass.
    pub unweighed: u32,
    /// Number of terms that have a mass but no known value.
    pub missing: u32,
}

/// How much is known of a sum.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum FigureStatus {
    /// Every part of it.
    Known,
    /// Not every part: the figure is at least what is known.
    LowerBound {
        /// Share of the food's known mass whose value is known, 0 to 1.
        coverage: Decimal,
    },
    /// Nothing; also for a sum without terms.
    Missing,
}

impl PartialSum {
    /// How much is known of the sum, when it is stated as a figure of a food.
    pub fn status(&self) -> FigureStatus {
        if self.known_mass.grams().is_zero() {
            FigureStatus::Missing
        } else if self.is_complete() {
            FigureStatus::Known
        } else {
            FigureStatus::LowerBound {
                coverage: self.coverage(),
            }
        }
    }

    /// Adds a term of `mass` whose value may be missing.
    pub fn add(&mut self, mass: Grams, value: Option<Decimal>) {
        self.mass += mass;
        match value {
            Some(value) => {
                self.known += value;
                self.known_mass += mass;
            }
            None => self.missing += 1,
        }
    }

    /// Counts a term of which not even the mass is known.
    pub fn add_unweighed(&mut self) {
        self.unweighed += 1;
    }

    /// True when every term had a known mass and a known value.
    pub fn is_complete(&self) -> bool {
        self.unweighed == 0 && self.missing == 0
    }

    /// The sum, if it is complete.
    pub fn complete(&self) -> Option<Decimal> {
        self.is_complete().then_some(self.known)
    }

    /// Share of the known mass whose value is known, from 0 to 1; one for an
    /// empty sum.
    pub fn coverage(&self) -> Decimal {
        if self.mass.grams().is_zero() {
            return if self.missing == 0 {
                Decimal::ONE
            } else {
                Decimal::ZERO
            };
        }
        self.known_mass.grams() / self.mass.grams()
    }

    /// Every figure multiplied by `factor` (servings, a share, a weight).
    pub fn scaled(&self, factor: Decimal) -> Self {
        Self {
            known: self.known * factor,
            mass: self.mass * factor,
            known_mass: self.known_mass * factor,
            ..*self
        }
    }

    /// Every figure divided by `divisor`, which must not be zero.
    pub fn divided(&self, divisor: Decimal) -> Self {
        Self {
            known: self.known / divisor,
            mass: self.mass / divisor,
            known_mass: self.known_mass / divisor,
            ..*self
        }
    }

    /// Joins two sums.
    pub fn merge(&mut self, other: &Self) {
        self.known += other.known;
        self.mass += other.mass;
        self.known_mass += other.known_mass;
        self.unweighed += other.unweighed;
        self.missing += other.missing;
    }

    /// What is left of the sum when `part`, terms that it holds, is taken out.
    pub fn without(&self, part: &Self) -> Self {
        Self {
            known: self.known - part.known,
            mass: self.mass - part.mass,
            known_mass: self.known_mass - part.known_mass,
            unweighed: self.unweighed.saturating_sub(part.unweighed),
            missing: self.missing.saturating_sub(part.missing),
        }
    }
}
