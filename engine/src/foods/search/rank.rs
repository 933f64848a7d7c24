//! The entries that fit a query, best first.

use super::index::Index;
use super::lexicon::Kind;
use super::query::{Asked, MatchedPhrase, Query};

/// Gain of an entry that has every word of the query in its name, thousandths.
const ALL_FOUND: i64 = 2000;
/// Gain of an entry that the table of kitchen words names for the whole query.
const NAMED: i64 = 1300;

/// Shares of that gain by the place among the foods named, thousandths.
const ORDER: [u32; 5] = [1000, 700, 600, 500, 400];

/// How well an entry fits.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Fit {
    /// Row of the entry.
    pub entry: u16,
    /// Rank value, thousandths; may be negative.
    pub score: i32,
    /// Share of the query's weight that the entry explains, thousandths; a
    /// word half typed explains half of itself.
    pub explained: u16,
    /// Share of the query for which the table names this entry, thousandths.
    pub named: u16,
}

/// What one query has gathered for one entry.
#[derive(Debug, Clone, Copy, Default)]
struct Gathered {
    /// Weight times worth of the words found.
    gain: u32,
    /// Weight times fit of the words found.
    explained: u32,
    /// The same, as far as the words are typed.
    typed: u32,
    /// What the entry has got back of its losses.
    regained: u32,
    /// How many words that ask for a state it answers.
    states: u16,
    /// The word at hand: its best worth and fit, and what it gives back.
    word: OneWord,
}

#[derive(Debug, Clone, Copy, Default)]
struct OneWord {
    worth: u32,
    fit: u32,
    typed: u32,
    sure: u32,
    guessed: u32,
}

/// The `limit` best entries for one way to put the query; `named` says for
/// which share of it the table of kitchen words names which entries.
pub fn best(index: &Index, query: &Query, named: &[(u16, u16)], limit: usize) -> Vec<Fit> {
    let mut gathered = vec![Gathered::default(); index.foods.len()];
    for asked in &query.asked {
        gather(index, asked, &mut gathered);
    }
    let total = i64::from(query.weight().max(1));
    let states = query.asked.iter().filter(|asked| is_state(asked)).count() as u16;
    let mut top = Top::new(limit);
    for (entry, sums) in gathered.iter().enumerate() {
        if sums.gain == 0 {
            continue;
        }
        let explained = i64::from(sums.explained) / total;
        let named = named
            .binary_search_by_key(&(entry as u16), |(entry, _)| *entry)
            .map_or(0, |at| named[at].1);
        // A food that the table names for some of the words is not meant
        // when it is not in the state asked for, or lacks the other words.
        let named = if sums.states == states {
            i64::from(named) * explained * explained / 1_000_000
        } else {
            0
        };
        let missing = 1000 - explained;
        let score = ALL_FOUND * (i64::from(sums.gain) / total - missing) / 1000
            + i64::from(index.start[entry])
            + i64::from(sums.regained)
            + NAMED * named / 1000;
        top.offer(Fit {
            entry: entry as u16,
            score: score as i32,
            explained: (i64::from(sums.typed) / total) as u16,
            named: named as u16,
        });
    }
    top.into_sorted()
}

fn is_state(asked: &Asked) -> bool {
    matches!(asked.kind, Kind::State { .. })
}

/// Adds up one word: an entry gains by its best reading only, and gets back
/// its losses for all words that answer it, but for one only that is guessed.
fn gather(index: &Index, asked: &Asked, gathered: &mut [Gathered]) {
    let mut touched = Vec::new();
    for reading in &asked.readings {
        let fit = u32::from(reading.fit);
        for posting in index.postings(reading.term) {
            let word = &mut gathered[usize::from(posting.entry)].word;
            if word.worth == 0 {
                touched.push(posting.entry);
            }
            let worth = (fit * u32::from(posting.worth) / 1000).max(1);
            let back = fit * u32::from(posting.unasked) / 1000;
            if reading.sure {
                word.sure += back;
            }
            if worth > word.worth {
                (word.worth, word.fit) = (worth, fit);
                word.typed = fit * u32::from(reading.typed) / 1000;
                word.guessed = if reading.sure { 0 } else { back };
            }
        }
    }
    for entry in touched {
        let sums = &mut gathered[usize::from(entry)];
        let word = std::mem::take(&mut sums.word);
        sums.gain += asked.weight * word.worth;
        sums.explained += asked.weight * word.fit;
        sums.typed += asked.weight * word.typed;
        sums.regained += word.sure + word.guessed;
        sums.states += u16::from(is_state(asked) && word.fit >= 500);
    }
}

/// For each entry that the kitchen's words name, the share of the query that
/// they are, in the order of entries.
pub fn named(query: &Query, phrases: &[MatchedPhrase]) -> Vec<(u16, u16)> {
    let total = query.weight().max(1);
    let mut named = Vec::new();
    for matched in phrases {
        let weight: u32 = matched.words.iter().map(|at| query.asked[*at].weight).sum();
        let fit = u32::from(matched.fit);
        // Words beside the phrase speak against the food that it means alone.
        let share = 1000 * weight / total;
        let share = share * share / 1000 * share / 1000 * fit / 1000 * fit / 1000;
        let entries = matched.phrase.entries.iter().zip(0..ORDER.len());
        named.extend(entries.map(|(entry, order)| (*entry, (share * ORDER[order] / 1000) as u16)));
    }
    named.sort_by_key(|(entry, share)| (*entry, std::cmp::Reverse(*share)));
    named.dedup_by_key(|(entry, _)| *entry);
    named
}

/// Keeps the best few.
struct Top {
    limit: usize,
    kept: Vec<Fit>,
}

impl Top {
    fn new(limit: usize) -> Self {
        Self {
            limit,
            kept: Vec::with_capacity(limit * 2 + 1),
        }
    }

    fn offer(&mut self, fit: Fit) {
        if self.limit == 0 {
            return;
        }
        self.kept.push(fit);
        if self.kept.len() > self.limit * 2 {
            self.cut();
        }
    }

    /// Equal scores stand in the order of the table.
    fn cut(&mut self) {
        self.kept
            .sort_by_key(|fit| (std::cmp::Reverse(fit.score), fit.entry));
        self.kept.truncate(self.limit);
    }

    fn into_sorted(mut self) -> Vec<Fit> {
        self.cut();
        self.kept
    }
}
