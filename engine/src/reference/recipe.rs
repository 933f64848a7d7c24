//! A recipe as a whole.

use super::Reference;
use super::prepare::{LineStudy, PrepareProblem};
use super::sub_recipe::{SubRecipeProblem, batches, named_recipe};
use crate::allergens::{AllergenFinding, LineAllergens, screen_line, screen_recipe};
use crate::analysis::{AnalysisError, RecipeAnalysis, analyse};
use crate::book::Shelf;
use crate::components::{CreditLine, RecipeCredits, credit_recipe};
use crate::foods::{FoodMatch, FoodMatcher};
use crate::recipe::{
    Doubt, ReadLine, Recipe, RecipeId, RecipeLine, Route, ServingSize, WeighedLine, read_lines,
};
use crate::units::{Grams, Servings};
use rust_decimal::Decimal;
use serde::Serialize;
use std::fmt;

/// All that is found out about a recipe. The lines are there whatever else is
/// wrong, so that they can be shown and mended.
#[derive(Debug, Clone, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeStudy {
    /// Each line with its steps.
    pub lines: Vec<LineStudy>,
    /// The foods that arithmetic takes, with the line that each comes from.
    pub parts: Vec<WeighedLine>,
    /// Weight of the finished batch: as measured, or the sum of its parts.
    pub batch_weight: Grams,
    /// Whether that was measured.
    pub batch_weight_measured: bool,
    /// Totals, or why there are none.
    pub analysis: Result<RecipeAnalysis, StudyProblem>,
    /// Credits toward meal components; nothing where there are no totals.
    pub credits: Option<RecipeCredits>,
    /// The nine allergens, each with the lines that point to it.
    pub allergens: Vec<RecipeAllergen>,
}

/// One allergen in the whole recipe.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct RecipeAllergen {
    /// What can be said of it.
    #[serde(flatten)]
    pub finding: AllergenFinding,
    /// Lines that point to it, by index.
    pub lines: Vec<usize>,
}

/// Why a recipe has no totals.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum StudyProblem {
    /// The number of servings is no positive number.
    NoServings {
        /// As entered, or as it follows from the size of a serving.
        servings: Servings,
    },
    /// The size of a serving or of its batch is zero or less, or the batch's
    /// weight is not known.
    NoServingSize,
    /// The measured weight of the batch is zero or less.
    NoBatchWeight,
}

impl fmt::Display for StudyProblem {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoServings { servings } => AnalysisError::NoServings(*servings).fmt(out),
            Self::NoServingSize => out.write_str(
                "the size of a serving does not tell the number of servings: enter a size above zero, and the size or weight of the whole batch",
            ),
            Self::NoBatchWeight => out.write_str(
                "the weight of the finished batch is zero or less: enter it in grams, or leave it empty",
            ),
        }
    }
}

impl std::error::Error for StudyProblem {}

impl FoodMatcher for Reference {
    /// The office's own foods and the dataset's, best first; of two that fit
    /// equally well the office's own.
    fn matches(&self, food_words: &str, preparation: &[String], limit: usize) -> Vec<FoodMatch> {
        let mut found = self.own_search.matches(food_words, preparation, limit);
        found.extend(self.search.matches(food_words, preparation, limit));
        found.sort_by_key(|food| std::cmp::Reverse(food.confidence));
        found.truncate(limit);
        found
    }
}

impl Reference {
    /// Studies one recipe; `book` gives the recipes that it may name.
    pub fn study_recipe(&self, book: &dyn Shelf, recipe: &Recipe) -> RecipeStudy {
        self.study_on_path(book, recipe, &mut Vec::new())
    }

    /// Studies several recipes of a book, in the order of the names; names
    /// that the book lacks are left out.
    pub fn study_recipes(
        &self,
        book: &dyn Shelf,
        names: &[RecipeId],
    ) -> Vec<(RecipeId, RecipeStudy)> {
        names
            .iter()
            .filter_map(|name| book.by_name(name))
            .map(|recipe| (recipe.id.clone(), self.study_recipe(book, recipe)))
            .collect()
    }

