//! Nobody is kept out: axe-core's rules (WCAG 2.2 A and AA, and its best practices) find nothing on
//! any view, light or dark, on a desktop or a phone; nothing is lost at twice the size, and nothing
//! moves for who wants it still.

use crate::visit::{Screen, Visit, journey};
use serde::Deserialize;
use std::env;
use std::fs;
use thirtyfour::cdp::domains::emulation::{MediaFeature, SetEmulatedMedia};
use thirtyfour::prelude::*;

/// The rules' file, passed by `cargo xtask test`.
const AXE: &str = "GRAMWRIGHT_AXE";

/// Addresses of the views, and what each shows once it is there.
const VIEWS: [(&str, &str); 15] = [
    ("#/recipes", "[data-test=recipe-row]"),
    ("#/recipe/beef-and-bean-chili", "[data-test=figure-sodium]"),
    (
        "#/recipe/beef-and-bean-chili/facts",
        "[data-test=facts-panel]",
    ),
    (
        "#/recipe/beef-and-bean-chili/families",
        "[data-test=family-panel]",
    ),
    ("#/weeks", "[data-test=week-link]"),
    (
        "#/week/lunch-2026-11-30",
        "[data-test=finding][data-verdict=Missed]",
    ),
    ("#/rules", "[data-test=rule]"),
    ("#/foods", "#find-food"),
    ("#/food/SR28:01001", "[data-test=food-values]"),
    (
        "#/week/lunch-2026-11-30/families",
        "[data-test=family-dish]",
    ),
    (
        "#/week/lunch-2026-11-30/review",
        "[data-test=review-finding]",
    ),
    (
        "#/kitchen/lunch-2026-11-30/2026-12-03",
        "[data-test=site-sheet]",
    ),
    (
        "#/buying/breakfast-2026-11-30/2026-12-03",
        "[data-test=to-buy]",
    ),
    ("#/month/2026-12-01", "[data-test=month-standing]"),
    ("#/about", "#office"),
];

/// The correction of an open line.
const OPEN_LINE: &str = "[data-test=correction]";

#[test]
fn no_obstacles_on_a_desktop() {
    journey("access", async |visit| no_obstacles(visit).await);
}

#[test]
fn no_obstacles_in_spanish() {
    journey("access-spanish", async |visit| {
        visit.open("").await?;
        visit.choose("#language", "Español").await?;
        visit.element("html[lang=es-US]").await?;
        no_obstacles(visit).await
    });
}

#[test]
fn no_obstacles_on_a_phone() {
    journey("access-phone", async |visit| {
        visit.look_with(Screen::Phone).await?;
        no_obstacles(visit).await
    });
}

#[test]
fn nothing_scrolls_sideways_at_twice_the_size() {
    journey("access-zoomed", async |visit| {
        visit.look_with(Screen::DesktopZoomed).await?;
        visit.open("").await?;
        let mut wide = Vec::new();
        for (address, shown) in VIEWS {
            visit.go(address).await?;
            visit.element(shown).await?;
            visit.ask::<()>(UNFOLD, "").await?;
            let beyond: Vec<String> = visit.ask(BEYOND, "").await?;
            wide.extend(beyond.into_iter().map(|what| format!("{address}: {what}")));
            visit.screenshot(&plain(address)).await?;
        }
        assert!(wide.is_empty(), "beyond the screen:\n{}", wide.join("\n"));
        Ok(())
    });
}

#[test]
fn nothing_moves_for_who_wants_it_still() {
    journey("access-still", async |visit| {
        visit.open("").await?;
        prefer(visit, "prefers-reduced-motion", "reduce").await?;
        let mut moving = Vec::new();
        for (address, shown) in VIEWS {
            visit.go(address).await?;
            visit.element(shown).await?;
            visit.ask::<()>(UNFOLD, "").await?;
            let found: Vec<String> = visit.ask(MOVING, "").await?;
            moving.extend(found.into_iter().map(|what| format!("{address}: {what}")));
        }
        assert!(moving.is_empty(), "moves:\n{}", moving.join("\n"));
        Ok(())
    });
}

/// An address as a part of a file's name.
fn plain(address: &str) -> String {
    let letter = |c: char| if c.is_alphanumeric() { c } else { '-' };
    address
        .trim_start_matches("#/")
        .chars()
        .map(letter)
        .collect()
}

/// Tells the page what its reader prefers.
async fn prefer(visit: &Visit, name: &str, value: &str) -> WebDriverResult<()> {
    let feature = MediaFeature {
        name: name.to_owned(),
        value: value.to_owned(),
    };
    let media = SetEmulatedMedia {
        media: None,
        features: Some(vec![feature]),
    };
    visit.browser.cdp().send(media).await?;
    Ok(())
}

