//! From the words of a line to what is in the dish: refuse, cooking, draining.
//! Weights worked by hand from SR28's measures, refuse and values.

use engine::book::Book;
use engine::exact::{Digits, round_half_up};
use engine::foods::{FoodId, NutrientId};
use engine::recipe::Recipe;
use engine::reference::{PrepareProblem, RecipeStudy, Reference};
use rust_decimal::Decimal;
use serde_json::{Value, json};
use std::sync::OnceLock;

fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| {
        Reference::committed(&nutrient_data::asset::committed().0).expect("the committed tables")
    })
}

fn recipe(line: &str, correction: &Value) -> Recipe {
    serde_json::from_value(json!({
        "id": "r", "title": "R", "servings": "1",
        "lines": [{ "text": line, "correction": correction }],
    }))
    .expect("the form of a recipe")
}

fn study(line: &str, correction: &Value) -> RecipeStudy {
    reference().study_recipe(&Book::empty("test"), &recipe(line, correction))
}

#[test]
fn weights_in_the_dish() {
    for (line, correction, food, grams) in [
        // 1000 g × 0.88, the table's yield for peeled onions.
        (
            "1000 g onions, peeled",
            json!({ "food": "SR28:11282" }),
            11282,
            "880",
        ),
        (
            "1000 g peeled onions",
            json!({ "food": "SR28:11282" }),
            11282,
            "1000",
        ),
        // 1000 g − 10 % refuse.
        (
            "1000 g onions",
            json!({ "food": "SR28:11282", "basis": "asPurchased" }),
            11282,
            "900",
        ),
        // A household measure is edible portion already: 1 cup, chopped, 160 g.
        (
            "1 cup onions, peeled and chopped",
            json!({ "food": "SR28:11282" }),
            11282,
            "160",
        ),
        // 500 g raw, 460 g after cooking as measured.
        (
            "500 g broccoli",
            json!({ "food": "SR28:11090", "cooked": { "food": "SR28:11091", "weight": "460" } }),
            11091,
            "460",
        ),
        // 1000 g × 2.85, the table's yield for boiled rice.
        (
            "1000 g rice",
            json!({ "food": "SR28:20044", "cooked": { "food": "SR28:20045" } }),
            20045,
            "2850",
        ),
        // 718 g × 6.64 ÷ 7.18, by the carbohydrate of raw and boiled broccoli.
        (
            "718 g broccoli",
            json!({ "food": "SR28:11090", "cooked": { "food": "SR28:11091" } }),
            11091,
            "664",
        ),
    ] {
        let study = study(line, &correction);
        let part = &study.parts[0];
        assert_eq!(part.food, Some(FoodId::Sr28(food)), "{line}");
        let weight = part.weight.expect("a weight").grams();
        let expected: Decimal = grams.parse().unwrap();
        assert_eq!(round_half_up(weight, Digits(6)), expected, "{line}");
        let (low, high) = part.bounds.expect("bounds");
        assert!(low.grams() <= weight && weight <= high.grams(), "{line}");
        assert_eq!(study.lines[0].problem, None, "{line}");
    }
}

/// Of the sodium 59 % stays after rinsing, by the table of treatments.
#[test]
fn rinsing_takes_sodium_and_nothing_else() {
    let plain = json!({ "food": "SR28:16029" });
    let rinsed = json!({ "food": "SR28:16029", "treatments": ["beans-rinsed"] });
    let amount = |correction, nutrient| {
        let study = study("240 g canned kidney beans", correction);
        study.analysis.unwrap().total(nutrient).unwrap().known
    };
    let kept = amount(&plain, NutrientId::SODIUM) * "0.59".parse::<Decimal>().unwrap();
    assert_eq!(amount(&rinsed, NutrientId::SODIUM), kept);
    assert_eq!(
        amount(&rinsed, NutrientId::PROTEIN),
        amount(&plain, NutrientId::PROTEIN)
    );
    let study = study("240 g canned kidney beans", &rinsed);
    assert_eq!(study.lines[0].treatments[0].status, "from memory");
}

#[test]
fn a_raw_food_offers_its_cooked_entries() {
    let offered = study("500 g broccoli", &json!({ "food": "SR28:11090" }));
    let cooked: Vec<FoodId> = offered.lines[0]
        .can_be_cooked
        .iter()
        .map(|offer| offer.cooked)
        .collect();
    assert!(cooked.contains(&FoodId::Sr28(11091)), "{cooked:?}");
    let chosen = study(
        "500 g broccoli",
        &json!({ "food": "SR28:11090", "cooked": { "food": "SR28:11091" } }),
    );
    assert!(!chosen.lines[0].retained.is_empty());
}

#[test]
fn what_cannot_be_is_named_and_counts_as_unknown() {
    for (correction, word) in [
        (
            json!({ "food": "SR28:11090", "cooked": { "food": "SR28:20045" } }),
            "weigh the cooked",
        ),
        (
            json!({ "food": "SR28:11090", "weight": "-5" }),
            "below zero",
        ),
        (json!({ "recipe": "lost" }), "no recipe \"lost\""),
    ] {
        let study = study("500 g broccoli", &correction);
        let problem: &PrepareProblem = study.lines[0].problem.as_ref().expect(word);
        assert!(problem.to_string().contains(word), "{problem}");
        let analysis = study.analysis.expect("a recipe with servings");
        assert!(
            !analysis.total(NutrientId::ENERGY).unwrap().is_complete(),
            "{word}"
        );
    }
}

#[test]
fn a_measured_batch_changes_100_g_and_not_the_serving() {
    let mut recipe = recipe("500 g broccoli", &json!({ "food": "SR28:11090" }));
    let of = |recipe: &Recipe| {
        let study = reference().study_recipe(&Book::empty("test"), recipe);
        let analysis = study.analysis.expect("a recipe with servings");
        let energy = NutrientId::ENERGY;
        (
            analysis.per_serving(energy).unwrap().known,
            analysis.per_100_g(energy).unwrap().known,
        )
    };
    let (serving, per_100_g) = of(&recipe);
    recipe.finished_weight = serde_json::from_value(json!("400")).unwrap();
    let (same_serving, denser) = of(&recipe);
    assert_eq!(serving, same_serving);
    assert_eq!(denser * Decimal::from(400), per_100_g * Decimal::from(500));
}

#[test]
fn the_size_of_a_serving_makes_the_servings() {
    for (size, servings) in [
        (json!({ "by": "weight", "serving": "125" }), "4"),
        (
            json!({ "by": "volume", "serving": "240", "batch": "1200" }),
            "5",
        ),
        (
            json!({ "by": "count", "serving": "2", "batch": "24" }),
            "12",
        ),
    ] {
        let mut recipe = recipe("500 g broccoli", &json!({ "food": "SR28:11090" }));
        recipe.serving_size = serde_json::from_value(size).expect("the form of a size");
        let study = reference().study_recipe(&Book::empty("test"), &recipe);
        let made = study.analysis.unwrap().servings.servings();
        assert_eq!(made, servings.parse::<Decimal>().unwrap());
    }
}
