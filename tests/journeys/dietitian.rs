//! The dietitian: a recipe from an empty book to paper, by keyboard alone. Loose words are read, what
//! is doubtful is mended where it stands, and a figure is followed down to its source.

use crate::card::see_figures;
use crate::reckon::{SODIUM, line, per_serving};
use crate::visit::{Paper, Visit, journey};
use gramwright_tests::sql::CountedIn::{Mass, Measure};
use gramwright_tests::sql::PeerLine;
use thirtyfour::prelude::*;

const TITLE: &str = "Turkey and rice skillet";
const SERVINGS: i128 = 48;

/// A line of the card, the food beside it, and what is meant by it once all is mended.
type Line = (&'static str, &'static str, PeerLine);

/// The foods and measures of SR28 that are meant: "Ground turkey, cooked", which comes from the scale;
/// "Onions, raw", cup, chopped (160 g); "Carrots, raw"; "Rice, brown, long-grain, raw"; "Oil, olive,
/// salad or cooking"; "Lemon juice from concentrate, canned or bottled"; "Salt, table", tbsp (18 g).
#[rustfmt::skip]
const CARD: [Line; 7] = [
    ("6 lb ground turkey, raw", "Ground turkey, raw", line(5306, (1950, 1), Mass("g"))),
    ("a cup or so of onions, chopped", "Onions, raw", line(11282, (1, 1), Measure(1))),
    ("2 lb carots, sliced", "Carrots, raw", line(11124, (2, 1), Mass("lb"))),
    ("3 lb brown rice, long-grain, dry", "Rice, brown, long-grain, raw", line(20036, (3, 1), Mass("lb"))),
    ("a drizzle of olive oil", "Oil, olive, salad or cooking", line(4053, (40, 1), Mass("g"))),
    ("2 bottles lemon juice", "Lemon juice, raw", line(9153, (900, 1), Mass("g"))),
    ("3 tbsp salt", "Salt, table", line(2047, (3, 1), Measure(2))),
];

/// Numbers of lines above.
const TURKEY: usize = 0;
const ONIONS: usize = 1;
const OIL: usize = 4;
const JUICE: usize = 5;
const SALT: usize = 6;

/// The finished batch on the scale: 48 servings of 150 g.
const FINISHED: &str = "7200";

#[test]
fn a_dietitian_takes_a_recipe_from_an_empty_page_to_paper() {
    journey("dietitian", async |visit| {
        visit.open("").await?;
        visit.tab_to("#guide-empty").await?;
        visit.press(Key::Enter).await?;
        visit.see_keyboard_on("#content").await?;
        visit.see("[data-test=recipe-row]", &[]).await?;
        write_card(visit).await?;
        see_readings(visit).await?;
        mend(visit).await?;
        weigh_the_batch(visit).await?;
        let known = CARD.map(|line| line.2);
        see_figures(visit, "", &known, SERVINGS).await?;
        visit.screenshot("complete").await?;
        follow_sodium(visit).await?;
        print(visit).await
    });
}

async fn write_card(visit: &Visit) -> WebDriverResult<()> {
    visit.tab_to("#new-recipe").await?;
    visit.press(Key::Enter).await?;
    visit.see_keyboard_on("#title").await?;
    visit.type_text(TITLE).await?;
    visit.tab_to("#servings").await?;
    visit.type_over_all(&SERVINGS.to_string()).await?;
    visit.tab_to("#ingredients").await?;
    visit.paste(&CARD.map(|line| line.0).join("\n")).await
}

/// Each line has its food, the misspelt one too; what is loose is told, what is unknown is not zero.
async fn see_readings(visit: &Visit) -> WebDriverResult<()> {
    visit
        .see("[data-test=reading-food]", &CARD.map(|line| line.1))
        .await?;
    for (line, words) in [
        (ONIONS, "about this much"),
        (OIL, "drizzle"),
        (JUICE, "bottle"),
    ] {
        let css = format!("#reading-{line} [data-test=reading-how]");
        visit.see_words(&css, words).await?;
    }
    let nutrient = "[data-nutrient='307'] td:nth-last-child(2)";
    visit.see(nutrient, &["100 %"]).await?;
    visit
        .see_words(".figures", "2 lines are not known and not counted")
        .await
        .map(drop)
}

