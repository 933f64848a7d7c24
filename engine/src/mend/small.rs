//! Small models of which tests try every choice of columns.

use super::model::{Column, Model, Row, Sum};

/// A model of columns that are chosen or not, at these costs, without rows.
pub(super) fn choices(costs: impl IntoIterator<Item = f64>) -> Model {
    let column = |cost| Column {
        name: String::new(),
        cost,
        lower: 0.0,
        upper: Some(1.0),
        integer: true,
    };
    Model {
        columns: costs.into_iter().map(column).collect(),
        rows: Vec::new(),
    }
}

/// These coefficients of the first columns.
pub(super) fn sum(coefficients: impl IntoIterator<Item = f64>) -> Sum {
    let mut sum = Sum::default();
    for (column, coefficient) in coefficients.into_iter().enumerate() {
        sum.add(column, coefficient);
    }
    sum
}

/// Lets at most one column of a group be chosen; each bit is a column.
pub(super) fn exclude(model: &mut Model, group: u32) {
    let bits = (0..model.columns.len()).map(|at| f64::from(group >> at & 1));
    model.at_most(String::new(), Vec::new(), sum(bits), 1.0);
}

/// Whether a choice keeps a row.
pub(super) fn keeps(row: &Row, choice: &[f64]) -> bool {
    let sum: f64 = row.terms.iter().map(|(at, by)| choice[*at] * by).sum();
    row.lower.is_none_or(|lower| sum >= lower) && row.upper.is_none_or(|upper| sum <= upper)
}

/// The least cost of all choices that `allows`.
pub(super) fn least(model: &Model, allows: impl Fn(&[f64]) -> bool) -> Option<f64> {
    let columns = model.columns.len();
    let choices = (0_u32..1 << columns).map(|bits| -> Vec<f64> {
        let chosen = |column| f64::from(bits >> column & 1);
        (0..columns).map(chosen).collect()
    });
    let cost = |choice: Vec<f64>| -> f64 {
        let columns = model.columns.iter().zip(choice);
        columns.map(|(column, value)| column.cost * value).sum()
    };
    let allowed = choices.filter(|choice| allows(choice));
    allowed.map(cost).min_by(f64::total_cmp)
}
