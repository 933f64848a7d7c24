//! Another language, one field for everything, help beside a figure, and the guided use: all by
//! keyboard alone. What is seen is compared with the language files.

use crate::visit::{Visit, journey};
use gramwright_tests::fixtures;
use std::fs;
use std::path::Path;
use thirtyfour::prelude::*;

/// A message without arguments, from the Spanish file.
fn spanish(key: &str) -> String {
    let (name, _) = key.split_once('-').expect("a key begins with its file");
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../web/language/es");
    let text = fs::read_to_string(folder.join(format!("{name}.ftl"))).expect("the file");
    let start = format!("{key} = ");
    let line = text.lines().find_map(|line| line.strip_prefix(&start));
    line.unwrap_or_else(|| panic!("{key} is not in es/{name}.ftl"))
        .to_owned()
}

#[test]
fn a_person_works_in_spanish_by_keyboard() {
    journey("tongue", async |visit| {
        visit.open("").await?;
        visit.tab_to("#language").await?;
        visit.press(Key::Down).await?;
        visit.element("html[lang=es-US]").await?;
        visit.see("h1", &[&spanish("recipe-title")]).await?;
        visit.see_keyboard_on("#language").await?;

        // The field by its shortcut; the arrow chooses, Enter opens.
        visit.press(Key::Control + "k").await?;
        visit.see_keyboard_on("#find-anything").await?;
        visit.press("chili").await?;
        let recipe = "#find-anything-list [data-key='#/recipe/beef-and-bean-chili']";
        visit.see_words(recipe, &spanish("find-recipe")).await?;
        visit.press(Key::Down).await?;
        visit
            .element(&format!("{recipe}[aria-selected=true]"))
            .await?;
        visit.press(Key::Enter).await?;
        visit.element("[data-figure=sodium]").await?;
        visit.see("#figures", &[&spanish("recipe-figures")]).await?;

        // The help of a figure opens and closes where the keyboard is.
        visit.tab_to("[data-topic=sodium] button").await?;
        visit.press(Key::Enter).await?;
        let help = "[data-topic=sodium] .help-text:popover-open";
        visit.see_words(help, &spanish("help-sodium-how")).await?;
        visit
            .see_words(help, &spanish("help-sodium-source"))
            .await?;
        visit.screenshot("help").await?;
        visit.press(Key::Escape).await?;
        visit.see(help, &[]).await?;

        // The choice holds when the page is loaded again.
        visit.reload().await?;
        visit.see("#figures", &[&spanish("recipe-figures")]).await?;
        visit.screenshot("card").await?;
        visit.go("#/week/lunch-2026-11-30").await?;
        let missed = "[data-service='lunch K-5'] [data-test=finding][data-verdict=Missed]";
        let sodium = spanish("table-weekly-average-of-sodium");
        visit
            .see(&format!("{missed} .finding-what dd"), &[&sodium])
            .await?;
        visit.screenshot("week").await
    });
}

/// Texts on the page that are descriptions of the dataset and are not marked as English.
const UNMARKED: &str = r##"
const descriptions = new Set(JSON.parse(arguments[0]));
const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
const unmarked = [];
while (texts.nextNode()) {
  const text = texts.currentNode.data.trim();
  const place = texts.currentNode.parentElement;
  if (descriptions.has(text) && !place.closest("[lang]").lang.startsWith("en"))
    unmarked.push(`${text} in ${place.tagName}.${place.className}`);
}
return unmarked;
"##;

/// Waits for what shows a description that is marked, and sees none there that is not.
async fn see_english_marked(visit: &Visit, marked: &str) -> WebDriverResult<()> {
    visit.element(marked).await?;
    let foods = fixtures::foods().foods().iter();
    let descriptions: Vec<&str> = foods.map(|food| food.description.as_str()).collect();
    let descriptions = serde_json::to_string(&descriptions).expect("texts");
    let unmarked: Vec<String> = visit.ask(UNMARKED, &descriptions).await?;
    assert!(unmarked.is_empty(), "{marked}: {unmarked:#?}");
    Ok(())
}

