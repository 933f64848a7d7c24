//! One service of one week: its averages and the verdicts on its limits.

use super::near::{CONVERTED, Near, POWERS, float};
use super::recipes::Kitchen;
use super::values::LANE;
use super::watched::Watched;
use crate::exact::{Digits, round_half_up};
use crate::findings::{Known, Verdict, finding};
use crate::foods::NutrientId;
use crate::recipe::RecipeId;
use crate::reference::Reference;
use crate::rules::{Basis, Bound, DietarySpecification, LeftOut};
use crate::units::Servings;
use crate::week::{MealAverage, NutrientAverage, Service, Week, WeekError, average, milk_total};
use rust_decimal::Decimal;
use std::cmp::Ordering;
use std::collections::BTreeSet;

/// A limit compared with a service, in short: figure and verdict are those of
/// [`crate::findings::Finding`].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct BriefFinding<'a> {
    /// The requirement.
    pub rule: &'a DietarySpecification,
    /// The figure as it is printed, in units of its last digit; nothing where
    /// there is none.
    pub figure: Option<i64>,
    /// Decimal places of the figure.
    pub digits: Digits,
    /// Whether every value that the figure needs is known.
    pub complete: bool,
    /// Kept, broken or unknown.
    pub verdict: Verdict,
}

/// How a service stands.
#[derive(Debug, Clone, Copy)]
pub struct ServiceBrief<'y> {
    /// Its week.
    pub week: &'y Week,
    /// Which service.
    pub service: &'y Service,
    /// The average of every nutrient in the dataset's order as it is printed,
    /// in units of its last digit: what is known of it.
    pub averages: &'y [i64],
    /// By nutrient: whether something is missing from the average.
    pub missing: &'y [bool],
    /// Every limit in force.
    pub findings: &'y [BriefFinding<'y>],
}

/// A service with what was found.
#[derive(Debug)]
pub(super) struct ServiceYear<'a> {
    week: &'a Week,
    service: Service,
    meals: f64,
    choices: Vec<Share>,
    limits: Vec<Limit<'a>>,
    /// Planned servings times totals per serving, by lane.
    sums: Vec<[f64; LANE]>,
    lost: Vec<u16>,
    watched: Watched,
    is_averaged: bool,
    averages: Vec<i64>,
    missing: Vec<bool>,
    findings: Vec<BriefFinding<'a>>,
    /// A recipe has weights or values below zero.
    negative: bool,
}

/// A choice that is planned for someone.
#[derive(Debug, Clone, Copy)]
struct Share {
    recipe: usize,
    planned: f64,
    /// Batches of the recipe.
    batches: f64,
}

/// A limit in force, ready to be compared.
#[derive(Debug)]
struct Limit<'a> {
    rule: &'a DietarySpecification,
    column: Option<usize>,
    limit: Near,
    /// The limit in units of the figure's last digit, if it is whole in them.
    in_digits: Option<i64>,
    kcal_per_gram: Near,
    milk: Option<Near>,
    milk_missing: bool,
}

impl<'a> ServiceYear<'a> {
    pub fn new(
        reference: &'a Reference,
        kitchen: &Kitchen,
        week: &'a Week,
        service: Service,
    ) -> Result<Self, WeekError> {
        let mut made = Self {
            meals: 0.0,
            choices: Vec::new(),
            limits: Vec::new(),
            sums: vec![[0.0; LANE]; kitchen.values.lanes()],
            lost: vec![0; kitchen.values.lanes()],
            watched: Watched::new(std::iter::empty(), 0),
            is_averaged: false,
            averages: vec![0; kitchen.values.columns()],
            missing: vec![false; kitchen.values.columns()],
            findings: Vec::new(),
            negative: false,
            week,
            service,
        };
        // The exact average of nothing tells what cannot be averaged at all.
        let planned = made.exact(reference, kitchen, &[])?;
        made.meals = float(planned.planned_meals.servings());
        let meals = week.meals_of(&made.service);
        for choice in meals.flat_map(|(_, meal)| meal.choices()) {
            if choice.planned > Servings::ZERO
                && let Some(recipe) = kitchen.place_of(&choice.recipe)
            {
                made.choices.push(Share {
                    recipe,
                    planned: float(choice.planned.servings()),
                    batches: 0.0,
                });
            }
        }
        if let Some(first) = planned.days.iter().min() {
            let rules = reference.specifications.in_force(&made.service, *first);
            made.limits = rules.map(|rule| Limit::new(kitchen, rule)).collect();
        }
        let energy = kitchen.values.column(NutrientId::ENERGY);
        let limited = made.limits.iter().filter_map(|limit| limit.column);
        made.watched = Watched::new(limited.chain(energy), made.choices.len());
        for recipe in made.recipes() {
            made.forget(kitchen, recipe);
        }
        Ok(made)
    }

