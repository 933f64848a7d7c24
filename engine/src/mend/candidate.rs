//! A change that may be part of a plan, with the recipes that it makes.

use super::change::WeekChange;
use super::ground::{Ground, Tools};
use crate::components::{Component, Mark, RecipeCredits};
use crate::exact::Bounds;
use crate::foods::FoodId;
use crate::recipe::RecipeId;
use crate::reference::{RecipeStudy, Reference};
use crate::swaps::Price;
use rust_decimal::Decimal;

/// A candidate.
#[derive(Debug)]
pub(super) struct Candidate {
    pub change: WeekChange,
    /// How far it takes the dish from what it was, 0 to 100.
    pub departure: u16,
    /// The recipes of the week that it changes, studied as they become.
    pub variants: Vec<(RecipeId, RecipeStudy)>,
    /// Whether it may be the only change of its recipes: the number of
    /// servings moves with it, or its recipe and others have a say in one
    /// another.
    pub alone: bool,
    /// Whether it moves anything that credits.
    pub moves_credits: bool,
}

impl Candidate {
    /// A change of a recipe, studied wherever the recipe has a say.
    pub fn of_recipe(
        ground: &Ground,
        tools: Tools<'_>,
        change: WeekChange,
        departure: u16,
        study: Option<RecipeStudy>,
    ) -> Option<Self> {
        let id = change.recipe()?.clone();
        let family = ground.family(&id);
        let mut variants = Vec::new();
        if family.len() == 1 {
            let recipe = ground.book.recipe(&id)?;
            let study = match study {
                Some(study) => study,
                None => {
                    let changed = change.in_recipe(recipe)?;
                    tools.reference.study_recipe(&ground.book, &changed)
                }
            };
            variants.push((id.clone(), study));
        } else {
            let mut book = ground.book.clone();
            if !change.apply(&mut book, &ground.week.id) {
                return None;
            }
            for member in family.iter().filter(|id| ground.studies.contains_key(id)) {
                let recipe = book.recipe(member)?;
                variants.push((member.clone(), tools.reference.study_recipe(&book, recipe)));
            }
        }
        let old = |id: &RecipeId| ground.studies.get(id);
        let same_servings = variants.iter().all(|(id, new)| {
            let (Some(Ok(old)), Ok(new)) = (old(id).map(|old| &old.analysis), &new.analysis) else {
                return false;
            };
            old.servings == new.servings
        });
        if variants.iter().any(|(_, study)| study.analysis.is_err()) {
            return None;
        }
        let moves_credits = variants.iter().any(|(id, new)| {
            let sign = |study: &RecipeStudy| signature(tools.reference, study.credits.as_ref());
            old(id).is_none_or(|old| sign(old) != sign(new))
        });
        Some(Self {
            change,
            departure,
            variants,
            alone: family.len() > 1 || !same_servings,
            moves_credits,
        })
    }

    /// Another recipe for a choice.
    pub fn of_choice(change: WeekChange, departure: u16) -> Self {
        Self {
            change,
            departure,
            variants: Vec::new(),
            alone: false,
            moves_credits: true,
        }
    }

    /// The study of a recipe as this candidate makes it.
    pub fn variant(&self, recipe: &RecipeId) -> Option<&RecipeStudy> {
        let found = self.variants.iter().find(|(id, _)| id == recipe);
        found.map(|(_, study)| study)
    }
}

/// All that the meal pattern can see of a recipe: amounts before and after
/// rounding, marks, and which foods credit.
fn signature(reference: &Reference, credits: Option<&RecipeCredits>) -> Option<Signature> {
    let credits = credits?;
    let definitions = &reference.credit_rules.definitions;
    let amounts = Component::ALL
        .into_iter()
        .map(|component| {
            let exact = credits.parts(component);
            let exact: Decimal = exact.map(|(_, part)| credits.in_a_serving(part)).sum();
            (credits.amount(definitions, component, None), exact)
        })
        .collect();
    let foods = credits.lines.iter().flat_map(|line| {
        let parts = line.parts.iter();
        parts.map(|part| (line.food, part.component, part.marks.clone()))
    });
    Some(Signature {
        amounts,
        foods: foods.collect(),
        dough: credits.dough_is_whole_grain_rich,
        unknown: credits.unknown().count(),
    })
}

#[derive(PartialEq)]
struct Signature {
    amounts: Vec<(Bounds, Decimal)>,
    foods: Vec<(Option<FoodId>, Component, Vec<Mark>)>,
    dough: Option<bool>,
    unknown: usize,
}

/// What a serving of a recipe costs; nothing where a price, a weight or the
/// number of servings is missing.
pub(super) fn cost_of_serving(prices: &[Price], study: &RecipeStudy) -> Option<Decimal> {
    let servings = study.analysis.as_ref().ok()?.servings.servings();
    let whole: Option<Decimal> = study
        .parts
        .iter()
        .map(|part| {
            let price = prices.iter().find(|price| Some(price.food) == part.food)?;
            Some(price.per_100_g * part.weight?.grams() / Decimal::ONE_HUNDRED)
        })
        .sum();
    Some(whole? / servings)
}
