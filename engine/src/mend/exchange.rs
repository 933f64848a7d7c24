//! One step of the dual simplex method: a quantity goes out to its bound, and
//! another comes in.

use super::dictionary::{Breach, Dictionary, FEASIBLE, Place};

/// Prices that are nearer than this are one.
const NEAR: f64 = 1e-9;

impl Dictionary {
    /// The place of the quantity that comes inside for one that goes out: of
    /// those that mend the breach, the cheapest that not all before it mend by
    /// going to their other bound, which they do.
    pub(super) fn entering(&mut self, breach: Breach, pivot: f64) -> Option<usize> {
        let sign = if breach.above { -1.0 } else { 1.0 };
        let mut mending: Vec<(f64, usize)> = Vec::new();
        for (at, moves) in self.moves.iter().enumerate() {
            let toward = if self.high[at] { -sign } else { sign };
            let (lower, upper) = self.limits[at];
            if toward * moves > pivot && lower < upper {
                mending.push((self.price[at].abs() / moves.abs(), at));
            }
        }
        mending.sort_unstable_by(|one, other| one.0.total_cmp(&other.0));
        let mut left = breach.by;
        let mends = |at: &usize| {
            let (lower, upper) = self.limits[*at];
            self.moves[*at].abs() * (upper - lower)
        };
        let stops = |(_, at): &(f64, usize)| {
            left -= mends(at);
            left <= FEASIBLE
        };
        let passed = mending.iter().position(stops)?;
        for (_, at) in &mending[..passed] {
            self.high[*at] = !self.high[*at];
        }
        self.largest(&mending[passed..])
    }

    /// Of quantities that are as cheap as the first, as nearly as counts, the
    /// one that moves most: the less is lost by dividing.
    fn largest(&self, mending: &[(f64, usize)]) -> Option<usize> {
        let (first, _) = mending.first()?;
        let near = |(cheap, at): &&(f64, usize)| cheap - first <= NEAR / self.moves[*at].abs();
        let near = mending.iter().take_while(near);
        let by_moves = near.map(|(_, at)| (self.moves[*at].abs(), *at));
        by_moves
            .max_by(|one, other| one.0.total_cmp(&other.0))
            .map(|(_, at)| at)
    }

    /// Puts a quantity outside at its bound, in the place of another.
    pub(super) fn exchange(&mut self, breach: Breach, at: usize) {
        let width = self.outside.len();
        let entering = self.outside[at];
        let by = 1.0 / self.moves[at];
        for value in &mut self.moves {
            *value *= -by;
        }
        self.moves[at] = by;
        let moves = &self.moves;
        let put_in = |row: &mut [f64]| {
            let share = row[at];
            if share != 0.0 {
                row[at] = 0.0;
                for (value, by) in row.iter_mut().zip(moves) {
                    *value += share * by;
                }
            }
        };
        self.table.chunks_exact_mut(width.max(1)).for_each(put_in);
        put_in(&mut self.price);
        self.outside[at] = breach.quantity;
        self.limits[at] = self.bounds[breach.quantity];
        self.high[at] = breach.above;
        let own = match self.place[breach.quantity] {
            Place::Inside(row) => Some(row),
            _ => None,
        };
        self.place[breach.quantity] = Place::Outside(at);
        self.come_in(entering, own);
        self.settle_signs();
        self.exchanges += 1;
    }

    /// Gives a quantity that comes inside the table's row `own`, which is free.
    fn come_in(&mut self, entering: usize, own: Option<usize>) {
        let width = self.outside.len();
        if entering >= width {
            self.place[entering] = Place::Sum;
            if let Some(row) = own {
                self.free(row);
            }
            return;
        }
        let row = own.unwrap_or(self.inside.len());
        if own.is_none() {
            self.inside.push(entering);
            self.table.extend_from_slice(&self.moves);
        } else {
            self.inside[row] = entering;
            self.table[row * width..][..width].copy_from_slice(&self.moves);
        }
        self.place[entering] = Place::Inside(row);
    }

    /// Frees a row of the table.
    fn free(&mut self, row: usize) {
        let width = self.outside.len();
        let last = self.inside.len() - 1;
        self.table.copy_within(last * width.., row * width);
        self.table.truncate(last * width);
        self.inside.swap_remove(row);
        if row < last {
            self.place[self.inside[row]] = Place::Inside(row);
        }
    }

    /// Keeps prices from asking for the other bound by an error of the
    /// arithmetic.
    fn settle_signs(&mut self) {
        let all = self.price.iter_mut().zip(&self.high).zip(&self.limits);
        for ((price, high), (lower, upper)) in all {
            let is_wrong = if *high { *price > 0.0 } else { *price < 0.0 };
            if is_wrong && lower < upper {
                *price = 0.0;
            }
        }
    }
}
