//! Volumes, by the food's own volume measures.

use super::candidate::{self, Candidate, LineWords};
use super::{Step, Weighed, measure_words};
use crate::foods::Measure;
use crate::units::{Quantity, VolumeUnit};

/// Weighs a volume, or nothing if the food has no volume measure.
pub(super) fn weigh(
    quantity: &Quantity,
    unit: VolumeUnit,
    measures: &[Measure],
    line: &LineWords,
) -> Option<Weighed> {
    let candidates = measures
        .iter()
        .filter_map(|measure| candidate(unit, measure))
        .collect();
    candidate::best(quantity, candidates, line)
}

fn candidate(unit: VolumeUnit, measure: &Measure) -> Option<Candidate<'_>> {
    let words = measure_words::read(measure);
    let (measured, amount) = words.volume?;
    let holds = unit.ratio_to(measured)?;
    let steps = if measured == unit {
        Vec::new()
    } else {
        vec![Step::Ratio {
            one: unit,
            holds,
            of: measured,
        }]
    };
    // The same unit first; of the others the largest, whose weight the
    // dataset's rounding to whole grams changes least.
    let place = VolumeUnit::ALL.iter().position(|one| *one == measured)?;
    let fit = if measured == unit {
        u32::MAX
    } else {
        u32::try_from(place).ok()?
    };
    Some(Candidate {
        measure,
        per_unit: holds.over(amount)?,
        words,
        fit,
        steps,
        doubts: Vec::new(),
    })
}
