//! Compares what a week offers with the meal pattern: amounts by day and by
//! week, shares, options and product limits.
//!
//! A recipe with lines whose credit is unknown brings at least what is known.
//! So each figure has a lower bound, and an upper one only where no unknown
//! line could add to it; a requirement is met or missed when both bounds say
//! so, and unknown otherwise.
//!
//! | module | what it checks |
//! |---|---|
//! | `amounts` | daily and weekly minimums of components and subgroups |
//! | `offerings` | shares, largest amounts, options, kinds, days, meals of a day |
//! | `choices` | components of a snack, vegetables in place of fruits |
//! | `products` | added sugars of cereals, yogurt and flavored milk |

mod amounts;
mod choices;
mod offerings;
mod products;
mod setting;

use super::Verdict;
use crate::components::CreditDefinitions;
use crate::exact::rounding::telling_digits;
use crate::exact::{Bounds, Digits};
use crate::foods::FoodTable;
use crate::recipe::RecipeId;
use crate::rules::{Bound, Kind, MealPattern, MealPatterns, WeekRule, WeekRules};
use crate::week::{CreditedRecipe, Date, Service, Week, WeekError};
pub(crate) use amounts::{AmountRow, giving, rows as amount_rows};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};
pub(crate) use setting::Setting;

/// The tables against which a week is checked.
#[derive(Debug, Clone, Copy)]
pub struct PatternTables<'a> {
    /// The dataset, for added sugars and weights of products.
    pub foods: &'a FoodTable,
    /// Rounding and smallest amounts.
    pub definitions: &'a CreditDefinitions,
    /// Amounts.
    pub patterns: &'a MealPatterns,
    /// Shares, options and product limits.
    pub rules: &'a WeekRules,
}

/// Where a requirement stands.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct CitedLimit {
    /// What is asked, in words.
    pub words: String,
    /// Minimum or maximum.
    pub bound: Bound,
    /// The limit for this week, in `unit`.
    pub limit: Decimal,
    /// Unit of figure and limit.
    pub unit: String,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where it was read.
    pub source: String,
    /// How sure it is.
    pub status: String,
}

/// One requirement of the meal pattern compared with one week.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct PatternFinding {
    /// Whose meal.
    pub service: Service,
    /// The day; nothing for a requirement on the week.
    pub date: Option<Date>,
    /// The requirement.
    pub rule: CitedLimit,
    /// The figure that decides: for a minimum, of the smallest meal that a
    /// student can take.
    pub figure: Bounds,
    /// The same of the average meal planned, where it is an amount.
    pub average: Option<Bounds>,
    /// Decimal places that show on which side of the limit the figure lies.
    pub digits: Digits,
    /// Kept, broken or unknown.
    pub verdict: Verdict,
    /// What brings the figure, in the order of the week.
    pub carriers: Vec<PatternCarrier>,
}

/// A choice's part in a figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct PatternCarrier {
    /// On which day.
    pub date: Date,
    /// Which recipe.
    pub recipe: RecipeId,
    /// What one serving brings.
    pub amount: Bounds,
}

/// Checks one service of a week against the rules in force: on a day, those of
/// that day; on the week, those of its first day. `recipes` must be sorted by
/// name.
///
/// # Errors
/// When a choice names a recipe without credits, or a meal is planned for no
/// one.
pub fn check_pattern(
    tables: &PatternTables<'_>,
    week: &Week,
    service: &Service,
    recipes: &[CreditedRecipe<'_>],
) -> Result<Vec<PatternFinding>, WeekError> {
    let Some(setting) = Setting::new(tables, week, service, recipes)? else {
        return Ok(Vec::new());
    };
    let mut findings = amounts::check(&setting);
    for rule in tables.rules.in_force(service, setting.first_day()) {
        findings.extend(match rule.kind {
            Kind::ShareOfOfferings => offerings::share(&setting, rule).into_iter().collect(),
            Kind::LargestAmount => vec![offerings::largest(&setting, rule)],
            Kind::AddedSugars => products::added_sugars(&setting, rule).into_iter().collect(),
            Kind::VegetablesForFruits => choices::vegetables_for_fruits(&setting, rule)
                .into_iter()
                .collect(),
            Kind::Days => vec![offerings::days(&setting, rule)],
            _ => Vec::new(),
        });
    }
    for date in setting.days() {
        for rule in tables.rules.in_force(service, *date) {
            findings.extend(match rule.kind {
                Kind::Options => Some(offerings::options(&setting, rule, *date)),
                Kind::OnlyProductsMarked => Some(offerings::kinds(&setting, rule, *date)),
                Kind::MealsWith => Some(offerings::meals_with(&setting, rule, *date)),
                Kind::ComponentsMet => Some(choices::components_met(&setting, rule, *date)),
                _ => None,
            });
        }
    }
    Ok(findings)
}

impl Verdict {
    /// The verdict on a figure of which only the bounds are known.
    pub(super) fn of(figure: Bounds, bound: Bound, limit: Decimal) -> Self {
        let low = bound.holds(figure.low, limit);
        let high = figure.high.map(|high| bound.holds(high, limit));
        match (bound, low, high) {
            // More can only help a minimum, and only hurt a maximum.
            (Bound::AtLeast, true, _) => Self::Met,
            (Bound::AtLeast, false, Some(false)) => Self::Missed,
            (Bound::AtMost | Bound::Below, false, _) => Self::Missed,
            (Bound::AtMost | Bound::Below, true, Some(true)) => Self::Met,
            _ => Self::Unknown,
        }
    }
}

impl CitedLimit {
    fn of_pattern(row: &MealPattern, limit: Decimal) -> Self {
        Self {
            words: row.words.clone(),
            bound: row.bound,
            limit,
            unit: row.unit.clone(),
            paragraph: row.paragraph.clone(),
            source: row.source.clone(),
            status: row.status.clone(),
        }
    }

    /// `fallback` is the limit of a rule that needs none in the table.
    fn of_rule(rule: &WeekRule, fallback: (Bound, Decimal)) -> Self {
        Self {
            words: rule.words.clone(),
            bound: rule.bound.unwrap_or(fallback.0),
            limit: rule.limit.unwrap_or(fallback.1),
            unit: rule.unit.clone(),
            paragraph: rule.paragraph.clone(),
            source: rule.source.clone(),
            status: rule.status.clone(),
        }
    }
}

impl PatternFinding {
    fn new(setting: &Setting<'_>, date: Option<Date>, rule: CitedLimit, figure: Bounds) -> Self {
        // An amount in eighths or quarters prints as it is, a share in whole
        // percent or as many places as tell.
        let places = figure.low.normalize().scale().min(3);
        let fewest = if rule.unit == "%" { 0 } else { places };
        Self {
            service: setting.service().clone(),
            date,
            digits: telling_digits(figure.low, Digits(fewest), |figure| {
                rule.bound.holds(figure, rule.limit)
            }),
            verdict: Verdict::of(figure, rule.bound, rule.limit),
            rule,
            figure,
            average: None,
            carriers: Vec::new(),
        }
    }

    fn carried_by(mut self, carriers: Vec<PatternCarrier>) -> Self {
        self.carriers = carriers;
        self
    }

    fn averaging(mut self, average: Bounds) -> Self {
        self.average = Some(average);
        self
    }
}
