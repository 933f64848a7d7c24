//! What the words of a food's entry are worth to a search.

use crate::Entry;
use crate::lexicon::{self, Kind};
use crate::tokens::{Word, words};
use crate::vocabulary::{Term, Vocabulary};

/// One word of an entry.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Mark {
    /// The word.
    pub term: Term,
    /// Worth of finding it, thousandths.
    pub worth: u16,
    /// What the entry loses if the query does not have it, thousandths.
    pub unasked: u16,
}

/// An entry as a search sees it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Description {
    /// Its words.
    pub marks: Vec<Mark>,
    /// What the entry loses in every search, thousandths: brands, restaurants
    /// and baby foods stand behind plain foods.
    pub handicap: u16,
}

/// Names that many descriptions begin with, and what an entry loses when they
/// are not asked for.
const BROAD_NAMES: &[(&str, u16)] = &[
    ("sauce", 350),
    ("soup", 600),
    ("salad", 250),
    ("dressing", 250),
    ("oil", 500),
    ("syrup", 400),
    ("topping", 500),
    ("bread", 450),
    ("roll", 450),
    ("cracker", 350),
    ("cooky", 500),
    ("cheese", 250),
    ("lettuce", 250),
    ("squash", 300),
    ("bean", 350),
    ("usda", 150),
    ("commodity", 150),
    ("school", 100),
    ("lunch", 100),
];

fn broad_name(word: &str) -> Option<u16> {
    let found = BROAD_NAMES.iter().find(|(name, _)| *name == word);
    found.map(|(_, unasked)| *unasked)
}

/// Reads one entry.
pub fn describe(entry: &Entry, vocabulary: &mut Vocabulary) -> Description {
    let mut marks = description_marks(entry, vocabulary);
    if !entry.common_names.to_lowercase().contains("commodity") {
        marks.extend(plain_marks(entry.common_names, 900, vocabulary));
    }
    marks.extend(plain_marks(entry.manufacturer, 400, vocabulary));
    let brand = if entry.manufacturer.is_empty() {
        0
    } else {
        300
    };
    Description {
        marks,
        handicap: brand + group_handicap(entry.group),
    }
}

/// Words that are worth finding but lose nothing when they are not asked for.
pub fn plain_marks(text: &str, worth: u16, vocabulary: &mut Vocabulary) -> Vec<Mark> {
    words(text)
        .iter()
        .map(|word| Mark {
            term: vocabulary.learn(&word.text),
            worth,
            unasked: 0,
        })
        .collect()
}

/// What entries of a group lose in every search.
fn group_handicap(group: u16) -> u16 {
    match group {
        300 => 900,
        2100 => 350,
        2200 => 150,
        3500 => 500,
        3600 => 500,
        _ => 0,
    }
}

/// What a word costs unasked that is usual in one group of foods: soups are
/// canned, and butter, bread and crisps are salted unless they say otherwise.
fn usual_in_group(group: u16, word: &str) -> Option<u16> {
    match (group, word) {
        (600, "canned" | "condensed") => Some(60),
        (600, "dry") => Some(150),
        (100 | 400 | 600 | 700 | 1800 | 2500, "salted") => Some(10),
        (100 | 400 | 600 | 700 | 1800 | 2500, "unsalted") => Some(60),
        _ => None,
    }
}

