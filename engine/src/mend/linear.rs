//! A simplified model as a sparse matrix, by rows and by columns.

use super::model::{Column, Model, Row};
use super::simplify::Simplified;

/// The least and the most that a quantity may be.
pub(super) type Bounds = (f64, f64);

/// Columns and rows. A *quantity* is a column, or the sum of a row: first all
/// columns are numbered, then all rows.
#[derive(Debug, Clone, Default)]
pub(super) struct Linear {
    /// By column.
    pub costs: Vec<f64>,
    /// By column: whether only whole numbers are meant.
    pub whole: Vec<bool>,
    /// By quantity.
    pub bounds: Vec<Bounds>,
    /// By row: columns and coefficients.
    pub rows: Vec<Vec<(usize, f64)>>,
    /// By column: rows and coefficients.
    pub columns: Vec<Vec<(usize, f64)>>,
    /// By quantity: what a breach of its bounds is measured in, squared.
    pub weights: Vec<f64>,
    /// By column: the column of the model.
    pub of_model: Vec<usize>,
    /// The quantity that counts the whole columns.
    pub count: usize,
}

impl Linear {
    /// What is left of a model.
    pub fn new(model: &Model, simplified: &Simplified) -> Self {
        let mut linear = Self::default();
        let is_left = |at: &usize| !simplified.left_out[*at];
        for at in (0..model.columns.len()).filter(is_left) {
            linear.add_column(at, &model.columns[at]);
        }
        let whole = (0..linear.width()).filter(|at| linear.whole[*at]);
        let terms = whole.map(|at| (at, 1.0)).collect();
        linear.count = linear.bounds.len();
        linear.add_row(terms, (0.0, f64::INFINITY));
        for group in &simplified.one_of {
            let terms = group
                .iter()
                .filter_map(|at| Some((linear.number(*at)?, 1.0)));
            let terms: Vec<(usize, f64)> = terms.collect();
            if terms.len() > 1 {
                linear.add_row(terms, (f64::NEG_INFINITY, 1.0));
            }
        }
        for row in &simplified.rows {
            linear.add(&model.rows[*row]);
        }
        linear
    }

    fn add_column(&mut self, at: usize, column: &Column) {
        self.of_model.push(at);
        self.costs.push(column.cost);
        self.whole.push(column.integer);
        let upper = column.upper.unwrap_or(f64::INFINITY);
        self.bounds.push((column.lower, upper));
        self.columns.push(Vec::new());
        self.weights.push(1.0);
    }

    /// Adds a row of the model, without the columns that are left out.
    pub fn add(&mut self, row: &Row) {
        let terms = row.terms.iter();
        let terms = terms.filter_map(|(at, by)| Some((self.number(*at)?, *by)));
        let terms = terms.collect();
        let lower = row.lower.unwrap_or(f64::NEG_INFINITY);
        self.add_row(terms, (lower, row.upper.unwrap_or(f64::INFINITY)));
    }

    fn add_row(&mut self, terms: Vec<(usize, f64)>, bounds: Bounds) {
        for (column, by) in &terms {
            self.columns[*column].push((self.rows.len(), *by));
        }
        let squares = terms.iter().map(|(_, by)| by * by);
        self.weights
            .push(squares.sum::<f64>().max(f64::MIN_POSITIVE));
        self.rows.push(terms);
        self.bounds.push(bounds);
    }

    /// The number of a column of the model, if it is left.
    fn number(&self, of_model: usize) -> Option<usize> {
        self.of_model.binary_search(&of_model).ok()
    }

    /// How many columns there are, and the number of the first row's quantity.
    pub fn width(&self) -> usize {
        self.costs.len()
    }

    /// The sums of all rows for some values of the columns.
    pub fn sums(&self, values: &[f64], sums: &mut [f64]) {
        sums.fill(0.0);
        for (value, terms) in values.iter().zip(&self.columns) {
            if *value != 0.0 {
                for (row, by) in terms {
                    sums[*row] += by * value;
                }
            }
        }
    }
}
