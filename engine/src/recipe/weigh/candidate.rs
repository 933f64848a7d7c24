//! Measures that fit a line, and which of them fits best.

use super::measure_words::MeasureWords;
use super::{NamedMeasure, Route, Step, Weighed, asked};
use crate::foods::Measure;
use crate::recipe::doubt::Doubt;
use crate::recipe::line::LineReading;
use crate::recipe::preparation::{self, Role};
use crate::units::{Amount, Grams, Quantity};
use std::cmp::Reverse;

/// The words of a line and its food, in the form in which they are compared.
#[derive(Debug, Clone)]
pub(super) struct LineWords {
    /// What the line says, of food and preparation.
    pub said: Vec<String>,
    /// The noun of the food's words: "breast" in "chicken breasts".
    pub noun: Option<String>,
    /// What the food's description says.
    pub described: Vec<String>,
    /// What the line says of cutting.
    pub cuts: Vec<String>,
    /// Numbers of inches that the line says: "10" of "10-inch tortillas".
    pub inches: Vec<String>,
    /// Whether the line's amount is the stated contents of a container.
    pub from_container: bool,
}

impl LineWords {
    pub fn new(reading: &LineReading, description: &str) -> Self {
        let first = reading.food_words.split(',').next().unwrap_or("");
        let cuts = |word: &&String| matches!(preparation::role(word), Some(Role::Cut));
        Self {
            said: stems(&reading.food_words)
                .chain(
                    reading
                        .preparation
                        .iter()
                        .map(|word| preparation::stem(word)),
                )
                .collect(),
            noun: stems(first).last(),
            described: stems(description).collect(),
            cuts: reading.preparation.iter().filter(cuts).cloned().collect(),
            inches: inches(&reading.notes.join(" ")),
            from_container: reading.container.is_some(),
        }
    }

    /// Whether the line says a word, also as two words: "corn dog".
    pub fn says(&self, stem: &str) -> bool {
        self.said.iter().any(|word| word == stem)
            || self.said.windows(2).any(|pair| pair.concat() == stem)
    }
}

/// The numbers of inches in a text: `8` of `(approx 8" dia)`, "8-inch".
pub(super) fn inches(text: &str) -> Vec<String> {
    let text = text.replace(" inch", "-inch");
    text.split(|c: char| c.is_whitespace() || matches!(c, '(' | ')'))
        .filter_map(|word| {
            let word = word.trim_end_matches(['.', ',']);
            ["-inches", "-inch", "\"", "”", "″"]
                .iter()
                .find_map(|unit| word.strip_suffix(unit))
        })
        .filter(|number| number.starts_with(|c: char| c.is_numeric()))
        .flat_map(|number| match number.split_once('-') {
            // "7-8" is a range, "8-1/4" a mixed number.
            Some((low, high)) if !high.contains('/') => vec![low, high],
            _ => vec![number],
        })
        .map(str::to_owned)
        .collect()
}

fn stems(text: &str) -> impl Iterator<Item = String> {
    text.split(|c: char| !c.is_alphabetic() && c != '-')
        .filter(|word| !word.is_empty())
        .map(preparation::stem)
}

/// A measure that can weigh the line's unit.
pub(super) struct Candidate<'m> {
    pub measure: &'m Measure,
    pub words: MeasureWords,
    /// How many of what the measure describes make one of the line's unit.
    pub per_unit: Amount,
    /// How well the unit itself fits; larger is better.
    pub fit: u32,
    /// Steps that lead from the line's unit to the measure.
    pub steps: Vec<Step>,
    /// Doubts that come with this measure.
    pub doubts: Vec<Doubt>,
}

