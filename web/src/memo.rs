//! What was found out, kept for as long as it holds: after a change only what
//! the change touches is studied again.

use crate::shelf::{IndexedShelf, Touched};
use crate::tables::{Studied, StudiedRecipe, StudiedWeek};
use engine::book::plain_title;
use engine::recipe::{Recipe, RecipeId};
use engine::reference::{PrepareProblem, Reference};
use engine::week::{Week, WeekId};
use std::collections::{BTreeMap, BTreeSet};
use std::rc::Rc;

/// What was found out about the recipes and weeks of a book.
#[derive(Debug, Default)]
pub struct Memo {
    shelf: IndexedShelf,
    of_recipes: BTreeMap<RecipeId, Known>,
    of_kept: BTreeMap<RecipeId, Known>,
    of_weeks: BTreeMap<WeekId, KnownWeek>,
}

/// A study of a recipe and what else it rests on.
#[derive(Debug, Clone)]
struct Known {
    of: Rc<Recipe>,
    study: StudiedRecipe,
    /// Recipes that its lines name.
    named: Vec<RecipeId>,
    /// A line means a recipe and cannot have it: any change may mend that.
    open: bool,
    /// The food words of its lines, any of which may become a recipe's title.
    words: Vec<String>,
}

/// A study of a week and what it rests on.
#[derive(Debug)]
struct KnownWeek {
    of: Rc<Week>,
    recipes: Vec<(RecipeId, StudiedRecipe)>,
    study: StudiedWeek,
}

impl Known {
    fn new(of: &Rc<Recipe>, study: StudiedRecipe) -> Self {
        let lines = || study.lines.iter();
        let means_a_recipe =
            |problem: &PrepareProblem| matches!(problem, PrepareProblem::SubRecipe(_));
        Self {
            of: Rc::clone(of),
            named: lines().filter_map(|line| line.recipe.clone()).collect(),
            open: lines().any(|line| line.problem.as_ref().is_some_and(means_a_recipe)),
            words: lines()
                .map(|line| plain_title(&line.read.reading.food_words))
                .filter(|words| !words.is_empty())
                .collect(),
            study,
        }
    }

    fn rests_on(&self, touched: &Touched) -> bool {
        self.open
            || self.named.iter().any(|name| touched.names.contains(name))
            || (!touched.titles.is_empty()
                && self
                    .words
                    .iter()
                    .any(|words| touched.titles.contains(words)))
    }
}

impl Memo {
    /// Forgets what no longer holds for these recipes of the book.
    pub fn follow(&mut self, recipes: &Rc<Vec<Rc<Recipe>>>) {
        let mut touched = self.shelf.follow(recipes);
        for name in &touched.names {
            if self.shelf.shared(name).is_none() {
                self.of_recipes.remove(name);
                self.of_kept.remove(name);
            }
        }
        // A recipe that is studied anew touches those that name it in turn.
        while !touched.names.is_empty() {
            let mut forgotten = BTreeSet::new();
            for known in [&mut self.of_recipes, &mut self.of_kept] {
                known.retain(|name, known| {
                    let holds = !known.rests_on(&touched);
                    if !holds {
                        forgotten.insert(name.clone());
                    }
                    holds
                });
            }
            touched = Touched {
                names: forgotten,
                ..Touched::default()
            };
        }
    }

    /// The same without what was found out about weeks.
    pub fn without_weeks(self) -> Self {
        Self {
            of_weeks: BTreeMap::new(),
            ..self
        }
    }

    /// A study of a recipe of the book.
    pub fn study(&mut self, reference: &Reference, recipe: &Rc<Recipe>) -> StudiedRecipe {
        study_in(&self.shelf, &mut self.of_recipes, reference, recipe)
    }

    /// A study of the kept form of a recipe of the book.
    pub fn study_kept(&mut self, reference: &Reference, kept: &Rc<Recipe>) -> StudiedRecipe {
        study_in(&self.shelf, &mut self.of_kept, reference, kept)
    }

    /// A study of another form of a recipe of the book. It is not kept.
    pub fn study_form(&self, reference: &Reference, form: &Recipe) -> StudiedRecipe {
        Studied::new(reference.study_recipe(&self.shelf, form))
    }

    /// A study of a week, made anew only where the week or the study of one of
    /// its recipes is another.
    pub fn study_week(&mut self, reference: &Reference, week: &Rc<Week>) -> StudiedWeek {
        let recipes = self.recipes_of(reference, week);
        if let Some(known) = self.of_weeks.get(&week.id)
            && known.of == *week
            && known.recipes == recipes
        {
            return known.study.clone();
        }
        let study = Studied::new(reference.study_week_with(week, &recipes));
        let known = KnownWeek {
            of: Rc::clone(week),
            recipes,
            study: study.clone(),
        };
        self.of_weeks.insert(week.id.clone(), known);
        study
    }

    /// These recipes of the book and all that they are made with, each once,
    /// with what is found out about it.
    pub fn with_parts(
        &mut self,
        reference: &Reference,
        recipes: impl IntoIterator<Item = RecipeId>,
    ) -> Vec<(Rc<Recipe>, StudiedRecipe)> {
        let mut wanted: Vec<RecipeId> = recipes.into_iter().collect();
        let mut seen = BTreeSet::new();
        let mut found = Vec::new();
        while let Some(name) = wanted.pop() {
            let recipe = self.shelf.shared(&name).cloned();
            let Some(recipe) = recipe.filter(|_| seen.insert(name)) else {
                continue;
            };
            let study = self.study(reference, &recipe);
            wanted.extend(study.lines.iter().filter_map(|line| line.recipe.clone()));
            found.push((recipe, study));
        }
        found
    }

    /// The studies of a week's recipes, sorted by name.
    pub fn recipes_of(
        &mut self,
        reference: &Reference,
        week: &Week,
    ) -> Vec<(RecipeId, StudiedRecipe)> {
        let names = week.recipes().into_iter();
        names
            .filter_map(|name| {
                let recipe = Rc::clone(self.shelf.shared(&name)?);
                let study = self.study(reference, &recipe);
                Some((name, study))
            })
            .collect()
    }
}

fn study_in(
    shelf: &IndexedShelf,
    known: &mut BTreeMap<RecipeId, Known>,
    reference: &Reference,
    recipe: &Rc<Recipe>,
) -> StudiedRecipe {
    if let Some(known) = known.get(&recipe.id)
        && known.of == *recipe
    {
        return known.study.clone();
    }
    let study = Studied::new(reference.study_recipe(shelf, recipe));
    known.insert(recipe.id.clone(), Known::new(recipe, study.clone()));
    study
}
