//! The office makes the page for families, of a dish and of a week, by keyboard alone: in two
//! languages, on paper, and as one file that needs nothing else.

use crate::access::{load_rules, obstacles};
use crate::reckon::{CALORIES, per_serving};
use crate::visit::{Paper, Screen, Visit, journey, journey_in};
use gramwright_tests::demo;
use std::env;
use std::fs;
use std::path::PathBuf;
use std::process;
use thirtyfour::prelude::*;

/// A recipe of the demo book with wheat, milk and egg in its words, and its servings.
const ROLL: (&str, i128) = ("turkey-on-a-roll", 25);

const WEEK: &str = "lunch-2026-11-30";

/// English and Spanish names on the panel: 21 CFR 101.9(c) and (d), and what bilingual labels in
/// the United States usually say; common practice, no source at hand.
const NAMES: [(&str, &str); 15] = [
    ("Nutrition Facts", "Datos de Nutrición"),
    ("Serving size", "Tamaño por ración"),
    ("Calories", "Calorías"),
    ("Total Fat", "Grasa Total"),
    ("Saturated Fat", "Grasa Saturada"),
    ("Trans Fat", "Grasa Trans"),
    ("Cholesterol", "Colesterol"),
    ("Sodium", "Sodio"),
    ("Total Carbohydrate", "Carbohidrato Total"),
    ("Dietary Fiber", "Fibra Dietética"),
    ("Protein", "Proteínas"),
    ("Calcium", "Calcio"),
    ("Iron", "Hierro"),
    ("Potassium", "Potasio"),
    ("% Daily Value", "% Valor Diario"),
];

/// Answers of the allergen screen that the words of the sandwich give by themselves.
const NAMED: [(&str, &str); 3] = [("wheat", "trigo"), ("milk", "leche"), ("egg", "huevo")];

/// A folder that goes with the journey.
struct Folder(PathBuf);

impl Folder {
    fn new(name: &str) -> Self {
        let path = env::temp_dir().join(format!("gramwright-saved-{}-{name}", process::id()));
        fs::create_dir_all(&path).expect("a folder of its own");
        // Browsers ask every server for it.
        fs::write(path.join("favicon.ico"), "").expect("a folder of its own");
        Self(path)
    }
}

impl Drop for Folder {
    fn drop(&mut self) {
        // It may be gone already.
        drop(fs::remove_dir_all(&self.0));
    }
}

#[test]
fn a_dish_for_families_is_read_printed_and_sent() {
    let folder = Folder::new("families");
    journey("families", async |visit| {
        visit.open("").await?;
        visit
            .tab_to(&format!("[data-recipe={}] [data-test=recipe-link]", ROLL.0))
            .await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#to-families").await?;
        visit.press(Key::Enter).await?;
        see_both_languages(visit).await?;
        see_allergens(visit).await?;
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            let pages = pdf.pages();
            assert_eq!(pages.len(), 2, "{paper:?}: a page for each language");
            assert!(pages.iter().all(|page| paper.has_size(*page)), "{pages:?}");
            let texts = pdf.page_texts();
            for (english, spanish) in NAMES {
                see_words_of(english, &texts[0]);
                see_words_of(spanish, &texts[1]);
            }
        }

        visit.look_with(Screen::Phone).await?;
        visit.see_no_sideways_scrolling().await?;
        visit.screenshot("phone").await?;
        visit.look_with(Screen::Desktop).await?;

        // One language only.
        visit.tab_to("#family-tongues").await?;
        visit.press("Esp").await?;
        visit.see_words("#family-paper h1", "").await?;
        visit.see("#family-paper [lang=en-US]", &[]).await?;
        visit.tab_to("#save-page").await?;
        visit.press(Key::Enter).await?;
        let name = format!("{}-families.html", plain_title());
        let file = visit.saved_file(&name).await?;
        for elsewhere in ["<script", "<link", "@import", "http://", "https://", "url("] {
            assert!(
                !file.contains(elsewhere),
                "the file needs nothing: {elsewhere}"
            );
        }
        fs::write(folder.0.join("families.html"), file).expect("a folder of its own");
        Ok(())
    });
    journey_in(&folder.0, "families-file", async |visit| {
        visit.go("families.html").await?;
        visit.see("html[lang=es-US] h1", &[&title()]).await?;
        for presence in ["contains", "may", "not-named"] {
            visit
                .element(&format!("[data-test=family-{presence}]"))
                .await?;
        }
        visit
            .see_words("[data-test=family-panel]", "Grasa Total")
            .await?;
        load_rules(visit).await?;
        let found = obstacles(visit, "the file for families").await?;
        assert!(found.is_empty(), "{}", found.join("\n"));
        visit.look_with(Screen::Phone).await?;
        visit.see_no_sideways_scrolling().await?;
        visit.screenshot("phone").await
    });
}

