//! A part of all plans: some columns decided on, and how many there are.

use super::branch::Branch;
use super::dictionary::Dictionary;
use super::linear::{Bounds, Linear};
use super::proof::Proof;

/// A part of all plans.
#[derive(Debug, Clone)]
pub(super) struct Node {
    /// By column: whether it is decided, and how.
    pub decided: Vec<Option<bool>>,
    /// How many columns are chosen.
    pub count: Bounds,
    /// What no plan of this part undercuts.
    pub bound: f64,
}

impl Node {
    /// All plans.
    pub fn root(linear: &Linear) -> Self {
        Self {
            decided: vec![None; linear.width()],
            count: (0.0, f64::INFINITY),
            bound: f64::NEG_INFINITY,
        }
    }

    /// Sets a dictionary's bounds to those of the node.
    pub fn enter(&self, linear: &Linear, dictionary: &mut Dictionary) {
        for (at, decided) in self.decided.iter().enumerate() {
            let bounds = match decided {
                _ if !linear.whole[at] => continue,
                None => (0.0, 1.0),
                Some(false) => (0.0, 0.0),
                Some(true) => (1.0, 1.0),
            };
            if dictionary.bounds(at) != bounds {
                dictionary.bound(at, bounds);
            }
        }
        if dictionary.bounds(linear.count) != self.count {
            dictionary.bound(linear.count, self.count);
        }
    }

    /// Decides on columns that no plan below `dear` chooses, or spares.
    pub fn fix(&mut self, linear: &Linear, proof: &Proof, dear: f64) {
        let room = dear - proof.bound;
        for (at, price) in proof.prices.iter().enumerate() {
            if linear.whole[at] && self.decided[at].is_none() && price.abs() >= room {
                self.decided[at] = Some(*price < 0.0);
            }
        }
    }

    /// A whole column that is not decided on.
    pub fn undecided(&self, linear: &Linear) -> Option<usize> {
        let mut columns = 0..self.decided.len();
        columns.find(|at| linear.whole[*at] && self.decided[*at].is_none())
    }

    /// Both parts of a node, the one to look at first and the other.
    pub fn parts(self, branch: Branch) -> (Self, Self) {
        let (mut first, mut then) = (self.clone(), self);
        match branch {
            Branch::Column(at) => {
                first.decided[at] = Some(true);
                then.decided[at] = Some(false);
            }
            Branch::Count(most) => {
                first.count.1 = first.count.1.min(most);
                then.count.0 = then.count.0.max(most + 1.0);
            }
        }
        (first, then)
    }
}
