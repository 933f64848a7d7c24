//! What the dataset's words for a measure say.

use crate::foods::Measure;
use crate::recipe::preparation::{self, Role};
use crate::units::vocabulary::{self, UnitWord};
use crate::units::{Amount, Size, Unit, VolumeUnit, read_amount};

/// A measure's words, taken apart.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub(super) struct MeasureWords {
    /// The unit and how many of it the words describe, where they describe a
    /// volume: "cup, chopped", "serving 1/2 cup".
    pub volume: Option<(VolumeUnit, Amount)>,
    /// The pieces or containers that are counted, in the singular.
    pub heads: Vec<String>,
    /// Their size.
    pub size: Option<Size>,
    /// Words that say how the food is cut, filled or left; those of one group
    /// are alternatives.
    pub details: Vec<Vec<String>>,
    /// Words in brackets that say which food is meant: "roll (hamburger)".
    pub asides: Vec<String>,
    /// Whether the words can count at all. "Piece (yield from 1 lb raw meat)"
    /// tells what a pound yields and is no piece.
    pub counts: bool,
}

/// Words of a measure that say nothing about the food.
const FILLERS: [&str; 17] = [
    "and", "or", "of", "the", "a", "an", "about", "approx", "nlea", "serving", "size", "dia", "ns",
    "as", "yield", "yields", "with",
];

/// Takes a measure's words apart.
pub(super) fn read(measure: &Measure) -> MeasureWords {
    let words = measure
        .words
        .replace("not packed", "unpacked")
        .replace("loosely packed", "");
    let plain = outside_brackets(&words);
    let mut read = MeasureWords {
        counts: !words.contains("yield from 1 lb"),
        ..MeasureWords::default()
    };
    let rest = match serving_of_volume(&words) {
        Some((unit, amount, rest)) => {
            read.volume = Some((unit, amount));
            read.heads.push("serving".to_owned());
            rest.to_owned()
        }
        None => read.unit_or_head(&plain),
    };
    if read.volume.is_some() && !holds_what_it_says(measure, &words) {
        read.volume = None;
    }
    read.details(&rest, &words);
    read.asides = asides(&words)
        .into_iter()
        .filter(|word| !read.heads.contains(word))
        .collect();
    read
}

impl MeasureWords {
    /// Reads the unit, or the size and what is counted; returns what follows.
    fn unit_or_head(&mut self, plain: &str) -> String {
        let mut rest = plain.trim();
        loop {
            match vocabulary::leading_unit(rest) {
                Some((UnitWord::Size(size), after)) => {
                    self.size.get_or_insert(size);
                    rest = after.trim_start_matches([',', ' ']);
                }
                Some((UnitWord::Volume(unit), after)) if self.heads.is_empty() => {
                    self.volume = Some((unit, Amount::ONE));
                    return after.to_owned();
                }
                // The dataset's ounces, pounds and grams add nothing: a line
                // that states a mass needs no measure.
                Some((UnitWord::Mass(_), _)) => {
                    self.counts = false;
                    return String::new();
                }
                Some((UnitWord::Container(noun) | UnitWord::Piece(noun), after))
                    if noun == "each" || after.starts_with("or ") =>
                {
                    let noun = if noun == "each" {
                        "item".to_owned()
                    } else {
                        noun
                    };
                    self.heads.push(noun);
                    rest = after.trim_start_matches("or ");
                }
                Some((
                    UnitWord::Container(noun)
                    | UnitWord::Piece(noun)
                    | UnitWord::Part(noun)
                    | UnitWord::Vague(noun),
                    after,
                )) => {
                    self.heads.push(noun);
                    rest = after;
                    break;
                }
                _ => break,
            }
        }
        if self.heads.is_empty() {
            rest = self.food_as_head(rest);
        }
        // "slice, large", "Potato medium": the size may follow.
        for word in rest.split(|c: char| !c.is_alphanumeric()) {
            if let Some(UnitWord::Size(size)) = vocabulary::unit(word) {
                self.size.get_or_insert(size);
            }
        }
        rest.to_owned()
    }

