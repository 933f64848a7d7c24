//! Changes of what an office adds to the tables, its own foods, its own limits
//! and its reading of the rules, and of what it decides about labels. What
//! cannot be used yet is kept all the same.

use super::action::{FoodEdit, OwnTable};
use super::contents::Contents;
use engine::book::{Book, RecipeLabel};
use engine::foods::{FoodId, NutrientId};
use engine::own_foods::{Declared, OwnFood, OwnMeasure, OwnSource, Stated};
use engine::recipe::{Correction, Recipe};
use engine::rules::OwnRules;
use engine::units::Grams;
use rust_decimal::Decimal;
use std::rc::Rc;

/// Puts a label in the place of that of its recipe.
pub(super) fn set_label(labels: &mut Vec<RecipeLabel>, label: RecipeLabel) {
    match labels.iter_mut().find(|old| old.recipe == label.recipe) {
        Some(old) => *old = label,
        None => labels.push(label),
    }
    labels.retain(|label| !label.is_plain());
}

impl OwnTable {
    /// All of them.
    pub const ALL: [Self; 3] = [
        Self::DietarySpecifications,
        Self::MealPatterns,
        Self::WeekRules,
    ];

    /// Its text in the office's rules.
    pub fn text(self, rules: &OwnRules) -> Option<&str> {
        match self {
            Self::DietarySpecifications => rules.dietary_specifications.as_deref(),
            Self::MealPatterns => rules.meal_patterns.as_deref(),
            Self::WeekRules => rules.week_rules.as_deref(),
        }
    }

    /// The place of its text in the office's rules.
    pub fn place(self, rules: &mut OwnRules) -> &mut Option<String> {
        match self {
            Self::DietarySpecifications => &mut rules.dietary_specifications,
            Self::MealPatterns => &mut rules.meal_patterns,
            Self::WeekRules => &mut rules.week_rules,
        }
    }
}

/// Sets the text of a table; an empty one is none.
pub(super) fn set_table(rest: &mut Book, table: OwnTable, text: String) {
    let text = (!text.trim().is_empty()).then_some(text);
    *table.place(&mut rest.own_rules) = text;
}

impl Contents {
    /// The number that the next own food will get. A number that a recipe
    /// still names is not given to another food.
    pub fn free_food_number(&self) -> u32 {
        let own = self.rest.own_foods.iter().map(|food| food.number);
        let recipes = self.recipes.iter().chain(&self.kept);
        let named = recipes.flat_map(|recipe| named_foods(recipe));
        own.chain(named).max().map_or(1, |number| number + 1)
    }

    /// Adds foods under numbers of their own.
    pub(super) fn add_foods(&mut self, foods: Vec<OwnFood>) {
        let numbers = self.free_food_number()..;
        let numbered = foods
            .into_iter()
            .zip(numbers)
            .map(|(food, number)| OwnFood { number, ..food });
        Rc::make_mut(&mut self.rest).own_foods.extend(numbered);
    }

    /// An own food by its number.
    pub fn own_food(&self, number: u32) -> Option<&OwnFood> {
        let mut foods = self.rest.own_foods.iter();
        foods.find(|food| food.number == number)
    }
}

fn named_foods(recipe: &Recipe) -> impl Iterator<Item = u32> {
    let foods = |correction: &Correction| {
        let cooked = correction.cooked.as_ref().map(|cooked| cooked.food);
        [correction.food, cooked]
    };
    let lines = recipe.lines.iter();
    lines
        .flat_map(move |line| foods(&line.correction))
        .filter_map(|food| match food {
            Some(FoodId::Own(number)) => Some(number),
            _ => None,
        })
}

/// Applies one change of a food.
pub(super) fn edit_food(food: &mut OwnFood, edit: FoodEdit) {
    match edit {
        FoodEdit::Description(text) => food.description = text,
        FoodEdit::Ingredients(text) => food.ingredients = text,
        FoodEdit::Reference(text) => match &mut food.source {
            OwnSource::Label { reference, .. } | OwnSource::Values { reference, .. } => {
                *reference = text;
            }
        },
        FoodEdit::Weight(weight) => match &mut food.source {
            OwnSource::Label { serving, .. } => *serving = weight,
            OwnSource::Values { per, .. } => *per = weight,
        },
        FoodEdit::Printed(nutrient, text) => print(&mut food.source, nutrient, text),
        FoodEdit::Amount(nutrient, amount) => state(&mut food.source, nutrient, amount),
        FoodEdit::AddMeasure => food.measures.push(OwnMeasure {
            amount: Decimal::ONE,
            words: String::new(),
            grams: Grams::ZERO,
        }),
        FoodEdit::Measure(index, measure) => {
            if let Some(place) = food.measures.get_mut(index) {
                *place = measure;
            }
        }
        FoodEdit::RemoveMeasure(index) => {
            if index < food.measures.len() {
                food.measures.remove(index);
            }
        }
    }
}

/// Sets what a label prints of a nutrient; an empty text is no figure, not
/// zero.
fn print(source: &mut OwnSource, nutrient: NutrientId, text: String) {
    let OwnSource::Label { declared, .. } = source else {
        return;
    };
    let place = declared.iter().position(|one| one.nutrient == nutrient);
    match (place, text.trim().is_empty()) {
        (Some(index), true) => {
            declared.remove(index);
        }
        (Some(index), false) => declared[index].printed = text,
        (None, false) => declared.push(Declared {
            nutrient,
            printed: text,
        }),
        (None, true) => {}
    }
}

fn state(source: &mut OwnSource, nutrient: NutrientId, amount: Option<Decimal>) {
    let OwnSource::Values { values, .. } = source else {
        return;
    };
    let place = values.iter().position(|one| one.nutrient == nutrient);
    match (place, amount) {
        (Some(index), None) => {
            values.remove(index);
        }
        (Some(index), Some(amount)) => values[index].amount = amount,
        (None, Some(amount)) => values.push(Stated { nutrient, amount }),
        (None, None) => {}
    }
}
