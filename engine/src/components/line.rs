//! What one line of a recipe credits, step by step.

use super::household::{named_ounces, unit_weight};
use super::rule::{Basis, CreditRule, CreditYield};
use super::{BeansRole, Component, CreditRules, Mark};
use crate::foods::{FoodId, FoodTable, NutrientId};
use crate::units::{Grams, MassUnit};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A line of a recipe as crediting needs it.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct CreditLine {
    /// Index of the line in the recipe. A line that names another recipe gives
    /// several of these, all with the same index.
    pub line: usize,
    /// The food, if the line's words were matched.
    pub food: Option<FoodId>,
    /// Edible weight of the whole line, if it could be found.
    pub weight: Option<Grams>,
    /// Number of the food's measure by which the line was weighed.
    pub measure: Option<u16>,
    /// Cooked weight as a share of the weight entered, if the office knows it.
    pub cooked_yield: Option<Decimal>,
    /// Credits that the office states itself, from a label or a statement of
    /// the maker. They replace what the rules say.
    pub stated: Vec<StatedCredit>,
}

/// A credit that a person states for a line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct StatedCredit {
    /// Toward which component.
    pub component: Component,
    /// How much in one serving of the recipe, in the component's unit.
    pub amount: Decimal,
    /// Marks that rules on a week ask for.
    #[serde(default)]
    pub marks: Vec<Mark>,
    /// Why: "CN label 012345", "product formulation statement of May".
    pub reason: String,
    /// The line for which it was stated, where the line has another amount
    /// now: whether the credit still holds is for a person to say.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub stated_for: Option<String>,
}

/// One step of the arithmetic, applied to the result of the step before.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Step {
    /// What is done.
    pub operation: Operation,
    /// With which number.
    pub by: Decimal,
    /// Unit of the number.
    pub unit: String,
    /// Where the number comes from.
    pub words: String,
}

/// Multiplication or division.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub enum Operation {
    /// Multiplied by.
    Times,
    /// Divided by.
    DividedBy,
}

/// A part of what a line credits.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct PartCredit {
    /// Toward which component.
    pub component: Component,
    /// How much in the whole recipe, not rounded, in the component's unit.
    pub amount: Decimal,
    /// Marks that rules on a week ask for.
    pub marks: Vec<Mark>,
}

/// What a line whose credit is not known could still add.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase", tag = "kind", content = "component")]
pub enum CouldAdd {
    /// To any component.
    Anything,
    /// To this component only.
    Only(Component),
}

impl CouldAdd {
    /// True when it could change the amount of `component`.
    pub fn touches(self, component: Component) -> bool {
        match self {
            Self::Anything => true,
            Self::Only(own) => own.touches(component),
        }
    }
}

/// The rule that decided, for the record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct CitedRule {
    /// Name of the rule.
    pub id: String,
    /// Where it stands.
    pub paragraph: String,
    /// Where its figure was read.
    pub source: String,
    /// How sure the figure is.
    pub status: String,
}

/// What one line credits and why.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct LineCredit {
    /// Index of the line in the recipe.
    pub line: usize,
    /// Its food.
    pub food: Option<FoodId>,
    /// Its edible weight, with which the steps begin.
    pub weight: Option<Grams>,
    /// What it credits; empty if nothing.
    pub parts: Vec<PartCredit>,
    /// Set when its credit is not known.
    pub unknown: Option<CouldAdd>,
    /// The arithmetic from the weight to the first part.
    pub steps: Vec<Step>,
    /// The rule that decided; none for a stated credit or an uncovered food.
    pub rule: Option<CitedRule>,
    /// The rule in words, or why nothing is credited and what to do.
    pub reason: String,
}

