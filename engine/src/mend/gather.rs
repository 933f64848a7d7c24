//! Looks for changes that could help: line by line, portion by portion, choice
//! by choice, so that a caller can show how far it has come.
//!
//! What is looked at is stated with every answer, for an answer is the least
//! only among what was looked at: swaps and amounts of the lines that carry
//! most of what is out of its limits, portions that are measured, and the
//! recipes that the book serves in the same part of the same kind of meal.

use super::candidate::Candidate;
use super::change::{ChoicePlace, LineWay, Portion, WeekChange};
use super::ground::{Ground, Tools};
use super::steps::Way;
use crate::analysis::amount_in;
use crate::exact::{Digits, round_half_up};
use crate::foods::NutrientId;
use crate::recipe::{Recipe, RecipeId, RecipeLine, ServingSize};
use crate::reference::RecipeStudy;
use crate::rules::Bound;
use crate::swaps::{
    Aim, Change, EnergyBand, Place, SwapOptions, line_in_share, propose, serving_in_share,
};
use crate::units::Servings;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::collections::{BTreeMap, BTreeSet};

/// One piece of looking.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Job {
    /// The swaps and amounts of a line.
    Line { recipe: RecipeId, line: usize },
    /// The portions of a recipe.
    Portion { recipe: RecipeId },
    /// Recipes for a choice.
    Choice { place: ChoicePlace },
}

/// Lines that carry less of a figure than this are not looked at: a change of
/// one would hardly be seen.
const LEAST_CARRIED: f64 = 0.002;

/// All pieces of looking, the most promising lines first.
pub(super) fn jobs(ground: &Ground, tools: Tools<'_>) -> Vec<Job> {
    let ways = ground.ask.ways;
    let mut jobs = Vec::new();
    if ways.swaps || ways.amounts {
        let mut lines = carrying(ground, tools);
        lines.sort_by(|(a, by_a), (b, by_b)| by_b.total_cmp(by_a).then_with(|| a.cmp(b)));
        let most = lines.into_iter().take(ground.ask.most_lines);
        jobs.extend(most.map(|((recipe, line), _)| Job::Line { recipe, line }));
    }
    let needy = ground.needy();
    let slots = || needy.iter().flat_map(|service| ground.slots(service));
    if ways.portions {
        let served: BTreeSet<&RecipeId> = slots().map(|slot| &slot.choice.recipe).collect();
        let open = served.into_iter().filter(|id| !ground.is_recipe_locked(id));
        jobs.extend(open.cloned().map(|recipe| Job::Portion { recipe }));
    }
    if ways.choices {
        let open = slots().filter(|slot| !ground.is_choice_locked(slot.place));
        jobs.extend(open.map(|slot| Job::Choice { place: slot.place }));
    }
    jobs
}

/// The lines that carry what is out of its limits, each with its share of the
/// figures, added up.
fn carrying(ground: &Ground, tools: Tools<'_>) -> Vec<((RecipeId, usize), f64)> {
    let mut carried: BTreeMap<(RecipeId, usize), f64> = BTreeMap::new();
    for demand in ground.unmet() {
        let requirement = &demand.now.requirement;
        let Some(nutrient) = requirement.nutrient else {
            continue;
        };
        let mut of_this: BTreeMap<(RecipeId, usize), f64> = BTreeMap::new();
        for slot in ground.slots(&requirement.service) {
            let id = &slot.choice.recipe;
            let Some(study) = ground.studies.get(id) else {
                continue;
            };
            let planned = to_f64(slot.choice.planned.servings());
            for (line, amount) in brought(study, tools, nutrient) {
                *of_this.entry((id.clone(), line)).or_default() += amount * planned;
            }
        }
        let all: f64 = of_this.values().sum();
        for (line, amount) in of_this.into_iter().filter(|_| all > 0.0) {
            *carried.entry(line).or_default() += amount / all;
        }
    }
    carried.retain(|(recipe, line), share| {
        *share >= LEAST_CARRIED
            && !ground.is_recipe_locked(recipe)
            && !ground.is_line_locked(recipe, *line)
    });
    carried.into_iter().collect()
}

/// What each line that names a food brings to a serving.
fn brought(study: &RecipeStudy, tools: Tools<'_>, nutrient: NutrientId) -> Vec<(usize, f64)> {
    let Ok(analysis) = &study.analysis else {
        return Vec::new();
    };
    let servings = to_f64(analysis.servings.servings());
    let parts = study.parts.iter();
    let own = parts.filter(|part| study.lines[part.line].recipe.is_none());
    own.filter_map(|part| {
        let amount = amount_in(&tools.reference.foods, part, nutrient)?;
        Some((part.line, to_f64(amount) / servings))
    })
    .collect()
}

pub(super) fn to_f64(number: Decimal) -> f64 {
    number.to_f64().unwrap_or(0.0)
}

