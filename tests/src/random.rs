//! Random recipes and weeks, the same in every run.
//!
//! Each line exists twice: as kitchen text for the engine, and as the release
//! names its amount.

use crate::sql::{CountedIn, Fraction, Peer, PeerLine, PeerMeasure, SERVINGS_MUST_DIVIDE};
use engine::foods::FoodId;
use engine::recipe::{Correction, RecipeLine};
use engine::units::Grams;
use rand::seq::IndexedRandom;
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rust_decimal::Decimal;
use std::collections::BTreeMap;

/// Amounts as kitchens write them.
const COUNTS: [(&str, i64, i64); 18] = [
    ("1/8", 1, 8),
    ("1/4", 1, 4),
    ("1/3", 1, 3),
    ("3/8", 3, 8),
    ("1/2", 1, 2),
    ("2/3", 2, 3),
    ("3/4", 3, 4),
    ("1", 1, 1),
    ("1 1/3", 4, 3),
    ("1 1/2", 3, 2),
    ("1 2/3", 5, 3),
    ("2", 2, 1),
    ("2.25", 9, 4),
    ("3", 3, 1),
    ("5", 5, 1),
    ("8", 8, 1),
    ("12", 12, 1),
    ("30", 30, 1),
];
/// The smallest amount of which every one of [`COUNTS`] is a multiple is one
/// part in this.
const COUNTS_DIVIDE: i64 = 24;
/// Amounts with a unit of mass.
const WEIGHINGS: [(&str, &str, i64, i64); 14] = [
    ("0.5 g", "g", 1, 2),
    ("45 g", "g", 45, 1),
    ("150 grams", "g", 150, 1),
    ("1 kg", "kg", 1, 1),
    ("2 1/4 kg", "kg", 9, 4),
    ("3/4 oz", "oz", 3, 4),
    ("1 1/3 oz", "oz", 4, 3),
    ("3.5 ounces", "oz", 7, 2),
    ("12 oz", "oz", 12, 1),
    ("1/3 lb", "lb", 1, 3),
    ("1/2 pound", "lb", 1, 2),
    ("1 1/4 lb", "lb", 5, 4),
    ("3 lb 10 oz", "lb", 29, 8),
    ("10 lb", "lb", 10, 1),
];
/// The release's words for measures that mean the same in every kitchen.
const PLAIN_UNITS: [&str; 8] = [
    "cup",
    "tbsp",
    "tablespoon",
    "tsp",
    "fl oz",
    "slice",
    "piece",
    "packet",
];
/// Words that show a measure to be a volume.
const VOLUME_WORDS: [&str; 9] = [
    "cup",
    "tbsp",
    "tablespoon",
    "tsp",
    "teaspoon",
    "fl oz",
    "quart",
    "pint",
    "liter",
];
/// Words for a food, where the food is chosen beside the text.
const NAME: &str = "food";
/// Words that no food answers to.
const NO_FOOD: &str = "qqq";
/// The reckoning's units of mass in ten grams; as fine as a measure's
/// hundredths of a gram for thousandths of its amount need them.
const GRAINS: i64 = 576_000_000;

/// A line, for both ways.
#[derive(Debug, Clone)]
pub struct RandomLine {
    /// For the engine.
    pub typed: RecipeLine,
    /// For the reckoning.
    pub peer: PeerLine,
}

/// A random recipe.
#[derive(Debug, Clone)]
pub struct RandomRecipe {
    /// Number of servings.
    pub servings: u32,
    /// Its lines.
    pub lines: Vec<RandomLine>,
}

/// One day of a random week.
#[derive(Debug, Clone)]
pub struct RandomDay {
    /// Planned meals.
    pub meals: u32,
    /// Choices: a recipe by its place, and its planned servings.
    pub choices: Vec<(usize, u32)>,
}

/// Draws recipes and weeks.
pub struct Draw {
    source: ChaCha8Rng,
    foods: Vec<u32>,
    measures: Vec<PeerMeasure>,
    servings: Vec<u32>,
}

impl Draw {
    /// From the foods and measures of the release.
    pub fn new(peer: &Peer, seed: u64) -> Self {
        Self {
            source: ChaCha8Rng::seed_from_u64(seed),
            foods: peer.foods(),
            measures: measures_without_doubt(peer.measures()),
            servings: (1..=600)
                .filter(|number| SERVINGS_MUST_DIVIDE.is_multiple_of(*number))
                .collect(),
        }
    }

    /// A recipe of one to twelve lines.
    pub fn recipe(&mut self) -> RandomRecipe {
        let lines = self.source.random_range(1..=12);
        RandomRecipe {
            servings: *pick(&mut self.source, &self.servings),
            lines: (0..lines).map(|_| self.line()).collect(),
        }
    }