/// Credits one line of a recipe that makes `servings`.
pub(super) fn credit_line(
    foods: &FoodTable,
    rules: &CreditRules,
    line: &CreditLine,
    servings: Decimal,
    role: BeansRole,
) -> LineCredit {
    let blank = LineCredit {
        line: line.line,
        food: line.food,
        weight: line.weight,
        parts: Vec::new(),
        unknown: None,
        steps: Vec::new(),
        rule: None,
        reason: String::new(),
    };
    if !line.stated.is_empty() {
        return stated(blank, &line.stated, servings);
    }
    let unknown = |could_add, reason: &str| LineCredit {
        unknown: Some(could_add),
        reason: reason.to_owned(),
        ..blank.clone()
    };
    let Some(food) = line.food.and_then(|id| foods.food(id)) else {
        return unknown(CouldAdd::Anything, "no food is chosen: choose one");
    };
    let Some(rule) = rules.list.rule_for(food, role) else {
        return unknown(
            CouldAdd::Anything,
            "no rule covers this food: state what it credits from the label or the product formulation statement",
        );
    };
    let cited = LineCredit {
        rule: Some(CitedRule::of(rule)),
        reason: rule.words.clone(),
        ..blank
    };
    if rule.basis == Basis::Nothing {
        return cited;
    }
    let could_add = rule.component.map_or(CouldAdd::Anything, CouldAdd::Only);
    let unsettled = |reason: String| LineCredit {
        unknown: Some(could_add),
        reason,
        ..cited.clone()
    };
    if rule.basis == Basis::Unsettled {
        return unsettled(rule.words.clone());
    }
    let Some(weight) = line.weight else {
        return unsettled("the weight is not known: enter an amount that can be weighed".into());
    };
    let (Some(component), steps) = (rule.component, steps(foods, rules, line, food.id, rule))
    else {
        return unsettled(rule.words.clone());
    };
    match steps {
        Err(reason) => unsettled(reason),
        Ok(steps) => {
            let amount = result(weight, &steps);
            let mut parts = vec![PartCredit {
                component,
                amount,
                marks: rule.marks.to_vec(),
            }];
            if role == BeansRole::MeatAlternate && rule.role == Some(role) {
                parts.extend(beans_beside_meat(foods, rules, line, food.id, weight));
            }
            LineCredit {
                parts,
                steps,
                ..cited
            }
        }
    }
}

fn stated(blank: LineCredit, credits: &[StatedCredit], servings: Decimal) -> LineCredit {
    let reasons: Vec<&str> = credits
        .iter()
        .map(|credit| credit.reason.as_str())
        .collect();
    LineCredit {
        parts: credits
            .iter()
            .map(|credit| PartCredit {
                component: credit.component,
                amount: credit.amount * servings,
                marks: credit.marks.clone(),
            })
            .collect(),
        reason: reasons.join("; "),
        ..blank
    }
}

/// Beans served as a meat alternate also count toward their weekly subgroup,
/// though not toward vegetables (7 CFR 210.10(c)(2)(ii)(C)).
fn beans_beside_meat(
    foods: &FoodTable,
    rules: &CreditRules,
    line: &CreditLine,
    food: FoodId,
    weight: Grams,
) -> Option<PartCredit> {
    let rule = rules
        .list
        .rule_for(foods.food(food)?, BeansRole::Vegetable)?;
    let steps = steps(foods, rules, line, food, rule).ok()?;
    Some(PartCredit {
        component: rule.component?,
        amount: result(weight, &steps),
        marks: vec![Mark::SubgroupOnly],
    })
}

impl CitedRule {
    fn of(rule: &CreditRule) -> Self {
        Self {
            id: rule.id.clone(),
            paragraph: rule.paragraph.clone(),
            source: rule.source.clone(),
            status: rule.status.clone(),
        }
    }
}

/// Products first, so that a division is the last thing that can be inexact.
fn result(weight: Grams, steps: &[Step]) -> Decimal {
    let of = |operation| {
        steps
            .iter()
            .filter(move |step| step.operation == operation)
            .map(|step| step.by)
    };
    weight.grams() * of(Operation::Times).product::<Decimal>()
        / of(Operation::DividedBy).product::<Decimal>()
}

