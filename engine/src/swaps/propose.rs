//! Ranks all foods for a line, then studies the best until enough are found.

use super::bench::{Bench, Draft};
use super::gain::{Gain, gain};
use super::goals::{Aim, Goals, SwapOptions};
use super::index::{Features, SwapIndex};
use super::judge::Refusal;
use super::measure::Rough;
use super::moves::{Doing, Move};
use super::proposal::{Change, LeftOut, Proposal, Proposals, SwapProblem};
use super::rank::{WHOLE, fit, names_alike, score};
use super::reason::Reason;
use super::{AmountBy, Place};
use crate::foods::{FoodId, NutrientId};
use crate::recipe::RecipeLine;
use crate::reference::Reference;
use crate::units::Kilocalories;
use crate::yields::Treatment;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::borrow::Cow;

/// Foods that are studied for each that is asked for, at most.
const TRIES: usize = 8;

/// Foods of which half may be taken.
const HALVES: usize = 2;

/// Names that are at least this much alike are one food, made otherwise.
const SAME_FOOD: i32 = 800;

/// Proposes at most `limit` foods for a line, and the kitchen moves that suit
/// it. Every food of the dataset and every one of the office's own is
/// considered. Those that would add an allergen, credit less or leave the band
/// of calories are not among them, nor those that move no goal for certain.
///
/// # Errors
/// When there is no goal, or the line or its recipe does not say enough.
pub fn propose(
    reference: &Reference,
    index: &SwapIndex,
    place: &Place<'_>,
    goals: &Goals,
    options: &SwapOptions,
    limit: usize,
) -> Result<Proposals, SwapProblem> {
    let bench = Bench::new(reference, index, place, goals, options)?;
    let (candidates, mut left_out) = bench.candidates();
    let mut foods = bench.foods(&candidates, limit, &mut left_out);
    by_score(&mut foods);
    let mut moves: Vec<Proposal> = bench.moves();
    moves.extend(bench.halves(&foods));
    by_score(&mut moves);
    Ok(Proposals {
        foods,
        moves,
        left_out,
    })
}

/// The best first; of equals the one that was found first.
fn by_score(proposals: &mut [Proposal]) {
    proposals.sort_by_key(|proposal| std::cmp::Reverse(proposal.score));
}

/// The foods that [`propose`] studies, in its order, with the number by which
/// they are ordered: all foods that may stand in and would gain.
///
/// # Errors
/// As [`propose`].
pub fn rank(
    reference: &Reference,
    index: &SwapIndex,
    place: &Place<'_>,
    goals: &Goals,
    options: &SwapOptions,
) -> Result<Vec<(FoodId, i32)>, SwapProblem> {
    let bench = Bench::new(reference, index, place, goals, options)?;
    let (candidates, _) = bench.candidates();
    let ranked = candidates.iter();
    Ok(ranked.map(|one| (one.features.id, one.score())).collect())
}

/// A food that may stand in, by rough numbers.
struct Candidate<'i> {
    features: Cow<'i, Features>,
    fit: i32,
    gain: i32,
}

impl<'a> Bench<'a> {
    /// All foods that may stand in and would gain, best first, and the number
    /// of those of which that is unknown or whose calories are far off.
    fn candidates(&self) -> (Vec<Candidate<'a>>, LeftOut) {
        let mut found = Vec::new();
        let mut left_out = LeftOut::default();
        let Some(kind) = self.features.kind else {
            return (found, left_out);
        };
        let rough = RoughLine::new(self);
        for other in self.index.of_kinds_for(&self.reference.foods, kind) {
            if other.id == self.food.id {
                continue;
            }
            let Some(fit) = fit(self.index, &self.features, &other).filter(|fit| *fit > 0) else {
                continue;
            };
            match rough.gain(&other) {
                Gain::Known(_) if rough.far_outside(&other) => left_out.energy += 1,
                Gain::Known(gain) => found.push(Candidate {
                    features: other,
                    fit,
                    gain,
                }),
                Gain::Unknown => left_out.unknown += 1,
                Gain::Nothing => {}
            }
        }
        found.sort_by_key(|one| (std::cmp::Reverse(one.score()), one.features.id));
        (found, left_out)
    }
}

/// The line in rough numbers, made once for all foods.
struct RoughLine<'b, 'a> {
    bench: &'b Bench<'a>,
    grams: f64,
    /// Grams in a cup of the line's own food, where amounts go by volume.
    cup: Option<f64>,
    /// What the line brings of each goal.
    brings: Vec<(Aim, Rough)>,
    servings: Option<f64>,
}

