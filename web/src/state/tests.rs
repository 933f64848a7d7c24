//! The desk's rules, one action after another.

use super::*;
use engine::book::Book;
use engine::foods::FoodId;
use engine::recipe::{Correction, Recipe, RecipeId, RecipeLine};
use engine::units::{Grams, Servings};
use engine::week::{Date, GradeGroup, MealKind, WeekId};
use rust_decimal::Decimal;

pub(super) fn soup() -> RecipeId {
    RecipeId("soup".into())
}

fn line(text: &str, food: Option<u32>, weight: Option<u32>) -> RecipeLine {
    RecipeLine {
        text: text.into(),
        correction: Correction {
            food: food.map(FoodId::Sr28),
            weight: weight.map(|grams| Grams::new(Decimal::from(grams))),
            ..Correction::default()
        },
    }
}

pub(super) fn desk(lines: Vec<RecipeLine>) -> Desk {
    let mut book = Book::empty("Office");
    book.recipes.push(Recipe {
        id: soup(),
        title: "Soup".into(),
        servings: Servings::new(Decimal::TEN),
        serving_words: String::new(),
        serving_size: None,
        finished_weight: None,
        lines,
        beans: Default::default(),
        method: String::new(),
    });
    Desk::new(book.into())
}

fn write(desk: &Desk, text: &str) -> Desk {
    let edit = RecipeEdit::Lines(text.into());
    desk.reduce(Action::Recipe(soup(), edit))
}

fn act(desk: &Desk, action: Action) -> Desk {
    desk.reduce(action)
}

/// Line by line: text, food, weight.
fn lines(desk: &Desk) -> Vec<RecipeLine> {
    desk.contents.recipe(&soup()).unwrap().lines.clone()
}

#[test]
fn corrections_follow_their_lines() {
    let flour = || line("5 cups flour", Some(1), Some(600));
    let milk = || line("1 cup milk", Some(2), None);
    let plain = |text| line(text, None, None);
    for (why, text, expected) in [
        (
            "a line comes before",
            "2 cups oats\n5 cups flour\n1 cup milk",
            vec![plain("2 cups oats"), flour(), milk()],
        ),
        (
            "lines change places",
            "1 cup milk\n5 cups flour",
            vec![milk(), flour()],
        ),
        (
            "another line is rewritten",
            "5 cups flour\n1 cup cream",
            vec![flour(), plain("1 cup cream")],
        ),
        (
            "a line between is typed",
            "5 cups flour\nsalt\n1 cup milk",
            vec![flour(), plain("salt"), milk()],
        ),
        (
            "another amount of the same food weighs otherwise",
            "6 cups flour\n1 cup milk",
            vec![line("6 cups flour", Some(1), None), milk()],
        ),
        (
            "another food",
            "5 cups rye flour\n1 cup milk",
            vec![plain("5 cups rye flour"), milk()],
        ),
        ("a line goes", "5 cups flour", vec![flour()]),
        ("all lines go", "", vec![]),
    ] {
        let after = write(&desk(vec![flour(), milk()]), text);
        assert_eq!(lines(&after), expected, "{why}");
    }
}

#[test]
fn twins_keep_their_own_corrections() {
    let twins = vec![
        line("1 cup milk", Some(1), None),
        line("1 cup milk", Some(2), None),
    ];
    let after = write(&desk(twins.clone()), "1 cup milk\nsalt\n1 cup milk");
    assert_eq!(lines(&after)[0], twins[0]);
    assert_eq!(lines(&after)[2], twins[1]);
}

#[test]
fn a_slip_of_the_finger_loses_no_correction() {
    let before = desk(vec![line("5 cups flour", Some(1), Some(600))]);
    let slipped = write(&before, "5 cups flou");
    assert_eq!(lines(&slipped), vec![line("5 cups flou", None, None)]);
    let restored = write(&slipped, "5 cups flour");
    assert_eq!(lines(&restored), lines(&before));
    // Typed anew with another amount: the choice of food is remembered.
    let retyped = write(&slipped, "7 cups flour");
    assert_eq!(lines(&retyped), vec![line("7 cups flour", Some(1), None)]);
}

#[test]
fn typing_in_one_line_is_one_step() {
    let start = desk(vec![line("salt", None, None), line("milk", None, None)]);
    let mut typed = start.clone();
    for text in ["salt\nmilk,", "salt\nmilk, s", "salt\nmilk, skim"] {
        typed = write(&typed, text);
    }
    let other_line = write(&typed, "salt x\nmilk, skim");
    let undone = act(&other_line, Action::Undo);
    assert_eq!(undone.contents, typed.contents);
    let undone = act(&undone, Action::Undo);
    assert_eq!(undone.contents, start.contents);
    assert!(!undone.can_undo());
    let redone = act(&act(&undone, Action::Redo), Action::Redo);
    assert_eq!(redone.contents, other_line.contents);
    assert!(!redone.can_redo());
}

#[test]
fn opening_another_book_can_be_taken_back() {
    let start = desk(vec![line("salt", None, None)]);
    let opened = act(&start, Action::Open(Book::empty("Other").into()));
    assert!(opened.contents.recipes.is_empty());
    assert_eq!(act(&opened, Action::Undo).contents, start.contents);
}

