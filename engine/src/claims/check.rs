//! Checks every claim against an analysed food.

use super::measure::{Measured, Missing, WhichFood};
use super::report::{
    ClaimFinding, ClaimOutcome, ClaimReport, CriterionFinding, CriterionOutcome, Needed,
};
use super::table::{AmountBasis, Claim, ClaimTables, Criterion, Limit, Test};
use super::{ClaimError, ClaimOptions, Condition, Disclosure, ReferenceFood};
use crate::analysis::RecipeAnalysis;
use crate::exact::{Digits, FigureStatus, rounding::telling_digits};
use crate::foods::NutrientId;
use crate::rules::Bound;
use crate::units::Grams;
use rust_decimal::Decimal;

/// Checks all claims for one food. `reference` is the food that comparative
/// claims compare with; without it they stay silent.
///
/// # Errors
/// When a weight in `options` or of the reference food is not above zero.
pub fn check_claims(
    analysis: &RecipeAnalysis,
    tables: &ClaimTables,
    options: &ClaimOptions,
    reference: Option<&ReferenceFood<'_>>,
) -> Result<ClaimReport, ClaimError> {
    options.check(reference)?;
    let check = Check {
        tables,
        options,
        food: Measured {
            which: WhichFood::This,
            analysis,
            serving_weight: options.serving_weight,
            reference_amount: options.reference_amount,
        },
        reference: reference.map(|food| Measured {
            which: WhichFood::Reference,
            analysis: food.analysis,
            serving_weight: food.serving_weight,
            reference_amount: options.reference_amount,
        }),
    };
    Ok(ClaimReport {
        claims: tables
            .claims()
            .iter()
            .filter_map(|claim| check.claim(claim))
            .collect(),
        cautions: tables
            .disclosures()
            .iter()
            .filter(|row| row.is_general() && row.foods.contains(&options.kind))
            .map(|row| needed(row, true))
            .collect(),
    })
}

struct Check<'a> {
    tables: &'a ClaimTables,
    options: &'a ClaimOptions,
    food: Measured<'a>,
    reference: Option<Measured<'a>>,
}

/// The figure that is looked at, and whether the criterion holds.
type Answer = (Option<Decimal>, Result<bool, Vec<Missing>>);

fn unknown(missing: Missing) -> Answer {
    (None, Err(vec![missing]))
}

