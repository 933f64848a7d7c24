//! What a draft would change in a serving, and whether it keeps what must be
//! kept. Everything here is exact.

use super::bench::{Bench, Draft};
use super::gain::{Gain, gain};
use super::goals::{Aim, CreditDemand};
use super::measure::{ChangeBounds, Rough, brought, change};
use super::proposal::{CreditChange, Effect, NutrientChange, Proposal};
use super::rank::score;
use super::reason::Reason;
use crate::allergens::{Allergen, Presence, screen_line};
use crate::components::{Component, Mark, RecipeCredits};
use crate::foods::{Food, NutrientId};
use crate::recipe::WeighedLine;
use crate::reference::RecipeStudy;
use crate::units::Servings;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::ops::Range;

/// The nutrients that every proposal shows.
const SHOWN: [NutrientId; 5] = [
    NutrientId::ENERGY,
    NutrientId::SATURATED_FAT,
    NutrientId::SODIUM,
    NutrientId::ADDED_SUGARS,
    NutrientId::SUGARS,
];

/// Why a draft is not proposed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Refusal {
    /// It moves no goal for certain, or cannot be written or weighed.
    Goal,
    /// The calories leave the band, or are unknown.
    Energy,
    /// A component would credit less.
    Credit,
    /// An allergen would be added, or become surer.
    Allergen,
}