    /// A week of three to five days with choices among `recipes` recipes; now
    /// and then none is planned of a choice.
    pub fn week(&mut self, recipes: usize) -> Vec<RandomDay> {
        let source = &mut self.source;
        let days = source.random_range(3..=5);
        (0..days)
            .map(|_| RandomDay {
                meals: source.random_range(1..=500),
                choices: (0..source.random_range(2..=7))
                    .map(|_| {
                        let planned = source.random_range(0..400_u32).saturating_sub(40);
                        (source.random_range(0..recipes), planned)
                    })
                    .collect(),
            })
            .collect()
    }

    fn line(&mut self) -> RandomLine {
        let food = *pick(&mut self.source, &self.foods);
        match self.source.random_range(0..100) {
            0..5 => line(format!("{NAME} to taste"), Some(food), None),
            5..10 => self.weighed(None, NO_FOOD),
            10..30 => self.weighed(Some(food), NAME),
            30..40 => self.corrected(food),
            _ => self.measured(),
        }
    }

    /// A line that states a mass.
    fn weighed(&mut self, food: Option<u32>, name: &str) -> RandomLine {
        let (words, unit, numerator, denominator) = *pick(&mut self.source, &WEIGHINGS);
        let amount = (fraction(numerator, denominator), CountedIn::Mass(unit));
        line(format!("{words} {name}"), food, Some(amount))
    }

    /// A line whose weight a person has set.
    fn corrected(&mut self, food: u32) -> RandomLine {
        let tenths: i64 = self.source.random_range(1..20_000);
        let amount = (fraction(tenths, 10), CountedIn::Mass("g"));
        let mut line = line(format!("1 bowl {NAME}"), Some(food), Some(amount));
        line.typed.correction.weight = Some(Grams::new(Decimal::new(tenths, 1)));
        line
    }

    /// A line by a measure of the food.
    fn measured(&mut self) -> RandomLine {
        let measure = pick(&mut self.source, &self.measures).clone();
        let (count, numerator, denominator) = *pick(&mut self.source, &COUNTS);
        let (unit, detail) = unit_and_detail(&measure.words);
        let amount = (
            fraction(numerator, denominator),
            CountedIn::Measure(measure.seq),
        );
        let text = match detail {
            "" => format!("{count} {unit} {NAME}"),
            detail => format!("{count} {unit} {NAME}, {detail}"),
        };
        line(text, Some(measure.food), Some(amount))
    }
}

fn pick<'a, T>(source: &mut ChaCha8Rng, choices: &'a [T]) -> &'a T {
    choices.choose(source).expect("something to choose from")
}

const fn fraction(numerator: i64, denominator: i64) -> Fraction {
    Fraction {
        numerator,
        denominator,
    }
}

fn line(text: String, food: Option<u32>, amount: Option<(Fraction, CountedIn)>) -> RandomLine {
    RandomLine {
        typed: RecipeLine {
            text,
            correction: Correction {
                food: food.map(FoodId::Sr28),
                ..Correction::default()
            },
        },
        peer: PeerLine { food, amount },
    }
}

/// "cup, chopped" is a cup, and chopped.
fn unit_and_detail(words: &str) -> (&str, &str) {
    let (unit, detail) = words.split_once(',').unwrap_or((words, ""));
    (unit.trim(), detail.trim())
}

/// The measures that a line's text names without doubt: in a plain unit,
/// without brackets, and the only one of the food that is a volume or counts
/// this piece. Amounts of which a third is no whole number of the reckoning's
/// mass units are left out.
fn measures_without_doubt(all: Vec<PeerMeasure>) -> Vec<PeerMeasure> {
    let mut of_food: BTreeMap<u32, Vec<PeerMeasure>> = BTreeMap::new();
    for measure in all {
        of_food.entry(measure.food).or_default().push(measure);
    }
    let is_volume = |words: &str| VOLUME_WORDS.iter().any(|word| words.contains(word));
    let alone = |measure: &PeerMeasure, others: &[PeerMeasure]| {
        let (unit, _) = unit_and_detail(&measure.words);
        let rivals = others.iter().filter(|other| {
            other.words.contains(unit) || (is_volume(unit) && is_volume(&other.words))
        });
        PLAIN_UNITS.contains(&unit)
            && !measure.words.contains(['(', '"', '/'])
            && GRAINS % (measure.amount_thousandths * COUNTS_DIVIDE) == 0
            && rivals.count() == 1
    };
    of_food
        .into_values()
        .flat_map(|measures| {
            let kept: Vec<PeerMeasure> = measures
                .iter()
                .filter(|measure| alone(measure, &measures))
                .cloned()
                .collect();
            kept
        })
        .collect()
}
