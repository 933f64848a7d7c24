//! Puts the words of a line where they belong.

use super::segments::{Segment, segments};
use super::words::{
    after_fault, bare, done_to_food, end_of_food, food_of, is_basis, is_joint, is_total,
    length_words, lengths, outside_names, split_choice, split_remark, states, vague_measure,
    vague_start, words_of,
};
use super::{LineAmount, LineKind, LineReading, opening};
use crate::recipe::preparation::{self, Role};
use crate::units::vocabulary::{self, LONGEST_PHRASE, UnitWord, VagueKind};
use crate::units::{CountUnit, ReadAmount, Size, Unit, read_amount};

/// Reads a line that is an ingredient.
pub(super) fn sort(text: &str) -> LineReading {
    let mut sorter = Sorter {
        reading: LineReading::of(LineKind::Ingredient),
        amount: None,
        vague: None,
        food: Vec::new(),
        named: false,
    };
    let (part, text) = match opening::part_of(text) {
        Some((part, rest)) => (Some(part), rest),
        None => (None, text),
    };
    let rest = sorter.opening_amount(text);
    for segment in segments(rest) {
        sorter.segment(segment);
    }
    sorter.food.extend(part.map(str::to_owned));
    sorter.finish()
}

struct Sorter<'t> {
    reading: LineReading,
    amount: Option<ReadAmount<'t>>,
    vague: Option<String>,
    food: Vec<String>,
    /// Whether `food` holds more than states.
    named: bool,
}

