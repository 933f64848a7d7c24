//! Linear programs within bounds, by the dual simplex method with long steps.
//!
//! As many quantities as there are columns are *outside*: each stands at one of
//! its bounds, and all others follow from them. Of these, only columns have a
//! row in the table. The sum of a row that is within its bounds costs nothing
//! but its evaluation, and few rows bind a plan of few changes: the table stays
//! a tenth of the matrix.
//!
//! No bound is ever believed for what the table says: [`super::proof`] proves it
//! from the matrix. So errors of the arithmetic, and costs that are moved a
//! little to break ties, can make the search longer but not wrong.

use super::linear::{Bounds, Linear};

/// A quantity may be out of its bounds by so much.
pub(super) const FEASIBLE: f64 = 1e-9;

/// How near to a whole number a value is one.
const WHOLE: f64 = 1e-9;

/// No smaller number is divided by where a larger one will do …
const PIVOT: f64 = 1e-5;

/// … and no smaller one at all.
const LEAST_PIVOT: f64 = 1e-9;

/// So many quantities out of their bounds are looked at closer.
const FOLLOWED: usize = 4;

/// Costs are moved by so much at most, to break ties …
const TIE: f64 = 1e-6;

/// … and a solution, of some changes, counts as dear when it is so by this.
const TIES: f64 = 1e-5;

/// What follows from the quantities outside misses a bound that it was set to
/// by no more than this, or the table is made anew.
const DRIFT: f64 = 1e-9;

/// How a linear program ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Ended {
    /// The least cost is found.
    Least,
    /// It costs at least as much as was asked.
    TooDear,
    /// A quantity cannot be brought within its bounds.
    Impossible,
    /// It takes longer than was asked, or than makes sense.
    Open,
}

#[derive(Debug, Clone, Copy)]
pub(super) enum Place {
    Outside(usize),
    /// A row of the table, for a column.
    Inside(usize),
    /// The sum of a row.
    Sum,
}

/// Which quantities are outside, and what follows.
#[derive(Debug, Clone)]
pub(super) struct Dictionary {
    /// By quantity.
    pub(super) bounds: Vec<Bounds>,
    pub(super) place: Vec<Place>,
    /// By place outside: the quantity, its bounds, whether it is at its upper bound, and
    /// what one more of it costs.
    pub(super) outside: Vec<usize>,
    pub(super) limits: Vec<Bounds>,
    pub(super) high: Vec<bool>,
    pub(super) price: Vec<f64>,
    /// By row of the table: the column, and how it moves with each outside.
    pub(super) inside: Vec<usize>,
    pub(super) table: Vec<f64>,
    /// By column, and by row.
    pub values: Vec<f64>,
    sums: Vec<f64>,
    /// How the quantity that was last chosen moves with each outside.
    pub(super) moves: Vec<f64>,
    last: Breach,
    /// Costs, moved to break ties.
    costs: Vec<f64>,
    /// Exchanges so far.
    pub exchanges: u64,
}

/// A quantity to be brought within its bounds.
#[derive(Debug, Clone, Copy)]
pub(super) struct Breach {
    pub quantity: usize,
    /// Whether it is above its upper bound.
    pub above: bool,
    pub by: f64,
}

impl Dictionary {
    /// All columns outside.
    pub fn new(linear: &Linear) -> Self {
        let width = linear.width();
        let mut tie = Tie(1);
        // Without an upper bound, no cost may be moved above what it is.
        let moved = |(at, cost): (usize, &f64)| match linear.bounds[at].1 {
            f64::INFINITY => *cost,
            _ => cost + TIE * tie.next(),
        };
        let mut new = Self {
            bounds: linear.bounds.clone(),
            place: Vec::new(),
            outside: Vec::new(),
            limits: Vec::new(),
            high: Vec::new(),
            price: Vec::new(),
            inside: Vec::new(),
            table: Vec::new(),
            values: vec![0.0; width],
            sums: vec![0.0; linear.rows.len()],
            moves: vec![0.0; width],
            last: Breach {
                quantity: 0,
                above: false,
                by: 0.0,
            },
            costs: linear.costs.iter().enumerate().map(moved).collect(),
            exchanges: 0,
        };
        new.begin(linear);
        new
    }

