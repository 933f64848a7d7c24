//! The solver behind a narrow door: a model goes in, whole numbers come out,
//! in as many pieces of work as the caller likes.
//!
//! The solver is a general one in floating point and its answers are taken as
//! proposals. A solution is checked by the engine before anything is said of
//! it, and "no solution" is believed only when the model of [`elastic`], which gives
//! every demand's rows a priced way out and so always has a solution, cannot
//! do without one.

use super::levels::Levels;
use super::model::Model;
use super::pose::{Ask, BREACH, Posed, Work, chosen, pose};
use super::simplify::{Simplified, simplify};
use microlp::{Error, SolutionStatus, SolveOutcome, Variable};

/// After so many nodes a search by cost alone gives way to one level by level:
/// most weeks are done before, and setting up the other takes as long. The
/// number was found on generated weeks.
const UNAIDED: u64 = 400;

/// How a piece of work ended.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Solved {
    /// The least objective, and the columns that are 1.
    Least(Chosen),
    /// Not done yet: the best so far, and what no solution undercuts.
    Going {
        /// The best so far.
        best: Option<Chosen>,
        /// A lower bound of the objective.
        bound: Option<f64>,
    },
    /// The solver says that there is no solution.
    None,
    /// The solver gave up.
    GaveUp,
}

/// A solution.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Chosen {
    /// Columns that are 1, in order.
    pub columns: Vec<usize>,
    /// The objective.
    pub objective: f64,
}

/// A model on its way to a solution.
#[derive(Debug)]
pub(super) struct Solver {
    model: Model,
    simplified: Simplified,
    /// By column; nothing for one that is left out.
    variables: Vec<Option<Variable>>,
    state: State,
    nodes: u64,
}

#[derive(Debug)]
enum State {
    ByCost(Box<Work>),
    ByLevels(Box<Levels>),
    Over(Solved),
}

impl Solver {
    /// A solver for the rows of a model.
    pub fn new(model: &Model) -> Self {
        let simplified = simplify(model);
        let (variables, state) = match pose(model, &simplified, Ask::Whole) {
            Some(Posed { problem, variables }) => {
                let work = Work::Fresh(problem);
                (variables, State::ByCost(Box::new(work)))
            }
            None => (Vec::new(), State::Over(Solved::None)),
        };
        Self {
            model: model.clone(),
            simplified,
            variables,
            state,
            nodes: 0,
        }
    }

    /// Goes on for so many nodes at most.
    pub fn step(&mut self, nodes: u64) -> Solved {
        let over = State::Over(Solved::GaveUp);
        let answer = match std::mem::replace(&mut self.state, over) {
            State::Over(solved) => {
                self.state = State::Over(solved.clone());
                return solved;
            }
            State::ByLevels(mut levels) => {
                let solved = levels.step(nodes);
                self.state = State::ByLevels(levels);
                return solved;
            }
            State::ByCost(work) => work.go_on(nodes),
        };
        let solved = match answer {
            Ok(outcome) => self.take(outcome),
            Err(Error::Infeasible) => Solved::None,
            Err(_) => Solved::GaveUp,
        };
        if !matches!(solved, Solved::Going { .. }) {
            self.state = State::Over(solved.clone());
        }
        solved
    }

    /// How far the solver has come.
    fn take(&mut self, outcome: SolveOutcome) -> Solved {
        let stats = outcome.stats();
        self.nodes = stats.nodes_solved;
        let solution = outcome.solution();
        let best = solution.map(|solution| Chosen {
            columns: chosen(&self.model, &self.variables, solution),
            objective: solution.objective(),
        });
        if let Some(least) = &best
            && solution.is_some_and(|solution| solution.status() == SolutionStatus::Optimal)
        {
            return Solved::Least(least.clone());
        }
        self.state = match self.levels(best.clone()) {
            Some(levels) => State::ByLevels(Box::new(levels)),
            None => State::ByCost(Box::new(Work::Going(outcome))),
        };
        let bound = stats.best_bound;
        Solved::Going { best, bound }
    }

    /// The search level by level, where it is time for it and changes cost.
    fn levels(&self, best: Option<Chosen>) -> Option<Levels> {
        let mut whole = self.model.columns.iter().filter(|column| column.integer);
        if self.nodes < UNAIDED || whole.any(|column| column.cost <= 0.0) {
            return None;
        }
        Levels::new(&self.model, &self.simplified, best)
    }

    /// Nodes so far.
    pub fn nodes(&self) -> u64 {
        match &self.state {
            State::ByLevels(levels) => self.nodes + levels.nodes(),
            _ => self.nodes,
        }
    }
}

/// The answer to a whole model, for measuring and comparing.
#[derive(Debug, Clone, PartialEq)]
pub struct Answer {
    /// The least objective; nothing where there is no solution, or the solver
    /// gave up.
    pub objective: Option<f64>,
    /// Whether the solver says that there is no solution.
    pub infeasible: bool,
    /// Nodes that the solver went through.
    pub nodes: u64,
}

