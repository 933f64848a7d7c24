//! A planner closes a week and lays out a term, by keyboard alone; and moves a dish by dragging it.

use crate::visit::{Visit, journey};
use std::time::Duration;
use thirtyfour::prelude::*;
use tokio::time::sleep;

/// After which a browser takes a typed letter as the beginning of another word.
const ONE_WORD: Duration = Duration::from_millis(1500);

const WEEK: &str = "#/week/lunch-2026-11-30";

/// The dishes of the children's lunch on a day of the week.
fn dishes(date: &str) -> String {
    format!(
        "[data-test=day][data-date='{date}'] [data-test=meal]:nth-of-type(1) [data-test=choice]"
    )
}

async fn recipes(visit: &Visit, date: &str) -> WebDriverResult<Vec<String>> {
    let script =
        "return Array.from(document.querySelectorAll(arguments[0]), (one) => one.dataset.recipe);";
    visit.ask(script, &dishes(date)).await
}

/// Waits until a dish is served on a day, or is not.
async fn see_dish(visit: &Visit, date: &str, dish: &str, served: bool) -> WebDriverResult<()> {
    let what = format!("{dish} on {date}: {served}");
    let look = || recipes(visit, date);
    visit
        .wait_until(&what, look, |found: &Vec<String>| {
            found.iter().any(|one| one == dish) == served
        })
        .await?;
    Ok(())
}

/// Waits until a dish is the first on a day.
async fn see_first(visit: &Visit, date: &str, dish: &str) -> WebDriverResult<()> {
    let what = format!("{dish} first on {date}");
    let look = || recipes(visit, date);
    let is_first = |found: &Vec<String>| found.first().is_some_and(|one| one == dish);
    visit.wait_until(&what, look, is_first).await?;
    Ok(())
}

#[test]
fn a_planner_moves_dishes_and_copies_a_week() {
    journey("planner", async |visit| {
        visit.open(WEEK).await?;
        let handle = format!(
            "{}[data-recipe=turkey-on-a-roll] [data-test=handle]",
            dishes("2026-11-30")
        );

        // Down in its part of the meal, then to Tuesday; the keyboard goes with it.
        visit.tab_to(&handle).await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#move-up").await?;
        visit.press(Key::Enter).await?;
        see_first(visit, "2026-11-30", "turkey-on-a-roll").await?;
        visit.see_keyboard_on("#move-up").await?;
        visit.tab_to("#move-to-1").await?;
        visit.press(Key::Enter).await?;
        see_dish(visit, "2026-11-30", "turkey-on-a-roll", false).await?;
        see_dish(visit, "2026-12-01", "turkey-on-a-roll", true).await?;
        visit.see_keyboard_on("#move-done").await?;
        visit.press(Key::Enter).await?;

        // Both moves are taken back by the usual keys.
        visit.press(Key::Control + "z").await?;
        see_dish(visit, "2026-11-30", "turkey-on-a-roll", true).await?;
        see_dish(visit, "2026-12-01", "turkey-on-a-roll", false).await?;
        visit.press(Key::Control + "z").await?;
        see_first(visit, "2026-11-30", "chicken-and-bean-rice-bowl").await?;

        // A day is exchanged with the next.
        visit
            .tab_back_to("[data-test=day]:first-child .day-head [data-test=handle]")
            .await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#move-down").await?;
        visit.press(Key::Enter).await?;
        see_dish(visit, "2026-12-01", "turkey-on-a-roll", true).await?;
        see_dish(visit, "2026-11-30", "beef-and-bean-chili", true).await?;
        visit.press(Key::Control + "z").await?;
        see_dish(visit, "2026-11-30", "turkey-on-a-roll", true).await?;

        // The week is drawn, with its figures as a table.
        visit.tab_to("#drawn-nutrient").await?;
        visit
            .tab_to("#ranges-0 [data-test=chart-table] summary")
            .await?;
        visit.press(Key::Enter).await?;
        let rows = visit
            .texts("#ranges-0 [data-test=chart-table] tbody tr")
            .await?;
        assert!(
            rows.iter()
                .any(|row| row.contains("1,144 mg") && row.contains("at most 1,110 mg")),
            "{rows:?}"
        );

        // A copy for the next week.
        visit.tab_back_to("#copy-week").await?;
        visit.press(Key::Enter).await?;
        let dates = "return Array.from(document.querySelectorAll(arguments[0]), (day) => day.dataset.date);";
        let look = || visit.ask::<Vec<String>>(dates, "[data-test=day]");
        let copied = [
            "2026-12-07",
            "2026-12-08",
            "2026-12-09",
            "2026-12-10",
            "2026-12-11",
        ];
        visit
            .wait_until("the copy's days", look, |days| *days == copied)
            .await?;
        see_dish(visit, "2026-12-07", "turkey-on-a-roll", true).await?;
        visit.screenshot("copied").await
    });
}

