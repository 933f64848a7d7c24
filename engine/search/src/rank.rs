//! The entries that fit a query, best first.

use crate::index::{Index, Posting};
use crate::lexicon::Kind;
use crate::query::{Asked, MatchedPhrase, Query};
use crate::vocabulary::Reading;
use std::cmp::Reverse;

/// Gain of an entry that has every word of the query in its name, thousandths.
const ALL_FOUND: i32 = 2000;
/// Gain of an entry that the table of kitchen words names for the whole query.
const NAMED: i32 = 1300;

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
}

/// The word at hand: its best worth and fit, and what it gives back.
#[derive(Debug, Clone, Copy, Default)]
struct OneWord {
    worth: u32,
    fit: u32,
    typed: u32,
    sure: u32,
    guessed: u32,
}

/// What a query has gathered, for the entries that it has touched.
struct Sums {
    /// For each entry, its place in `of`, plus one; zero while untouched.
    places: Vec<u32>,
    of: Vec<(u16, Gathered)>,
    /// The word at hand, beside each of `of`.
    words: Vec<OneWord>,
}

impl Sums {
    fn new(entries: usize) -> Self {
        Self {
            places: vec![0; entries],
            of: Vec::new(),
            words: Vec::new(),
        }
    }

    /// The word at hand in an entry, from now on touched.
    fn word(&mut self, entry: u16) -> &mut OneWord {
        let place = &mut self.places[usize::from(entry)];
        if *place == 0 {
            self.of.push((entry, Gathered::default()));
            self.words.push(OneWord::default());
            *place = self.of.len() as u32;
        }
        &mut self.words[*place as usize - 1]
    }
}

/// The `limit` best entries for one way to put the query; `named` says for
/// which share of it the table of kitchen words names which entries.
pub fn best(index: &Index, query: &Query, named: &[(u16, u16)], limit: usize) -> Vec<Fit> {
    let mut gathered = Sums::new(index.start.len());
    for asked in &query.asked {
        // One or two letters begin words of nearly every entry: then they
        // choose among the entries that have the other words, if there are
        // enough of these.
        if asked.hardly_begun() && gathered.of.len() >= limit {
            gather_among_touched(index, asked, &mut gathered);
        } else {
            gather(index, asked, &mut gathered);
        }
        for ((_, sums), word) in gathered.of.iter_mut().zip(&mut gathered.words) {
            if word.worth > 0 {
                sums.close_word(asked, std::mem::take(word));
            }
        }
    }
    let total = query.weight().max(1);
    let states = query.asked.iter().filter(|asked| is_state(asked)).count() as u16;
    let mut top = Top::new(limit);
    for (entry, sums) in &gathered.of {
        let at = named.binary_search_by_key(entry, |(entry, _)| *entry);
        let rest = index.start[usize::from(*entry)] + sums.regained as i32;
        let most = rest + at.map_or(0, |_| NAMED);
        // One letter touches thousands of entries: nothing is divided for those that are beaten.
        if sums.gain == 0 || top.beats(sums.found_of(total), total, most) {
            continue;
        }
        let explained = (sums.explained / total) as i32;
        // A food that the table names for some of the words is not meant
        // when it is not in the state asked for, or lacks the other words.
        let named = match at {
            Ok(at) if sums.states == states => {
                i32::from(named[at].1) * explained / 1000 * explained / 1000
            }
            _ => 0,
        };
        let missing = 1000 - explained;
        let score =
            ALL_FOUND * ((sums.gain / total) as i32 - missing) / 1000 + rest + NAMED * named / 1000;
        top.offer(Fit {
            entry: *entry,
            score,
            explained: (sums.typed / total) as u16,
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
fn gather(index: &Index, asked: &Asked, gathered: &mut Sums) {
    for reading in &asked.readings {
        for posting in index.postings(reading.term) {
            gathered.word(posting.entry).add(reading, posting);
        }
    }
}

/// The same for the entries that have one of the words before.
fn gather_among_touched(index: &Index, asked: &Asked, gathered: &mut Sums) {
    let mut readings = vec![None; index.dictionary.terms()];
    for reading in &asked.readings {
        readings[reading.term.0 as usize] = Some(reading);
    }
    for ((entry, _), word) in gathered.of.iter().zip(&mut gathered.words) {
        for (term, posting) in index.words(*entry) {
            if let Some(reading) = readings[term.0 as usize] {
                word.add(reading, posting);
            }
        }
    }
}

impl OneWord {
    fn add(&mut self, reading: &Reading, posting: &Posting) {
        let fit = u32::from(reading.fit);
        let worth = (fit * u32::from(posting.worth) / 1000).max(1);
        let back = fit * u32::from(posting.unasked) / 1000;
        if reading.sure {
            self.sure += back;
        }
        if worth > self.worth {
            (self.worth, self.fit) = (worth, fit);
            self.typed = fit * u32::from(reading.typed) / 1000;
            self.guessed = if reading.sure { 0 } else { back };
        }
    }
}

impl Gathered {
    /// What was found less what is missing, thousandths of a query's weight.
    fn found_of(&self, total: u32) -> i64 {
        i64::from(self.gain) + i64::from(self.explained) - 1000 * i64::from(total)
    }

    /// Adds what the word at hand has brought, and makes room for the next.
    fn close_word(&mut self, asked: &Asked, word: OneWord) {
        self.gain += asked.weight * word.worth;
        self.explained += asked.weight * word.fit;
        self.typed += asked.weight * word.typed;
        self.regained += word.sure + word.guessed;
        self.states += u16::from(is_state(asked) && word.fit >= 500);
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
    named.sort_by_key(|(entry, share)| (*entry, Reverse(*share)));
    named.dedup_by_key(|(entry, _)| *entry);
    named
}

/// Keeps the best few.
struct Top {
    limit: usize,
    kept: Vec<Fit>,
    /// What a fit must beat, once there are enough better ones.
    least: Option<Fit>,
}

/// Equal scores stand in the order of the table.
fn order(fit: &Fit) -> (Reverse<i32>, u16) {
    (Reverse(fit.score), fit.entry)
}

impl Top {
    fn new(limit: usize) -> Self {
        Self {
            limit,
            kept: Vec::with_capacity(limit * 2 + 1),
            least: None,
        }
    }

    /// Whether enough are better than any fit with this much found of a
    /// query's weight, and this much at most from elsewhere; a rounding aside.
    fn beats(&self, found: i64, total: u32, rest: i32) -> bool {
        let wanted = |least: Fit| 1000 * i64::from(total) * i64::from(least.score - 1 - rest);
        (self.least).is_some_and(|least| i64::from(ALL_FOUND) * found < wanted(least))
    }

    fn offer(&mut self, fit: Fit) {
        let beaten = |least: &Fit| order(least) <= order(&fit);
        if self.limit == 0 || self.least.as_ref().is_some_and(beaten) {
            return;
        }
        self.kept.push(fit);
        if self.kept.len() > self.limit * 2 {
            self.cut();
        }
    }

    fn cut(&mut self) {
        self.kept.sort_by_key(order);
        self.kept.truncate(self.limit);
        if self.kept.len() == self.limit {
            self.least = self.kept.last().copied();
        }
    }

    fn into_sorted(mut self) -> Vec<Fit> {
        self.cut();
        self.kept
    }
}
