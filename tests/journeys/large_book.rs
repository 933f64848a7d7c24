//! How fast the page answers a keystroke in a book of 5,000 recipes. It
//! measures and is no check: `cargo xtask bench page` runs it.

use crate::visit::{Visit, journey};
use engine::book::Book;
use engine::recipe::{Recipe, RecipeId};
use gramwright_tests::demo;
use serde_json::Value;
use thirtyfour::prelude::*;

const RECIPES: usize = 5_000;

/// The demo book with copies of its recipes until there are so many.
fn large_book() -> Book {
    let mut book = demo::book();
    let own = book.recipes.clone();
    book.recipes = (0..RECIPES)
        .map(|number| {
            let recipe = &own[number % own.len()];
            match number / own.len() {
                0 => recipe.clone(),
                copy => Recipe {
                    id: RecipeId(format!("{}-{copy}", recipe.id.0)),
                    title: format!("{} {copy}", recipe.title),
                    ..recipe.clone()
                },
            }
        })
        .collect();
    book
}

/// Types into a field, letter by letter: each letter right after a frame, then
/// the time until the frame after the one that shows it has begun to be drawn.
/// A page that does its work within one frame takes one frame's time.
const TYPE: &str = r#"
    const [css, done] = [arguments[0], arguments[arguments.length - 1]];
    const field = document.querySelector(css);
    const frame = () => new Promise(requestAnimationFrame);
    const drawn = () => new Promise((resolve) => requestAnimationFrame(() => {
        const channel = new MessageChannel();
        channel.port1.onmessage = resolve;
        channel.port2.postMessage(0);
    }));
    const empty = async () => {
        const times = [];
        for (let turn = 0; turn < 20; turn++) {
            await frame();
            const start = performance.now();
            await drawn();
            times.push(performance.now() - start);
        }
        return times;
    };
    (async () => {
        field.focus();
        const idle = await empty();
        const times = [];
        const handling = [];
        for (let turn = 0; turn < 60; turn++) {
            await frame();
            const at = Math.min(12, field.value.length);
            const letter = "lettuce "[turn % 8];
            const start = performance.now();
            field.setRangeText(letter, at + turn, at + turn, "end");
            field.dispatchEvent(new InputEvent("input", { bubbles: true, data: letter }));
            handling.push(performance.now() - start);
            await drawn();
            times.push(performance.now() - start);
        }
        done({ idle, handling, times });
    })();
"#;

fn told(name: &str, times: &Value) -> String {
    let times = times.as_array().expect("a list of times");
    let mut times: Vec<f64> = times.iter().filter_map(Value::as_f64).collect();
    times.sort_by(f64::total_cmp);
    let at = |share: f64| times[((times.len() - 1) as f64 * share) as usize];
    format!("{name} p50 {:.1} ms, p95 {:.1} ms", at(0.5), at(0.95))
}

async fn measure(visit: &Visit, what: &str, css: &str) -> WebDriverResult<()> {
    visit.element(css).await?;
    let arguments = vec![Value::from(css)];
    let found = visit.browser.execute_async(TYPE, arguments).await?;
    let found = found.json();
    println!(
        "{what}: {}; {}; {}",
        told("keystroke to paint", &found["times"]),
        told("of which until the event is handled", &found["handling"]),
        told("an idle frame", &found["idle"]),
    );
    Ok(())
}

#[test]
#[ignore = "it measures: cargo xtask bench page"]
fn keystrokes_in_a_book_of_5000_recipes() {
    journey("large-book", async |visit| {
        let recipe = demo::book().recipes[0].id.0.clone();
        for what in ["demo book", "5,000 recipes"] {
            visit.open("#/about").await?;
            if what != "demo book" {
                let text = serde_json::to_string(&large_book()).expect("a book as text");
                visit.give_file("#open-file", "large.json", &text).await?;
                visit.click("#take-incoming").await?;
                visit.see_words("[data-test=told]", "large.json").await?;
            }
            visit.go(&format!("#/recipe/{recipe}")).await?;
            measure(visit, &format!("{what}, a recipe's lines"), "#ingredients").await?;
            measure(visit, &format!("{what}, a recipe's title"), "#title").await?;
            visit.go("#/recipes").await?;
            let list = format!("{what}, search in the list");
            measure(visit, &list, "#find-recipe").await?;
        }
        Ok(())
    });
}
