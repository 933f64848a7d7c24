//! A cook cuts the sodium: from the heavy line to what else could go there, the figures moving at
//! once in a serving and in the week, both versions kept, compared and printed; all by keyboard.

use crate::access::{load_rules, obstacles};
use crate::card::{difference, see_changes, see_figures};
use crate::reckon::{SODIUM, line, per_serving};
use crate::visit::{Paper, Visit, journey};
use crate::week::{LUNCHES, Lunches, Recipes};
use gramwright_tests::demo;
use gramwright_tests::sql::CountedIn::Measure;
use gramwright_tests::sql::PeerLine;
use thirtyfour::prelude::*;

/// A recipe of the demo book, and its servings.
const CHILI: (&str, i128) = ("beef-and-bean-chili", 100);

/// Its line of salt, by index, as it stands, and with a quarter less: 5/2 × 3/4 = 15/8.
const SALT: (usize, &str, &str) = (11, "2 1/2 tbsp salt", "1 7/8 tbsp salt");

/// What a kitchen can do with salt: `nutrient-data/kitchen/moves.csv`.
const A_QUARTER_LESS: &str = "a quarter less of it";

/// 7 CFR 210.10(f)(3) for K-5, which the week misses with either.
const STAYS_MISSED: &str = "Lunches, week of November 30, Lunch for K-5: weekly average of sodium (at most 1,110 mg): stays missed";

const VERSION: &str = "as served in fall";

/// The chili as it stands and with less salt: tests/data/demo_lines.csv as a person reads the lines.
/// "Salt, table" has the tablespoon as its second measure.
fn chili() -> (Vec<PeerLine>, Vec<PeerLine>) {
    let before = demo::lines_read_by_hand()[CHILI.0].clone();
    let mut after = before.clone();
    after[SALT.0] = line(2047, (15, 8), Measure(2));
    (before, after)
}

/// "1,144 → 1,130 mg (−14)": a figure before and after, as the page prints it.
fn moved(before: &str, after: &str) -> String {
    let change = difference(before, after);
    format!("{before} → {after} mg ({change})")
}

fn sodium_of_serving(lines: &[PeerLine]) -> String {
    per_serving(lines, SODIUM, CHILI.1).printed(0)
}

fn sodium_of_lunch(lines: &[PeerLine]) -> String {
    let recipes = Recipes::of_demo().with(CHILI.0, lines);
    let printed = Lunches::of_children().sodium_with(&recipes);
    printed.trim_end_matches(" mg").to_owned()
}

#[test]
fn a_cook_cuts_the_sodium_by_keyboard() {
    let (before, after) = chili();
    journey("sodium", async |visit| {
        visit.open("").await?;
        press_on(
            visit,
            &format!("[data-recipe={}] [data-test=recipe-link]", CHILI.0),
        )
        .await?;
        see_figures(visit, "", &before, CHILI.1).await?;
        keep_a_version(visit).await?;

        // From the line that carries the sodium.
        let way = format!(
            "[data-test=carriers] [data-test=swap-way][data-line='{}']",
            SALT.0
        );
        press_on(visit, &way).await?;
        visit.see_keyboard_on("#close-swaps").await?;
        visit.see("[data-test=old-line]", &[SALT.1]).await?;
        let less = proposal(visit, A_QUARTER_LESS).await?;
        visit
            .see(&format!("{less} [data-test=new-line]"), &[SALT.2])
            .await?;
        let serving = moved(&sodium_of_serving(&before), &sodium_of_serving(&after));
        let of_serving = format!("{less} [data-nutrient='307'] [data-test=serving-move]");
        visit.see(&of_serving, &[&serving]).await?;
        let lunch = moved(&sodium_of_lunch(&before), &sodium_of_lunch(&after));
        let of_children = format!("lunch for K-5: Sodium {lunch}");
        let weeks = format!("{less} [data-test=week-move]");
        let told = |texts: &Vec<String>| texts.iter().any(|text| text.ends_with(&of_children));
        visit
            .wait_until(&of_children, || visit.texts(&weeks), told)
            .await?;

        // That is not enough for the children's limit, and breaks no other.
        visit
            .see(&format!("{less} [data-test=week-verdict]"), &[STAYS_MISSED])
            .await?;

        see_tried(visit, &less, &before, &after).await?;
        visit
            .see(
                "[data-test=tried] [data-test=week-verdict]",
                &[STAYS_MISSED],
            )
            .await?;
        load_rules(visit).await?;
        let mut found = obstacles(visit, "what else could go here").await?;
        visit.screenshot("tried").await?;

        visit.tab_back_to("[data-test=take-tried]").await?;
        visit.press(Key::Enter).await?;
        visit
            .see_keyboard_on(&format!("#swap-way-{}", SALT.0))
            .await?;
        see_figures(visit, "", &after, CHILI.1).await?;
        see_changes(visit, &before, &after, CHILI.1).await?;
        see_used(visit, &lunch).await?;
        see_undone_after_reload(visit, &before, &after).await?;

        load_rules(visit).await?;
        found.extend(see_versions(visit, &before, &after).await?);
        assert!(found.is_empty(), "obstacles:\n{}", found.join("\n"));
        go_back_to_the_version(visit, &before).await
    });
}

/// Goes to an element by Tab, and presses Enter there.
async fn press_on(visit: &Visit, css: &str) -> WebDriverResult<()> {
    visit.tab_to(css).await?;
    visit.press(Key::Enter).await
}

async fn keep_a_version(visit: &Visit) -> WebDriverResult<()> {
    press_on(visit, "#to-versions").await?;
    visit.see_keyboard_on("#content").await?;
    visit.tab_to("#version-name").await?;
    visit.type_text(VERSION).await?;
    visit.press(Key::Enter).await?;
    visit.see("[data-test=version] strong", &[VERSION]).await?;
    visit.tab_back_to("[data-test=back-to-card]").await?;
    visit.press(Key::Enter).await?;
    visit.see_keyboard_on("#content").await
}