impl<'b, 'a> RoughLine<'b, 'a> {
    fn new(bench: &'b Bench<'a>) -> Self {
        let grams = bench.stated.grams().to_f64();
        let by_volume = bench.amount_by() == AmountBy::Volume;
        let servings = bench.place.study.analysis.as_ref().ok();
        let mut line = Self {
            bench,
            grams: grams.unwrap_or(0.0),
            cup: bench.features.cup.filter(|_| by_volume),
            brings: Vec::new(),
            servings: servings.and_then(|analysis| analysis.servings.servings().to_f64()),
        };
        line.brings = bench
            .goals
            .counted()
            .map(|goal| {
                let value = line.value(bench.food.id, goal.aim);
                (goal.aim, value.times(line.grams))
            })
            .collect();
        line
    }

    fn value(&self, food: FoodId, aim: Aim) -> Rough {
        match aim {
            Aim::LessCost => {
                let price = self.bench.options.price(food);
                Rough::known(price.and_then(|price| price.to_f64()))
            }
            Aim::Less(nutrient) | Aim::More(nutrient) => {
                Rough::of(&self.bench.reference.foods, food, nutrient)
            }
        }
    }

    /// Grams of the new food for a gram of the old one, about.
    fn density(&self, other: &Features) -> f64 {
        match (self.cup, other.cup) {
            (Some(own), Some(cup)) => cup / own,
            _ => 1.0,
        }
    }

    /// Whether the calories move so much that no study is needed to see that
    /// they leave the band: twice what it allows.
    fn far_outside(&self, other: &Features) -> bool {
        let (Some(old), Some(new)) = (self.bench.features.energy, other.energy) else {
            return false;
        };
        let Some(servings) = self.servings else {
            return false;
        };
        let change = (new * self.density(other) - old) * self.grams / 100.0 / servings;
        let limit = |kcal: Kilocalories| kcal.kilocalories().to_f64().unwrap_or(f64::MAX) * 2.0;
        let band = &self.bench.options.energy;
        change < -limit(band.fall) || change > limit(band.rise)
    }

    /// What the goals would gain in the amount that the kind of food asks for.
    fn gain(&self, other: &Features) -> Gain {
        let grams = self.grams * self.density(other);
        gain(self.bench.goals, |aim| {
            let brings = self.brings.iter().find(|(of, _)| *of == aim);
            let before = brings.map_or(Rough::UNKNOWN, |(_, brings)| *brings);
            (before, self.value(other.id, aim).times(grams))
        })
    }
}

