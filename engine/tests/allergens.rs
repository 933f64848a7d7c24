//! Allergen lines with their traps, against `allergen_lines.csv`.

use engine::allergens::{
    Allergen, AllergenTerms, LineAllergens, Presence, screen_line, screen_recipe,
};
use engine::foods::{Food, FoodGroup, FoodId};
use serde::Deserialize;

#[derive(Deserialize)]
struct Case {
    line: String,
    description: String,
    group: String,
    contains: String,
    may: String,
    not: String,
}

fn terms() -> AllergenTerms {
    AllergenTerms::from_csv(nutrient_data::rules::ALLERGEN_TERMS).expect("the committed table")
}

fn screened(case: &Case) -> LineAllergens {
    let food = (!case.description.is_empty()).then(|| Food {
        id: FoodId::Own(1),
        group: FoodGroup(case.group.parse().expect("a group code")),
        description: case.description.clone(),
        common_names: String::new(),
        manufacturer: String::new(),
        refuse_percent: None,
        refuse_description: String::new(),
    });
    screen_line(&terms(), &case.line, food.as_ref())
}

fn named(list: &str) -> Vec<Allergen> {
    list.split(';')
        .filter(|name| !name.is_empty())
        .map(|name| serde_json::from_value(name.into()).expect("an allergen's name"))
        .collect()
}

fn with(line: &LineAllergens, presence: Presence) -> Vec<Allergen> {
    line.findings
        .iter()
        .filter(|finding| finding.presence == presence)
        .map(|finding| finding.allergen)
        .collect()
}

#[test]
fn every_line_as_the_table_says() {
    let text = include_str!("allergen_lines.csv");
    let cases = engine::tables::read::<Case>("allergen_lines", text).expect("the cases");
    assert!(cases.len() >= 20);
    for case in cases.iter().map(|row| &row.row) {
        let line = screened(case);
        assert_eq!(
            with(&line, Presence::Contains),
            named(&case.contains),
            "{}: contains",
            case.line
        );
        assert_eq!(
            with(&line, Presence::MayBePresent),
            named(&case.may),
            "{}: may",
            case.line
        );
        for allergen in named(&case.not) {
            assert!(
                with(&line, Presence::Unknown).contains(&allergen),
                "{}: {allergen}",
                case.line
            );
        }
    }
}

#[test]
fn a_recipe_takes_the_strongest_of_its_lines() {
    let text = include_str!("allergen_lines.csv");
    let cases = engine::tables::read::<Case>("allergen_lines", text).expect("the cases");
    let lines: Vec<LineAllergens> = cases.iter().map(|row| screened(&row.row)).collect();
    let recipe = screen_recipe(&lines);
    assert_eq!(recipe.len(), 9);
    for (finding, carriers) in &recipe {
        assert_eq!(finding.presence, Presence::Contains, "{}", finding.allergen);
        assert!(!carriers.is_empty());
        assert!(!finding.evidence.is_empty());
    }
    let none = screen_recipe(&[]);
    assert!(
        none.iter()
            .all(|(finding, _)| finding.presence == Presence::Unknown)
    );
}

#[test]
fn damaged_tables_name_the_line() {
    let header = "allergen,level,term,unless,groups,why,source,status";
    for (row, word) in [
        ("milk,contains,,,,w,s,s", "neither"),
        ("milk,contains,x,,dairy,w,s,s", "group codes"),
        ("celery,contains,celery,,,w,s,s", "celery"),
    ] {
        let error = AllergenTerms::from_csv(&format!("{header}\n{row}\n")).unwrap_err();
        assert_eq!(error.line, 2);
        assert!(error.to_string().contains(word), "{error}");
    }
}
