//! Plans of just so many changes, then of one more, and so on.
//!
//! All changes cost nearly the same, so a solver that goes by cost alone tries
//! a great many sets of changes that are one too few. Told how many there are,
//! it sees at once of most changes that no plan has them: each is tried alone,
//! in fractions. Few are left for the search in whole numbers: first for any
//! plan, then for what costs less than the plan in hand, which narrows the same
//! number of changes further.

use super::model::Model;
use super::pose::{Ask, Posed, Work, chosen, pose, range_of_chosen};
use super::simplify::Simplified;
use super::solve::{Chosen, Solved};
use microlp::{Error, Solution, SolutionStatus, SolveOutcome, Variable};

/// How many changes are tried alone in one piece of work.
const TRIED: usize = 30;

/// After so many nodes a better plan in hand is used to narrow again.
const NARROW_AGAIN: u64 = 400;

/// Trying each change alone is done again while it drops more than one in so
/// many.
const WORTH_AGAIN: usize = 20;

/// Half the step between two costs, which are multiples of 2⁻¹².
const HALF_STEP: f64 = 1.0 / 8192.0;

/// How near to a whole number a fraction is one.
const WHOLE: f64 = 1e-6;

/// A search level by level.
#[derive(Debug)]
pub(super) struct Levels {
    model: Model,
    /// With what is left at this level.
    simplified: Simplified,
    /// What is left out at every level.
    left_out: Vec<bool>,
    /// How many changes are chosen; nothing while it is asked which changes no
    /// plan has, however many they are …
    level: Option<f64>,
    /// … and how many could be, at least and at most.
    range: (f64, f64),
    best: Option<Chosen>,
    stage: Stage,
    nodes: u64,
}

#[derive(Debug)]
enum Stage {
    Narrowing,
    Trying(Box<Trying>),
    Branching(Box<Branching>),
    Over(Solved),
}

/// Changes are tried alone.
struct Trying {
    /// The least cost in fractions.
    base: Solution,
    variables: Vec<Option<Variable>>,
    /// The next column.
    at: usize,
    dropped: usize,
}

impl std::fmt::Debug for Trying {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "{} dropped before {}", self.dropped, self.at)
    }
}

/// What is left is searched in whole numbers.
#[derive(Debug)]
struct Branching {
    ask: Ask,
    variables: Vec<Option<Variable>>,
    work: Work,
    /// Nodes so far.
    nodes: u64,
    /// Whether it has found a better plan than the one it began with.
    has_improved: bool,
}

impl Levels {
    /// A search from the fewest changes that there can be; nothing where that
    /// number cannot be said. `best` is a plan in hand.
    pub fn new(model: &Model, simplified: &Simplified, best: Option<Chosen>) -> Option<Self> {
        let range = range_of_chosen(model, simplified)?;
        Some(Self {
            left_out: simplified.left_out.clone(),
            model: model.clone(),
            simplified: simplified.clone(),
            // With a plan in hand it is likely that there are more: no use to ask.
            level: best.is_some().then_some(range.0),
            range,
            best,
            stage: Stage::Narrowing,
            nodes: 0,
        })
    }

    /// Nodes so far.
    pub fn nodes(&self) -> u64 {
        self.nodes
    }

    /// Goes on: for so many nodes at most, or a like amount of other work.
    pub fn step(&mut self, nodes: u64) -> Solved {
        let stage = std::mem::replace(&mut self.stage, Stage::Narrowing);
        self.stage = match stage {
            Stage::Narrowing => self.narrow(),
            Stage::Trying(trying) => self.try_alone(trying),
            Stage::Branching(branching) => self.branch(*branching, nodes),
            over @ Stage::Over(_) => over,
        };
        match &self.stage {
            Stage::Over(solved) => solved.clone(),
            _ => Solved::Going {
                best: self.best.clone(),
                bound: Some(self.level.unwrap_or(self.range.0) * self.cheapest()),
            },
        }
    }

    /// The least cost of a change.
    fn cheapest(&self) -> f64 {
        let whole = self.model.columns.iter().filter(|column| column.integer);
        whole
            .map(|column| column.cost)
            .fold(f64::INFINITY, f64::min)
    }

    fn pose(&self, ask: Ask) -> Option<Posed> {
        let mut posed = pose(&self.model, &self.simplified, ask)?;
        if let Some(level) = self.level {
            posed.choose(&self.model, level);
        }
        if let Some(best) = &self.best {
            posed.cost_at_most(&self.model, best.objective - HALF_STEP);
        }
        Some(posed)
    }

    /// Solves the level in fractions.
    fn narrow(&mut self) -> Stage {
        let posed = self.pose(Ask::Part);
        let solved = posed.map(|posed| (posed.problem.solve(), posed.variables));
        match solved {
            Some((Ok(SolveOutcome::Solution(base)), variables)) => {
                Stage::Trying(Box::new(Trying {
                    base,
                    variables,
                    at: 0,
                    dropped: 0,
                }))
            }
            None | Some((Err(Error::Infeasible), _)) if self.level.is_none() => {
                Stage::Over(Solved::None)
            }
            None | Some((Err(Error::Infeasible), _)) => self.next_level(),
            _ => Stage::Over(Solved::GaveUp),
        }
    }

