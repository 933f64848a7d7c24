//! Named versions, labels, and steps that outlive the page.

use super::tests::soup;
use super::*;
use engine::book::{Book, RecipeLabel};
use engine::components::{Component, StatedCredit};
use engine::label::Form;
use engine::recipe::{Correction, RecipeLine};
use engine::units::Grams;
use rust_decimal::Decimal;

fn line(text: &str) -> RecipeLine {
    RecipeLine {
        text: text.into(),
        ..RecipeLine::default()
    }
}

fn desk(lines: &[&str]) -> Desk {
    super::tests::desk(lines.iter().map(|text| line(text)).collect())
}

fn edit(desk: &Desk, edit: RecipeEdit) -> Desk {
    desk.reduce(Action::Recipe(soup(), edit))
}

fn write(desk: &Desk, text: &str) -> Desk {
    edit(desk, RecipeEdit::Lines(text.into()))
}

fn version(desk: &Desk, edit: VersionEdit) -> Desk {
    desk.reduce(Action::Version(soup(), edit))
}

fn keep(desk: &Desk, name: &str) -> Desk {
    let name = name.to_owned();
    version(desk, VersionEdit::Keep { name, on: None })
}

fn texts(desk: &Desk) -> Vec<String> {
    let recipe = desk.contents.recipe(&soup()).expect("the soup");
    recipe.lines.iter().map(|line| line.text.clone()).collect()
}

fn names(desk: &Desk) -> Vec<String> {
    let id = soup();
    let versions = desk.contents.versions_of(&id);
    versions.map(|version| version.name.clone()).collect()
}

#[test]
fn versions_are_kept_and_gone_back_to() {
    let start = keep(&desk(&["1 cup salt"]), "salty");
    let mild = keep(&write(&start, "1 tsp salt"), "salty");
    assert_eq!(names(&mild), ["salty", "salty 2"]);
    assert!(mild.contents.book().check().is_ok());

    let back = version(&mild, VersionEdit::GoBack("salty".into()));
    assert_eq!(texts(&back), ["1 cup salt"]);
    // What was kept before the change is what stands there now.
    assert_eq!(back.contents.kept(&soup()), None);
    assert_eq!(back.reduce(Action::Undo).contents, mild.contents);

    let fewer = version(&mild, VersionEdit::Remove("salty".into()));
    assert_eq!(names(&fewer), ["salty 2"]);
    let gone = mild.reduce(Action::RemoveRecipe(soup()));
    assert!(gone.contents.versions.is_empty());
    assert_eq!(gone.reduce(Action::Undo).contents, mild.contents);
}

/// The label of the soup with another weight of a serving.
fn weighed(desk: &Desk, grams: i64) -> Desk {
    let mut label = desk.contents.label(&soup());
    label.panel.serving_weight = Some(Grams::new(Decimal::from(grams)));
    desk.reduce(Action::Label(label))
}

#[test]
fn what_is_decided_about_a_label_is_kept_with_its_recipe() {
    let start = desk(&["1 cup salt"]);
    let mut label = RecipeLabel::plain(soup());
    label.panel.form = Form::Linear;
    let linear = start.reduce(Action::Label(label.clone()));
    assert_eq!(linear.contents.book().labels, [label]);
    assert_eq!(linear.contents.kept(&soup()), None, "the card is as it was");

    // A weight that is typed on is one step.
    let typed = weighed(&weighed(&linear, 2), 24);
    assert!(typed.contents.book().check().is_ok());
    assert_eq!(typed.reduce(Action::Undo).contents, linear.contents);

    let plain = linear.reduce(Action::Label(RecipeLabel::plain(soup())));
    assert_eq!(plain.contents, start.contents);
    let gone = linear.reduce(Action::RemoveRecipe(soup()));
    assert!(gone.contents.rest.labels.is_empty());
    assert_eq!(gone.reduce(Action::Undo).contents, linear.contents);
}

#[test]
fn two_labels_of_one_recipe_are_no_book() {
    let mut book = weighed(&desk(&["salt"]), 24).contents.book();
    book.labels.push(book.labels[0].clone());
    let error = book.check().expect_err("the label is there twice");
    assert!(error.to_string().contains(&soup().0), "{error}");
}

#[test]
fn two_versions_of_one_name_are_no_book() {
    let mut book = keep(&desk(&["salt"]), "salty").contents.book();
    book.versions.push(book.versions[0].clone());
    let error = book.check().expect_err("the name is there twice");
    assert!(error.to_string().contains("salty"), "{error}");
}

#[test]
fn a_swap_is_one_step() {
    let start = desk(&["rice", "1 tbsp soy sauce", "peas"]);
    let swap = RecipeEdit::Swap {
        line: 1,
        lines: vec![line("2 tsp soy sauce"), line("1 tsp vinegar")],
    };
    let swapped = edit(&start, swap);
    let expected = ["rice", "2 tsp soy sauce", "1 tsp vinegar", "peas"];
    assert_eq!(texts(&swapped), expected);
    assert_eq!(swapped.reduce(Action::Undo).contents, start.contents);
}

