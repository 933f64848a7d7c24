//! Planned servings shared among schools, in whole servings.
//!
//! Each school gets the whole part of its exact share; what is left goes, one
//! by one, to the largest remainders (the method of largest remainders, by
//! which Hamilton shared seats in 1792). The sum is always what is planned.

use super::{Production, SiteId};
use crate::exact::rounding::{guarded, round_down_to, round_up_to};
use crate::recipe::RecipeId;
use crate::units::Servings;
use crate::week::{Date, Service, Week};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use serde::Serialize;
use std::cmp::Reverse;
use std::fmt;

/// Servings of one choice at one school.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct SiteServings {
    /// Which school.
    pub site: SiteId,
    /// How many servings.
    pub servings: Servings,
    /// Whether a person has stated them.
    pub stated: bool,
}

/// One choice of a day's menu with each school's part.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct SharedChoice {
    /// Which meal, for whom.
    pub service: Service,
    /// The part of the meal.
    pub part: String,
    /// The recipe.
    pub recipe: RecipeId,
    /// Servings planned.
    pub planned: Servings,
    /// The schools that serve this meal, in the order of the book.
    pub sites: Vec<SiteServings>,
    /// What keeps the parts from being the whole.
    pub problem: Option<ShareProblem>,
}

/// Why schools' servings are not what is planned.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum ShareProblem {
    /// No school serves this meal to these grades.
    NoSite,
    /// What is stated for schools adds up to something else.
    SumDiffers {
        /// The sum over the schools.
        sum: Servings,
    },
}

impl fmt::Display for ShareProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoSite => out.write_str(
                "no school serves this meal to these grades: enter under Schools how many it serves",
            ),
            Self::SumDiffers { sum } => write!(
                out,
                "the schools' servings add up to {}, not to what is planned: change what is stated for a school, or the plan",
                sum.servings().normalize()
            ),
        }
    }
}

/// Shares whole servings by weights. A part of a serving is rounded up first:
/// nobody cooks a part of one. Nothing where no weight is above zero.
pub fn apportion(servings: Servings, weights: &[Servings]) -> Option<Vec<Servings>> {
    let whole = round_up_to(servings.servings(), Decimal::ONE);
    let sum: Servings = weights.iter().copied().sum();
    if sum <= Servings::ZERO {
        return None;
    }
    let exact: Vec<Decimal> = weights
        .iter()
        .map(|weight| guarded(whole * weight.servings() / sum.servings()))
        .collect();
    let mut shares: Vec<Decimal> = exact
        .iter()
        .map(|share| round_down_to(*share, Decimal::ONE))
        .collect();
    let left = whole - shares.iter().sum::<Decimal>();
    let mut order: Vec<usize> = (0..shares.len()).collect();
    order.sort_by_key(|index| (Reverse(exact[*index] - shares[*index]), *index));
    for index in order.into_iter().take(left.to_usize().unwrap_or(0)) {
        shares[index] += Decimal::ONE;
    }
    Some(shares.into_iter().map(Servings::new).collect())
}

/// All choices of a week on one day, each with its schools' servings. Choices
/// of which none is planned are left out.
pub fn shared_day(production: &Production, week: &Week, date: Date) -> Vec<SharedChoice> {
    let days = week.days.iter().filter(|day| day.date == date);
    let meals = days.flat_map(|day| &day.meals);
    meals
        .flat_map(|meal| {
            let service = Service {
                kind: meal.kind,
                group: meal.group.clone(),
            };
            meal.offers.iter().flat_map(move |offer| {
                let service = service.clone();
                offer.planned_choices().map(move |choice| {
                    let place = (date, &service, &choice.recipe);
                    let (sites, problem) = shared(production, place, choice.planned);
                    SharedChoice {
                        service: service.clone(),
                        part: offer.title.clone(),
                        recipe: choice.recipe.clone(),
                        planned: choice.planned,
                        sites,
                        problem,
                    }
                })
            })
        })
        .collect()
}

/// What is stated goes first; the rest is shared among the other schools.
fn shared(
    production: &Production,
    (date, service, recipe): (Date, &Service, &RecipeId),
    planned: Servings,
) -> (Vec<SiteServings>, Option<ShareProblem>) {
    let stated_at = |site: &SiteId| {
        let mut stated = production.stated.iter();
        stated
            .find(|one| {
                one.date == date
                    && one.service == *service
                    && one.recipe == *recipe
                    && one.site == *site
            })
            .map(|one| one.servings)
    };
    let serving: Vec<_> = production
        .sites
        .iter()
        .map(|site| (&site.id, site.meals(service), stated_at(&site.id)))
        .filter(|(_, meals, stated)| *meals > Servings::ZERO || stated.is_some())
        .collect();
    if serving.is_empty() {
        return (Vec::new(), Some(ShareProblem::NoSite));
    }
    let stated: Servings = serving.iter().filter_map(|(_, _, stated)| *stated).sum();
    let rest = (planned - stated).max(Servings::ZERO);
    let weights: Vec<Servings> = serving
        .iter()
        .map(|(_, meals, stated)| {
            if stated.is_some() {
                Servings::ZERO
            } else {
                *meals
            }
        })
        .collect();
    let shares = apportion(rest, &weights).unwrap_or_else(|| vec![Servings::ZERO; serving.len()]);
    let sites: Vec<SiteServings> = serving
        .into_iter()
        .zip(shares)
        .map(|((site, _, stated), share)| SiteServings {
            site: site.clone(),
            servings: stated.unwrap_or(share),
            stated: stated.is_some(),
        })
        .collect();
    let sum: Servings = sites.iter().map(|site| site.servings).sum();
    // A planned part of a serving is a whole one in the kitchen.
    let whole = Servings::new(round_up_to(planned.servings(), Decimal::ONE));
    let problem = (sum != whole).then_some(ShareProblem::SumDiffers { sum });
    (sites, problem)
}
