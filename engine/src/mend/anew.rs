//! What a plan that passes, or one that does not, changes of the search.

use super::dictionary::Dictionary;
use super::linear::Linear;
use super::model::Row;
use super::node::Node;
use super::seek::Seek;
use super::simplify::{Simplified, simplify};
use super::tree::Tree;

/// It is worth beginning anew without one column in so many.
const WORTH: usize = 5;

impl Tree {
    /// Takes the plan that was proposed.
    pub fn accept(&mut self) {
        let Some(chosen) = self.proposed.take() else {
            return;
        };
        self.seek.accept();
        self.best = Some(chosen);
        self.begin_anew();
    }

    /// Cuts off the plan that was proposed, by these rows.
    pub fn refuse(&mut self, cuts: &[Row]) {
        self.proposed = None;
        self.seek.refuse(cuts);
        self.model.rows.extend_from_slice(cuts);
        if self.seek.is_likely {
            return self.add_rows(cuts);
        }
        let again = simplify(&self.model);
        let stays_outdone = |(before, after): (&bool, &bool)| !before || *after;
        if self.outdone.iter().zip(&again.left_out).all(stays_outdone) {
            self.add_rows(cuts);
        } else {
            self.begin_with(again);
        }
    }

    /// Adds rows that the model has last.
    fn add_rows(&mut self, rows: &[Row]) {
        let all = self.model.rows.len();
        self.simplified.rows.extend(all - rows.len()..all);
        for row in rows {
            self.linear.add(row);
            self.dictionary.add_row(&self.linear);
        }
    }

    /// Begins again with columns that a cut lets count again.
    fn begin_with(&mut self, simplified: Simplified) {
        self.outdone.clone_from(&simplified.left_out);
        self.simplified = simplified;
        self.seek = Seek::default();
        self.renew();
        self.open = vec![Node::root(&self.linear)];
    }

    /// The columns and rows that are left, with nothing known of them.
    fn renew(&mut self) {
        self.linear = Linear::new(&self.model, &self.simplified);
        let exchanges = self.dictionary.exchanges;
        self.dictionary = Dictionary::new(&self.linear);
        self.dictionary.exchanges = exchanges;
        self.all = None;
    }

    /// Begins anew, if it is worth it, without what a better plan shows to be
    /// too dear.
    fn begin_anew(&mut self) {
        let Some((mut node, proof)) = self.all.clone() else {
            return;
        };
        node.fix(&self.linear, &proof, self.dear());
        let is_worth = self.is_worth(&node);
        if is_worth {
            node = self.without(node);
        }
        if is_worth || self.seek.is_plunging() {
            self.open = vec![node];
        }
        self.seek.forget_plunge();
    }

    /// Whether a node spares enough columns.
    pub(super) fn is_worth(&self, node: &Node) -> bool {
        let spared = node.decided.iter().filter(|way| **way == Some(false));
        spared.count() * WORTH >= node.decided.len()
    }

    /// Leaves out all columns that a node spares, which all better plans are in.
    pub(super) fn without(&mut self, node: Node) -> Node {
        let mut decided = vec![None; self.model.columns.len()];
        for (way, at) in node.decided.iter().zip(&self.linear.of_model) {
            decided[*at] = *way;
            self.simplified.left_out[*at] |= *way == Some(false);
        }
        self.renew();
        Node {
            decided: self.linear.of_model.iter().map(|at| decided[*at]).collect(),
            ..node
        }
    }
}