fn steps(
    foods: &FoodTable,
    rules: &CreditRules,
    line: &CreditLine,
    food: FoodId,
    rule: &CreditRule,
) -> Result<Vec<Step>, String> {
    let (Some(per), Some(gives)) = amounts(rule) else {
        return Err(rule.words.clone());
    };
    let component_unit = rule.component.map_or("", Component::unit);
    let mut steps = Steps::default();
    match rule.basis {
        Basis::Exhibit => {
            let Some(weight) = rules.grains.one_oz_eq(&rule.unit) else {
                return Err(rule.words.clone());
            };
            let words = format!("1 oz eq of group {}: {}", weight.group, weight.words);
            steps.divided_by(weight.grams, "g", &words);
        }
        Basis::Weight => {
            check_protein(foods, food, rule, per)?;
            if rule.unit == "oz" {
                match named_ounces(foods.measures(food), line.measure, ounce()) {
                    Some(named) => {
                        steps.divided_by(named.grams, "g", &named.words);
                        steps.times(named.units, "oz", &named.words);
                    }
                    None => steps.divided_by(ounce(), "g", "1 oz"),
                }
            }
        }
        _ => {
            let stand_in = rule.cup_of.map(FoodId::Sr28);
            let weight = unit_weight(foods.measures(food), &rule.unit, line.measure)
                .or_else(|| unit_weight(foods.measures(stand_in?), &rule.unit, None))
                .ok_or(format!(
                    "the dataset has no measure of it in {}: state what it credits",
                    rule.unit
                ))?;
            steps.divided_by(weight.grams, "g", &weight.words);
            steps.times(weight.units, &rule.unit, &weight.words);
        }
    }
    match (line.cooked_yield, rule.cooked_yield) {
        (None, None) => {}
        (Some(share), Some(_)) => steps.times(share, "", "cooked yield stated by the office"),
        (None, Some(CreditYield::Share(share))) => steps.times(share, "", &rule.words),
        (None, Some(CreditYield::Stated)) => return Err(rule.words.clone()),
        // A yield of a food that is entered as served has nothing to do.
        (Some(_), None) => {}
    }
    steps.divided_by(per, &rule.unit, &rule.words);
    steps.times(gives, component_unit, &rule.words);
    Ok(steps.0)
}

/// So many units credit so much: one ounce equivalent for a group of Exhibit A.
fn amounts(rule: &CreditRule) -> (Option<Decimal>, Option<Decimal>) {
    match rule.basis {
        Basis::Exhibit => (Some(Decimal::ONE), Some(Decimal::ONE)),
        _ => (rule.per, rule.gives),
    }
}

/// Grams of one ounce.
fn ounce() -> Decimal {
    MassUnit::Ounce.grams().grams()
}

fn check_protein(
    foods: &FoodTable,
    food: FoodId,
    rule: &CreditRule,
    per: Decimal,
) -> Result<(), String> {
    let Some(least) = rule.least_protein else {
        return Ok(());
    };
    let grams = match rule.unit.as_str() {
        "oz" => per * ounce(),
        _ => per,
    };
    match foods.per_100_g(food, NutrientId::PROTEIN) {
        Some(protein) if protein * grams / Decimal::ONE_HUNDRED >= least => Ok(()),
        Some(_) => Err(format!(
            "{per} {} hold less than {least} g of protein by the dataset: state what it credits from the label",
            rule.unit
        )),
        None => Err("its protein is not known: state what it credits from the label".into()),
    }
}

/// Collects steps, leaving out those that change nothing.
#[derive(Default)]
struct Steps(Vec<Step>);

impl Steps {
    fn push(&mut self, operation: Operation, by: Decimal, unit: &str, words: &str) {
        if by != Decimal::ONE {
            self.0.push(Step {
                operation,
                by: by.normalize(),
                unit: unit.to_owned(),
                words: words.to_owned(),
            });
        }
    }

    fn times(&mut self, by: Decimal, unit: &str, words: &str) {
        self.push(Operation::Times, by, unit, words);
    }

    fn divided_by(&mut self, by: Decimal, unit: &str, words: &str) {
        self.push(Operation::DividedBy, by, unit, words);
    }
}
