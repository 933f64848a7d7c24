//! The least plan for some of the demands: solve, check, cut off, solve again.

use super::candidate::Candidate;
use super::change::{ChoicePlace, WeekChange};
use super::demand::{Broken, Demand};
use super::ground::Ground;
use super::model::{Model, Row};
use super::solve::{Chosen, Solved, Solver};
use crate::units::Servings;
use std::collections::BTreeSet;

/// Nodes of the solver in one step.
const NODES: u64 = 25;

/// Plans after which a hunt for any is given up: its rows say too little.
const PATIENCE: usize = 40;

/// The model with its cuts, and what is known of plans. Cuts hold for every
/// hunt, so all share one pool.
#[derive(Debug)]
pub(super) struct Pool {
    pub model: Model,
    candidates: usize,
    /// For each demand the candidates that can move its figure.
    affecting: Vec<BTreeSet<usize>>,
    /// The demands that the week as it stands does not keep.
    pub unmet: Vec<usize>,
    /// The best plan that passed, for all demands.
    pub best: Option<Chosen>,
    /// Plans that were checked, and those that did not pass.
    pub checked: usize,
    pub refused: usize,
    /// The largest lower bound of the objective, for all demands.
    bound: f64,
}

/// How the engine finds a plan: the demands that it breaks, or nothing where
/// the week cannot be studied with it.
pub(super) type Check<'c> = dyn Fn(&[usize]) -> Option<Vec<Broken>> + 'c;

impl Pool {
    pub fn new(ground: &Ground, candidates: &[Candidate], model: Model) -> Self {
        let affecting = ground.demands.0.iter().map(|demand| {
            let all = candidates.iter().enumerate();
            all.filter(|(_, candidate)| affects(ground, candidate, demand))
                .map(|(at, _)| at)
                .collect()
        });
        Self {
            affecting: affecting.collect(),
            unmet: (0..ground.demands.0.len())
                .filter(|at| !ground.demands.0[*at].is_kept())
                .collect(),
            model,
            candidates: candidates.len(),
            best: None,
            checked: 0,
            refused: 0,
            bound: 0.0,
        }
    }

    /// All demands, owed.
    pub fn all(&self) -> Vec<bool> {
        vec![true; self.affecting.len()]
    }

    /// The demands that some row or cut is for.
    pub fn spoken_for(&self) -> BTreeSet<usize> {
        let rows = self.model.rows.iter();
        rows.flat_map(|row| row.of.iter().copied()).collect()
    }

    /// No plan for all demands has fewer changes: the objective of one with so
    /// many is below one more.
    pub fn least_changes(&self) -> usize {
        const LARGEST_SHADE: f64 = 0.98;
        (self.bound - LARGEST_SHADE).ceil().max(0.0) as usize
    }

    /// Cuts off a plan that breaks some demands. Whether a demand is kept
    /// depends on the candidates that can move its figure and on no others, so
    /// every plan with the same of these breaks it as well.
    fn cut(&mut self, chosen: &[usize], broken: &[Broken]) {
        for demand in broken {
            let affecting: Vec<usize> = match demand {
                Some(at) => self.affecting[*at].iter().copied().collect(),
                None => (0..self.candidates).collect(),
            };
            let mut terms = Vec::new();
            let mut least = 1.0;
            for at in affecting {
                if chosen.contains(&at) {
                    terms.push((at, -1.0));
                    least -= 1.0;
                } else {
                    terms.push((at, 1.0));
                }
            }
            let row = Row {
                name: format!("cut {}", self.refused),
                lower: Some(least),
                upper: None,
                terms,
                of: demand.iter().copied().collect(),
            };
            self.model.rows.push(row);
        }
    }

    /// Checks a plan for the demands that are owed, and cuts it off where it
    /// breaks one of them.
    pub fn passes(&mut self, chosen: &[usize], owed: &[bool], check: &Check<'_>) -> bool {
        self.checked += 1;
        let counts = |demand: &Broken| demand.is_none_or(|at| owed[at]);
        let broken: Vec<Broken> = match check(chosen) {
            Some(broken) => broken.into_iter().filter(counts).collect(),
            None => vec![None],
        };
        if broken.is_empty() {
            return true;
        }
        self.refused += 1;
        self.cut(chosen, &broken);
        false
    }
}

