//! The main job: a recipe as a kitchen writes it, read, weighed and added up without a network.

use crate::card::see_figures;
use crate::reckon::line;
use crate::visit::{Screen, Visit, journey};
use gramwright_tests::sql::CountedIn::{Mass, Measure};
use gramwright_tests::sql::PeerLine;
use thirtyfour::prelude::*;

/// Servings of the recipe.
const SERVINGS: i128 = 24;

/// A line of the card, the weight that stands beside it or is given to it, and what is meant by it.
type Line = (&'static str, &'static str, PeerLine);

/// The foods and measures of SR28 that are meant: "Ground turkey, raw"; "Onions, raw", cup, chopped
/// (160 g); "Celery, raw", cup chopped (101 g); "Oil, canola", cup (218 g); "Spices, chili powder",
/// tbsp (8.0 g); "Garlic, raw", 3 cloves (9.0 g); "Rice, brown, long-grain, raw".
#[rustfmt::skip]
const CARD: [Line; 7] = [
    ("4 lb 8 oz ground turkey, raw", "2,041 g", line(5305, (72, 1), Mass("oz"))),
    ("3 1/2 cups onions, chopped", "560 g", line(11282, (7, 2), Measure(1))),
    ("2¼ cups celery, chopped", "227 g", line(11143, (9, 4), Measure(1))),
    ("1/3 cup canola oil", "72.7 g", line(4582, (1, 3), Measure(2))),
    ("3 tbsp chili powder", "24.0 g", line(2009, (3, 1), Measure(2))),
    ("12 cloves garlic, minced", "36.0 g", line(11215, (12, 1), Measure(4))),
    ("1½ lb brown rice, long-grain, dry", "680 g", line(20036, (3, 2), Mass("lb"))),
];

/// A line that says only vaguely how much, of "Salt, table".
const VAGUE: Line = ("salt, to taste", "40", line(2047, (40, 1), Mass("g")));

/// A line by a unit that SR28 does not have for its food, "Lemon juice, raw".
const WRONG_UNIT: Line = (
    "2 bottles lemon juice",
    "500",
    line(9152, (500, 1), Mass("g")),
);

#[test]
fn a_recipe_is_analysed_without_a_network() {
    journey("main-job", async |visit| main_job(visit).await);
}

#[test]
fn a_recipe_is_analysed_without_a_network_on_a_phone() {
    journey("main-job-phone", async |visit| {
        visit.look_with(Screen::Phone).await?;
        main_job(visit).await
    });
}

async fn main_job(visit: &mut Visit) -> WebDriverResult<()> {
    visit.open("").await?;
    visit.wait_until_kept().await?;
    visit.cut_network().await?;

    visit.click("#new-recipe").await?;
    visit.type_over("#title", "Turkey chili with rice").await?;
    visit.type_over("#servings", &SERVINGS.to_string()).await?;
    write_card(visit).await?;
    see_readings(visit).await?;
    visit.screenshot("read").await?;

    let mut known = CARD.map(|line| line.2).to_vec();
    see_figures(visit, "≥ ", &known, SERVINGS).await?;
    visit
        .see_words(".figures", "2 lines are not known and not counted")
        .await?;

    weigh(visit, &VAGUE, 1).await?;
    known.push(VAGUE.2);
    see_figures(visit, "≥ ", &known, SERVINGS).await?;
    weigh(visit, &WRONG_UNIT, 0).await?;
    known.push(WRONG_UNIT.2);
    see_figures(visit, "", &known, SERVINGS).await?;
    visit.screenshot("complete").await?;

    // The browser has stored it; the worker gives the page again.
    visit.see("#save-state", &["Saved in this browser"]).await?;
    visit.open("").await?;
    visit
        .click("[data-test=recipe-link][href='#/recipe/new-recipe']")
        .await?;
    visit
        .see_values("#title", &["Turkey chili with rice"])
        .await?;
    see_figures(visit, "", &known, SERVINGS).await
}

/// Types the first two lines and pastes the others.
async fn write_card(visit: &Visit) -> WebDriverResult<()> {
    let lines: Vec<&str> = CARD.iter().map(|line| line.0).collect();
    visit.click("#ingredients").await?;
    visit.press(format!("{}\n{}\n", lines[0], lines[1])).await?;
    let rest = [&lines[2..], &[VAGUE.0, WRONG_UNIT.0]].concat();
    visit.paste(&rest.join("\n")).await
}

/// Every line is weighed, or says why it is not.
async fn see_readings(visit: &Visit) -> WebDriverResult<()> {
    let mut grams: Vec<&str> = CARD.iter().map(|line| line.1).collect();
    grams.extend(["", ""]);
    visit.see("[data-test=reading-grams]", &grams).await?;
    let how = visit.texts("[data-test=reading-how]").await?;
    let [vague, wrong] = [&how[CARD.len()], &how[CARD.len() + 1]];
    assert!(vague.contains("to taste"), "{vague}");
    assert!(wrong.contains("bottle"), "{wrong}");
    Ok(())
}

/// Weighs an open line, of which `left` stay open.
async fn weigh(visit: &Visit, open: &Line, left: usize) -> WebDriverResult<()> {
    let (text, grams, _) = open;
    let open = visit.texts("[data-test=to-settle]").await?;
    let place = open.iter().position(|line| line.starts_with(*text));
    let place = place.unwrap_or_else(|| panic!("{text} is not among {open:#?}")) + 1;
    visit
        .click(&format!("[data-test=to-settle]:nth-child({place}) button"))
        .await?;
    visit
        .type_over("[data-test=correction-weight]", grams)
        .await?;
    visit.click("[data-test=correction-close]").await?;
    let count = async || Ok(visit.texts("[data-test=to-settle]").await?.len());
    visit
        .wait_until("open lines", count, |count| *count == left)
        .await?;
    Ok(())
}
