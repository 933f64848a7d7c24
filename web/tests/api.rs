//! The JavaScript functions, called as a script calls them. They need the packed dataset, which
//! `cargo xtask test wasm` provides.
#![cfg(target_arch = "wasm32")]

use gramwright::api::{ApiError, Engine, ErrorKind};
use js_sys::{JSON, Uint8Array};
use serde_json::{Value, json};
use wasm_bindgen::prelude::*;
use wasm_bindgen_test::wasm_bindgen_test;

const FOODS: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../target/page-data/sr28.foods.bin"
);

const PROVENANCE: &str = concat!(
    env!("CARGO_MANIFEST_DIR"),
    "/../target/page-data/sr28.provenance.bin"
);

#[wasm_bindgen(module = "node:fs")]
extern "C" {
    #[wasm_bindgen(js_name = readFileSync, catch)]
    fn read_file(path: &str) -> Result<Uint8Array, JsValue>;
}

fn engine() -> Engine {
    let bytes = read_file(FOODS).expect("the dataset is packed by `cargo xtask test wasm`");
    Engine::new(&bytes.to_vec()).expect("an undamaged dataset")
}

/// As a script writes it.
fn js(value: &Value) -> JsValue {
    JSON::parse(&value.to_string()).expect("a JSON text")
}

/// As a script would read it.
fn read(value: Result<JsValue, JsValue>) -> Value {
    let value = value.unwrap_or_else(|error| panic!("{:?}", thrown(error)));
    let text = JSON::stringify(&value).expect("a plain value");
    serde_json::from_str(&String::from(text)).expect("a JSON text")
}

fn thrown(error: JsValue) -> ApiError {
    let text = JSON::stringify(&error).expect("errors are objects");
    serde_json::from_str(&String::from(text)).expect("errors have this form")
}

/// SR28's published values per 100 g: salt (02047) has 38,758 mg of sodium, granulated sugar
/// (19335) 387 kcal; a cup of it weighs 200 g, a teaspoon of salt 6 g.
fn syrup() -> Value {
    json!({
        "id": "syrup",
        "title": "Syrup",
        "servings": "4",
        "lines": [
            { "text": "1 cup granulated sugar", "correction": { "food": "SR28:19335" } },
            { "text": "1 tsp table salt", "correction": { "food": "SR28:02047" } },
            { "text": "vanilla to taste" },
        ],
    })
}

fn nutrient(figures: &Value, number: u16) -> Value {
    let rows = figures["nutrients"].as_array().expect("a list");
    let found = rows.iter().find(|row| row["nutrient"] == number);
    found.expect("a nutrient of the dataset").clone()
}

#[wasm_bindgen_test]
fn finds_foods_while_one_types() {
    let found = read(engine().search_foods("salt tab", 3));
    let found = found.as_array().expect("a list");
    assert!(found.len() <= 3);
    assert_eq!(found[0]["food"], "SR28:02047");
    assert_eq!(found[0]["description"], "Salt, table");
    assert!(found[0]["confidence"].is_u64());
}

/// A cup of chopped raw onions weighs 160 g (SR28, measures of 11282).
#[wasm_bindgen_test]
fn reads_a_line() {
    let line = read(engine().read_line("3 cups onions, chopped"));
    assert_eq!(line["kind"], "ingredient");
    assert_eq!(line["food"], "SR28:11282");
    assert_eq!(line["grams"], "480");
    assert_eq!(line["problem"], Value::Null);
}

#[wasm_bindgen_test]
fn what_is_not_known_is_null_and_says_why() {
    let line = read(engine().read_line("salt to taste"));
    assert_eq!(line["grams"], Value::Null);
    let remedy = line["problem"]["remedy"].as_str().expect("a remedy");
    assert!(remedy.contains("weight"), "{remedy}");
}