    /// Studies a recipe that differs from one that was studied in its line
    /// `at` alone, in place of which stand `lines` of `recipe`. The other lines
    /// are taken over as they were read.
    pub(crate) fn study_replaced(
        &self,
        book: &dyn Shelf,
        recipe: &Recipe,
        before: &RecipeStudy,
        at: usize,
        lines: usize,
    ) -> RecipeStudy {
        let moved = |index: usize| if index > at { index + lines - 1 } else { index };
        let mut studies: Vec<LineStudy> = before.lines.clone();
        let mut parts: Vec<WeighedLine> = before.parts.clone();
        parts.retain(|part| part.line != at);
        for part in &mut parts {
            part.line = moved(part.line);
        }
        let mut path = vec![recipe];
        let changed = at..at + lines;
        let read = read_lines(&self.foods, self, &recipe.lines[changed.clone()]);
        let mut found = Vec::new();
        for (index, mut read) in changed.zip(read) {
            read.line = index;
            let (study, more) = self.line(book, index, read, &recipe.lines[index], &mut path);
            found.push(study);
            parts.extend(more);
        }
        parts.sort_by_key(|part| part.line);
        studies.splice(at..=at, found);
        for (index, study) in studies.iter_mut().enumerate() {
            study.read.line = index;
        }
        self.sum_up(recipe, studies, parts)
    }