/// Does one piece of looking.
pub(super) fn look(ground: &mut Ground, tools: Tools<'_>, job: &Job) -> Vec<Candidate> {
    let mut found = match job {
        Job::Line { recipe, line } => of_line(ground, tools, recipe, *line),
        Job::Portion { recipe } => of_portion(ground, tools, recipe),
        Job::Choice { place } => of_choice(ground, tools, *place),
    };
    found.retain(|candidate| !ground.is_declined(&candidate.change));
    found
}

/// Whether less, and whether more, of something is wanted.
fn wanted(ground: &Ground) -> (bool, bool) {
    let bounds = || ground.unmet().map(|demand| demand.now.requirement.bound);
    (
        bounds().any(|bound| bound != Bound::AtLeast),
        bounds().any(|bound| bound == Bound::AtLeast),
    )
}

fn suits(share: Decimal, (less, more): (bool, bool)) -> bool {
    (share < Decimal::ONE && less) || (share > Decimal::ONE && more)
}

fn of_line(ground: &Ground, tools: Tools<'_>, id: &RecipeId, line: usize) -> Vec<Candidate> {
    let (Some(recipe), Some(study)) = (ground.book.recipe(id), ground.studies.get(id)) else {
        return Vec::new();
    };
    let mut written: Vec<(Vec<RecipeLine>, LineWay, u16)> = Vec::new();
    if ground.ask.ways.swaps {
        written.extend(swaps_of(ground, tools, recipe, study, line));
    }
    if ground.ask.ways.amounts {
        written.extend(amounts_of(ground, recipe, study, line));
    }
    let mut found: Vec<Candidate> = Vec::new();
    for (lines, way, departure) in written {
        let twice = |other: &Candidate| matches!(&other.change, WeekChange::Line { lines: own, .. } if *own == lines);
        if found.iter().any(twice) {
            continue;
        }
        let number = lines.len();
        let change = WeekChange::Line {
            recipe: id.clone(),
            line,
            was: recipe.lines[line].clone(),
            lines,
            way,
        };
        let studied = change.in_recipe(recipe).map(|changed| {
            let reference = tools.reference;
            reference.study_replaced(&ground.book, &changed, study, line, number)
        });
        found.extend(Candidate::of_recipe(
            ground, tools, change, departure, studied,
        ));
    }
    found
}

fn swaps_of(
    ground: &Ground,
    tools: Tools<'_>,
    recipe: &Recipe,
    study: &RecipeStudy,
    line: usize,
) -> Vec<(Vec<RecipeLine>, LineWay, u16)> {
    let place = Place {
        book: &ground.book,
        recipe,
        study,
        line,
    };
    let goals = ground.goals();
    let mut options = SwapOptions {
        prices: ground.ask.prices.clone(),
        ..SwapOptions::default()
    };
    let more_energy = |goal: &crate::swaps::Goal| goal.aim == Aim::More(NutrientId::ENERGY);
    if goals.0.iter().any(more_energy) {
        // What falls short of its calories may rise as far as others may fall.
        options.energy = EnergyBand {
            fall: options.energy.rise,
            rise: options.energy.fall,
        };
    }
    let limit = ground.ask.foods_for_a_line;
    let Ok(proposals) = propose(
        tools.reference,
        tools.index,
        &place,
        &goals,
        &options,
        limit,
    ) else {
        return Vec::new();
    };
    let all = proposals.foods.into_iter().chain(proposals.moves);
    all.map(|proposal| {
        let way = match &proposal.change {
            Change::Food { .. } => Way::Food,
            Change::Half { .. } => Way::Half,
            Change::Move { .. } => Way::Move,
        };
        let change = proposal.change;
        let departure = ground.steps.departure(way);
        (proposal.lines, LineWay::Swap { change }, departure)
    })
    .collect()
}

fn amounts_of(
    ground: &Ground,
    recipe: &Recipe,
    study: &RecipeStudy,
    line: usize,
) -> Vec<(Vec<RecipeLine>, LineWay, u16)> {
    let read = &study.lines[line].read;
    let Some(food) = read.food else {
        return Vec::new();
    };
    // More or less of an average is wanted; an amount moves what the line carries.
    let goals = ground.goals().0;
    let less = goals.iter().any(|goal| matches!(goal.aim, Aim::Less(_)));
    let more = goals.iter().any(|goal| matches!(goal.aim, Aim::More(_)));
    let steps = ground.steps.of(Way::Amount);
    steps
        .filter(|(share, _)| suits(*share, (less, more)))
        .filter_map(|(share, departure)| {
            let line = line_in_share(&recipe.lines[line], &read.reading, food, share)?;
            Some((vec![line], LineWay::Amount { share }, departure))
        })
        .collect()
}

