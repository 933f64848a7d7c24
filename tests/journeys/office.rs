//! The office: a Nutrition Facts panel, as it is printed, and what is decided about it.

use crate::reckon::{CALORIES, SODIUM, per_serving};
use crate::visit::{Paper, Visit, journey};
use engine::label::{FactsPanel, PanelOptions, nutrition_facts};
use gramwright_tests::{demo, fixtures};
use thirtyfour::prelude::*;

/// A recipe of the demo book, and its servings.
const ROLL: (&str, i128) = ("turkey-on-a-roll", 25);

#[test]
fn a_facts_panel_is_shown_and_printed_on_one_page() {
    journey("office", async |visit| {
        visit.open("").await?;
        visit
            .click(&format!("[data-recipe={}] [data-test=recipe-link]", ROLL.0))
            .await?;
        visit.click("#to-facts").await?;
        see_panel(visit, &panel()).await?;
        see_reckoned(visit).await?;
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            let pages = pdf.pages();
            let is_one = matches!(pages[..], [page] if paper.has_size(page));
            assert!(is_one, "{paper:?}: {pages:?}");
            assert!(pdf.has_text(), "{paper:?}");
            let text = pdf.text();
            assert!(text.contains("Nutrition Facts"), "{paper:?}: {text}");
        }
        Ok(())
    });
}

/// What the engine puts on the panel; `tests/tests/label_*.rs` check that against the regulation.
fn panel() -> FactsPanel {
    let book = demo::book();
    let of = |recipe: &&engine::recipe::Recipe| recipe.id.0 == ROLL.0;
    let recipe = book.recipes.iter().find(of).expect("a recipe of the demo");
    let study = fixtures::reference().study_recipe(&book, recipe);
    let options = PanelOptions {
        serving_words: recipe.serving_words.clone(),
        ..PanelOptions::default()
    };
    let analysis = study.analysis.expect("a recipe with figures");
    nutrition_facts(&analysis, &fixtures::reference().label, &options)
}

/// Every row is printed as the engine has it, in its order.
async fn see_panel(visit: &Visit, panel: &FactsPanel) -> WebDriverResult<()> {
    let rows: Vec<String> = panel
        .rows
        .iter()
        .map(|row| {
            let cell = &row.cells[0];
            let percent = cell.percent.clone().unwrap_or_default();
            format!("{} {percent}", cell.line).trim_end().to_owned()
        })
        .collect();
    let rows: Vec<&str> = rows.iter().map(String::as_str).collect();
    assert!(rows.len() > 10, "a panel with all its rows: {rows:#?}");
    visit
        .see("[data-test=facts-panel] tr[data-nutrient]", &rows)
        .await?;
    visit
        .see(
            "[data-test=facts-calories]",
            &[&panel.calories.cells[0].amount],
        )
        .await?;
    visit.see(".facts-servings", &[&panel.servings]).await?;
    visit.see_words(".facts-size", &panel.serving_size).await?;
    visit.see(".facts-footnote", &[&panel.footnote.words]).await
}

/// Calories above 50 to the nearest 10, sodium above 140 mg to the nearest 10 mg: 21 CFR
/// 101.9(c)(1) and (c)(4).
async fn see_reckoned(visit: &Visit) -> WebDriverResult<()> {
    let lines = &demo::lines_read_by_hand()[ROLL.0];
    let to_ten = |nutrient| per_serving(lines, nutrient, ROLL.1).to_nearest(10);
    let (calories, sodium) = (to_ten(CALORIES), to_ten(SODIUM));
    assert!(calories > 50 && sodium > 140, "the rules above hold");
    visit
        .see("[data-test=facts-calories]", &[&calories.to_string()])
        .await?;
    visit
        .see_words("tr[data-nutrient='307']", &format!("Sodium {sodium} mg"))
        .await?;
    Ok(())
}

#[test]
fn what_is_decided_about_a_label_is_kept() {
    journey("label-kept", async |visit| {
        let (card, facts) = (
            format!("#/recipe/{}", ROLL.0),
            format!("#/recipe/{}/facts", ROLL.0),
        );
        visit.open(&facts).await?;
        let plain = ["one row below the other", "a single food", ""];
        see_decided(visit, plain).await?;
        let decided = ["side by side, for small packages", "a main dish", "150"];
        visit.choose("#form", decided[0]).await?;
        visit.choose("#claim-kind", decided[1]).await?;
        visit.type_over("#serving-weight", decided[2]).await?;
        visit.press(Key::Tab).await?;
        see_decided(visit, decided).await?;

        // Another view, and the page loaded again.
        visit.go(&card).await?;
        visit.element("[data-test=figure-sodium]").await?;
        visit.go(&facts).await?;
        see_decided(visit, decided).await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        see_decided(visit, decided).await?;
        visit.see_words(".facts-size", "150 g").await?;

        // Each decision is a step to take back.
        visit.click("#undo").await?;
        see_decided(visit, [decided[0], decided[1], ""]).await?;
        visit.click("#undo").await?;
        see_decided(visit, [decided[0], plain[1], ""]).await?;
        visit.click("#undo").await?;
        see_decided(visit, plain).await
    });
}

/// The layout, the kind of food, and the weight of a serving.
async fn see_decided(visit: &Visit, fields: [&str; 3]) -> WebDriverResult<()> {
    for (css, value) in ["#form", "#claim-kind", "#serving-weight"]
        .into_iter()
        .zip(fields)
    {
        visit.see_values(css, &[value]).await?;
    }
    Ok(())
}
