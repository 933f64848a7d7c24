//! The desk: the book, what was there before, and the one function that
//! changes it.

use super::action::{Action, RecipeEdit};
use super::contents::{Contents, Saved};
use super::history::History;
use super::lines::Aside;
use super::stroke::{Stroke, stroke_of};
use super::{kitchen_edit, office_edit, recipe_edit, version_edit, week_edit};
use engine::mend::WeekChange;
use engine::recipe::{Recipe, RecipeId};
use engine::week::{Day, Week, WeekId};
use std::rc::Rc;

/// The book and its history.
#[derive(Debug, Clone, PartialEq)]
pub struct Desk {
    /// The book as it stands.
    pub contents: Contents,
    history: History,
    /// What the last change was typed into, and the book before that: typing
    /// on there is the same step.
    stroke: Option<(Stroke, Contents)>,
    aside: Vec<Aside>,
}

impl Desk {
    /// A desk with a book on it and no history.
    pub fn new(saved: Saved) -> Self {
        Self::with_history(saved, History::default())
    }

    /// A desk with a book on it, and the steps around it.
    pub fn with_history(saved: Saved, history: History) -> Self {
        Self {
            contents: saved.into(),
            history,
            stroke: None,
            aside: Vec::new(),
        }
    }

    /// The steps that can be taken back, and those that can be done again.
    pub fn history(&self) -> &History {
        &self.history
    }

    /// Whether there is a step to take back.
    pub fn can_undo(&self) -> bool {
        self.history.can_go_back()
    }

    /// Whether there is a step to do again.
    pub fn can_redo(&self) -> bool {
        self.history.can_go_on()
    }

    /// The desk after one action.
    pub fn reduce(&self, action: Action) -> Self {
        let mut next = self.clone();
        match action {
            Action::Undo => {
                let before = next.history.back(&self.contents);
                next.show(before);
            }
            Action::Redo => {
                let after = next.history.on(&self.contents);
                next.show(after);
            }
            action => {
                let stroke = stroke_of(&self.contents, &action);
                next.apply(action);
                if next.contents == self.contents {
                    return self.clone();
                }
                next.note(&self.contents, stroke);
            }
        }
        next
    }

    /// Shows another state of the book, if there is one.
    fn show(&mut self, state: Option<Contents>) {
        if let Some(state) = state {
            self.contents = state;
        }
        self.stroke = None;
    }

    /// Notes the change from `before`; it belongs to the last step where one
    /// types on.
    fn note(&mut self, before: &Contents, stroke: Option<Stroke>) {
        let begun = self.stroke.take();
        let typed_on = begun.filter(|(place, _)| Some(place) == stroke.as_ref());
        let from = match typed_on {
            Some((_, from)) => {
                self.history.note_further(&from, &self.contents);
                from
            }
            None => {
                self.history.note(before, &self.contents);
                before.clone()
            }
        };
        self.stroke = stroke.map(|stroke| (stroke, from));
    }

    fn apply(&mut self, action: Action) {
        let contents = &mut self.contents;
        match action {
            Action::Undo | Action::Redo => {}
            Action::Open(saved) => *contents = saved.into(),
            Action::Office(office) => Rc::make_mut(&mut contents.rest).office = office,
            Action::Switch(switch, on) => {
                Rc::make_mut(&mut contents.rest).switches.set(&switch, on);
            }
            Action::AddRecipe(recipe) => contents.add_recipe(recipe),
            Action::BringIn(recipes) => contents.bring_in(recipes),
            Action::RemoveRecipe(id) => {
                Rc::make_mut(&mut contents.recipes).retain(|recipe| recipe.id != id);
                contents.kept.retain(|recipe| recipe.id != id);
                contents.versions.retain(|version| version.recipe.id != id);
                if contents.rest.labels.iter().any(|label| label.recipe == id) {
                    let labels = &mut Rc::make_mut(&mut contents.rest).labels;
                    labels.retain(|label| label.recipe != id);
                }
            }
            Action::Label(label) => {
                office_edit::set_label(&mut Rc::make_mut(&mut contents.rest).labels, label);
            }
            Action::Version(id, edit) => version_edit::apply(contents, &id, edit),
            Action::Recipe(id, edit) => self.edit_recipe(&id, edit),
            Action::Keep(id) => contents.kept.retain(|recipe| recipe.id != id),
            Action::GoBack(id) => contents.go_back(&id),
            Action::AddWeek { title, dates } => contents.add_week(title, dates),
            Action::AddWeeks(weeks) => contents.add_weeks(weeks),
            Action::RemoveWeek(id) => contents.weeks.retain(|week| week.id != id),
            Action::Week(id, edit) => {
                if let Some(week) = contents.weeks.iter_mut().find(|week| week.id == id) {
                    week_edit::apply(Rc::make_mut(week), edit);
                }
            }
            Action::Mend(week, change) => contents.mend(&week, &change),
            Action::AddFoods(foods) => contents.add_foods(foods),
            Action::RemoveFood(number) => {
                let rest = Rc::make_mut(&mut contents.rest);
                rest.own_foods.retain(|food| food.number != number);
            }
            Action::Food(number, edit) => {
                let foods = &mut Rc::make_mut(&mut contents.rest).own_foods;
                if let Some(food) = foods.iter_mut().find(|food| food.number == number) {
                    office_edit::edit_food(food, edit);
                }
            }
            Action::OwnRules(table, text) => {
                office_edit::set_table(Rc::make_mut(&mut contents.rest), table, text);
            }
            Action::Production(edit) => {
                let rest = Rc::make_mut(&mut contents.rest);
                kitchen_edit::production(&mut rest.production, edit);
            }
            Action::Calendar(edit) => {
                let rest = Rc::make_mut(&mut contents.rest);
                kitchen_edit::calendar(&mut rest.calendar, edit);
            }
        }
    }

