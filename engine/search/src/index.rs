//! Which entries hold which word, and what that is worth.

use crate::describe::{Mark, describe, plain_marks};
use crate::lexicon::Kind;
use crate::plural::singular;
use crate::tokens::{Word, words};
use crate::vocabulary::{Dictionary, Term, Vocabulary};
use crate::{Entry, KitchenWords};

/// Worth of a kitchen word that the table gives to a food.
const KITCHEN_WORTH: u16 = 950;

/// Head start of foods that the table names: a school kitchen's staples.
const STAPLE: i32 = 60;

/// A word in an entry.
#[derive(Debug, Clone, Copy, Default)]
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
    /// What each entry starts with, thousandths: minus all that is unasked.
    pub start: Vec<i32>,
    /// All words.
    pub dictionary: Dictionary,
    /// The table of kitchen words.
    pub phrases: Vec<KitchenPhrase>,
    /// For each term, where its postings begin.
    begins: Vec<u32>,
    postings: Vec<Posting>,
    /// For each entry, where its words begin.
    words_begin: Vec<u32>,
    words: Vec<Held>,
}

/// A word that an entry holds, and the place of its posting.
#[derive(Debug, Clone, Copy, Default)]
struct Held {
    term: u32,
    posting: u32,
}

impl Index {
    /// Reads all entries. At most 65 536: more than a row number holds are
    /// left out.
    pub fn build(entries: &[Entry], kitchen: &[KitchenWords]) -> Self {
        let entries = &entries[..entries.len().min(usize::from(u16::MAX) + 1)];
        let mut vocabulary = Vocabulary::default();
        let mut start = Vec::with_capacity(entries.len());
        let mut found: Vec<(Term, Posting)> = Vec::with_capacity(entries.len() * 12);
        for (entry, of) in entries.iter().enumerate() {
            let description = describe(of, &mut vocabulary);
            let before = found.len();
            add_marks(entry as u16, description.marks, &mut found);
            let unasked: i32 = found[before..]
                .iter()
                .map(|(_, posting)| i32::from(posting.unasked))
                .sum();
            start.push(-unasked - i32::from(description.handicap));
        }
        let phrases = kitchen_phrases(kitchen, &mut vocabulary);
        for phrase in &phrases {
            for entry in &phrase.entries {
                start[usize::from(*entry)] += STAPLE;
            }
        }
        for row in kitchen {
            for entry in &row.entries {
                let marks = plain_marks(row.kitchen, KITCHEN_WORTH, &mut vocabulary);
                add_marks(*entry, marks, &mut found);
            }
        }
        let (begins, postings) = by_term(vocabulary.len(), &found);
        let (words_begin, words) = by_entry(start.len(), &begins, &postings);
        Self {
            start,
            dictionary: vocabulary.into_dictionary(|Term(at)| {
                (begins[at as usize + 1] - begins[at as usize]) as usize
            }),
            phrases,
            begins,
            postings,
            words_begin,
            words,
        }
    }

    /// The entries that hold a term.
    pub fn postings(&self, term: Term) -> &[Posting] {
        let at = term.0 as usize;
        &self.postings[self.begins[at] as usize..self.begins[at + 1] as usize]
    }

    /// The words that an entry holds, each with its posting.
    pub fn words(&self, entry: u16) -> impl Iterator<Item = (Term, &Posting)> {
        let at = usize::from(entry);
        let range = self.words_begin[at] as usize..self.words_begin[at + 1] as usize;
        let held = self.words[range].iter();
        held.map(|held| (Term(held.term), &self.postings[held.posting as usize]))
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

fn kitchen_phrases(kitchen: &[KitchenWords], vocabulary: &mut Vocabulary) -> Vec<KitchenPhrase> {
    let phrase = |row: &KitchenWords| {
        let cut = words(row.kitchen);
        let learn = |word: &Word| vocabulary.learn(&singular(&word.text));
        let mut terms: Vec<Term> = cut.iter().map(learn).collect();
        // A query has no joining words either.
        terms.retain(|term| vocabulary.kind(*term) != Kind::Joining);
        KitchenPhrase {
            terms,
            dataset: row.dataset.to_owned(),
            entries: row.entries.clone(),
        }
    };
    let mut phrases: Vec<KitchenPhrase> = kitchen.iter().map(phrase).collect();
    phrases.retain(|phrase| !phrase.terms.is_empty());
    phrases
}

/// Sorts postings by term; a word that an entry holds twice is one posting.
fn by_term(terms: usize, found: &[(Term, Posting)]) -> (Vec<u32>, Vec<Posting>) {
    let (starts, mut sorted) = grouped(
        terms,
        found.iter().map(|(term, posting)| (term.0, *posting)),
    );
    let mut begins = Vec::with_capacity(terms + 1);
    let mut postings: Vec<Posting> = Vec::with_capacity(found.len());
    for of_term in starts.windows(2) {
        let list = &mut sorted[of_term[0] as usize..of_term[1] as usize];
        // Kitchen words come after all descriptions.
        if !list.is_sorted_by_key(|posting| posting.entry) {
            list.sort_by_key(|posting| posting.entry);
        }
        let begin = postings.len();
        begins.push(begin as u32);
        for posting in list {
            match postings[begin..].last_mut() {
                Some(same) if same.entry == posting.entry => {
                    same.worth = same.worth.max(posting.worth);
                    same.unasked += posting.unasked;
                }
                _ => postings.push(*posting),
            }
        }
    }
    begins.push(postings.len() as u32);
    (begins, postings)
}

/// The words of each entry.
fn by_entry(entries: usize, begins: &[u32], postings: &[Posting]) -> (Vec<u32>, Vec<Held>) {
    let terms = (0..).zip(begins.windows(2));
    let term_of_each =
        terms.flat_map(|(term, range)| std::iter::repeat_n(term, (range[1] - range[0]) as usize));
    let words = term_of_each.zip(0..).zip(postings);
    grouped(
        entries,
        words.map(|((term, posting), of)| (u32::from(of.entry), Held { term, posting })),
    )
}

/// Puts things into the order of their group numbers, and says where each group
/// begins; things of one group stay in their order.
fn grouped<T: Copy + Default>(
    groups: usize,
    things: impl Iterator<Item = (u32, T)> + Clone,
) -> (Vec<u32>, Vec<T>) {
    let mut begins = vec![0; groups + 1];
    for (group, _) in things.clone() {
        begins[group as usize + 1] += 1;
    }
    for group in 1..=groups {
        begins[group] += begins[group - 1];
    }
    let mut next = begins.clone();
    let mut sorted = vec![T::default(); begins[groups] as usize];
    for (group, thing) in things {
        let place = &mut next[group as usize];
        sorted[*place as usize] = thing;
        *place += 1;
    }
    (begins, sorted)
}
