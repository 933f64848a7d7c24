//! Counts, by the food's own measures of pieces, sizes and containers.

use super::Weighed;
use super::candidate::{self, Candidate, LineWords};
use super::measure_words::{self, MeasureWords};
use crate::foods::Measure;
use crate::recipe::doubt::Doubt;
use crate::tables;
use crate::units::vocabulary::{self, UnitWord};
use crate::units::{Amount, CountUnit, Quantity, Size};
use nutrient_data::kitchen;
use serde::Deserialize;
use std::sync::LazyLock;

/// Words by which the dataset counts a food without naming it.
const ANY_FOOD: [&str; 3] = ["fruit", "item", "vegetable"];

/// Sizes among which an unsaid one lies.
const USUAL_SIZES: [Size; 3] = [Size::Small, Size::Medium, Size::Large];

#[derive(Deserialize)]
struct SizeRow {
    food: String,
    size: Size,
}

static DEFAULT_SIZES: LazyLock<Vec<SizeRow>> = LazyLock::new(|| {
    tables::read("default_sizes.csv", kitchen::DEFAULT_SIZES)
        .unwrap_or_else(|fault| panic!("{fault}"))
        .into_iter()
        .map(|row| row.row)
        .collect()
});

/// The size that is meant where none is said.
fn default_size(line: &LineWords) -> Size {
    DEFAULT_SIZES
        .iter()
        .find(|row| row.food.is_empty() || line.noun.as_ref() == Some(&row.food))
        .map_or(Size::Medium, |row| row.size)
}

/// Weighs a count, or nothing if the food has no measure for it.
pub(super) fn weigh(
    quantity: &Quantity,
    unit: &CountUnit,
    measures: &[Measure],
    line: &LineWords,
) -> Option<Weighed> {
    let candidates = measures
        .iter()
        .filter_map(|measure| candidate(unit, measure, line))
        .collect();
    let mut weighed = candidate::best(quantity, candidates, line)?;
    let size_assumed = weighed
        .doubts
        .iter()
        .any(|doubt| matches!(doubt, Doubt::SizeAssumed { .. }));
    if size_assumed {
        for size in USUAL_SIZES {
            let sized = CountUnit {
                size: Some(size),
                ..unit.clone()
            };
            if let Some(other) = weigh(quantity, &sized, measures, line) {
                weighed.low = weighed.low.min(other.low);
                weighed.high = weighed.high.max(other.high);
            }
        }
    }
    Some(weighed)
}

fn candidate<'m>(
    unit: &CountUnit,
    measure: &'m Measure,
    line: &LineWords,
) -> Option<Candidate<'m>> {
    let words = measure_words::read(measure);
    if !words.counts {
        return None;
    }
    let named = how_named(unit, measure, &words, line)?;
    let (sized, doubt) = how_sized(unit.size, words.size, line)?;
    let measured = candidate::inches(&measure.words);
    let as_long = line.inches.iter().any(|inches| measured.contains(inches));
    Some(Candidate {
        measure,
        words,
        per_unit: Amount::ONE,
        fit: 100 * u32::from(as_long) + 10 * sized + named,
        steps: Vec::new(),
        // A length says the size.
        doubts: doubt.into_iter().filter(|_| !as_long).collect(),
    })
}

/// How well a measure counts what the line counts; nothing if it counts
/// something else.
fn how_named(
    unit: &CountUnit,
    measure: &Measure,
    words: &MeasureWords,
    line: &LineWords,
) -> Option<u32> {
    if let Some(noun) = &unit.noun {
        let number_fits = match &unit.can_number {
            Some(number) => is_can_of(&measure.words, number),
            None => true,
        };
        return (words.heads.contains(noun) && number_fits).then_some(3);
    }
    if words.volume.is_some() {
        return None;
    }
    let Some(head) = words.heads.first() else {
        return words.size.map(|_| 2);
    };
    let is_part = matches!(
        vocabulary::unit(head),
        Some(UnitWord::Part(_) | UnitWord::Container(_) | UnitWord::Vague(_))
    );
    if is_part {
        None
    } else if line.noun.as_ref() == Some(head) {
        Some(4)
    } else if line.says(head) {
        Some(3)
    } else if ANY_FOOD.contains(&head.as_str()) {
        Some(2)
    } else {
        line.described.contains(head).then_some(1)
    }
}

/// How well a measure's size fits, with the doubt that it leaves; nothing if
/// another size is asked for.
fn how_sized(
    asked: Option<Size>,
    measured: Option<Size>,
    line: &LineWords,
) -> Option<(u32, Option<Doubt>)> {
    match (asked, measured) {
        (None, None) => Some((3, None)),
        (Some(asked), Some(measured)) => (asked == measured).then_some((3, None)),
        (Some(size), None) => Some((1, Some(Doubt::SizeNotInMeasure { size }))),
        (None, Some(size)) => {
            let fit = if size == default_size(line) { 2 } else { 1 };
            Some((fit, Some(Doubt::SizeAssumed { size })))
        }
    }
}

/// Whether a measure is a can of this trade number, by its number or by the
/// dimensions that the dataset writes.
fn is_can_of(words: &str, number: &str) -> bool {
    let named = [format!("No. {number}"), format!("#{number}")];
    let by_name = named.iter().any(|name| {
        words.find(name.as_str()).is_some_and(|at| {
            let after = words[at + name.len()..].chars().next();
            after.is_none_or(|next| !next.is_alphanumeric())
        })
    });
    by_name || vocabulary::can_dimensions(number).is_some_and(|size| words.contains(size))
}
