//! What the book gives out is checked by programs that know nothing of it: the
//! schema by a validator of JSON Schema, tables by a plain reader of CSV.

use engine::book::Book;
use engine::exact::{Digits, round_half_up};
use engine::exchange::recipe_ld::Shared;
use engine::exchange::{BOOK_SCHEMA, nutrient_csv, read_book, recipe_ld, write_book};
use engine::foods::NutrientId;
use gramwright_tests::{demo, fixtures};
use jsonschema::Validator;
use rust_decimal::Decimal;
use serde_json::{Value, json};
use std::collections::BTreeMap;

fn schema() -> Value {
    serde_json::from_str(BOOK_SCHEMA).expect("the schema is JSON")
}

fn validator() -> Validator {
    jsonschema::options()
        .should_validate_formats(true)
        .build(&schema())
        .expect("a schema")
}

fn problems(value: &Value) -> Vec<String> {
    let validator = validator();
    let found = validator.iter_errors(value);
    found
        .map(|error| format!("{}: {error}", error.instance_path()))
        .collect()
}

/// Something in every place of the form.
fn full_book() -> Value {
    json!({
        "version": 1,
        "office": "Fernhill",
        "recipes": [{
            "id": "a", "title": "A", "servings": "12.5", "servingWords": "1 cup",
            "servingSize": { "by": "volume", "serving": "240", "batch": "3000" },
            "finishedWeight": "4000",
            "lines": [{
                "text": "1 lb beans",
                "correction": {
                    "food": "SR28:16027", "recipe": "b", "weight": "453.59",
                    "basis": "asPurchased", "cooked": { "food": "OWN:1", "weight": "900" },
                    "treatments": ["beans-drained"],
                    "credits": [{ "component": "beans, peas and lentils", "amount": "0.25",
                                  "marks": ["subgroup only"], "reason": "statement of May",
                                  "statedFor": "2 lb beans" }]
                }
            }],
            "beans": "meat alternate", "method": "Cook."
        }, {
            "id": "b", "title": "B", "servings": "1", "lines": [],
            "servingSize": { "by": "weight", "serving": "100" }
        }, {
            "id": "c", "title": "C", "servings": "1", "lines": [],
            "servingSize": { "by": "count", "serving": "2", "batch": "48" }
        }],
        "weeks": [{ "id": "w", "title": "W", "days": [{ "date": "2026-11-30", "meals": [{
            "kind": "snack", "group": "6-12", "plannedMeals": "40",
            "offers": [{ "title": "Fruit", "take": 2,
                         "choices": [{ "recipe": "a", "planned": "40" }] }] }] }] }],
        "versions": [{
            "name": "before", "keptOn": "2026-11-02",
            "recipe": { "id": "b", "title": "B", "servings": "1", "lines": [] }
        }],
        "labels": [{
            "recipe": "a",
            "panel": { "servingWeight": "200", "servingsPerContainer": "6",
                       "audience": "1 to 3", "form": "tabular", "dual": true,
                       "content": "simplified", "also": [401] },
            "claims": { "kind": "main dish", "referenceAmount": "140",
                        "twoTablespoonsOrLess": true,
                        "ingredients": [{ "nutrient": 307, "used": true }] },
            "comparedWith": "b"
        }],
        "ownFoods": [{
            "number": 1, "description": "F", "ingredients": "wheat",
            "measures": [{ "amount": "1", "words": "cup", "grams": "120" }],
            "source": { "kind": "label", "serving": "30", "reference": "package",
                        "declared": [{ "nutrient": 307, "printed": "less than 5" }] }
        }, {
            "number": 2, "description": "G",
            "source": { "kind": "values", "per": "100", "reference": "sheet",
                        "values": [{ "nutrient": 307, "amount": "1.5" }] }
        }],
        "ownRules": { "dietarySpecifications": "x", "mealPatterns": "y", "weekRules": "z" },
        "switches": ["a reading"],
        "production": {
            "sites": [{ "id": "s", "name": "S", "serves": [
                { "kind": "snack", "group": "6-12", "meals": "40" }] }],
            "stated": [{ "date": "2026-11-30", "kind": "snack", "group": "6-12", "recipe": "a",
                         "site": "s", "servings": "12" }],
            "packs": [
                { "food": "SR28:16027", "words": "bag", "size": { "by": "weight", "grams": "9000" },
                  "price": "23.40", "pricedOn": "2026-11-02" },
                { "food": "OWN:1", "words": "jug", "size": { "by": "volume", "millilitres": "3785.4" } }],
            "ways": [
                { "recipe": "a", "minutes": 45,
                  "pan": { "pan": "full 4", "filling": { "by": "servings", "servings": "20" } } },
                { "recipe": "b", "pan": { "pan": "full 2", "filling": { "by": "volume" } } },
                { "recipe": "c", "pan": { "pan": "sheet", "filling": { "by": "weight", "grams": "4000" } } }],
            "scale": "grams"
        },
        "calendar": {
            "noSchool": [{ "date": "2026-12-25", "words": "Christmas" }],
            "cycles": [{ "id": "c", "title": "Winter", "weeks": ["w"], "onBreak": "runOn" }]
        }
    })
}