impl Bench<'_> {
    /// Judges a draft.
    ///
    /// # Errors
    /// When it moves no goal for certain, credits less, adds an allergen or
    /// leaves the band of calories.
    pub fn judge(&self, draft: Draft) -> Result<Proposal, Refusal> {
        let studied = draft.study;
        let after = studied.unwrap_or_else(|| self.study(&draft.lines));
        let new = self.place.line..self.place.line + draft.lines.len();
        let effect = self.effect(&after, new.clone()).ok_or(Refusal::Goal)?;
        let gained = self.gained(&after, new, &effect).ok_or(Refusal::Goal)?;
        let mut reasons = self.goal_reasons(&effect).ok_or(Refusal::Goal)?;
        let energy = effect
            .change(NutrientId::ENERGY)
            .and_then(|change| change.exact());
        let energy = energy.filter(|change| self.options.energy.holds(*change));
        let energy = energy.ok_or(Refusal::Energy)?;
        reasons.extend(draft.reasons);
        reasons.extend(
            self.credit_reasons(&after, &effect)
                .ok_or(Refusal::Credit)?,
        );
        reasons.push(Reason::Energy { change: energy });
        reasons.extend(self.allergen_reasons(&after).ok_or(Refusal::Allergen)?);
        Ok(Proposal {
            change: draft.change,
            lines: draft.lines,
            score: score(draft.fit, gained),
            effect,
            reasons,
        })
    }

    fn parts<'s>(study: &'s RecipeStudy, lines: &Range<usize>) -> Vec<&'s WeighedLine> {
        let parts = study.parts.iter();
        parts.filter(|part| lines.contains(&part.line)).collect()
    }

    fn effect(&self, after: &RecipeStudy, new: Range<usize>) -> Option<Effect> {
        let before = self.place.study;
        let (was, is) = (
            before.analysis.as_ref().ok()?,
            after.analysis.as_ref().ok()?,
        );
        let old_parts = Self::parts(before, &(self.place.line..self.place.line + 1));
        let new_parts = Self::parts(after, &new);
        let mut nutrients = SHOWN.to_vec();
        for goal in self.goals.counted() {
            if let Aim::Less(nutrient) | Aim::More(nutrient) = goal.aim
                && !nutrients.contains(&nutrient)
            {
                nutrients.push(nutrient);
            }
        }
        let row = |nutrient| {
            let (was_in, is_in) = (was.per_serving(nutrient)?, is.per_serving(nutrient)?);
            let change = if was.servings == is.servings {
                change(&self.reference.foods, &old_parts, &new_parts, nutrient)
                    .divided(was.servings.servings())
            } else {
                ChangeBounds::of_totals(&was_in, &is_in)
            };
            Some(NutrientChange {
                nutrient,
                before: was_in,
                after: is_in,
                change,
            })
        };
        Some(Effect {
            nutrients: nutrients.into_iter().filter_map(row).collect(),
            credits: credit_changes(before.credits.as_ref()?, after.credits.as_ref()?),
            cost: self.cost(after, new, was.servings, is.servings),
        })
    }

    /// The change of a serving's cost; nothing where a price is missing.
    fn cost(
        &self,
        after: &RecipeStudy,
        new: Range<usize>,
        was: Servings,
        is: Servings,
    ) -> Option<Decimal> {
        let of = |study: &RecipeStudy, lines: Range<usize>| -> Option<Decimal> {
            lines
                .map(|line| {
                    let read = &study.lines[line].read;
                    let price = self.options.price(read.food?)?;
                    let grams = read.weight.as_ref().ok()?.grams.grams();
                    Some(price * grams / Decimal::ONE_HUNDRED)
                })
                .sum()
        };
        let old = of(self.place.study, self.place.line..self.place.line + 1)?;
        Some(of(after, new)? / is.servings() - old / was.servings())
    }

    /// What the goals gain, by the amounts in the dish.
    fn gained(&self, after: &RecipeStudy, new: Range<usize>, effect: &Effect) -> Option<i32> {
        let foods = &self.reference.foods;
        let old_parts = Self::parts(self.place.study, &(self.place.line..self.place.line + 1));
        let new_parts = Self::parts(after, &new);
        let gained = gain(self.goals, |aim| match aim {
            Aim::Less(nutrient) | Aim::More(nutrient) => (
                brought(foods, &old_parts, nutrient).into(),
                brought(foods, &new_parts, nutrient).into(),
            ),
            Aim::LessCost => self.costs(effect),
        });
        match gained {
            Gain::Known(gained) => Some(gained),
            Gain::Unknown | Gain::Nothing => None,
        }
    }

    /// The cost of the line before and after in a serving.
    fn costs(&self, effect: &Effect) -> (Rough, Rough) {
        let price = self.options.price(self.food.id);
        let servings = self
            .place
            .study
            .analysis
            .as_ref()
            .map(|analysis| analysis.servings);
        let (Some(price), Ok(servings), Some(change)) = (price, servings, effect.cost) else {
            return (Rough::UNKNOWN, Rough::UNKNOWN);
        };
        let old = price * self.stated.grams() / Decimal::ONE_HUNDRED / servings.servings();
        let rough = |cost: Decimal| Rough::known(cost.to_f64());
        (rough(old), rough(old + change))
    }

    /// What is said of each goal; nothing where none moves for certain as it
    /// should.
    fn goal_reasons(&self, effect: &Effect) -> Option<Vec<Reason>> {
        let mut reasons = Vec::new();
        let mut moved = false;
        for goal in self.goals.counted() {
            let (nutrient, change) = match goal.aim {
                Aim::LessCost => {
                    moved |= effect.cost.is_some_and(|change| change < Decimal::ZERO);
                    reasons.push(match effect.cost {
                        Some(change) => Reason::Cost { change },
                        None => Reason::CostUnknown,
                    });
                    continue;
                }
                Aim::Less(nutrient) | Aim::More(nutrient) => (nutrient, effect.change(nutrient)?),
            };
            let less = matches!(goal.aim, Aim::Less(_));
            moved |= if less { change.falls() } else { change.rises() };
            reasons.push(self.goal_reason(nutrient, change, less)?);
        }
        moved.then_some(reasons)
    }

    fn goal_reason(
        &self,
        nutrient: NutrientId,
        change: ChangeBounds,
        less: bool,
    ) -> Option<Reason> {
        let entry = self.reference.foods.nutrient(nutrient)?;
        // The label's words where it has some: "saturated fat".
        let label = self.reference.label.nutrient(nutrient);
        let name = label.map_or_else(|| entry.name.to_lowercase(), |row| row.in_text.clone());
        let unit = entry.unit.clone();
        let digits = entry.decimals;
        let certain = match (change.exact(), change.falls(), change.rises()) {
            (Some(exact), ..) => Some((exact, true)),
            (None, true, _) => change.high.map(|high| (high, false)),
            (None, _, true) => change.low.map(|low| (low, false)),
            _ => None,
        };
        let wanted = |change: Decimal| change.is_zero() || (change < Decimal::ZERO) == less;
        Some(match certain {
            None => Reason::Unknown { nutrient, name },
            Some((change, true)) => {
                let wanted = wanted(change);
                Reason::Moves {
                    nutrient,
                    name,
                    unit,
                    digits,
                    change,
                    wanted,
                }
            }
            Some((change, false)) => {
                let wanted = wanted(change);
                Reason::MovesAtLeast {
                    nutrient,
                    name,
                    unit,
                    digits,
                    change,
                    wanted,
                }
            }
        })
    }

    /// What is said of the credit; nothing where it falls and must be kept.
    fn credit_reasons(&self, after: &RecipeStudy, effect: &Effect) -> Option<Vec<Reason>> {
        let (was, is) = (self.place.study.credits.as_ref()?, after.credits.as_ref()?);
        if self.options.credit == CreditDemand::Keep {
            let whole = |credits: &RecipeCredits| {
                let definitions = &self.reference.credit_rules.definitions;
                let marked = Mark::WholeGrainRich;
                credits
                    .marked(definitions, Component::Grains, marked, None)
                    .low
            };
            let falls = effect
                .credits
                .iter()
                .any(|credit| credit.after < credit.before);
            if falls || whole(is) < whole(was) {
                return None;
            }
        }
        let own: Vec<Component> = was
            .lines
            .iter()
            .filter(|line| line.line == self.place.line)
            .flat_map(|line| &line.parts)
            .map(|part| part.component)
            .collect();
        let told = |credit: &&CreditChange| {
            own.contains(&credit.component) || credit.before != credit.after
        };
        let reason = |credit: &CreditChange| Reason::Credit {
            component: credit.component,
            before: credit.before,
            after: credit.after,
        };
        Some(effect.credits.iter().filter(told).map(reason).collect())
    }

    /// Whether a food's own words point to an allergen that the recipe does not
    /// have, or has less surely. Seen before the recipe is studied.
    pub fn adds_an_allergen(&self, food: &Food) -> bool {
        let found = screen_line(&self.reference.allergen_terms, "", Some(food));
        let mut pairs = found.findings.iter().zip(&self.place.study.allergens);
        pairs.any(|(own, recipe)| own.presence > recipe.finding.presence)
    }

    /// What is said of allergens; nothing where one is added or becomes surer.
    fn allergen_reasons(&self, after: &RecipeStudy) -> Option<Vec<Reason>> {
        let mut gone: Vec<Allergen> = Vec::new();
        for (was, is) in self.place.study.allergens.iter().zip(&after.allergens) {
            if is.finding.presence > was.finding.presence {
                return None;
            }
            if is.finding.presence == Presence::Unknown && was.finding.presence > Presence::Unknown
            {
                gone.push(is.finding.allergen);
            }
        }
        let mut reasons = vec![Reason::NoAllergenAdded];
        if !gone.is_empty() {
            reasons.push(Reason::AllergensGone { allergens: gone });
        }
        Some(reasons)
    }
}

fn credit_changes(was: &RecipeCredits, is: &RecipeCredits) -> Vec<CreditChange> {
    let of = |credits: &RecipeCredits, component: Component| {
        let mut rows = credits.per_serving.iter();
        rows.find(|credit| credit.component == component)
            .map_or((Decimal::ZERO, true), |credit| {
                (credit.credited, credit.complete)
            })
    };
    Component::ALL
        .into_iter()
        .map(|component| {
            let ((before, was_complete), (after, is_complete)) =
                (of(was, component), of(is, component));
            let complete = was_complete && is_complete;
            CreditChange {
                component,
                before,
                after,
                complete,
            }
        })
        .filter(|credit| credit.before > Decimal::ZERO || credit.after > Decimal::ZERO)
        .collect()
}