impl Bench<'_> {
    fn foods(
        &self,
        candidates: &[Candidate<'_>],
        limit: usize,
        left_out: &mut LeftOut,
    ) -> Vec<Proposal> {
        let mut foods = Vec::new();
        let mut taken: Vec<&Candidate<'_>> = Vec::new();
        for candidate in candidates.iter().take(limit.saturating_mul(TRIES)) {
            if foods.len() == limit {
                break;
            }
            // Entries that differ in nothing that matters here are one choice.
            if taken.iter().any(|other| candidate.is_like(other)) {
                continue;
            }
            match self.food(candidate) {
                Ok(proposal) => {
                    foods.push(proposal);
                    taken.push(candidate);
                }
                Err(Refusal::Energy) => left_out.energy += 1,
                Err(Refusal::Credit) => left_out.credit += 1,
                Err(Refusal::Allergen) => left_out.allergens += 1,
                Err(Refusal::Goal) => {}
            }
        }
        foods
    }

    /// A food in the amount that its kind asks for; where that credits less, in
    /// the amount that credits the same.
    fn food(&self, candidate: &Candidate<'_>) -> Result<Proposal, Refusal> {
        let by = self.amount_by();
        match self.food_by(candidate, by) {
            Err(Refusal::Credit) if self.options.amount.is_none() && by != AmountBy::Credit => {
                self.food_by(candidate, AmountBy::Credit)
            }
            judged => judged,
        }
    }

    fn food_by(&self, candidate: &Candidate<'_>, by: AmountBy) -> Result<Proposal, Refusal> {
        let table = &self.reference.foods;
        let food = table.food(candidate.features.id).ok_or(Refusal::Goal)?;
        if self.adds_an_allergen(food) {
            return Err(Refusal::Allergen);
        }
        let swapped = self.swapped(food, Decimal::ONE, by).ok_or(Refusal::Goal)?;
        let mut reasons = self.part_reasons(&candidate.features);
        reasons.push(swapped.amount);
        self.judge(Draft {
            change: Change::Food {
                food: food.id,
                description: food.description.clone(),
            },
            lines: vec![swapped.line],
            fit: candidate.fit,
            reasons,
            study: swapped.study,
        })
    }

    fn part_reasons(&self, other: &Features) -> Vec<Reason> {
        let part = |features: &Features| features.kind.map(|kind| &self.index.kinds.get(kind).part);
        let mut reasons = Vec::new();
        if let (Some(old), Some(new)) = (part(&self.features), part(other)) {
            let (old, new) = (old.clone(), new.clone());
            reasons.push(if old == new {
                Reason::SamePart { part: new }
            } else {
                Reason::OtherPart { old, new }
            });
        }
        if names_alike(&self.features, other) >= SAME_FOOD {
            reasons.push(Reason::SameFood);
        }
        if other.staple {
            reasons.push(Reason::UsualFood);
        }
        reasons
    }

    /// The moves that suit the food and its goals.
    fn moves(&self) -> Vec<Proposal> {
        let description = self.food.description.to_lowercase();
        let kind = self
            .features
            .kind
            .map(|kind| self.index.kinds.get(kind).kind.as_str());
        let moves = &self.index.moves;
        moves
            .suiting(kind, &description)
            .filter_map(|one| self.judge(self.move_draft(one)?).ok())
            .collect()
    }

    fn move_draft(&self, one: &Move) -> Option<Draft> {
        let lines = match &one.doing {
            Doing::Half(_) => return None,
            Doing::Less(share) => vec![self.share_of_it(*share)?],
            Doing::Treatment(id) => {
                let mut line = self.kept().clone();
                let treated = &mut line.correction.treatments;
                // What is drained already is not drained again.
                if treated.iter().any(|own| self.index.moves.apply(own)) {
                    return None;
                }
                treated.push(id.clone());
                line.correction.food = Some(self.food.id);
                if !one.note.is_empty() {
                    line.text = format!("{}, {}", line.text.trim_end(), one.note);
                }
                vec![line]
            }
            Doing::LeaveOut(seasonings) => seasonings
                .iter()
                .map(|(food, share)| self.seasoning(*food, *share))
                .collect::<Option<_>>()?,
        };
        Some(Draft {
            change: Change::Move {
                id: one.id.clone(),
                words: one.words.clone(),
            },
            lines,
            fit: WHOLE,
            reasons: [Some(known_of(one)), self.energy_of(one)]
                .into_iter()
                .flatten()
                .collect(),
            study: None,
        })
    }

    /// What is to be said of the calories that drain away.
    fn energy_of(&self, one: &Move) -> Option<Reason> {
        let mut rows = self.reference.treatments.of(one.treatment()?);
        let speaks = |row: &Treatment| {
            let of = row.nutrient;
            of.is_none_or(|of| of == NutrientId::ENERGY || of == NutrientId::SODIUM)
        };
        (!rows.any(speaks)).then_some(Reason::EnergyNotCounted)
    }

    fn seasoning(&self, food: FoodId, share: Decimal) -> Option<RecipeLine> {
        let food = self.reference.foods.food(food)?;
        Some(self.swapped(food, share, AmountBy::Volume)?.line)
    }

    /// Half of the old food, half of each of the best new ones.
    fn halves(&self, foods: &[Proposal]) -> Vec<Proposal> {
        let Some((one, share)) = self.index.moves.half() else {
            return Vec::new();
        };
        let rest = Decimal::ONE - share;
        let half = |proposal: &Proposal| {
            let Change::Food { food, description } = &proposal.change else {
                return None;
            };
            let new = self.reference.foods.food(*food)?;
            let swapped = self.swapped(new, rest, self.amount_by())?;
            let judged = self.judge(Draft {
                change: Change::Half {
                    food: *food,
                    description: description.clone(),
                },
                lines: vec![self.share_of_it(share)?, swapped.line],
                fit: WHOLE,
                reasons: vec![known_of(one), swapped.amount],
                study: None,
            });
            judged.ok()
        };
        foods.iter().filter_map(half).take(HALVES).collect()
    }
}

fn known_of(one: &Move) -> Reason {
    Reason::Effect {
        words: one.effect.clone(),
        source: one.source.clone(),
        status: one.status.clone(),
    }
}

/// Gains that are this near each other are the same to a cook.
const SAME_GAIN: i32 = 40;

impl Candidate<'_> {
    fn score(&self) -> i32 {
        score(self.fit, self.gain)
    }

    /// True when a cook could not tell the two apart.
    fn is_like(&self, other: &Self) -> bool {
        self.features.name == other.features.name
            && self.features.form == other.features.form
            && (self.gain - other.gain).abs() <= SAME_GAIN
    }
}