    /// The recipes that it serves, each once.
    pub fn recipes(&self) -> Vec<usize> {
        let mut recipes: Vec<usize> = self.choices.iter().map(|choice| choice.recipe).collect();
        recipes.sort_unstable();
        recipes.dedup();
        recipes
    }

    /// A recipe has changed: its share follows, and what was averaged is old.
    pub fn forget(&mut self, kitchen: &Kitchen, recipe: usize) {
        self.is_averaged = false;
        self.negative |= kitchen.is_negative(recipe);
        for (at, choice) in self.choices.iter_mut().enumerate() {
            if choice.recipe == recipe {
                choice.batches = choice.planned / kitchen.servings(recipe);
                let totals = kitchen.totals(recipe);
                self.watched.note(at, choice.batches, totals);
            }
        }
        for at in 0..self.limits.len() {
            if self.limits[at].rule.leaves_out == Some(LeftOut::FluidMilk) {
                self.count_milk(kitchen, at);
            }
        }
    }

    fn count_milk(&mut self, kitchen: &Kitchen, limit: usize) {
        let Some(column) = self.limits[limit].column else {
            return;
        };
        let (mut sum, mut missing, mut terms) = (0.0, false, 0);
        for choice in &self.choices {
            for (food, grams) in &kitchen.planned(choice.recipe).milk {
                let (value, unknown) = kitchen.values.of_food(*food, column);
                sum += choice.planned * float(grams.grams()) * value;
                missing |= unknown;
                terms += 1;
            }
        }
        let limit = &mut self.limits[limit];
        limit.milk = Some(Near::after(sum, 4 * CONVERTED + terms));
        limit.milk_missing = missing;
    }

    /// Averages every nutrient.
    pub fn average(&mut self, reference: &Reference, kitchen: &Kitchen) {
        for (at, choice) in self.choices.iter().enumerate() {
            let totals = kitchen.totals(choice.recipe);
            self.watched.note(at, choice.batches, totals);
        }
        for lane in 0..self.sums.len() {
            let (mut sum, mut lost) = ([0.0; LANE], 0);
            for choice in &self.choices {
                let (totals, missing) = kitchen.totals(choice.recipe);
                lost |= missing[lane];
                for (sum, total) in sum.iter_mut().zip(&totals[lane]) {
                    *sum += choice.batches * total;
                }
            }
            self.sums[lane] = sum;
            self.lost[lane] = lost;
        }
        self.is_averaged = true;
        for column in 0..self.averages.len() {
            let figure = self.figure(kitchen, column).value;
            let digits = kitchen.values.digits(column);
            let printed = figure.printed(digits).filter(|_| !self.negative);
            self.averages[column] =
                printed.unwrap_or_else(|| self.exactly(reference, kitchen, column, digits));
            self.missing[column] = self.lost[column / LANE] >> (column % LANE) & 1 == 1;
        }
    }

