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

/// Puts a model into the solver's form; nothing where a row without columns
/// cannot be kept.
pub(super) fn pose(model: &Model, simplified: &Simplified) -> Option<Posed> {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let mut variable = |column: &Column| {
        let upper = column.upper.unwrap_or(f64::INFINITY);
        let is_choice = column.integer && column.lower == 0.0 && upper == 1.0;
        if is_choice {
            problem.add_binary_var(column.cost)
        } else {
            problem.add_var(column.cost, (column.lower, upper))
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