    /// Keeps a plan that is better than the one in hand; false if it is not.
    fn take(&mut self, columns: Vec<usize>) -> bool {
        let found = Chosen {
            objective: columns.iter().map(|at| self.model.columns[*at].cost).sum(),
            columns,
        };
        let is_better = (self.best.as_ref()).is_none_or(|best| found.objective < best.objective);
        if is_better {
            self.best = Some(found);
        }
        is_better
    }

    /// Leaves out the changes that no plan of this level has, not even in
    /// fractions.
    fn try_alone(&mut self, mut trying: Box<Trying>) -> Stage {
        let mut tried = 0;
        while trying.at < self.simplified.left_out.len() && tried < TRIED {
            let at = trying.at;
            trying.at += 1;
            let Some(variable) = trying.variables[at].filter(|_| !self.simplified.left_out[at])
            else {
                continue;
            };
            if !self.model.columns[at].integer || trying.base.var_value(variable) > 1.0 - WHOLE {
                continue;
            }
            tried += 1;
            if let Err(Error::Infeasible) = trying.base.clone().fix_var(variable, 1.0) {
                self.simplified.left_out[at] = true;
                trying.dropped += 1;
            }
        }
        if trying.at < self.simplified.left_out.len() {
            return Stage::Trying(trying);
        }
        let left = self.simplified.left_out.iter().filter(|out| !**out).count();
        if trying.dropped * WORTH_AGAIN > left {
            return Stage::Narrowing;
        }
        if self.level.is_none() {
            self.left_out.clone_from(&self.simplified.left_out);
            return match range_of_chosen(&self.model, &self.simplified) {
                Some(range) => {
                    self.range = range;
                    self.next_level()
                }
                None => Stage::Over(Solved::GaveUp),
            };
        }
        let ask = match self.best {
            None => Ask::WholeAny,
            Some(_) => Ask::Whole,
        };
        match self.pose(ask) {
            None => self.next_level(),
            Some(Posed { problem, variables }) => Stage::Branching(Box::new(Branching {
                ask,
                variables,
                work: Work::Fresh(problem),
                nodes: 0,
                has_improved: false,
            })),
        }
    }

    fn branch(&mut self, branching: Branching, nodes: u64) -> Stage {
        let Branching {
            ask,
            variables,
            work,
            nodes: before,
            mut has_improved,
        } = branching;
        let outcome = match work.go_on(nodes) {
            Ok(outcome) => outcome,
            Err(Error::Infeasible) => return self.next_level(),
            Err(_) => return Stage::Over(Solved::GaveUp),
        };
        let done = outcome.stats().nodes_solved;
        self.nodes += done - before;
        if let Some(solution) = outcome.solution() {
            let is_least = solution.status() == SolutionStatus::Optimal;
            has_improved |= self.take(chosen(&self.model, &variables, solution));
            match ask {
                Ask::WholeAny => return Stage::Narrowing,
                _ if is_least => return self.next_level(),
                _ => {}
            }
        }
        if has_improved && done >= NARROW_AGAIN {
            return Stage::Narrowing;
        }
        Stage::Branching(Box::new(Branching {
            ask,
            variables,
            work: Work::Going(outcome),
            nodes: done,
            has_improved,
        }))
    }

    /// Nothing at this level is better than the plan in hand.
    fn next_level(&mut self) -> Stage {
        let (first, last) = self.range;
        let level = self.level.map_or(first, |level| level + 1.0);
        self.level = Some(level);
        self.simplified.left_out.clone_from(&self.left_out);
        match &self.best {
            Some(best) if best.objective <= level * self.cheapest() || level > last => {
                Stage::Over(Solved::Least(best.clone()))
            }
            None if level > last => Stage::Over(Solved::None),
            _ => Stage::Narrowing,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::simplify::simplify;
    use super::super::small::{choices, exclude, keeps, least, sum};
    use super::*;
    use proptest::prelude::*;

    const COLUMNS: usize = 9;

    /// Changes that cost nearly one, demands, and changes that exclude each other, by bits.
    fn model(costs: &[u8], demands: &[(Vec<i8>, i8)], exclusions: &[u16]) -> Model {
        let costs = costs.iter().map(|cost| 1.0 + f64::from(*cost) / 4096.0);
        let mut model = choices(costs);
        for (coefficients, least) in demands {
            let sum = sum(coefficients.iter().map(|number| f64::from(*number)));
            model.at_least(String::new(), Vec::new(), sum, f64::from(*least));
        }
        for group in exclusions {
            exclude(&mut model, u32::from(*group));
        }
        model
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(100))]

        /// The same as trying every set of changes, in pieces of one node.
        #[test]
        fn the_least_is_that_of_all_sets(
            costs in prop::collection::vec(4_u8..80, COLUMNS),
            demands in prop::collection::vec(
                (prop::collection::vec(-2_i8..4, COLUMNS), 1_i8..8), 1..4),
            exclusions in prop::collection::vec(any::<u16>(), 0..4),
        ) {
            let model = model(&costs, &demands, &exclusions);
            let expected = least(&model, |choice| model.rows.iter().all(|row| keeps(row, choice)));
            let found = Levels::new(&model, &simplify(&model), None).map(|mut levels| loop {
                match levels.step(1) {
                    Solved::Going { .. } => {}
                    Solved::Least(chosen) => break Some(chosen.objective),
                    Solved::None => break None,
                    Solved::GaveUp => panic!("gave up"),
                }
            });
            // Without a number of changes in fractions there are no fractions, and no plan.
            prop_assert_eq!(found.flatten(), expected);
        }
    }
}
