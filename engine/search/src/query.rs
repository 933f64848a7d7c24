//! What is typed, as words with weights and with the terms they may mean.

use crate::index::{Index, KitchenPhrase};
use crate::lexicon::{self, Kind};
use crate::tokens::{MOST_WORDS, Word, words};
use crate::vocabulary::{Reading, Term, best_of_each};

/// One word of a query.
#[derive(Debug, Clone)]
pub struct Asked {
    /// How much the word counts, thousandths of a name.
    pub weight: u32,
    /// What kind of word it is.
    pub kind: Kind,
    /// The terms it may mean, in the order of terms; none if it is unknown.
    pub readings: Vec<Reading>,
    /// The word as cut, for joining it with its neighbour.
    word: Word,
}

/// A query, or one way to put it.
#[derive(Debug, Clone)]
pub struct Query {
    /// Its words, joining words left out.
    pub asked: Vec<Asked>,
}

/// How a query is typed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Typing {
    /// The last word may be half typed.
    Going,
    /// All words are whole, as in the line of a recipe.
    Done,
}

impl Query {
    /// Reads what is typed; `rest` are words of less weight that may name a
    /// state ("drained").
    pub fn read(index: &Index, text: &str, rest: &[String], typing: Typing) -> Self {
        let mut cut = words(text);
        if typing == Typing::Done {
            cut.iter_mut().for_each(|word| word.unfinished = false);
        }
        let mut asked: Vec<Asked> = cut
            .into_iter()
            .take(MOST_WORDS)
            .filter_map(|word| Asked::read(index, word))
            .collect();
        for mut word in rest
            .iter()
            .flat_map(|words_of| words(words_of))
            .take(MOST_WORDS)
        {
            word.unfinished = false;
            let more = Asked::read(index, word);
            asked.extend(more.filter(|more| matches!(more.kind, Kind::State { .. } | Kind::Usual)));
        }
        stress_last_name(&mut asked);
        if let [only] = asked.as_mut_slice()
            && only.kind == Kind::Joining
        {
            // "to" alone begins a word that is being typed.
            only.readings.retain(|reading| !reading.sure);
            only.weight = 1000;
        }
        if asked.iter().all(|word| word.kind == Kind::Handling) {
            // Only "large" was typed so far: then it is what is looked for.
            asked.iter_mut().for_each(|word| word.weight = 1000);
        }
        Self { asked }
    }

    /// Sum of the words' weights.
    pub fn weight(&self) -> u32 {
        self.asked.iter().map(|word| word.weight).sum()
    }

    /// Other ways to put the query: with the dataset's words for the
    /// kitchen's, with neighbours written as one word, with one word as two.
    pub fn other_ways(&self, index: &Index, phrases: &[MatchedPhrase]) -> Vec<Self> {
        let mut ways = Vec::new();
        ways.extend(self.in_dataset_words(index, phrases));
        ways.extend(self.joined(index));
        ways.extend(self.split(index));
        ways
    }

    fn in_dataset_words(&self, index: &Index, phrases: &[MatchedPhrase]) -> Option<Self> {
        let mut kept = vec![true; self.asked.len()];
        let mut added = Vec::new();
        for matched in phrases {
            let free = matched.words.iter().all(|at| kept[*at]);
            if matched.phrase.dataset.is_empty() || !free || matched.fit < 800 {
                continue;
            }
            matched.words.iter().for_each(|at| kept[*at] = false);
            let cut = words(&matched.phrase.dataset).into_iter().map(|mut word| {
                word.unfinished = false;
                word
            });
            let new: Vec<Asked> = cut.filter_map(|word| Asked::read(index, word)).collect();
            // The words that come in weigh together what the phrase weighed.
            let old: u32 = matched.words.iter().map(|at| self.asked[*at].weight).sum();
            let all = new.iter().map(|word| word.weight).sum::<u32>().max(1);
            added.extend(new.into_iter().map(|word| Asked {
                weight: (word.weight * old.max(600) / all).max(1),
                ..word
            }));
        }
        if added.is_empty() {
            return None;
        }
        let old = self.asked.iter().zip(kept).filter(|(_, kept)| *kept);
        added.extend(old.map(|(word, _)| word.clone()));
        Some(Self { asked: added })
    }

    /// "corn starch" as "cornstarch".
    fn joined(&self, index: &Index) -> Option<Self> {
        (1..self.asked.len()).find_map(|at| {
            let (first, second) = (&self.asked[at - 1].word, &self.asked[at].word);
            let text = format!("{}{}", first.text, second.text);
            index.dictionary.exact(&text)?;
            let word = Word {
                text,
                unfinished: false,
                ..first.clone()
            };
            let mut asked = self.asked.clone();
            asked.remove(at);
            asked[at - 1] = Asked::read(index, word)?;
            Some(Self { asked })
        })
    }

    /// "breadcrumbs" as "bread crumbs", for words that no entry holds.
    fn split(&self, index: &Index) -> Option<Self> {
        self.asked.iter().enumerate().find_map(|(at, asked)| {
            let text = &asked.word.text;
            if !text.is_ascii() || text.len() < 6 || index.dictionary.exact(text).is_some() {
                return None;
            }
            let cut = (3..=text.len() - 3).find(|cut| {
                let (first, second) = text.split_at(*cut);
                index.dictionary.exact(first).is_some() && index.dictionary.exact(second).is_some()
            })?;
            let (first, second) = text.split_at(cut);
            let part = |text: &str| {
                let word = Word {
                    text: text.to_owned(),
                    unfinished: false,
                    ..asked.word.clone()
                };
                Asked::read(index, word)
            };
            let mut words = self.asked.clone();
            words.splice(at..=at, [part(first)?, part(second)?]);
            Some(Self { asked: words })
        })
    }
}

