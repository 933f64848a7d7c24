//! Where a node is split: by the number of changes, or by one of them.

use super::dictionary::{Dictionary, Ended};
use super::linear::{Bounds, Linear};
use super::node::Node;
use super::proof::Proof;

/// A side is tried for so many exchanges.
const TRIAL: usize = 60;
const TRIAL_OF_COUNT: usize = 200;

/// What counts as a gain where there is none.
const NO_GAIN: f64 = 1e-6;

/// How near to a whole number a count is one.
const WHOLE: f64 = 1e-6;

/// How a node is split.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Branch {
    /// With a column, and without it.
    Column(usize),
    /// At most so many columns, or more.
    Count(f64),
}

impl Branch {
    /// By the column that stands in the largest part.
    pub fn at_largest(linear: &Linear, solved: &Dictionary) -> Option<Self> {
        let value = |at: &usize| solved.values[*at];
        let parts = solved.in_part(linear).into_iter();
        let largest = parts.max_by(|one, other| value(one).total_cmp(&value(other)));
        largest.map(Self::Column)
    }
}

/// What trials came to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Tried {
    /// This branch shows most.
    Branch(Branch),
    /// Some sides hold nothing, which is noted in the node: look again.
    Decided,
    /// There is nothing to branch by.
    Nothing,
}

/// How much is tried.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Effort {
    /// How many columns.
    pub columns: usize,
    /// How many must be decided on by that for another look.
    pub again: usize,
}

/// Sides of branches, which are tried before one is chosen.
#[derive(Debug)]
pub(super) struct Trials {
    dictionary: Dictionary,
    /// Exchanges so far.
    pub exchanges: u64,
}

impl Trials {
    pub fn new(dictionary: &Dictionary) -> Self {
        Self {
            dictionary: dictionary.clone(),
            exchanges: 0,
        }
    }

    /// By the number of columns, while that is open.
    pub fn count(
        &mut self,
        node: &mut Node,
        linear: &Linear,
        solved: &Dictionary,
        dear: f64,
    ) -> Tried {
        let Some(most) = split_of_count(node, solved.count(linear)) else {
            return Tried::Nothing;
        };
        let fewer = (linear.count, (node.count.0, most));
        match self.cost_of(linear, solved, fewer, dear, TRIAL_OF_COUNT) {
            Some(_) => Tried::Branch(Branch::Count(most)),
            None => {
                node.count.0 = most + 1.0;
                Tried::Decided
            }
        }
    }

    /// By the column whose two sides are proven to cost most: those that stand
    /// nearest to a half are tried.
    pub fn column(
        &mut self,
        node: &mut Node,
        linear: &Linear,
        solved: &Dictionary,
        dear: f64,
        effort: Effort,
    ) -> Tried {
        let from_half = |at: &usize| (solved.values[*at] - 0.5).abs();
        let mut parts = solved.in_part(linear);
        parts.sort_by(|one, other| from_half(one).total_cmp(&from_half(other)));
        parts.truncate(effort.columns);
        let mut best = (f64::NEG_INFINITY, Tried::Nothing);
        let mut decided = 0;
        for at in parts {
            let mut cost = |value| self.cost_of(linear, solved, (at, (value, value)), dear, TRIAL);
            match (cost(1.0), cost(0.0)) {
                (Some(with), Some(without)) => {
                    let gain = |cost: f64| (cost.min(dear) - node.bound).max(NO_GAIN);
                    let score = gain(with) * gain(without);
                    if score > best.0 {
                        best = (score, Tried::Branch(Branch::Column(at)));
                    }
                }
                (with, _) => {
                    node.decided[at] = Some(with.is_some());
                    decided += 1;
                }
            }
        }
        let is_again = decided >= effort.again || (decided > 0 && best.1 == Tried::Nothing);
        if is_again { Tried::Decided } else { best.1 }
    }

    /// What a solution costs at least when a quantity gets other bounds; nothing
    /// where there is none that costs less than `dear`.
    fn cost_of(
        &mut self,
        linear: &Linear,
        solved: &Dictionary,
        (quantity, bounds): (usize, Bounds),
        dear: f64,
        exchanges: usize,
    ) -> Option<f64> {
        self.dictionary.clone_from(solved);
        self.dictionary.bound(quantity, bounds);
        let ended = self.dictionary.solve(linear, dear, exchanges);
        self.exchanges += self.dictionary.exchanges - solved.exchanges;
        if ended == Ended::Impossible && Proof::is_impossible(linear, &self.dictionary) {
            return None;
        }
        let cost = Proof::of(linear, &self.dictionary).bound;
        (cost < dear).then_some(cost)
    }
}

/// Where a node's count is split: at most so many columns, or more.
fn split_of_count(node: &Node, count: f64) -> Option<f64> {
    let near = count.round();
    if (count - near).abs() > WHOLE {
        return Some(count.floor());
    }
    let (lower, upper) = node.count;
    (lower < upper).then(|| near.clamp(lower, upper - 1.0))
}