#[test]
fn what_is_decided_about_a_label_holds_for_families() {
    journey("families-label", async |visit| {
        let facts = format!("#/recipe/{}/facts", ROLL.0);
        let families = format!("#/recipe/{}/families", ROLL.0);
        visit.open(&facts).await?;
        visit
            .choose("#form", "side by side, for small packages")
            .await?;
        visit
            .choose(
                "#content-rows",
                "without those that may be left out for their small amounts",
            )
            .await?;
        visit.click("[data-test=facts-also] summary").await?;
        visit.click("#also-401").await?;
        visit.go(&families).await?;
        visit
            .element("[data-test=family-panel].facts-tabular")
            .await?;
        let spanish = "section[lang=es-US] [data-test=family-panel]";
        visit.see_words(spanish, "Vitamina C").await?;
        visit.see_words(spanish, "No es una fuente").await?;
        visit.screenshot("tabular").await?;
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            assert_eq!(pdf.pages().len(), 2, "{paper:?}: a page for each language");
        }
        load_rules(visit).await?;
        let mut found = obstacles(visit, "side by side").await?;
        visit.look_with(Screen::Phone).await?;
        visit.see_no_sideways_scrolling().await?;
        visit.look_with(Screen::Desktop).await?;

        visit.go(&facts).await?;
        visit
            .choose("#form", "running text, for the smallest packages")
            .await?;
        visit.go(&families).await?;
        visit
            .element("[data-test=family-panel].facts-linear")
            .await?;
        visit.see_words(spanish, "% VD)").await?;
        visit.screenshot("linear").await?;
        found.extend(obstacles(visit, "running text").await?);
        assert!(found.is_empty(), "{}", found.join("\n"));
        Ok(())
    });
}

#[test]
fn a_week_for_families_is_read_printed_and_sent() {
    let folder = Folder::new("families-week");
    let dishes = dishes_by_day();
    journey("families-week", async |visit| {
        visit.open("#/weeks").await?;
        visit
            .tab_to(&format!("[data-test=week-link][href='#/week/{WEEK}']"))
            .await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#to-families").await?;
        visit.press(Key::Enter).await?;
        visit
            .element("section[lang=es-US] [data-test=family-dish]")
            .await?;
        let rows = visit
            .texts("section[lang=en-US] [data-test=family-dish] th")
            .await?;
        assert_eq!(rows.len(), dishes.len(), "each dish of each day once");
        for (row, dish) in rows.iter().zip(&dishes) {
            assert!(row.starts_with(dish), "{row} for {dish}");
        }
        visit
            .see_words(
                "section[lang=es-US] .family-day:first-of-type h2",
                "lunes, 30 de noviembre de 2026",
            )
            .await?;
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            let pages = pdf.pages();
            assert!(pages.iter().all(|page| paper.has_size(*page)), "{pages:?}");
            let text = pdf.text();
            for dish in &dishes {
                see_words_of(dish, &text);
            }
            for caution in ["does not prove", "No prueba"] {
                see_words_of(caution, &text);
            }
        }
        visit.look_with(Screen::Phone).await?;
        visit.see_no_sideways_scrolling().await?;
        visit.screenshot("phone").await?;
        visit.look_with(Screen::Desktop).await?;
        visit.tab_to("#save-page").await?;
        visit.press(Key::Enter).await?;
        let title = week_title().to_lowercase();
        let words: Vec<&str> = title
            .split(|c: char| !c.is_alphanumeric())
            .filter(|word| !word.is_empty())
            .collect();
        let name = format!("{}-families.html", words.join("-"));
        let file = visit.saved_file(&name).await?;
        fs::write(folder.0.join("week.html"), file).expect("a folder of its own");
        Ok(())
    });
    journey_in(&folder.0, "families-week-file", async |visit| {
        visit.go("week.html").await?;
        visit.element("[data-test=family-panel]").await?;
        load_rules(visit).await?;
        let found = obstacles(visit, "the week's file for families").await?;
        assert!(found.is_empty(), "{}", found.join("\n"));
        Ok(())
    });
}

