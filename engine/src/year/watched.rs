//! What the limits of a service look at, side by side: after an edit these few
//! sums are made again without going back to the totals of every recipe that is
//! served, which lie far apart in a large book.

use super::values::LANE;

/// The watched columns of a service, choice by choice.
#[derive(Debug)]
pub(super) struct Watched {
    columns: Vec<usize>,
    choices: usize,
    /// By column and choice: batches times total.
    shares: Vec<f64>,
    /// By column and choice: whether something is missing from it.
    lost: Vec<bool>,
}

impl Watched {
    /// Watches these columns, which may be named twice, of so many choices.
    pub fn new(columns: impl Iterator<Item = usize>, choices: usize) -> Self {
        let mut columns: Vec<usize> = columns.collect();
        columns.sort_unstable();
        columns.dedup();
        Self {
            shares: vec![0.0; columns.len() * choices],
            lost: vec![false; columns.len() * choices],
            columns,
            choices,
        }
    }

    /// Notes what a choice brings: so many batches of these totals.
    pub fn note(&mut self, choice: usize, batches: f64, (totals, lost): (&[[f64; LANE]], &[u16])) {
        for (at, column) in self.columns.iter().enumerate() {
            let (lane, place) = (column / LANE, column % LANE);
            let at = at * self.choices + choice;
            self.shares[at] = batches * totals[lane][place];
            self.lost[at] = lost[lane] >> place & 1 == 1;
        }
    }

    /// A column's sum, and whether something is missing from it; nothing for a
    /// column that is not watched.
    pub fn sum(&self, column: usize) -> Option<(f64, bool)> {
        let at = self.columns.binary_search(&column).ok()? * self.choices;
        let range = at..at + self.choices;
        // In the order of the choices, as the averages are added up: the bounds of errors are one.
        let sum = self.shares[range.clone()].iter().sum();
        Some((sum, self.lost[range].contains(&true)))
    }
}
