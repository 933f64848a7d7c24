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
//!   of good will where a dish has several that credit ([`SLACK`]).
//! - **The smallest meal** takes from each offer the choices that credit least.
//!   Of `take` choices the sum is the largest `take × t − Σ max(0, t − credit)`
//!   over all `t`: linear with helpers, and exact.
//! - **The largest meal** grows by a change at most by what the choice then
//!   credits beyond the least of those that are taken now.
//! - **Surplus of subgroups** counts toward other vegetables. A plan must keep
//!   the subgroup's own minimum, so the surplus is the difference.
//! - **Everything else** (options, kinds of milk, added sugars of products,
//!   components of a snack) has no rows: the engine's check decides.

use super::candidate::{Candidate, cost_of_serving};
use super::change::WeekChange;
use super::demand::{Demand, Owed};
use super::gather::to_f64;
use super::ground::{Ground, Slot, Tools};
use super::model::{Column, Model, Sum};
use crate::components::{Component, RecipeCredits};
use crate::findings::{AmountRow, PatternTables, Setting, amount_rows, giving};
use crate::foods::NutrientId;
use crate::recipe::RecipeId;
use crate::reference::RecipeStudy;
use crate::rules::{Basis, Bound, DietarySpecification, Kind, LeftOut, Subject, WeekRule};
use crate::units::Servings;
use crate::week::{Choice, Counted, CreditedRecipe, Meal, Service};
use rust_decimal::Decimal;
use std::collections::{BTreeMap, BTreeSet};

/// More changes than this are no mending.
pub(super) const MOST_CHANGES: u32 = 20;

/// The objective counts in these: a change is 4096 of them, and how far it
/// takes the dish, or what it costs, at most 200, so that twenty changes can
/// not outweigh one.
const UNITS: f64 = 4096.0;

/// How far, and how dear, each at most.
const SHADE: f64 = 100.0;

/// Good will for the arithmetic of binary floats, as a share of a limit.
const ROOM: f64 = 1e-7;

