//! A simplified model in the form of the solver's crate.

use super::model::{Column, Model};
use super::simplify::Simplified;
use microlp::{
    ComparisonOp, Error, OptimizationDirection, Problem, ResumeOptions, Solution, SolveOptions,
    SolveOutcome, Variable,
};

/// Rows may be broken by so much before we speak of a breach: ten times what
/// the solver allows.
pub(super) const BREACH: f64 = 1e-6;

/// A model in the solver's form.
#[derive(Debug)]
pub(super) struct Posed {
    pub problem: Problem,
    /// By column; nothing for one that is left out.
    pub variables: Vec<Option<Variable>>,
}

/// What is asked of the whole columns.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Ask {
    /// The least cost, in whole numbers.
    Whole,
    /// Any, in whole numbers: nothing costs.
    WholeAny,
    /// The least cost, where a column may be chosen in part.
    Part,
    /// The fewest, where a column may be chosen in part.
    PartFewest,
    /// The most, where a column may be chosen in part.
    PartMost,
}

impl Ask {
    fn cost(self, column: &Column) -> f64 {
        match self {
            Self::Whole | Self::Part => column.cost,
            Self::WholeAny => 0.0,
            _ if !column.integer => 0.0,
            Self::PartFewest => 1.0,
            Self::PartMost => -1.0,
        }
    }
}

/// Puts a model into the solver's form; nothing where a row without columns
/// cannot be kept.
pub(super) fn pose(model: &Model, simplified: &Simplified, ask: Ask) -> Option<Posed> {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let mut variable = |column: &Column| {
        let upper = column.upper.unwrap_or(f64::INFINITY);
        let is_choice = column.integer && column.lower == 0.0 && upper == 1.0;
        if is_choice && matches!(ask, Ask::Whole | Ask::WholeAny) {
            problem.add_binary_var(ask.cost(column))
        } else {
            problem.add_var(ask.cost(column), (column.lower, upper))
        }
    };
    let variables: Vec<Option<Variable>> = model
        .columns
        .iter()
        .zip(&simplified.left_out)
        .map(|(column, is_left_out)| (!is_left_out).then(|| variable(column)))
        .collect();
    for columns in &simplified.one_of {
        let terms = columns.iter().filter_map(|at| Some((variables[*at]?, 1.0)));
        problem.add_constraint(terms, ComparisonOp::Le, 1.0);
    }
    for row in simplified.rows.iter().map(|at| &model.rows[*at]) {
        let terms: Vec<(Variable, f64)> = row
            .terms
            .iter()
            .filter_map(|(at, by)| Some((variables[*at]?, *by)))
            .collect();
        let sides = [
            (row.lower, ComparisonOp::Ge, 1.0),
            (row.upper, ComparisonOp::Le, -1.0),
        ];
        for (limit, side, sign) in sides {
            match limit {
                Some(limit) if terms.is_empty() && sign * limit > BREACH => return None,
                Some(limit) if !terms.is_empty() => {
                    problem.add_constraint(terms.clone(), side, limit);
                }
                _ => {}
            }
        }
    }
    Some(Posed { problem, variables })
}

impl Posed {
    /// Demands that just so many whole columns are chosen.
    pub fn choose(&mut self, model: &Model, how_many: f64) {
        let terms = self.whole(model, |_| 1.0);
        self.problem
            .add_constraint(terms, ComparisonOp::Eq, how_many);
    }

    /// Demands that all costs no more.
    pub fn cost_at_most(&mut self, model: &Model, most: f64) {
        let terms = self.whole(model, |column| column.cost);
        self.problem.add_constraint(terms, ComparisonOp::Le, most);
    }

    fn whole(&self, model: &Model, by: impl Fn(&Column) -> f64) -> Vec<(Variable, f64)> {
        let columns = model.columns.iter().zip(&self.variables);
        columns
            .filter(|(column, _)| column.integer)
            .filter_map(|(column, variable)| Some(((*variable)?, by(column))))
            .collect()
    }
}

/// The whole columns that a solution chooses, in order.
pub(super) fn chosen(
    model: &Model,
    variables: &[Option<Variable>],
    solution: &Solution,
) -> Vec<usize> {
    let value = |at: usize| Some(solution.var_value(variables[at]?));
    let is_chosen =
        |at: &usize| model.columns[*at].integer && value(*at).is_some_and(|value| value > 0.5);
    (0..variables.len()).filter(is_chosen).collect()
}

/// A search in whole numbers, from one piece of work to the next.
#[derive(Debug)]
pub(super) enum Work {
    Fresh(Problem),
    Going(SolveOutcome),
}

impl Work {
    /// Goes on for so many nodes at most.
    pub fn go_on(self, nodes: u64) -> Result<SolveOutcome, Error> {
        match self {
            Self::Fresh(problem) => {
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
            Self::Going(outcome) => {
                let mut options = ResumeOptions::default();
                options.node_limit = Some(nodes);
                outcome.resume_with(options)
            }
        }
    }
}

/// How many whole columns any solution chooses, at least and at most: the sums
/// of fractions, rounded inwards. Nothing where that cannot be said.
pub(super) fn range_of_chosen(model: &Model, simplified: &Simplified) -> Option<(f64, f64)> {
    let best = |ask| {
        let posed = pose(model, simplified, ask)?;
        let outcome = posed.problem.solve().ok()?;
        Some(outcome.solution()?.objective())
    };
    let fewest = (best(Ask::PartFewest)? - BREACH).ceil();
    let most = (-best(Ask::PartMost)? + BREACH).floor();
    Some((fewest.max(0.0), most))
}
