//! The book as a file, and what happens to files and stored texts that are no book.

use crate::visit::{Visit, journey};
use engine::book::Book;
use engine::exchange::{recipe_csv, recipe_ld};
use gramwright_tests::demo;
use serde_json::{Value, json};
use thirtyfour::prelude::*;

/// Named after the office of the demo book.
fn file_name() -> String {
    let office = demo::book().office.to_lowercase();
    let plain = office.replace(|c: char| !c.is_alphanumeric(), "-");
    format!("{plain}-book.json")
}

/// A title as part of the name of a file.
fn plain(title: &str) -> String {
    let title = title.to_lowercase();
    let words = title.split(|c: char| !c.is_alphanumeric());
    let words: Vec<&str> = words.filter(|word| !word.is_empty()).collect();
    words.join("-")
}

/// Makes a file that is no book out of one that is.
type Damage = fn(&str) -> String;

/// Files that are no book: name, how they came about, and what the page says of them.
const DAMAGED: [(&str, Damage, &str); 8] = [
    ("empty.json", |_| String::new(), "cut off"),
    (
        "cut.json",
        |text| text.chars().take(text.len() / 2).collect(),
        "cut off",
    ),
    ("list.json", |_| "[]".to_owned(), "no book and no recipe"),
    ("letter.json", |_| "Dear all,".to_owned(), "no JSON"),
    (
        "newer.json",
        |text| with(text, "/version", json!(99)),
        "newer page",
    ),
    (
        "many.json",
        |text| with(text, "/recipes/3/servings", json!("many")),
        "recipes[3].servings",
    ),
    (
        "many.csv",
        |_| "title,ingredient,servings\nSoup,2 lb beans,many\n".to_owned(),
        "line 2, servings",
    ),
    (
        "twice.json",
        |text| with(text, "/recipes/1/id", json!("beef-and-bean-chili")),
        "beef-and-bean-chili",
    ),
];

/// The book's text with another value in one place.
fn with(text: &str, place: &str, value: Value) -> String {
    let mut book: Value = serde_json::from_str(text).expect("a book");
    *book.pointer_mut(place).expect("a part of the book") = value;
    book.to_string()
}

#[test]
fn a_book_goes_into_a_file_and_comes_back() {
    journey("files", async |visit| {
        visit.open("#/about").await?;
        visit.click("#save-file").await?;
        let text = visit.saved_file(&file_name()).await?;
        let saved: Book = serde_json::from_str(&text).expect("a book");
        assert_eq!(saved, demo::book());

        for (name, damage, words) in DAMAGED {
            visit.give_file("#open-file", name, &damage(&text)).await?;
            let problem = visit.see_words("[data-test=file-problem]", name).await?;
            assert!(problem.contains(words), "{name}: {problem}");
            assert!(problem.contains("nothing has changed"), "{problem}");
            visit.see_values("#office", &[&saved.office]).await?;
            visit.see("#undo:disabled", &["Undo"]).await?;
        }
        visit.screenshot("damaged").await?;

        let other = with(&text, "/office", json!("Fernhill kitchen"));
        visit.give_file("#open-file", "good.json", &other).await?;
        // It is shown first, and nothing has changed.
        visit
            .see_words("[data-test=incoming-book]", "Fernhill kitchen")
            .await?;
        visit.see_values("#office", &[&saved.office]).await?;
        visit.click("#leave-incoming").await?;
        visit.see("[data-test=incoming]", &[]).await?;
        visit.see("#undo:disabled", &["Undo"]).await?;

        visit.give_file("#open-file", "good.json", &other).await?;
        visit.click("#take-incoming").await?;
        visit.see_words("[data-test=told]", "good.json").await?;
        visit.see("[data-test=file-problem]", &[]).await?;
        visit.see_values("#office", &["Fernhill kitchen"]).await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        visit.see_values("#office", &["Fernhill kitchen"]).await
    });
}

/// Recipes as a spreadsheet would have them: one that the book has, a changed one, a new one.
fn table_of(book: &Book) -> String {
    let mut changed = book.recipes[1].clone();
    changed.title = "=Changed".to_owned();
    let mut new = book.recipes[2].clone();
    new.id.0 = "from-elsewhere".to_owned();
    new.title = "From elsewhere".to_owned();
    recipe_csv::write([&book.recipes[0], &changed, &new])
}