    /// Begins again, with all columns outside.
    pub fn begin(&mut self, linear: &Linear) {
        let width = linear.width();
        self.place = vec![Place::Sum; linear.bounds.len()];
        for column in 0..width {
            self.place[column] = Place::Outside(column);
        }
        self.outside = (0..width).collect();
        self.limits = self.bounds[..width].to_vec();
        self.price.clone_from(&self.costs);
        self.high = vec![false; width];
        self.inside.clear();
        self.table.clear();
        (0..width).for_each(|at| self.settle(at));
    }

    /// Changes a quantity's bounds. What is found before stays good: each
    /// quantity outside stands at the bound that its price asks.
    pub fn bound(&mut self, quantity: usize, bounds: Bounds) {
        self.bounds[quantity] = bounds;
        if let Place::Outside(at) = self.place[quantity] {
            self.limits[at] = bounds;
            self.settle(at);
        }
    }

    /// Takes in the last row of the matrix.
    pub fn add_row(&mut self, linear: &Linear) {
        self.bounds.extend(linear.bounds.last());
        self.place.push(Place::Sum);
        self.sums.push(0.0);
    }

    /// A quantity's bounds.
    pub fn bounds(&self, quantity: usize) -> Bounds {
        self.bounds[quantity]
    }

    /// Puts a quantity outside to the bound that its price asks; where there is
    /// none, an error of the arithmetic is all that asks for it.
    fn settle(&mut self, at: usize) {
        let (lower, upper) = self.limits[at];
        let price = self.price[at];
        let high = price < 0.0 || (price == 0.0 && self.high[at]);
        self.high[at] = if high {
            upper < f64::INFINITY
        } else {
            lower == f64::NEG_INFINITY
        };
        if self.high[at] != high {
            self.price[at] = 0.0;
        }
    }

    fn stands(&self, at: usize) -> f64 {
        let (lower, upper) = self.limits[at];
        if self.high[at] { upper } else { lower }
    }

    /// The cost now, with ties broken.
    fn cost(&self) -> f64 {
        let all = self.costs.iter().zip(&self.values);
        all.map(|(cost, value)| cost * value).sum()
    }

    /// Seeks the least cost, for so many exchanges at most, until it is sure to
    /// be as dear as `dear`.
    pub fn solve(&mut self, linear: &Linear, dear: f64, most: usize) -> Ended {
        let mut is_new = false;
        for _ in 0..most {
            if self.evaluate(linear) > DRIFT {
                if is_new {
                    return Ended::Open;
                }
                is_new = true;
                self.begin(linear);
                continue;
            }
            if self.cost() >= dear + TIES {
                return Ended::TooDear;
            }
            let Some(breach) = self.worst(linear) else {
                return Ended::Least;
            };
            self.last = breach;
            self.follow(linear, breach.quantity);
            let entering = self.entering(breach, PIVOT);
            match entering.or_else(|| self.entering(breach, LEAST_PIVOT)) {
                Some(at) => self.exchange(breach, at),
                None => return Ended::Impossible,
            }
        }
        Ended::Open
    }

    /// Finds all columns and sums, and by how much a sum outside is missed.
    fn evaluate(&mut self, linear: &Linear) -> f64 {
        let width = linear.width();
        let standing = |at: usize| Some((at, self.stands(at))).filter(|(_, value)| *value != 0.0);
        let standing: Vec<(usize, f64)> = (0..width).filter_map(standing).collect();
        self.values.fill(0.0);
        for (at, value) in &standing {
            if self.outside[*at] < width {
                self.values[self.outside[*at]] = *value;
            }
        }
        for (column, row) in self
            .inside
            .iter()
            .zip(self.table.chunks_exact(width.max(1)))
        {
            self.values[*column] = standing.iter().map(|(at, value)| row[*at] * value).sum();
        }
        linear.sums(&self.values, &mut self.sums);
        let rows = self
            .outside
            .iter()
            .enumerate()
            .filter(|(_, quantity)| **quantity >= width);
        let missed =
            rows.map(|(at, quantity)| (self.sums[quantity - width] - self.stands(at)).abs());
        missed.fold(0.0, f64::max)
    }

