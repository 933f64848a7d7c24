//! All words of all entries, and those that some typed letters may mean.

use crate::lexicon::{Kind, Lexicon};
use crate::plural::singular;
use crate::typo::{letter_set, slips, slips_forgiven};
use std::collections::BTreeMap;

/// A word in singular form, by its number in the vocabulary.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct Term(pub u32);

/// A term that a typed word may mean.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reading {
    /// The term.
    pub term: Term,
    /// How well the typed letters fit it, thousandths.
    pub fit: u16,
    /// The word itself or one that answers it, not a guess at what is typed.
    pub sure: bool,
    /// How much of the term's letters is there, thousandths.
    pub typed: u16,
}

/// The words while entries are being read.
#[derive(Debug)]
pub struct Vocabulary {
    lexicon: Lexicon,
    /// Every form met, written and singular, with its term.
    forms: BTreeMap<String, Term>,
    /// Forms met lately, by a mixture of their letters: most words of a
    /// description are common ones, and need no search in the tree.
    lately: Vec<Option<(String, Term)>>,
    terms: Vec<(String, Kind)>,
}

/// How many forms met lately are kept; a power of two.
const LATELY: usize = 4096;

impl Default for Vocabulary {
    fn default() -> Self {
        Self {
            lexicon: Lexicon::default(),
            forms: BTreeMap::new(),
            lately: vec![None; LATELY],
            terms: Vec::new(),
        }
    }
}

impl Vocabulary {
    /// The term of a folded word, which is added if it is new.
    pub fn learn(&mut self, written: &str) -> Term {
        let mix =
            |mixed: usize, letter: u8| (mixed ^ usize::from(letter)).wrapping_mul(0x0100_0193);
        let at = written.bytes().fold(0x811c_9dc5, mix) % LATELY;
        if let Some((text, term)) = &self.lately[at]
            && text == written
        {
            return *term;
        }
        let term = self.find_or_add(written);
        self.lately[at] = Some((written.to_owned(), term));
        term
    }

    fn find_or_add(&mut self, written: &str) -> Term {
        if let Some(term) = self.forms.get(written) {
            return *term;
        }
        let one = singular(written);
        let term = match self.forms.get(&one) {
            Some(term) => *term,
            None => {
                let term = Term(self.terms.len() as u32);
                let kind = self.lexicon.kind(&one);
                self.terms.push((one.clone(), kind));
                self.forms.insert(one, term);
                term
            }
        };
        self.forms.insert(written.to_owned(), term);
        term
    }

    /// What kind of word a term is.
    pub fn kind(&self, term: Term) -> Kind {
        self.terms[term.0 as usize].1
    }

    /// The singular.
    pub fn text(&self, term: Term) -> &str {
        &self.terms[term.0 as usize].0
    }

    /// How many terms there are.
    pub fn len(&self) -> usize {
        self.terms.len()
    }

    /// The finished list, sorted for searching; `entries` says how many
    /// entries hold a term.
    pub fn into_dictionary(self, entries: impl Fn(Term) -> usize) -> Dictionary {
        Dictionary {
            kinds: self.terms.into_iter().map(|(_, kind)| kind).collect(),
            forms: self
                .forms
                .into_iter()
                .map(|(text, term)| Form {
                    letters: letter_set(text.as_bytes()),
                    doublings: (entries(term) + 1).ilog2(),
                    text,
                    term,
                })
                .collect(),
        }
    }
}

#[derive(Debug, Clone)]
struct Form {
    text: String,
    letters: u32,
    /// How common the word is: doublings of the number of entries.
    doublings: u32,
    term: Term,
}

/// The words when all entries are read, in alphabetical order.
#[derive(Debug, Clone)]
pub struct Dictionary {
    kinds: Vec<Kind>,
    forms: Vec<Form>,
}

impl Dictionary {
    /// What kind of word a term is.
    pub fn kind(&self, term: Term) -> Kind {
        self.kinds[term.0 as usize]
    }

    /// How many terms there are.
    pub fn terms(&self) -> usize {
        self.kinds.len()
    }

    /// The term of exactly this word, in either number.
    pub fn exact(&self, word: &str) -> Option<Term> {
        let find = |text: &str| {
            let at = self
                .forms
                .binary_search_by(|form| form.text.as_str().cmp(text));
            at.ok().map(|at| self.forms[at].term)
        };
        find(word).or_else(|| find(&singular(word)))
    }

    /// Terms that begin with `start`, each with the best of its forms: the more
    /// letters are there and the more entries hold the word, the likelier.
    pub fn beginning(&self, start: &str) -> Vec<Reading> {
        let from = self
            .forms
            .partition_point(|form| form.text.as_str() < start);
        let readings = self.forms[from..]
            .iter()
            .take_while(|form| form.text.starts_with(start))
            .map(|form| Reading {
                term: form.term,
                fit: (600 + 170 * start.len() / form.text.len()) as u16
                    + 15 * form.doublings.min(10) as u16,
                sure: false,
                typed: (1000 * start.len() / form.text.len()) as u16,
            });
        best_of_each(readings.collect())
    }

    /// Terms within the slips forgiven in `typed`, fewest slips only.
    pub fn similar(&self, typed: &str, unfinished: bool) -> Vec<Reading> {
        let bytes = typed.as_bytes();
        let mut most = slips_forgiven(bytes.len());
        if most == 0 || bytes.iter().any(u8::is_ascii_digit) {
            return Vec::new();
        }
        let letters = letter_set(bytes);
        let mut found: Vec<(usize, Reading)> = Vec::new();
        for form in &self.forms {
            // Each letter that the word lacks is a slip; few words pass.
            if (letters & !form.letters).count_ones() as usize > most {
                continue;
            }
            if let Some(count) = slips(bytes, form.text.as_bytes(), most, unfinished) {
                most = count;
                let fit = fit_with_slips(bytes, form.text.as_bytes(), count);
                let reading = Reading {
                    term: form.term,
                    fit,
                    sure: false,
                    typed: (1000 * bytes.len() / form.text.len()).min(1000) as u16,
                };
                found.push((count, reading));
            }
        }
        let fewest = most;
        best_of_each(
            found
                .into_iter()
                .filter(|(count, _)| *count == fewest)
                .map(|(_, reading)| reading)
                .collect(),
        )
    }
}

/// A slip in a short word says more against it than one in a long word, and so
/// do a wrong first letter and letters still to come.
fn fit_with_slips(typed: &[u8], word: &[u8], count: usize) -> u16 {
    let fit = match (count, typed.len()) {
        (0, _) => 900,
        (1, 0..=4) => 700,
        (1, 5) => 780,
        (1, _) => 850,
        _ => 650,
    };
    let other_start = if word[0] == typed[0] { 0 } else { 120 };
    let to_come = if word.len() > typed.len() + count {
        120
    } else {
        0
    };
    fit - other_start - to_come
}

/// One reading per term, the best, in the order of terms.
pub fn best_of_each(mut readings: Vec<Reading>) -> Vec<Reading> {
    readings.sort_by_key(|reading| (reading.term, std::cmp::Reverse(reading.fit)));
    readings.dedup_by_key(|reading| reading.term);
    readings
}
