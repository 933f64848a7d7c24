//! A book brings its own foods and limits; what is wrong with it is named.

use engine::book::{BOOK_VERSION, Book};
use engine::foods::{FoodId, NutrientId};
use engine::reference::Reference;
use engine::week::Week;
use serde_json::json;

fn book(value: serde_json::Value) -> Book {
    let mut whole = serde_json::to_value(Book::empty("Test")).expect("a book");
    for (key, part) in value.as_object().expect("an object") {
        whole[key] = part.clone();
    }
    serde_json::from_value(whole).expect("the form of a book")
}

fn base() -> Reference {
    Reference::committed(&nutrient_data::asset::committed().0).expect("the committed tables")
}

fn with_rice_food_and_policy() -> Book {
    let header = nutrient_data::rules::DIETARY_SPECIFICATIONS
        .lines()
        .next()
        .expect("a header");
    let row = "lunch,K-5,307,per meal,,at most,900,mg,,2026-01-01,,,wellness policy 4,board minutes,verified,sodium";
    book(json!({
        "ownFoods": [{
            "number": 3, "description": "Rice bowl base, Alder mill",
            "source": { "kind": "label", "serving": "100", "reference": "package",
                        "declared": [{ "nutrient": 307, "printed": "200" }] }
        }],
        "ownRules": { "dietarySpecifications": format!("{header}\n{row}\n") },
        "recipes": [{ "id": "r", "title": "R", "servings": "1",
                      "lines": [{ "text": "500 g rice bowl base, alder mill" }] }],
        "weeks": [{ "id": "w", "title": "W", "days": [{ "date": "2026-11-30", "meals": [{
            "kind": "lunch", "group": "K-5", "plannedMeals": "10",
            "offers": [{ "title": "Main dish", "take": 1,
                         "choices": [{ "recipe": "r", "planned": "10" }] }] }] }] }]
    }))
}

#[test]
fn own_foods_and_own_limits_come_with_the_book() {
    let book = with_rice_food_and_policy();
    let reference = base().for_book(&book).expect("a sound book");
    let recipe = reference.study_recipe(&book, &book.recipes[0]);
    assert_eq!(
        recipe.lines[0].read.food,
        Some(FoodId::Own(3)),
        "found by its name"
    );
    let week: &Week = &book.weeks[0];
    let study = reference.study_week(&book, week).expect("a sound week");
    let limits: Vec<String> = study.services[0]
        .findings
        .iter()
        .filter(|found| found.finding.rule.nutrient == NutrientId::SODIUM)
        .map(|found| format!("{} {:?}", found.finding.rule.limit, found.finding.verdict))
        .collect();
    assert!(limits.contains(&"900 Missed".to_owned()), "{limits:?}");
    assert!(limits.contains(&"1110 Met".to_owned()), "{limits:?}");
}

#[test]
fn a_book_without_them_changes_nothing() {
    let empty = Book::empty("Test");
    let reference = base().for_book(&empty).expect("an empty book");
    assert_eq!(reference.specifications, base().specifications);
}

#[test]
fn what_makes_a_book_ambiguous_is_named() {
    let recipe = json!({ "id": "r", "title": "R", "servings": "1", "lines": [] });
    let week = json!({ "id": "w", "title": "W", "days": [] });
    let food = json!({ "number": 1, "description": "F",
        "source": { "kind": "values", "per": "100", "values": [], "reference": "" } });
    for (part, word) in [
        (json!({ "version": BOOK_VERSION + 1 }), "newer"),
        (json!({ "recipes": [recipe, recipe] }), "\"r\""),
        (json!({ "weeks": [week, week] }), "\"w\""),
        (json!({ "ownFoods": [food, food] }), "number 1"),
    ] {
        let error = book(part).check().expect_err(word);
        assert!(error.to_string().contains(word), "{error}");
    }
    assert_eq!(Book::empty("Test").check(), Ok(()));
}

/// A limit for a group that no meal pattern has would never be looked at.
#[test]
fn own_limits_are_for_groups_that_there_are() {
    let header = |table: &str| table.lines().next().expect("a header").to_owned();
    let limits = header(nutrient_data::rules::DIETARY_SPECIFICATIONS);
    let patterns = header(nutrient_data::rules::MEAL_PATTERNS);
    let weeks = header(nutrient_data::rules::WEEK_RULES);
    let limit = |group: &str| {
        let row = format!(
            "lunch,{group},307,per meal,,at most,900,mg,,2026-01-01,,,policy,minutes,own,sodium"
        );
        format!("{limits}\n{row}\n")
    };
    let week = |groups: &str| {
        let row = format!(
            "a,lunch,{groups},week,share of offerings,fruits,juice,at most,25,%,,,2026-01-01,,,policy,minutes,own,juice"
        );
        format!("{weeks}\n{row}\n")
    };
    let pattern = format!(
        "{patterns}\nlunch,ages 3-5,fruits,day,at least,0.25,cup,required,smallest,,2026-01-01,,,policy,minutes,own,fruits\n"
    );
    for (rules, wrong) in [
        (json!({ "dietarySpecifications": limit("K-5") }), None),
        (json!({ "dietarySpecifications": limit("K-8") }), None),
        (json!({ "dietarySpecifications": limit("K5") }), Some("K5")),
        (
            json!({ "dietarySpecifications": limit("k-5") }),
            Some("k-5"),
        ),
        // Breakfast has this group, lunch has not.
        (
            json!({ "dietarySpecifications": limit("K-12") }),
            Some("K-12"),
        ),
        (json!({ "dietarySpecifications": limit("") }), Some("")),
        (json!({ "weekRules": week("") }), None),
        (json!({ "weekRules": week("K-5|6-8") }), None),
        (json!({ "weekRules": week("K-5|6to8") }), Some("6to8")),
        // A group of the office's own comes with its pattern.
        (
            json!({ "dietarySpecifications": limit("ages 3-5") }),
            Some("ages 3-5"),
        ),
        (
            json!({ "dietarySpecifications": limit("ages 3-5"), "mealPatterns": pattern }),
            None,
        ),
    ] {
        let told = format!("{rules}");
        let found = base().for_book(&book(json!({ "ownRules": rules })));
        match (found, wrong) {
            (Ok(_), None) => {}
            (Err(error), Some(group)) => {
                let error = error.to_string();
                for words in [
                    "line 2",
                    &format!("\"{group}\""),
                    "those for this meal: K-5, 6-8, 9-12, K-8",
                ] {
                    assert!(error.contains(words), "{told}: {words}: {error}");
                }
            }
            (found, _) => panic!("{told}: {:?}", found.map(drop)),
        }
    }
}