    /// The quantity that is furthest out of its bounds, by how it moves: of the
    /// few that are furthest by the matrix, for following one takes time.
    fn worst(&mut self, linear: &Linear) -> Option<Breach> {
        let mut found = self.breaches(linear);
        found.sort_unstable_by(|one, other| other.0.total_cmp(&one.0));
        found.truncate(FOLLOWED);
        if let [(_, only)] = found[..] {
            return Some(only);
        }
        let mut worst = None;
        let mut most = 0.0;
        for (_, breach) in found {
            self.follow(linear, breach.quantity);
            let length = square(&self.moves);
            let weighed = breach.by * breach.by / length.max(1e-12);
            if weighed > most {
                most = weighed;
                worst = Some(breach);
            }
        }
        worst
    }

    /// All quantities out of their bounds, and how far by the matrix.
    fn breaches(&self, linear: &Linear) -> Vec<(f64, Breach)> {
        let mut found = Vec::new();
        let mut look = |quantity: usize, value: f64| {
            let (lower, upper) = self.bounds[quantity];
            let (above, by) = if value > upper {
                (true, value - upper)
            } else {
                (false, lower - value)
            };
            if by > FEASIBLE {
                let weighed = by * by / linear.weights[quantity];
                found.push((
                    weighed,
                    Breach {
                        quantity,
                        above,
                        by,
                    },
                ));
            }
        };
        for column in &self.inside {
            look(*column, self.values[*column]);
        }
        for (row, sum) in self.sums.iter().enumerate() {
            if let Place::Sum = self.place[linear.width() + row] {
                look(linear.width() + row, *sum);
            }
        }
        found
    }

    /// How a quantity that is not outside moves with those that are.
    fn follow(&mut self, linear: &Linear, quantity: usize) {
        let width = linear.width();
        if let Place::Inside(row) = self.place[quantity] {
            self.moves
                .copy_from_slice(&self.table[row * width..][..width]);
            return;
        }
        self.moves.fill(0.0);
        for (column, by) in &linear.rows[quantity - width] {
            match self.place[*column] {
                Place::Outside(at) => self.moves[at] += by,
                Place::Inside(row) => {
                    let row = &self.table[row * width..][..width];
                    for (sum, value) in self.moves.iter_mut().zip(row) {
                        *sum += by * value;
                    }
                }
                Place::Sum => {}
            }
        }
    }

    /// Whole columns that stand in part.
    pub fn in_part(&self, linear: &Linear) -> Vec<usize> {
        let in_part = |at: &usize| {
            linear.whole[*at] && (self.values[*at] - self.values[*at].round()).abs() > WHOLE
        };
        (0..self.values.len()).filter(in_part).collect()
    }

    /// How many columns are chosen.
    pub fn count(&self, linear: &Linear) -> f64 {
        self.sums[linear.count - linear.width()]
    }

    /// What the rows outside are worth, by row: for a row at its lower bound
    /// what one more costs, at its upper bound less than nothing.
    pub fn worth(&self) -> impl Iterator<Item = (usize, f64)> {
        self.rows_outside(&self.price)
    }

    /// The shares of rows in why the last quantity cannot be brought within its
    /// bounds.
    pub fn against(&self) -> impl Iterator<Item = (usize, f64)> {
        let width = self.outside.len();
        let sign = if self.last.above { 1.0 } else { -1.0 };
        let own = self.last.quantity.checked_sub(width);
        let own = own.map(|row| (row, -sign));
        let others = self.rows_outside(&self.moves);
        others
            .map(move |(row, moves)| (row, sign * moves))
            .chain(own)
    }

    fn rows_outside<'a>(&'a self, of: &'a [f64]) -> impl Iterator<Item = (usize, f64)> {
        let width = self.outside.len();
        let all = self.outside.iter().zip(of);
        all.filter(move |(quantity, value)| **quantity >= width && **value != 0.0)
            .map(move |(quantity, value)| (quantity - width, *value))
    }
}

/// The sum of squares, in four parts that do not wait for each other.
fn square(of: &[f64]) -> f64 {
    let (fours, rest) = of.as_chunks::<4>();
    let mut sums = [0.0; 4];
    for four in fours {
        for (sum, value) in sums.iter_mut().zip(four) {
            *sum += value * value;
        }
    }
    sums.iter().sum::<f64>() + rest.iter().map(|value| value * value).sum::<f64>()
}

/// Numbers between a half and one that look like chance, the same every time.
struct Tie(u64);

impl Tie {
    fn next(&mut self) -> f64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        0.5 + (self.0 >> 33) as f64 / (1_u64 << 32) as f64
    }
}