/// The proposal with this title, once it is found.
async fn proposal(visit: &Visit, title: &str) -> WebDriverResult<String> {
    let titles = || visit.texts("[data-test=proposal-title]");
    let has = |titles: &Vec<String>| titles.iter().any(|one| one == title);
    let titles = visit.wait_until(title, titles, has).await?;
    let at = titles.iter().position(|one| one == title);
    Ok(format!(
        "[data-test=proposal][data-at='{}']",
        at.unwrap_or_default()
    ))
}

/// Trying moves the figures beside those of the card, and nothing else.
async fn see_tried(
    visit: &Visit,
    proposal: &str,
    before: &[PeerLine],
    after: &[PeerLine],
) -> WebDriverResult<()> {
    press_on(visit, &format!("{proposal} [data-test=try]")).await?;
    let (left, right) = (sodium_of_serving(before), sodium_of_serving(after));
    let row = "[data-test=tried] [data-test=two-figures] [data-nutrient='307']";
    visit
        .see(&format!("{row} [data-test=two-left]"), &[&left])
        .await?;
    visit
        .see(&format!("{row} [data-test=two-right]"), &[&right])
        .await?;
    let change = difference(&left, &right);
    visit
        .see(&format!("{row} [data-test=two-change]"), &[&change])
        .await?;
    let week = format!(
        "[data-test=tried] [data-week={LUNCHES}] [data-service='lunch K-5'] [data-nutrient='307']"
    );
    let lunch = moved(&sodium_of_lunch(before), &sodium_of_lunch(after));
    visit.see(&week, &[&lunch]).await?;
    see_figures(visit, "", before, CHILI.1).await
}

/// The card tells which week serves it, and what has moved there.
async fn see_used(visit: &Visit, lunch: &str) -> WebDriverResult<()> {
    let weeks = "[data-test=used-in]";
    visit.see(weeks, &["Lunches, week of November 30"]).await?;
    press_on(visit, "[data-test=moved-since] summary").await?;
    let cell = format!(
        "[data-test=used] [data-week={LUNCHES}] [data-service='lunch K-5'] [data-nutrient='307']"
    );
    visit.see(&cell, &[lunch]).await
}

/// The page is loaded again, and the steps are there.
async fn see_undone_after_reload(
    visit: &Visit,
    before: &[PeerLine],
    after: &[PeerLine],
) -> WebDriverResult<()> {
    visit.see("#save-state", &["Saved in this browser"]).await?;
    visit.reload().await?;
    see_figures(visit, "", after, CHILI.1).await?;
    press_on(visit, "#undo").await?;
    see_figures(visit, "", before, CHILI.1).await?;
    visit.see("#save-state", &["Saved in this browser"]).await?;
    visit.reload().await?;
    see_figures(visit, "", before, CHILI.1).await?;
    press_on(visit, "#redo").await?;
    see_changes(visit, before, after, CHILI.1).await?;
    for paper in [Paper::Letter, Paper::A4] {
        let pdf = visit.print_pdf("card", paper).await?;
        assert!(pdf.pages().iter().all(|page| paper.has_size(*page)));
        let text = pdf.text();
        assert!(text.contains(SALT.2) && !text.contains(SALT.1), "{text}");
    }
    Ok(())
}

/// Both versions side by side, on the screen and on paper.
async fn see_versions(
    visit: &Visit,
    before: &[PeerLine],
    after: &[PeerLine],
) -> WebDriverResult<Vec<String>> {
    press_on(visit, "#to-versions").await?;
    let named = format!("“{VERSION}”");
    let heads = "[data-test=two-figures] thead th:not(:first-child)";
    visit
        .see(heads, &[&named, "As it stands", "Change"])
        .await?;
    let (left, right) = (sodium_of_serving(before), sodium_of_serving(after));
    let change = difference(&left, &right);
    let row = "[data-test=two-figures] [data-nutrient='307'] td";
    visit.see(row, &[&left, &right, &change]).await?;
    let differs = "[data-test=two-lines] .differs td:nth-child(1)";
    visit.see(differs, &[SALT.1]).await?;
    visit
        .see("[data-test=two-lines] .differs td:nth-child(4)", &[SALT.2])
        .await?;
    visit.screenshot("versions").await?;
    for paper in [Paper::Letter, Paper::A4] {
        let pdf = visit.print_pdf("versions", paper).await?;
        let pages = pdf.pages();
        assert!(!pages.is_empty() && pages.len() <= 3, "{pages:?}");
        assert!(pages.iter().all(|page| paper.has_size(*page)), "{pages:?}");
        let text = pdf.text();
        for words in [SALT.1, SALT.2, &left, &right, VERSION] {
            assert!(text.contains(words), "{paper:?}: {words}: {text}");
        }
    }
    // The arrow keys choose another form: as last kept, which is the same.
    visit.tab_to("#left-form").await?;
    visit.press(Key::Up).await?;
    visit
        .see(heads, &["As last kept", "As it stands", "Change"])
        .await?;
    visit.see(row, &[&left, &right, &change]).await?;
    obstacles(visit, "versions").await
}

async fn go_back_to_the_version(visit: &Visit, before: &[PeerLine]) -> WebDriverResult<()> {
    press_on(visit, "[data-test=go-back-to]").await?;
    visit.tab_back_to("[data-test=back-to-card]").await?;
    visit.press(Key::Enter).await?;
    see_figures(visit, "", before, CHILI.1).await?;
    visit.see("[data-test^=change-]", &[]).await
}
