//! What the engine finds out about a line, in words.

use super::reading::Level;
use crate::format;
use crate::language::{Say, of_table, say};
use crate::named;
use engine::exact::Digits;
use engine::recipe::{Doubt, NamedMeasure, Route, Step, WeighProblem};
use engine::reference::LineStudy;
use engine::yields::{TrimRoute, YieldRoute};

pub const HEADING: Say = Say("line-heading");
pub const NO_FOOD: Say = Say("line-no-food");

/// A level in words.
pub fn level(level: Level) -> Say {
    match level {
        Level::Set => Say("line-set"),
        Level::Sure => Say("line-read"),
        Level::Check => Say("line-check"),
        Level::Open => Say("line-open"),
        Level::Aside => Say("line-aside"),
    }
}

/// Why a line has no weight, and what to do about it.
pub fn problem(problem: &WeighProblem) -> String {
    let what = sentence(&named::weigh(problem));
    let remedy = named::weigh_remedy(problem).to_string();
    say(
        "line-problem",
        &[("what", what.into()), ("remedy", remedy.into())],
    )
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
    say("line-the-recipe", &[("title", title.into())])
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
        steps.push(Say("line-by-hand").to_string());
    }
    if let Some(edible) = &line.edible
        && edible.edible != edible.stated
    {
        let factor = format::number(edible.factor, Digits(2));
        steps.push(format!("× {factor}, {}", trim(&edible.route)));
    }
    if let Some(cooked) = &line.cooked {
        let factor = format::number(cooked.factor, Digits(2));
        steps.push(say(
            "line-cooked",
            &[
                ("factor", factor.into()),
                ("route", yield_route(&cooked.route).into()),
            ],
        ));
    }
    for treatment in &line.treatments {
        let text = of_table(&treatment.words);
        if !steps.contains(&text) {
            steps.push(text);
        }
    }
    steps.join(" · ")
}

fn step(step: &Step) -> String {
    match step {
        Step::Asked { quantity } => named::quantity(quantity),
        Step::Middle { amount } => say("line-middle", &[("amount", amount.to_string().into())]),
        Step::Mass { unit, grams } => format!(
            "{} = {} g",
            named::counted("1", unit.symbol()),
            format::stated(grams.grams())
        ),
        Step::Ratio { one, holds, of } => format!(
            "{} = {}",
            named::counted("1", one.symbol()),
            named::counted(&holds.to_string(), of.symbol())
        ),
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
        TrimRoute::Nothing => Say("line-nothing-off").to_string(),
        TrimRoute::Refuse { percent, what } => {
            let share = ("percent", percent.to_string().into());
            match what.as_str() {
                "" => say("line-refuse-off", &[share]),
                what => say("line-off", &[share, ("what", what.to_lowercase().into())]),
            }
        }
        TrimRoute::Table { words, .. } => of_table(words),
    }
}

/// Where a cooking yield comes from.
pub fn yield_route(route: &YieldRoute) -> String {
    match route {
        YieldRoute::Measured => Say("line-yield-measured").to_string(),
        YieldRoute::Table { source } => {
            say("line-yield-table", &[("source", source.as_str().into())])
        }
        YieldRoute::DatasetPair => Say("line-yield-dataset").to_string(),
    }
}

/// A doubt, with what to do about it.
pub fn doubt(doubt: &Doubt) -> String {
    let plain = match doubt {
        Doubt::Approximate => Say("line-approximate"),
        Doubt::RangeMiddleUsed { .. } => Say("line-range"),
        Doubt::OptionalCounted => Say("line-optional"),
        Doubt::MoreNotCounted => Say("line-more"),
        Doubt::DrainedContainer => Say("line-drained"),
        Doubt::SeveralFoods => Say("line-several"),
        Doubt::TakenAsWeighable { .. } => Say("line-weighable"),
        Doubt::OuncesTakenAsWeight => Say("line-ounces"),
        Doubt::OffersChoice { instead } => {
            return say("line-choice", &[("instead", instead.as_str().into())]);
        }
        Doubt::FoodUnsure { confidence } => {
            return say("line-unsure", &[("percent", confidence.to_string().into())]);
        }
        Doubt::SizeAssumed { size } => {
            let size = named::size(*size).to_string();
            return say("line-size-assumed", &[("size", size.into())]);
        }
        Doubt::SizeNotInMeasure { size } => {
            let size = named::size(*size).to_string();
            return say("line-not-in-measure", &[("words", size.into())]);
        }
        Doubt::OtherMeasures { others } => {
            let others: Vec<String> = others.iter().map(measure).collect();
            return say("line-could-be", &[("others", others.join("; ").into())]);
        }
        Doubt::MeasureSaysMore { words } => {
            return say("line-measured-as", &[("words", words.join(", ").into())]);
        }
        Doubt::CutNotInMeasure { words } => {
            return say("line-not-in-measure", &[("words", words.join(", ").into())]);
        }
    };
    plain.to_string()
}
