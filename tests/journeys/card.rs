//! What journeys do and see on a recipe's card.

use crate::reckon::{CALORIES, SATURATED_FAT, SODIUM, per_serving};
use crate::visit::Visit;
use gramwright_tests::sql::PeerLine;
use thirtyfour::prelude::*;

/// The large figures: name in the page's hooks, nutrient, decimals, unit.
pub const FIGURES: [(&str, &str, u32, &str); 3] = [
    ("calories", CALORIES, 0, ""),
    ("saturated-fat", SATURATED_FAT, 1, " g"),
    ("sodium", SODIUM, 0, " mg"),
];

/// Sees calories, saturated fat and sodium of a serving as whole-number arithmetic has them; `before`
/// stands before each.
pub async fn see_figures(
    visit: &Visit,
    before: &str,
    lines: &[PeerLine],
    servings: i128,
) -> WebDriverResult<()> {
    for (key, nutrient, decimals, unit) in FIGURES {
        let figure = per_serving(lines, nutrient, servings).printed(decimals);
        let expected = format!("{before}{figure}{unit}");
        let place = format!("[data-test=figure-{key}]");
        visit.see(&place, &[&expected]).await?;
    }
    Ok(())
}

/// Sees how each figure changed from one form of a recipe to another.
pub async fn see_changes(
    visit: &Visit,
    from: &[PeerLine],
    to: &[PeerLine],
    servings: i128,
) -> WebDriverResult<()> {
    for (key, nutrient, decimals, _) in FIGURES {
        let printed = |lines: &[PeerLine]| per_serving(lines, nutrient, servings).printed(decimals);
        let (before, now) = (printed(from), printed(to));
        let difference = difference(&before, &now);
        let place = format!("[data-test=change-{key}]");
        let expected = format!("{before} → {now} ({difference})");
        visit.see(&place, &[&expected]).await?;
    }
    Ok(())
}

/// The difference of two printed figures with as many decimals, printed with its sign.
fn difference(before: &str, now: &str) -> String {
    let digits = |text: &str| -> i64 { text.replace([',', '.'], "").parse().expect("digits") };
    let by = digits(now) - digits(before);
    let sign = match by.signum() {
        -1 => "−",
        0 => "±",
        _ => "+",
    };
    let by = by.abs();
    match now.contains('.') {
        true => format!("{sign}{}.{}", by / 10, by % 10),
        false => format!("{sign}{by}"),
    }
}

/// Writes over the ingredient line with this number, from 0, as one does by keyboard.
pub async fn write_over_line(visit: &Visit, number: usize, text: &str) -> WebDriverResult<()> {
    visit.tab_to("#ingredients").await?;
    visit.press(Key::Control + Key::Home).await?;
    for _ in 0..number {
        visit.press(Key::Down).await?;
    }
    visit.press(Key::Home).await?;
    visit.press(Key::Shift + Key::End).await?;
    visit.paste(text).await
}
