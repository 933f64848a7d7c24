//! How a week stands, as scripts get it.

use engine::findings::{Finding, PatternFinding, Verdict};
use engine::foods::NutrientId;
use engine::reference::{ServiceStudy, WeekStudy};
use engine::rules::{Basis, Bound};
use engine::week::{Date, GradeGroup, MealKind};
use rust_decimal::Decimal;
use serde::Serialize;

/// A requirement on the average meal.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct FindingForm {
    what: String,
    nutrient: NutrientId,
    basis: Basis,
    bound: Bound,
    limit: Decimal,
    unit: String,
    figure: Option<Decimal>,
    decimals: u32,
    complete: bool,
    coverage: Decimal,
    verdict: Verdict,
    paragraph: String,
    status: String,
}

/// One meal kind for one grade group over the week.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ServiceForm {
    meal: MealKind,
    group: GradeGroup,
    days: Vec<Date>,
    planned_meals: Decimal,
    findings: Vec<FindingForm>,
    pattern: Vec<PatternFinding>,
}

/// All services of a week.
#[derive(Debug, Clone, Serialize)]
pub struct WeekForm {
    services: Vec<ServiceForm>,
}

impl From<&WeekStudy> for WeekForm {
    fn from(study: &WeekStudy) -> Self {
        Self {
            services: study.services.iter().map(ServiceForm::from).collect(),
        }
    }
}

impl From<&ServiceStudy> for ServiceForm {
    fn from(study: &ServiceStudy) -> Self {
        let average = &study.average;
        Self {
            meal: average.service.kind,
            group: average.service.group.clone(),
            days: average.days.clone(),
            planned_meals: average.planned_meals.servings().normalize(),
            findings: study
                .findings
                .iter()
                .map(|sure| FindingForm::from(&sure.finding))
                .collect(),
            pattern: study.pattern.clone(),
        }
    }
}

impl From<&Finding> for FindingForm {
    fn from(finding: &Finding) -> Self {
        let rule = &finding.rule;
        // Nothing is known: then there is no figure either.
        let is_known = finding.complete || !finding.coverage.is_zero();
        Self {
            what: rule.words.clone(),
            nutrient: rule.nutrient,
            basis: rule.basis,
            bound: rule.bound,
            limit: rule.limit.normalize(),
            unit: rule.unit.clone(),
            figure: finding
                .figure
                .filter(|_| is_known)
                .map(|figure| figure.normalize()),
            decimals: finding.digits.0,
            complete: finding.complete,
            coverage: finding.coverage.normalize(),
            verdict: finding.verdict,
            paragraph: rule.paragraph.clone(),
            status: rule.status.clone(),
        }
    }
}