fn title() -> String {
    let book = demo::book();
    let recipe = book.recipes.iter().find(|recipe| recipe.id.0 == ROLL.0);
    recipe.expect("a recipe of the demo").title.clone()
}

fn plain_title() -> String {
    let title = title().to_lowercase();
    title.replace(|c: char| !c.is_alphanumeric(), "-")
}

fn week_title() -> String {
    let book = demo::book();
    let week = book.weeks.iter().find(|week| week.id.0 == WEEK);
    week.expect("a week of the demo").title.clone()
}

/// Titles of what is planned, day by day; what several grades get on a day is there once.
fn dishes_by_day() -> Vec<String> {
    let book = demo::book();
    let week = book.weeks.iter().find(|week| week.id.0 == WEEK);
    let week = week.expect("a week of the demo");
    let mut titles = Vec::new();
    for day in &week.days {
        let mut of_day: Vec<String> = Vec::new();
        for choice in day.meals.iter().flat_map(|meal| meal.choices()) {
            let recipe = book.recipe(&choice.recipe).expect("a recipe of the demo");
            if !of_day.contains(&recipe.title) && !choice.planned.servings().is_zero() {
                of_day.push(recipe.title.clone());
            }
        }
        titles.extend(of_day);
    }
    titles
}

/// On paper a phrase may be broken over lines that stand beside others: each of its words is there.
fn see_words_of(phrase: &str, paper: &str) {
    for word in phrase.split_whitespace() {
        assert!(paper.contains(word), "{word} of “{phrase}”: {paper}");
    }
}

async fn see_both_languages(visit: &Visit) -> WebDriverResult<()> {
    let lines = &demo::lines_read_by_hand()[ROLL.0];
    // Above 50 calories to the nearest 10: 21 CFR 101.9(c)(1).
    let calories = per_serving(lines, CALORIES, ROLL.1).to_nearest(10);
    assert!(calories > 50, "the rule above holds");
    let calories = calories.to_string();
    visit
        .see("[data-test=family-calories]", &[&calories, &calories])
        .await?;
    for (tongue, at) in [("en-US", 0), ("es-US", 1)] {
        let css = format!("section[lang={tongue}] [data-test=family-panel]");
        let text = visit.see_words(&css, "").await?;
        for (english, spanish) in NAMES {
            let name = [english, spanish][at];
            assert!(text.contains(name), "{name}: {text}");
        }
    }
    Ok(())
}

async fn see_allergens(visit: &Visit) -> WebDriverResult<()> {
    for (tongue, at) in [("en-US", 0), ("es-US", 1)] {
        let css = format!("section[lang={tongue}] [data-test=family-contains]");
        let text = visit.see_words(&css, "").await?;
        for (english, spanish) in NAMED {
            let name = [english, spanish][at];
            assert!(text.contains(name), "{name}: {text}");
        }
    }
    let cautions = visit.texts("#family-paper .family-caution").await?;
    for words in [
        "does not prove",
        "read the label of each product",
        "physician",
        "No prueba",
        "lea la etiqueta de cada producto",
        "No dosifique la insulina",
    ] {
        assert!(
            cautions.iter().any(|caution| caution.contains(words)),
            "{words}: {cautions:#?}"
        );
    }
    Ok(())
}
