//! The week: its findings, what a change of the plan does to them, and a week planned from nothing.

use crate::reckon::{CALORIES, Planned, SODIUM, per_meal};
use crate::visit::{Paper, Visit, journey};
use engine::units::Servings;
use gramwright_tests::demo;
use gramwright_tests::sql::PeerLine;
use std::collections::BTreeMap;
use thirtyfour::cdp::domains::emulation::{MediaType, SetEmulatedMedia};
use thirtyfour::prelude::*;

/// The week of the demo's lunches.
pub const LUNCHES: &str = "lunch-2026-11-30";

/// 7 CFR 210.10(f)(3) for K-5, in force from July 2025.
const SODIUM_LIMIT: [&str; 2] = ["weekly average of sodium", "at most 1,110 mg"];

/// How many servings of each recipe the children's lunches of the demo week plan, and for how many
/// meals: copied from the plan, so that the test changes its own copy.
pub struct Lunches {
    planned: BTreeMap<String, i128>,
    meals: i128,
}

impl Lunches {
    /// The children's lunches as the demo plans them.
    pub fn of_children() -> Self {
        let book = demo::book();
        let week = book.weeks.iter().find(|week| week.id.0 == LUNCHES);
        let days = &week.expect("the demo's lunches").days;
        let meals = days.iter().flat_map(|day| &day.meals);
        let mut lunches = Self {
            planned: BTreeMap::new(),
            meals: 0,
        };
        for meal in meals.filter(|meal| meal.group.0 == "K-5") {
            lunches.meals += whole(meal.planned_meals);
            for choice in meal.offers.iter().flat_map(|offer| &offer.choices) {
                lunches.plan(&choice.recipe.0, whole(choice.planned));
            }
        }
        lunches
    }

    fn plan(&mut self, recipe: &str, more: i128) {
        *self.planned.entry(recipe.to_owned()).or_default() += more;
    }

    /// Sodium of the average meal, as printed.
    fn sodium(&self) -> String {
        self.sodium_with(&Recipes::of_demo())
    }

    /// The same with other recipes.
    pub fn sodium_with(&self, recipes: &Recipes) -> String {
        let plan: Vec<Planned<'_>> = self
            .planned
            .iter()
            .map(|(recipe, planned)| recipes.planned(recipe, *planned))
            .collect();
        format!("{} mg", per_meal(&plan, SODIUM, self.meals).printed(0))
    }
}

/// The demo's recipes as a person reads them, with their servings.
pub struct Recipes {
    lines: BTreeMap<String, Vec<PeerLine>>,
    servings: BTreeMap<String, i128>,
}

impl Recipes {
    /// The recipes of the demo book.
    pub fn of_demo() -> Self {
        let recipes = demo::book().recipes.into_iter();
        Self {
            lines: demo::lines_read_by_hand(),
            servings: recipes
                .map(|recipe| (recipe.id.0, whole(recipe.servings)))
                .collect(),
        }
    }

    /// The same with other lines in one of them.
    pub fn with(mut self, recipe: &str, lines: &[PeerLine]) -> Self {
        self.lines.insert(recipe.to_owned(), lines.to_vec());
        self
    }

    fn planned(&self, recipe: &str, planned: i128) -> Planned<'_> {
        (&self.lines[recipe], self.servings[recipe], planned)
    }
}

fn whole(servings: Servings) -> i128 {
    let digits = servings.servings().normalize().to_string();
    digits.parse().expect("a whole number of servings")
}