#[test]
fn the_schema_is_one() {
    jsonschema::meta::validate(&schema()).expect("JSON Schema, draft 2020-12");
}

#[test]
fn the_demo_book_keeps_the_schema_and_comes_back() {
    let text = write_book(&demo::book());
    let value: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(problems(&value), [""; 0]);
    assert_eq!(read_book(&text), Ok(demo::book()));
}

/// Whatever the book can hold has a place in the schema, and comes back.
#[test]
fn every_part_of_the_form_is_in_the_schema() {
    let full = full_book();
    assert_eq!(problems(&full), [""; 0]);
    let book = read_book(&full.to_string()).expect("a book");
    let written: Value = serde_json::from_str(&write_book(&book)).expect("JSON");
    assert_eq!(problems(&written), [""; 0]);
    let mut back = BTreeMap::new();
    leaves("", &written, &mut back);
    let mut gone = BTreeMap::new();
    leaves("", &full, &mut gone);
    for (place, leaf) in &gone {
        assert_eq!(back.get(place), Some(leaf), "{place}");
    }
}

/// Each place of a document that holds no other places.
fn leaves(place: &str, value: &Value, found: &mut BTreeMap<String, Value>) {
    match value {
        Value::Object(parts) => {
            for (key, part) in parts {
                leaves(&format!("{place}/{key}"), part, found);
            }
        }
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                leaves(&format!("{place}/{index}"), item, found);
            }
        }
        leaf => {
            found.insert(place.to_owned(), leaf.clone());
        }
    }
}

/// Where the schema and the reader both have a say, they say the same: any
/// value of another kind in any place is refused by both.
#[test]
fn what_does_not_fit_is_refused_by_the_schema_and_by_the_reader() {
    let full = full_book();
    let validator = validator();
    let mut places = BTreeMap::new();
    leaves("", &full, &mut places);
    assert!(places.len() > 50, "{}", places.len());
    for place in places.keys() {
        let mut broken = full.clone();
        *broken.pointer_mut(place).expect("a place") = json!({ "not": ["this"] });
        assert!(!validator.is_valid(&broken), "{place}: the schema takes it");
        let error = read_book(&broken.to_string()).expect_err(place);
        assert!(!error.to_string().is_empty());
    }
    for (place, value) in [
        ("/recipes/0/beans", json!("fruit")),
        ("/recipes/0/servings", json!("many")),
        ("/weeks/0/days/0/date", json!("2026-02-30")),
        ("/recipes/0/lines/0/correction/food", json!("16027")),
        ("/version", json!(2)),
    ] {
        let mut broken = full.clone();
        *broken.pointer_mut(place).expect("a place") = value;
        assert!(!validator.is_valid(&broken), "{place}: the schema takes it");
        assert!(read_book(&broken.to_string()).is_err(), "{place}");
    }
}

/// Properties of schema.org/NutritionInformation (schema.org, values from
/// memory), each with the SR28 nutrients that it adds up.
const NUTRITION: [(&str, &[u16], &str); 11] = [
    ("calories", &[208], "calories"),
    ("fatContent", &[204], "g"),
    ("saturatedFatContent", &[606], "g"),
    ("unsaturatedFatContent", &[645, 646], "g"),
    ("transFatContent", &[605], "g"),
    ("cholesterolContent", &[601], "mg"),
    ("sodiumContent", &[307], "mg"),
    ("carbohydrateContent", &[205], "g"),
    ("fiberContent", &[291], "g"),
    ("sugarContent", &[269], "g"),
    ("proteinContent", &[203], "g"),
];

