//! After any change of the demo book, what the page remembers is what a fresh
//! study finds, and what the change does not touch is not studied again.
#![cfg(not(target_arch = "wasm32"))]

use engine::recipe::RecipeId;
use engine::reference::{Reference, WeekStudy};
use engine::week::WeekError;
use gramwright::memo::Memo;
use gramwright::state::{Action, Contents, Desk, RecipeEdit, Saved};
use gramwright::tables::StudiedRecipe;

const DEMO: &str = include_str!("../demo/book.json");

fn reference() -> Reference {
    Reference::committed(&nutrient_data::asset::committed().0).expect("the committed tables")
}

/// The demo's first two weeks, cut to one day each, and their recipes: every
/// check studies all of it anew.
fn desk() -> Desk {
    let mut book: engine::book::Book = serde_json::from_str(DEMO).expect("the demo book");
    book.weeks.truncate(2);
    for week in &mut book.weeks {
        week.days.truncate(1);
    }
    let weeks = book.weeks.iter();
    let served: Vec<RecipeId> = weeks.flat_map(|week| week.recipes()).collect();
    book.recipes.retain(|recipe| served.contains(&recipe.id));
    Desk::new(Saved::from(book))
}

fn told(study: &Result<WeekStudy, WeekError>) -> String {
    match study {
        Ok(study) => serde_json::to_string(study).expect("a study as text"),
        Err(problem) => problem.to_string(),
    }
}

/// The memory's studies, recipe by recipe.
fn remembered(memo: &mut Memo, reference: &Reference, contents: &Contents) -> Vec<StudiedRecipe> {
    memo.follow(&contents.recipes);
    let recipes = contents.recipes.iter();
    recipes
        .map(|recipe| memo.study(reference, recipe))
        .collect()
}

fn check(memo: &mut Memo, reference: &Reference, contents: &Contents, change: &str) {
    let book = contents.book();
    let remembered = remembered(memo, reference, contents);
    for (recipe, study) in book.recipes.iter().zip(&remembered) {
        let fresh = reference.study_recipe(&book, recipe);
        let same = serde_json::to_string(&fresh).ok() == serde_json::to_string(&**study).ok();
        assert!(same, "{change}: {}", recipe.title);
    }
    for week in &contents.weeks {
        let fresh = reference.study_week(&book, week);
        let known = memo.study_week(reference, week);
        assert_eq!(told(&fresh), told(&known), "{change}: {}", week.title);
    }
}

/// The demo with a recipe in a recipe; the named one's name, and the other's.
/// A week serves each.
fn named_and_naming(desk: &Desk) -> (Desk, RecipeId, RecipeId) {
    let served = desk.contents.weeks[0].recipes();
    let [named, naming, ..] = &served[..] else {
        panic!("the demo's week serves two recipes");
    };
    let title = &desk.contents.recipe(named).expect("it is there").title;
    let text = RecipeEdit::Lines(format!("1 lb onions\n2 servings {title}"));
    let desk = desk.reduce(Action::Recipe(naming.clone(), text));
    (desk, named.clone(), naming.clone())
}

#[test]
fn remembers_what_a_fresh_study_finds() {
    let reference = reference();
    let mut memo = Memo::default();
    check(&mut memo, &reference, &desk().contents, "as it came");
    let (mut desk, named, naming) = named_and_naming(&desk());
    check(
        &mut memo,
        &reference,
        &desk.contents,
        "a recipe in a recipe",
    );
    let title = desk
        .contents
        .recipe(&named)
        .expect("it is there")
        .title
        .clone();
    let first = desk.contents.recipes[0].id.clone();
    let lines =
        |id: &RecipeId, text: &str| Action::Recipe(id.clone(), RecipeEdit::Lines(text.into()));
    let titled =
        |id: &RecipeId, title: &str| Action::Recipe(id.clone(), RecipeEdit::Title(title.into()));
    let copy = (**desk.contents.recipe(&named).expect("it is there")).clone();
    let changes = [
        (
            "a line of the named recipe",
            lines(&named, "3 lb onions\n2 cups whole milk"),
        ),
        ("another title for it", titled(&named, "Something else")),
        ("its title again", titled(&named, &title)),
        (
            "a line that names a recipe",
            lines(&first, &format!("2 servings {title}")),
        ),
        (
            "a recipe that names itself",
            lines(&named, &format!("2 servings {title}")),
        ),
        ("which is mended", lines(&named, "3 lb onions")),
        ("a second recipe of that title", Action::AddRecipe(copy)),
        ("the named recipe goes", Action::RemoveRecipe(named.clone())),
        ("and comes back", Action::Undo),
        ("the naming recipe goes", Action::RemoveRecipe(naming)),
    ];
    for (change, action) in changes {
        desk = desk.reduce(action);
        check(&mut memo, &reference, &desk.contents, change);
    }
}

#[test]
fn studies_again_what_a_change_touches_and_nothing_else() {
    let reference = reference();
    let mut memo = Memo::default();
    let (desk, named, _) = named_and_naming(&desk());
    let before = remembered(&mut memo, &reference, &desk.contents);
    let weeks = |memo: &mut Memo, contents: &Contents| -> Vec<_> {
        let weeks = contents.weeks.iter();
        weeks
            .map(|week| memo.study_week(&reference, week))
            .collect()
    };
    let weeks_before = weeks(&mut memo, &desk.contents);
    let edit = RecipeEdit::Lines("3 lb onions".into());
    let after = desk.reduce(Action::Recipe(named.clone(), edit));
    let studies = remembered(&mut memo, &reference, &after.contents);
    for (at, recipe) in after.contents.recipes.iter().enumerate() {
        let lines = &before[at].lines;
        let names_it = lines
            .iter()
            .any(|line| line.recipe.as_ref() == Some(&named));
        let touched = recipe.id == named || names_it;
        assert_eq!(studies[at] != before[at], touched, "{}", recipe.title);
    }
    let weeks_after = weeks(&mut memo, &after.contents);
    for (at, week) in after.contents.weeks.iter().enumerate() {
        let serves = week.recipes().iter().any(|id| {
            let at = after
                .contents
                .recipes
                .iter()
                .position(|recipe| recipe.id == *id);
            at.is_some_and(|at| studies[at] != before[at])
        });
        assert_eq!(
            weeks_after[at] != weeks_before[at],
            serves,
            "{}",
            week.title
        );
    }
}