/// The last name before a comma is what the others describe: "strawberry jam"
/// is jam.
fn stress_last_name(asked: &mut [Asked]) {
    let last = asked
        .iter_mut()
        .rfind(|word| word.word.segment == 0 && word.kind == Kind::Name);
    if let Some(word) = last {
        word.weight = word.weight * 5 / 4;
    }
}

impl Asked {
    /// Reads one word; nothing for words that say nothing.
    fn read(index: &Index, word: Word) -> Option<Self> {
        let term = index.dictionary.exact(&word.text);
        let one = crate::plural::singular(&word.text);
        let kind = term.map_or(Kind::Name, |term| index.dictionary.kind(term));
        if kind == Kind::Joining && !word.unfinished {
            return None;
        }
        let weight = match kind {
            Kind::Joining | Kind::Handling => lexicon::HANDLING_WEIGHT,
            Kind::Usual => lexicon::USUAL_WEIGHT,
            Kind::State { .. } => lexicon::STATE_WEIGHT,
            Kind::Heading { .. } => lexicon::HEADING_WEIGHT,
            Kind::Name => 1000,
        };
        Some(Self {
            weight,
            kind,
            readings: readings(index, &word, &one, term),
            word,
        })
    }

    /// Whether only the first letter or two of the word have been typed.
    pub fn hardly_begun(&self) -> bool {
        self.word.unfinished && self.word.text.len() <= 2
    }

    /// How well the word fits a term, thousandths.
    pub fn fit(&self, term: Term) -> Option<u16> {
        let at = self
            .readings
            .binary_search_by_key(&term, |reading| reading.term);
        at.ok().map(|at| self.readings[at].fit)
    }
}

/// How many times more entries a longer word must have than the word that is
/// written, for the written one to be thought its beginning ("chick").
const COMMONER: usize = 20;

fn readings(index: &Index, word: &Word, one: &str, exact: Option<Term>) -> Vec<Reading> {
    let dictionary = &index.dictionary;
    let mut found = Vec::new();
    if let Some(term) = exact {
        let sure = |term, fit| Reading {
            term,
            fit,
            sure: true,
            typed: 1000,
        };
        found.push(sure(term, 1000));
        let answers = lexicon::answers(one).iter();
        found.extend(answers.filter_map(|(word, fit)| Some(sure(dictionary.exact(word)?, *fit))));
    }
    let entries = exact.map_or(0, |term| index.postings(term).len());
    let longer = dictionary.beginning(&word.text).into_iter();
    found.extend(longer.filter_map(|reading| {
        let commoner = index.postings(reading.term).len() > entries * COMMONER;
        let fit = match (commoner, word.unfinished) {
            (true, _) => reading.fit,
            _ if exact.is_none() => reading.fit,
            (_, true) if word.text.len() == 1 => reading.fit,
            (_, true) => (u32::from(reading.fit) * 600 / 1000) as u16,
            (_, false) => return None,
        };
        Some(Reading { fit, ..reading })
    }));
    if found.is_empty() {
        found = dictionary.similar(&word.text, word.unfinished);
    }
    best_of_each(found)
}

/// A row of kitchen words that a query holds.
#[derive(Debug, Clone)]
pub struct MatchedPhrase<'index> {
    /// The row.
    pub phrase: &'index KitchenPhrase,
    /// The places in the query of the words that match it.
    pub words: Vec<usize>,
    /// How well the worst of them fits, thousandths.
    pub fit: u16,
}

/// The rows that a query holds, longest first; rows whose words are all part
/// of a longer row that is held are left out.
pub fn held_phrases<'index>(index: &'index Index, query: &Query) -> Vec<MatchedPhrase<'index>> {
    // Nearly every row has a word that nothing asked for can mean.
    let mut meant = vec![false; index.dictionary.terms()];
    for reading in query.asked.iter().flat_map(|asked| &asked.readings) {
        meant[reading.term.0 as usize] = true;
    }
    let mut held: Vec<MatchedPhrase> = index
        .phrases
        .iter()
        .filter(|phrase| phrase.terms.iter().all(|term| meant[term.0 as usize]))
        .filter_map(|phrase| held(phrase, query))
        .collect();
    held.sort_by_key(|matched| std::cmp::Reverse(matched.words.len()));
    let mut kept: Vec<MatchedPhrase> = Vec::new();
    for matched in held {
        let part_of_longer = kept.iter().any(|longer| {
            longer.words.len() > matched.words.len()
                && longer.fit >= matched.fit
                && matched.words.iter().all(|at| longer.words.contains(at))
        });
        if !part_of_longer {
            kept.push(matched);
        }
    }
    kept
}

fn held<'index>(phrase: &'index KitchenPhrase, query: &Query) -> Option<MatchedPhrase<'index>> {
    let mut words: Vec<usize> = Vec::with_capacity(phrase.terms.len());
    let mut worst = 1000;
    for term in &phrase.terms {
        let (at, fit) = query
            .asked
            .iter()
            .enumerate()
            .filter(|(at, _)| !words.contains(at))
            .filter_map(|(at, asked)| asked.fit(*term).map(|fit| (at, fit)))
            .max_by_key(|(at, fit)| (*fit, std::cmp::Reverse(*at)))?;
        words.push(at);
        worst = worst.min(fit);
    }
    // "Chocolate, milk" may be chocolate milk, "milk chocolate" is not.
    let turned = words.windows(2).any(|pair| {
        let (first, second) = (&query.asked[pair[0]].word, &query.asked[pair[1]].word);
        pair[0] > pair[1] && first.segment == second.segment
    });
    if turned {
        worst = worst * 6 / 10;
    }
    Some(MatchedPhrase {
        phrase,
        words,
        fit: worst,
    })
}