#[wasm_bindgen_test]
fn studies_a_recipe_exactly() {
    let figures = read(engine().study_recipe(js(&syrup()), JsValue::UNDEFINED));
    assert_eq!(figures["grams"], "206");
    assert_eq!(figures["unknownLines"], json!([2]));
    let energy = nutrient(&figures, 208);
    // 2 × 387 kcal over four servings.
    assert_eq!(energy["perServing"]["known"], "193.5");
    assert_eq!(energy["perServing"]["complete"], false);
    assert_eq!(energy["perServing"]["unweighed"], 1);
    let sodium = nutrient(&figures, 307);
    // 6 % of 38,758 mg from the salt, twice 1 mg from the sugar, over four servings.
    assert_eq!(sodium["perServing"]["known"], "581.87");
    // Added sugars are in no value of SR28.
    assert_eq!(nutrient(&figures, 539)["perServing"]["known"], Value::Null);
}

#[wasm_bindgen_test]
fn makes_a_facts_panel() {
    let options = json!({ "servingWords": "1/4 cup" });
    let panel = read(engine().nutrition_facts(js(&syrup()), js(&options), JsValue::UNDEFINED));
    assert_eq!(panel["servings"], "4 servings per container");
    assert_eq!(panel["complete"], false);
    assert!(panel["rows"].as_array().expect("a list").len() > 10);
}