impl<'t> Sorter<'t> {
    /// Reads the amount at the start of the line and returns what follows it.
    fn opening_amount(&mut self, text: &'t str) -> &'t str {
        if let Some((words, rest)) = vague_start(text) {
            self.vague = Some(words.to_owned());
            return rest;
        }
        match read_amount(text) {
            Ok(None) => match vague_measure(text) {
                Some((quantity, rest)) => {
                    self.reading.amount = LineAmount::Vague {
                        words: quantity.unit.to_string(),
                        quantity: Some(quantity),
                    };
                    rest
                }
                None => text,
            },
            Ok(Some(read)) => {
                let rest = read.rest;
                self.amount = Some(read);
                rest
            }
            Err(error) => {
                let rest = after_fault(text, &error);
                self.reading.amount = LineAmount::Faulty { error };
                rest
            }
        }
    }

    /// Whether words have been read that leave the amount unknown.
    const fn has_no_weight(&self) -> bool {
        self.vague.is_some() || !matches!(self.reading.amount, LineAmount::Absent)
    }

    fn segment(&mut self, segment: Segment<'t>) {
        if segment.bracketed {
            let inner = segments(segment.text);
            if inner.len() > 1 {
                for one in inner {
                    self.plain_segment(one.text, true);
                }
                return;
            }
        }
        self.plain_segment(segment.text, segment.bracketed);
    }

    fn plain_segment(&mut self, text: &'t str, bracketed: bool) {
        let text = self.without_vague_words(text);
        if text.is_empty() || self.is_added(text) || self.is_amount(text) {
            return;
        }
        let text = self.without_trailing_amount(text, bracketed);
        if self.named
            && let Some(other) = text.strip_prefix("or ")
        {
            self.reading.or_instead = Some(other.to_owned());
            return;
        }
        let (text, instead) = split_choice(text, self.named);
        if let Some(instead) = instead {
            self.reading.or_instead = Some(instead.to_owned());
        }
        let words: Vec<&str> = words_of(text).collect();
        if length_words(&words) == words.len() || words.iter().all(|word| is_total(word)) {
            self.reading.notes.push(text.to_owned());
            return;
        }
        let opens_with = words
            .iter()
            .map(|word| preparation::role(word))
            .find(|role| *role != Some(Role::Manner))
            .flatten();
        let all_known = words
            .iter()
            .all(|word| is_joint(word) || done_to_food(word));
        match opens_with {
            _ if all_known => {
                self.preparation(&words);
                // States also tell one entry of the dataset from another.
                let states = states(&words);
                if !states.is_empty() {
                    self.food.push(states.join(" "));
                }
            }
            Some(Role::Cut | Role::Handling) if self.named => {
                self.preparation(&words);
                self.reading.notes.push(text.to_owned());
            }
            Some(Role::Aside) if self.named => self.reading.notes.push(text.to_owned()),
            _ => self.food_segment(text),
        }
    }

    /// Notes the words that say what is done to the food.
    fn preparation(&mut self, words: &[&str]) {
        for word in words {
            let is_manner = preparation::role(word) == Some(Role::Manner);
            if done_to_food(word) && (!is_manner || preparation::is_thickness(word)) {
                let word = word.to_lowercase();
                if !self.reading.preparation.contains(&word) {
                    self.reading.preparation.push(word);
                }
            }
        }
    }

    /// Takes an amount that is added after the food: "1 cup milk, plus 2
    /// tablespoons".
    fn is_added(&mut self, text: &str) -> bool {
        let Some(more) = text.strip_prefix("plus ") else {
            return false;
        };
        let (Some(amount), Ok(Some(more))) = (&mut self.amount, read_amount(more)) else {
            return false;
        };
        match amount.quantity.plus(&more.quantity) {
            Some(sum) if more.rest.is_empty() => {
                amount.quantity = sum;
                true
            }
            _ => false,
        }
    }

    /// Takes a segment that is an amount, or an amount with preparation.
    fn is_amount(&mut self, text: &'t str) -> bool {
        let Ok(Some(read)) = read_amount(text) else {
            return false;
        };
        let rest: Vec<&str> = words_of(read.rest).collect();
        if !rest
            .iter()
            .all(|word| is_joint(word) || done_to_food(word) || is_total(word))
        {
            return false;
        }
        if self.has_no_weight() {
            return false;
        }
        // "138 count" says how many make a case, not how many are used.
        let tells_size = words_of(text)
            .last()
            .is_some_and(|word| ["ct", "count"].contains(&word.to_lowercase().as_str()));
        match &mut self.amount {
            _ if tells_size => self.reading.notes.push(text.to_owned()),
            Some(_) if matches!(read.quantity.unit, Unit::Count(_)) => {
                self.reading.notes.push(text.to_owned());
            }
            // What cannot be multiplied out stays as it was read first.
            Some(amount) => drop(amount.state(read)),
            None => self.amount = Some(read),
        }
        self.preparation(&rest);
        true
    }

    /// A segment that names the food: words of preparation at its start and
    /// end are split off.
    fn food_segment(&mut self, text: &'t str) {
        let (text, remark) = split_remark(text);
        self.reading.notes.extend(remark.map(str::to_owned));
        let words: Vec<&str> = text
            .split_whitespace()
            .skip_while(|word| is_basis(word) || word.eq_ignore_ascii_case("each"))
            .collect();
        self.reading.notes.extend(lengths(&words));
        let end = end_of_food(&words);
        let kept = food_of(&words[..end]);
        let bare: Vec<&str> = words_of(text).collect();
        self.preparation(&outside_names(&bare));
        let kept = kept.join(" ");
        let kept = kept.trim_matches(|c: char| !c.is_alphanumeric() && c != '%');
        if !kept.is_empty() {
            self.named = true;
            self.food.push(kept.to_owned());
        }
    }

    /// "flour 2 lb": an amount at the end of a line that starts with none.
    fn without_trailing_amount(&mut self, text: &'t str, bracketed: bool) -> &'t str {
        if self.amount.is_some() || self.has_no_weight() || bracketed {
            return text;
        }
        // "cut into 8 wedges" says nothing about the amount.
        let first = words_of(text).next().and_then(preparation::role);
        let is_prepared = matches!(first, Some(Role::Cut | Role::Handling | Role::Manner));
        for (at, _) in text.match_indices(char::is_whitespace) {
            let tail = text[at..].trim_start();
            if let Ok(Some(read)) = read_amount(tail)
                && tail.starts_with(|c: char| !c.is_alphabetic())
                && (is_measured(&read) || !is_prepared && read.quantity.unit != Unit::pieces())
                && words_of(read.rest)
                    .all(|word| is_joint(word) || done_to_food(word) || is_total(word))
            {
                let rest: Vec<&str> = words_of(read.rest).collect();
                self.preparation(&rest);
                self.amount = Some(read);
                return text[..at].trim_end();
            }
        }
        text
    }

    /// Cuts off words that make the amount vague, optional or open-ended,
    /// with all that follows them in the segment.
    fn without_vague_words(&mut self, text: &'t str) -> &'t str {
        let words: Vec<&str> = text.split_whitespace().collect();
        let offset = |word: &str| word.as_ptr() as usize - text.as_ptr() as usize;
        for start in 0..words.len() {
            for length in (1..=LONGEST_PHRASE.min(words.len() - start)).rev() {
                let phrase: Vec<&str> = words[start..start + length]
                    .iter()
                    .map(|word| bare(word))
                    .collect();
                match vocabulary::vague(&phrase.join(" ")) {
                    Some(VagueKind::Unknown) if length > 1 => {
                        self.reading.approximate |= self.amount.is_some();
                        self.vague = Some(phrase.join(" "));
                    }
                    Some(VagueKind::Purpose) => self.vague = Some(phrase.join(" ")),
                    Some(VagueKind::Optional) => self.reading.optional = true,
                    Some(VagueKind::Extra) => self.reading.and_more = true,
                    _ => continue,
                }
                let at = offset(words[start]);
                if length < words.len() - start {
                    self.reading.notes.push(text[at..].to_owned());
                }
                let before = text[..at].trim_end();
                return before.strip_suffix(" or").unwrap_or(before);
            }
        }
        if text.eq_ignore_ascii_case("or") {
            ""
        } else {
            text
        }
    }

    fn finish(mut self) -> LineReading {
        let mut reading =
            std::mem::replace(&mut self.reading, LineReading::of(LineKind::Ingredient));
        reading.food_words = self.food.join(", ");
        if reading.food_words.is_empty() && !reading.preparation.is_empty() {
            reading.food_words = reading.preparation.join(" ");
        }
        let Some(read) = self.amount else {
            if let (Some(words), LineAmount::Absent) = (self.vague, &reading.amount) {
                reading.amount = LineAmount::Vague {
                    words,
                    quantity: None,
                };
            }
            return reading;
        };
        let mut quantity = read.quantity;
        if let Unit::Count(count) = &mut quantity.unit {
            name_counted(count, &mut reading.food_words);
        }
        reading.preparation.extend(read.filling);
        reading.beside = read.beside;
        reading.container = read.container;
        reading.approximate |= read.approximate;
        reading.amount = if is_vague_measure(&quantity.unit) {
            LineAmount::Vague {
                words: quantity.to_string(),
                quantity: Some(quantity),
            }
        } else {
            LineAmount::Stated { quantity }
        };
        reading
    }
}

/// Sorts out what is counted: "3 cloves" are cloves, "3 garlic cloves" are
/// cloves of garlic.
fn name_counted(count: &mut CountUnit, food_words: &mut String) {
    if count.size.is_none() {
        count.size = take_size(food_words);
    }
    if food_words.is_empty() {
        if let Some(noun) = count.noun.take() {
            *food_words = noun;
        }
        return;
    }
    if count.noun.is_some() {
        return;
    }
    let Some((food, last)) = food_words.rsplit_once(' ') else {
        return;
    };
    if let Some(UnitWord::Part(noun)) = vocabulary::unit(last)
        && !food.ends_with(',')
    {
        count.noun = Some(noun);
        *food_words = food.to_owned();
    }
}

/// Takes a size that stands for itself out of the food's words: "onions, large".
fn take_size(food_words: &mut String) -> Option<Size> {
    let parts: Vec<&str> = food_words.split(", ").collect();
    let found = parts
        .iter()
        .enumerate()
        .find_map(|(at, part)| match vocabulary::unit(part) {
            Some(UnitWord::Size(size)) => Some((at, size)),
            _ => None,
        });
    let (at, size) = found?;
    let kept: Vec<&str> = [&parts[..at], &parts[at + 1..]].concat();
    *food_words = kept.join(", ");
    Some(size)
}

fn is_measured(read: &ReadAmount<'_>) -> bool {
    !matches!(read.quantity.unit, Unit::Count(_)) || read.container.is_some()
}

fn is_vague_measure(unit: &Unit) -> bool {
    let meaning = unit.noun().and_then(vocabulary::unit);
    matches!(meaning, Some(UnitWord::Vague(_)))
}