    /// `path` holds the recipes that led here, to find a recipe that needs
    /// itself.
    fn study_on_path<'a>(
        &self,
        book: &'a dyn Shelf,
        recipe: &'a Recipe,
        path: &mut Vec<&'a Recipe>,
    ) -> RecipeStudy {
        path.push(recipe);
        let mut lines = Vec::new();
        let mut parts = Vec::new();
        let read = read_lines(&self.foods, self, &recipe.lines);
        for (index, (read, line)) in read.into_iter().zip(&recipe.lines).enumerate() {
            let (study, found) = self.line(book, index, read, line, path);
            lines.push(study);
            parts.extend(found);
        }
        path.pop();
        self.sum_up(recipe, lines, parts)
    }

    /// Takes one line to the dish: as a food, or as the parts of the recipe
    /// that it names.
    fn line<'a>(
        &self,
        book: &'a dyn Shelf,
        index: usize,
        read: ReadLine,
        line: &RecipeLine,
        path: &mut Vec<&'a Recipe>,
    ) -> (LineStudy, Vec<WeighedLine>) {
        match named_recipe(book, line, &read.reading) {
            Some(named) => self.sub_recipe(book, index, read, line, named, path),
            None => {
                let (study, part) = self.prepare(index, read, &line.correction);
                (study, part.into_iter().collect())
            }
        }
    }

    fn sum_up(
        &self,
        recipe: &Recipe,
        lines: Vec<LineStudy>,
        parts: Vec<WeighedLine>,
    ) -> RecipeStudy {
        let sum: Grams = parts.iter().filter_map(|part| part.weight).sum();
        let batch_weight = recipe.finished_weight.unwrap_or(sum);
        let analysis = servings(recipe, batch_weight).and_then(|servings| {
            if recipe
                .finished_weight
                .is_some_and(|weight| weight <= Grams::ZERO)
            {
                return Err(StudyProblem::NoBatchWeight);
            }
            let analysis = analyse(&self.foods, &parts, servings).map_err(
                |AnalysisError::NoServings(servings)| StudyProblem::NoServings { servings },
            )?;
            Ok(match recipe.finished_weight {
                Some(weight) => analysis.with_finished_mass(weight),
                None => analysis,
            })
        });
        let credits = analysis
            .as_ref()
            .ok()
            .and_then(|analysis| self.credits(recipe, &lines, &parts, analysis.servings));
        RecipeStudy {
            allergens: self.allergens(recipe, &lines, &parts),
            batch_weight,
            batch_weight_measured: recipe.finished_weight.is_some(),
            lines,
            parts,
            analysis,
            credits,
        }
    }

    /// A line that names a recipe becomes the parts of that recipe, each in
    /// the share that the line asks for.
    fn sub_recipe<'a>(
        &self,
        book: &'a dyn Shelf,
        index: usize,
        mut read: ReadLine,
        line: &RecipeLine,
        named: Result<&'a Recipe, SubRecipeProblem>,
        path: &mut Vec<&'a Recipe>,
    ) -> (LineStudy, Vec<WeighedLine>) {
        let found = named.and_then(|recipe| {
            let parts = self.parts_of(book, recipe, &read, line, path)?;
            Ok((recipe.id.clone(), parts))
        });
        // No food is meant, so there is no doubt which.
        read.doubts.retain(Doubt::is_about_the_words);
        let mut study = LineStudy {
            recipe: None,
            edible: None,
            cooked: None,
            retained: Vec::new(),
            can_be_cooked: Vec::new(),
            treatments: Vec::new(),
            problem: None,
            read,
        };
        match found {
            Ok((recipe, parts)) => {
                study.recipe = Some(recipe);
                let parts = parts.into_iter().map(|part| WeighedLine {
                    line: index,
                    ..part
                });
                (study, parts.collect())
            }
            Err(problem) => {
                study.problem = Some(PrepareProblem::SubRecipe(problem));
                (study, vec![WeighedLine::new(index, None, None)])
            }
        }
    }

    fn parts_of<'a>(
        &self,
        book: &'a dyn Shelf,
        recipe: &'a Recipe,
        read: &ReadLine,
        line: &RecipeLine,
        path: &mut Vec<&'a Recipe>,
    ) -> Result<Vec<WeighedLine>, SubRecipeProblem> {
        if let Some(start) = path.iter().position(|on_path| on_path.id == recipe.id) {
            let titles = path[start..].iter().map(|recipe| recipe.title.clone());
            return Err(SubRecipeProblem::Cycle {
                path: titles.chain([recipe.title.clone()]).collect(),
            });
        }
        let title = || recipe.title.clone();
        let study = self.study_on_path(book, recipe, path);
        // A cycle further down is reported here with its whole path.
        for line in &study.lines {
            if let Some(PrepareProblem::SubRecipe(problem)) = &line.problem {
                return Err(problem.clone());
            }
        }
        let analysis = study
            .analysis
            .as_ref()
            .map_err(|_| SubRecipeProblem::NotAnalysed { title: title() })?;
        let batches = batches(line, &read.reading, analysis.servings, study.batch_weight)
            .ok_or_else(|| SubRecipeProblem::AmountUnclear { title: title() })?;
        Ok(study
            .parts
            .iter()
            .map(|part| part.scaled(batches))
            .collect())
    }

    fn credits(
        &self,
        recipe: &Recipe,
        lines: &[LineStudy],
        parts: &[WeighedLine],
        servings: Servings,
    ) -> Option<RecipeCredits> {
        // What a person states for a line stands for all of its parts.
        let mut spoken_for = None;
        let mut credit_lines = Vec::new();
        for part in parts {
            let stated = &recipe.lines[part.line].correction.credits;
            if spoken_for == Some(part.line) {
                continue;
            }
            if !stated.is_empty() {
                spoken_for = Some(part.line);
            }
            credit_lines.push(CreditLine {
                line: part.line,
                food: part.food,
                weight: part.weight,
                measure: lines[part.line].measure_of(part),
                cooked_yield: None,
                stated: stated.clone(),
            });
        }
        let rules = &self.credit_rules;
        credit_recipe(&self.foods, rules, &credit_lines, servings, recipe.beans).ok()
    }

    fn allergens(
        &self,
        recipe: &Recipe,
        lines: &[LineStudy],
        parts: &[WeighedLine],
    ) -> Vec<RecipeAllergen> {
        let screened: Vec<(usize, LineAllergens)> = parts
            .iter()
            .map(|part| {
                let food = part.food.and_then(|food| self.foods.food(food));
                let text = match &lines[part.line].recipe {
                    // The words of the sub-recipe's title are no evidence.
                    Some(_) => "",
                    None => recipe.lines[part.line].text.as_str(),
                };
                (part.line, screen_line(&self.allergen_terms, text, food))
            })
            .collect();
        let findings: Vec<LineAllergens> = screened.iter().map(|(_, line)| line.clone()).collect();
        screen_recipe(&findings)
            .into_iter()
            .map(|(finding, carriers)| {
                let mut lines: Vec<usize> =
                    carriers.into_iter().map(|part| screened[part].0).collect();
                lines.dedup();
                RecipeAllergen { finding, lines }
            })
            .collect()
    }
}

impl LineStudy {
    /// Number of the measure by which the line was weighed, if it is a measure
    /// of the food that `part` has in the dish.
    fn measure_of(&self, part: &WeighedLine) -> Option<u16> {
        match &self.read.weight.as_ref().ok()?.route {
            Route::Measure { measure } if part.food == self.read.food => Some(measure.number),
            _ => None,
        }
    }
}

/// The number of servings, as entered or by the size of one.
fn servings(recipe: &Recipe, batch_weight: Grams) -> Result<Servings, StudyProblem> {
    let (serving, batch) = match recipe.serving_size {
        None => return Ok(recipe.servings),
        Some(ServingSize::Weight { serving }) => (serving.grams(), batch_weight.grams()),
        Some(ServingSize::Volume { serving, batch }) => {
            (serving.millilitres(), batch.millilitres())
        }
        Some(ServingSize::Count { serving, batch }) => (serving, batch),
    };
    if serving <= Decimal::ZERO || batch <= Decimal::ZERO {
        return Err(StudyProblem::NoServingSize);
    }
    Ok(Servings::new(batch / serving))
}