    fn exactly(
        &self,
        reference: &Reference,
        kitchen: &Kitchen,
        column: usize,
        digits: Digits,
    ) -> i64 {
        let (nutrient, _) = kitchen.values.nutrient(column);
        let average = self.exact(reference, kitchen, &[nutrient]);
        let known = average.ok().and_then(|average| average.amount(nutrient));
        known.map_or(0, |amount| {
            units(round_half_up(amount.known, digits), digits)
        })
    }

    /// The average of a column, and whether it is complete.
    fn figure(&self, kitchen: &Kitchen, column: usize) -> Figure {
        let (lane, place) = (column / LANE, column % LANE);
        let watched = match self.is_averaged {
            true => None,
            false => self.watched.sum(column),
        };
        let (sum, is_lost) = watched.unwrap_or_else(|| {
            let is_lost = self.lost[lane] >> place & 1 == 1;
            (self.sums[lane][place], is_lost)
        });
        // Batches: two conversions and a quotient, then a product; meals: a
        // conversion, the power of ten, a product, a quotient.
        let roundings = kitchen.roundings() + self.choices.len() + 4 * CONVERTED + 4;
        let (_, places) = kitchen.values.nutrient(column);
        Figure {
            value: Near::after(sum / (self.meals * POWERS[places as usize + 2]), roundings),
            is_complete: !is_lost,
        }
    }

    /// Compares every limit in force.
    pub fn find(&mut self, reference: &Reference, kitchen: &Kitchen) {
        let energy = kitchen.values.column(NutrientId::ENERGY);
        let energy = energy.map(|column| self.figure(kitchen, column));
        let found = self.limits.iter().map(|limit| {
            let brief = self.brief_finding(kitchen, limit, energy);
            brief.unwrap_or_else(|| self.exact_finding(reference, kitchen, limit.rule))
        });
        self.findings = found.collect();
    }

