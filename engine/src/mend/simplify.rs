//! A smaller model with the same least objective, made before the solver sees
//! it. Most rows say that two changes exclude each other, and most changes do
//! less than another that they exclude; a general solver finds out neither.
//!
//! - Columns of which every two exclude each other take one row together. It
//!   says more of fractions than a row for each two, so that less is tried.
//! - A column is left out when another, which excludes it, is no dearer, does
//!   at least as much in every row and excludes nothing besides: wherever the
//!   one is chosen, the other could be.

use super::model::{Model, Row};

/// What the solver is given of a model.
#[derive(Debug, Clone)]
pub(super) struct Simplified {
    /// By column: whether it is left out, that is, zero.
    pub left_out: Vec<bool>,
    /// Rows that are kept as they are.
    pub rows: Vec<usize>,
    /// Columns of which one at most is chosen.
    pub one_of: Vec<Vec<usize>>,
}

/// Simplifies a model.
pub(super) fn simplify(model: &Model) -> Simplified {
    let (excluding, rows): (Vec<usize>, Vec<usize>) =
        (0..model.rows.len()).partition(|at| is_exclusion(model, &model.rows[*at]));
    let mut groups: Vec<Vec<usize>> = excluding
        .iter()
        .map(|at| model.rows[*at].terms.iter().map(|term| term.0).collect())
        .collect();
    let mut excluded = Pairs::new(model.columns.len());
    for group in &groups {
        excluded.join(group);
    }
    let left_out = outdone(model, &rows, &excluded);
    for group in &mut groups {
        group.retain(|column| !left_out[*column]);
    }
    excluded.forget(&left_out);
    Simplified {
        one_of: together(groups, &excluded),
        left_out,
        rows,
    }
}

/// Whether a row says no more than that one of its columns is chosen at most.
fn is_exclusion(model: &Model, row: &Row) -> bool {
    let is_choice = |(column, coefficient): &(usize, f64)| {
        let column = &model.columns[*column];
        *coefficient == 1.0 && column.integer && column.lower == 0.0 && column.upper == Some(1.0)
    };
    row.lower.is_none() && row.upper == Some(1.0) && row.terms.iter().all(is_choice)
}

/// The columns that another one outdoes.
fn outdone(model: &Model, rows: &[usize], excluded: &Pairs) -> Vec<bool> {
    let columns = model.columns.len();
    let mut coefficients = vec![vec![0.0; columns]; rows.len()];
    for (dense, at) in coefficients.iter_mut().zip(rows) {
        for (column, coefficient) in &model.rows[*at].terms {
            dense[*column] = *coefficient;
        }
    }
    let does_as_much = |other: usize, one: usize| {
        rows.iter().zip(&coefficients).all(|(at, of)| {
            let row = &model.rows[*at];
            (row.lower.is_none() || of[other] >= of[one])
                && (row.upper.is_none() || of[other] <= of[one])
        })
    };
    let mut left_out = vec![false; columns];
    // Of two that do the same, the later is left out: the earlier still stands when its turn comes.
    for one in (0..columns).rev() {
        let outdoes = |other: &usize| {
            !left_out[*other]
                && model.columns[*other].cost <= model.columns[one].cost
                && excluded.holds_all_but(one, *other)
                && does_as_much(*other, one)
        };
        left_out[one] = excluded.with(one).any(|other| outdoes(&other));
    }
    left_out
}

/// Rows for all excluded pairs, each as long as it can be made.
fn together(mut groups: Vec<Vec<usize>>, excluded: &Pairs) -> Vec<Vec<usize>> {
    groups.sort_by_key(|group| std::cmp::Reverse(group.len()));
    let mut said = Pairs::new(excluded.columns);
    let mut rows = Vec::new();
    for mut group in groups {
        if group.len() < 2 || said.has_all(&group) {
            continue;
        }
        let mut others = excluded.with_all(&group);
        while let Some(other) = first(&others) {
            group.push(other);
            meet(&mut others, excluded.set(other));
        }
        said.join(&group);
        rows.push(group);
    }
    rows
}

/// Pairs of columns: for each column a bit for every other.
#[derive(Debug)]
struct Pairs {
    columns: usize,
    words: usize,
    bits: Vec<u64>,
}

impl Pairs {
    fn new(columns: usize) -> Self {
        let words = columns.div_ceil(64);
        Self {
            columns,
            words,
            bits: vec![0; columns * words],
        }
    }

    fn set(&self, column: usize) -> &[u64] {
        &self.bits[column * self.words..(column + 1) * self.words]
    }

    /// Notes every two of a group.
    fn join(&mut self, group: &[usize]) {
        for one in group {
            for other in group.iter().filter(|other| *other != one) {
                self.bits[one * self.words + other / 64] |= 1 << (other % 64);
            }
        }
    }

