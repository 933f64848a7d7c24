//! The line on the bench: drafts of what could stand in its place, each
//! studied as a whole recipe before anything is said of it.

use super::goals::{Goals, SwapOptions};
use super::index::{Features, SwapIndex};
use super::line_text::{by_weight, renamed};
use super::proposal::{Change, SwapProblem};
use super::reason::Reason;
use super::share::line_in_share;
use super::{AmountBy, Place};
use crate::components::{Component, RecipeCredits, unit_weight};
use crate::foods::{Food, FoodId};
use crate::recipe::{
    CookedAs, Correction, LineAmount, LineKind, LineReading, RecipeLine, read_line,
};
use crate::reference::{LineStudy, RecipeStudy, Reference};
use crate::units::{Grams, Unit};
use crate::yields::TreatmentId;
use rust_decimal::Decimal;

/// The line that is to be changed, and all that a change is judged by.
pub(super) struct Bench<'a> {
    pub reference: &'a Reference,
    pub index: &'a SwapIndex,
    pub place: &'a Place<'a>,
    pub goals: &'a Goals,
    pub options: &'a SwapOptions,
    /// The line's own food.
    pub food: &'a Food,
    pub features: Features,
    /// Weight as the line states it.
    pub stated: Grams,
}

/// Lines that could stand in the old one's place.
pub(super) struct Draft {
    pub change: Change,
    pub lines: Vec<RecipeLine>,
    /// How well the new food fits.
    pub fit: i32,
    /// What is known before the recipe is studied.
    pub reasons: Vec<Reason>,
    /// The changed recipe, where it was studied on the way.
    pub study: Option<RecipeStudy>,
}

/// A new food's line, with how its amount was found.
pub(super) struct Swapped {
    pub line: RecipeLine,
    pub amount: Reason,
    /// The recipe with it, where the line was left as it was studied.
    pub study: Option<RecipeStudy>,
}

/// A weight that is this near the one that is wanted is left as it is written:
/// within three in a hundred. Our own judgement.
const NEAR: (Decimal, Decimal) = (
    Decimal::from_parts(97, 0, 0, false, 2),
    Decimal::from_parts(103, 0, 0, false, 2),
);

impl<'a> Bench<'a> {
    /// Puts a line on the bench.
    pub fn new(
        reference: &'a Reference,
        index: &'a SwapIndex,
        place: &'a Place<'a>,
        goals: &'a Goals,
        options: &'a SwapOptions,
    ) -> Result<Self, SwapProblem> {
        if goals.counted().next().is_none() {
            return Err(SwapProblem::NoGoal);
        }
        let line = place.study.lines.get(place.line);
        let line = line
            .filter(|line| line.read.reading.kind == LineKind::Ingredient)
            .filter(|_| place.line < place.recipe.lines.len())
            .ok_or(SwapProblem::NoIngredient)?;
        if line.recipe.is_some() || place.recipe.lines[place.line].correction.recipe.is_some() {
            return Err(SwapProblem::NamesRecipe);
        }
        let id = line.read.food.ok_or(SwapProblem::NoFood)?;
        let food = reference.foods.food(id).ok_or(SwapProblem::NoFood)?;
        let weighed = line.read.weight.as_ref().ok();
        let stated = weighed
            .map(|weighed| weighed.grams)
            .filter(|grams| *grams > Grams::ZERO && line.problem.is_none())
            .ok_or(SwapProblem::NoWeight)?;
        if place.study.analysis.is_err() {
            return Err(SwapProblem::NotAnalysed);
        }
        let features = index.of(&reference.foods, id).ok_or(SwapProblem::NoFood)?;
        Ok(Self {
            reference,
            index,
            place,
            goals,
            options,
            food,
            features,
            stated,
        })
    }