#[test]
fn a_missed_requirement_is_mended_by_changing_the_plan() {
    journey("week", async |visit| {
        let mut lunches = Lunches::of_children();
        visit.open("#/weeks").await?;
        visit
            .click(&format!("[data-test=week-link][href='#/week/{LUNCHES}']"))
            .await?;
        assert_eq!(lunches.sodium(), "1,144 mg");
        see_missed(visit, &[&lunches.sodium()]).await?;

        // On Monday a drumstick takes the place of the turkey on a roll.
        visit
            .click("[data-date='2026-11-30'] [data-recipe=turkey-on-a-roll] button")
            .await?;
        visit
            .type_over("#part-0-0-0-add", "roasted chicken")
            .await?;
        visit.press(Key::Enter).await?;
        visit.type_over("#part-0-0-0-1", "90").await?;
        lunches.plan("turkey-on-a-roll", -90);
        lunches.plan("roast-chicken-drumstick", 90);
        see_missed(visit, &[&lunches.sodium()]).await?;

        // On Friday 75 more take the fish, and 75 fewer the box.
        visit.type_over("#part-4-0-0-0", "200").await?;
        visit.type_over("#part-4-0-0-1", "40").await?;
        lunches.plan("fish-tacos", 75);
        lunches.plan("hummus-and-pita-box", -75);
        see_sodium_met(visit, &lunches.sodium()).await?;
        see_missed(visit, &[]).await?;
        visit.screenshot("mended").await?;

        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        see_sodium_met(visit, &lunches.sodium()).await?;
        see_missed(visit, &[]).await
    });
}

/// The only requirements missed are the children's sodium, with these figures.
async fn see_missed(visit: &Visit, figures: &[&str]) -> WebDriverResult<()> {
    let missed = "[data-test=finding][data-verdict=Missed]";
    let children = "[data-service='lunch K-5'] [data-test=finding][data-verdict=Missed]";
    let limits = vec![SODIUM_LIMIT[1]; figures.len()];
    let whats = vec![SODIUM_LIMIT[0]; figures.len()];
    visit
        .see(&format!("{missed} .finding-figure dd"), figures)
        .await?;
    visit
        .see(&format!("{missed} .finding-what dd"), &whats)
        .await?;
    visit
        .see(
            &format!("{children} .finding-line div:nth-child(3) dd"),
            &limits,
        )
        .await
}

/// The children's sodium is met with this figure.
async fn see_sodium_met(visit: &Visit, figure: &str) -> WebDriverResult<()> {
    let met = "[data-service='lunch K-5'] [data-test=finding][data-verdict=Met]";
    let pairs = async || {
        let whats = visit.texts(&format!("{met} .finding-what dd")).await?;
        let figures = visit.texts(&format!("{met} .finding-figure dd")).await?;
        Ok(whats.into_iter().zip(figures).collect::<Vec<_>>())
    };
    let expected = (SODIUM_LIMIT[0].to_owned(), figure.to_owned());
    visit
        .wait_until("sodium", pairs, |pairs| pairs.contains(&expected))
        .await?;
    Ok(())
}

/// Two dishes of the demo book and for how many children each day gives them to choose.
const NEW_WEEK: [(&str, &str, i128); 5] = [
    ("turkey-on-a-roll", "turkey on a", 200),
    ("lentil-joe", "lentil joe", 100),
    ("turkey-on-a-roll", "turkey on a", 100),
    ("lentil-joe", "lentil joe", 100),
    ("turkey-on-a-roll", "turkey on a", 100),
];

#[test]
fn a_week_is_planned_from_nothing() {
    journey("new-week", async |visit| {
        visit.open("#/weeks").await?;
        visit.click("#new-week").await?;
        visit.click("tr:last-child [data-test=week-link]").await?;
        let days = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"];
        visit.see("[data-test=day] h3", &days).await?;

        for (day, (_, words, children)) in NEW_WEEK.iter().enumerate() {
            visit
                .choose(&format!("#add-meal-{day}"), "Lunch for K-5")
                .await?;
            visit
                .type_over(&format!("#meal-{day}-0-planned"), &children.to_string())
                .await?;
            visit
                .type_over(&format!("#part-{day}-0-0-add"), words)
                .await?;
            visit.press(Key::Enter).await?;
            // The only choice is planned for everybody.
            visit
                .see_values(&format!("#part-{day}-0-0-0"), &[&children.to_string()])
                .await?;
        }
        see_averages(visit).await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        see_averages(visit).await
    });
}

