//! The main job: a recipe as a kitchen writes it, read, weighed and added up without a network.

use crate::reckon::{CALORIES, Meant, Of, SATURATED_FAT, SODIUM, per_serving};
use crate::visit::{Screen, Visit, journey};
use thirtyfour::prelude::*;

/// Servings of the recipe.
const SERVINGS: i128 = 24;

/// Lines of the card; the weight that the page is to show; the foods and measures of SR28 that this
/// test means by them: "Ground turkey, raw"; "Onions, raw", cup, chopped (160 g); "Celery, raw", cup
/// chopped (101 g); "Oil, canola", cup (218 g); "Spices, chili powder", tbsp (8.0 g); "Garlic, raw",
/// 3 cloves (9.0 g); "Rice, brown, long-grain, raw".
const CARD: [(&str, &str, Meant); 7] = [
    // 72 oz × 28.349523125 g
    (
        "4 lb 8 oz ground turkey, raw",
        "2,041 g",
        meant("05305", 72 * 12, Of::Ounce),
    ),
    (
        "3 1/2 cups onions, chopped",
        "560 g",
        meant("11282", 42, Of::Measure("1")),
    ),
    (
        "2¼ cups celery, chopped",
        "227 g",
        meant("11143", 27, Of::Measure("1")),
    ),
    (
        "1/3 cup canola oil",
        "72.7 g",
        meant("04582", 4, Of::Measure("2")),
    ),
    (
        "3 tbsp chili powder",
        "24.0 g",
        meant("02009", 36, Of::Measure("2")),
    ),
    (
        "12 cloves garlic, minced",
        "36.0 g",
        meant("11215", 144, Of::Measure("4")),
    ),
    (
        "1½ lb brown rice, long-grain, dry",
        "680 g",
        meant("20036", 18, Of::Pound),
    ),
];

/// A line that says how much only vaguely, and what it turns out to weigh: 40 g of "Salt, table".
const VAGUE: (&str, &str, Meant) = ("salt, to taste", "40", meant("02047", 480, Of::Gram));

/// A line by a unit that SR28 does not know for its food, and its weight: 500 g of "Lemon juice, raw".
const WRONG_UNIT: (&str, &str, Meant) = (
    "2 bottles lemon juice",
    "500",
    meant("09152", 6000, Of::Gram),
);

const fn meant(food: &'static str, twelfths: i128, of: Of) -> Meant {
    Meant { food, twelfths, of }
}

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

    let mut known: Vec<Meant> = CARD.iter().map(|(_, _, meant)| *meant).collect();
    see_figures(visit, "≥ ", &known).await?;
    visit
        .see_words(".figures", "2 lines are not known and not counted")
        .await?;

    weigh(visit, VAGUE, 1).await?;
    known.push(VAGUE.2);
    see_figures(visit, "≥ ", &known).await?;
    weigh(visit, WRONG_UNIT, 0).await?;
    known.push(WRONG_UNIT.2);
    see_figures(visit, "", &known).await?;
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
    see_figures(visit, "", &known).await
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

/// Calories, saturated fat and sodium of a serving, as whole-number arithmetic has them.
async fn see_figures(visit: &Visit, before: &str, known: &[Meant]) -> WebDriverResult<()> {
    for (key, nutrient, decimals, unit) in [
        ("calories", CALORIES, 0, ""),
        ("saturated-fat", SATURATED_FAT, 1, " g"),
        ("sodium", SODIUM, 0, " mg"),
    ] {
        let figure = per_serving(known, nutrient, SERVINGS, decimals);
        let expected = format!("{before}{figure}{unit}");
        let place = format!("[data-test=figure-{key}]");
        visit.see(&place, &[&expected]).await?;
    }
    Ok(())
}

/// Weighs an open line, of which `left` stay open.
async fn weigh(
    visit: &Visit,
    (text, grams, _): (&str, &str, Meant),
    left: usize,
) -> WebDriverResult<()> {
    let open = visit.texts("[data-test=to-settle]").await?;
    let place = open.iter().position(|line| line.starts_with(text));
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