    /// A finding from the floats; nothing where they leave anything open.
    fn brief_finding(
        &self,
        kitchen: &Kitchen,
        limit: &Limit<'a>,
        energy: Option<Figure>,
    ) -> Option<BriefFinding<'a>> {
        if self.negative {
            return None;
        }
        let rule = limit.rule;
        let mut amount = self.figure(kitchen, limit.column?);
        let energy = energy?;
        if rule.leaves_out == Some(LeftOut::FluidMilk) {
            // What is missing may all be in the milk: that is told by counting.
            if !amount.is_complete && limit.milk_missing {
                return None;
            }
            let (_, places) = kitchen.values.nutrient(limit.column?);
            let per_meal = Near::after(self.meals * POWERS[places as usize + 2], 2 * CONVERTED);
            amount.value = amount.value.minus(limit.milk?.over(per_meal)?);
        }
        let figure = match rule.basis {
            Basis::PerMeal => amount.value,
            Basis::ShareOfEnergy => {
                let hundred = Near::of(Decimal::ONE_HUNDRED);
                let kcal = amount.value.times(limit.kcal_per_gram).times(hundred);
                kcal.over(energy.value)?
            }
        };
        let side = figure.side_of(limit.limit)?;
        let holds = limit.holds(side);
        let digits = rule.fewest_digits();
        let printed = figure.printed(digits)?;
        // A figure that prints on the other side of its limit gets more digits.
        if limit.holds(printed.cmp(&limit.in_digits?)) != holds {
            return None;
        }
        let known = Known {
            amount: amount.is_complete,
            energy: energy.is_complete,
        };
        Some(BriefFinding {
            rule,
            figure: Some(printed),
            digits,
            complete: known.all_of(rule),
            verdict: known.verdict(Some(holds), rule),
        })
    }

    fn exact_finding(
        &self,
        reference: &Reference,
        kitchen: &Kitchen,
        rule: &'a DietarySpecification,
    ) -> BriefFinding<'a> {
        let nutrients = [rule.nutrient, NutrientId::ENERGY];
        let found = self.exact(reference, kitchen, &nutrients);
        match found.map(|average| finding(&average, rule)) {
            Ok(found) => BriefFinding {
                rule,
                figure: found
                    .figure
                    .map(|figure| units(round_half_up(figure, found.digits), found.digits)),
                digits: found.digits,
                complete: found.complete,
                verdict: found.verdict,
            },
            // A recipe has lost its servings since.
            Err(_) => BriefFinding {
                rule,
                figure: None,
                digits: rule.fewest_digits(),
                complete: false,
                verdict: Verdict::Unknown,
            },
        }
    }

    /// The averages by the decimal path.
    fn exact(
        &self,
        reference: &Reference,
        kitchen: &Kitchen,
        nutrients: &[NutrientId],
    ) -> Result<MealAverage, WeekError> {
        let choices = || {
            self.week
                .meals_of(&self.service)
                .flat_map(|(_, meal)| meal.choices())
        };
        let names: BTreeSet<&RecipeId> = choices().map(|choice| &choice.recipe).collect();
        let analysed: Vec<(RecipeId, _)> = names
            .into_iter()
            .filter_map(|name| {
                let analysis = kitchen.analysis(reference, kitchen.place_of(name)?, nutrients)?;
                Some((name.clone(), analysis))
            })
            .collect();
        let served: Vec<_> = analysed
            .iter()
            .map(|(id, analysis)| (id, analysis))
            .collect();
        let mut average = average(self.week, &self.service, &served, nutrients)?;
        let milk = || {
            choices()
                .filter(|choice| choice.planned > Servings::ZERO)
                .filter_map(|choice| Some((choice.planned, kitchen.place_of(&choice.recipe)?)))
                .flat_map(|(planned, recipe)| {
                    let milk = kitchen.planned(recipe).milk.iter();
                    milk.map(move |(food, grams)| (*food, *grams * planned.servings()))
                })
        };
        let leaving_out = reference.specifications.leaving_out_milk();
        average.fluid_milk = nutrients
            .iter()
            .filter(|nutrient| leaving_out.contains(nutrient))
            .map(|nutrient| NutrientAverage {
                nutrient: *nutrient,
                amount: milk_total(&reference.foods, milk(), *nutrient)
                    .divided(average.planned_meals.servings()),
            })
            .collect();
        Ok(average)
    }

    pub fn findings(&self) -> &[BriefFinding<'a>] {
        &self.findings
    }

    /// How it stands; averages that are old are made anew.
    pub fn brief(&mut self, reference: &Reference, kitchen: &Kitchen) -> ServiceBrief<'_> {
        if !self.is_averaged {
            self.average(reference, kitchen);
        }
        ServiceBrief {
            week: self.week,
            service: &self.service,
            averages: &self.averages,
            missing: &self.missing,
            findings: &self.findings,
        }
    }
}

/// An average and whether anything is missing from it.
#[derive(Debug, Clone, Copy)]
struct Figure {
    value: Near,
    is_complete: bool,
}

impl<'a> Limit<'a> {
    fn new(kitchen: &Kitchen, rule: &'a DietarySpecification) -> Self {
        let digits = rule.fewest_digits();
        let whole = round_half_up(rule.limit, digits);
        Self {
            rule,
            column: kitchen.values.column(rule.nutrient),
            limit: Near::of(rule.limit),
            in_digits: (whole == rule.limit).then(|| units(whole, digits)),
            kcal_per_gram: Near::of(rule.kcal_per_gram.unwrap_or_default()),
            milk: None,
            milk_missing: false,
        }
    }

    /// Whether a figure on this side of the limit keeps it; the same as
    /// [`Bound::holds`].
    fn holds(&self, side: Ordering) -> bool {
        match self.rule.bound {
            Bound::AtLeast => side != Ordering::Less,
            Bound::AtMost => side != Ordering::Greater,
            Bound::Below => side == Ordering::Less,
        }
    }
}

/// A printed figure in units of its last digit.
fn units(printed: Decimal, digits: Digits) -> i64 {
    let mut scaled = printed;
    scaled.rescale(digits.0);
    i64::try_from(scaled.mantissa()).unwrap_or(i64::MAX)
}