/// Averages weighted by planned meals: 600 of them in all.
async fn see_averages(visit: &Visit) -> WebDriverResult<()> {
    let recipes = Recipes::of_demo();
    let plan = NEW_WEEK.map(|(recipe, _, children)| recipes.planned(recipe, children));
    let meals = NEW_WEEK.iter().map(|day| day.2).sum();
    let average = |nutrient| per_meal(&plan, nutrient, meals).printed(0);
    visit
        .see(
            "[data-test=service] h3",
            &["Lunch for K-5 average over 600 planned meals on 5 days"],
        )
        .await?;
    // At least and at most so many calories, a share of saturated fat, and sodium.
    let figures = visit
        .texts("[data-test=finding] .finding-figure dd")
        .await?;
    assert_eq!(figures[0], format!("{} kcal", average(CALORIES)));
    assert_eq!(figures[1], figures[0]);
    assert_eq!(figures[3], format!("{} mg", average(SODIUM)));
    Ok(())
}

/// Of each drawing: whether it and its table are shown, and whether a line of its hatching is drawn.
const DRAWN: &str = r#"
return Array.from(document.querySelectorAll("[data-test=chart]"), (chart) =>
  [":scope > svg", "[data-test=chart-table] td"].every((part) =>
    chart.querySelector(part).checkVisibility({ contentVisibilityAuto: true })) &&
  getComputedStyle(chart.querySelector("pattern:nth-child(2) .hatch-line")).stroke !== "none");
"#;

/// Titles of the drawings of the demo's lunches, and the last words that stand with each.
const DRAWINGS: [(&str, &str); 4] = [
    (
        "Sodium, Na in the average meal of each day: Lunch for K-5",
        "not for a day.",
    ),
    (
        "The week against its ranges: Lunch for K-5",
        "lie in their range.",
    ),
    (
        "Sodium, Na in the average meal of each day: Lunch for 9-12",
        "not for a day.",
    ),
    (
        "The week against its ranges: Lunch for 9-12",
        "lie in their range.",
    ),
];

#[test]
fn the_printed_week_has_its_drawings() {
    journey("week-drawn", async |visit| {
        visit.open(&format!("#/week/{LUNCHES}")).await?;
        visit
            .see(
                "[data-test=chart] .chart-title",
                &DRAWINGS.map(|drawing| drawing.0),
            )
            .await?;
        let on_paper = SetEmulatedMedia {
            media: Some(MediaType::Print),
            features: None,
        };
        visit.browser.cdp().send(on_paper).await?;
        let drawn: Vec<bool> = visit.ask(DRAWN, "").await?;
        assert_eq!(drawn, [true; DRAWINGS.len()]);
        let field = "return document.querySelector(arguments[0]).checkVisibility();";
        let field: bool = visit.ask(field, ".drawings select").await?;
        assert!(!field, "no field on paper");
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            let pages = pdf.pages();
            assert!(pages.iter().all(|page| paper.has_size(*page)), "{pages:?}");
            assert!((3..=9).contains(&pages.len()), "{} pages", pages.len());
            let texts = pdf.page_texts();
            for (title, last) in DRAWINGS {
                let page = texts
                    .iter()
                    .find_map(|text| Some(text.split_once(title)?.1));
                let below = page.unwrap_or_else(|| panic!("{paper:?}: “{title}” in {texts:#?}"));
                assert!(
                    below.contains(last),
                    "{paper:?}: “{title}” is split: {below}"
                );
            }
        }
        Ok(())
    });
}

#[test]
fn the_keyboard_stays_near_what_it_takes_away() {
    journey("week-keyboard", async |visit| {
        visit.open("#/week/lunch-2026-11-30").await?;
        let days = || visit.texts("[data-test=day]");
        for left in [4, 3] {
            visit
                .tab_to("[data-test=day]:nth-child(2) [data-test=remove-day]")
                .await?;
            visit.press(Key::Enter).await?;
            visit
                .wait_until("days", days, |days| days.len() == left)
                .await?;
            visit
                .see_keyboard_on("[data-test=day]:nth-child(2) *")
                .await?;
        }
        Ok(())
    });
}