async fn mend(visit: &Visit) -> WebDriverResult<()> {
    // Another food, and what it weighs. The keyboard is on the reading again when that is closed.
    open_line(visit, JUICE).await?;
    visit.type_over_all("lemon juice from concentrate").await?;
    visit
        .see_words("#correction-food-list-0", CONCENTRATE)
        .await?;
    visit.press(Key::Down).await?;
    visit.press(Key::Enter).await?;
    visit
        .see_words("#reading-5 [data-test=reading-food]", CONCENTRATE)
        .await?;
    visit.see_keyboard_on("#correction-food").await?;
    // The list is no stop on the way, neither while it is shown nor when it is gone.
    visit.press(Key::Tab).await?;
    visit.see_keyboard_on("[data-test=from-words]").await?;
    visit.press(Key::Shift + Key::Tab).await?;
    visit.type_text("lemon").await?;
    visit.element("#correction-food-list-3").await?;
    visit.press(Key::Tab).await?;
    visit.see_keyboard_on("[data-test=from-words]").await?;
    weigh(visit, JUICE, "900").await?;

    // From the list of what is not counted; then nothing is left there.
    visit.tab_to("[data-test=to-settle] button").await?;
    visit.press(Key::Enter).await?;
    visit.see_keyboard_on("#correction-food").await?;
    visit.tab_to("#correction-weight").await?;
    visit.type_text("40").await?;
    visit.press(Key::Enter).await?;
    see_closed(visit, OIL).await?;
    visit.see("[data-test=to-settle]", &[]).await?;

    open_line(visit, TURKEY).await?;
    visit.tab_to("[data-test=treat] summary").await?;
    visit.press(Key::Enter).await?;
    visit.tab_to("#correction-cooked").await?;
    visit.press("Ground turkey, cooked").await?;
    visit.tab_to("#cooked-weight").await?;
    visit.type_text("1950").await?;
    close_line(visit, TURKEY).await
}

const CONCENTRATE: &str = "Lemon juice from concentrate, canned or bottled";

/// Opens the reading of a line from the text itself.
async fn open_line(visit: &Visit, line: usize) -> WebDriverResult<()> {
    visit.tab_back_to("#ingredients").await?;
    visit.press(Key::Control + Key::Home).await?;
    for _ in 0..line {
        visit.press(Key::Down).await?;
    }
    visit.press(Key::Tab).await?;
    visit.see_keyboard_on(&format!("#reading-{line}")).await?;
    visit.press(Key::Enter).await?;
    visit.see_keyboard_on("#correction-food").await
}

async fn weigh(visit: &Visit, line: usize, grams: &str) -> WebDriverResult<()> {
    visit.tab_to("#correction-weight").await?;
    visit.type_text(grams).await?;
    close_line(visit, line).await
}

async fn close_line(visit: &Visit, line: usize) -> WebDriverResult<()> {
    visit.press(Key::Escape).await?;
    see_closed(visit, line).await
}

/// The keyboard is on the reading again.
async fn see_closed(visit: &Visit, line: usize) -> WebDriverResult<()> {
    visit.see("[data-test=correction]", &[]).await?;
    visit.see_keyboard_on(&format!("#reading-{line}")).await
}

async fn weigh_the_batch(visit: &Visit) -> WebDriverResult<()> {
    visit.tab_back_to("[data-test=portion] summary").await?;
    visit.press(Key::Enter).await?;
    visit.tab_to("#finished-weight").await?;
    visit.type_text(FINISHED).await?;
    visit
        .see(".figures .serving", &["150 g of the finished batch"])
        .await
}

/// Salt carries it; its slip has the arithmetic and the source, and gives the keyboard back.
async fn follow_sodium(visit: &Visit) -> WebDriverResult<()> {
    let first = "[data-test=carriers] tbody tr:first-child th";
    visit.see_words(first, CARD[SALT].0).await?;
    visit.tab_to("[data-test=figure-sodium] button").await?;
    visit.press(Key::Enter).await?;
    let figure = per_serving(&CARD.map(|line| line.2), SODIUM, SERVINGS).printed(0);
    visit
        .see_words(
            "[data-test=origin-figure]",
            &format!("{figure} mg in one serving"),
        )
        .await?;
    let salt = format!("[data-test=origin-part][data-line='{SALT}']");
    // 3 × 18 g × 38,758 mg per 100 g = 20,929.32 mg.
    let product = "38,758 mg per 100 g × 54 g ÷ 100 = 20,929.3 mg";
    visit
        .see_words(&format!("{salt} .arithmetic"), product)
        .await?;
    visit
        .see_words(&format!("{salt} [data-test=origin-source]"), "anal")
        .await?;
    visit.screenshot("source").await?;
    visit.press(Key::Escape).await?;
    visit.see("[data-test=origin]", &[]).await?;
    visit
        .see_keyboard_on("[data-test=figure-sodium] button")
        .await
}

async fn print(visit: &Visit) -> WebDriverResult<()> {
    visit.tab_back_to("#print").await?;
    let known = CARD.map(|line| line.2);
    let sodium = per_serving(&known, SODIUM, SERVINGS).printed(0);
    for paper in [Paper::Letter, Paper::A4] {
        let pdf = visit.print(paper).await?;
        let pages = pdf.pages();
        assert!(
            matches!(pages[..], [page] if paper.has_size(page)),
            "{paper:?}: one page: {pages:?}"
        );
        let text = pdf.text();
        let yields = format!("{SERVINGS} servings; the finished batch weighs 7,200 g");
        let lines = CARD.iter().map(|line| line.0);
        for words in [TITLE, &yields, &format!("{sodium} mg")]
            .into_iter()
            .chain(lines)
        {
            assert!(text.contains(words), "{paper:?}, {words}: {text}");
        }
        assert!(!text.contains("Guided use"), "{paper:?}: only the sheet");
    }
    Ok(())
}
