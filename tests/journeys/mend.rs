//! What would mend a week: the search beside the page, the plan accepted by keyboard, the week met.

use crate::access::obstacles;
use crate::visit::{BLINK, PATIENCE, Screen, Visit, journey};
use engine::book::Book;
use engine::exact::round_half_up;
use engine::findings::Verdict;
use engine::foods::NutrientId;
use engine::mend::{Ask, Outcome, Plan, Search, Tools};
use engine::reference::SureFinding;
use engine::swaps::SwapIndex;
use engine::week::WeekId;
use gramwright_tests::demo;
use gramwright_tests::fixtures::reference;
use std::fs;
use std::time::Instant;
use thirtyfour::prelude::*;
use tokio::time::sleep;

const LUNCHES: &str = "lunch-2026-11-30";
const MISSED: &str = "[data-test=finding][data-verdict=Missed]";
const OUTCOME: &str = "[data-test=mend-outcome]";
const CHANGES: &str = "[data-test=mend-change]";

/// The engine's own plan for the demo's lunches with the limits themselves as the aim.
fn plan() -> Plan {
    let index = SwapIndex::build(reference()).expect("the committed tables");
    let tools = Tools {
        reference: reference(),
        index: &index,
    };
    let ask = Ask {
        margin: 0,
        ..Ask::default()
    };
    let week = WeekId(LUNCHES.to_owned());
    let mut search = Search::new(tools, &demo::book(), &week, ask).expect("a search");
    match search.finish(tools) {
        Outcome::Mended { plan, .. } => plan.clone(),
        other => panic!("{other:?}"),
    }
}

/// Sodium of the children's average meal in a book, as the page prints it, and its verdict.
fn sodium(book: &Book) -> (String, Verdict) {
    let week = book.week(&WeekId(LUNCHES.to_owned())).expect("the lunches");
    let study = reference().study_week(book, week).expect("a week");
    let mut services = study.services.iter();
    let children = services.find(|service| service.average.service.group.0 == "K-5");
    let findings = children.expect("the children").findings.iter();
    let mut sodium = findings.filter(|sure| sure.finding.rule.nutrient == NutrientId::SODIUM);
    let SureFinding { finding, .. } = sodium.next().expect("a limit on sodium");
    let figure = round_half_up(finding.figure.expect("a figure"), finding.digits);
    (figure.to_string(), finding.verdict)
}

async fn search(visit: &Visit) -> WebDriverResult<()> {
    visit.go(&format!("#/week/{LUNCHES}")).await?;
    visit.see_words(MISSED, "1,144 mg").await?;
    visit
        .choose("#mend-margin", "none: the limit itself")
        .await?;
    // By keyboard from here on, and from what is missed.
    visit
        .tab_back_to(&format!("{MISSED} [data-test=to-mend]"))
        .await?;
    visit.press(Key::Enter).await?;
    visit.see_keyboard_on("h2#mend").await?;
    visit.tab_to("#mend-find").await?;
    visit.press(Key::Enter).await?;
    // The keyboard goes to the answer once it is there; a slow machine may take minutes.
    let begun = Instant::now();
    let script = "return document.activeElement?.id === arguments[0]";
    while !visit.ask::<bool>(script, "mend-outcome").await? {
        let told = visit.texts(".mend").await?;
        assert!(begun.elapsed() < 12 * PATIENCE, "no answer: {told:#?}");
        sleep(BLINK).await;
    }
    Ok(())
}

#[test]
fn a_missed_week_is_mended_by_accepting_the_plan() {
    journey("mend", async |visit| {
        let plan = plan();
        let mut book = demo::book();
        let week = WeekId(LUNCHES.to_owned());
        assert_eq!(sodium(&book), ("1144".to_owned(), Verdict::Missed));

        visit.open("").await?;
        visit.wait_until_kept().await?;
        visit.cut_network().await?;
        search(visit).await?;
        visit.see_words(OUTCOME, "Proven least").await?;
        let count = async || Ok(visit.texts(CHANGES).await?.len());
        visit
            .wait_until("changes", count, |count| *count == plan.changes.len())
            .await?;
        visit.screenshot("plan").await?;

        for at in 0..plan.changes.len() {
            visit
                .browser
                .execute(
                    format!("document.getElementById('mend-accept-{at}').focus()"),
                    Vec::new(),
                )
                .await?;
            visit.press(Key::Enter).await?;
            let made = async || Ok(visit.texts("[data-test=mend-made]").await?.len());
            visit
                .wait_until("made", made, |made| *made == at + 1)
                .await?;
            assert!(plan.changes[at].change.apply(&mut book, &week));
        }
        let (figure, verdict) = sodium(&book);
        assert_eq!(verdict, Verdict::Met);
        let met =
            "[data-service='lunch K-5'] [data-test=finding][data-verdict=Met] .finding-figure dd";
        let printed = |figure: &str| figure.replace(',', "");
        let figures = async || visit.texts(met).await;
        visit
            .wait_until("sodium", figures, |figures| {
                figures
                    .iter()
                    .any(|shown| printed(shown) == format!("{figure} mg"))
            })
            .await?;
        visit.see(MISSED, &[]).await?;
        visit.screenshot("mended").await?;

        // Each change is one step to take back.
        visit.click("#undo").await?;
        let last = plan.changes.len() - 1;
        visit.element(&format!("#mend-accept-{last}")).await?;
        Ok(())
    });
}

#[test]
fn a_declined_change_is_not_proposed_again() {
    journey("mend-decline", async |visit| {
        visit.look_with(Screen::Phone).await?;
        visit.open("").await?;
        search(visit).await?;
        let said = "[data-test=mend-change] .mend-said";
        let first = visit.texts(said).await?[0].clone();
        visit.screenshot("plan").await?;
        let axe = std::env::var_os("GRAMWRIGHT_AXE").expect("axe-core, from `cargo xtask test`");
        let axe = fs::read_to_string(axe).expect("the file of axe-core");
        visit.browser.execute(axe, Vec::new()).await?;
        let found = obstacles(visit, "mend").await?;
        assert!(found.is_empty(), "{found:#?}");
        visit
            .browser
            .execute(
                "document.getElementById('mend-decline-0').focus()",
                Vec::new(),
            )
            .await?;
        visit.press(Key::Enter).await?;
        let texts = async || visit.texts(said).await;
        let others = visit
            .wait_until("another plan", texts, |texts| {
                !texts.is_empty() && !texts.contains(&first)
            })
            .await?;
        assert!(!others.contains(&first));
        Ok(())
    });
}