#[test]
fn a_recipe_is_compared_with_its_kept_form() {
    let start = desk(vec![line("5 cups flour", None, None)]);
    assert_eq!(start.contents.kept(&soup()), None);

    let swapped = write(&start, "5 cups oats");
    let swapped = write(&swapped, "5 cups oats\nsalt");
    let kept = swapped.contents.kept(&soup()).unwrap();
    assert_eq!(kept, start.contents.recipe(&soup()).unwrap());

    assert_eq!(
        act(&swapped, Action::GoBack(soup())).contents,
        start.contents
    );
    let decided = act(&swapped, Action::Keep(soup()));
    assert_eq!(decided.contents.kept(&soup()), None);
    assert_eq!(lines(&decided), lines(&swapped));

    let back_by_hand = write(&swapped, "5 cups flour");
    assert_eq!(back_by_hand.contents.kept(&soup()), None);
}

#[test]
fn a_copy_has_a_name_of_its_own_and_is_compared_with_its_model() {
    let start = desk(vec![line("5 cups flour", None, None)]);
    let model = start.contents.recipe(&soup()).unwrap().as_ref().clone();
    let copied = act(&start, Action::AddRecipe(model));
    let id = copied.contents.recipes[1].id.clone();
    assert_eq!(id.0, "soup-2");
    assert!(copied.contents.book().check().is_ok());
    let edit = RecipeEdit::Lines("5 cups oats".into());
    let changed = act(&copied, Action::Recipe(id.clone(), edit));
    assert_eq!(
        changed.contents.kept(&id).unwrap().lines,
        vec![line("5 cups flour", None, None)]
    );
}

#[test]
fn what_is_stored_comes_back() {
    let changed = write(&desk(vec![line("flour", Some(1), None)]), "5 cups oats");
    let saved = changed.contents.saved();
    let text = serde_json::to_string(&saved).unwrap();
    let read: Saved = serde_json::from_str(&text).unwrap();
    assert_eq!(Desk::new(read).contents, changed.contents);
}

mod weeks {
    use super::*;

    fn id() -> WeekId {
        WeekId("week".into())
    }

    fn day(text: &str) -> Date {
        text.parse().unwrap()
    }

    fn edit(desk: &Desk, edit: WeekEdit) -> Desk {
        act(desk, Action::Week(id(), edit))
    }

    fn lunch(day: usize) -> WeekEdit {
        WeekEdit::AddMeal {
            day,
            kind: MealKind::Lunch,
            group: GradeGroup("K-5".into()),
            parts: vec!["Main dish".into(), "Fruit".into()],
        }
    }

    const MEAL: MealAt = MealAt { day: 0, meal: 0 };
    const OFFER: OfferAt = OfferAt {
        meal: MEAL,
        offer: 0,
    };

    fn planned() -> Desk {
        let dates = vec![day("2026-11-30"), day("2026-12-01")];
        let title = "Week".into();
        let desk = act(&desk(vec![]), Action::AddWeek { title, dates });
        let desk = edit(&desk, lunch(0));
        let hundred = Servings::new(Decimal::ONE_HUNDRED);
        let desk = edit(&desk, WeekEdit::PlannedMeals(MEAL, hundred));
        edit(&desk, WeekEdit::AddChoice(OFFER, soup()))
    }

    #[test]
    fn a_meal_is_laid_out_like_the_one_before() {
        let desk = edit(&planned(), lunch(1));
        let week = desk.contents.week(&id()).unwrap();
        let (first, second) = (&week.days[0].meals[0], &week.days[1].meals[0]);
        assert_eq!(first.offers[0].choices[0].planned, first.planned_meals);
        assert_eq!(second.planned_meals, first.planned_meals);
        assert_eq!(second.offers[0].title, "Main dish");
        assert!(second.choices().next().is_none());
    }

    #[test]
    fn a_second_choice_starts_with_nothing_planned() {
        let desk = edit(&planned(), WeekEdit::AddChoice(OFFER, soup()));
        let week = desk.contents.week(&id()).unwrap();
        let choices = &week.days[0].meals[0].offers[0].choices;
        assert_eq!(choices[1].planned, Servings::ZERO);
    }

    #[test]
    fn a_day_is_copied_with_its_meals() {
        let desk = edit(&planned(), WeekEdit::CopyDay(0, day("2026-12-02")));
        let week = desk.contents.week(&id()).unwrap();
        assert_eq!(week.days[2].meals, week.days[0].meals);
        assert_eq!(week.days[2].date, day("2026-12-02"));
    }

    #[test]
    fn a_week_moves_as_a_whole() {
        let desk = edit(&planned(), WeekEdit::Start(day("2027-07-05")));
        let week = desk.contents.week(&id()).unwrap();
        assert_eq!(week.days[0].date, day("2027-07-05"));
        assert_eq!(week.days[1].date, day("2027-07-06"));
    }

    #[test]
    fn a_change_of_what_is_not_there_changes_nothing() {
        let start = planned();
        for change in [
            WeekEdit::RemoveDay(7),
            WeekEdit::RemoveMeal(MealAt { day: 0, meal: 9 }),
            WeekEdit::Take(OfferAt { offer: 9, ..OFFER }, 2),
            WeekEdit::CopyDay(7, day("2026-12-02")),
        ] {
            assert_eq!(edit(&start, change.clone()), start, "{change:?}");
        }
    }
}
