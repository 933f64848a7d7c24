//! A model in plain columns and rows, for our solver and for any other.

use serde::Serialize;

/// Costs are whole numbers of so many parts of a change, which floats hold
/// exactly.
pub(super) const UNITS: f64 = 4096.0;

/// A column: one candidate change (a whole number, 0 or 1), or a helper.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Column {
    /// Name.
    pub name: String,
    /// What one of it costs in the objective; a multiple of 2⁻¹².
    pub cost: f64,
    /// The least value.
    pub lower: f64,
    /// The largest value; open where there is none.
    pub upper: Option<f64>,
    /// Whether only whole numbers are meant.
    pub integer: bool,
}

/// A row: `lower ≤ Σ coefficient × column ≤ upper`.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Row {
    /// Name.
    pub name: String,
    /// The least value; open where there is none.
    pub lower: Option<f64>,
    /// The largest value; open where there is none.
    pub upper: Option<f64>,
    /// Index of a column, and its coefficient. No column comes twice.
    pub terms: Vec<(usize, f64)>,
    /// The demands that the row is for: it binds only a plan that owes all of
    /// them. A row for none always binds.
    #[serde(skip)]
    pub(super) of: Vec<usize>,
}

/// What is minimised: `Σ cost × column` within all rows. Coefficients are
/// scaled so that limits are about 1.
#[derive(Debug, Clone, Default, PartialEq, Serialize)]
pub struct Model {
    /// Columns; candidate changes first, in the order of the search.
    pub columns: Vec<Column>,
    /// Rows.
    pub rows: Vec<Row>,
}

impl Model {
    /// Adds a helper that takes any value from zero, and gives its index.
    pub(super) fn helper(&mut self, name: String, upper: Option<f64>) -> usize {
        self.columns.push(Column {
            name,
            cost: 0.0,
            lower: 0.0,
            upper,
            integer: false,
        });
        self.columns.len() - 1
    }

    /// Adds `expression ≥ least`.
    pub(super) fn at_least(&mut self, name: String, of: Vec<usize>, sum: Sum, least: f64) {
        self.rows.push(Row {
            name,
            lower: Some(least - sum.constant),
            upper: None,
            terms: sum.into_terms(),
            of,
        });
    }

    /// Adds `expression ≤ most`.
    pub(super) fn at_most(&mut self, name: String, of: Vec<usize>, sum: Sum, most: f64) {
        self.rows.push(Row {
            name,
            lower: None,
            upper: Some(most - sum.constant),
            terms: sum.into_terms(),
            of,
        });
    }

    /// The rows that bind a plan which owes only the demands that `owed` says.
    pub(super) fn binding(&self, owed: impl Fn(usize) -> bool) -> Self {
        let binds = |row: &&Row| row.of.iter().all(|demand| owed(*demand));
        Self {
            columns: self.columns.clone(),
            rows: self.rows.iter().filter(binds).cloned().collect(),
        }
    }
}

/// A linear expression.
#[derive(Debug, Clone, Default, PartialEq)]
pub(super) struct Sum {
    /// What does not depend on any column.
    pub constant: f64,
    terms: Vec<(usize, f64)>,
}

impl Sum {
    /// A number.
    pub fn of(constant: f64) -> Self {
        Self {
            constant,
            terms: Vec::new(),
        }
    }

    /// So much of a column.
    pub fn add(&mut self, column: usize, coefficient: f64) {
        self.terms.push((column, coefficient));
    }

    /// So many times another expression.
    pub fn add_times(&mut self, times: f64, other: &Self) {
        self.constant += times * other.constant;
        let terms = other.terms.iter();
        self.terms
            .extend(terms.map(|(column, coefficient)| (*column, times * coefficient)));
    }

    /// Whether no column has a say in it.
    pub fn is_constant(&self) -> bool {
        self.terms
            .iter()
            .all(|(_, coefficient)| *coefficient == 0.0)
    }

    /// Its value with these columns.
    #[cfg(test)]
    pub fn at(&self, value: impl Fn(usize) -> f64) -> f64 {
        let terms = self.terms.iter();
        let terms = terms.map(|(column, coefficient)| coefficient * value(*column));
        self.constant + terms.sum::<f64>()
    }

    /// Coefficients, each column once; what is noise of the arithmetic is left
    /// out.
    fn into_terms(mut self) -> Vec<(usize, f64)> {
        const NOISE: f64 = 1e-9;
        self.terms.sort_by_key(|(column, _)| *column);
        let mut terms: Vec<(usize, f64)> = Vec::new();
        for (column, coefficient) in self.terms {
            match terms.last_mut() {
                Some((last, sum)) if *last == column => *sum += coefficient,
                _ => terms.push((column, coefficient)),
            }
        }
        terms.retain(|(_, coefficient)| coefficient.abs() > NOISE);
        terms
    }
}
