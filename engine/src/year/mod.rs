//! All weeks of a year at once: the averages and the verdicts on dietary
//! limits that [`Reference::study_week`] gives week by week, with the same
//! printed digits, and what one changed recipe changes in them.
//!
//! Sums are binary floats that carry a bound on their error ([`near`]). A
//! figure whose bound leaves its printed digit or its side of a limit open (an
//! exact half, a limit just reached) is computed again by the decimal path, so
//! what is printed and found never depends on the floats.
//!
//! | module | what |
//! |---|---|
//! | [`near`] | floats with bounds |
//! | [`values`] | the values of all foods, side by side |
//! | [`recipes`] | recipes as sums take them |
//! | [`services`] | averages and verdicts of one service |
//! | [`watched`] | what the limits look at, after an edit |

mod near;
mod recipes;
mod services;
mod values;
mod watched;

pub use recipes::PlannedRecipe;
pub use services::{BriefFinding, ServiceBrief};
pub use values::{LANE, RowWeight, ValueRows};

use crate::recipe::RecipeId;
use crate::reference::{RecipeStudy, Reference};
use crate::units::Grams;
use crate::week::{Week, WeekError};
use recipes::Kitchen;
use services::ServiceYear;
use std::borrow::Borrow;

/// The weeks of a year with the recipes that they serve.
#[derive(Debug)]
pub struct Year<'a> {
    reference: &'a Reference,
    kitchen: Kitchen,
    services: Vec<ServiceYear<'a>>,
    /// For each recipe, the services that serve it.
    served_in: Vec<Vec<usize>>,
}

impl<'a> Year<'a> {
    /// Takes in weeks and the studies of their recipes, and computes all.
    ///
    /// # Errors
    /// As [`Reference::study_week`].
    pub fn new<S: Borrow<RecipeStudy>>(
        reference: &'a Reference,
        studies: &[(RecipeId, S)],
        weeks: &'a [Week],
    ) -> Result<Self, WeekError> {
        let kitchen = Kitchen::new(reference, studies);
        let mut services = Vec::new();
        for week in weeks {
            for service in week.services() {
                services.push(ServiceYear::new(reference, &kitchen, week, service)?);
            }
        }
        let mut served_in = vec![Vec::new(); kitchen.len()];
        for (at, service) in services.iter().enumerate() {
            for recipe in service.recipes() {
                served_in[recipe].push(at);
            }
        }
        let mut year = Self {
            reference,
            kitchen,
            services,
            served_in,
        };
        year.recompute();
        Ok(year)
    }

    /// Computes everything from the weighed lines: totals of the recipes,
    /// averages of the services, findings.
    pub fn recompute(&mut self) {
        for recipe in 0..self.kitchen.len() {
            self.kitchen.add_up(recipe);
        }
        for service in &mut self.services {
            service.average(self.reference, &self.kitchen);
            service.find(self.reference, &self.kitchen);
        }
    }

    /// Every service of every week, in their order.
    pub fn services(&mut self) -> impl Iterator<Item = ServiceBrief<'_>> {
        let (reference, kitchen) = (self.reference, &self.kitchen);
        self.services
            .iter_mut()
            .map(move |service| service.brief(reference, kitchen))
    }

    /// How many services there are.
    pub fn len(&self) -> usize {
        self.services.len()
    }

    /// True where no week serves anything.
    pub fn is_empty(&self) -> bool {
        self.services.is_empty()
    }

    /// The place of a recipe; nothing where it is not among the studies.
    pub fn place_of(&self, recipe: &RecipeId) -> Option<usize> {
        self.kitchen.place_of(recipe)
    }

    /// Sets the weight of one part of a recipe and finds again what that
    /// touches: the findings of the services that serve the recipe, which are
    /// named by their places. Their averages follow when they are looked at.
    ///
    /// # Panics
    /// Where there is no such recipe or part.
    pub fn reweigh(&mut self, recipe: usize, part: usize, weight: Grams) -> &[usize] {
        self.kitchen.reweigh(recipe, part, weight);
        self.kitchen.add_up(recipe);
        self.touch(recipe)
    }

    /// Puts a new study in a recipe's place, as [`Self::reweigh`] does.
    pub fn restudy(&mut self, recipe: usize, study: &RecipeStudy) -> &[usize] {
        let planned = PlannedRecipe::of(self.reference, study);
        self.kitchen.replace(self.reference, recipe, planned);
        self.kitchen.add_up(recipe);
        self.touch(recipe)
    }

    fn touch(&mut self, recipe: usize) -> &[usize] {
        for at in &self.served_in[recipe] {
            let service = &mut self.services[*at];
            service.forget(&self.kitchen, recipe);
            service.find(self.reference, &self.kitchen);
        }
        &self.served_in[recipe]
    }

    /// The findings of one service, as they stand.
    pub fn findings(&self, service: usize) -> &[BriefFinding<'a>] {
        self.services[service].findings()
    }
}