/// Good will for each of several changes of a dish that credit: two of the
/// largest step to which a credit is rounded (0.25 oz eq; cups are finer), for
/// some subjects are two components together. Vegetables beyond the subgroups
/// are what is left of six credits, and milk credits nothing below its serving.
const SLACK: f64 = 0.5;
const ADDITIONAL_SLACK: f64 = 1.0;
const MILK_SLACK: f64 = 8.0;

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
    let names: Vec<RecipeId> = (0..candidates.len()).map(variant_name).collect();
    for service in ground.week.services() {
        let of_service = OfService {
            ground,
            tools,
            candidates,
            names: &names,
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
    let all = super::change::ChoicePlace::all(&ground.week);
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

/// A name that no recipe of a book has, for a recipe as a candidate makes it.
fn variant_name(at: usize) -> RecipeId {
    RecipeId(format!("\u{1}{at}"))
}

/// Candidates of which a plan takes one at most: changes of one line; a portion
/// and the lines of the same recipe; another recipe for a choice, and changes
/// of either recipe; the same recipe twice in a meal; and all changes of
/// recipes that move in step with others.
pub(super) fn exclusions(ground: &Ground, candidates: &[Candidate]) -> Vec<(String, Vec<usize>)> {
    let mut groups: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    let mut join = |group: String, at: usize| groups.entry(group).or_default().push(at);
    // Groups of changes of one recipe, any two of which exclude each other.
    let mut of_recipe: BTreeMap<&RecipeId, BTreeMap<String, Vec<usize>>> = BTreeMap::new();
    for (at, candidate) in candidates.iter().enumerate() {
        if let WeekChange::Line { recipe, line, .. } = &candidate.change {
            let lines = of_recipe.entry(recipe).or_default();
            lines.entry(format!("line {line}")).or_default().push(at);
        }
    }
    for (at, candidate) in candidates.iter().enumerate() {
        if let WeekChange::Portion { recipe, .. } = &candidate.change {
            let groups = of_recipe.entry(recipe).or_default();
            if groups.is_empty() {
                groups.insert("portion".to_owned(), Vec::new());
            }
            groups.values_mut().for_each(|group| group.push(at));
        }
    }
    for (recipe, lines) in &of_recipe {
        for (line, members) in lines {
            for at in members {
                join(format!("one of {}, {line}", recipe.0), *at);
            }
        }
    }
    for (at, candidate) in candidates.iter().enumerate() {
        let WeekChange::Choice {
            place,
            was,
            becomes,
            ..
        } = &candidate.change
        else {
            continue;
        };
        let spot = format!(
            "{}-{}-{}-{}",
            place.day, place.meal, place.offer, place.choice
        );
        join(format!("one for {spot}"), at);
        join(
            format!("{} once in {}-{}", becomes.0, place.day, place.meal),
            at,
        );
        for recipe in [was, becomes] {
            for (line, members) in of_recipe.get(recipe).into_iter().flatten() {
                let group = format!("{spot} or {}, {line}, by {}", recipe.0, becomes.0);
                members.iter().for_each(|other| join(group.clone(), *other));
                join(group, at);
            }
        }
    }
    for (at, candidate) in candidates.iter().enumerate() {
        if candidate.alone {
            let family = candidate.change.recipe().map(|own| ground.family(own));
            let Some(family) = family else { continue };
            let related = |other: &Candidate| match &other.change {
                WeekChange::Choice { was, becomes, .. } => {
                    family.contains(was) || family.contains(becomes)
                }
                change => change.recipe().is_some_and(|id| family.contains(id)),
            };
            for (with, other) in candidates.iter().enumerate() {
                if with != at && related(other) {
                    let (low, high) = (at.min(with), at.max(with));
                    groups.insert(format!("{low} or {high}"), vec![low, high]);
                }
            }
        }
    }
    groups.retain(|_, members| {
        members.sort_unstable();
        members.dedup();
        members.len() > 1
    });
    let mut known: Vec<Vec<usize>> = Vec::new();
    groups
        .into_iter()
        .filter(|(_, members)| {
            let new = !known.contains(members);
            if new {
                known.push(members.clone());
            }
            new
        })
        .collect()
}

/// One service while its rows are made.
struct OfService<'a> {
    ground: &'a Ground,
    tools: Tools<'a>,
    candidates: &'a [Candidate],
    names: &'a [RecipeId],
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

    fn averages(&self, model: &mut Model) {
        for (at, demand) in self.demands() {
            let Some(rule) = &demand.of_average else {
                continue;
            };
            let minimum = rule.bound == Bound::AtLeast;
            // What is unknown is missed only by a known part above a maximum.
            let on_amount = rule.basis == Basis::PerMeal;
            if demand.owed == Owed::NotBroken && (minimum || !on_amount) {
                continue;
            }
            let aim = to_f64(demand.aim());
            let Some(sum) = self.average(|study| figure(self.tools, study, rule, aim)) else {
                continue;
            };
            let (limit, scale) = match rule.basis {
                Basis::PerMeal => (aim, aim.abs().max(f64::MIN_POSITIVE)),
                Basis::ShareOfEnergy => {
                    let energy = |study: &RecipeStudy| per_serving(study, NutrientId::ENERGY);
                    let energy = self.average(energy).map_or(0.0, |sum| sum.constant);
                    (0.0, (energy * aim).abs().max(1.0))
                }
            };
            let mut scaled = Sum::default();
            scaled.add_times(1.0 / scale, &sum);
            let requirement = &demand.now.requirement;
            let name = format!(
                "{} {}: {}",
                self.service.kind, self.service.group, requirement.words
            );
            if minimum {
                model.at_least(name, vec![at], scaled, limit / scale - ROOM);
            } else {
                model.at_most(name, vec![at], scaled, limit / scale + ROOM);
            }
        }
    }

    /// The average over meals of what a serving brings; nothing where it is
    /// not known of some recipe whether it brings any.
    fn average(&self, of: impl Fn(&RecipeStudy) -> Option<f64>) -> Option<Sum> {
        let meals = self.ground.week.meals_of(self.service);
        let meals: Servings = meals.map(|(_, meal)| meal.planned_meals).sum();
        let meals = to_f64(meals.servings());
        let mut sum = Sum::default();
        for slot in &self.slots {
            let weight = to_f64(slot.choice.planned.servings()) / meals;
            let now = of(self.study(&slot.choice.recipe)?)?;
            sum.constant += weight * now;
            for (at, after) in self.movers(slot) {
                sum.add(at, weight * (of(after)? - now));
            }
        }
        Some(sum)
    }

    fn pattern(&self, model: &mut Model) {
        let mut credited: Vec<CreditedRecipe<'_>> = Vec::new();
        for (id, study) in &self.ground.studies {
            credited.extend(study.credits.as_ref().map(|credits| (id, credits)));
        }
        // A candidate changes one recipe of the week, or a family of which each
        // member is told apart by its own name.
        let mut extra: Vec<(RecipeId, &RecipeCredits)> = Vec::new();
        for (at, candidate) in self.candidates.iter().enumerate() {
            for (nth, (_, study)) in candidate.variants.iter().enumerate() {
                let name = RecipeId(format!("{}\u{1}{nth}", self.names[at].0));
                extra.extend(study.credits.as_ref().map(|credits| (name, credits)));
            }
        }
        credited.extend(extra.iter().map(|(id, credits)| (id, *credits)));
        credited.sort_by_key(|(id, _)| *id);
        let reference = self.tools.reference;
        let tables = PatternTables {
            foods: &reference.foods,
            definitions: &reference.credit_rules.definitions,
            patterns: &reference.meal_patterns,
            rules: &reference.week_rules,
        };
        let setting = Setting::new(&tables, &self.ground.week, self.service, &credited);
        let Ok(Some(setting)) = setting else {
            return;
        };
        let credits = Credits {
            of: self,
            setting: &setting,
        };
        let patterns = self
            .demands()
            .filter(|(_, demand)| demand.of_average.is_none());
        let patterns: Vec<_> = patterns.collect();
        let rows = amount_rows(&setting);
        // The findings of amounts come first, in the order of their rows.
        for (row, (at, demand)) in rows.iter().zip(&patterns) {
            credits.amount(model, &rows, &patterns, row, *at, demand);
        }
        for rule in
            reference
                .week_rules
                .of_kind(Kind::ShareOfOfferings, self.service, setting.first_day())
        {
            let own = patterns.iter().find(|(_, demand)| {
                let requirement = &demand.now.requirement;
                requirement.date.is_none() && requirement.words == rule.words
            });
            if let Some((at, demand)) = own {
                credits.share(model, rule, *at, demand);
            }
        }
    }
}

/// What a serving brings to a rule's figure; for a share of calories, what it
/// brings to the difference that the share is compared by.
fn figure(
    tools: Tools<'_>,
    study: &RecipeStudy,
    rule: &DietarySpecification,
    aim: f64,
) -> Option<f64> {
    let mut amount = per_serving(study, rule.nutrient)?;
    if rule.leaves_out == Some(LeftOut::FluidMilk) {
        let reference = tools.reference;
        let credits = study.credits.as_ref()?;
        let milk = credits.fluid_milk(&reference.credit_rules.definitions);
        for (food, grams) in milk {
            let value = reference.foods.per_100_g(food, rule.nutrient);
            amount -= value.map_or(0.0, |value| to_f64(value * grams.grams()) / 100.0);
        }
    }
    match rule.basis {
        Basis::PerMeal => Some(amount),
        Basis::ShareOfEnergy => {
            let kcal = to_f64(rule.kcal_per_gram?);
            Some(amount * kcal * 100.0 - aim * per_serving(study, NutrientId::ENERGY)?)
        }
    }
}

fn per_serving(study: &RecipeStudy, nutrient: NutrientId) -> Option<f64> {
    let analysis = study.analysis.as_ref().ok()?;
    Some(to_f64(analysis.per_serving(nutrient)?.known))
}

/// Credits of one service while their rows are made.
struct Credits<'s, 'a> {
    of: &'s OfService<'a>,
    setting: &'s Setting<'s>,
}

impl<'a> Credits<'_, 'a> {
    /// A choice that serves a recipe as a candidate makes it.
    fn choice_after(&self, slot: &Slot<'_>, at: usize) -> Option<Choice> {
        let candidate = &self.of.candidates[at];
        let recipe = match &candidate.change {
            WeekChange::Choice { becomes, .. } => becomes.clone(),
            _ => {
                let mut variants = candidate.variants.iter();
                let nth = variants.position(|(id, _)| *id == slot.choice.recipe)?;
                RecipeId(format!("{}\u{1}{nth}", self.of.names[at].0))
            }
        };
        Some(Choice {
            recipe,
            planned: slot.choice.planned,
        })
    }

    /// What a choice credits: now, and with each candidate that moves it.
    fn moves(&self, slot: &Slot<'a>, amount: &dyn Fn(&Choice) -> f64) -> Moves {
        let now = amount(slot.choice);
        let movers: Vec<(usize, f64)> = self
            .of
            .movers(slot)
            .into_iter()
            .filter(|(at, _)| self.of.candidates[*at].moves_credits)
            .filter_map(|(at, _)| Some((at, amount(&self.choice_after(slot, at)?) - now)))
            .collect();
        let lines: BTreeSet<usize> = movers
            .iter()
            .filter_map(|(at, _)| self.line_of(*at))
            .collect();
        Moves {
            now,
            several: lines.len() > 1,
            movers,
        }
    }

    fn line_of(&self, at: usize) -> Option<usize> {
        match self.of.candidates[at].change {
            WeekChange::Line { line, .. } => Some(line),
            _ => None,
        }
    }

    fn is_of_line(&self, at: usize) -> bool {
        self.line_of(at).is_some()
    }

    /// What a choice credits at most, as a sum over columns.
    fn credit(&self, slot: &Slot<'a>, amount: &dyn Fn(&Choice) -> f64, slack: f64) -> Sum {
        let moves = self.moves(slot, amount);
        let mut sum = Sum::of(moves.now);
        for (at, rise) in moves.movers {
            let good_will = if moves.several && self.is_of_line(at) {
                slack
            } else {
                0.0
            };
            sum.add(at, rise + good_will);
        }
        sum
    }

    /// What a meal brings at most, counted one way.
    fn meal(
        &self,
        model: &mut Model,
        meal: &Meal,
        how: Counted,
        amount: &dyn Fn(&Choice) -> f64,
        slack: f64,
    ) -> Sum {
        let mut total = Sum::default();
        for offer in &meal.offers {
            let slots: Vec<&Slot<'a>> = self
                .of
                .slots
                .iter()
                .filter(|slot| {
                    offer
                        .choices
                        .iter()
                        .any(|own| std::ptr::eq(own, slot.choice))
                })
                .collect();
            let take = offer.take as usize;
            match how {
                Counted::Smallest if slots.len() > take => {
                    let credits = slots.iter().map(|slot| self.credit(slot, amount, slack));
                    total.add_times(1.0, &least(model, credits.collect(), take));
                }
                Counted::Largest if slots.len() > take => {
                    let moves = slots.iter().map(|slot| self.moves(slot, amount));
                    let lines = |at| self.is_of_line(at);
                    total.add_times(1.0, &most(moves.collect(), take, slack, lines));
                }
                Counted::Average => {
                    let meals = to_f64(meal.planned_meals.servings());
                    for slot in slots {
                        let planned = to_f64(slot.choice.planned.servings());
                        total.add_times(planned / meals, &self.credit(slot, amount, slack));
                    }
                }
                Counted::Smallest | Counted::Largest | Counted::Offered => {
                    for slot in slots {
                        total.add_times(1.0, &self.credit(slot, amount, slack));
                    }
                }
            }
        }
        total
    }

    /// What a day, or all days, bring at most. Nothing where a day serves the
    /// meal more than once.
    fn days(&self, model: &mut Model, row: &AmountRow<'_>) -> Option<Sum> {
        let subject = row.row.component;
        let amount = |choice: &Choice| to_f64(self.setting.amount(choice, subject).low);
        let slack = match subject {
            Subject::Of(Component::Milk) => MILK_SLACK,
            Subject::AdditionalVegetables => ADDITIONAL_SLACK,
            _ => SLACK,
        };
        let mut total = Sum::default();
        for date in self.setting.days() {
            if row.date.is_some_and(|own| own != *date) {
                continue;
            }
            let meals: Vec<&Meal> = self
                .setting
                .meals(Some(*date))
                .map(|(_, meal)| meal)
                .collect();
            let [meal] = meals[..] else {
                return None;
            };
            let of_day = self.meal(model, meal, row.row.counted, &amount, slack);
            total.add_times(1.0, &of_day);
        }
        Some(total)
    }

    /// The row of a required amount.
    fn amount(
        &self,
        model: &mut Model,
        rows: &[AmountRow<'_>],
        patterns: &[(usize, &Demand)],
        row: &AmountRow<'_>,
        at: usize,
        demand: &Demand,
    ) {
        let owed = matches!(demand.owed, Owed::Kept { .. });
        if row.row.bound != Bound::AtLeast || !owed {
            return;
        }
        let helpers = model.columns.len();
        let rows_before = model.rows.len();
        let mut needs = vec![at];
        let sum = match row.row.component {
            Subject::Of(Component::Other) if row.date.is_none() => {
                self.other(model, rows, patterns, row, &mut needs)
            }
            Subject::AdditionalVegetables if row.date.is_none() => {
                self.additional(model, rows, patterns, row, &mut needs)
            }
            _ => self.days(model, row),
        };
        let limit = to_f64(row.limit);
        match sum {
            // A row that no change has a say in, and that holds, says nothing.
            Some(sum) if !(sum.is_constant() && demand.is_kept()) => {
                let mut scaled = Sum::default();
                let scale = limit.max(SLACK);
                scaled.add_times(1.0 / scale, &sum);
                let service = self.of.service;
                let words = &demand.now.requirement.words;
                let name = format!("{} {}: {words}", service.kind, service.group);
                model.at_least(name, needs, scaled, limit / scale - ROOM);
            }
            _ => {
                model.columns.truncate(helpers);
                model.rows.truncate(rows_before);
            }
        }
    }

    /// The weekly row of a component, if a plan owes it.
    fn owed_row<'r>(
        &self,
        rows: &'r [AmountRow<'r>],
        patterns: &[(usize, &Demand)],
        component: Component,
    ) -> Option<(usize, &'r AmountRow<'r>)> {
        let own =
            |row: &AmountRow<'_>| row.date.is_none() && row.row.component == Subject::Of(component);
        let nth = rows.iter().position(own)?;
        let (at, demand) = patterns.get(nth)?;
        let owed = matches!(demand.owed, Owed::Kept { .. });
        owed.then_some((*at, &rows[nth]))
    }

    /// What subgroups bring beyond their own amounts, at most; nothing where a
    /// plan does not owe the subgroup's own amount.
    fn surplus(
        &self,
        model: &mut Model,
        rows: &[AmountRow<'_>],
        patterns: &[(usize, &Demand)],
        subgroups: &[Component],
        needs: &mut Vec<usize>,
    ) -> Option<Sum> {
        let mut total = Sum::default();
        for subgroup in subgroups {
            let (at, row) = self.owed_row(rows, patterns, *subgroup)?;
            needs.push(at);
            total.add_times(1.0, &self.days(model, row)?);
            total.constant -= to_f64(row.limit);
        }
        Some(total)
    }

    fn other(
        &self,
        model: &mut Model,
        rows: &[AmountRow<'_>],
        patterns: &[(usize, &Demand)],
        row: &AmountRow<'_>,
        needs: &mut Vec<usize>,
    ) -> Option<Sum> {
        let mut total = self.days(model, row)?;
        let giving = giving(self.setting);
        total.add_times(1.0, &self.surplus(model, rows, patterns, &giving, needs)?);
        Some(total)
    }

    fn additional(
        &self,
        model: &mut Model,
        rows: &[AmountRow<'_>],
        patterns: &[(usize, &Demand)],
        row: &AmountRow<'_>,
        needs: &mut Vec<usize>,
    ) -> Option<Sum> {
        let mut total = self.days(model, row)?;
        let giving = giving(self.setting);
        let own =
            |subgroup: &Component| *subgroup != Component::Other && !giving.contains(subgroup);
        let keeping: Vec<Component> = Component::SUBGROUPS.into_iter().filter(own).collect();
        total.add_times(1.0, &self.surplus(model, rows, patterns, &keeping, needs)?);
        let (at, other) = self.owed_row(rows, patterns, Component::Other)?;
        needs.push(at);
        total.add_times(1.0, &self.other(model, rows, patterns, other, needs)?);
        total.constant -= to_f64(other.limit);
        Some(total)
    }

    /// The row of a share of what is offered: marked part less limit times all.
    fn share(&self, model: &mut Model, rule: &WeekRule, at: usize, demand: &Demand) {
        let (Some(component), Some(mark)) = (rule.component, rule.marks.first()) else {
            return;
        };
        let owed = matches!(demand.owed, Owed::Kept { .. });
        let requirement = &demand.now.requirement;
        if requirement.bound != Bound::AtLeast || !owed {
            return;
        }
        let limit = to_f64(requirement.limit) / 100.0;
        let amount = |choice: &Choice| {
            let marked = to_f64(self.setting.marked(choice, component, *mark).low);
            marked - limit * to_f64(self.setting.amount(choice, Subject::Of(component)).low)
        };
        let mut total = Sum::default();
        for slot in &self.of.slots {
            // A dough bears its mark as a whole: several changes of one dish may
            // turn all of its grain.
            let whole = to_f64(self.setting.amount(slot.choice, Subject::Of(component)).low);
            total.add_times(1.0, &self.credit(slot, &amount, SLACK + whole));
        }
        if total.is_constant() {
            return;
        }
        let name = format!(
            "{} {}: {}",
            self.of.service.kind, self.of.service.group, rule.words
        );
        model.at_least(name, vec![at], total, -ROOM);
    }
}

/// What a choice credits now, and by how much each candidate moves it.
struct Moves {
    now: f64,
    movers: Vec<(usize, f64)>,
    /// Whether more than one line of the dish moves it.
    several: bool,
}

/// The least that `take` of these bring, by helpers: the largest of
/// `take × t − Σ short` with `short ≥ t − credit`.
fn least(model: &mut Model, credits: Vec<Sum>, take: usize) -> Sum {
    let mut total = Sum::default();
    if take == 0 {
        return total;
    }
    if credits.iter().all(Sum::is_constant) {
        let mut amounts: Vec<f64> = credits.iter().map(|credit| credit.constant).collect();
        amounts.sort_by(f64::total_cmp);
        total.constant = amounts.into_iter().take(take).sum();
        return total;
    }
    let level = model.helper("level".to_owned(), None);
    total.add(level, take as f64);
    for credit in &credits {
        let mut gap = Sum::default();
        gap.add_times(1.0, credit);
        gap.add(level, -1.0);
        if take > 1 {
            let short = model.helper("short".to_owned(), None);
            gap.add(short, 1.0);
            total.add(short, -1.0);
        }
        model.at_least("least of an offer".to_owned(), Vec::new(), gap, 0.0);
    }
    total
}

/// The most that `take` of these bring, at most. With `m` the least of those
/// that are taken now, a choice that comes to credit `v` adds no more than
/// `max(0, v − max(now, m))`; where several changes of a dish add up, each adds
/// no more than its own rise.
fn most(moves: Vec<Moves>, take: usize, slack: f64, is_of_line: impl Fn(usize) -> bool) -> Sum {
    let mut amounts: Vec<f64> = moves.iter().map(|choice| choice.now).collect();
    amounts.sort_by(|a, b| b.total_cmp(a));
    amounts.truncate(take);
    let mut total = Sum::of(amounts.iter().sum());
    let least_taken = amounts.last().copied().unwrap_or(0.0);
    for choice in moves {
        for (at, rise) in choice.movers {
            let adds = if choice.several && is_of_line(at) {
                (rise + slack).max(0.0)
            } else {
                (choice.now + rise - choice.now.max(least_taken)).max(0.0)
            };
            total.add(at, adds);
        }
    }
    total
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::mend::solve::solve;

    /// Every combination of three choices that credit one of three amounts.
    fn credits() -> impl Iterator<Item = [f64; 3]> {
        const AMOUNTS: [f64; 3] = [0.0, 0.5, 0.75];
        AMOUNTS.into_iter().flat_map(|a| {
            let pairs = AMOUNTS.into_iter().flat_map(|b| AMOUNTS.map(|c| (b, c)));
            pairs.map(move |(b, c)| [a, b, c])
        })
    }

    /// By the definition: sorted and added up.
    fn taken(mut amounts: Vec<f64>, take: usize, most: bool) -> f64 {
        amounts.sort_by(f64::total_cmp);
        if most {
            amounts.reverse();
        }
        amounts.into_iter().take(take).sum()
    }

    /// The helpers let the sum be as large as the least, and no larger.
    #[test]
    fn the_least_is_exact() {
        for (now, take) in credits().flat_map(|now| [(now, 1), (now, 2)]) {
            let mut model = Model::default();
            model.columns.push(Column {
                name: "change".to_owned(),
                cost: 1.0,
                lower: 0.0,
                upper: Some(1.0),
                integer: true,
            });
            // The change brings the first choice to one cup.
            let mut sums: Vec<Sum> = now.into_iter().map(Sum::of).collect();
            sums[0].add(0, 1.0 - now[0]);
            let before = taken(now.to_vec(), take, false);
            let after = taken(vec![1.0, now[1], now[2]], take, false);
            let sum = least(&mut model, sums, take);
            for (limit, changes) in [
                (before, Some(0.0)),
                (after, Some(f64::from(after > before))),
            ] {
                let mut asked = model.clone();
                asked.at_least(String::new(), Vec::new(), sum.clone(), limit);
                let answer = solve(&asked).objective;
                assert_eq!(
                    answer.map(f64::round),
                    changes,
                    "{now:?} take {take}: {limit}"
                );
            }
            let mut asked = model.clone();
            asked.at_least(String::new(), Vec::new(), sum.clone(), after + 0.01);
            assert!(solve(&asked).infeasible, "{now:?} take {take}");
        }
    }

    /// Whatever choices come to credit, their most is not more than is allowed.
    #[test]
    fn the_most_is_never_too_small() {
        for (now, then) in credits().flat_map(|now| credits().map(move |then| (now, then))) {
            for take in [1, 2] {
                let moves = (0..3).map(|at| Moves {
                    now: now[at],
                    movers: vec![(at, then[at] - now[at])],
                    several: false,
                });
                let sum = most(moves.collect(), take, SLACK, |_| false);
                for bits in 0_u32..8 {
                    let chosen = |at: usize| bits & (1 << at) != 0;
                    let amounts = (0..3).map(|at| if chosen(at) { then[at] } else { now[at] });
                    let truly = taken(amounts.collect(), take, true);
                    let allowed = sum.at(|column| f64::from(chosen(column)));
                    assert!(
                        truly <= allowed + 1e-9,
                        "{now:?} {then:?} {bits} take {take}"
                    );
                }
            }
        }
    }
}
