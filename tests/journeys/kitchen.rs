//! A kitchen cooks it at six schools, by keyboard alone: servings, weights and pans, a sheet for each
//! school on paper, and what is bought.

use crate::visit::{Paper, journey};
use thirtyfour::prelude::*;

/// Tuesday's chili for the children: 140 servings for 95, 75, 45 and 25 children. By hand: 55.42,
/// 43.75, 26.25 and 14.58; the two servings left over go to the largest remainders.
const CHILI: &str = "tr[data-recipe=beef-and-bean-chili]:first-child input";
const SHARES: [&str; 4] = ["55", "44", "26", "15"];

/// With 60 stated for the first school, 80 are left for 75, 45 and 25: 41.38, 24.83 and 13.79.
const SHARES_OF_THE_REST: [&str; 4] = ["60", "41", "25", "14"];

/// The schools of the demo district, all of which serve lunch.
const SCHOOLS: [&str; 6] = [
    "Alder Street Elementary",
    "Brook Hollow Elementary",
    "Cinder Hill Elementary",
    "Harbor Road School",
    "Marsh Lane High School",
    "Quillhaven High School",
];

#[test]
fn a_kitchen_cooks_it_at_six_schools() {
    journey("kitchen", async |visit| {
        visit.open("").await?;
        visit.tab_to("nav a[href='#/kitchen']").await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#kitchen-date").await?;
        visit.press(Key::Down).await?;
        visit.see_keyboard_on("#kitchen-date").await?;
        visit.see_values(CHILI, &SHARES).await?;

        // One school takes more; the others share the rest, and Undo gives all back.
        visit
            .tab_to("[data-recipe=beef-and-bean-chili] [data-site=alder-street-elementary] input")
            .await?;
        visit.type_over_all("60").await?;
        visit.see_values(CHILI, &SHARES_OF_THE_REST).await?;
        visit.tab_back_to("#undo").await?;
        visit.press(Key::Enter).await?;
        visit.see_values(CHILI, &SHARES).await?;
        visit.tab_to("#redo").await?;
        visit.press(Key::Enter).await?;
        visit.see_values(CHILI, &SHARES_OF_THE_REST).await?;

        // The sheet of one school. 60 of 100 servings: 0.6 × 14 lb of beef is 8.4 lb, which a scale
        // of quarter ounces shows as 8 lb 6 1/2 oz (6.4 oz). 74 2/3 servings of 3/4 cup fill a pan.
        visit.tab_to("#kitchen-site").await?;
        visit.press(Key::Down).await?;
        let chili = ".kitchen-page [data-recipe=beef-and-bean-chili]";
        visit
            .see_words(
                &format!("{chili} .cook-much"),
                "0.6 × the recipe, 60 servings",
            )
            .await?;
        let lines = visit
            .texts(&format!("{chili} [data-test=weigh-out]"))
            .await?;
        assert_eq!(lines[0], "8 lb 6 1/2 oz ground beef, 90% lean, raw");
        visit
            .see_words(
                &format!("{chili} [data-test=pans]"),
                "1 × steam-table pan, full size (12 by 20 in), 4 in deep",
            )
            .await?;
        visit
            .see_words(&format!("{chili} .cook-hot"), "155 °F")
            .await?;
        visit.screenshot("sheet").await?;

        // One sheet for each school, which begins on a page of its own.
        for paper in [Paper::Letter, Paper::A4] {
            let pdf = visit.print(paper).await?;
            let pages = pdf.pages();
            assert!(
                pages.iter().all(|page| paper.has_size(*page)),
                "{paper:?}: {pages:?}"
            );
            assert!(
                pages.len() <= 2 * SCHOOLS.len(),
                "{paper:?}: two pages a school: {pages:?}"
            );
            let texts = pdf.page_texts();
            for school in SCHOOLS {
                let begins = texts
                    .iter()
                    .filter(|text| text.trim_start().starts_with(school));
                assert_eq!(begins.count(), 1, "{paper:?}, {school}: {texts:#?}");
            }
        }
        Ok(())
    });
}

/// Ground beef for the week: 14 lb for 100 servings, 250 planned. By hand: 35 lb, one case of 60 lb.
const BEEF: &str = "main > .kitchen > section [data-test=to-buy][data-food='SR28:23562']";

/// Cumin, of which the demo has no price.
const CUMIN: &str = "[data-test=pack][data-food='SR28:02014']";

#[test]
fn what_is_bought_costs_what_is_known() {
    journey("buying", async |visit| {
        visit.open("").await?;
        visit.tab_to("nav a[href='#/kitchen']").await?;
        visit.press(Key::Enter).await?;
        visit.tab_to("#to-buying").await?;
        visit.press(Key::Enter).await?;
        // From a day to the whole week.
        visit.tab_to("#kitchen-date").await?;
        visit.press(Key::Home).await?;
        let row = visit.see_words(BEEF, "268.00").await?;
        assert!(
            row.contains("35.00 lb 35.00 lb 1 × 6 rolls of 10 lb 25.00 lb $268.00"),
            "{row}"
        );
        let total = "section [data-test=total-cost]";
        visit.see_words(total, "at least $").await?;

        // The price that is missing is entered, and nothing is unknown any more.
        visit.tab_to(".packs summary").await?;
        visit.press(Key::Enter).await?;
        visit.tab_to(&format!("{CUMIN} [data-test=price]")).await?;
        visit.type_text("10.50").await?;
        let known = || visit.texts(total);
        let is_known = |texts: &Vec<String>| matches!(&texts[..], [text] if text.starts_with('$'));
        visit
            .wait_until("a total of which all is known", known, is_known)
            .await?;
        visit.see("#save-state", &["Saved in this browser"]).await?;
        visit.reload().await?;
        visit.wait_until("the total again", known, is_known).await?;

        visit.see_it_printed().await?;

        // What a serving costs stands on its card.
        visit.go("#/recipe/beef-and-bean-chili").await?;
        visit.see_words("[data-test=cost-of-serving]", "$").await?;
        Ok(())
    });
}
