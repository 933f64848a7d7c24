//! Where a change is typed letter by letter: typing on in one place is one
//! step to take back.

use super::action::{Action, FoodEdit, OwnTable, RecipeEdit, WeekEdit};
use super::contents::Contents;
use super::kitchen_edit;
use engine::book::RecipeLabel;
use engine::recipe::{CookedAs, Correction, Recipe, RecipeId, ServingSize};
use engine::week::WeekId;

/// A place into which one types letter by letter.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Stroke {
    Office,
    Field(RecipeId, &'static str),
    Line {
        recipe: RecipeId,
        line: usize,
        lines: usize,
    },
    /// A weight that is stated for a line.
    LineField(RecipeId, usize, &'static str),
    WeekField(WeekId, String),
    FoodField(u32, String),
    Table(OwnTable),
    Kitchen(String),
}

/// Where an action types, if it types.
pub(super) fn stroke_of(contents: &Contents, action: &Action) -> Option<Stroke> {
    match action {
        Action::Office(_) => Some(Stroke::Office),
        Action::Recipe(id, edit) => recipe_stroke(contents.recipe(id)?, edit),
        Action::Week(id, edit) => {
            week_stroke(edit).map(|field| Stroke::WeekField(id.clone(), field))
        }
        Action::Food(number, edit) => {
            food_stroke(edit).map(|field| Stroke::FoodField(*number, field))
        }
        Action::Label(label) => {
            let field = label_field(&contents.label(&label.recipe), label)?;
            Some(Stroke::Field(label.recipe.clone(), field))
        }
        Action::OwnRules(table, _) => Some(Stroke::Table(*table)),
        Action::Production(edit) => kitchen_edit::production_stroke(edit).map(Stroke::Kitchen),
        Action::Calendar(edit) => kitchen_edit::calendar_stroke(edit).map(Stroke::Kitchen),
        _ => None,
    }
}

fn recipe_stroke(recipe: &Recipe, edit: &RecipeEdit) -> Option<Stroke> {
    let id = &recipe.id;
    let field = match edit {
        RecipeEdit::Title(_) => "title",
        RecipeEdit::ServingWords(_) => "serving",
        RecipeEdit::Servings(_) => "servings",
        RecipeEdit::Method(_) => "method",
        RecipeEdit::Lines(text) => {
            let lines = text.split('\n').count();
            let line = text
                .split('\n')
                .zip(&recipe.lines)
                .take_while(|(new, old)| *new == old.text)
                .count();
            return Some(Stroke::Line {
                recipe: id.clone(),
                line,
                lines,
            });
        }
        RecipeEdit::FinishedWeight(_) => "finished weight",
        RecipeEdit::ServingSize(size) => size_field(recipe.serving_size.as_ref()?, size.as_ref()?)?,
        RecipeEdit::Correct { line, correction } => {
            let old = &recipe.lines.get(*line)?.correction;
            let field = correction_field(old, correction)?;
            return Some(Stroke::LineField(id.clone(), *line, field));
        }
        RecipeEdit::Beans(_) | RecipeEdit::Swap { .. } => return None,
    };
    Some(Stroke::Field(id.clone(), field))
}

/// The number of a serving's size that alone is another one.
fn size_field(old: &ServingSize, new: &ServingSize) -> Option<&'static str> {
    match (old, new) {
        (ServingSize::Weight { .. }, ServingSize::Weight { .. }) => Some("serving size"),
        (
            ServingSize::Volume { serving, batch },
            ServingSize::Volume {
                serving: new_serving,
                batch: new_batch,
            },
        ) => of_two(serving == new_serving, batch == new_batch),
        (
            ServingSize::Count { serving, batch },
            ServingSize::Count {
                serving: new_serving,
                batch: new_batch,
            },
        ) => of_two(serving == new_serving, batch == new_batch),
        _ => None,
    }
}

fn of_two(same_serving: bool, same_batch: bool) -> Option<&'static str> {
    match (same_serving, same_batch) {
        (_, true) => Some("serving size"),
        (true, false) => Some("batch"),
        (false, false) => None,
    }
}

/// The number of a label that alone is another one.
fn label_field(old: &RecipeLabel, new: &RecipeLabel) -> Option<&'static str> {
    let mut with = old.clone();
    with.panel.serving_weight = new.panel.serving_weight;
    if with == *new {
        return Some("label weight");
    }
    with = old.clone();
    with.panel.servings_per_container = new.panel.servings_per_container;
    if with == *new {
        return Some("container");
    }
    with = old.clone();
    with.claims.reference_amount = new.claims.reference_amount;
    (with == *new).then_some("reference amount")
}

/// The weight of a correction that alone is another one.
fn correction_field(old: &Correction, new: &Correction) -> Option<&'static str> {
    let same_but_weight = Correction {
        weight: new.weight,
        ..old.clone()
    };
    if same_but_weight == *new {
        return Some("weight");
    }
    let weight = new.cooked.as_ref()?.weight;
    let cooked = old.cooked.as_ref()?;
    let same_but_cooked = Correction {
        cooked: Some(CookedAs {
            weight,
            ..cooked.clone()
        }),
        ..old.clone()
    };
    (same_but_cooked == *new).then_some("cooked weight")
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
