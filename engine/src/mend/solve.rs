//! The solver behind a narrow door: a model goes in, whole numbers come out,
//! in as many pieces of work as the caller likes.
//!
//! The search is [`Tree`]. A general solver takes over where that one gives up,
//! and gives a second opinion: both are in floating point, and their answers
//! are taken as proposals. A solution is checked by the engine before anything
//! is said of it, and "no solution" is believed only when the model of
//! [`elastic`], which gives every demand's rows a priced way out and so always
//! has a solution, cannot do without one, says the general solver.

use super::model::{Model, Row};
use super::pose::{BREACH, Posed, Work, chosen, pose};
use super::simplify::{Simplified, simplify};
use super::tree::Tree;
use microlp::{Error, SolutionStatus, SolveOutcome, Variable};

/// How a piece of work ended.
#[derive(Debug, Clone, PartialEq)]
pub(super) enum Solved {
    /// The least objective, and the columns that are 1.
    Least(Chosen),
    /// Better than the plan in hand: it is to be accepted or refused.
    Proposed(Chosen),
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
    state: State,
    /// Nodes before the state.
    nodes: u64,
}

#[derive(Debug)]
enum State {
    Tree(Box<Tree>),
    General(Box<General>),
    Over(Solved),
}

/// The general solver at work.
#[derive(Debug)]
struct General {
    work: Work,
    /// By column; nothing for one that is left out.
    variables: Vec<Option<Variable>>,
    nodes: u64,
}

impl Solver {
    /// A solver for the rows of a model.
    pub fn new(model: &Model) -> Self {
        let simplified = simplify(model);
        Self {
            state: match Tree::new(model, &simplified) {
                Some(tree) => State::Tree(Box::new(tree)),
                None => general(model, &simplified),
            },
            model: model.clone(),
            nodes: 0,
        }
    }

    /// The general solver alone, for a second opinion.
    pub fn general(model: &Model) -> Self {
        Self {
            state: general(model, &simplify(model)),
            model: model.clone(),
            nodes: 0,
        }
    }

    /// Goes on for so many nodes at most.
    pub fn step(&mut self, nodes: u64) -> Solved {
        let over = State::Over(Solved::GaveUp);
        match std::mem::replace(&mut self.state, over) {
            State::Over(solved) => {
                self.state = State::Over(solved.clone());
                solved
            }
            State::Tree(mut tree) => match tree.step(nodes) {
                Solved::GaveUp => {
                    self.nodes += tree.nodes();
                    self.state = general(&self.model, &simplify(&self.model));
                    Solved::Going {
                        best: None,
                        bound: None,
                    }
                }
                solved => {
                    self.state = State::Tree(tree);
                    solved
                }
            },
            State::General(general) => self.go_on(*general, nodes),
        }
    }

    fn go_on(&mut self, general: General, nodes: u64) -> Solved {
        let solved = match general.work.go_on(nodes) {
            Ok(outcome) => self.look(outcome, general.variables),
            Err(Error::Infeasible) => Solved::None,
            Err(_) => Solved::GaveUp,
        };
        if !matches!(solved, Solved::Going { .. }) {
            self.state = State::Over(solved.clone());
        }
        solved
    }

    /// How far the general solver has come.
    fn look(&mut self, outcome: SolveOutcome, variables: Vec<Option<Variable>>) -> Solved {
        let stats = outcome.stats();
        let solution = outcome.solution();
        let best = solution.map(|solution| Chosen {
            columns: chosen(&self.model, &variables, solution),
            objective: solution.objective(),
        });
        if let Some(least) = &best
            && solution.is_some_and(|solution| solution.status() == SolutionStatus::Optimal)
        {
            return Solved::Least(least.clone());
        }
        self.state = State::General(Box::new(General {
            work: Work::Going(outcome),
            variables,
            nodes: stats.nodes_solved,
        }));
        let bound = stats.best_bound;
        Solved::Going { best, bound }
    }

    /// Takes the plan that was proposed.
    pub fn accept(&mut self) {
        if let State::Tree(tree) = &mut self.state {
            tree.accept();
        }
    }

    /// Cuts off the plan that was proposed, by these rows.
    pub fn refuse(&mut self, cuts: &[Row]) {
        self.model.rows.extend_from_slice(cuts);
        if let State::Tree(tree) = &mut self.state {
            tree.refuse(cuts);
        }
    }

    /// Nodes so far.
    pub fn nodes(&self) -> u64 {
        let own = match &self.state {
            State::Tree(tree) => tree.nodes(),
            State::General(general) => general.nodes,
            State::Over(_) => 0,
        };
        self.nodes + own
    }
}

/// The general solver before its work.
fn general(model: &Model, simplified: &Simplified) -> State {
    match pose(model, simplified) {
        Some(Posed { problem, variables }) => State::General(Box::new(General {
            work: Work::Fresh(problem),
            variables,
            nodes: 0,
        })),
        None => State::Over(Solved::None),
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
    const PIECE: u64 = 400;
    let mut solver = Solver::new(model);
    loop {
        let (objective, infeasible) = match solver.step(PIECE) {
            Solved::Least(chosen) => (Some(chosen.objective), false),
            Solved::None => (None, true),
            Solved::GaveUp => (None, false),
            Solved::Proposed(_) => {
                solver.accept();
                continue;
            }
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
    use proptest::prelude::*;

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
                Solved::Proposed(_) => solver.accept(),
                Solved::Least(chosen) => break chosen.objective,
                other => panic!("{other:?}"),
            }
        };
        assert!((whole - pieces).abs() < 1e-9);
    }

    /// Columns in groups that exclude each other, more than the likely are; what
    /// each brings to some demands, and how much these ask.
    fn many() -> impl Strategy<Value = Model> {
        const COLUMNS: usize = 120;
        const GROUP: usize = 4;
        let demand = (prop::collection::vec(0_u8..40, COLUMNS), 10_u8..90);
        (
            prop::collection::vec(4_u8..100, COLUMNS),
            prop::collection::vec(demand, 1..4),
        )
            .prop_map(|(costs, demands)| {
                let costs = costs.iter().map(|cost| 1.0 + f64::from(*cost) / 4096.0);
                let mut model = choices(costs);
                for group in 0..COLUMNS / GROUP {
                    let is_in = |at: usize| f64::from(u8::from(at / GROUP == group));
                    let one = sum((0..COLUMNS).map(is_in));
                    model.at_most(String::new(), Vec::new(), one, 1.0);
                }
                for (brings, asks) in demands {
                    let brings = sum(brings.iter().map(|number| f64::from(*number) / 16.0));
                    model.at_least(String::new(), Vec::new(), brings, f64::from(asks) / 16.0);
                }
                model
            })
    }

    /// The least objective, by the general solver alone.
    fn by_general(model: &Model) -> Option<f64> {
        let mut solver = Solver::general(model);
        loop {
            match solver.step(400) {
                Solved::Least(chosen) => break Some(chosen.objective),
                Solved::None => break None,
                Solved::Going { .. } => {}
                other => panic!("{other:?}"),
            }
        }
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(40))]

        /// Two programs that share nothing but the model find the same.
        #[test]
        fn the_general_solver_says_the_same(model in many()) {
            let answer = solve(&model);
            let general = by_general(&model);
            prop_assert_eq!(answer.infeasible, general.is_none());
            let apart = answer.objective.zip(general).map(|(own, other)| (own - other).abs());
            prop_assert!(apart.is_none_or(|apart| apart < 1e-6), "{answer:?}, {general:?}");
        }
    }
}
