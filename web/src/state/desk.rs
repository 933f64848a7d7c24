//! The desk: the book, what was there before, and the one function that
//! changes it.

use super::action::{Action, FoodEdit, OwnTable, RecipeEdit, WeekEdit};
use super::contents::{Contents, Saved};
use super::lines::Aside;
use super::names::unique_name;
use super::{office_edit, recipe_edit, week_edit};
use engine::recipe::{Recipe, RecipeId};
use engine::week::{Day, Week, WeekId};
use std::rc::Rc;

/// How many steps can be taken back.
const MOST_STEPS: usize = 200;

/// The book and its history.
#[derive(Debug, Clone, PartialEq)]
pub struct Desk {
    /// The book as it stands.
    pub contents: Contents,
    past: Vec<Contents>,
    future: Vec<Contents>,
    /// What the last change was typed into; typing on there is the same step.
    stroke: Option<Stroke>,
    aside: Vec<Aside>,
}

/// A place into which one types letter by letter.
#[derive(Debug, Clone, PartialEq, Eq)]
enum Stroke {
    Office,
    Field(RecipeId, &'static str),
    Line {
        recipe: RecipeId,
        line: usize,
        lines: usize,
    },
    WeekField(WeekId, String),
    FoodField(u32, String),
    Table(OwnTable),
}

impl Desk {
    /// A desk with a book on it and no history.
    pub fn new(saved: Saved) -> Self {
        Self {
            contents: saved.into(),
            past: Vec::new(),
            future: Vec::new(),
            stroke: None,
            aside: Vec::new(),
        }
    }

    /// Whether there is a step to take back.
    pub fn can_undo(&self) -> bool {
        !self.past.is_empty()
    }

    /// Whether there is a step to do again.
    pub fn can_redo(&self) -> bool {
        !self.future.is_empty()
    }

    /// The desk after one action.
    pub fn reduce(&self, action: Action) -> Self {
        let mut next = self.clone();
        match action {
            Action::Undo => next.step_back(),
            Action::Redo => next.step_forward(),
            action => {
                let stroke = self.stroke_of(&action);
                next.apply(action);
                if next.contents == self.contents {
                    return self.clone();
                }
                let typing_on = stroke.is_some() && stroke == self.stroke;
                if !typing_on {
                    next.past.push(self.contents.clone());
                    if next.past.len() > MOST_STEPS {
                        next.past.remove(0);
                    }
                }
                next.future.clear();
                next.stroke = stroke;
            }
        }
        next
    }

    fn step_back(&mut self) {
        if let Some(before) = self.past.pop() {
            self.future
                .push(std::mem::replace(&mut self.contents, before));
        }
        self.stroke = None;
    }