impl Check<'_> {
    /// Nothing where the claim has no criteria for this kind of food.
    fn claim(&self, claim: &Claim) -> Option<ClaimFinding> {
        let criteria: Vec<CriterionFinding> = claim
            .criteria
            .iter()
            .filter(|criterion| criterion.foods.contains(&self.options.kind))
            .filter_map(|criterion| self.criterion(criterion))
            .collect();
        if criteria.is_empty() {
            return None;
        }
        let outcome = outcome(&criteria);
        let needed = match outcome {
            ClaimOutcome::Proven => self.needed(claim),
            _ => Vec::new(),
        };
        Some(ClaimFinding {
            claim: claim.name.clone(),
            outcome,
            criteria,
            needed,
        })
    }

    /// Nothing where the criterion is only for small reference amounts and
    /// this one is not small.
    fn criterion(&self, criterion: &Criterion) -> Option<CriterionFinding> {
        let (figure, holds) = match self.applies(criterion.only_small) {
            Some(true) => self.answer(criterion),
            Some(false) => return None,
            None => unknown(Missing::ReferenceAmount),
        };
        let limit = match &criterion.test {
            Test::Amount(_, limit)
            | Test::Reduction(_, limit)
            | Test::ShareOfEnergy { limit, .. } => Some(limit.clone()),
            Test::Ingredient | Test::ReferenceIsNot(_) => None,
        };
        Some(CriterionFinding {
            words: criterion.words.clone(),
            nutrient: criterion.nutrient,
            figure,
            digits: digits(figure, limit.as_ref()),
            limit,
            outcome: match holds {
                Ok(true) => CriterionOutcome::Holds,
                Ok(false) => CriterionOutcome::Fails,
                Err(missing) => CriterionOutcome::Unknown { missing },
            },
            citation: criterion.citation.clone(),
        })
    }

    fn applies(&self, only_small: Option<Grams>) -> Option<bool> {
        match only_small {
            Some(up_to) => self.options.is_small(up_to),
            None => Some(true),
        }
    }

    fn answer(&self, criterion: &Criterion) -> Answer {
        let (nutrient, name) = (criterion.nutrient, criterion.name.as_str());
        match &criterion.test {
            Test::Amount(basis, limit) => self.amount(nutrient, name, *basis, limit),
            Test::ShareOfEnergy {
                kcal_per_gram,
                limit,
            } => self.share(nutrient, name, *kcal_per_gram, limit),
            Test::Reduction(basis, limit) => self.reduction(nutrient, name, *basis, limit),
            Test::Ingredient => match self.options.ingredient(nutrient) {
                Some(_) => (None, Ok(true)),
                None => unknown(Missing::Ingredient {
                    nutrient,
                    words: criterion.words.clone(),
                }),
            },
            Test::ReferenceIsNot(claim) => (None, self.reference_is_not(claim)),
        }
    }

    /// A missing value can only add: an incomplete sum that breaks a maximum
    /// breaks it for good.
    fn amount(
        &self,
        nutrient: NutrientId,
        name: &str,
        basis: AmountBasis,
        limit: &Limit,
    ) -> Answer {
        let sum = match self.food.sum(nutrient, basis) {
            Ok(sum) => sum,
            Err(missing) => return unknown(missing),
        };
        let holds = limit.bound.holds(sum.known, limit.limit);
        let for_good = !holds && limit.bound != Bound::AtLeast;
        match sum.status() {
            FigureStatus::Known => (Some(sum.known), Ok(holds)),
            FigureStatus::LowerBound { .. } if for_good => (Some(sum.known), Ok(false)),
            FigureStatus::LowerBound { .. } => {
                (Some(sum.known), Err(vec![self.food.missing(name, &sum)]))
            }
            FigureStatus::Missing => unknown(self.food.missing(name, &sum)),
        }
    }

    /// A share of no calories at all is zero where the nutrient is.
    fn share(
        &self,
        nutrient: NutrientId,
        name: &str,
        kcal_per_gram: Decimal,
        limit: &Limit,
    ) -> Answer {
        let basis = AmountBasis::Serving;
        let amount = self.food.amount(nutrient, name, basis);
        let energy = self.food.amount(NutrientId::ENERGY, "energy", basis);
        match (amount, energy) {
            (Ok(amount), Ok(_)) if amount.is_zero() => {
                (Some(amount), Ok(limit.bound.holds(amount, limit.limit)))
            }
            (Ok(_), Ok(energy)) if energy.is_zero() => (None, Ok(false)),
            (Ok(amount), Ok(energy)) => {
                let share = amount * kcal_per_gram * Decimal::ONE_HUNDRED / energy;
                (Some(share), Ok(limit.bound.holds(share, limit.limit)))
            }
            (amount, energy) => (
                None,
                Err([amount.err(), energy.err()].into_iter().flatten().collect()),
            ),
        }
    }

    /// Percent less than in the reference food. Where that has none, there is
    /// nothing to reduce.
    fn reduction(
        &self,
        nutrient: NutrientId,
        name: &str,
        basis: AmountBasis,
        limit: &Limit,
    ) -> Answer {
        let Some(reference) = &self.reference else {
            return unknown(Missing::ReferenceFood);
        };
        let here = self.food.amount(nutrient, name, basis);
        let there = reference.amount(nutrient, name, basis);
        match (here, there) {
            (Ok(_), Ok(there)) if there.is_zero() => (None, Ok(false)),
            (Ok(here), Ok(there)) => {
                let percent = (there - here) * Decimal::ONE_HUNDRED / there;
                (Some(percent), Ok(limit.bound.holds(percent, limit.limit)))
            }
            (here, there) => (
                None,
                Err([here.err(), there.err()].into_iter().flatten().collect()),
            ),
        }
    }

    fn reference_is_not(&self, name: &str) -> Result<bool, Vec<Missing>> {
        let (Some(reference), Some(claim)) = (self.reference, self.tables.claim(name)) else {
            return Err(vec![Missing::ReferenceFood]);
        };
        let check = Check {
            food: reference,
            reference: None,
            ..*self
        };
        match check.claim(claim).map(|finding| finding.outcome) {
            Some(ClaimOutcome::Proven) => Ok(false),
            Some(ClaimOutcome::Silent { missing }) => Err(missing),
            Some(ClaimOutcome::NotMet) | None => Ok(true),
        }
    }

    fn needed(&self, claim: &Claim) -> Vec<Needed> {
        let mut all: Vec<Needed> = Vec::new();
        let rows = self.tables.disclosures().iter().filter(|row| {
            !row.is_general()
                && row.foods.contains(&self.options.kind)
                && (row.claims.is_empty() || row.claims.contains(&claim.name))
        });
        for row in rows {
            let certain = match self.condition(&row.condition) {
                Some(false) => continue,
                answer => answer.is_some(),
            };
            // Two rows with the same words are one duty: per reference amount
            // and per serving, for instance.
            match all.iter_mut().find(|other| other.words == row.words) {
                Some(other) => other.certain |= certain,
                None => all.push(needed(row, certain)),
            }
        }
        all
    }

    /// Whether a disclosure is needed; nothing where missing values decide.
    fn condition(&self, condition: &Condition) -> Option<bool> {
        match condition {
            Condition::Always => Some(true),
            Condition::Ingredient(nutrient) => self.options.ingredient(*nutrient),
            Condition::Unless {
                nutrient,
                basis,
                only_small,
                limit,
            } => match self.applies(*only_small) {
                Some(true) => self
                    .amount(*nutrient, "", *basis, limit)
                    .1
                    .ok()
                    .map(|keeps| !keeps),
                answer => answer,
            },
        }
    }
}

fn needed(row: &Disclosure, certain: bool) -> Needed {
    Needed {
        words: row.words.clone(),
        certain,
        citation: row.citation.clone(),
    }
}

fn outcome(criteria: &[CriterionFinding]) -> ClaimOutcome {
    let mut all_missing: Vec<Missing> = Vec::new();
    for criterion in criteria {
        match &criterion.outcome {
            CriterionOutcome::Holds => {}
            CriterionOutcome::Fails => return ClaimOutcome::NotMet,
            CriterionOutcome::Unknown { missing } => {
                for one in missing {
                    if !all_missing.contains(one) {
                        all_missing.push(one.clone());
                    }
                }
            }
        }
    }
    match all_missing.is_empty() {
        true => ClaimOutcome::Proven,
        false => ClaimOutcome::Silent {
            missing: all_missing,
        },
    }
}

fn digits(figure: Option<Decimal>, limit: Option<&Limit>) -> Digits {
    const FEWEST: Digits = Digits(1);
    figure.zip(limit).map_or(FEWEST, |(figure, limit)| {
        telling_digits(figure, FEWEST, |figure| {
            limit.bound.holds(figure, limit.limit)
        })
    })
}
