//! What single words and runs of words of a line say.

use crate::recipe::preparation::{self, LONGEST_NAME, Role};
use crate::units::vocabulary::{self, LONGEST_PHRASE, UnitWord, VagueKind};
use crate::units::{Amount, Quantity, QuantityError, Unit, read_amount};

/// Words without an amount that a line starts with: "some", "a few".
pub(super) fn vague_start(text: &str) -> Option<(&str, &str)> {
    let ends: Vec<usize> = text
        .char_indices()
        .filter(|(_, character)| character.is_whitespace())
        .map(|(at, _)| at)
        .take(LONGEST_PHRASE)
        .collect();
    ends.iter().rev().find_map(|end| {
        let words = &text[..*end];
        let unknown = vocabulary::vague(words) == Some(VagueKind::Unknown);
        unknown.then(|| (words, text[*end..].trim_start()))
    })
}

/// A vague measure without a number that a line starts with: "pinch of salt".
pub(super) fn vague_measure(text: &str) -> Option<(Quantity, &str)> {
    let (UnitWord::Vague(noun), rest) = vocabulary::leading_unit(text)? else {
        return None;
    };
    let quantity = Quantity::exactly(Amount::ONE, Unit::counted(&noun));
    let rest = rest.strip_prefix("of ").unwrap_or(rest);
    (!rest.is_empty()).then_some((quantity, rest))
}

/// The text after an amount that could not be read: what follows the
/// offending words and the unit after them.
pub(super) fn after_fault<'t>(text: &'t str, error: &QuantityError) -> &'t str {
    let rest = text
        .split_once(error.words())
        .map_or(text, |(_, after)| after)
        .trim_start();
    let (first, after) = rest.split_once(char::is_whitespace).unwrap_or((rest, ""));
    match vocabulary::unit(bare(first)) {
        Some(_) => after.trim_start(),
        None => rest,
    }
}

/// A word without the marks around it.
pub(super) fn bare(word: &str) -> &str {
    word.trim_matches(|c: char| !c.is_alphanumeric() && c != '%')
}

pub(super) fn words_of(text: &str) -> impl Iterator<Item = &str> {
    text.split_whitespace()
        .map(bare)
        .filter(|word| !word.is_empty())
}

pub(super) fn is_joint(word: &str) -> bool {
    ["and", "or", "then", "&", "if", "necessary"]
        .iter()
        .any(|joint| joint.eq_ignore_ascii_case(word))
}

/// Words that say what an amount stands for.
pub(super) fn is_total(word: &str) -> bool {
    ["total", "net", "each", "weight", "wt", "altogether", "in"]
        .iter()
        .any(|one| one.eq_ignore_ascii_case(word))
        || is_basis(word)
}

/// The trade's abbreviations for "as purchased" and "edible portion".
pub(super) fn is_basis(word: &str) -> bool {
    ["AP", "EP"].contains(&word)
}

/// The lengths among words: "10-inch" of "10-inch flour tortillas".
pub(super) fn lengths(words: &[&str]) -> Vec<String> {
    (0..words.len())
        .filter_map(|at| {
            let length = length_words(&words[at..]);
            (length > 0).then(|| words[at..at + length].join(" "))
        })
        .collect()
}

/// How many of the first words are a length: "1/2-inch", "10\"", "1 inch".
pub(super) fn length_words(words: &[&str]) -> usize {
    let is_number = |word: &str| word.starts_with(|c: char| c.is_numeric());
    let Some(first) = words.first().filter(|word| is_number(word)) else {
        return 0;
    };
    let first = first.trim_end_matches('.');
    let has_unit = ["inch", "inches", "-in", "\"", "”", "″", "cm", "mm"]
        .iter()
        .any(|unit| first.ends_with(unit));
    let unit_follows = words
        .get(1)
        .is_some_and(|word| ["inch", "inches", "in.", "cm", "mm"].contains(word));
    match (has_unit, unit_follows) {
        (true, _) => 1,
        (false, true) => 2,
        (false, false) => 0,
    }
}

pub(super) fn done_to_food(word: &str) -> bool {
    matches!(
        preparation::role(word),
        Some(Role::Cut | Role::Form | Role::State | Role::Handling | Role::Manner)
    )
}