#[wasm_bindgen_test]
fn studies_a_week() {
    let meal = json!({
        "kind": "lunch", "group": "K-5", "plannedMeals": "100",
        "offers": [{ "title": "Drink", "take": 1,
            "choices": [{ "recipe": "syrup", "planned": "50" }] }],
    });
    let week = json!({
        "id": "first", "title": "First",
        "days": [{ "date": "2026-11-30", "meals": [meal] }],
    });
    let book = json!({ "version": 1, "office": "", "recipes": [syrup()], "weeks": [week] });
    let figures = read(engine().study_week(js(&book), "first".to_owned()));
    let service = &figures["services"][0];
    assert_eq!(service["plannedMeals"], "100");
    let findings = service["findings"].as_array().expect("a list");
    let energy = findings
        .iter()
        .find(|row| row["nutrient"] == 208 && row["bound"] == "at least")
        .expect("a limit on calories");
    // Half of 193.5 kcal; with an unknown line it may be more, but the limit of 550 kcal may
    // still be missed.
    assert_eq!(energy["figure"], "96.75");
    assert_eq!(energy["limit"], "550");
    assert_eq!(energy["verdict"], "unknown");

    let error = thrown(
        engine()
            .study_week(js(&book), "second".to_owned())
            .unwrap_err(),
    );
    assert_eq!(
        (error.kind, error.r#where.as_str()),
        (ErrorKind::Week, "weekId")
    );
}

#[wasm_bindgen_test]
fn errors_say_where_and_what_to_do() {
    let with = |key: &str, value: Value| {
        let mut recipe = syrup();
        recipe[key] = value;
        let error = engine().study_recipe(js(&recipe), JsValue::UNDEFINED);
        thrown(error.expect_err("a recipe that cannot be studied"))
    };
    for (key, value, kind, place) in [
        ("servings", json!(4), ErrorKind::Input, "recipe.servings"),
        ("servings", json!("0"), ErrorKind::Recipe, "recipe.servings"),
        (
            "lines",
            json!([{ "text": "salt" }, { "text": 5 }]),
            ErrorKind::Input,
            "recipe.lines[1].text",
        ),
        (
            "lines",
            json!([{ "text": "salt", "correction": { "food": "02047" } }]),
            ErrorKind::Input,
            "recipe.lines[0].correction.food",
        ),
    ] {
        let error = with(key, value);
        assert_eq!((error.kind, error.r#where.as_str()), (kind, place));
        assert!(!error.message.is_empty() && !error.remedy.is_empty());
    }
    let damaged = thrown(Engine::new(b"no dataset").expect_err("no tables"));
    assert_eq!(damaged.kind, ErrorKind::Tables);
}

/// SR28 gives granulated sugar 99.98 g of carbohydrate: 200 g in four servings make 49.99 g.
#[wasm_bindgen_test]
fn counts_say_how_sure_they_are() {
    let mut engine = engine();
    let count = |engine: &Engine| {
        read(engine.carbohydrate_count(js(&syrup()), JsValue::UNDEFINED))["carbohydrate"].clone()
    };
    let before = count(&engine);
    assert_eq!(before["amount"]["known"], "49.99");
    assert_eq!(before["uncertainty"], Value::Null);
    let bytes = read_file(PROVENANCE).expect("the dataset is packed by `cargo xtask test wasm`");
    engine
        .load_provenance(&bytes.to_vec())
        .expect("an undamaged dataset");
    assert!(count(&engine)["uncertainty"]["standard"].is_string());
    let source = read(engine.value_source(js(&json!("SR28:01123")), 203));
    assert!(source["dataPoints"].as_u64() > Some(0), "{source}");
    let damaged = thrown(
        engine
            .load_provenance(b"no dataset")
            .expect_err("no tables"),
    );
    assert_eq!(damaged.kind, ErrorKind::Tables);
}

#[wasm_bindgen_test]
fn the_rest_of_the_trade_is_there() {
    let engine = engine();
    let recipe = json!({
        "id": "r", "title": "R", "servings": "2",
        "lines": [{ "text": "500 g chicken breast", "correction": { "food": "SR28:05062" } }],
    });
    let temperatures = read(engine.temperatures(js(&recipe), JsValue::UNDEFINED));
    assert_eq!(temperatures["steps"][0]["fahrenheit"], "165");
    assert!(
        temperatures["caution"]
            .as_str()
            .expect("words")
            .contains("local food codes")
    );
    let steps = read(engine.recipe_steps(js(&recipe), JsValue::UNDEFINED));
    let cooked = steps["lines"][0]["canBeCooked"].as_array().expect("a list");
    assert!(!cooked.is_empty());
    let claims = read(engine.claims(js(&recipe), JsValue::UNDEFINED, JsValue::UNDEFINED));
    assert!(claims.is_object());
    let csv = "description,grams,NA\nSalsa,30,125\n";
    let foods = read(engine.own_foods_from_csv(csv, 4, "price list"));
    assert_eq!(
        (&foods[0]["number"], &foods[0]["description"]),
        (&json!(4), &json!("Salsa"))
    );
    let wrong = engine.own_foods_from_csv("description,grams,NA\nSalsa,30,much\n", 1, "");
    let wrong = thrown(wrong.expect_err("a cell that is no number"));
    assert!(wrong.r#where.starts_with("line 2"), "{}", wrong.r#where);
    let wrong = thrown(engine.own_foods_from_fdc_json("{", 1).expect_err("no JSON"));
    assert_eq!(wrong.kind, ErrorKind::Input);
}

/// A week of lunches that serves the brine to half of the children.
fn with_brine() -> (Value, Value) {
    let brine = json!({
        "id": "brine",
        "title": "Brine",
        "servings": "100",
        "lines": [
            { "text": "5 lb onions, chopped", "correction": { "food": "SR28:11282" } },
            { "text": "1 cup table salt", "correction": { "food": "SR28:02047" } },
        ],
    });
    let lunch = json!({
        "kind": "lunch",
        "group": "K-5",
        "plannedMeals": "100",
        "offers": [{ "title": "Side", "take": 1, "choices": [{ "recipe": "brine", "planned": "50" }] }],
    });
    let book = json!({
        "version": 1,
        "office": "Millbrook",
        "recipes": [brine],
        "weeks": [{ "id": "w", "title": "Week", "days": [{ "date": "2026-11-30", "meals": [lunch] }] }],
    });
    (brine, book)
}

/// SR28: 100 g of salt have 38,758 mg of sodium, a cup of it weighs 292 g. A quarter less of the cup in
/// 100 servings is 292 × 0.25 × 387.58 / 100 = 282.9334 mg less in each, and half of that in the
/// average of twice as many meals.
#[wasm_bindgen_test]
fn proposes_what_else_could_go_there() {
    let (brine, book) = with_brine();
    let goals = json!([{ "aim": { "kind": "less", "nutrient": 307 }, "weight": 1 }]);
    let request = json!({ "line": 1, "goals": goals });
    let engine = engine();
    let found = read(engine.propose_swaps(js(&brine), js(&request), js(&book)));
    let moves = found["moves"].as_array().expect("a list");
    let less = moves.iter().find(|one| one["change"]["id"] == "less salt");
    let less = less.expect("a move of the kitchen table");
    assert_eq!(less["lines"][0]["text"], "3/4 cup table salt");
    let sodium = |rows: &Value| {
        let rows = rows.as_array().expect("a list").iter();
        let mut sodium = rows.filter(|row| row["nutrient"] == 307);
        sodium.next().expect("the goal is shown")["change"].clone()
    };
    let change = sodium(&less["nutrients"]);
    assert_eq!(change, json!({ "low": "-282.9334", "high": "-282.9334" }));
    let service = &less["weeks"][0]["services"][0];
    assert_eq!(less["weeks"][0]["week"], "w");
    assert_eq!(service["group"], "K-5");
    let change = sodium(&service["nutrients"]);
    assert_eq!(change["low"], "-141.4667");
    assert!(
        less["reasons"]
            .as_array()
            .is_some_and(|all| !all.is_empty())
    );

    let request = json!({ "line": 7, "goals": goals });
    let error = thrown(
        engine
            .propose_swaps(js(&brine), js(&request), js(&book))
            .unwrap_err(),
    );
    assert_eq!(error.kind, ErrorKind::Recipe);
    assert_eq!(error.r#where, "request.line");
    assert!(!error.remedy.is_empty());
}

/// SR28's salt (02047) has 38,758 mg of sodium in 100 g: 6 g of it in four servings are 581 mg each.
/// That a week is mended is seen in the browser.
#[wasm_bindgen_test]
fn says_why_a_week_cannot_be_mended() {
    let limit = "meal,group,nutrient,basis,kcal_per_gram,bound,limit,unit,leaves_out,from,until,only_when,paragraph,source,status,words\n\
         supper,cooks,307,per meal,,at most,500,mg,,2026-08-01,,,policy,office,own,sodium\n";
    // Of a supper for grown-ups the rules ask nothing; group, pattern and limit are the office's own.
    let pattern = "meal,group,component,period,bound,amount,unit,force,counted,scaled_to,from,until,only_when,paragraph,source,status,words\n\
         supper,cooks,fruits,day,at least,0,cup,required,smallest,,2026-08-01,,,policy,office,own,fruits each day\n";
    let day = |date: &str| {
        json!({
            "date": date,
            "meals": [{
                "kind": "supper",
                "group": "cooks",
                "plannedMeals": "10",
                "offers": [{
                    "title": "Sweet",
                    "take": 1,
                    "choices": [{ "recipe": "syrup", "planned": "10" }],
                }],
            }],
        })
    };
    let book = json!({
        "version": 1,
        "office": "Quillhaven",
        "recipes": [syrup()],
        "weeks": [{
            "id": "first",
            "title": "First",
            "days": [day("2026-11-30"), day("2026-12-01"), day("2026-12-02")],
        }],
        "ownRules": { "dietarySpecifications": limit, "mealPatterns": pattern },
    });
    let ask = json!({ "margin": 0, "ways": { "swaps": false } });
    // The vanilla "to taste" leaves the figure a lower bound: it is missed for certain, but less
    // salt alone cannot show it met.
    let open = read(engine().mend_week(js(&book), "first".into(), js(&ask)));
    assert_eq!(open["outcome"]["kind"], "impossible", "{open}");
    assert_eq!(
        open["outcome"]["because"][0]["requirement"]["words"],
        "sodium"
    );

    assert_eq!(open["progress"]["doing"], "done");

    let error = thrown(
        engine()
            .mend_week(js(&book), "none".into(), js(&ask))
            .expect_err("no such week"),
    );
    assert_eq!(error.kind, ErrorKind::Week);
}
