//! The week as it stands, with everything that a search asks about it.

use super::ask::{Ask, Lock};
use super::candidate::Candidate;
use super::change::{ChoicePlace, WeekChange};
use super::demand::{Demand, Demands};
use super::steps::Steps;
use crate::book::Book;
use crate::recipe::RecipeId;
use crate::reference::{RecipeStudy, Reference, WeekStudy};
use crate::rules::Bound;
use crate::swaps::{Aim, Goal, Goals, SwapIndex};
use crate::units::Servings;
use crate::week::{Choice, Service, Week, WeekError, WeekId};
use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};

/// What a search looks things up in.
#[derive(Debug, Clone, Copy)]
pub struct Tools<'a> {
    /// The engine's tables, with the book's own foods and limits.
    pub reference: &'a Reference,
    /// Foods as swaps see them.
    pub index: &'a SwapIndex,
}

/// The week as it stands.
#[derive(Debug)]
pub(super) struct Ground {
    pub book: Book,
    pub week: Week,
    pub ask: Ask,
    pub steps: Steps,
    /// Studies of the recipes that the week serves, and of others as they are
    /// asked for.
    pub studies: BTreeMap<RecipeId, RecipeStudy>,
    pub demands: Demands,
}

/// One choice of the week that counts, with where it stands.
#[derive(Debug, Clone, Copy)]
pub(super) struct Slot<'a> {
    pub place: ChoicePlace,
    pub choice: &'a Choice,
}

impl Ground {
    /// Studies a week of a book.
    ///
    /// # Errors
    /// When the week cannot be studied.
    pub fn new(
        tools: Tools<'_>,
        book: Book,
        week: &WeekId,
        ask: Ask,
        steps: Steps,
    ) -> Result<Option<Self>, WeekError> {
        let Some(week) = book.week(week).cloned() else {
            return Ok(None);
        };
        let studies = tools.reference.study_recipes(&book, &week.recipes());
        let now = tools.reference.study_week_with(&week, &studies)?;
        Ok(Some(Self {
            demands: Demands::new(&now, ask.margin),
            studies: studies.into_iter().collect(),
            book,
            week,
            ask,
            steps,
        }))
    }

    /// The study of a recipe of the book, made once.
    pub fn study(&mut self, tools: Tools<'_>, id: &RecipeId) -> Option<&RecipeStudy> {
        if !self.studies.contains_key(id) {
            let recipe = self.book.recipe(id)?;
            let study = tools.reference.study_recipe(&self.book, recipe);
            self.studies.insert(id.clone(), study);
        }
        self.studies.get(id)
    }

    /// The choices of a service of which servings are planned.
    pub fn slots<'a>(&'a self, service: &'a Service) -> impl Iterator<Item = Slot<'a>> {
        ChoicePlace::all(&self.week).filter_map(move |(place, choice)| {
            let meal = &self.week.days[place.day].meals[place.meal];
            let counts = meal.kind == service.kind
                && meal.group == service.group
                && choice.planned > Servings::ZERO;
            counts.then_some(Slot { place, choice })
        })
    }

    /// The demands that the week does not keep.
    pub fn unmet(&self) -> impl Iterator<Item = &Demand> {
        self.demands.0.iter().filter(|demand| !demand.is_kept())
    }

    /// The services of these demands, each once.
    pub fn needy(&self) -> Vec<Service> {
        let services = self.unmet().map(|demand| &demand.now.requirement.service);
        let services: BTreeSet<&Service> = services.collect();
        services.into_iter().cloned().collect()
    }

    /// What swaps should move: the nutrients of which averages are out of
    /// their limits.
    pub fn goals(&self) -> Goals {
        let mut aims: Vec<Aim> = Vec::new();
        for demand in self.unmet() {
            let requirement = &demand.now.requirement;
            let Some(nutrient) = requirement.nutrient else {
                continue;
            };
            let aim = match requirement.bound {
                Bound::AtLeast => Aim::More(nutrient),
                Bound::AtMost | Bound::Below => Aim::Less(nutrient),
            };
            if !aims.contains(&aim) {
                aims.push(aim);
            }
        }
        Goals(
            aims.into_iter()
                .map(|aim| Goal { aim, weight: 1 })
                .collect(),
        )
    }

    /// The recipes that have a say in one another: those that name recipes of
    /// the book, with those that they name.
    pub fn family(&self, recipe: &RecipeId) -> BTreeSet<RecipeId> {
        let mut family = BTreeSet::from([recipe.clone()]);
        loop {
            let before = family.len();
            for (id, study) in &self.studies {
                let named = || study.lines.iter().filter_map(|line| line.recipe.as_ref());
                if family.contains(id) {
                    let named: Vec<RecipeId> = named().cloned().collect();
                    family.extend(named);
                } else if named().any(|named| family.contains(named)) {
                    family.insert(id.clone());
                }
            }
            if family.len() == before {
                return family;
            }
        }
    }

    /// Whether a recipe's lines and portion must stay.
    pub fn is_recipe_locked(&self, recipe: &RecipeId) -> bool {
        let serves = |place: ChoicePlace| {
            let choice = place.of(&self.week);
            choice.is_some_and(|choice| self.family(&choice.recipe).contains(recipe))
        };
        self.ask.locks.iter().any(|lock| match lock {
            Lock::Recipe { recipe: locked } => locked == recipe,
            Lock::Choice { place } => serves(*place),
            Lock::Day { date } => ChoicePlace::all(&self.week)
                .filter(|(place, _)| self.week.days[place.day].date == *date)
                .any(|(place, _)| serves(place)),
            Lock::Line { .. } => false,
        })
    }

    /// Whether a line must stay.
    pub fn is_line_locked(&self, recipe: &RecipeId, line: usize) -> bool {
        let locked = Lock::Line {
            recipe: recipe.clone(),
            line,
        };
        self.ask.locks.contains(&locked)
    }

    /// Whether a choice must stay.
    pub fn is_choice_locked(&self, place: ChoicePlace) -> bool {
        let date = self.week.days[place.day].date;
        let day = Lock::Day { date };
        self.ask.locks.contains(&day) || self.ask.locks.contains(&Lock::Choice { place })
    }

    /// Whether the planner does not want a change.
    pub fn is_declined(&self, change: &WeekChange) -> bool {
        self.ask.declined.contains(change)
    }

    /// A copy of the book and the week with some changes, studied exactly.
    /// Recipes that one change alone has made are studied already.
    ///
    /// # Errors
    /// When the week cannot be studied with them.
    pub fn study_with(
        &self,
        tools: Tools<'_>,
        chosen: &[&Candidate],
    ) -> Result<WeekStudy, WeekError> {
        let mut book = self.book.clone();
        for candidate in chosen {
            // Changes that do not fit beside each other are never in one plan.
            candidate.change.apply(&mut book, &self.week.id);
        }
        let week = book.week(&self.week.id).unwrap_or(&self.week);
        let studies = week.recipes().into_iter().filter_map(|id| {
            let makers = chosen.iter().filter_map(|candidate| candidate.variant(&id));
            let makers: Vec<&RecipeStudy> = makers.collect();
            let study = match (&makers[..], self.studies.get(&id)) {
                ([], Some(known)) => Cow::Borrowed(known),
                ([made], _) => Cow::Borrowed(*made),
                _ => {
                    let recipe = book.recipe(&id)?;
                    Cow::Owned(tools.reference.study_recipe(&book, recipe))
                }
            };
            Some((id, study))
        });
        let studies: Vec<_> = studies.collect();
        tools.reference.study_week_with(week, &studies)
    }
}
