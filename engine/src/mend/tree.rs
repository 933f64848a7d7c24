//! Branch and bound: which changes are chosen, by what is proven of parts.
//!
//! With a plan in hand, most changes are seen to be too dear by their price at
//! the root: the search begins anew without them, and again whenever a better
//! plan shows that of many of those left. So plans are sought first, in
//! [`super::seek`]. All changes cost nearly the same, so a node is split by the
//! number of changes first, then by single ones.

use super::branch::{Branch, Effort, Trials, Tried};
use super::dictionary::{Dictionary, Ended};
use super::linear::{Bounds, Linear};
use super::model::{Model, UNITS};
use super::node::Node;
use super::proof::{LOOSE, Proof};
use super::seek::Seek;
use super::simplify::Simplified;
use super::solve::{Chosen, Solved};

/// Costs of changes are multiples of this: so much better is any better plan.
const STEP: f64 = 1.0 / UNITS;

/// What is proven to cost so much less than it must, costs as much.
const MARGIN: f64 = 1e-7;

/// A linear program that takes more exchanges is left undecided.
const EXCHANGES: usize = 5000;

/// A step ends after so many exchanges: some hundredths of a second.
const EXCHANGES_OF_STEP: u64 = 2500;

/// The arithmetic may fail to say of so many nodes whether they hold a plan.
const UNSAID: u64 = 1000;

/// So many nodes are branched on with few trials. A search that is not done by
/// then takes long, and trials make it shorter.
const LIGHT: u64 = 60;
const FEW: Effort = Effort {
    columns: 4,
    again: 3,
};
const MANY: Effort = Effort {
    columns: 8,
    again: 1,
};

/// A search in whole numbers.
#[derive(Debug)]
pub(super) struct Tree {
    pub(super) model: Model,
    pub(super) simplified: Simplified,
    /// Columns that others outdo.
    pub(super) outdone: Vec<bool>,
    pub(super) linear: Linear,
    pub(super) dictionary: Dictionary,
    trials: Trials,
    pub(super) open: Vec<Node>,
    /// Whether the last node that is open follows from the one just seen.
    diving: bool,
    /// A part that all better plans are in, and what is proven of it.
    pub(super) all: Option<(Node, Proof)>,
    pub(super) seek: Seek,
    pub(super) best: Option<Chosen>,
    pub(super) proposed: Option<Chosen>,
    /// How many nodes were branched on by trials.
    branched: u64,
    nodes: u64,
    /// Nodes of which the arithmetic could not say more.
    unsaid: u64,
    gave_up: bool,
}

/// What a linear program says of a node.
enum Seen {
    /// No better plan is in it.
    Shut,
    /// What is proven, and whether the dictionary holds the least.
    Open(Proof, bool),
}

impl Tree {
    /// A search for the least cost; nothing where a whole column may be more
    /// than one, or costs are not in steps.
    pub fn new(model: &Model, simplified: &Simplified) -> Option<Self> {
        let linear = Linear::new(model, simplified);
        let fits = |at: usize| match linear.whole[at] {
            true => linear.bounds[at] == (0.0, 1.0) && (linear.costs[at] / STEP).fract() == 0.0,
            false => linear.costs[at] == 0.0,
        };
        if !(0..linear.width()).all(fits) {
            return None;
        }
        let dictionary = Dictionary::new(&linear);
        Some(Self {
            model: model.clone(),
            simplified: simplified.clone(),
            outdone: simplified.left_out.clone(),
            trials: Trials::new(&dictionary),
            dictionary,
            open: vec![Node::root(&linear)],
            diving: false,
            all: None,
            seek: Seek::default(),
            best: None,
            proposed: None,
            branched: 0,
            nodes: 0,
            unsaid: 0,
            gave_up: false,
            linear,
        })
    }

    /// Nodes so far.
    pub fn nodes(&self) -> u64 {
        self.nodes
    }

    /// Goes on for so many nodes at most.
    pub fn step(&mut self, nodes: u64) -> Solved {
        let until = self.exchanges() + EXCHANGES_OF_STEP;
        for _ in 0..nodes {
            if self.proposed.is_some() || self.is_over() || self.exchanges() > until {
                break;
            }
            self.nodes += 1;
            if !self.seek_among_likely()
                && let Some(node) = self.next()
            {
                self.visit(node);
            }
        }
        if let Some(chosen) = &self.proposed {
            return Solved::Proposed(chosen.clone());
        }
        if self.gave_up {
            return Solved::GaveUp;
        }
        if self.is_over() {
            return self.best.clone().map_or(Solved::None, Solved::Least);
        }
        let bounds = self.open.iter().map(|node| node.bound);
        let bound = bounds.fold(f64::INFINITY, f64::min);
        Solved::Going {
            best: self.best.clone(),
            bound: bound.is_finite().then_some(bound),
        }
    }

    /// Exchanges so far.
    pub(super) fn exchanges(&self) -> u64 {
        self.dictionary.exchanges + self.trials.exchanges + self.seek.exchanges()
    }

    pub(super) fn is_over(&self) -> bool {
        self.gave_up || (self.open.is_empty() && !self.seek.is_on())
    }

    /// What a part must be proven to cost for no better plan to be in it.
    pub(super) fn dear(&self) -> f64 {
        let best = self.best.as_ref();
        best.map_or(f64::INFINITY, |best| best.objective - STEP + MARGIN)
    }