fn description_marks(entry: &Entry, vocabulary: &mut Vocabulary) -> Vec<Mark> {
    let cut = words(entry.description);
    let terms: Vec<Term> = cut
        .iter()
        .map(|word| vocabulary.learn(&word.text))
        .collect();
    let names_a_food =
        |term: &Term| matches!(vocabulary.kind(*term), Kind::Name | Kind::State { .. });
    // After a heading ("Spices,") the next segment is the food's own name.
    let first = cut.iter().take_while(|word| word.segment == 0).count();
    let heading = first < cut.len() && !terms[..first].iter().any(names_a_food);
    let cooking_named = terms
        .iter()
        .any(|term| lexicon::is_way_of_cooking(vocabulary.text(*term)));
    let broad = terms[..first]
        .iter()
        .all(|term| broad_name(vocabulary.text(*term)).is_some());
    let mut capitals = [450, 300].into_iter();
    let mut clause = Clause::default();
    let mut marks = Vec::with_capacity(cut.len());
    for (at, (word, term)) in cut.iter().zip(terms).enumerate() {
        clause.reach(word.segment);
        let kind = vocabulary.kind(term);
        let place = Place {
            clause,
            bracketed: word.bracketed,
            in_heading: heading && word.segment == 0,
            beyond_name: word.segment.saturating_sub(u16::from(heading)),
            joined: joined(&cut, at),
            broad,
        };
        let text = vocabulary.text(term);
        let mut unasked = match text {
            "cooked" if cooking_named => 20,
            // Cooked without salt is the plain form; canned without is special.
            "unsalted" if !cooking_named => 100,
            _ => usual_in_group(entry.group, text).unwrap_or_else(|| place.unasked(text, kind)),
        };
        if word.capitals && kind == Kind::Name {
            unasked = capitals.next().unwrap_or(30);
        }
        marks.push(Mark {
            term,
            worth: place.worth(),
            unasked,
        });
        clause.read(word);
    }
    marks
}

/// Whether the words at hand name what is in or on the food, or is not.
#[derive(Clone, Copy, Default)]
struct Clause {
    segment: u16,
    open: bool,
    denied: bool,
}

/// How a word is joined to its neighbours.
#[derive(Clone, Copy, Default, PartialEq, Eq)]
enum Joined {
    #[default]
    No,
    And,
    Or,
}

impl Clause {
    /// Ends the clause at the comma.
    fn reach(&mut self, segment: u16) {
        if segment != self.segment {
            *self = Self {
                segment,
                ..Self::default()
            };
        }
    }

    /// Begins a clause after "with", "made", "without" …
    fn read(&mut self, word: &Word) {
        if lexicon::opens_clause(&word.text) {
            self.open = true;
            self.denied = word.text == "without";
        }
    }
}

/// How the word at a place is joined to the one before or after it.
fn joined(words: &[Word], at: usize) -> Joined {
    let beside = |at: Option<usize>| {
        at.and_then(|at| words.get(at))
            .map(|word| word.text.as_str())
    };
    match (beside(at.checked_sub(1)), beside(at.checked_add(1))) {
        (Some("or"), _) => Joined::Or,
        (Some("and"), _) | (_, Some("and" | "or")) => Joined::And,
        _ => Joined::No,
    }
}

/// Where in a description a word stands.
struct Place {
    clause: Clause,
    bracketed: bool,
    in_heading: bool,
    /// Segments after the food's own name.
    beyond_name: u16,
    joined: Joined,
    /// The description begins with a name for many foods.
    broad: bool,
}

impl Place {
    /// Worth of finding the word.
    fn worth(&self) -> u16 {
        match (
            self.clause.denied,
            self.clause.open,
            self.bracketed,
            self.beyond_name,
        ) {
            (true, ..) => 100,
            (_, true, ..) => 450,
            (_, _, true, _) => 700,
            (.., 0) => 1000,
            (.., 1) => 920,
            _ => 820,
        }
    }

    /// Loss when the word is not asked for.
    fn unasked(&self, singular: &str, kind: Kind) -> u16 {
        let in_name = self.beyond_name == 0 && !self.in_heading;
        match kind {
            _ if self.clause.denied => 40,
            Kind::Joining => 0,
            Kind::Handling | Kind::Usual => 12,
            Kind::Heading { unasked } => unasked,
            Kind::State { unasked } if self.clause.open => unasked / 2,
            Kind::State { unasked } if in_name => unasked.max(500),
            Kind::State { unasked } => unasked,
            Kind::Name if self.bracketed => 40,
            // Another name for the food, or one more sort that it covers.
            Kind::Name if self.joined == Joined::Or => 40,
            Kind::Name if self.joined == Joined::And && self.beyond_name > 0 => 60,
            Kind::Name if singular.starts_with(|first: char| first.is_ascii_digit()) => 30,
            Kind::Name if self.clause.open => 220,
            Kind::Name if self.in_heading => 100,
            Kind::Name if in_name && self.broad => broad_name(singular).unwrap_or(900),
            Kind::Name if in_name => 900,
            Kind::Name if self.beyond_name == 1 => 260,
            Kind::Name => 130,
        }
    }
}
