//! Which entries hold which word, and what that is worth.

use super::super::{Food, FoodId};
use super::describe::{Mark, describe, plain_marks};
use super::lexicon::Kind;
use super::synonyms::Synonym;
use super::vocabulary::{Dictionary, Term, Vocabulary};

/// Worth of a kitchen word that the table gives to a food.
const KITCHEN_WORTH: u16 = 950;

/// Head start of foods that the table names: a school kitchen's staples.
const STAPLE: i32 = 60;

/// A word in an entry.
#[derive(Debug, Clone, Copy)]
pub struct Posting {
    /// Row of the entry.
    pub entry: u16,
    /// Worth of finding the word, thousandths.
    pub worth: u16,
    /// What the entry gets back when the word is asked for, thousandths.
    pub unasked: u16,
}

/// A row of kitchen words, in terms of the index.
#[derive(Debug, Clone)]
pub struct KitchenPhrase {
    /// The kitchen's words.
    pub terms: Vec<Term>,
    /// What to search instead; empty if only foods are named.
    pub dataset: String,
    /// Rows of the foods that are meant, the first before the others.
    pub entries: Vec<u16>,
}

/// Everything a search looks things up in.
#[derive(Debug, Clone)]
pub struct Index {
    /// The foods in the order given.
    pub foods: Vec<FoodId>,
    /// What each entry starts with, thousandths: minus all that is unasked.
    pub start: Vec<i32>,
    /// All words.
    pub dictionary: Dictionary,
    /// The table of kitchen words.
    pub phrases: Vec<KitchenPhrase>,
    /// For each term, where its postings begin.
    begins: Vec<u32>,
    postings: Vec<Posting>,
}

impl Index {
    /// Reads all entries. At most 65 536 foods: more than a row number holds
    /// are left out.
    pub fn build(foods: &[Food], synonyms: &[Synonym]) -> Self {
        let foods = &foods[..foods.len().min(usize::from(u16::MAX) + 1)];
        let ids: Vec<FoodId> = foods.iter().map(|food| food.id).collect();
        let mut vocabulary = Vocabulary::default();
        let mut start = Vec::with_capacity(foods.len());
        let mut found: Vec<(Term, Posting)> = Vec::with_capacity(foods.len() * 12);
        for (entry, food) in foods.iter().enumerate() {
            let description = describe(food, &mut vocabulary);
            let before = found.len();
            add_marks(entry as u16, description.marks, &mut found);
            let unasked: i32 = found[before..]
                .iter()
                .map(|(_, posting)| i32::from(posting.unasked))
                .sum();
            start.push(-unasked - i32::from(description.handicap));
        }
        let rows = Rows::new(&ids);
        let phrases = kitchen_phrases(&rows, synonyms, &mut vocabulary);
        for phrase in &phrases {
            for entry in &phrase.entries {
                start[usize::from(*entry)] += STAPLE;
            }
        }
        for synonym in synonyms {
            for entry in rows.of(&synonym.foods) {
                let marks = plain_marks(&synonym.kitchen, KITCHEN_WORTH, &mut vocabulary);
                add_marks(entry, marks, &mut found);
            }
        }
        let (begins, postings) = by_term(vocabulary.len(), found);
        Self {
            foods: ids,
            start,
            dictionary: vocabulary.into_dictionary(|Term(at)| {
                (begins[at as usize + 1] - begins[at as usize]) as usize
            }),
            phrases,
            begins,
            postings,
        }
    }

    /// The entries that hold a term.
    pub fn postings(&self, term: Term) -> &[Posting] {
        let at = term.0 as usize;
        &self.postings[self.begins[at] as usize..self.begins[at + 1] as usize]
    }
}

fn add_marks(entry: u16, marks: Vec<Mark>, found: &mut Vec<(Term, Posting)>) {
    found.extend(marks.into_iter().map(|mark| {
        let posting = Posting {
            entry,
            worth: mark.worth,
            unasked: mark.unasked,
        };
        (mark.term, posting)
    }));
}

/// Finds the rows of foods.
struct Rows(Vec<(FoodId, u16)>);

impl Rows {
    fn new(ids: &[FoodId]) -> Self {
        let mut rows: Vec<(FoodId, u16)> = ids.iter().copied().zip(0..).collect();
        rows.sort();
        Self(rows)
    }

    fn of(&self, wanted: &[FoodId]) -> Vec<u16> {
        let row = |id: &FoodId| {
            let at = self.0.binary_search_by_key(id, |(id, _)| *id).ok()?;
            Some(self.0[at].1)
        };
        wanted.iter().filter_map(row).collect()
    }
}

fn kitchen_phrases(
    rows: &Rows,
    synonyms: &[Synonym],
    vocabulary: &mut Vocabulary,
) -> Vec<KitchenPhrase> {
    let phrase = |synonym: &Synonym| {
        let words = synonym.kitchen_words.iter();
        let mut terms: Vec<Term> = words.map(|word| vocabulary.learn(word)).collect();
        // A query has no joining words either.
        terms.retain(|term| vocabulary.kind(*term) != Kind::Joining);
        KitchenPhrase {
            terms,
            dataset: synonym.dataset.clone(),
            entries: rows.of(&synonym.foods),
        }
    };
    let mut phrases: Vec<KitchenPhrase> = synonyms.iter().map(phrase).collect();
    phrases.retain(|phrase| !phrase.terms.is_empty());
    phrases
}

/// Sorts postings by term; a word that an entry holds twice is one posting.
fn by_term(terms: usize, mut found: Vec<(Term, Posting)>) -> (Vec<u32>, Vec<Posting>) {
    found.sort_by_key(|(term, posting)| (*term, posting.entry));
    let mut begins = Vec::with_capacity(terms + 1);
    let mut postings: Vec<Posting> = Vec::with_capacity(found.len());
    let mut last = None;
    for (term, posting) in found {
        while begins.len() <= term.0 as usize {
            begins.push(postings.len() as u32);
        }
        match postings.last_mut() {
            Some(same) if last == Some((term, posting.entry)) => {
                same.worth = same.worth.max(posting.worth);
                same.unasked += posting.unasked;
            }
            _ => postings.push(posting),
        }
        last = Some((term, posting.entry));
    }
    begins.resize(terms + 1, postings.len() as u32);
    (begins, postings)
}
