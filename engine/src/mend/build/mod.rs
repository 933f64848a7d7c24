//! Candidates and demands as columns and rows.
//!
//! The model never forbids a plan that the engine would pass; where it lets one
//! through that the engine does not pass, the search cuts that one off and goes
//! on. So the first plan that passes is the least. This is why every row is
//! either exact or errs on the side of the plan:
//!
//! - **Averages** are sums over choices of planned servings times what a
//!   serving brings, and planned servings stay. What a serving brings moves by
//!   the same amount for a line's change whatever happens to other lines, for
//!   totals are sums over lines. It does not where the number of servings moves
//!   or another recipe takes the place: such changes are never in one plan with
//!   others of the same dish ([`exclusions`]). So these rows are exact. An
//!   unknown part counts as nothing, which can only flatter a maximum.
//! - **Shares of calories** are compared as `part × 100 × kcal per gram −
//!   limit × calories`, which is a sum again.
//! - **Margins** are fixed in advance, from the uncertainty of the week's own
//!   figure.
//! - **Credits** are rounded down once for a serving, so two changes of one dish
//!   can together reach a step that neither reaches alone: each is given a step
//!   of good will where a dish has several that credit (`SLACK` in `credits`).
//! - **The smallest meal** takes from each offer the choices that credit least.
//!   Of `take` choices the sum is the largest `take × t − Σ max(0, t − credit)`
//!   over all `t`: linear with helpers, and exact.
//! - **The largest meal** grows by a change at most by what the choice then
//!   credits beyond the least of those that are taken now.
//! - **Surplus of subgroups** counts toward other vegetables. A plan must keep
//!   the subgroup's own minimum, so the surplus is the difference.
//! - **Everything else** (options, kinds of milk, added sugars of products,
//!   components of a snack) has no rows: the engine's check decides.

mod averages;
mod credits;
mod exclusions;
mod offer;
mod pattern;

pub(super) use exclusions::exclusions;

use super::candidate::{Candidate, cost_of_serving};
use super::change::{ChoicePlace, WeekChange};
use super::demand::Demand;
use super::gather::to_f64;
use super::ground::{Ground, Slot, Tools};
use super::model::{Column, Model, Sum, UNITS};
use crate::recipe::RecipeId;
use crate::reference::RecipeStudy;
use crate::week::Service;
use rust_decimal::Decimal;

/// More changes than this are no mending.
pub(super) const MOST_CHANGES: u32 = 20;

/// Units for how far a change takes the dish, and for how dear it is, each at
/// most: both of twenty changes together do not outweigh one.
const SHADE: f64 = 100.0;

/// Good will for the arithmetic of binary floats, as a share of a limit.
const ROOM: f64 = 1e-7;

/// Makes the model.
pub(super) fn build(ground: &Ground, tools: Tools<'_>, candidates: &[Candidate]) -> Model {
    let mut model = Model::default();
    let costs = shades(ground, candidates);
    for (at, cost) in costs.into_iter().enumerate() {
        model.columns.push(Column {
            name: format!("change {at}"),
            cost,
            lower: 0.0,
            upper: Some(1.0),
            integer: true,
        });
    }
    let mut all = Sum::default();
    (0..candidates.len()).for_each(|at| all.add(at, 1.0));
    model.at_most(
        "changes".to_owned(),
        Vec::new(),
        all,
        f64::from(MOST_CHANGES),
    );
    for (name, clique) in exclusions(ground, candidates) {
        let mut sum = Sum::default();
        clique.into_iter().for_each(|at| sum.add(at, 1.0));
        model.at_most(name, Vec::new(), sum, 1.0);
    }
    for service in ground.week.services() {
        let of_service = OfService {
            ground,
            tools,
            candidates,
            slots: ground.slots(&service).collect(),
            service: &service,
        };
        of_service.averages(&mut model);
        of_service.pattern(&mut model);
    }
    model
}

/// What each change costs in the objective.
fn shades(ground: &Ground, candidates: &[Candidate]) -> Vec<f64> {
    let ask = &ground.ask;
    let dear: Vec<Option<f64>> = candidates
        .iter()
        .map(|candidate| Some(to_f64(cost(ground, candidate)?)))
        .collect();
    let dearest = dear.iter().flatten().fold(0.0_f64, |a, b| a.max(b.abs()));
    candidates
        .iter()
        .zip(dear)
        .map(|(candidate, cost)| {
            let far = f64::from(candidate.departure).min(SHADE);
            // What saves most costs nothing, what is not known as much as the dearest.
            let dear = match cost {
                Some(cost) if dearest > 0.0 => (cost / dearest + 1.0) / 2.0 * SHADE,
                _ => SHADE,
            };
            let shade = if ask.cost { far + dear.round() } else { far };
            1.0 + shade / UNITS
        })
        .collect()
}

/// What a change adds to the cost of the week; nothing where a price is
/// missing.
pub(super) fn cost(ground: &Ground, candidate: &Candidate) -> Option<Decimal> {
    let prices = &ground.ask.prices;
    let of = |id: &RecipeId| cost_of_serving(prices, ground.studies.get(id)?);
    let all = ChoicePlace::all(&ground.week);
    all.map(|(place, choice)| {
        let planned = choice.planned.servings();
        match &candidate.change {
            WeekChange::Choice {
                place: own,
                was,
                becomes,
                ..
            } if *own == place => Some((of(becomes)? - of(was)?) * planned),
            _ => match candidate.variant(&choice.recipe) {
                Some(new) => Some((cost_of_serving(prices, new)? - of(&choice.recipe)?) * planned),
                None => Some(Decimal::ZERO),
            },
        }
    })
    .sum()
}

/// One service while its rows are made.
struct OfService<'a> {
    ground: &'a Ground,
    tools: Tools<'a>,
    candidates: &'a [Candidate],
    slots: Vec<Slot<'a>>,
    service: &'a Service,
}

impl<'a> OfService<'a> {
    fn study(&self, id: &RecipeId) -> Option<&'a RecipeStudy> {
        self.ground.studies.get(id)
    }

    fn demands(&self) -> impl Iterator<Item = (usize, &'a Demand)> {
        let all = self.ground.demands.0.iter().enumerate();
        all.filter(move |(_, demand)| demand.now.requirement.service == *self.service)
    }

    /// The candidates that change what a slot serves, each with the recipe's
    /// study before and after.
    fn movers(&self, slot: &Slot<'a>) -> Vec<(usize, &'a RecipeStudy)> {
        let moved = |(at, candidate): (usize, &'a Candidate)| match &candidate.change {
            WeekChange::Choice { place, becomes, .. } => {
                let study = (*place == slot.place).then(|| self.study(becomes));
                study.flatten().map(|study| (at, study))
            }
            _ => Some((at, candidate.variant(&slot.choice.recipe)?)),
        };
        let all = self.candidates.iter().enumerate();
        all.filter_map(moved).collect()
    }

    /// What a row of this service is called.
    fn named(&self, words: &str) -> String {
        format!("{} {}: {words}", self.service.kind, self.service.group)
    }
}