#[test]
fn the_datasets_english_is_marked_in_spanish() {
    journey("tongue-marks", async |visit| {
        visit.open("").await?;
        visit.tab_to("#language").await?;
        visit.press(Key::Down).await?;
        visit.element("html[lang=es-US]").await?;

        visit.go("#/recipe/beef-and-bean-chili").await?;
        visit.tab_to("#ingredients").await?;
        visit.press(Key::Control + Key::Home).await?;
        visit.press(Key::Tab).await?;
        visit.see_keyboard_on("#reading-0").await?;
        visit.press(Key::Enter).await?;
        see_english_marked(visit, "#correction-food-list [lang=en]").await?;
        see_english_marked(visit, "[data-test=reading-food][lang=en]").await?;

        visit.go("#/recipe/beef-and-bean-chili/line/1").await?;
        see_english_marked(visit, "[data-test=proposal-title] [lang=en]").await?;

        visit.go("#/foods").await?;
        visit.tab_to("#find-food").await?;
        visit.type_text("milk").await?;
        see_english_marked(visit, "#find-food-list [lang=en]").await?;

        visit.press(Key::Control + "k").await?;
        visit.see_keyboard_on("#find-anything").await?;
        visit.type_text("milk").await?;
        see_english_marked(visit, "#find-anything-list [lang=en]").await?;

        visit.go("#/week/lunch-2026-11-30/review").await?;
        see_english_marked(visit, "[data-test=review-food] [lang=en]").await?;
        visit.go("#/buying/lunch-2026-11-30/2026-12-03").await?;
        see_english_marked(visit, "[data-test=to-buy] [lang=en]").await
    });
}

#[test]
fn weeks_foods_and_views_are_found_in_one_field() {
    journey("find", async |visit| {
        visit.open("").await?;
        for (typed, address) in [
            ("lunches", "#/week/lunch-2026-11-30"),
            ("rules", "#/rules"),
            ("milk lowfat 1%", "#/food/SR28%3A01082"),
        ] {
            visit.press(Key::Control + "k").await?;
            visit.see_keyboard_on("#find-anything").await?;
            visit.press(typed).await?;
            let pick = format!("#find-anything-list [data-key='{address}']");
            visit.element(&pick).await?;
            for _ in 0..20 {
                visit.press(Key::Down).await?;
                let at = format!("return document.querySelector(\"{pick}\").ariaSelected");
                if visit.ask::<Option<String>>(&at, "").await?.as_deref() == Some("true") {
                    break;
                }
            }
            visit.press(Key::Enter).await?;
            let here = || visit.ask::<String>("return location.hash", "");
            visit
                .wait_until(address, here, |here| here == address)
                .await?;
        }
        Ok(())
    });
}

#[test]
fn the_guided_use_is_left_and_gone_on_with() {
    journey("guide", async |visit| {
        visit.open("").await?;
        visit.tab_to("#guide-begin").await?;
        visit.press(Key::Enter).await?;
        visit.see_keyboard_on("#guide-heading").await?;
        visit.screenshot("step").await?;
        visit.tab_to("#guide-next").await?;
        visit.press(Key::Enter).await?;
        visit.element("[data-figure=sodium]").await?;
        visit.see_keyboard_on("#guide-heading").await?;

        visit.tab_to("#guide-leave").await?;
        visit.press(Key::Enter).await?;
        visit.see("[data-test=guide]", &[]).await?;
        visit.see_keyboard_on("#content").await?;
        visit.reload().await?;
        visit.tab_to("#guide-again").await?;
        visit.press(Key::Enter).await?;
        visit.see_words("#guide-heading", "Step 2 of 6").await?;
        for _ in 2..6 {
            visit.tab_to("#guide-next").await?;
            visit.press(Key::Enter).await?;
            visit.see_keyboard_on("#guide-heading").await?;
        }
        visit.element("#office").await?;
        visit.tab_to("#guide-empty").await?;
        visit.press(Key::Enter).await?;
        visit.see("[data-test=guide]", &[]).await?;
        visit.see_keyboard_on("#content").await?;
        visit.see("[data-test=recipe-row]", &[]).await?;
        visit.see_words("[data-test=told]", "Undo").await?;
        Ok(())
    });
}