fn of_portion(ground: &Ground, tools: Tools<'_>, id: &RecipeId) -> Vec<Candidate> {
    let Some(recipe) = ground.book.recipe(id) else {
        return Vec::new();
    };
    let wanted = wanted(ground);
    let steps: Vec<_> = ground.steps.of(Way::Portion).collect();
    let steps = steps.into_iter().filter(|(share, _)| suits(*share, wanted));
    steps
        .filter_map(|(share, departure)| {
            let change = WeekChange::Portion {
                recipe: id.clone(),
                share,
                was: Portion::of(recipe),
                becomes: resized(recipe, share)?,
            };
            Candidate::of_recipe(ground, tools, change, departure, None)
        })
        .collect()
}

/// A portion of so many times the size; nothing where a serving has no size.
fn resized(recipe: &Recipe, share: Decimal) -> Option<Portion> {
    let words = serving_in_share(&recipe.serving_words, share);
    match recipe.serving_size {
        Some(ServingSize::Weight { serving }) => Some(Portion {
            servings: recipe.servings,
            size: Some(ServingSize::Weight {
                serving: serving * share,
            }),
            words: words.unwrap_or_default(),
        }),
        Some(ServingSize::Volume { serving, batch }) => Some(Portion {
            servings: recipe.servings,
            size: Some(ServingSize::Volume {
                serving: serving * share,
                batch,
            }),
            words: words.unwrap_or_default(),
        }),
        Some(ServingSize::Count { .. }) => None,
        None => Some(Portion {
            servings: Servings::new(sayable(recipe.servings.servings() / share)),
            size: None,
            words: words?,
        }),
    }
}

/// A number of servings that a card can say: whole from ten up, else in tenths.
fn sayable(servings: Decimal) -> Decimal {
    let digits = Digits(u32::from(servings < Decimal::TEN));
    round_half_up(servings, digits).normalize()
}

/// The recipes that the book serves in this part of this kind of meal.
fn of_choice(ground: &mut Ground, tools: Tools<'_>, place: ChoicePlace) -> Vec<Candidate> {
    let day = &ground.week.days[place.day];
    let meal = &day.meals[place.meal];
    let offer = &meal.offers[place.offer];
    let (date, was) = (day.date, offer.choices[place.choice].recipe.clone());
    let part = offer.title.trim().to_lowercase();
    let in_meal: BTreeSet<&RecipeId> = meal.choices().map(|choice| &choice.recipe).collect();
    let weeks = ground.book.weeks.iter().flat_map(|week| &week.days);
    let meals = weeks.flat_map(|day| &day.meals);
    let same_kind = meals.filter(|other| other.kind == meal.kind);
    let offers = same_kind.flat_map(|other| &other.offers);
    let same_part = offers.filter(|other| other.title.trim().to_lowercase() == part);
    let others: BTreeSet<RecipeId> = same_part
        .flat_map(|offer| &offer.choices)
        .map(|choice| &choice.recipe)
        .filter(|id| !in_meal.contains(id))
        .cloned()
        .collect();
    let mut ranked: Vec<(RecipeId, f64)> = Vec::new();
    for id in others {
        let usable = ground
            .study(tools, &id)
            .is_some_and(|study| study.analysis.is_ok() && study.credits.is_some());
        if usable {
            let gain = gain(ground, &was, &id);
            ranked.push((id, gain));
        }
    }
    ranked.sort_by(|(a, by_a), (b, by_b)| by_b.total_cmp(by_a).then_with(|| a.cmp(b)));
    let pattern = ground
        .unmet()
        .any(|demand| demand.now.requirement.nutrient.is_none());
    let most = if pattern {
        ranked.len()
    } else {
        ground.ask.recipes_for_a_choice
    };
    let departure = ground.steps.departure(Way::Choice);
    ranked
        .into_iter()
        .take(most)
        .map(|(becomes, _)| {
            let was = was.clone();
            let change = WeekChange::Choice {
                place,
                date,
                was,
                becomes,
            };
            Candidate::of_choice(change, departure)
        })
        .collect()
}

/// How far averages out of their limits would move the right way by another
/// recipe, each as a share of its figure; for the order only.
fn gain(ground: &Ground, was: &RecipeId, becomes: &RecipeId) -> f64 {
    let of = |id: &RecipeId, nutrient| {
        let analysis = ground.studies.get(id)?.analysis.as_ref().ok()?;
        Some(to_f64(analysis.per_serving(nutrient)?.known))
    };
    ground
        .unmet()
        .filter_map(|demand| {
            let nutrient = demand.now.requirement.nutrient?;
            let (old, new) = (of(was, nutrient)?, of(becomes, nutrient)?);
            let rise = (new - old) / old.max(new).max(f64::MIN_POSITIVE);
            Some(match demand.now.requirement.bound {
                Bound::AtLeast => rise,
                Bound::AtMost | Bound::Below => -rise,
            })
        })
        .sum()
}
