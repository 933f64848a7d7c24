//! Finds foods by what a person types or a recipe says: the words of the
//! crate `word_search`, and the foods that they belong to.

use super::synonyms::{self, Synonym, SynonymError};
use super::{Food, FoodId, FoodMatch, FoodMatcher, FoodTable};
use word_search::{Entry, KitchenWords, Typing, WordIndex};

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
    /// The foods in the order of the index's entries.
    foods: Vec<FoodId>,
    words: WordIndex,
}

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
        let entries: Vec<Entry> = foods.iter().map(entry).collect();
        let ids: Vec<FoodId> = foods.iter().map(|food| food.id).collect();
        let rows = Rows::new(&ids);
        let kitchen: Vec<KitchenWords> = synonyms.iter().map(|row| rows.kitchen(row)).collect();
        Ok(Self {
            words: WordIndex::build(&entries, &kitchen),
            foods: ids,
        })
    }

    /// At most `limit` foods for what is being typed, best first. The last
    /// word may be half typed; the order of the words does not matter.
    pub fn search(&self, query: &str, limit: usize) -> Vec<Hit> {
        self.hits(query, &[], Typing::Going, limit)
    }

    fn hits(&self, text: &str, rest: &[String], typing: Typing, limit: usize) -> Vec<Hit> {
        let found = self.words.search(text, rest, typing, limit).into_iter();
        let hit = |found: word_search::Found| Hit {
            food: self.foods[usize::from(found.entry)],
            score: found.score,
            confidence: found.confidence,
        };
        found.map(hit).collect()
    }
}

fn entry(food: &Food) -> Entry<'_> {
    Entry {
        description: &food.description,
        common_names: &food.common_names,
        manufacturer: &food.manufacturer,
        group: food.group.0,
    }
}

/// Finds the rows of foods.
struct Rows(Vec<(FoodId, u16)>);

impl Rows {
    fn new(ids: &[FoodId]) -> Self {
        let mut rows: Vec<(FoodId, u16)> = ids.iter().copied().zip(0..).collect();
        rows.sort();
        Self(rows)
    }

    fn of(&self, food: FoodId) -> Option<u16> {
        let at = self.0.binary_search_by_key(&food, |(id, _)| *id).ok()?;
        Some(self.0[at].1)
    }

    fn kitchen<'table>(&self, row: &'table Synonym) -> KitchenWords<'table> {
        KitchenWords {
            kitchen: &row.kitchen,
            dataset: &row.dataset,
            entries: row.foods.iter().filter_map(|food| self.of(*food)).collect(),
        }
    }
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