#[test]
fn typing_a_weight_is_one_step() {
    let start = desk(&["salt", "milk"]);
    let weigh = |desk: &Desk, line: usize, grams: Option<u32>| {
        let recipe = desk.contents.recipe(&soup()).expect("the soup");
        let correction = Correction {
            weight: grams.map(|grams| Grams::new(Decimal::from(grams))),
            ..recipe.lines[line].correction.clone()
        };
        edit(desk, RecipeEdit::Correct { line, correction })
    };
    let mut typed = start.clone();
    for grams in [Some(2), Some(25), Some(250), None, Some(3)] {
        typed = weigh(&typed, 0, grams);
    }
    assert_eq!(typed.history().steps_back(), 1);
    assert_eq!(typed.reduce(Action::Undo).contents, start.contents);
    // Another line is another step.
    let other = weigh(&typed, 1, Some(7));
    assert_eq!(other.reduce(Action::Undo).contents, typed.contents);
}

#[test]
fn a_stated_credit_tells_for_which_amount() {
    let start = desk(&["4 lb beef patties"]);
    let correction = Correction {
        credits: vec![StatedCredit {
            component: Component::MeatAlternates,
            amount: Decimal::TWO,
            marks: vec![],
            reason: "CN label 012345".into(),
            stated_for: None,
        }],
        ..Correction::default()
    };
    let stated = edit(
        &start,
        RecipeEdit::Correct {
            line: 0,
            correction,
        },
    );
    let stated_for = |desk: &Desk| {
        let recipe = desk.contents.recipe(&soup()).expect("the soup");
        recipe.lines[0].correction.credits[0].stated_for.clone()
    };
    assert_eq!(stated_for(&stated), None);
    let more = write(&stated, "5 lb beef patties");
    assert_eq!(stated_for(&more).as_deref(), Some("4 lb beef patties"));
    let more = write(&more, "6 lb beef patties");
    assert_eq!(stated_for(&more).as_deref(), Some("4 lb beef patties"));
    assert_eq!(stated_for(&write(&more, "4 lb beef patties")), None);
}

/// A desk as it comes back from the storage, with so much room for its steps.
fn reopened(desk: &Desk, room: usize) -> Desk {
    let text = desk.history().text("mark", room);
    let history = History::read(&text, "mark").expect("what was just written");
    assert_eq!(History::read(&text, "other"), None);
    Desk::with_history(desk.contents.saved(), history)
}

#[test]
fn steps_outlive_the_page() {
    let start = desk(&["salt"]);
    let mut states = vec![start.clone()];
    for number in 0..30 {
        let last = &states[states.len() - 1];
        let next = match number % 3 {
            0 => write(last, &format!("salt\nline {number}")),
            1 => keep(last, &format!("version {number}")),
            _ => last.reduce(Action::AddRecipe(
                (**last.contents.recipe(&soup()).unwrap()).clone(),
            )),
        };
        states.push(next);
    }
    let mut now = reopened(&states[30], usize::MAX);
    for state in states[..30].iter().rev() {
        now = reopened(&now.reduce(Action::Undo), usize::MAX);
        assert_eq!(now.contents, state.contents);
    }
    assert!(!now.can_undo());
    assert_eq!(now.history().cut(), 0);
    for state in &states[1..] {
        now = reopened(&now.reduce(Action::Redo), usize::MAX);
        assert_eq!(now.contents, state.contents);
    }
    assert!(!now.can_redo());
}

#[test]
fn what_does_not_fit_is_counted() {
    let mut now = desk(&["salt"]);
    for number in 0..10 {
        now = write(&now, &format!("salt\n{number} cups milk"));
        // Nothing that is typed into one line is one step with another.
        now = now.reduce(Action::Keep(soup()));
    }
    let steps = now.history().steps_back();
    let few = reopened(&now, 1_500);
    let left = few.history().steps_back();
    assert!(left > 0 && left < steps, "{left} of {steps}");
    assert_eq!(left + few.history().cut(), steps);
    let none = reopened(&few, 0);
    assert_eq!(none.history().cut(), steps);
    assert!(!none.can_undo());
}

#[test]
fn steps_of_another_book_are_left_alone() {
    let now = write(&desk(&["salt"]), "salt\nmilk");
    let text = now.history().text("mark", usize::MAX);
    let history = History::read(&text, "mark").expect("what was just written");
    // A step that does not fit changes nothing.
    let other = Desk::with_history(Book::empty("Other").into(), history);
    assert_eq!(other.reduce(Action::Undo).contents, other.contents);
    for text in ["", "{}", "[1]", "{\"of\": \"mark\"}"] {
        assert_eq!(History::read(text, "mark"), None, "{text}");
    }
}
