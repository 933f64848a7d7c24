//! The demo book reads as its lines mean, and its weeks give the verdicts that
//! `data/demo_findings.csv` states.

use engine::book::Book;
use engine::exact::{round_half_up, rounding::guarded};
use engine::findings::Verdict;
use engine::foods::FoodId;
use engine::reference::SureFinding;
use engine::units::Servings;
use engine::week::{Meal, Week};
use gramwright_tests::demo;
use gramwright_tests::fixtures::{foods, reference};
use gramwright_tests::sql::{CountedIn, Fraction, PeerLine};
use rust_decimal::Decimal;

const FINDINGS: &str = include_str!("../data/demo_findings.csv");

/// Weight of a line read by hand, by the measure that the hand points to.
fn weight_by_hand(line: &PeerLine) -> Option<Decimal> {
    let (count, counted_in) = line.amount.as_ref()?;
    let (grams, of) = match counted_in {
        CountedIn::Mass(unit) => (grams_of(unit), Decimal::ONE),
        CountedIn::Measure(number) => {
            let food = FoodId::Sr28(line.food.expect("a measure is of a food"));
            let measure = foods()
                .measures(food)
                .iter()
                .find(|measure| u32::from(measure.number) == *number)
                .unwrap_or_else(|| panic!("{food} has no measure {number}"));
            (measure.grams.grams(), measure.amount)
        }
    };
    let Fraction {
        numerator,
        denominator,
    } = *count;
    Some(grams * Decimal::from(numerator) / (Decimal::from(denominator) * of))
}

/// NIST Handbook 44, Appendix C.
fn grams_of(unit: &str) -> Decimal {
    let digits = match unit {
        "lb" => "453.59237",
        "oz" => "28.349523125",
        other => panic!("{other} is not used by the demo"),
    };
    digits.parse().expect("digits")
}

#[test]
fn every_line_weighs_what_a_person_reads() {
    let (book, by_hand) = (demo::book(), demo::lines_read_by_hand());
    for recipe in &book.recipes {
        let study = reference().study_recipe(&book, recipe);
        let lines = &by_hand[&recipe.id.0];
        assert_eq!(study.lines.len(), lines.len(), "{}", recipe.title);
        for (study, by_hand) in study.lines.iter().zip(lines) {
            let read = &study.read;
            let place = format!("{}, \"{}\"", recipe.title, read.text);
            assert_eq!(study.problem, None, "{place}");
            let weight = read.weight.as_ref().ok().map(|w| guarded(w.grams.grams()));
            assert_eq!(weight, weight_by_hand(by_hand).map(guarded), "{place}");
            if by_hand.food.is_some() {
                assert_eq!(read.food, by_hand.food.map(FoodId::Sr28), "{place}");
            }
        }
    }
}

fn findings_table(book: &Book) -> String {
    let mut writer = csv::Writer::from_writer(Vec::new());
    let heading = [
        "week", "meal", "group", "words", "bound", "limit", "figure", "verdict",
    ];
    writer.write_record(heading).unwrap();
    for week in &book.weeks {
        let study = reference().study_week(book, week).unwrap();
        for SureFinding { finding, .. } in study.services.iter().flat_map(|one| &one.findings) {
            let rule = &finding.rule;
            let figure = finding.figure.expect("food with energy");
            assert!(finding.complete, "{}: a value is missing", rule.words);
            let word = |value: serde_json::Value| value.as_str().unwrap_or_default().to_owned();
            let row = [
                week.id.0.clone(),
                finding.service.kind.to_string(),
                finding.service.group.to_string(),
                rule.words.clone(),
                word(serde_json::to_value(rule.bound).unwrap()),
                format!("{} {}", rule.limit.normalize(), rule.unit),
                round_half_up(figure, finding.digits).to_string(),
                word(serde_json::to_value(finding.verdict).unwrap()),
            ];
            writer.write_record(row).unwrap();
        }
    }
    String::from_utf8(writer.into_inner().unwrap()).unwrap()
}

/// The figures behind the verdicts are checked by `sql.rs`.
#[test]
fn the_weeks_keep_their_rules_but_for_one() {
    let found = findings_table(&demo::book());
    for (found, stated) in found.lines().zip(FINDINGS.lines()) {
        assert_eq!(found, stated, "demo_findings.csv");
    }
    assert_eq!(found, FINDINGS, "one list is longer than the other");
    assert_eq!(found.matches("missed").count(), 1);
}

/// So that the missed sodium is all that is left to mend.
#[test]
fn the_weeks_meet_the_meal_patterns() {
    let book = demo::book();
    for week in &book.weeks {
        let study = reference().study_week(&book, week).unwrap();
        for finding in study.services.iter().flat_map(|one| &one.pattern) {
            let rule = format!("{}: {}, {:?}", week.title, finding.rule.words, finding.date);
            assert_eq!(finding.verdict, Verdict::Met, "{rule}");
        }
    }
}

fn meals(week: &Week) -> impl Iterator<Item = &Meal> {
    week.days.iter().flat_map(|day| &day.meals)
}

#[test]
fn planned_servings_add_up() {
    let planned = |offer: &engine::week::Offer| -> Servings {
        offer.choices.iter().map(|choice| choice.planned).sum()
    };
    for week in &demo::book().weeks {
        let weekdays: Vec<String> = week.days.iter().map(|day| day.date.weekday()).collect();
        let usual = ["Monday", "Tuesday", "Wednesday", "Thursday", "Friday"];
        assert_eq!(weekdays, usual, "{}", week.title);
        for meal in meals(week) {
            for offer in &meal.offers {
                let (servings, most) = (
                    planned(offer),
                    meal.planned_meals * Decimal::from(offer.take),
                );
                assert!(servings <= most, "{}: {}", week.title, offer.title);
                if offer.title == "Main dish" {
                    assert_eq!(servings, meal.planned_meals, "{}", week.title);
                }
            }
            let titles: Vec<&str> = meal.offers.iter().map(|o| o.title.as_str()).collect();
            for part in ["Main dish", "Fruit", "Milk"] {
                assert!(titles.contains(&part), "{}: no {part}", week.title);
            }
        }
    }
}
