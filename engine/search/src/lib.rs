//! Finds entries of a food composition table by what a person types or a
//! recipe says.
//!
//! | step | module | turns | into |
//! |---|---|---|---|
//! | cut | [`tokens`], [`plural`] | text | folded words in singular form |
//! | weigh | [`lexicon`], [`describe`] | an entry | words with worth and loss |
//! | look up | [`vocabulary`], [`typo`] | typed letters | words of the table |
//! | store | [`index`] | all entries, kitchen words | postings |
//! | put | [`query`] | a query | ways to put it |
//! | rank | [`rank`], [`confidence`] | a way to put it | entries, best first |
//!
//! An entry gains for each word of the query that it holds and loses for each
//! of its own words that nobody asked for: a little for "raw", more for
//! "canned", most for another food's name. Kitchen words that the table gives
//! to a food lift that food.
//!
//! A crate of its own, so that what runs at every keystroke is compiled for
//! speed, whatever the rest of the page is compiled for.

mod confidence;
mod describe;
mod index;
mod lexicon;
mod plural;
mod query;
mod rank;
mod tokens;
mod typo;
mod vocabulary;

use index::Index;
use query::{Query, held_phrases};
use rank::Fit;

pub use plural::singular;
pub use query::Typing;
pub use tokens::{Word, words};

/// What the table says of a food, as far as its words are searched.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Entry<'table> {
    /// The description.
    pub description: &'table str,
    /// Other names for the food.
    pub common_names: &'table str,
    /// Who makes it, if only one does.
    pub manufacturer: &'table str,
    /// The dataset's food group (`FdGrp_Cd`).
    pub group: u16,
}

/// What a kitchen says, and what is meant.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct KitchenWords<'table> {
    /// The kitchen's words.
    pub kitchen: &'table str,
    /// The table's words, empty if only entries are named.
    pub dataset: &'table str,
    /// Rows of the entries that are meant, the first before the others.
    pub entries: Vec<u16>,
}

/// An entry that fits a query.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Found {
    /// Its row among those that the index was built of.
    pub entry: u16,
    /// Rank value; only differences within one answer mean something.
    pub score: i32,
    /// From 0 to 100: how sure it is that this entry is meant.
    pub confidence: u8,
}

/// An index over the words of all entries.
#[derive(Debug, Clone)]
pub struct WordIndex {
    index: Index,
}

/// Entries looked at beyond those asked for, to see whether the best one has
/// a rival.
const RIVALS: usize = 4;

impl WordIndex {
    /// Reads all entries and the kitchen's words for them. Of more than 65,536
    /// entries the others are left out.
    pub fn build(entries: &[Entry], kitchen: &[KitchenWords]) -> Self {
        Self {
            index: Index::build(entries, kitchen),
        }
    }

    /// At most `limit` entries for a text, best first; the order of its words
    /// does not matter. `rest` are words of less weight that may name a state
    /// ("drained").
    pub fn search(&self, text: &str, rest: &[String], typing: Typing, limit: usize) -> Vec<Found> {
        let wanted = limit.saturating_add(RIVALS).min(self.index.start.len());
        let query = Query::read(&self.index, text, rest, typing);
        let phrases = held_phrases(&self.index, &query);
        let named = rank::named(&query, &phrases);
        let mut fits = rank::best(&self.index, &query, &named, wanted);
        for way in query.other_ways(&self.index, &phrases) {
            fits.extend(rank::best(&self.index, &way, &named, wanted));
        }
        let fits = best_of_ways(fits);
        (0..fits.len().min(limit))
            .map(|at| Found {
                entry: fits[at].entry,
                score: fits[at].score,
                confidence: confidence::confidence(&fits, at),
            })
            .collect()
    }
}

/// Each entry once, by its best way.
fn best_of_ways(mut fits: Vec<Fit>) -> Vec<Fit> {
    fits.sort_by_key(|fit| (fit.entry, std::cmp::Reverse(fit.score)));
    fits.dedup_by_key(|fit| fit.entry);
    fits.sort_by_key(|fit| (std::cmp::Reverse(fit.score), fit.entry));
    fits
}