/// Solves a model to the end.
pub fn solve(model: &Model) -> Answer {
    const PIECE: u64 = UNAIDED;
    let mut solver = Solver::new(model);
    loop {
        let (objective, infeasible) = match solver.step(PIECE) {
            Solved::Least(chosen) => (Some(chosen.objective), false),
            Solved::None => (None, true),
            Solved::GaveUp => (None, false),
            Solved::Going { .. } => continue,
        };
        return Answer {
            objective,
            infeasible,
            nodes: solver.nodes(),
        };
    }
}

/// A model in which every row that is for a demand may be broken at the price
/// of the breach, and nothing else costs anything.
pub(super) fn elastic(model: &Model) -> Model {
    let mut relaxed = model.clone();
    for column in &mut relaxed.columns {
        column.cost = 0.0;
    }
    for at in 0..relaxed.rows.len() {
        if relaxed.rows[at].of.is_empty() {
            continue;
        }
        let name = format!("breach of {}", relaxed.rows[at].name);
        let sides = [
            (relaxed.rows[at].lower.is_some(), 1.0),
            (relaxed.rows[at].upper.is_some(), -1.0),
        ];
        for (_, sign) in sides.into_iter().filter(|(limited, _)| *limited) {
            let slack = relaxed.helper(name.clone(), None);
            relaxed.columns[slack].cost = 1.0;
            relaxed.rows[at].terms.push((slack, sign));
        }
    }
    relaxed
}

/// Whether an elastic model's least breach is one.
pub(super) fn is_breach(objective: f64) -> bool {
    objective > BREACH
}

#[cfg(test)]
mod tests {
    use super::super::small::{choices, sum};
    use super::*;

    /// Binary columns with these costs and rows `Σ coefficients ≥ least`, each
    /// for the demand of its number.
    fn model(costs: &[f64], rows: &[(&[f64], f64)]) -> Model {
        let mut model = choices(costs.iter().copied());
        for (at, (coefficients, least)) in rows.iter().enumerate() {
            let sum = sum(coefficients.iter().copied());
            model.at_least(String::new(), vec![at], sum, *least);
        }
        model
    }

    /// Worked by hand.
    #[test]
    fn small_models_have_their_known_answers() {
        for (costs, rows, least) in [
            (&[1.0, 1.25][..], &[(&[1.0, 1.0][..], 1.0)][..], Some(1.0)),
            (&[1.0, 1.25], &[(&[1.0, 1.0], 2.0)], Some(2.25)),
            (&[1.0, 1.25], &[(&[1.0, 1.0], 2.5)], None),
            // The dearer one alone does what two cheaper ones do.
            (&[1.0, 1.0, 1.5], &[(&[0.5, 0.5, 1.0], 1.0)], Some(1.5)),
            // One row forbids what the other asks.
            (
                &[1.0, 1.0],
                &[(&[1.0, 1.0], 1.5), (&[-1.0, -1.0], -1.0)],
                None,
            ),
            (&[1.0], &[(&[0.0], 1.0)], None),
        ] {
            let answer = solve(&model(costs, rows));
            assert_eq!(answer.infeasible, least.is_none(), "{rows:?}");
            match (answer.objective, least) {
                (Some(found), Some(least)) => assert!((found - least).abs() < 1e-6, "{rows:?}"),
                (found, least) => assert_eq!(found, least, "{rows:?}"),
            }
        }
    }

    /// The breach is what is missing, and nothing where nothing is.
    #[test]
    fn an_elastic_model_tells_the_breach() {
        for (rows, breach) in [
            (&[(&[1.0, 1.0][..], 2.5)][..], 0.5),
            (&[(&[1.0, 1.0], 2.0)], 0.0),
            (&[(&[1.0, 1.0], 1.5), (&[-1.0, -1.0], -1.0)], 0.5),
            (&[(&[0.0, 0.0], 1.0)], 1.0),
        ] {
            let answer = solve(&elastic(&model(&[1.0, 1.0], rows)));
            let found = answer.objective.expect("there is always a way out");
            assert!((found - breach).abs() < 1e-6, "{rows:?}: {found}");
            assert_eq!(is_breach(found), breach > 0.0);
        }
    }

    #[test]
    fn a_solver_in_small_pieces_says_the_same() {
        let coefficients: Vec<f64> = (0..12).map(|at| 0.31 + 0.07 * f64::from(at % 5)).collect();
        let costs: Vec<f64> = (0..12)
            .map(|at| 1.0 + f64::from(at * 7 % 11) / 64.0)
            .collect();
        let model = model(&costs, &[(&coefficients, 2.03)]);
        let whole = solve(&model).objective.expect("a solution");
        let mut solver = Solver::new(&model);
        let pieces = loop {
            match solver.step(1) {
                Solved::Going { .. } => {}
                Solved::Least(chosen) => break chosen.objective,
                other => panic!("{other:?}"),
            }
        };
        assert!((whole - pieces).abs() < 1e-9);
    }
}