async fn no_obstacles(visit: &Visit) -> WebDriverResult<()> {
    visit.open("").await?;
    load_rules(visit).await?;

    // Two days show all that five do, and the rules look at them in a tenth of the time.
    visit.go("#/week/lunch-2026-11-30").await?;
    for _ in 0..3 {
        visit
            .click("[data-test=day]:nth-child(2) [data-test=remove-day]")
            .await?;
    }

    let mut found = Vec::new();
    for (address, shown) in VIEWS {
        visit.go(address).await?;
        visit.element(shown).await?;
        found.extend(obstacles(visit, address).await?);
    }
    visit.go("#/recipes").await?;
    visit.click("#new-recipe").await?;
    visit.click("#ingredients").await?;
    visit
        .paste("2 cups rice, to taste\n3 shovels flour")
        .await?;
    visit.click("[data-test=to-settle] button").await?;
    visit.element(OPEN_LINE).await?;
    found.extend(obstacles(visit, OPEN_LINE).await?);
    assert!(
        found.is_empty(),
        "{} obstacles:\n{}",
        found.len(),
        found.join("\n")
    );
    Ok(())
}

/// Loads the rules into the page as it is open; loading the page anew drops them.
pub async fn load_rules(visit: &Visit) -> WebDriverResult<()> {
    let file = env::var_os(AXE)
        .unwrap_or_else(|| panic!("{AXE} is not set: run the journeys with `cargo xtask test`"));
    let axe = fs::read_to_string(file).expect("the file of axe-core");
    visit.browser.execute(axe, Vec::new()).await?;
    Ok(())
}

/// What the rules find here, in both colour schemes.
pub async fn obstacles(visit: &Visit, place: &str) -> WebDriverResult<Vec<String>> {
    visit.ask::<()>(UNFOLD, "").await?;
    let mut found = Vec::new();
    for scheme in ["light", "dark"] {
        prefer(visit, "prefers-color-scheme", scheme).await?;
        let obstacles = visit.browser.execute_async(RUN, Vec::new()).await?;
        let obstacles: Vec<Obstacle> = obstacles.convert()?;
        found.extend(obstacles.into_iter().map(|obstacle| {
            let Obstacle { rule, help, places } = obstacle;
            format!(
                "{place}, {scheme}: {rule}: {help}\n    {}",
                places.join("\n    ")
            )
        }));
    }
    Ok(found)
}

/// A broken rule.
#[derive(Deserialize)]
struct Obstacle {
    rule: String,
    help: String,
    places: Vec<String>,
}

/// What is folded up has to be free of obstacles too.
const UNFOLD: &str =
    "document.querySelectorAll('details').forEach((part) => { part.open = true; });";

/// What makes the page wider than the screen: the elements that reach beyond it, if it scrolls.
const BEYOND: &str = r##"
const width = document.documentElement.clientWidth;
if (document.documentElement.scrollWidth <= width) return [];
return [`${document.documentElement.scrollWidth} of ${width}`].concat(
  Array.from(document.querySelectorAll("body *"))
    .filter((one) => one.getBoundingClientRect().right + window.scrollX > width + 1)
    .slice(0, 12)
    .map((one) => `${one.tagName}.${one.className}#${one.id}`));
"##;

/// What takes longer than 10 ms to get to another look.
const MOVING: &str = r##"
const longest = (times) => Math.max(...times.split(",").map((time) =>
  parseFloat(time) * (time.trim().endsWith("ms") ? 1 : 1000)));
const styles = ["", "::before", "::after", "::backdrop"];
const slow = Array.from(document.querySelectorAll("*")).flatMap((one) => styles
  .filter((part) => {
    const style = getComputedStyle(one, part || null);
    return longest(style.transitionDuration) > 10 || longest(style.animationDuration) > 10;
  })
  .map((part) => `${one.tagName}.${one.className}#${one.id}${part}`));
const running = document.getAnimations()
  .filter((one) => one.effect.getComputedTiming().activeDuration > 10)
  .map((one) => `runs: ${one.animationName ?? one.transitionProperty}`);
return slow.concat(running).slice(0, 20);
"##;

const RUN: &str = r#"
const done = arguments[arguments.length - 1];
const places = (broken) =>
  broken.nodes.map((node) => node.target.join(" ") + " | " + node.failureSummary.replace(/\s+/g, " "));
axe.run(document, { resultTypes: ["violations"] }).then(
  ({ violations }) =>
    done(violations.map((broken) => ({ rule: broken.id, help: broken.help, places: places(broken) }))),
  (error) => done([{ rule: "axe", help: String(error), places: [] }]),
);
"#;
