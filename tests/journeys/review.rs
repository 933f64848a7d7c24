//! A reviewer asks why: one printout of a week, by keyboard alone, with everything that its figures
//! rest on.

use crate::visit::{Paper, Visit, journey};
use engine::findings::Verdict;
use gramwright_tests::{demo, fixtures};
use thirtyfour::prelude::*;

const WEEK: &str = "lunch-2026-11-30";

/// Headings of the record, in its order.
const PARTS: [&str; 7] = [
    "Menus and planned servings",
    "Findings",
    "Standardized recipes, with credits",
    "Rules",
    "Sources of values",
    "Assumptions",
    "Overrides",
];

#[test]
fn a_reviewer_gets_one_printout_of_a_week() {
    journey("review", async |visit| {
        visit.open("#/weeks").await?;
        visit
            .tab_to(&format!("[data-test=week-link][href='#/week/{WEEK}']"))
            .await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#to-review").await?;
        visit.press(Key::Enter).await?;
        visit.see(".review h2", &PARTS).await?;
        visit.see_words(".review-stand", "Not certified").await?;
        see_findings(visit).await?;
        see_reasons(visit).await?;
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            let pages = pdf.pages();
            assert!(pages.len() > 3, "{}", pages.len());
            assert!(pages.iter().all(|page| paper.has_size(*page)), "{pages:?}");
            let texts = pdf.page_texts();
            let count = texts.len();
            for (number, text) in (1..).zip(&texts) {
                let start: String = text.chars().take(300).collect();
                assert!(start.contains("not certified"), "page {number}: {start}");
                assert!(
                    text.ends_with(&format!("{number} / {count}")),
                    "page {number} of {count}"
                );
                see_no_heading_alone(number, text);
            }
            let text = texts.join(" ");
            for words in PARTS.iter().chain(&[
                "7 CFR 210.10",
                "product formulation statement of the sliced turkey",
                "USDA National Nutrient Database for Standard Reference, Release 28",
                "no reason is recorded",
            ]) {
                assert!(text.contains(words), "{paper:?}: {words}");
            }
        }
        Ok(())
    });
}

/// No page ends with a heading whose text stands on the next.
fn see_no_heading_alone(number: usize, text: &str) {
    let before_number = text.rsplit_once(" / ").map_or(text, |(text, _)| text);
    let before_number = before_number.trim_end_matches(|c: char| c.is_ascii_digit());
    for heading in PARTS {
        assert!(
            !before_number.trim_end().ends_with(heading),
            "page {number} ends with the heading “{heading}”"
        );
    }
}

/// Each finding of the engine is there with its verdict. `tests/tests/verdicts.rs` checks the
/// verdicts themselves.
async fn see_findings(visit: &Visit) -> WebDriverResult<()> {
    let book = demo::book();
    let week = book.weeks.iter().find(|week| week.id.0 == WEEK);
    let study = fixtures::reference()
        .study_week(&book, week.expect("a week of the demo"))
        .expect("a week with averages");
    let mut missed: usize = 0;
    for service in &study.services {
        let findings = service.findings.iter().map(|sure| sure.finding.verdict);
        missed += findings
            .filter(|verdict| *verdict == Verdict::Missed)
            .count();
    }
    assert!(missed > 0, "the demo week has something to ask about");
    let seen = visit
        .texts("[data-test=review-finding][data-verdict=Missed]")
        .await?;
    assert!(seen.len() >= missed, "{seen:#?}");
    let services = visit.texts("[data-test=review-service] caption").await?;
    assert_eq!(services.len(), study.services.len());
    Ok(())
}

/// Decisions of people are there with the reasons that the book gives.
async fn see_reasons(visit: &Visit) -> WebDriverResult<()> {
    let book = demo::book();
    let week = book.weeks.iter().find(|week| week.id.0 == WEEK);
    let planned = week.expect("a week of the demo").recipes();
    let mut reasons = 0;
    let rows = visit.texts("[data-test=review-override]").await?;
    for recipe in planned.iter().filter_map(|id| book.recipe(id)) {
        for credit in recipe
            .lines
            .iter()
            .flat_map(|line| &line.correction.credits)
        {
            reasons += 1;
            assert!(
                rows.iter().any(|row| row.contains(&credit.reason)),
                "{}: {rows:#?}",
                credit.reason
            );
        }
    }
    assert!(reasons > 0, "the demo week has stated credits");
    let recipes = visit.texts("[data-test=review-recipe] h3").await?;
    assert!(recipes.len() >= planned.len(), "{recipes:#?}");
    Ok(())
}