/// Whether a candidate can move a demand's figure.
fn affects(ground: &Ground, candidate: &Candidate, demand: &Demand) -> bool {
    let requirement = &demand.now.requirement;
    let on_average = requirement.nutrient.is_some();
    if !on_average && !candidate.moves_credits {
        return false;
    }
    ChoicePlace::all(&ground.week).any(|(place, choice)| {
        let day = &ground.week.days[place.day];
        let meal = &day.meals[place.meal];
        // Some rules on a day look at all meals of the group.
        let of_service = meal.group == requirement.service.group
            && (!on_average || meal.kind == requirement.service.kind);
        let of_day = requirement.date.is_none_or(|date| date == day.date);
        let moved = match &candidate.change {
            WeekChange::Choice { place: own, .. } => *own == place,
            _ => candidate.variant(&choice.recipe).is_some(),
        };
        of_service && of_day && moved && choice.planned > Servings::ZERO
    })
}

/// A hunt for one plan.
#[derive(Debug)]
pub(super) struct Hunt {
    owed: Vec<bool>,
    /// Whether the least is wanted, or any.
    least: bool,
    solver: Solver,
    /// The last plan in hand that did not pass.
    refused: Option<Vec<usize>>,
    /// How many plans did not pass.
    tried: usize,
}

/// How a step of a hunt ended.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Hunted {
    /// There is more to do.
    Going,
    /// This passes, and nothing that costs less does.
    Found(Vec<usize>),
    /// Nothing passes, says the solver.
    None,
    /// The solver gave up.
    GaveUp,
}

impl Hunt {
    /// For the least plan.
    pub fn for_least(pool: &Pool, owed: Vec<bool>) -> Self {
        Self::new(pool, owed, true)
    }

    /// For any plan.
    pub fn for_any(pool: &Pool, owed: Vec<bool>) -> Self {
        Self::new(pool, owed, false)
    }

    fn new(pool: &Pool, owed: Vec<bool>, least: bool) -> Self {
        Self {
            solver: solver(pool, &owed, least),
            owed,
            least,
            refused: None,
            tried: 0,
        }
    }

    /// Works on.
    pub fn step(&mut self, pool: &mut Pool, check: &Check<'_>) -> Hunted {
        match self.solver.step(NODES) {
            Solved::None => Hunted::None,
            Solved::GaveUp => Hunted::GaveUp,
            Solved::Least(chosen) => {
                if self.least {
                    pool.bound = pool.bound.max(chosen.objective);
                }
                // The plan in hand has passed already.
                let is_in_hand = self.least && pool.best.as_ref() == Some(&chosen);
                if is_in_hand || pool.passes(&chosen.columns, &self.owed, check) {
                    if self.least {
                        pool.best = Some(chosen.clone());
                    }
                    return Hunted::Found(chosen.columns);
                }
                self.solver = solver(pool, &self.owed, self.least);
                self.after_refusal()
            }
            Solved::Proposed(chosen) => self.judge(pool, chosen, check),
            Solved::Going { best, bound } => {
                if self.least {
                    pool.bound = pool.bound.max(bound.unwrap_or(0.0));
                    if let Some(best) = best {
                        self.consider(pool, best, check);
                    }
                }
                Hunted::Going
            }
        }
    }

    /// Takes a plan that the solver proposes, or has it cut off.
    fn judge(&mut self, pool: &mut Pool, chosen: Chosen, check: &Check<'_>) -> Hunted {
        let rows = pool.model.rows.len();
        if pool.passes(&chosen.columns, &self.owed, check) {
            if !self.least {
                return Hunted::Found(chosen.columns);
            }
            pool.best = Some(chosen);
            self.solver.accept();
            return Hunted::Going;
        }
        self.solver.refuse(&pool.model.rows[rows..]);
        self.after_refusal()
    }

    /// Goes on after a plan that did not pass, while that makes sense.
    fn after_refusal(&mut self) -> Hunted {
        self.tried += 1;
        match !self.least && self.tried == PATIENCE {
            true => Hunted::GaveUp,
            false => Hunted::Going,
        }
    }

    /// Keeps a plan in hand if it passes and is better than the one before.
    fn consider(&mut self, pool: &mut Pool, chosen: Chosen, check: &Check<'_>) {
        let better = |best: &Chosen| chosen.objective < best.objective;
        let seen = self.refused.as_ref() == Some(&chosen.columns);
        if seen || !pool.best.as_ref().is_none_or(better) {
            return;
        }
        if pool.passes(&chosen.columns, &self.owed, check) {
            pool.best = Some(chosen);
        } else {
            self.refused = Some(chosen.columns);
        }
    }
}

fn solver(pool: &Pool, owed: &[bool], least: bool) -> Solver {
    let mut model = pool.model.binding(|at| owed[at]);
    if !least {
        for column in &mut model.columns {
            column.cost = 0.0;
        }
    }
    Solver::new(&model)
}
