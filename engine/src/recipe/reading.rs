//! Whole lines: read, matched with foods and weighed.

use super::doubt::Doubt;
use super::line::{LineAmount, LineKind, LineReading, read_line};
use super::preparation::{self, Role};
use super::weigh::{Route, WeighProblem, Weighed, weigh, weigh_unknown};
use super::{Correction, RecipeLine, WeighedLine};
use crate::foods::{FoodId, FoodMatch, FoodMatcher, FoodTable};
use crate::units::Unit;
use serde::Serialize;

/// Foods proposed for a line.
const PROPOSALS: usize = 8;

/// Confidence below which no food is taken. Confidence is the share of right
/// answers (`engine/search/src/confidence.rs`); below this, three of four would be wrong.
const LEAST_CONFIDENCE: u8 = 25;

/// Confidence below which a person is asked to look.
const SURE: u8 = 70;

/// A lower match is near the best if it is at least one third as likely; our
/// own judgement.
const NEAR_ONE_IN: u16 = 3;

/// A line that was read as far as it goes.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ReadLine {
    /// Index of the line in its recipe.
    pub line: usize,
    /// The line as typed.
    pub text: String,
    /// What its words say.
    pub reading: LineReading,
    /// Foods that may be meant, best first.
    pub matches: Vec<FoodMatch>,
    /// The food that is taken.
    pub food: Option<FoodId>,
    /// Its weight, or why there is none.
    pub weight: Result<Weighed, WeighProblem>,
    /// What a person may want to look at.
    pub doubts: Vec<Doubt>,
}

impl ReadLine {
    /// What arithmetic needs of the line; nothing for headings and blank
    /// lines, which are no part of the recipe's totals.
    pub fn weighed(&self) -> Option<WeighedLine> {
        if self.reading.kind != LineKind::Ingredient {
            return None;
        }
        let weighed = self.weight.as_ref().ok();
        Some(WeighedLine {
            bounds: weighed.map(|weighed| (weighed.low, weighed.high)),
            ..WeighedLine::new(self.line, self.food, weighed.map(|weighed| weighed.grams))
        })
    }
}

/// Reads the lines of a recipe. What a person has set right wins over what is
/// read.
pub fn read_lines(
    foods: &FoodTable,
    matcher: &dyn FoodMatcher,
    lines: &[RecipeLine],
) -> Vec<ReadLine> {
    lines
        .iter()
        .enumerate()
        .map(|(index, line)| read_one(foods, matcher, index, line))
        .collect()
}

fn read_one(
    foods: &FoodTable,
    matcher: &dyn FoodMatcher,
    index: usize,
    line: &RecipeLine,
) -> ReadLine {
    let mut reading = read_line(&line.text);
    let Correction { food, recipe, .. } = &line.correction;
    if food.is_some() || recipe.is_some() {
        // Whoever chose a food for a line says that it is an ingredient.
        reading.kind = LineKind::Ingredient;
    }
    let matches = if reading.kind == LineKind::Ingredient && !reading.food_words.is_empty() {
        matches_of(matcher, &reading)
    } else {
        Vec::new()
    };
    let mut doubts = doubts_of(&reading);
    let food = food.or_else(|| take_food(foods, &reading, &matches, &mut doubts));
    let weight = match (line.correction.weight, food) {
        (Some(grams), _) => Ok(Weighed::corrected(grams)),
        (None, Some(food)) => weigh(foods, food, &reading),
        (None, None) => weigh_unknown(&reading),
    };
    let weight = weight.map(|mut weighed| {
        doubts.append(&mut weighed.doubts);
        weighed
    });
    if matches!(&weight, Ok(weighed) if weighed.route == Route::Corrected) {
        doubts.retain(|doubt| !is_about_the_amount(doubt));
    }
    ReadLine {
        line: index,
        text: line.text.clone(),
        reading,
        matches,
        food,
        weight,
        doubts,
    }
}

