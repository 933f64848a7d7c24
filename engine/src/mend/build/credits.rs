//! What choices, meals and days credit, as sums over columns.

use super::super::change::WeekChange;
use super::super::gather::to_f64;
use super::super::ground::Slot;
use super::super::model::{Model, Sum};
use super::OfService;
use super::offer::{Moves, least, most};
use crate::components::{Component, Mark, RecipeCredits};
use crate::findings::{AmountRow, Setting};
use crate::recipe::RecipeId;
use crate::rules::Subject;
use crate::week::{Choice, Counted, Meal};
use rust_decimal::Decimal;
use std::collections::BTreeSet;

/// Good will for each of several changes of a dish that credit: two of the
/// largest step to which a credit is rounded (0.25 oz eq; cups are finer), for
/// some subjects are two components together. Vegetables beyond the subgroups
/// are what is left of six credits, and milk credits nothing below its serving.
pub(super) const SLACK: f64 = 0.5;
const ADDITIONAL_SLACK: f64 = 1.0;
const MILK_SLACK: f64 = 8.0;

/// A name that no recipe of a book has, for the recipe that is the `nth` of
/// those which a candidate changes.
pub(super) fn variant_name(candidate: usize, nth: usize) -> RecipeId {
    RecipeId(format!("\u{1}{candidate}\u{1}{nth}"))
}

/// A figure of a choice that rows add up.
pub(super) struct Figure<'f> {
    pub amount: &'f dyn Fn(&Choice) -> f64,
    /// The components that it is counted from.
    pub of: &'f [Component],
    /// Good will for each of several changes.
    pub slack: f64,
}

/// The components that a subject's amount is counted from. Vegetables may stand
/// in for fruits.
pub(super) fn behind(subject: Subject) -> &'static [Component] {
    use Component::*;
    match subject {
        Subject::Of(DarkGreen) => &[DarkGreen],
        Subject::Of(RedOrange) => &[RedOrange],
        Subject::Of(Beans) => &[Beans],
        Subject::Of(Starchy) => &[Starchy],
        Subject::Of(Other) => &[Other],
        Subject::Of(Grains) => &[Grains],
        Subject::Of(MeatAlternates) => &[MeatAlternates],
        Subject::Of(Milk) => &[Milk],
        Subject::GrainsOrMeats => &[Grains, MeatAlternates],
        Subject::Of(Fruits | Vegetables) | Subject::AdditionalVegetables => &[
            Fruits, Vegetables, DarkGreen, RedOrange, Beans, Starchy, Other,
        ],
    }
}

/// Whether a serving has the same parts that credit toward these components.
fn is_same(now: &RecipeCredits, after: &RecipeCredits, components: &[Component]) -> bool {
    let parts = |credits: &RecipeCredits| -> Vec<(Component, Decimal, Vec<Mark>)> {
        let all = components.iter().flat_map(|of| credits.parts(*of));
        all.map(|(_, part)| {
            (
                part.component,
                credits.in_a_serving(part),
                part.marks.clone(),
            )
        })
        .collect()
    };
    now.dough_is_whole_grain_rich == after.dough_is_whole_grain_rich && parts(now) == parts(after)
}

/// Credits of one service while their rows are made.
pub(super) struct Credits<'s, 'a> {
    pub of: &'s OfService<'a>,
    pub setting: &'s Setting<'s>,
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
                variant_name(at, nth)
            }
        };
        Some(Choice {
            recipe,
            planned: slot.choice.planned,
        })
    }

    /// What a choice credits: now, and with each candidate that moves it.
    fn moves(&self, slot: &Slot<'a>, figure: &Figure<'_>) -> Moves {
        let amount = figure.amount;
        let now = amount(slot.choice);
        let movers: Vec<(usize, f64)> = self
            .of
            .movers(slot)
            .into_iter()
            .filter(|(at, _)| self.may_move(slot, *at, figure.of))
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

    /// Whether a candidate changes any part of a dish that credits toward these
    /// components. If not, it moves no figure of them, nor brings one nearer to
    /// a step.
    fn may_move(&self, slot: &Slot<'a>, at: usize, components: &[Component]) -> bool {
        let candidate = &self.of.candidates[at];
        let recipe = &slot.choice.recipe;
        let now = self.of.study(recipe).map(|study| study.credits.as_ref());
        let after = candidate
            .variant(recipe)
            .map(|study| study.credits.as_ref());
        let is_same = match (now, after) {
            (Some(Some(now)), Some(Some(after))) => is_same(now, after, components),
            _ => false,
        };
        candidate.moves_credits && !is_same
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
    pub fn credit(&self, slot: &Slot<'a>, figure: &Figure<'_>) -> Sum {
        let moves = self.moves(slot, figure);
        let mut sum = Sum::of(moves.now);
        for (at, rise) in moves.movers {
            let good_will = if moves.several && self.is_of_line(at) {
                figure.slack
            } else {
                0.0
            };
            sum.add(at, rise + good_will);
        }
        sum
    }

    /// What a meal brings at most, counted one way.
    fn meal(&self, model: &mut Model, meal: &Meal, how: Counted, figure: &Figure<'_>) -> Sum {
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
                    let credits = slots.iter().map(|slot| self.credit(slot, figure));
                    total.add_times(1.0, &least(model, credits.collect(), take));
                }
                Counted::Largest if slots.len() > take => {
                    let moves = slots.iter().map(|slot| self.moves(slot, figure));
                    let lines = |at| self.is_of_line(at);
                    total.add_times(1.0, &most(moves.collect(), take, figure.slack, lines));
                }
                Counted::Average => {
                    let meals = to_f64(meal.planned_meals.servings());
                    for slot in slots {
                        let planned = to_f64(slot.choice.planned.servings());
                        total.add_times(planned / meals, &self.credit(slot, figure));
                    }
                }
                Counted::Smallest | Counted::Largest | Counted::Offered => {
                    for slot in slots {
                        total.add_times(1.0, &self.credit(slot, figure));
                    }
                }
            }
        }
        total
    }

    /// What a day, or all days, bring at most. Nothing where a day serves the
    /// meal more than once.
    pub fn days(&self, model: &mut Model, row: &AmountRow<'_>) -> Option<Sum> {
        let subject = row.row.component;
        let amount = |choice: &Choice| to_f64(self.setting.amount(choice, subject).low);
        let slack = match subject {
            Subject::Of(Component::Milk) => MILK_SLACK,
            Subject::AdditionalVegetables => ADDITIONAL_SLACK,
            _ => SLACK,
        };
        let figure = Figure {
            amount: &amount,
            of: behind(subject),
            slack,
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
            let of_day = self.meal(model, meal, row.row.counted, &figure);
            total.add_times(1.0, &of_day);
        }
        Some(total)
    }
}
