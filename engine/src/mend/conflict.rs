//! Why nothing passes: first whether that is so, then the demands that cannot
//! be kept together.
//!
//! That nothing passes is believed when the least breach of the rows, which the
//! solver finds by another way through a model that always has a solution, is
//! one. Then demands are left out one by one; those without which a plan
//! appears, checked by the engine, are the reason (a deletion filter: Chinneck
//! and Dravnieks 1991).

use super::hunt::{Check, Hunt, Hunted, Pool};
use super::solve::{Solved, Solver, elastic, is_breach};

/// Nodes of the solver in one step.
const NODES: u64 = 25;

/// The explanation while it is being found.
#[derive(Debug)]
pub(super) struct Conflict {
    /// The demands that are left.
    owed: Vec<bool>,
    /// Demands out of their limits now, which are tried alone.
    alone: Vec<usize>,
    /// Demands that are yet to be left out, the last first.
    open: Vec<usize>,
    smallest: bool,
    stage: Stage,
}

#[derive(Debug)]
enum Stage {
    /// Making sure that nothing passes.
    Sure(Box<Solver>),
    /// Trying one demand alone.
    Alone(usize, Box<Hunt>),
    /// Trying without one demand.
    Without(usize, Box<Hunt>),
    /// Making sure of the demands that are left.
    Last(Box<Solver>),
    /// Choosing what to try next.
    Next,
}

/// How a step of explaining ended.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Explained {
    /// There is more to do.
    Going,
    /// These cannot be kept together.
    Because {
        /// By their places.
        demands: Vec<usize>,
        /// Whether none of them can be spared.
        smallest: bool,
    },
    /// The solver was wrong, or cannot tell; a plan that passes, where one was
    /// found.
    NotImpossible(Option<Vec<usize>>),
}

/// Whether there is a breach.
enum Breach {
    Going,
    Is,
    /// There is none, by these candidates.
    Not(Vec<usize>),
    CannotTell,
}

impl Conflict {
    pub fn new(pool: &Pool) -> Self {
        let mut owed = pool.all();
        let spoken_for = pool.spoken_for();
        for (at, owes) in owed.iter_mut().enumerate() {
            *owes = spoken_for.contains(&at);
        }
        let open: Vec<usize> = spoken_for.into_iter().rev().collect();
        Self {
            stage: Stage::Sure(Box::new(Solver::general(&elastic(&pool.model)))),
            owed,
            alone: pool.unmet.iter().rev().copied().collect(),
            open,
            smallest: true,
        }
    }

    /// Works on.
    pub fn step(&mut self, pool: &mut Pool, check: &Check<'_>) -> Explained {
        match std::mem::replace(&mut self.stage, Stage::Next) {
            Stage::Sure(mut solver) => match breach(&mut solver) {
                Breach::Going => self.go_on(Stage::Sure(solver)),
                Breach::Is => Explained::Going,
                Breach::CannotTell => Explained::NotImpossible(None),
                Breach::Not(chosen) => {
                    let all = pool.all();
                    let passes = pool.passes(&chosen, &all, check);
                    Explained::NotImpossible(passes.then_some(chosen))
                }
            },
            Stage::Alone(at, mut hunt) => match hunt.step(pool, check) {
                Hunted::Going => self.go_on(Stage::Alone(at, hunt)),
                Hunted::None => {
                    self.owed.fill(false);
                    self.owed[at] = true;
                    self.open.clear();
                    self.alone.clear();
                    Explained::Going
                }
                Hunted::Found(_) | Hunted::GaveUp => Explained::Going,
            },
            Stage::Without(at, mut hunt) => match hunt.step(pool, check) {
                Hunted::Going => self.go_on(Stage::Without(at, hunt)),
                Hunted::None => {
                    self.owed[at] = false;
                    Explained::Going
                }
                Hunted::Found(_) => Explained::Going,
                Hunted::GaveUp => {
                    self.smallest = false;
                    Explained::Going
                }
            },
            Stage::Last(mut solver) => match breach(&mut solver) {
                Breach::Going => self.go_on(Stage::Last(solver)),
                Breach::Is => Explained::Because {
                    demands: (0..self.owed.len()).filter(|at| self.owed[*at]).collect(),
                    smallest: self.smallest,
                },
                Breach::Not(_) | Breach::CannotTell => Explained::NotImpossible(None),
            },
            Stage::Next => self.next(pool),
        }
    }

    fn go_on(&mut self, stage: Stage) -> Explained {
        self.stage = stage;
        Explained::Going
    }

    fn next(&mut self, pool: &Pool) -> Explained {
        if let Some(at) = self.alone.pop() {
            let mut owed = vec![false; self.owed.len()];
            owed[at] = true;
            self.stage = Stage::Alone(at, Box::new(Hunt::for_any(pool, owed)));
        } else if let Some(at) = self.open.pop() {
            let mut owed = self.owed.clone();
            owed[at] = false;
            self.stage = Stage::Without(at, Box::new(Hunt::for_any(pool, owed)));
        } else {
            let left = pool.model.binding(|at| self.owed[at]);
            self.stage = Stage::Last(Box::new(Solver::general(&elastic(&left))));
        }
        Explained::Going
    }
}

/// One step towards the least breach: a lower bound above none is enough.
fn breach(solver: &mut Solver) -> Breach {
    match solver.step(NODES) {
        Solved::Going { bound, .. } if bound.is_some_and(is_breach) => Breach::Is,
        Solved::Going { .. } | Solved::Proposed(_) => Breach::Going,
        Solved::Least(chosen) if is_breach(chosen.objective) => Breach::Is,
        Solved::Least(chosen) => Breach::Not(chosen.columns),
        Solved::None | Solved::GaveUp => Breach::CannotTell,
    }
}