/// Looks up the foods that a line may mean. What comes in a can is canned,
/// also where the line does not say so; the pieces that a food is made into
/// need not be known to the dataset. Of these ways to ask, the first with a
/// sure answer is taken, and otherwise the surest.
fn matches_of(matcher: &dyn FoodMatcher, reading: &LineReading) -> Vec<FoodMatch> {
    let food_words = reading.food_words.to_lowercase();
    let tells = |word: &&String| {
        let said = food_words.split([' ', ',']).any(|one| one == word.as_str());
        !said && preparation::role(word) != Some(Role::Handling)
    };
    let is_state = |word: &&String| preparation::role(word) != Some(Role::Form);
    let said: Vec<String> = reading.preparation.iter().filter(tells).cloned().collect();
    let states: Vec<String> = said.iter().filter(is_state).cloned().collect();
    let canned = comes_canned(reading).then(|| [said.as_slice(), &["canned".to_owned()]].concat());
    let mut surest = Vec::new();
    for words in canned.into_iter().chain([said, states]) {
        let found = matcher.matches(&reading.food_words, &words, PROPOSALS);
        if confidence(&found) > confidence(&surest) {
            surest = found;
        }
        if confidence(&surest) >= SURE {
            break;
        }
    }
    surest
}

fn confidence(found: &[FoodMatch]) -> u8 {
    found.first().map_or(0, |best| best.confidence)
}

/// Whether the line counts cans or states what they hold.
fn comes_canned(reading: &LineReading) -> bool {
    let counted = match &reading.amount {
        LineAmount::Stated { quantity } => quantity.unit.noun(),
        _ => None,
    };
    [counted, reading.container.as_deref()].contains(&Some("can"))
}

/// Takes the best match, or one near it that can be weighed where the best
/// cannot.
fn take_food(
    foods: &FoodTable,
    reading: &LineReading,
    matches: &[FoodMatch],
    doubts: &mut Vec<Doubt>,
) -> Option<FoodId> {
    let best = matches
        .first()
        .filter(|best| best.confidence >= LEAST_CONFIDENCE)?;
    if best.confidence < SURE {
        doubts.push(Doubt::FoodUnsure {
            confidence: best.confidence,
        });
        if [" and ", " & ", " + "]
            .iter()
            .any(|joint| reading.food_words.contains(joint))
        {
            doubts.push(Doubt::SeveralFoods);
        }
    }
    let lacks_measure = |food| {
        matches!(
            weigh(foods, food, reading),
            Err(WeighProblem::NoSuchMeasure { .. })
        )
    };
    if !lacks_measure(best.food) {
        return Some(best.food);
    }
    let near = |other: &&FoodMatch| {
        u16::from(other.confidence) * NEAR_ONE_IN >= u16::from(best.confidence)
            && weigh(foods, other.food, reading).is_ok()
    };
    match matches.iter().skip(1).find(near) {
        Some(other) => {
            doubts.push(Doubt::TakenAsWeighable { over: best.food });
            Some(other.food)
        }
        None => Some(best.food),
    }
}

/// What the words alone leave open.
fn doubts_of(reading: &LineReading) -> Vec<Doubt> {
    let range = match &reading.amount {
        LineAmount::Stated { quantity } if quantity.is_range() => Some(quantity.clone()),
        _ => None,
    };
    // A counted can is weighed by the dataset's can of that food.
    let states_contents = reading.container.is_some()
        && matches!(&reading.amount, LineAmount::Stated { quantity }
            if !matches!(quantity.unit, Unit::Count(_)));
    let drains = states_contents && reading.preparation.iter().any(|word| word == "drained");
    [
        reading.approximate.then_some(Doubt::Approximate),
        range.map(|range| Doubt::RangeMiddleUsed { range }),
        reading.optional.then_some(Doubt::OptionalCounted),
        reading.and_more.then_some(Doubt::MoreNotCounted),
        reading
            .or_instead
            .clone()
            .map(|instead| Doubt::OffersChoice { instead }),
        drains.then_some(Doubt::DrainedContainer),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Whether a doubt is settled once a person has set the weight.
const fn is_about_the_amount(doubt: &Doubt) -> bool {
    matches!(
        doubt,
        Doubt::Approximate | Doubt::RangeMiddleUsed { .. } | Doubt::DrainedContainer
    )
}
