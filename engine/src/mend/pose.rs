//! A simplified model in the form of the solver's crate.

use super::model::{Column, Model};
use super::simplify::Simplified;
use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};

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

/// Whether a column of whole numbers may be chosen in part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Fractions {
    /// It may; each costs one.
    Counted,
    /// It may not.
    Refused,
}

/// Puts a model into the solver's form; nothing where a row without columns
/// cannot be kept.
pub(super) fn pose(model: &Model, simplified: &Simplified, fractions: Fractions) -> Option<Posed> {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let mut variable = |column: &Column| {
        let upper = column.upper.unwrap_or(f64::INFINITY);
        match fractions {
            Fractions::Counted => {
                let cost = if column.integer { 1.0 } else { 0.0 };
                problem.add_var(cost, (column.lower, upper))
            }
            Fractions::Refused if column.integer && column.lower == 0.0 && upper == 1.0 => {
                problem.add_binary_var(column.cost)
            }
            Fractions::Refused => problem.add_var(column.cost, (column.lower, upper)),
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
    /// Demands that so many whole columns are chosen.
    pub fn demand(&mut self, model: &Model, fewest: f64) {
        let columns = model.columns.iter().zip(&self.variables);
        let chosen = columns.filter(|(column, _)| column.integer);
        let terms = chosen.filter_map(|(_, variable)| Some(((*variable)?, 1.0)));
        let terms: Vec<(Variable, f64)> = terms.collect();
        self.problem.add_constraint(terms, ComparisonOp::Ge, fewest);
    }
}

/// How many whole columns any solution chooses at least: the least sum of
/// fractions, rounded up. Nothing where that is no help, or cannot be said.
pub(super) fn fewest_chosen(model: &Model, simplified: &Simplified) -> Option<f64> {
    if model
        .columns
        .iter()
        .all(|column| !column.integer || column.cost <= 0.0)
    {
        return None;
    }
    let posed = pose(model, simplified, Fractions::Counted)?;
    let least = posed.problem.solve().ok()?;
    let fewest = (least.solution()?.objective() - BREACH).ceil();
    (fewest > 0.0).then_some(fewest)
}