    fn edit_recipe(&mut self, id: &RecipeId, edit: RecipeEdit) {
        let Some(at) = self.contents.recipes.iter().position(|r| r.id == *id) else {
            return;
        };
        let place = &mut Rc::make_mut(&mut self.contents.recipes)[at];
        let before = Rc::clone(place);
        recipe_edit::apply(Rc::make_mut(place), edit, &mut self.aside);
        let after = Rc::clone(place);
        self.contents.compare_with_kept(&before, &after);
    }
}

impl Contents {
    fn add_recipe(&mut self, mut recipe: Recipe) {
        recipe.id = self.free_recipe_id(&recipe.title);
        // What is added has not been kept yet: it is compared with how it came.
        self.kept.push(Rc::new(recipe.clone()));
        Rc::make_mut(&mut self.recipes).push(Rc::new(recipe));
    }

    fn add_week(&mut self, title: String, dates: Vec<engine::week::Date>) {
        let id = self.free_week_id(&title);
        let days = dates
            .into_iter()
            .map(|date| Day {
                date,
                meals: Vec::new(),
            })
            .collect();
        self.weeks.push(Rc::new(Week { id, title, days }));
    }

    fn add_weeks(&mut self, weeks: Vec<Week>) {
        for week in weeks {
            let id = self.free_week_id(&week.title);
            self.weeks.push(Rc::new(Week { id, ..week }));
        }
    }

    /// Makes a change of a plan; one that no longer fits does nothing.
    fn mend(&mut self, week: &WeekId, change: &WeekChange) {
        if let Some(id) = change.recipe() {
            let recipes = Rc::make_mut(&mut self.recipes);
            let place = recipes.iter_mut().find(|recipe| recipe.id == *id);
            let Some((place, changed)) = place.and_then(|place| {
                let changed = change.in_recipe(place)?;
                Some((place, changed))
            }) else {
                return;
            };
            let before = std::mem::replace(place, Rc::new(changed));
            let after = Rc::clone(place);
            self.compare_with_kept(&before, &after);
        } else if let Some(planned) = self.weeks.iter_mut().find(|planned| planned.id == *week)
            && let Some(changed) = change.in_week(planned)
        {
            *planned = Rc::new(changed);
        }
    }

    fn go_back(&mut self, id: &RecipeId) {
        let Some(kept) = self.kept(id).cloned() else {
            return;
        };
        if let Some(at) = self.recipes.iter().position(|recipe| recipe.id == *id) {
            Rc::make_mut(&mut self.recipes)[at] = kept;
        }
        self.kept.retain(|recipe| recipe.id != *id);
    }

    /// Puts another form of a recipe in its place.
    pub(super) fn put_in_place(&mut self, form: Rc<Recipe>) {
        if let Some(at) = self.recipes.iter().position(|recipe| recipe.id == form.id) {
            let place = &mut Rc::make_mut(&mut self.recipes)[at];
            let before = std::mem::replace(place, Rc::clone(&form));
            self.compare_with_kept(&before, &form);
        }
    }

    /// Remembers the kept form of a recipe at its first change, and forgets it
    /// when the recipe is again what it was.
    fn compare_with_kept(&mut self, before: &Rc<Recipe>, after: &Rc<Recipe>) {
        match self.kept(&after.id) {
            None if before != after => self.kept.push(Rc::clone(before)),
            Some(kept) if kept == after => {
                let id = after.id.clone();
                self.kept.retain(|recipe| recipe.id != id);
            }
            _ => {}
        }
    }
}