impl Candidate<'_> {
    fn matched(&self, line: &LineWords) -> usize {
        let said = |group: &&Vec<String>| group.iter().any(|word| line.says(word));
        let named = self.words.asides.iter().any(|word| line.says(word));
        self.words.details.iter().filter(said).count() + usize::from(named)
    }

    /// The describing words that neither the line nor the food's description
    /// says.
    fn unsaid(&self, line: &LineWords) -> Vec<String> {
        let said = |word: &String| line.says(word) || line.described.contains(word);
        let groups = self.words.details.iter();
        let unsaid = groups.filter(|group| !group.iter().any(said));
        unsaid.flatten().cloned().collect()
    }

    /// Order of preference: what the line says of preparation, then the unit,
    /// then as few words as possible that the line does not say.
    fn rank(&self, line: &LineWords) -> (Reverse<usize>, usize, Reverse<u32>) {
        let unsaid = self.unsaid(line).len();
        (Reverse(self.matched(line)), unsaid, Reverse(self.fit))
    }

    fn grams_of(&self, amount: Amount) -> Option<Grams> {
        let per_measure = Amount::from_digits(&self.measure.amount.to_string())?;
        let times = amount.times(self.per_unit)?.over(per_measure)?;
        Some(Grams::new(times.of(self.measure.grams.grams())))
    }
}

/// Weighs by the measure that fits best; the bounds take in those that fit as
/// well. Nothing if there is no candidate.
pub(super) fn best(
    quantity: &Quantity,
    mut candidates: Vec<Candidate<'_>>,
    line: &LineWords,
) -> Option<Weighed> {
    candidates.retain(|candidate| candidate.grams_of(quantity.high).is_some());
    let first = (0..candidates.len()).min_by_key(|at| {
        let candidate = &candidates[*at];
        // Of several volumes in one unit the largest: the dataset's rounding
        // to whole grams changes its weight least.
        let volume = candidate.words.volume.map(|_| candidate.measure.grams);
        (candidate.rank(line), Reverse(volume), *at)
    })?;
    let best = &candidates[first];
    let rank = best.rank(line);
    let unsaid = best.unsaid(line);
    // A volume measure that says no more than the line is meant. Among those
    // that say more, and among pieces of several sizes, none is better than
    // another.
    let open = best.words.volume.is_none() || !unsaid.is_empty();
    let rivals: Vec<&Candidate<'_>> = candidates
        .iter()
        .filter(|other| open && other.rank(line) == rank)
        .collect();
    let weights = |amount| {
        rivals
            .iter()
            .filter_map(move |rival| rival.grams_of(amount))
    };
    let low = best.grams_of(quantity.low)?;
    let high = best.grams_of(quantity.high)?;
    let mut steps = asked(quantity);
    steps.extend(best.steps.iter().cloned());
    let measure = NamedMeasure::from(best.measure);
    steps.push(Step::Measure {
        measure: measure.clone(),
    });
    Some(Weighed {
        grams: best.grams_of(quantity.used())?,
        low: weights(quantity.low).fold(low, Grams::min),
        high: weights(quantity.high).fold(high, Grams::max),
        doubts: doubts(best, &rivals, unsaid, line),
        route: Route::Measure { measure },
        steps,
    })
}

fn doubts(
    best: &Candidate<'_>,
    rivals: &[&Candidate<'_>],
    unsaid: Vec<String>,
    line: &LineWords,
) -> Vec<Doubt> {
    let mut doubts = best.doubts.clone();
    let one = best.grams_of(Amount::ONE);
    let others: Vec<NamedMeasure> = rivals
        .iter()
        .filter(|rival| rival.grams_of(Amount::ONE) != one)
        .map(|rival| NamedMeasure::from(rival.measure))
        .collect();
    if !others.is_empty() {
        doubts.push(Doubt::OtherMeasures { others });
    }
    // A measure is not packed unless someone says so.
    if unsaid.iter().any(|word| word != "unpacked") {
        doubts.push(Doubt::MeasureSaysMore { words: unsaid });
    }
    let cut_is_said = |word: &String| {
        let stem = preparation::stem(word);
        let details = best.words.details.iter().flatten();
        details.chain(&line.described).any(|word| *word == stem)
    };
    // Pieces are counted before they are cut.
    let is_volume = best.words.volume.is_some();
    if is_volume && !line.cuts.is_empty() && !line.cuts.iter().any(cut_is_said) {
        doubts.push(Doubt::CutNotInMeasure {
            words: line.cuts.clone(),
        });
    }
    doubts
}
