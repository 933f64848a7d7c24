//! What the engine finds out about a line, in words.

use super::reading::Level;
use crate::format;
use engine::exact::Digits;
use engine::recipe::{Doubt, NamedMeasure, Route, Step, WeighProblem};
use engine::reference::LineStudy;
use engine::yields::{TrimRoute, YieldRoute};

pub const HEADING: &str = "heading, not an ingredient";
pub const NO_FOOD: &str = "No food was found for these words: choose the one that is meant.";

/// A level in words.
pub fn level(level: Level) -> &'static str {
    match level {
        Level::Set => "set by hand",
        Level::Sure => "read",
        Level::Check => "please check",
        Level::Open => "not counted",
        Level::Aside => "left aside",
    }
}

/// Why a line has no weight, and what to do about it.
pub fn problem(problem: &WeighProblem) -> String {
    let what = match problem {
        // The measures that there are follow in a list of their own.
        WeighProblem::NoSuchMeasure { wanted, .. } => {
            format!("This food has no measure for “{wanted}”")
        }
        _ => sentence(&problem.to_string()),
    };
    format!("{what}: unknown, not counted as zero. {}", problem.remedy())
}

/// A text that starts with a capital.
pub fn sentence(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| {
        first.to_uppercase().chain(letters).collect()
    })
}

/// A line that names a recipe of the book.
pub fn the_recipe(title: &str) -> String {
    format!("the recipe “{title}”")
}

/// The way from the words to the weight in the dish, as short as it stays
/// clear: conversions of units are left out.
pub fn short_steps(line: &LineStudy) -> String {
    let is_conversion = |step: &Step| matches!(step, Step::Mass { .. } | Step::Ratio { .. });
    steps_but(line, &is_conversion)
}

/// The whole way from the words to the weight in the dish.
pub fn steps(line: &LineStudy) -> String {
    steps_but(line, &|_| false)
}

fn steps_but(line: &LineStudy, left_out: &dyn Fn(&Step) -> bool) -> String {
    let Ok(weighed) = &line.read.weight else {
        return String::new();
    };
    let told = weighed.steps.iter().filter(|step| !left_out(step));
    let mut steps: Vec<String> = told.map(step).collect();
    if weighed.route == Route::Corrected {
        steps.push("weight set by hand".to_owned());
    }
    if let Some(edible) = &line.edible
        && edible.edible != edible.stated
    {
        let factor = format::number(edible.factor, Digits(2));
        steps.push(format!("× {factor}, {}", trim(&edible.route)));
    }
    if let Some(cooked) = &line.cooked {
        let factor = format::number(cooked.factor, Digits(2));
        steps.push(format!("× {factor} cooked, {}", yield_route(&cooked.route)));
    }
    for treatment in &line.treatments {
        let text = treatment.words.clone();
        if !steps.contains(&text) {
            steps.push(text);
        }
    }
    steps.join(" · ")
}

fn step(step: &Step) -> String {
    match step {
        Step::Asked { quantity } => quantity.to_string(),
        Step::Middle { amount } => format!("the middle, {amount}"),
        Step::Mass { unit, grams } => {
            format!("1 {} = {} g", unit.symbol(), format::stated(grams.grams()))
        }
        Step::Ratio { one, holds, of } => format!("1 {} = {holds} {}", one.symbol(), of.symbol()),
        Step::Measure { measure: named } => measure(named),
    }
}

/// A measure with its weight: "1 cup, chopped = 160 g".
pub fn measure(measure: &NamedMeasure) -> String {
    format!(
        "{} {} = {} g",
        format::stated(measure.amount),
        measure.words,
        format::stated(measure.grams.grams())
    )
}

/// What is taken off before the food is edible.
fn trim(route: &TrimRoute) -> String {
    match route {
        TrimRoute::Nothing => "nothing taken off".to_owned(),
        TrimRoute::Refuse { percent, what } if what.is_empty() => {
            format!("{percent} % refuse taken off")
        }
        TrimRoute::Refuse { percent, what } => {
            format!("{percent} % taken off: {}", what.to_lowercase())
        }
        TrimRoute::Table { words, .. } => words.clone(),
    }
}

/// Where a cooking yield comes from.
pub fn yield_route(route: &YieldRoute) -> String {
    match route {
        YieldRoute::Measured => "by the weight that was measured".to_owned(),
        YieldRoute::Table { source } => format!("by {source}"),
        YieldRoute::DatasetPair => "by the dataset’s raw and cooked entries".to_owned(),
    }
}

/// A doubt, with what to do about it.
pub fn doubt(doubt: &Doubt) -> String {
    match doubt {
        Doubt::Approximate => "about this much".to_owned(),
        Doubt::RangeMiddleUsed { .. } => "the middle of the range is used".to_owned(),
        Doubt::OptionalCounted => "may be left out; it is counted".to_owned(),
        Doubt::MoreNotCounted => "more is used; only this much is counted".to_owned(),
        Doubt::OffersChoice { instead } => format!("or “{instead}”: the first is counted"),
        Doubt::DrainedContainer => "what drains off is counted too".to_owned(),
        Doubt::FoodUnsure { confidence } => format!("{confidence} % sure of the food"),
        Doubt::SeveralFoods => "several foods? Each belongs on a line of its own".to_owned(),
        Doubt::TakenAsWeighable { .. } => "a better match has no measure for this unit".to_owned(),
        Doubt::SizeAssumed { size: assumed } => {
            format!("no size is said: {} is taken", assumed.word())
        }
        Doubt::SizeNotInMeasure { size: said } => {
            format!("the measure does not say “{}”", said.word())
        }
        Doubt::OtherMeasures { others } => {
            let others: Vec<String> = others.iter().map(measure).collect();
            format!("could also be {}", others.join("; "))
        }
        Doubt::MeasureSaysMore { words } => format!("measured as “{}”", words.join(", ")),
        Doubt::CutNotInMeasure { words } => {
            format!("the measure does not say “{}”", words.join(", "))
        }
        Doubt::OuncesTakenAsWeight => "ounces are taken as weight, not as fluid ounces".to_owned(),
    }
}
