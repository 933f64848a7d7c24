//! How a line was read, in the few words that stand beside it.

use super::phrases;
use crate::format;
use crate::language::lang_of_food;
use crate::named;
use crate::page::Page;
use crate::tables::StudiedRecipe;
use crate::words::title_or_untitled;
use engine::recipe::{Correction, LineKind, Recipe};
use engine::reference::LineStudy;
use engine::units::Grams;
use yew::prelude::*;

/// How far a reading can be relied on.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Level {
    /// A person has set it right.
    Set,
    /// Nothing speaks against it.
    Sure,
    /// Something was taken one way and may be meant another.
    Check,
    /// Something is unknown, so the line is not counted.
    Open,
    /// No ingredient.
    Aside,
}

impl Level {
    /// Class for the style sheet.
    pub fn class(self) -> &'static str {
        match self {
            Self::Set => "is-set",
            Self::Sure => "is-sure",
            Self::Check => "is-check",
            Self::Open => "is-open",
            Self::Aside => "is-aside",
        }
    }

    /// A square, a full disc, a half disc, a triangle, a dash.
    pub fn mark(self) -> Html {
        let shape = match self {
            Self::Set => html! { <rect class="fill" x="2" y="2" width="12" height="12" /> },
            Self::Sure => html! { <circle class="fill" cx="8" cy="8" r="6" /> },
            Self::Check => html! {<>
                <circle cx="8" cy="8" r="6" />
                <path class="fill" d="M8 2 A6 6 0 0 1 8 14 Z" />
            </>},
            Self::Open => html! {<>
                <path d="M8 1.8 15 14.2 1 14.2 Z" />
                <path d="M8 6.2 V10 M8 12 V12.4" />
            </>},
            Self::Aside => html! { <path d="M4 8 H12" /> },
        };
        html! {
            <svg viewBox="0 0 16 16" role="img" aria-label={phrases::level(self)}>{ shape }</svg>
        }
    }
}

/// What stands beside a line.
#[derive(Debug, Clone, PartialEq)]
pub struct Reading {
    /// How far it can be relied on.
    pub level: Level,
    /// The food.
    pub food: String,
    /// The language of its name, where that is not the one that is spoken.
    pub lang: Option<&'static str>,
    /// How its weight was found, or what is missing.
    pub how: String,
    /// The weight with its unit; empty where there is none.
    pub grams: String,
}

/// The reading of a line; nothing for a blank one.
pub fn reading_of(
    page: &Page,
    recipe: &Recipe,
    study: &StudiedRecipe,
    line: usize,
) -> Option<Reading> {
    let of = study.lines.get(line)?;
    match of.read.reading.kind {
        LineKind::Blank => return None,
        LineKind::Heading => {
            return Some(Reading {
                level: Level::Aside,
                food: phrases::HEADING.to_string(),
                lang: None,
                how: String::new(),
                grams: String::new(),
            });
        }
        LineKind::Ingredient => {}
    }
    let problem = problem_of(of);
    let is_corrected = recipe.lines.get(line)?.correction != Correction::default();
    let weight = weight_of(study, line);
    let how = match &problem {
        Some(problem) => problem.clone(),
        None => how(of),
    };
    let (food, lang) = food_of(page, of);
    Some(Reading {
        level: level_of(of, problem.is_some(), is_corrected),
        food,
        lang,
        how,
        grams: weight.map(format::grams).unwrap_or_default(),
    })
}

/// What keeps a line from being counted, with what to do about it.
pub fn problem_of(line: &LineStudy) -> Option<String> {
    if let Some(problem) = &line.problem {
        return Some(phrases::sentence(&named::prepare(problem)));
    }
    if line.recipe.is_some() {
        return None;
    }
    match &line.read.weight {
        // Which food it is comes first: without it no weight helps.
        _ if line.read.food.is_none() => Some(phrases::NO_FOOD.to_string()),
        Err(problem) => Some(phrases::problem(problem)),
        Ok(_) => None,
    }
}

/// The weight of a line in the dish, where all of it is known.
pub fn weight_of(study: &StudiedRecipe, line: usize) -> Option<Grams> {
    let mut parts = study
        .parts
        .iter()
        .filter(|part| part.line == line)
        .peekable();
    parts.peek()?;
    parts.map(|part| part.weight).sum()
}

fn level_of(line: &LineStudy, has_problem: bool, is_corrected: bool) -> Level {
    if has_problem {
        Level::Open
    } else if !line.read.doubts.is_empty() {
        Level::Check
    } else if is_corrected {
        Level::Set
    } else {
        Level::Sure
    }
}

/// What is called the food of a line, and in which language if not the spoken.
fn food_of(page: &Page, line: &LineStudy) -> (String, Option<&'static str>) {
    if let Some(id) = &line.recipe {
        let recipe = page.contents().recipe(id);
        let title = recipe.map_or_else(|| id.0.clone(), |recipe| title_or_untitled(&recipe.title));
        return (phrases::the_recipe(&title), None);
    }
    let counted = line.cooked.as_ref().map(|cooked| cooked.cooked);
    counted
        .or(line.read.food)
        .and_then(|food| page.tables.reference.foods.food(food))
        .map_or_else(
            || (line.read.reading.food_words.clone(), None),
            |food| (food.description.clone(), lang_of_food(food.id)),
        )
}

/// How the weight was found, and the first doubt about it.
fn how(line: &LineStudy) -> String {
    let doubt = line.read.doubts.first().map(phrases::doubt);
    let steps = phrases::short_steps(line);
    match doubt {
        Some(doubt) if steps.is_empty() => doubt,
        Some(doubt) => format!("{doubt} · {steps}"),
        None => steps,
    }
}