#[test]
fn shared_recipes_state_what_is_fully_known_and_nothing_else() {
    let (book, reference) = (demo::book(), fixtures::reference());
    let studies: Vec<_> = book
        .recipes
        .iter()
        .map(|recipe| reference.study_recipe(&book, recipe))
        .collect();
    let shared = book
        .recipes
        .iter()
        .zip(&studies)
        .map(|(recipe, study)| Shared {
            recipe,
            analysis: study.analysis.as_ref().ok(),
        });
    let text = recipe_ld::write(&reference.foods, shared);
    let value: Value = serde_json::from_str(&text).expect("JSON");
    assert_eq!(value["@context"], "https://schema.org");
    let graph = value["@graph"].as_array().expect("recipes");
    assert_eq!(graph.len(), book.recipes.len());
    let (mut stated, mut silent) = (0, 0);
    for ((node, study), recipe) in graph.iter().zip(&studies).zip(&book.recipes) {
        assert_eq!(node["@type"], "Recipe");
        assert_eq!(node["name"], recipe.title.as_str());
        let analysis = study.analysis.as_ref().expect("figures");
        for (property, nutrients, unit) in NUTRITION {
            let sums: Vec<_> = nutrients
                .iter()
                .map(|id| analysis.per_serving(NutrientId(*id)).expect("a total"))
                .collect();
            let known = sums.iter().all(|sum| sum.is_complete());
            let told = node["nutrition"][property].as_str();
            assert_eq!(told.is_some(), known, "{}: {property}", recipe.title);
            let Some(told) = told else {
                silent += 1;
                continue;
            };
            stated += 1;
            let (figure, told_unit) = told.split_once(' ').expect("figure and unit");
            assert_eq!(told_unit, unit);
            let sum: Decimal = sums.iter().map(|sum| sum.known).sum();
            let off = (figure.parse::<Decimal>().expect("a number") - sum).abs();
            assert!(off <= Decimal::new(5, 1), "{property}: {told} for {sum}");
        }
    }
    assert!(stated > 0 && silent > 0, "{stated} stated, {silent} silent");
    let back = recipe_ld::read(&text).expect("recipes");
    let titles = |recipes: &[engine::recipe::Recipe]| -> Vec<(String, usize)> {
        let one = |r: &engine::recipe::Recipe| (r.id.0.clone(), r.lines.len());
        recipes.iter().map(one).collect()
    };
    assert_eq!(titles(&back.recipes), titles(&book.recipes));
}

fn rows(text: &str) -> Vec<BTreeMap<String, String>> {
    let text = text.strip_prefix('\u{feff}').expect("the mark of UTF-8");
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    reader
        .deserialize()
        .map(|row| row.expect("a row"))
        .collect()
}

#[test]
fn figures_of_a_recipe_as_a_table() {
    let (book, reference) = (demo::book(), fixtures::reference());
    for recipe in &book.recipes {
        let study = reference.study_recipe(&book, recipe);
        let analysis = study.analysis.as_ref().expect("figures");
        let text = nutrient_csv::of_recipe(&reference.foods, &recipe.title, analysis);
        let rows = rows(&text);
        assert_eq!(rows.len(), reference.foods.nutrients().len());
        for row in rows {
            let id = NutrientId(row["nutrient number"].parse().expect("a number"));
            let sum = analysis.per_serving(id).expect("a total");
            match row["known"].as_str() {
                "unknown" => assert_eq!(row["per serving"], "", "nothing is no nought"),
                "known" => {
                    let figure: Decimal = row["per serving"].parse().expect("a number");
                    let digits = Digits(figure.scale());
                    assert_eq!(figure, round_half_up(sum.complete().expect("all"), digits));
                    assert_eq!(row["known for, % of weight"], "100");
                }
                _ => {
                    let figure: Decimal = row["per serving"].parse().expect("a number");
                    assert!(figure <= sum.known, "surely reached");
                    assert!(!sum.is_complete());
                }
            }
        }
    }
}

#[test]
fn averages_of_a_week_as_a_table() {
    let (book, reference) = (demo::book(), fixtures::reference());
    for week in &book.weeks {
        let study = reference.study_week(&book, week).expect("averages");
        let rows = rows(&nutrient_csv::of_week(
            &reference.foods,
            &week.title,
            &study,
        ));
        let nutrients = reference.foods.nutrients().len();
        assert_eq!(rows.len(), nutrients * study.services.len());
        for (service, rows) in study.services.iter().zip(rows.chunks(nutrients)) {
            let average = &service.average;
            for row in rows {
                assert_eq!(row["grade group"], average.service.group.0);
                let id: u16 = row["nutrient number"].parse().expect("a number");
                let found = average.nutrients.iter().find(|one| one.nutrient.0 == id);
                let amount = found.expect("an average").amount;
                if let Some(sum) = amount.complete() {
                    let figure: Decimal = row["average per meal"].parse().expect("a number");
                    assert_eq!(figure, round_half_up(sum, Digits(figure.scale())));
                }
            }
        }
    }
}

/// The reader of the page takes the schema's word for what a book is.
#[test]
fn an_empty_book_keeps_the_schema() {
    let text = write_book(&Book::empty("Fernhill"));
    assert_eq!(
        problems(&serde_json::from_str(&text).expect("JSON")),
        [""; 0]
    );
}