    fn forget(&mut self, left_out: &[bool]) {
        for gone in (0..self.columns).filter(|column| left_out[*column]) {
            for set in self.bits.chunks_exact_mut(self.words) {
                set[gone / 64] &= !(1 << (gone % 64));
            }
        }
    }

    fn has(&self, one: usize, other: usize) -> bool {
        self.set(one)[other / 64] >> (other % 64) & 1 == 1
    }

    fn has_all(&self, group: &[usize]) -> bool {
        let mut pairs = group.iter().enumerate();
        pairs.all(|(at, one)| group[at + 1..].iter().all(|other| self.has(*one, *other)))
    }

    /// The columns that are paired with one.
    fn with(&self, one: usize) -> impl Iterator<Item = usize> {
        (0..self.columns).filter(move |other| self.has(one, *other))
    }

    /// The columns that are paired with every one of a group.
    fn with_all(&self, group: &[usize]) -> Vec<u64> {
        let mut common = vec![u64::MAX; self.words];
        for one in group {
            meet(&mut common, self.set(*one));
        }
        common
    }

    /// Whether `one` is paired with all that `other` is paired with, itself left aside.
    fn holds_all_but(&self, one: usize, other: usize) -> bool {
        let sets = self.set(one).iter().zip(self.set(other)).enumerate();
        sets.into_iter().all(|(word, (of_one, of_other))| {
            let itself = if one / 64 == word { 1 << (one % 64) } else { 0 };
            of_other & !of_one & !itself == 0
        })
    }
}

fn meet(set: &mut [u64], other: &[u64]) {
    for (word, other) in set.iter_mut().zip(other) {
        *word &= other;
    }
}

fn first(set: &[u64]) -> Option<usize> {
    let word = set.iter().position(|word| *word != 0)?;
    Some(word * 64 + set[word].trailing_zeros() as usize)
}

#[cfg(test)]
mod tests {
    use super::super::small::{choices, exclude, keeps, least, sum};
    use super::*;
    use proptest::prelude::*;

    const COLUMNS: usize = 8;

    /// Costs in quarters; coefficients of rows with whether they ask or limit, and their bound;
    /// columns that exclude each other, by bits.
    type Drawn = (Vec<u8>, Vec<(Vec<i8>, bool, i8)>, Vec<u8>);

    fn drawn() -> impl Strategy<Value = Drawn> {
        let row = (
            prop::collection::vec(-2_i8..4, COLUMNS),
            any::<bool>(),
            0_i8..6,
        );
        (
            prop::collection::vec(3_u8..7, COLUMNS),
            prop::collection::vec(row, 1..3),
            prop::collection::vec(any::<u8>(), 0..7),
        )
    }

    fn model((costs, rows, exclusions): &Drawn) -> Model {
        let mut model = choices(costs.iter().map(|cost| f64::from(*cost) / 4.0));
        for (coefficients, asks, bound) in rows {
            let sum = sum(coefficients.iter().map(|number| f64::from(*number)));
            match asks {
                true => model.at_least(String::new(), Vec::new(), sum, f64::from(*bound)),
                false => model.at_most(String::new(), Vec::new(), sum, f64::from(*bound)),
            }
        }
        for group in exclusions {
            exclude(&mut model, u32::from(*group));
        }
        model
    }

    proptest! {
        /// Nothing is lost that costs less, and nothing allowed that was not, among all choices.
        #[test]
        fn the_least_cost_is_the_same(drawn in drawn()) {
            let model = model(&drawn);
            let simplified = simplify(&model);
            let whole = least(&model, |choice| model.rows.iter().all(|row| keeps(row, choice)));
            let simple = least(&model, |choice| {
                let chosen = |column: &usize| choice[*column] > 0.0;
                let one_of = &simplified.one_of;
                (0..COLUMNS).all(|column| !simplified.left_out[column] || !chosen(&column))
                    && simplified.rows.iter().all(|at| keeps(&model.rows[*at], choice))
                    && one_of.iter().all(|group| group.iter().filter(|at| chosen(at)).count() <= 1)
            });
            prop_assert_eq!(whole, simple);
        }
    }

    /// Three changes of which every two exclude each other take one row, and the
    /// dearest of two that do the same goes.
    #[test]
    fn pairs_become_one_row() {
        let pairs = vec![0b011, 0b110, 0b101];
        let model = model(&(
            vec![4; COLUMNS],
            vec![(vec![1, 2, 3, 0, 0, 0, 0, 0], true, 1)],
            pairs,
        ));
        let simplified = simplify(&model);
        assert_eq!(simplified.left_out[..3], [true, true, false]);
        let mut dearer = model.clone();
        dearer.columns[1].cost = 0.5;
        dearer.columns[0].cost = 0.25;
        let simplified = simplify(&dearer);
        assert_eq!(simplified.left_out[..3], [false; 3]);
        let mut together = simplified.one_of.clone();
        together.iter_mut().for_each(|group| group.sort_unstable());
        assert_eq!(together, [[0, 1, 2]]);
    }
}