    /// The node to go on with: down from the last one while that leads
    /// somewhere, then the one that could hold the least.
    fn next(&mut self) -> Option<Node> {
        self.seek.end_plunge(&mut self.open, self.nodes);
        let dear = self.dear();
        self.open.retain(|node| node.bound < dear);
        if !self.diving && !self.seek.is_plunging() {
            let all = self.open.iter().enumerate();
            let least = all.min_by(|one, other| one.1.bound.total_cmp(&other.1.bound));
            let at = least.map(|(at, _)| at)?;
            let last = self.open.len() - 1;
            self.open.swap(at, last);
        }
        self.diving = false;
        self.open.pop()
    }

    fn visit(&mut self, mut node: Node) {
        node.enter(&self.linear, &mut self.dictionary);
        let Seen::Open(proof, is_least) = self.see() else {
            return;
        };
        node.bound = node.bound.max(proof.bound);
        node.fix(&self.linear, &proof, self.dear());
        if self.open.is_empty() && !self.seek.is_plunging() {
            self.all = Some((node.clone(), proof));
            if self.best.is_some() && self.is_worth(&node) {
                let node = self.without(node);
                return self.look_again(node);
            }
        }
        if !is_least {
            self.split(node);
        } else if self.dictionary.in_part(&self.linear).is_empty() {
            self.propose(node);
        } else if self.seek.is_plunging() {
            match Branch::at_largest(&self.linear, &self.dictionary) {
                Some(branch) => self.branch(node, branch),
                None => self.split(node),
            }
        } else {
            self.branch_by_trials(node);
        }
    }

    /// Solves a node's linear program.
    fn see(&mut self) -> Seen {
        let dear = self.dear();
        let (linear, dictionary) = (&self.linear, &mut self.dictionary);
        let mut ended = dictionary.solve(linear, dear, EXCHANGES);
        if !is_proven(ended, linear, dictionary, dear) {
            dictionary.begin(linear);
            ended = dictionary.solve(linear, f64::INFINITY, EXCHANGES);
        }
        if ended == Ended::Impossible && Proof::is_impossible(linear, dictionary) {
            return Seen::Shut;
        }
        let proof = Proof::of(linear, dictionary);
        match proof.bound >= dear {
            true => Seen::Shut,
            false => Seen::Open(proof, ended == Ended::Least),
        }
    }

    fn branch_by_trials(&mut self, mut node: Node) {
        let dear = self.dear();
        let (linear, solved) = (&self.linear, &self.dictionary);
        let mut tried = self.trials.count(&mut node, linear, solved, dear);
        if tried == Tried::Decided {
            return self.look_again(node);
        }
        if self.open.is_empty() && self.begin_to_seek(&node) {
            return;
        }
        self.branched += 1;
        if self.branched == LIGHT
            && let Some((all, _)) = self.all.clone()
        {
            self.open = vec![all];
            return;
        }
        let effort = if self.branched < LIGHT { FEW } else { MANY };
        if tried == Tried::Nothing {
            let (linear, solved) = (&self.linear, &self.dictionary);
            tried = self.trials.column(&mut node, linear, solved, dear, effort);
        }
        match tried {
            Tried::Branch(branch) => self.branch(node, branch),
            Tried::Decided => self.look_again(node),
            Tried::Nothing => self.split(node),
        }
    }

    fn branch(&mut self, node: Node, branch: Branch) {
        let (first, then) = node.parts(branch);
        self.open.push(then);
        self.look_again(first);
    }

    fn look_again(&mut self, node: Node) {
        self.open.push(node);
        self.diving = true;
    }

    /// Splits a node of which the arithmetic cannot say more. Where that happens
    /// often, as many parts would be looked at as there are plans.
    fn split(&mut self, node: Node) {
        self.unsaid += 1;
        match node.undecided(&self.linear) {
            Some(at) if self.unsaid < UNSAID => self.branch(node, Branch::Column(at)),
            _ => self.gave_up = true,
        }
    }

    /// Proposes a plan, where it keeps all rows. Its node stays open for when it
    /// is refused.
    fn propose(&mut self, node: Node) {
        let value = |at: usize| match self.linear.whole[at] {
            true => self.dictionary.values[at].round(),
            false => self.dictionary.values[at],
        };
        let values: Vec<f64> = (0..self.linear.width()).map(value).collect();
        let mut sums = vec![0.0; self.linear.rows.len()];
        self.linear.sums(&values, &mut sums);
        let mut all = values.iter().chain(&sums).zip(&self.linear.bounds);
        let keeps = |(value, (lower, upper)): (&f64, &Bounds)| {
            *value >= lower - LOOSE && *value <= upper + LOOSE
        };
        if !all.all(keeps) {
            return self.split(node);
        }
        let costs = self.linear.costs.iter().zip(&values);
        let objective: f64 = costs.map(|(cost, value)| cost * value).sum();
        if (self.best.as_ref()).is_none_or(|best| objective < best.objective) {
            let is_chosen = |at: &usize| self.linear.whole[*at] && values[*at] > 0.5;
            let chosen = (0..values.len()).filter(is_chosen);
            self.proposed = Some(Chosen {
                columns: chosen.map(|at| self.linear.of_model[at]).collect(),
                objective,
            });
            self.look_again(node);
        } else if node.undecided(&self.linear).is_some() {
            // What is proven leaves room for another plan than this one.
            self.split(node);
        }
    }
}

/// Whether what a dictionary ended with is so.
fn is_proven(ended: Ended, linear: &Linear, dictionary: &Dictionary, dear: f64) -> bool {
    match ended {
        Ended::Least => true,
        Ended::TooDear => Proof::of(linear, dictionary).bound >= dear,
        Ended::Impossible => Proof::is_impossible(linear, dictionary),
        Ended::Open => false,
    }
}

#[cfg(test)]
mod tests;