#[test]
fn recipes_go_to_others_and_come_from_others() {
    let book = demo::book();
    let recipes = book.recipes.len();
    journey("recipes-in-and-out", async |visit| {
        visit.open("#/about").await?;
        let start = plain(&book.office);
        visit.click("#save-recipes-table").await?;
        let table = visit.saved_file(&format!("{start}-recipes.csv")).await?;
        let back = recipe_csv::read(&table).expect("a table");
        assert_eq!(back.recipes, book.recipes);
        visit.click("#save-recipes-ld").await?;
        let shared = visit.saved_file(&format!("{start}-recipes.jsonld")).await?;
        let back = recipe_ld::read(&shared).expect("JSON-LD");
        assert_eq!(back.recipes.len(), recipes);

        visit
            .give_file("#open-file", "some.csv", &table_of(&book))
            .await?;
        let look = || visit.texts("[data-test=incoming-recipe] td:last-child");
        let rows = visit
            .wait_until("three recipes", look, |rows| rows.len() == 3)
            .await?;
        for (row, words) in rows.iter().zip(["already", "beside", "comes in"]) {
            assert!(row.contains(words), "{rows:#?}");
        }
        visit.see("#undo:disabled", &["Undo"]).await?;
        visit.click("#take-incoming").await?;
        visit.see_words("[data-test=told]", "2 recipes").await?;
        visit.go("#/recipes").await?;
        let listed = || visit.texts("[data-test=recipe-row] [data-test=recipe-link]");
        let titles = visit
            .wait_until("two more", listed, |titles| titles.len() == recipes + 2)
            .await?;
        // Its quote was for the spreadsheet only.
        assert!(titles.contains(&"=Changed".to_owned()), "{titles:#?}");
        visit.click("#undo").await?;
        visit
            .wait_until("one step", listed, |titles| titles.len() == recipes)
            .await?;
        Ok(())
    });
}

#[test]
fn figures_are_saved_as_a_table() {
    journey("figures-out", async |visit| {
        visit.open("#/recipe/turkey-on-a-roll").await?;
        visit.click(".save-as summary").await?;
        visit.click("#save-recipe-figures").await?;
        let recipe = visit
            .saved_file("turkey-on-a-whole-wheat-roll-nutrients.csv")
            .await?;
        assert!(recipe.contains("Sodium"), "{recipe}");
        visit.go("#/week/lunch-2026-11-30").await?;
        visit.click(".save-as summary").await?;
        visit.click("#save-week-figures").await?;
        let book = demo::book();
        let mut weeks = book.weeks.iter();
        let week = weeks.find(|week| week.id.0 == "lunch-2026-11-30");
        let title = plain(&week.expect("a week of the demo").title);
        let averages = visit.saved_file(&format!("{title}-nutrients.csv")).await?;
        assert!(averages.contains("K-5"), "{averages}");
        Ok(())
    });
}

#[test]
fn a_stored_text_that_is_no_book_stays_until_a_person_decides() {
    let text = r#"{"book": "torn"#;
    journey("unreadable", async |visit| {
        visit.open("#/about").await?;
        store(visit, text).await?;
        visit.reload().await?;
        visit
            .see_words("[data-test=save-problem]", "left as it is")
            .await?;

        visit.type_over("#office", "Fernhill kitchen").await?;
        visit.click("#save-unreadable").await?;
        assert_eq!(visit.saved_file("unreadable-book.json").await?, text);
        assert_eq!(stored(visit, "gramwright.book").await?, text);

        visit.click("#put-aside").await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        assert_eq!(stored(visit, "gramwright.book.unreadable.1").await?, text);
        visit.reload().await?;
        visit.see_values("#office", &["Fernhill kitchen"]).await?;
        visit.see("[data-test=save-problem]", &[]).await
    });
}

#[test]
fn two_tabs_do_not_overwrite_each_other() {
    journey("tabs", async |visit| {
        visit.open("#/about").await?;
        let first = visit.browser.window().await?;
        let second = visit.browser.new_tab().await?;
        visit.browser.switch_to_window(second).await?;
        visit.open("#/about").await?;
        visit.type_over("#office", "Second kitchen").await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;

        visit.browser.switch_to_window(first).await?;
        visit.type_over("#office", "First kitchen").await?;
        visit
            .see_words("[data-test=save-problem]", "Another tab")
            .await?;
        visit.see("#save-state", &["Not saved"]).await?;
        assert!(
            stored(visit, "gramwright.book")
                .await?
                .contains("Second kitchen")
        );
        visit.click("#take-other").await?;
        visit.see_values("#office", &["Second kitchen"]).await?;
        visit.click("#undo").await?;
        visit.see_values("#office", &["First kitchen"]).await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        assert!(
            stored(visit, "gramwright.book")
                .await?
                .contains("First kitchen")
        );
        Ok(())
    });
}

async fn store(visit: &Visit, text: &str) -> WebDriverResult<()> {
    visit
        .ask(
            "localStorage.setItem('gramwright.book', arguments[0])",
            text,
        )
        .await
}

async fn stored(visit: &Visit, key: &str) -> WebDriverResult<String> {
    visit
        .ask("return localStorage.getItem(arguments[0])", key)
        .await
}

/// Takes the last change back and, before it can have been stored, does it again.
const BACK_AND_FORTH: &str = "
    document.querySelector('#undo').click();
    setTimeout(() => document.querySelector('#redo').click(), 50);
    return arguments[0];";

#[test]
fn a_change_taken_back_and_done_again_is_stored() {
    journey("storing", async |visit| {
        visit.open("#/about").await?;
        visit
            .see("#save-state", &["Example book, not saved yet"])
            .await?;
        visit.type_over("#office", "Fernhill kitchen").await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;

        visit.ask::<String>(BACK_AND_FORTH, "").await?;
        visit.see("#redo:disabled", &["Redo"]).await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        visit.see_values("#office", &["Fernhill kitchen"]).await
    });
}