    /// "potato large": the food itself is counted.
    fn food_as_head<'w>(&mut self, rest: &'w str) -> &'w str {
        let end = rest
            .find(|c: char| !c.is_alphabetic())
            .unwrap_or(rest.len());
        let first = &rest[..end];
        if first.is_empty() || preparation::role(first).is_some() {
            return rest;
        }
        self.heads.push(vocabulary::singular(first));
        &rest[end..]
    }

    /// Collects the words that describe: all outside brackets, and those of
    /// preparation inside.
    fn details(&mut self, rest: &str, words: &str) {
        let is_volume = self.volume.is_some();
        let described = |word: &&str| {
            !FILLERS.contains(word)
                && !matches!(vocabulary::unit(word), Some(UnitWord::Volume(_)))
                && (is_volume || !matches!(vocabulary::unit(word), Some(UnitWord::Size(_))))
                && (preparation::is_thickness(word)
                    || preparation::role(word) != Some(Role::Manner))
        };
        let outside = outside_brackets(rest).to_lowercase();
        let found: Vec<String> = words_of(&outside)
            .filter(described)
            .chain(
                prepared_in_brackets(&words.to_lowercase())
                    .iter()
                    .map(String::as_str),
            )
            .map(preparation::stem)
            .collect();
        self.details = if words.contains(" or ") && !found.is_empty() {
            vec![found]
        } else {
            found.into_iter().map(|word| vec![word]).collect()
        };
    }
}

/// "serving 1/2 cup", "serving (2 tbsp)": a volume behind the word serving.
fn serving_of_volume(words: &str) -> Option<(VolumeUnit, Amount, &str)> {
    let (first, rest) = words.split_at_checked("serving".len())?;
    if !first.eq_ignore_ascii_case("serving") {
        return None;
    }
    let rest = rest.trim_start_matches([' ', '(']);
    let read = read_amount(rest).ok()??;
    let plain = read.rest.trim_matches([')', ' ']);
    match read.quantity.unit {
        Unit::Volume(unit)
            if !read.approximate && !read.quantity.is_range() && plain.is_empty() =>
        {
            Some((unit, read.quantity.low, plain))
        }
        _ => None,
    }
}

/// Whether a volume agrees with the fluid ounces that its words also give:
/// a "cup 12 fl oz" is a vessel, not a measuring cup.
fn holds_what_it_says(measure: &Measure, words: &str) -> bool {
    let Some((before, _)) = words.split_once(" fl oz") else {
        return true;
    };
    let start = before
        .rfind(|c: char| !c.is_ascii_digit() && c != '.')
        .map_or(0, |at| at + 1);
    let (Some(ounces), Some(cups)) = (
        Amount::from_digits(&before[start..]),
        Amount::from_digits(&measure.amount.to_string()),
    ) else {
        return true;
    };
    let is_cup = words.to_lowercase().starts_with("cup");
    let eight = Amount::whole(8);
    !is_cup || ounces == eight || Some(ounces) == cups.times(eight)
}

fn outside_brackets(words: &str) -> String {
    let mut depth = 0_usize;
    words
        .chars()
        .filter(|character| {
            match character {
                '(' => depth += 1,
                ')' => {
                    depth = depth.saturating_sub(1);
                    return false;
                }
                _ => {}
            }
            depth == 0
        })
        .collect()
}

/// Words of preparation in brackets, where they describe the measure and not
/// a number of pieces or what becomes of it.
fn prepared_in_brackets(words: &str) -> Vec<String> {
    let mut found = Vec::new();
    for bracket in words.split('(').skip(1) {
        let inside = bracket.split(')').next().unwrap_or("");
        if ["yield", "makes", "nlea"]
            .iter()
            .any(|one| inside.contains(one))
        {
            continue;
        }
        let pieces: Vec<&str> = inside.split_whitespace().collect();
        for (at, word) in pieces.iter().enumerate() {
            let counted = at > 0 && pieces[at - 1].chars().all(|c| c.is_ascii_digit());
            let word = word.trim_matches(|c: char| !c.is_alphabetic());
            let prepares = matches!(
                preparation::role(word),
                Some(Role::Cut | Role::Form | Role::Handling)
            );
            if prepares && !counted {
                found.push(word.to_owned());
            }
        }
    }
    found
}

/// Stems of the words in brackets, where the brackets hold no figures.
fn asides(words: &str) -> Vec<String> {
    words
        .to_lowercase()
        .split('(')
        .skip(1)
        .map(|bracket| bracket.split(')').next().unwrap_or(""))
        .filter(|inside| !inside.contains(|c: char| c.is_ascii_digit()))
        .flat_map(words_of)
        .map(preparation::stem)
        .collect()
}

fn words_of(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphabetic())
        .filter(|word| !word.is_empty())
}
