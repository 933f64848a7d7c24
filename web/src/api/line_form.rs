//! The reading of a line, as scripts get it.

use super::forms::{FoodForm, ProblemForm};
use engine::foods::{FoodId, FoodTable};
use engine::recipe::{Doubt, LineKind, ReadLine, RecipeId, Step, WeighedLine};
use engine::reference::LineStudy;
use rust_decimal::Decimal;
use serde::Serialize;

/// A line as it was read.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct LineForm {
    text: String,
    kind: LineKind,
    food_words: String,
    preparation: Vec<String>,
    food: Option<FoodId>,
    description: Option<String>,
    recipe: Option<RecipeId>,
    matches: Vec<FoodForm>,
    grams: Option<Decimal>,
    least_grams: Option<Decimal>,
    most_grams: Option<Decimal>,
    steps: Vec<Step>,
    doubts: Vec<Doubt>,
    problem: Option<ProblemForm>,
}

impl LineForm {
    /// A line with the weight that it states.
    pub fn of_reading(foods: &FoodTable, read: &ReadLine) -> Self {
        let weighed = read.weight.as_ref().ok();
        let problem = match (&read.weight, read.reading.kind) {
            (Err(problem), LineKind::Ingredient) => Some(ProblemForm {
                message: problem.to_string(),
                remedy: problem.remedy().to_owned(),
            }),
            _ => None,
        };
        Self {
            text: read.text.clone(),
            kind: read.reading.kind,
            food_words: read.reading.food_words.clone(),
            preparation: read.reading.preparation.clone(),
            food: read.food,
            description: read
                .food
                .and_then(|food| foods.food(food))
                .map(|food| food.description.clone()),
            recipe: None,
            matches: read
                .matches
                .iter()
                .filter_map(|found| FoodForm::new(foods, found.food, found.confidence))
                .collect(),
            grams: weighed.map(|weighed| weighed.grams.grams().normalize()),
            least_grams: weighed.map(|weighed| weighed.low.grams().normalize()),
            most_grams: weighed.map(|weighed| weighed.high.grams().normalize()),
            steps: weighed
                .map(|weighed| weighed.steps.clone())
                .unwrap_or_default(),
            doubts: read.doubts.clone(),
            problem,
        }
    }

    /// A line with its weight in the dish.
    pub fn of_study(foods: &FoodTable, study: &LineStudy, parts: &[&WeighedLine]) -> Self {
        let sum = |of: &dyn Fn(&WeighedLine) -> Option<Decimal>| -> Option<Decimal> {
            let weights: Option<Vec<Decimal>> = parts.iter().map(|part| of(part)).collect();
            let weights = weights.filter(|weights| !weights.is_empty())?;
            Some(weights.into_iter().sum::<Decimal>().normalize())
        };
        let problem = study.problem.as_ref().map(|problem| ProblemForm {
            message: problem.to_string(),
            remedy: "correct the line, or set its weight".to_owned(),
        });
        let read = Self::of_reading(foods, &study.read);
        Self {
            recipe: study.recipe.clone(),
            grams: sum(&|part| part.weight.map(|weight| weight.grams())),
            least_grams: sum(&|part| part.bounds.map(|(low, _)| low.grams())),
            most_grams: sum(&|part| part.bounds.map(|(_, high)| high.grams())),
            problem: match (problem, &study.recipe) {
                (Some(problem), _) => Some(problem),
                // What the words lack does not matter where a recipe is meant.
                (None, Some(_)) => None,
                (None, None) => read.problem,
            },
            ..read
        }
    }
}
