//! The cook: one line of a card is changed, and the figures and their change follow at once.

use crate::card::{see_changes, see_figures, write_over_line};
use crate::reckon::line;
use crate::visit::journey;
use gramwright_tests::demo;
use gramwright_tests::sql::CountedIn::Mass;
use thirtyfour::prelude::*;

/// A recipe of the demo book, and its servings.
const CHILI: (&str, i128) = ("beef-and-bean-chili", 100);

#[test]
fn a_changed_line_moves_the_figures_at_once() {
    // As a person reads the lines: tests/data/demo_lines.csv.
    let beef = demo::lines_read_by_hand()[CHILI.0].clone();
    // The first line names 14 lb of beef; 14 lb of SR28's "Ground turkey, raw" take its place.
    let mut turkey = beef.clone();
    turkey[0] = line(5305, (14, 1), Mass("lb"));
    let servings = CHILI.1;

    journey("cook", async |visit| {
        visit.open("").await?;
        let link = format!("[data-recipe={}] [data-test=recipe-link]", CHILI.0);
        visit.tab_to(&link).await?;
        visit.press(Key::Enter).await?;
        visit.see_keyboard_on("#content").await?;
        see_figures(visit, "", &beef, servings).await?;
        visit.see("[data-test^=change-]", &[]).await?;

        write_over_line(visit, 0, "14 lb ground turkey, raw").await?;
        see_figures(visit, "", &turkey, servings).await?;
        see_changes(visit, &beef, &turkey, servings).await?;
        visit.screenshot("changed").await?;

        visit.tab_back_to("#undo").await?;
        visit.press(Key::Enter).await?;
        see_figures(visit, "", &beef, servings).await?;
        visit.see("[data-test^=change-]", &[]).await?;
        visit.tab_to("#redo").await?;
        visit.press(Key::Enter).await?;
        see_changes(visit, &beef, &turkey, servings).await?;

        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        see_figures(visit, "", &turkey, servings).await?;
        see_changes(visit, &beef, &turkey, servings).await?;

        // What was kept can be gone back to, and a version that is kept is the one compared with.
        visit.tab_to("#go-back").await?;
        visit.press(Key::Enter).await?;
        see_figures(visit, "", &beef, servings).await?;
        visit.tab_back_to("#undo").await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#keep").await?;
        visit.press(Key::Enter).await?;
        visit.see("[data-test^=change-]", &[]).await?;
        see_figures(visit, "", &turkey, servings).await
    });
}