    /// The line as it was studied.
    pub fn line(&self) -> &'a LineStudy {
        &self.place.study.lines[self.place.line]
    }

    /// The line as it is kept.
    pub fn kept(&self) -> &'a RecipeLine {
        &self.place.recipe.lines[self.place.line]
    }

    pub fn reading(&self) -> &'a LineReading {
        &self.line().read.reading
    }

    /// By what the amount of a new food is found.
    pub fn amount_by(&self) -> AmountBy {
        let usual = || {
            let kind = self.features.kind?;
            Some(self.index.kinds.get(kind).amount)
        };
        self.options
            .amount
            .or_else(usual)
            .unwrap_or(AmountBy::Weight)
    }

    /// The recipe with other lines in place of this one, studied.
    pub fn study(&self, lines: &[RecipeLine]) -> RecipeStudy {
        let Place {
            book,
            recipe,
            study,
            line,
        } = *self.place;
        let mut changed = recipe.clone();
        changed.lines.splice(line..=line, lines.iter().cloned());
        self.reference
            .study_replaced(book, &changed, study, line, lines.len())
    }

    /// The line's own food in a share of its amount.
    pub fn share_of_it(&self, share: Decimal) -> Option<RecipeLine> {
        line_in_share(self.kept(), self.reading(), self.food.id, share)
    }

    /// Another food in the line's place, or in a share of it. Nothing where it
    /// cannot be weighed, or cooked as the line says.
    pub fn swapped(&self, food: &Food, share: Decimal, by: AmountBy) -> Option<Swapped> {
        let (density, no_measure) = match by {
            AmountBy::Volume => self.density(food.id),
            _ => (Decimal::ONE, false),
        };
        let target = self.stated * density * share;
        let mut factor = share
            * if self.is_mass() {
                density
            } else {
                Decimal::ONE
            };
        let mut line = self.written(food, Some(factor), target)?;
        let mut study = self.study(std::slice::from_ref(&line));
        let mut weight = self.weight_in(&study);
        if !weight.is_some_and(|weight| plausible(weight, target)) {
            line = self.written(food, None, target)?;
            study = self.study(std::slice::from_ref(&line));
            weight = self.weight_in(&study);
        }
        let weight = weight?;
        let credit = self.credit_ratio(&study, share);
        let by_weight_instead = match by {
            AmountBy::Volume => no_measure || !(self.is_mass() || self.reads(&line)),
            AmountBy::Weight => false,
            AmountBy::Credit => credit.is_none(),
        };
        let ratio = match by {
            AmountBy::Volume => Decimal::ONE,
            AmountBy::Weight => target.grams() / weight.grams(),
            AmountBy::Credit => credit.unwrap_or(target.grams() / weight.grams()),
        };
        let amount = Reason::Amount {
            by,
            by_weight_instead,
        };
        if NEAR.0 <= ratio && ratio <= NEAR.1 {
            let study = Some(study);
            return Some(Swapped {
                line,
                amount,
                study,
            });
        }
        factor *= ratio;
        let by_words = self.reads(&line).then_some(factor);
        let line = self.written(food, by_words, weight * ratio)?;
        let study = None;
        Some(Swapped {
            line,
            amount,
            study,
        })
    }

    /// The line with another food: `factor` times its own words, or so much
    /// by weight.
    fn written(&self, food: &Food, factor: Option<Decimal>, grams: Grams) -> Option<RecipeLine> {
        let name = self.index.names.of(food, &self.reading().food_words);
        let classes = &self.index.classes;
        let kept = &self.kept().correction;
        let text = match factor {
            Some(factor) => renamed(classes, &self.kept().text, self.reading(), &name, factor)?,
            None => by_weight(classes, self.reading(), &name, grams.grams()),
        };
        Some(RecipeLine {
            text,
            correction: Correction {
                food: Some(food.id),
                weight: kept.weight.map(|_| grams),
                basis: kept.basis,
                cooked: self.cooked_as(food)?,
                treatments: self.treatments(food),
                ..Correction::default()
            },
        })
    }

    /// How the new food is cooked where the old one was: by the entry whose
    /// words are most alike. Nothing where none leads there; nothing in it
    /// where the line is not cooked.
    fn cooked_as(&self, food: &Food) -> Option<Option<CookedAs>> {
        let Some(old) = &self.kept().correction.cooked else {
            return Some(None);
        };
        let table = &self.reference.foods;
        let words = |id: FoodId| -> Vec<String> {
            let text = table.food(id).map_or("", |food| food.description.as_str());
            crate::foods::words(text)
                .into_iter()
                .map(|word| word.text)
                .collect()
        };
        let wanted = words(old.food);
        let offers = self.reference.yields.proposals(table, food.id);
        let best = offers.iter().max_by_key(|offer| {
            let alike = words(offer.cooked)
                .iter()
                .filter(|word| wanted.contains(word))
                .count();
            (alike, std::cmp::Reverse(offer.cooked))
        })?;
        Some(Some(CookedAs {
            food: best.cooked,
            weight: None,
        }))
    }

    /// The treatments of the line that still make sense for another food.
    fn treatments(&self, food: &Food) -> Vec<TreatmentId> {
        let description = food.description.to_lowercase();
        let kind = self
            .index
            .kinds
            .of(food)
            .map(|kind| &self.index.kinds.get(kind).kind);
        let suiting: Vec<_> = self
            .index
            .moves
            .suiting(kind.map(String::as_str), &description)
            .filter_map(|one| one.treatment())
            .collect();
        let kept = &self.kept().correction.treatments;
        kept.iter()
            .filter(|id| !self.index.moves.apply(id) || suiting.contains(id))
            .cloned()
            .collect()
    }

    /// Grams of the new food that fill what a gram of the old one fills, and
    /// whether there was no measure to go by.
    fn density(&self, new: FoodId) -> (Decimal, bool) {
        let cup = |id| {
            let weight = unit_weight(self.reference.foods.measures(id), "cup", None)?;
            (weight.grams > Decimal::ZERO).then(|| weight.grams / weight.units)
        };
        match (cup(self.food.id), cup(new)) {
            (Some(old), Some(new)) => (new / old, false),
            // The line's own measure serves where it states a volume or pieces.
            _ => (Decimal::ONE, self.is_mass()),
        }
    }

    fn is_mass(&self) -> bool {
        let amount = &self.reading().amount;
        !matches!(amount, LineAmount::Stated { quantity }
            if !matches!(quantity.unit, Unit::Mass(_)))
    }

    /// Whether the amount of a draft is in the line's own unit still.
    fn reads(&self, draft: &RecipeLine) -> bool {
        let unit = |reading: &LineReading| match &reading.amount {
            LineAmount::Stated { quantity } => Some(std::mem::discriminant(&quantity.unit)),
            _ => None,
        };
        unit(&read_line(&draft.text)) == unit(self.reading())
    }

    /// The stated weight of the line in a study of the changed recipe.
    fn weight_in(&self, study: &RecipeStudy) -> Option<Grams> {
        let weighed = study.lines[self.place.line].read.weight.as_ref().ok()?;
        Some(weighed.grams).filter(|grams| *grams > Grams::ZERO)
    }

    /// How many times the new amount credits what the old one does, in `share`
    /// of it; nothing where the one or the other is unknown or none.
    fn credit_ratio(&self, study: &RecipeStudy, share: Decimal) -> Option<Decimal> {
        let of = |credits: Option<&RecipeCredits>, wanted: Option<Component>| {
            let lines = &credits?.lines;
            let own = lines.iter().filter(|line| line.line == self.place.line);
            let mut parts = own.flat_map(|line| &line.parts);
            parts
                .find(|part| wanted.is_none_or(|wanted| part.component == wanted))
                .map(|part| (part.component, part.amount))
                .filter(|(_, amount)| *amount > Decimal::ZERO)
        };
        let (component, old) = of(self.place.study.credits.as_ref(), None)?;
        let (_, new) = of(study.credits.as_ref(), Some(component))?;
        Some(old * share / new)
    }
}

/// A measure of the new food that weighs a fifth or five times of what is
/// wanted is not the measure that the line means. Our own judgement.
fn plausible(weight: Grams, target: Grams) -> bool {
    let five = Decimal::from(5);
    weight * five >= target && weight <= target * five
}