    fn step_forward(&mut self) {
        if let Some(after) = self.future.pop() {
            self.past.push(std::mem::replace(&mut self.contents, after));
        }
        self.stroke = None;
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
                contents.recipes.retain(|recipe| recipe.id != id);
                contents.kept.retain(|recipe| recipe.id != id);
            }
            Action::Recipe(id, edit) => self.edit_recipe(&id, edit),
            Action::Keep(id) => contents.kept.retain(|recipe| recipe.id != id),
            Action::GoBack(id) => contents.go_back(&id),
            Action::AddWeek { title, dates } => contents.add_week(title, dates),
            Action::RemoveWeek(id) => contents.weeks.retain(|week| week.id != id),
            Action::Week(id, edit) => {
                if let Some(week) = contents.weeks.iter_mut().find(|week| week.id == id) {
                    week_edit::apply(Rc::make_mut(week), edit);
                }
            }
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
        }
    }

    fn edit_recipe(&mut self, id: &RecipeId, edit: RecipeEdit) {
        let Some(place) = self.contents.recipes.iter_mut().find(|r| r.id == *id) else {
            return;
        };
        let before = Rc::clone(place);
        recipe_edit::apply(Rc::make_mut(place), edit, &mut self.aside);
        let after = Rc::clone(place);
        self.contents.compare_with_kept(&before, &after);
    }

    /// Where an action types, if it types.
    fn stroke_of(&self, action: &Action) -> Option<Stroke> {
        match action {
            Action::Office(_) => Some(Stroke::Office),
            Action::Recipe(id, edit) => self.recipe_stroke(id, edit),
            Action::Week(id, edit) => {
                week_stroke(edit).map(|field| Stroke::WeekField(id.clone(), field))
            }
            Action::Food(number, edit) => {
                food_stroke(edit).map(|field| Stroke::FoodField(*number, field))
            }
            Action::OwnRules(table, _) => Some(Stroke::Table(*table)),
            _ => None,
        }
    }

    fn recipe_stroke(&self, id: &RecipeId, edit: &RecipeEdit) -> Option<Stroke> {
        let field = match edit {
            RecipeEdit::Title(_) => "title",
            RecipeEdit::ServingWords(_) => "serving",
            RecipeEdit::Servings(_) => "servings",
            RecipeEdit::Method(_) => "method",
            RecipeEdit::Lines(text) => {
                let old = &self.contents.recipe(id)?.lines;
                let lines = text.split('\n').count();
                let line = text
                    .split('\n')
                    .zip(old)
                    .take_while(|(new, old)| *new == old.text)
                    .count();
                return Some(Stroke::Line {
                    recipe: id.clone(),
                    line,
                    lines,
                });
            }
            RecipeEdit::FinishedWeight(_) => "finished weight",
            RecipeEdit::ServingSize(_) | RecipeEdit::Beans(_) | RecipeEdit::Correct { .. } => {
                return None;
            }
        };
        Some(Stroke::Field(id.clone(), field))
    }
}

fn week_stroke(edit: &WeekEdit) -> Option<String> {
    match edit {
        WeekEdit::Title(_) => Some("title".to_owned()),
        WeekEdit::PlannedMeals(at, _) => Some(format!("meals {at:?}")),
        WeekEdit::OfferTitle(at, _) => Some(format!("offer {at:?}")),
        WeekEdit::Take(at, _) => Some(format!("take {at:?}")),
        WeekEdit::Planned(at, _) => Some(format!("planned {at:?}")),
        _ => None,
    }
}

fn food_stroke(edit: &FoodEdit) -> Option<String> {
    match edit {
        FoodEdit::Description(_) => Some("description".to_owned()),
        FoodEdit::Ingredients(_) => Some("ingredients".to_owned()),
        FoodEdit::Reference(_) => Some("reference".to_owned()),
        FoodEdit::Weight(_) => Some("weight".to_owned()),
        FoodEdit::Printed(nutrient, _) | FoodEdit::Amount(nutrient, _) => {
            Some(format!("nutrient {}", nutrient.0))
        }
        FoodEdit::Measure(index, _) => Some(format!("measure {index}")),
        FoodEdit::AddMeasure | FoodEdit::RemoveMeasure(_) => None,
    }
}

impl Contents {
    fn add_recipe(&mut self, mut recipe: Recipe) {
        recipe.id = self.free_recipe_id(&recipe.title);
        // What is added has not been kept yet: it is compared with how it came.
        self.kept.push(Rc::new(recipe.clone()));
        self.recipes.push(Rc::new(recipe));
    }

    fn add_week(&mut self, title: String, dates: Vec<engine::week::Date>) {
        let taken = self.weeks.iter().map(|other| other.id.0.as_str());
        let id = WeekId(unique_name(&title, "week", taken));
        let days = dates
            .into_iter()
            .map(|date| Day {
                date,
                meals: Vec::new(),
            })
            .collect();
        self.weeks.push(Rc::new(Week { id, title, days }));
    }

    fn go_back(&mut self, id: &RecipeId) {
        let Some(kept) = self.kept(id).cloned() else {
            return;
        };
        if let Some(place) = self.recipes.iter_mut().find(|recipe| recipe.id == *id) {
            *place = kept;
        }
        self.kept.retain(|recipe| recipe.id != *id);
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
