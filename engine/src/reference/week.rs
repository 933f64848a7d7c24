//! A week as a whole: averages, findings and how sure they are.

use super::{RecipeStudy, Reference};
use crate::analysis::RecipeAnalysis;
use crate::book::Shelf;
use crate::findings::{Finding, PatternFinding, PatternTables, check, check_pattern};
use crate::foods::NutrientId;
use crate::recipe::RecipeId;
use crate::rules::Basis;
use crate::uncertainty::{
    Composition, Evidence, Likelihood, Uncertainty, likelihood, of_amount, of_share_of_energy,
};
use crate::week::{CreditedRecipe, MealAverage, ServedRecipe, Service, Week, WeekError, average};
use serde::Serialize;
use std::borrow::Borrow;

/// All services of a week.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct WeekStudy {
    /// One study per meal kind and grade group.
    pub services: Vec<ServiceStudy>,
}

/// One service over the week.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct ServiceStudy {
    /// Averages of every nutrient.
    pub average: MealAverage,
    /// Requirements on the average meal.
    pub findings: Vec<SureFinding>,
    /// Requirements on what the meals offer.
    pub pattern: Vec<PatternFinding>,
}

/// A finding with what is known of its uncertainty.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct SureFinding {
    /// The comparison with the limit.
    pub finding: Finding,
    /// Standard uncertainty of the figure; nothing until the dataset's
    /// standard errors are loaded.
    pub uncertainty: Option<Uncertainty>,
    /// How likely the limit is kept; nothing where the figure is incomplete.
    pub likelihood: Option<Likelihood>,
}

/// The analyses of a book's recipes, sorted by name as averages want them.
/// Recipes that cannot be analysed are left out.
pub(super) fn served<S: Borrow<RecipeStudy>>(studies: &[(RecipeId, S)]) -> Vec<ServedRecipe<'_>> {
    let mut served: Vec<ServedRecipe<'_>> = studies
        .iter()
        .filter_map(|(id, study)| Some((id, study.borrow().analysis.as_ref().ok()?)))
        .collect();
    served.sort_by_key(|(id, _)| *id);
    served
}

/// The credits of a book's recipes, sorted by name.
fn credited<S: Borrow<RecipeStudy>>(studies: &[(RecipeId, S)]) -> Vec<CreditedRecipe<'_>> {
    let mut credited: Vec<CreditedRecipe<'_>> = studies
        .iter()
        .filter_map(|(id, study)| Some((id, study.borrow().credits.as_ref()?)))
        .collect();
    credited.sort_by_key(|(id, _)| *id);
    credited
}

impl Reference {
    /// Studies a week with the recipes of its book.
    ///
    /// # Errors
    /// When a choice names a recipe that is missing or cannot be analysed, or
    /// planned numbers make no sense.
    pub fn study_week(&self, book: &dyn Shelf, week: &Week) -> Result<WeekStudy, WeekError> {
        let studies = self.study_recipes(book, &week.recipes());
        self.study_week_with(week, &studies)
    }

    /// Studies a week with studies that were made before, so that a change of
    /// one recipe does not cost all of them.
    ///
    /// # Errors
    /// As [`Self::study_week`].
    pub fn study_week_with<S: Borrow<RecipeStudy>>(
        &self,
        week: &Week,
        studies: &[(RecipeId, S)],
    ) -> Result<WeekStudy, WeekError> {
        let served = served(studies);
        let credited = credited(studies);
        let tables = PatternTables {
            foods: &self.foods,
            definitions: &self.credit_rules.definitions,
            patterns: &self.meal_patterns,
            rules: &self.week_rules,
        };
        let nutrients: Vec<NutrientId> = self.foods.nutrients().iter().map(|n| n.id).collect();
        let services = week
            .services()
            .iter()
            .map(|service| {
                let average = average(week, service, &served, &nutrients)?.with_fluid_milk(
                    &self.foods,
                    &self.credit_rules.definitions,
                    week,
                    &credited,
                    &self.specifications.leaving_out_milk(),
                );
                let composition = composition(week, service, &average, studies);
                let findings = check(&average, &self.specifications)
                    .into_iter()
                    .map(|finding| self.sure(finding, &composition))
                    .collect();
                let pattern = check_pattern(&tables, week, service, &credited)?;
                Ok(ServiceStudy {
                    average,
                    findings,
                    pattern,
                })
            })
            .collect::<Result<_, WeekError>>()?;
        Ok(WeekStudy { services })
    }

    fn sure(&self, finding: Finding, composition: &Composition) -> SureFinding {
        let uncertainty = self
            .evidence
            .as_ref()
            .and_then(|evidence| self.uncertainty_of(&finding, evidence, composition));
        let likelihood = uncertainty
            .zip(finding.figure)
            .filter(|_| finding.complete)
            .map(|(uncertainty, figure)| {
                likelihood(figure, finding.rule.limit, finding.rule.bound, &uncertainty)
            });
        SureFinding {
            finding,
            uncertainty,
            likelihood,
        }
    }

    fn uncertainty_of(
        &self,
        finding: &Finding,
        evidence: &Evidence,
        composition: &Composition,
    ) -> Option<Uncertainty> {
        let (foods, rule) = (&self.foods, &finding.rule);
        if rule.leaves_out.is_some() {
            // The composition does not tell fluid milk from milk in dishes.
            return None;
        }
        match rule.basis {
            Basis::PerMeal => Some(of_amount(foods, evidence, composition, rule.nutrient)),
            Basis::ShareOfEnergy => of_share_of_energy(
                foods,
                evidence,
                composition,
                rule.nutrient,
                rule.kcal_per_gram?,
            ),
        }
    }
}

/// What the average meal of a service is made of. A recipe that is served on
/// several days comes in once, with all its servings, for its amounts are
/// uncertain once.
fn composition<S: Borrow<RecipeStudy>>(
    week: &Week,
    service: &Service,
    average: &MealAverage,
    studies: &[(RecipeId, S)],
) -> Composition {
    let meals = average.planned_meals.servings();
    let mut all = Composition::default();
    for (id, study) in studies {
        let study = study.borrow();
        let Ok(RecipeAnalysis { servings, .. }) = &study.analysis else {
            continue;
        };
        let planned = week
            .meals_of(service)
            .flat_map(|(_, meal)| meal.choices())
            .filter(|choice| choice.recipe == *id)
            .map(|choice| choice.planned)
            .sum::<crate::units::Servings>();
        if planned.servings().is_zero() || meals.is_zero() {
            continue;
        }
        let share = planned.servings() / servings.servings() / meals;
        all.merge(&Composition::of_lines(&study.parts).scaled(share));
    }
    all
}