#[test]
fn a_planner_lays_a_cycle_over_the_winter_recess() {
    journey("month", async |visit| {
        visit.open("#/month/2026-12-01").await?;
        visit.see("h1", &["December 2026"]).await?;
        visit
            .see_words("[data-date='2026-12-24']", "No school")
            .await?;

        // A day off is marked, and the plan of that day is pointed at.
        let day = "[data-test=month-day][data-date='2026-12-04']";
        visit
            .tab_to(&format!("{day} [data-test=close-day]"))
            .await?;
        visit.press(Key::Enter).await?;
        visit.see_words(day, "Planned all the same").await?;
        visit.tab_back_to("#undo").await?;
        visit.press(Key::Enter).await?;
        visit
            .element(&format!("{day} [data-test=close-day]"))
            .await?;

        // The two weeks of the book as a cycle. The winter recess lasts from December 21 to January 1:
        // by hand, the cycle waits, and its second week comes on January 4.
        visit.tab_to("#add-cycle").await?;
        visit.press(Key::Enter).await?;
        visit.tab_back_to("#cycle-0-add").await?;
        visit.press("L").await?;
        visit
            .see(
                "[data-test=cycle-week] span",
                &["Lunches, week of November 30"],
            )
            .await?;
        // A browser takes letters that follow each other within a second as one word.
        sleep(ONE_WORD).await;
        visit.press("B").await?;
        let both = [
            "Lunches, week of November 30",
            "Breakfasts, week of November 30",
        ];
        visit.see("[data-test=cycle-week] span", &both).await?;
        visit.tab_to("#cycle-0-from").await?;
        visit.type_text("12142026").await?;
        visit.tab_to("#cycle-0-to").await?;
        visit.type_text("01152027").await?;
        visit
            .see("[data-test=lay-out]", &["Lay it out: 3 weeks, 15 days"])
            .await?;
        visit.tab_to("[data-test=lay-out]").await?;
        visit.press(Key::Enter).await?;
        visit
            .see_words(
                "[data-monday='2026-12-14'] .month-standing",
                "Cycle menu, week of 2026-12-14",
            )
            .await?;
        visit
            .see_words("[data-monday='2026-12-21'] .month-standing", "")
            .await?;

        visit.tab_back_to("#next-month").await?;
        visit.press(Key::Enter).await?;
        visit.see("h1", &["January 2027"]).await?;
        visit
            .see_words(
                "[data-monday='2027-01-04'] .month-standing",
                "Cycle menu, week of 2027-01-04",
            )
            .await?;
        visit
            .see_words("[data-monday='2027-01-11'] .month-standing", "5 days")
            .await?;
        visit.screenshot("january").await?;
        visit.see_it_printed().await?;

        // All three weeks are one step.
        visit.tab_back_to("#undo").await?;
        visit.press(Key::Enter).await?;
        let weeks = || visit.texts("[data-test=month-standing]");
        visit
            .wait_until("no weeks in January", weeks, Vec::is_empty)
            .await?;
        Ok(())
    });
}

#[test]
fn a_dish_is_dragged_to_another_day() {
    journey("drag", async |visit| {
        visit.open(WEEK).await?;
        let from = format!(
            "{}[data-recipe=turkey-on-a-roll] [data-test=handle]",
            dishes("2026-11-30")
        );
        let from = visit.element(&from).await?;
        let to = format!("{}[data-recipe=beef-and-bean-chili]", dishes("2026-12-01"));
        let to = visit.element(&to).await?;
        from.js_drag_to(&to).await?;
        see_dish(visit, "2026-11-30", "turkey-on-a-roll", false).await?;
        see_dish(visit, "2026-12-01", "turkey-on-a-roll", true).await?;
        see_first(visit, "2026-12-01", "turkey-on-a-roll").await?;
        Ok(())
    });
}
