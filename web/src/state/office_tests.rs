//! The desk's rules for own foods, own limits and switches.

use super::*;
use engine::book::Book;
use engine::foods::{FoodId, NutrientId};
use engine::own_foods::{OwnFood, OwnMeasure, OwnSource};
use engine::recipe::{Correction, Recipe, RecipeId, RecipeLine};
use engine::units::{Grams, Servings};
use rust_decimal::Decimal;

fn desk() -> Desk {
    Desk::new(Book::empty("Office").into())
}

fn act(desk: &Desk, action: Action) -> Desk {
    desk.reduce(action)
}

fn label_food() -> OwnFood {
    OwnFood {
        number: 0,
        description: String::new(),
        ingredients: String::new(),
        measures: Vec::new(),
        source: OwnSource::Label {
            serving: Grams::ZERO,
            declared: Vec::new(),
            reference: String::new(),
        },
    }
}

fn sheet_food() -> OwnFood {
    OwnFood {
        source: OwnSource::Values {
            per: Grams::new(Decimal::ONE_HUNDRED),
            values: Vec::new(),
            reference: String::new(),
        },
        ..label_food()
    }
}

fn numbers(desk: &Desk) -> Vec<u32> {
    let foods = &desk.contents.rest.own_foods;
    foods.iter().map(|food| food.number).collect()
}

#[test]
fn foods_get_numbers_of_their_own() {
    let two = act(&desk(), Action::AddFoods(vec![label_food(), sheet_food()]));
    assert_eq!(numbers(&two), [1, 2]);
    let less = act(&two, Action::RemoveFood(1));
    let more = act(&less, Action::AddFoods(vec![label_food()]));
    assert_eq!(numbers(&more), [2, 3]);
    assert!(more.contents.book().check().is_ok());
    assert_eq!(numbers(&act(&less, Action::Undo)), [1, 2]);
}

#[test]
fn a_number_that_a_recipe_names_is_not_given_away() {
    let mut book = Book::empty("Office");
    book.recipes.push(Recipe {
        id: RecipeId("toast".into()),
        title: "Toast".into(),
        servings: Servings::new(Decimal::ONE),
        serving_words: String::new(),
        serving_size: None,
        finished_weight: None,
        lines: vec![RecipeLine {
            text: "1 slice bread".into(),
            correction: Correction {
                food: Some(FoodId::Own(7)),
                ..Correction::default()
            },
        }],
        beans: Default::default(),
        method: String::new(),
    });
    let desk = act(
        &Desk::new(book.into()),
        Action::AddFoods(vec![label_food()]),
    );
    assert_eq!(numbers(&desk), [8]);
}

#[test]
fn a_label_keeps_what_is_typed_and_nothing_else() {
    let desk = act(&desk(), Action::AddFoods(vec![label_food()]));
    let edit = |desk: &Desk, edit| act(desk, Action::Food(1, edit));
    let printed = |desk: &Desk| match &desk.contents.own_food(1).unwrap().source {
        OwnSource::Label { declared, .. } => declared
            .iter()
            .map(|one| (one.nutrient, one.printed.clone()))
            .collect::<Vec<_>>(),
        OwnSource::Values { .. } => panic!("a label was added"),
    };
    let fibre = NutrientId::FIBRE;
    let typed = edit(&desk, FoodEdit::Printed(fibre, "less".into()));
    let typed = edit(&typed, FoodEdit::Printed(fibre, "less than 1".into()));
    let typed = edit(&typed, FoodEdit::Printed(NutrientId::SODIUM, "0".into()));
    assert_eq!(
        printed(&typed),
        [
            (fibre, "less than 1".to_owned()),
            (NutrientId::SODIUM, "0".to_owned())
        ]
    );
    let emptied = edit(&typed, FoodEdit::Printed(fibre, " ".into()));
    assert_eq!(printed(&emptied), [(NutrientId::SODIUM, "0".to_owned())]);
    // The letters of one figure are one step.
    let back = act(&act(&typed, Action::Undo), Action::Undo);
    assert_eq!(printed(&back), []);
    // A label has no amounts of a sheet.
    let none = edit(&desk, FoodEdit::Amount(fibre, Some(Decimal::ONE)));
    assert_eq!(none, desk);
}

#[test]
fn a_sheet_keeps_amounts_and_measures() {
    let desk = act(&desk(), Action::AddFoods(vec![sheet_food()]));
    let edit = |desk: &Desk, edit| act(desk, Action::Food(1, edit));
    let fibre = NutrientId::FIBRE;
    let stated = edit(&desk, FoodEdit::Amount(fibre, Some(Decimal::TEN)));
    let again = edit(&stated, FoodEdit::Amount(fibre, None));
    assert_eq!(again.contents, desk.contents);
    let patty = OwnMeasure {
        amount: Decimal::ONE,
        words: "patty".into(),
        grams: Grams::new(Decimal::from(85)),
    };
    let measured = edit(&stated, FoodEdit::AddMeasure);
    let measured = edit(&measured, FoodEdit::Measure(0, patty.clone()));
    assert_eq!(measured.contents.own_food(1).unwrap().measures, [patty]);
    let removed = edit(&measured, FoodEdit::RemoveMeasure(0));
    assert_eq!(removed.contents, stated.contents);
    for change in [
        FoodEdit::RemoveMeasure(3),
        FoodEdit::Printed(fibre, "1".into()),
    ] {
        assert_eq!(edit(&stated, change.clone()), stated, "{change:?}");
    }
}

#[test]
fn own_limits_are_kept_as_typed_even_when_wrong() {
    let half = "meal,group\nlunch";
    let write =
        |desk: &Desk, text: &str| act(desk, Action::OwnRules(OwnTable::WeekRules, text.into()));
    let typed = write(&write(&desk(), "meal"), half);
    let rules = &typed.contents.rest.own_rules;
    assert_eq!(OwnTable::WeekRules.text(rules), Some(half));
    assert_eq!(OwnTable::MealPatterns.text(rules), None);
    assert_eq!(act(&typed, Action::Undo).contents, desk().contents);
    assert_eq!(write(&typed, " \n").contents, desk().contents);
}

#[test]
fn switches_are_kept_in_the_book() {
    let off = act(&desk(), Action::Switch("whole milk act".into(), false));
    assert!(!off.contents.book().switches.is_on("whole milk act"));
    let on = act(&off, Action::Switch("whole milk act".into(), true));
    assert_eq!(on.contents, desk().contents);
}
