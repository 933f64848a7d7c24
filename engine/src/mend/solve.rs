//! The solver behind a narrow door: a model goes in, whole numbers come out,
//! in as many pieces of work as the caller likes.
//!
//! The solver is a general one in floating point and its answers are taken as
//! proposals. A solution is checked by the engine before anything is said of
//! it, and "no solution" is believed only when the model of [`elastic`], which gives
//! every demand's rows a priced way out and so always has a solution, cannot
//! do without one.

use super::model::Model;
use microlp::{
    ComparisonOp, Error, OptimizationDirection, Problem, ResumeOptions, SolutionStatus,
    SolveOptions, SolveOutcome, Variable,
};

/// Rows may be broken by so much before we speak of a breach: ten times what
/// the solver allows.
const BREACH: f64 = 1e-6;

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
    variables: Vec<Variable>,
    integer: Vec<bool>,
    state: State,
    nodes: u64,
}

#[derive(Debug)]
enum State {
    Fresh(Box<Problem>),
    Going(Box<SolveOutcome>),
    Over(Solved),
}

impl Solver {
    /// A solver for the rows of a model.
    pub fn new(model: &Model) -> Self {
        let mut problem = Problem::new(OptimizationDirection::Minimize);
        let variables: Vec<Variable> = model
            .columns
            .iter()
            .map(|column| {
                let upper = column.upper.unwrap_or(f64::INFINITY);
                if column.integer && column.lower == 0.0 && upper == 1.0 {
                    problem.add_binary_var(column.cost)
                } else {
                    problem.add_var(column.cost, (column.lower, upper))
                }
            })
            .collect();
        let mut impossible = false;
        for row in &model.rows {
            if row.terms.is_empty() {
                let within = |limit: Option<f64>, sign: f64| {
                    limit.is_none_or(|limit| sign * limit <= BREACH)
                };
                impossible |= !within(row.lower, 1.0) || !within(row.upper, -1.0);
                continue;
            }
            let terms = || row.terms.iter().map(|(at, by)| (variables[*at], *by));
            if let Some(lower) = row.lower {
                problem.add_constraint(terms(), ComparisonOp::Ge, lower);
            }
            if let Some(upper) = row.upper {
                problem.add_constraint(terms(), ComparisonOp::Le, upper);
            }
        }
        Self {
            variables,
            integer: model.columns.iter().map(|column| column.integer).collect(),
            state: if impossible {
                State::Over(Solved::None)
            } else {
                State::Fresh(Box::new(problem))
            },
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
            State::Fresh(problem) => {
                let mut options = SolveOptions::default();
                options.node_limit = Some(nodes);
                match problem.solve_with(options.clone()) {
                    // A numerical failure may be the simplifier's: once more without it.
                    Err(Error::InternalError(_)) => {
                        options.presolve = false;
                        problem.solve_with(options)
                    }
                    answer => answer,
                }
            }
            State::Going(outcome) => {
                let mut options = ResumeOptions::default();
                options.node_limit = Some(nodes);
                outcome.resume_with(options)
            }
        };
        let outcome = match answer {
            Ok(outcome) => outcome,
            Err(error) => {
                let solved = match error {
                    Error::Infeasible => Solved::None,
                    _ => Solved::GaveUp,
                };
                self.state = State::Over(solved.clone());
                return solved;
            }
        };
        let stats = outcome.stats();
        self.nodes = stats.nodes_solved;
        let best = outcome.solution().map(|solution| Chosen {
            columns: (0..self.variables.len())
                .filter(|at| self.integer[*at] && solution.var_value(self.variables[*at]) > 0.5)
                .collect(),
            objective: solution.objective(),
        });
        let optimal = outcome
            .solution()
            .is_some_and(|solution| solution.status() == SolutionStatus::Optimal);
        match best {
            Some(best) if optimal => {
                let solved = Solved::Least(best);
                self.state = State::Over(solved.clone());
                solved
            }
            best => {
                self.state = State::Going(Box::new(outcome));
                Solved::Going {
                    best,
                    bound: stats.best_bound,
                }
            }
        }
    }

    /// Nodes so far.
    pub fn nodes(&self) -> u64 {
        self.nodes
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
    const PIECE: u64 = 1_000;
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
    use super::super::model::{Column, Sum};
    use super::*;

    /// Binary columns with these costs and rows `Σ coefficients ≥ least`, each
    /// for the demand of its number.
    fn model(costs: &[f64], rows: &[(&[f64], f64)]) -> Model {
        let column = |cost: &f64| Column {
            name: String::new(),
            cost: *cost,
            lower: 0.0,
            upper: Some(1.0),
            integer: true,
        };
        let mut model = Model {
            columns: costs.iter().map(column).collect(),
            rows: Vec::new(),
        };
        for (at, (coefficients, least)) in rows.iter().enumerate() {
            let mut sum = Sum::default();
            for (column, coefficient) in coefficients.iter().enumerate() {
                sum.add(column, *coefficient);
            }
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
