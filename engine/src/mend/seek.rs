//! Where plans are sought before anything is proven: a good one in hand makes
//! the proof short.
//!
//! First by choosing what stands in the largest part, again and again: as many
//! changes as there must be at least, or, where no plan is known, any number.
//! Then in a search of its own among the changes whose price is least.

use super::model::Row;
use super::node::Node;
use super::solve::Solved;
use super::tree::Tree;

/// For so many nodes what stands in the largest part is chosen: with as few
/// changes as there must be, and with any number.
const FEWEST: u64 = 12;
const ANY: u64 = 60;

/// How many changes are likely, and for how many nodes they are searched.
const LIKELY: usize = 60;
const AMONG_LIKELY: u64 = 100;

/// The likely are searched so often while no plan is known.
const OFTEN: usize = 2;

/// What is being sought, and what was.
#[derive(Debug, Default)]
pub(super) struct Seek {
    /// The node to go back to, and when.
    plunge: Option<(Node, u64)>,
    likely: Option<Box<Tree>>,
    /// Whether this is itself a search among the likely.
    pub is_likely: bool,
    /// The least number of changes when a plan of so few was last sought, and
    /// when it was sought among the likely.
    fewest: Option<f64>,
    among_likely: Option<f64>,
    has_sought_any: bool,
    /// How often it was sought among the likely.
    times: usize,
}

impl Seek {
    pub fn is_plunging(&self) -> bool {
        self.plunge.is_some()
    }

    pub fn is_on(&self) -> bool {
        self.plunge.is_some() || self.likely.is_some()
    }

    /// Exchanges of the search among the likely.
    pub fn exchanges(&self) -> u64 {
        self.likely.as_ref().map_or(0, |tree| tree.exchanges())
    }

    /// Goes back to the node before, when it is time to or nothing is open.
    pub fn end_plunge(&mut self, open: &mut Vec<Node>, nodes: u64) {
        let is_over = |(_, until): &mut (Node, u64)| nodes > *until || open.is_empty();
        if let Some((node, _)) = self.plunge.take_if(is_over) {
            *open = vec![node];
        }
    }

    pub fn forget_plunge(&mut self) {
        self.plunge = None;
    }

    /// Takes the plan that was proposed.
    pub fn accept(&mut self) {
        if let Some(tree) = &mut self.likely {
            tree.accept();
        }
    }

    /// Cuts off the plan that was proposed.
    pub fn refuse(&mut self, cuts: &[Row]) {
        if let Some(tree) = &mut self.likely {
            tree.refuse(cuts);
        }
    }
}

impl Tree {
    /// Begins to seek plans, where it was not done for a node that all better
    /// ones are in.
    pub(super) fn begin_to_seek(&mut self, node: &Node) -> bool {
        self.begin_plunge(node) || self.begin_among_likely(node)
    }

    fn begin_plunge(&mut self, node: &Node) -> bool {
        let (lower, upper) = node.count;
        let mut start = node.clone();
        let nodes = if self.seek.fewest.is_none_or(|before| lower > before) {
            self.seek.fewest = Some(lower);
            start.count.1 = upper.min(lower);
            FEWEST
        } else if self.best.is_none() && !self.seek.has_sought_any {
            self.seek.has_sought_any = true;
            ANY
        } else {
            return false;
        };
        self.seek.plunge = Some((node.clone(), self.nodes() + nodes));
        self.open.push(start);
        true
    }

    fn begin_among_likely(&mut self, node: &Node) -> bool {
        let Some((_, proof)) = &self.all else {
            return false;
        };
        let is_known = (self.seek.among_likely).is_some_and(|before| node.count.0 <= before);
        let is_in_vain = self.best.is_none() && self.seek.times == OFTEN;
        if self.seek.is_likely || is_known || is_in_vain {
            return false;
        }
        let is_left = |at: &usize| self.linear.whole[*at] && node.decided[*at] != Some(false);
        let mut by_price: Vec<usize> = (0..self.linear.width()).filter(is_left).collect();
        by_price.sort_by(|one, other| proof.prices[*one].total_cmp(&proof.prices[*other]));
        if by_price.len() * 2 < LIKELY * 3 {
            return false;
        }
        let mut simplified = self.simplified.clone();
        for at in &by_price[LIKELY..] {
            simplified.left_out[self.linear.of_model[*at]] = true;
        }
        let Some(mut tree) = Self::new(&self.model, &simplified) else {
            return false;
        };
        tree.best.clone_from(&self.best);
        tree.seek.is_likely = true;
        tree.open[0].count = node.count;
        self.seek.likely = Some(Box::new(tree));
        self.seek.among_likely = Some(node.count.0);
        self.seek.times += 1;
        self.open.push(node.clone());
        true
    }

    /// Seeks among the likely, while that goes on; false where it does not.
    pub(super) fn seek_among_likely(&mut self) -> bool {
        let Some(tree) = &mut self.seek.likely else {
            return false;
        };
        match tree.step(1) {
            Solved::Proposed(chosen) => self.proposed = Some(chosen),
            Solved::Going { .. } if tree.nodes() < AMONG_LIKELY => {}
            _ => self.seek.likely = None,
        }
        true
    }
}