/// How many of the first words are a name that only looks like preparation.
fn name_length(words: &[&str]) -> usize {
    let is_name = |length: &usize| {
        let phrase: Vec<&str> = words[..*length].iter().map(|word| bare(word)).collect();
        preparation::role(&phrase.join(" ")) == Some(Role::Name)
    };
    (2..=LONGEST_NAME.min(words.len()))
        .rev()
        .find(is_name)
        .unwrap_or(0)
}

/// The words that are no part of a name that only looks like preparation.
pub(super) fn outside_names<'w>(words: &[&'w str]) -> Vec<&'w str> {
    let mut outside = Vec::new();
    let mut at = 0;
    while at < words.len() {
        match name_length(&words[at..]) {
            0 => {
                outside.push(words[at]);
                at += 1;
            }
            length => at += length,
        }
    }
    outside
}

/// The words for the state that a food is in; not the "dry" of "patted dry".
pub(super) fn states<'w>(words: &[&'w str]) -> Vec<&'w str> {
    let tells_how = |at: usize| {
        at.checked_sub(1)
            .is_some_and(|before| preparation::role(words[before]) == Some(Role::Handling))
    };
    (0..words.len())
        .filter(|at| preparation::role(words[*at]) == Some(Role::State) && !tells_how(*at))
        .map(|at| words[at])
        .collect()
}

/// Where the words of preparation at the end start: "onions | chopped fine".
/// The first word is always the food's.
pub(super) fn end_of_food(words: &[&str]) -> usize {
    let trails = |word: &&&str| {
        let word = bare(word);
        let role = preparation::role(word);
        is_joint(word) || matches!(role, Some(Role::Cut | Role::Handling | Role::Manner))
    };
    let run = words.iter().skip(1).rev().take_while(trails).count();
    let start = words.len() - run;
    let says_what = words[start..].iter().any(|word| {
        matches!(
            preparation::role(bare(word)),
            Some(Role::Cut | Role::Handling)
        )
    });
    if says_what { start } else { words.len() }
}

/// The food's words without the preparation before them; states are kept, as
/// they may be part of the name: "fresh finely chopped parsley".
pub(super) fn food_of<'w>(words: &[&'w str]) -> Vec<&'w str> {
    let mut kept = Vec::new();
    let mut at = 0;
    while at + 1 < words.len() && name_length(&words[at..]) == 0 {
        let length = length_words(&words[at..]);
        if (1..words.len() - at).contains(&length) {
            at += length;
            continue;
        }
        let word = bare(words[at]);
        let goes_with_next = || {
            let next = bare(words[at + 1]);
            is_joint(next) || done_to_food(next)
        };
        match preparation::role(word) {
            Some(Role::Cut | Role::Handling) => {}
            Some(Role::State) => kept.push(words[at]),
            Some(Role::Manner) if goes_with_next() => {}
            None if is_joint(word) && at > 0 && goes_with_next() => {}
            _ => break,
        }
        at += 1;
    }
    kept.extend(&words[at..]);
    kept
}

/// A remark after the food: "butter for the pan", "apples such as Gala".
pub(super) fn split_remark(text: &str) -> (&str, Option<&str>) {
    [" for ", " such as ", " at room ", " cut into ", " plus "]
        .iter()
        .find_map(|opener| text.find(opener))
        .map_or((text, None), |at| (&text[..at], Some(text[at..].trim())))
}

/// The first food of a choice, where it is plain which words each food has:
/// "butter or margarine", but not "chicken or vegetable broth". "Chopped or
/// sliced" is no choice of foods. `named` tells whether the food was named
/// before this text.
pub(super) fn split_choice(text: &str, named: bool) -> (&str, Option<&str>) {
    let Some(at) = text.to_ascii_lowercase().find(" or ") else {
        return (text, None);
    };
    let (one, other) = (&text[..at], text[at + " or ".len()..].trim_start());
    let names = |text| words_of(text).filter(|word| !done_to_food(word)).count();
    if names(one) == 0 && !named || names(other) == 0 {
        return (text, None);
    }
    let has_amount = matches!(read_amount(other), Ok(Some(_)));
    let plain = named || names(one) > 1 || words_of(other).count() == 1 || has_amount;
    (if plain { one } else { text }, Some(other))
}
