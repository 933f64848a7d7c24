//! Weight of a household measure, from the food's own measures.

use crate::exact::rounding::round_half_up_to;
use crate::foods::Measure;
use crate::units::VolumeUnit;
use rust_decimal::Decimal;

/// What one unit of a food weighs, and by which of its measures.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) struct UnitWeight {
    /// Grams of `amount` of the measure.
    pub grams: Decimal,
    /// How many of the asked units these are.
    pub units: Decimal,
    /// The dataset's words for the measure.
    pub words: String,
}

impl UnitWeight {
    fn grams_per_unit(&self) -> Decimal {
        self.grams / self.units
    }
}

/// Words with which the dataset's measures of volume begin.
const VOLUMES: [(&str, VolumeUnit); 6] = [
    ("cup", VolumeUnit::Cup),
    ("fl oz", VolumeUnit::FluidOunce),
    ("tbsp", VolumeUnit::Tablespoon),
    ("tablespoon", VolumeUnit::Tablespoon),
    ("tsp", VolumeUnit::Teaspoon),
    ("teaspoon", VolumeUnit::Teaspoon),
];

/// Forms of a measure that hold more than pieces as served do.
const NOT_AS_SERVED: [&str; 4] = ["mashed", "pureed", "ground", "melted"];

/// What one `unit` of the food weighs.
///
/// The measure `used` to weigh the line comes first. Otherwise the heaviest
/// measure in the same unit decides, so that the credit is not overstated,
/// leaving out mashed and pureed forms where there are others; then one in
/// another unit of volume. Measures of a part of a unit ("1/3 cup") are rounded
/// most coarsely and serve only where nothing else does.
pub(crate) fn unit_weight(
    measures: &[Measure],
    unit: &str,
    used: Option<u16>,
) -> Option<UnitWeight> {
    let read: Vec<(&Measure, UnitWeight)> = measures
        .iter()
        .filter_map(|measure| Some((measure, in_units(measure, unit)?)))
        .collect();
    if let Some((_, weight)) = read
        .iter()
        .find(|(measure, _)| Some(measure.number) == used)
    {
        return Some(weight.clone());
    }
    read.into_iter()
        .max_by(|(a, a_weight), (b, b_weight)| {
            let rank = |measure: &Measure| {
                (
                    begins_with(&measure.words, unit),
                    !NOT_AS_SERVED
                        .iter()
                        .any(|form| measure.words.contains(form)),
                    measure.amount >= Decimal::ONE,
                )
            };
            (rank(a), a_weight.grams_per_unit()).cmp(&(rank(b), b_weight.grams_per_unit()))
        })
        .map(|(_, weight)| weight)
}

fn in_units(measure: &Measure, unit: &str) -> Option<UnitWeight> {
    if measure.amount <= Decimal::ZERO || measure.grams.grams() <= Decimal::ZERO {
        return None;
    }
    let units = match (millilitres(unit), millilitres(&measure.words)) {
        (Some(asked), Some(own)) => measure.amount * own / asked,
        (None, _) if begins_with(&measure.words, unit) => measure.amount,
        _ => return None,
    };
    Some(UnitWeight {
        grams: measure.grams.grams(),
        units,
        words: measure.words.clone(),
    })
}

fn millilitres(words: &str) -> Option<Decimal> {
    VOLUMES
        .iter()
        .find(|(unit, _)| begins_with(words, unit))
        .map(|(_, volume)| volume.millilitres().millilitres())
}

fn begins_with(words: &str, unit: &str) -> bool {
    words
        .strip_prefix(unit)
        .is_some_and(|rest| !rest.starts_with(char::is_alphanumeric))
}

/// The ounces that the measure `used` names, as in "slice (1 oz)", beside its
/// weight. The dataset rounds such weights to whole grams (28 g, 85 g, 113 g),
/// so the grams alone would fall just short of the ounces they stand for.
pub(super) fn named_ounces(
    measures: &[Measure],
    used: Option<u16>,
    grams_per_ounce: Decimal,
) -> Option<UnitWeight> {
    let measure = measures
        .iter()
        .find(|measure| Some(measure.number) == used)?;
    let names_ounces = measure.words.contains("oz") && !measure.words.contains("fl oz");
    let grams = measure.grams.grams();
    let quarter = Decimal::new(25, 2);
    let ounces = round_half_up_to(grams / grams_per_ounce, quarter);
    let off = (grams - ounces * grams_per_ounce).abs();
    (names_ounces && ounces > Decimal::ZERO && off <= Decimal::new(5, 1)).then(|| UnitWeight {
        grams,
        units: ounces,
        words: measure.words.clone(),
    })
}
