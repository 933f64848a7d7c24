//! What a serving of a recipe credits.

use super::line::credit_line;
use super::{
    BeansRole, Component, CouldAdd, CreditDefinitions, CreditLine, CreditRules, LineCredit, Mark,
    PartCredit,
};
use crate::analysis::AnalysisError;
use crate::exact::Bounds;
use crate::foods::{FoodId, FoodTable};
use crate::units::{Grams, Servings};
use crate::week::GradeGroup;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// What one serving credits toward a component.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Credit {
    /// Toward which component.
    pub component: Component,
    /// Unit of the amounts: cup, oz eq, fl oz.
    pub unit: String,
    /// The known amount before rounding.
    pub exact: Decimal,
    /// The amount that counts: rounded down once, on the recipe total.
    pub credited: Decimal,
    /// False when a line whose credit is unknown could add to it.
    pub complete: bool,
}

/// What a recipe credits.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeCredits {
    /// Number of servings that the recipe yields.
    pub servings: Servings,
    /// As what it serves its beans, peas and lentils.
    pub beans: BeansRole,
    /// The components that are credited or could be, in the pattern's order.
    /// In grades K to 12: the smallest amounts differ for younger children.
    pub per_serving: Vec<Credit>,
    /// Each line with its arithmetic.
    pub lines: Vec<LineCredit>,
    /// Whether the flours and meals of the recipe, taken together, are whole
    /// grain-rich; nothing when it has none.
    pub dough_is_whole_grain_rich: Option<bool>,
}

/// Credits the lines of a recipe that makes `servings`.
///
/// # Errors
/// When `servings` is not above zero.
pub fn credit_recipe(
    foods: &FoodTable,
    rules: &CreditRules,
    lines: &[CreditLine],
    servings: Servings,
    beans: BeansRole,
) -> Result<RecipeCredits, AnalysisError> {
    if servings <= Servings::ZERO {
        return Err(AnalysisError::NoServings(servings));
    }
    let lines: Vec<LineCredit> = lines
        .iter()
        .map(|line| credit_line(foods, rules, line, servings.servings(), beans))
        .collect();
    let mut credits = RecipeCredits {
        servings,
        beans,
        per_serving: Vec::new(),
        dough_is_whole_grain_rich: dough(&lines, rules.definitions.whole_grain_rich_from()),
        lines,
    };
    credits.per_serving = credits.table(&rules.definitions);
    Ok(credits)
}

fn dough(lines: &[LineCredit], threshold: Option<Decimal>) -> Option<bool> {
    let flours = || {
        lines
            .iter()
            .flat_map(|line| &line.parts)
            .filter(|part| part.marks.contains(&Mark::Dough))
    };
    let all: Decimal = flours().map(|part| part.amount).sum();
    let whole: Decimal = flours()
        .filter(|part| part.marks.contains(&Mark::WholeGrainRich))
        .map(|part| part.amount)
        .sum();
    (all > Decimal::ZERO).then(|| threshold.is_some_and(|share| whole >= share * all))
}

impl RecipeCredits {
    /// What a serving credits toward `component` for a group of eaters: at
    /// least the amount that counts, and at most that if no line with an
    /// unknown credit could add to it.
    pub fn amount(
        &self,
        definitions: &CreditDefinitions,
        component: Component,
        group: Option<&GradeGroup>,
    ) -> Bounds {
        let low = definitions.credited(component, group, self.exact(component, |_| true));
        self.bounds(component, low)
    }

    /// What of that amount bears a mark.
    pub fn marked(
        &self,
        definitions: &CreditDefinitions,
        component: Component,
        mark: Mark,
        group: Option<&GradeGroup>,
    ) -> Bounds {
        let credited = |wanted: &dyn Fn(&PartCredit) -> bool| {
            definitions.credited(component, group, self.exact(component, wanted))
        };
        let low = credited(&|part| self.bears(part, mark));
        let mut bounds = self.bounds(component, low);
        if mark == Mark::WholeGrainRich {
            let other = credited(&|part| {
                !self.bears(part, mark) && !part.marks.contains(&Mark::WholeGrainUnstated)
            });
            let whole = credited(&|_| true);
            bounds.high = bounds.high.map(|_| (whole - other).max(low));
        }
        bounds
    }

    /// What is known to bear a mark in one serving, before rounding.
    pub fn marked_exactly(&self, component: Component, mark: Mark) -> Decimal {
        self.exact(component, |part| self.bears(part, mark))
    }

    fn bounds(&self, component: Component, low: Decimal) -> Bounds {
        if self.is_complete(component) {
            Bounds::exactly(low)
        } else {
            Bounds::at_least(low)
        }
    }

    /// True when no line with an unknown credit could add to `component`.
    pub fn is_complete(&self, component: Component) -> bool {
        self.unknown()
            .all(|could_add| !could_add.touches(component))
    }

    /// What the lines with unknown credits could add.
    pub fn unknown(&self) -> impl Iterator<Item = CouldAdd> {
        self.lines.iter().filter_map(|line| line.unknown)
    }

    /// The lines that credit toward a component, with the part that does.
    pub fn parts(&self, component: Component) -> impl Iterator<Item = (&LineCredit, &PartCredit)> {
        self.lines.iter().flat_map(move |line| {
            line.parts
                .iter()
                .filter(move |part| part.component == component)
                .map(move |part| (line, part))
        })
    }

    /// What a part credits in one serving, not rounded.
    pub fn in_a_serving(&self, part: &PartCredit) -> Decimal {
        part.amount / self.servings.servings()
    }

    /// The fluid milk in a serving that is served as milk: food and grams.
    /// Milk that is too little to credit is an ingredient, not fluid milk.
    pub fn fluid_milk(&self, definitions: &CreditDefinitions) -> Vec<(FoodId, Grams)> {
        if self.amount(definitions, Component::Milk, None).low <= Decimal::ZERO {
            return Vec::new();
        }
        self.parts(Component::Milk)
            .filter_map(|(line, _)| Some((line.food?, line.weight? / self.servings.servings())))
            .collect()
    }

    /// True when `part` counts as bearing `mark`: flours bear "whole
    /// grain-rich" together or not at all.
    fn bears(&self, part: &PartCredit, mark: Mark) -> bool {
        if mark == Mark::WholeGrainRich && part.marks.contains(&Mark::Dough) {
            return self.dough_is_whole_grain_rich == Some(true);
        }
        part.marks.contains(&mark)
    }

    /// The known amount in one serving, before rounding.
    fn exact(&self, component: Component, wanted: impl Fn(&PartCredit) -> bool) -> Decimal {
        let counts = |part: &&PartCredit| {
            part.component == component
                || (component == Component::Vegetables
                    && part.component.is_vegetable()
                    && !part.marks.contains(&Mark::SubgroupOnly))
        };
        let total: Decimal = self
            .lines
            .iter()
            .flat_map(|line| &line.parts)
            .filter(|part| counts(part) && wanted(part))
            .map(|part| part.amount)
            .sum();
        total / self.servings.servings()
    }

    fn table(&self, definitions: &CreditDefinitions) -> Vec<Credit> {
        Component::ALL
            .into_iter()
            .map(|component| {
                let exact = self.exact(component, |_| true);
                Credit {
                    component,
                    unit: component.unit().to_owned(),
                    exact,
                    credited: definitions.credited(component, None, exact),
                    complete: self.is_complete(component),
                }
            })
            .filter(|credit| credit.exact > Decimal::ZERO || !credit.complete)
            .collect()
    }
}
