//! Finds foods by what a person types or a recipe says.
//!
//! | step | module | turns | into |
//! |---|---|---|---|
//! | cut | [`tokens`], [`plural`] | text | folded words in singular form |
//! | weigh | [`lexicon`], [`describe`] | an entry | words with worth and loss |
//! | look up | [`vocabulary`], [`typo`] | typed letters | words of the dataset |
//! | store | [`index`], [`synonyms`] | all entries, kitchen words | postings |
//! | put | [`query`] | a query | ways to put it |
//! | rank | [`rank`], [`confidence`] | a way to put it | entries, best first |
//!
//! An entry gains for each word of the query that it holds and loses for each
//! of its own words that nobody asked for: a little for "raw", more for
//! "canned", most for another food's name. Kitchen words that the table gives
//! to a food lift that food.

mod confidence;
mod describe;
mod index;
mod lexicon;
mod plural;
mod query;
mod rank;
mod synonyms;
mod tokens;
mod typo;
mod vocabulary;

use super::{Food, FoodId, FoodMatch, FoodMatcher, FoodTable};
use index::Index;
use query::{Query, Typing, held_phrases};
use rank::Fit;

pub(crate) use plural::singular;
pub use synonyms::SynonymError;
pub(crate) use tokens::words;

/// A food that fits a query.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Hit {
    /// The food.
    pub food: FoodId,
    /// Rank value; only differences within one answer mean something.
    pub score: i32,
    /// From 0 to 100: how sure it is that this food is meant.
    pub confidence: u8,
}

/// An index over the words of all foods.
#[derive(Debug, Clone)]
pub struct SearchIndex {
    index: Index,
}

/// Entries looked at beyond those asked for, to see whether the best one has
/// a rival.
const RIVALS: usize = 4;

impl SearchIndex {
    /// Reads the descriptions of a table's foods and the kitchen words in
    /// `synonyms_csv` (`nutrient_data::kitchen::SYNONYMS`). Rows that name
    /// foods which the table lacks keep their words.
    ///
    /// # Errors
    /// When a row of kitchen words cannot be read.
    pub fn build(table: &FoodTable, synonyms_csv: &str) -> Result<Self, SynonymError> {
        Self::from_foods(table.foods(), synonyms_csv)
    }

    /// The same for any list of foods, such as the office's own.
    ///
    /// # Errors
    /// When a row of kitchen words cannot be read.
    pub fn from_foods(foods: &[Food], synonyms_csv: &str) -> Result<Self, SynonymError> {
        let synonyms = synonyms::read(synonyms_csv)?;
        Ok(Self {
            index: Index::build(foods, &synonyms),
        })
    }

    /// At most `limit` foods for what is being typed, best first. The last
    /// word may be half typed; the order of the words does not matter.
    pub fn search(&self, query: &str, limit: usize) -> Vec<Hit> {
        self.hits(query, &[], Typing::Going, limit)
    }

    fn hits(&self, text: &str, rest: &[String], typing: Typing, limit: usize) -> Vec<Hit> {
        let wanted = limit.saturating_add(RIVALS).min(self.index.foods.len());
        let query = Query::read(&self.index, text, rest, typing);
        let phrases = held_phrases(&self.index, &query);
        let named = rank::named(&query, &phrases);
        let mut fits = rank::best(&self.index, &query, &named, wanted);
        for way in query.other_ways(&self.index, &phrases) {
            fits.extend(rank::best(&self.index, &way, &named, wanted));
        }
        let fits = best_of_ways(fits);
        (0..fits.len().min(limit))
            .map(|at| Hit {
                food: self.index.foods[usize::from(fits[at].entry)],
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

impl FoodMatcher for SearchIndex {
    fn matches(&self, food_words: &str, preparation: &[String], limit: usize) -> Vec<FoodMatch> {
        self.hits(food_words, preparation, Typing::Done, limit)
            .into_iter()
            .map(|hit| FoodMatch {
                food: hit.food,
                confidence: hit.confidence,
            })
            .collect()
    }
}
