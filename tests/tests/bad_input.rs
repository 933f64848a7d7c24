//! Bad input of each kind: the error names the place and the remedy, and the
//! line stays as it was typed. Invented input; common practice, no source.

use engine::book::Book;
use engine::foods::NutrientId;
use engine::recipe::{Recipe, RecipeLine};
use engine::reference::{RecipeStudy, StudyProblem};
use engine::rules::Specifications;
use engine::tables;
use engine::week::{Week, WeekError};
use gramwright_tests::fixtures::reference;
use serde::Deserialize;
use serde_json::json;

#[derive(Deserialize)]
struct BadLine {
    line: String,
    says: String,
    remedy: String,
}

fn recipe(servings: &str, lines: &[&str]) -> Recipe {
    let lines: Vec<_> = lines.iter().map(|text| json!({ "text": text })).collect();
    serde_json::from_value(
        json!({ "id": "bad", "title": "Bad", "servings": servings, "lines": lines }),
    )
    .expect("the form of a recipe")
}

fn study(servings: &str, lines: &[&str]) -> RecipeStudy {
    reference().study_recipe(&Book::empty("test"), &recipe(servings, lines))
}

#[test]
fn lines_that_cannot_be_weighed_say_so_and_make_totals_unknown() {
    let rows = tables::read::<BadLine>("bad_lines", include_str!("../data/bad_lines.csv")).unwrap();
    for case in rows.into_iter().map(|row| row.row) {
        let study = study("4", &["1 cup milk", &case.line]);
        let read = &study.lines[1].read;
        assert_eq!(read.text, case.line, "the line stays as typed");
        let problem = read.weight.as_ref().expect_err(&case.line);
        assert!(
            problem.to_string().contains(&case.says),
            "{}: {problem}",
            case.line
        );
        assert!(
            problem.remedy().contains(&case.remedy),
            "{}: {}",
            case.line,
            problem.remedy()
        );
        let analysis = study.analysis.expect("the other line is fine");
        assert_eq!(analysis.unknown_lines, [1], "{}", case.line);
        let sodium = analysis.total(NutrientId::SODIUM).unwrap();
        assert!(
            sodium.known > 0.into() && !sodium.is_complete(),
            "{}",
            case.line
        );
    }
}

#[test]
fn servings_must_be_above_zero() {
    for servings in ["0", "-3"] {
        let study = study(servings, &["1 cup milk"]);
        assert_eq!(study.lines.len(), 1, "the lines are still read");
        let problem = study.analysis.unwrap_err();
        assert!(matches!(problem, StudyProblem::NoServings { .. }));
        assert!(
            problem.to_string().contains("state how many servings"),
            "{problem}"
        );
    }
}

#[test]
fn a_serving_size_must_tell_the_servings() {
    for size in [
        json!({ "by": "weight", "serving": "0" }),
        json!({ "by": "volume", "serving": "250", "batch": "0" }),
        json!({ "by": "count", "serving": "-1", "batch": "24" }),
    ] {
        let mut recipe = recipe("4", &["1 cup milk"]);
        recipe.serving_size = serde_json::from_value(size).expect("the form of a size");
        let study = reference().study_recipe(&Book::empty("test"), &recipe);
        assert_eq!(study.analysis.unwrap_err(), StudyProblem::NoServingSize);
    }
}

#[test]
fn text_that_is_no_number_does_not_become_one() {
    for servings in [
        json!("NaN"),
        json!("inf"),
        json!("four"),
        json!(""),
        json!(null),
    ] {
        let read: Result<Recipe, _> = serde_json::from_value(
            json!({ "id": "x", "title": "x", "servings": servings, "lines": [] }),
        );
        assert!(read.is_err(), "{servings}");
    }
}

fn week(planned_meals: &str, planned: &str, recipe: &str) -> Week {
    serde_json::from_value(json!({
        "id": "w", "title": "w", "days": [{ "date": "2026-11-30", "meals": [{
            "kind": "lunch", "group": "K-5", "plannedMeals": planned_meals,
            "offers": [{ "title": "Main dish", "take": 1,
                         "choices": [{ "recipe": recipe, "planned": planned }] }] }] }]
    }))
    .expect("the form of a week")
}

#[test]
fn weeks_name_the_day_and_the_choice() {
    let mut book = Book::empty("test");
    book.recipes.push(recipe("4", &["1 cup milk"]));
    let error = |week| reference().study_week(&book, &week).unwrap_err();
    for (week, kind) in [
        (week("0", "10", "bad"), "no planned meals"),
        (week("10", "-1", "bad"), "below zero"),
        (week("10", "10", "lost"), "not in the book"),
    ] {
        let error: WeekError = error(week);
        let text = error.to_string();
        assert!(
            text.starts_with("2026-11-30") && text.contains(kind),
            "{text}"
        );
    }
}

#[test]
fn a_recipe_without_totals_in_a_week_is_named() {
    let mut book = Book::empty("test");
    book.recipes.push(recipe("0", &["1 cup milk"]));
    let error = reference()
        .study_week(&book, &week("10", "10", "bad"))
        .unwrap_err();
    assert!(error.to_string().contains("\"bad\""), "{error}");
}

#[test]
fn rules_with_overlapping_dates_are_refused() {
    let text = nutrient_data::rules::DIETARY_SPECIFICATIONS.replace("2027-06-30", "2027-07-01");
    let error = Specifications::from_csv(&text).unwrap_err();
    assert!(
        error.line > 1 && error.to_string().contains("end one"),
        "{error}"
    );
}

#[test]
fn nothing_typed_is_lost() {
    let lines = ["½ c ✂ ???", "<script>", "=1+1", "", "   ", "🥕 3"];
    let study = study("4", &lines);
    let kept: Vec<&str> = study
        .lines
        .iter()
        .map(|line| line.read.text.as_str())
        .collect();
    assert_eq!(kept, lines);
}

#[test]
fn an_empty_recipe_has_nothing_rather_than_an_error() {
    let study = study("4", &[]);
    let analysis = study.analysis.expect("no lines are no problem");
    assert!(analysis.total(NutrientId::ENERGY).unwrap().is_complete());
    let _: &[RecipeLine] = &recipe("4", &[]).lines;
}
