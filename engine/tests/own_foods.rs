//! Own foods from each kind of source, and what each refuses.
//!
//! The JSON and CSV forms follow the published download formats of USDA
//! FoodData Central (field names from memory); the foods in them are invented.
//! Label intervals follow 21 CFR 101.9(c).

use engine::foods::{FoodId, FoodTable, NutrientId};
use engine::label::{LabelTables, LabelTexts};
use engine::own_foods::{
    Declared, FdcTables, OwnFood, OwnSource, entry, from_csv, from_fdc_csv, from_fdc_json,
};
use engine::units::Grams;
use rust_decimal::Decimal;
use std::sync::OnceLock;

fn foods() -> &'static FoodTable {
    static FOODS: OnceLock<FoodTable> = OnceLock::new();
    FOODS.get_or_init(|| {
        FoodTable::from_asset(&nutrient_data::asset::committed().0).expect("the committed asset")
    })
}

fn label_tables() -> LabelTables {
    LabelTables::new(&LabelTexts::committed()).expect("the committed tables")
}

fn dec(text: &str) -> Decimal {
    text.parse().expect("a decimal")
}

fn labelled(nutrient: NutrientId, printed: &str, serving: &str) -> OwnFood {
    OwnFood {
        number: 1,
        description: "Rolls, whole wheat, Millbrook bakery".into(),
        ingredients: "whole wheat flour, water, yeast, salt, sesame seeds".into(),
        measures: Vec::new(),
        source: OwnSource::Label {
            serving: Grams::new(dec(serving)),
            declared: vec![Declared {
                nutrient,
                printed: printed.into(),
            }],
            reference: "package of 2 October 2026".into(),
        },
    }
}

#[test]
fn a_label_figure_stands_for_all_that_prints_as_it() {
    for (nutrient, printed, low, high) in [
        (NutrientId::SODIUM, "0", "0", "5"),
        // 143 mg is above 140 and prints to the nearest 10, as 140.
        (NutrientId::SODIUM, "140", "137.5", "145"),
        (NutrientId::SODIUM, "150", "145", "155"),
        (NutrientId::ENERGY, "45", "42.5", "47.5"),
        (NutrientId::ENERGY, "230", "225", "235"),
        (NutrientId::SATURATED_FAT, "0", "0", "0.5"),
        (NutrientId::SATURATED_FAT, "3.5", "3.25", "3.75"),
        (NutrientId::FAT, "12", "11.5", "12.5"),
        (NutrientId::SUGARS, "less than 1", "0.5", "1"),
        (NutrientId::CHOLESTEROL, "less than 5", "2", "5"),
    ] {
        // A serving of 50 g doubles every figure per 100 g.
        let own = entry(&labelled(nutrient, printed, "50"), &label_tables()).unwrap();
        let value = own.values[0];
        let twice = |text: &str| dec(text) * Decimal::TWO;
        assert_eq!(
            (value.low, value.high),
            (twice(low), twice(high)),
            "{nutrient:?} {printed}"
        );
        assert!(value.low <= value.per_100_g && value.per_100_g <= value.high);
    }
}

#[test]
fn the_table_answers_for_own_foods() {
    let own = entry(&labelled(NutrientId::SODIUM, "150", "50"), &label_tables()).unwrap();
    let table = foods().with_own(vec![own]);
    let id = FoodId::Own(1);
    assert_eq!(table.per_100_g(id, NutrientId::SODIUM), Some(dec("300")));
    assert_eq!(
        table.per_100_g(id, NutrientId::IRON),
        None,
        "missing is not zero"
    );
    assert_eq!(
        table.interval_per_100_g(id, NutrientId::SODIUM),
        Some((dec("290"), dec("310")))
    );
    assert!(table.food(id).is_some() && foods().food(id).is_none());
}

#[test]
fn figures_that_no_label_prints_are_refused() {
    for (nutrient, printed, serving, word) in [
        (NutrientId::SODIUM, "143", "50", "rounding"),
        (NutrientId::SODIUM, "-5", "50", "rounding"),
        (NutrientId::SODIUM, "plenty", "50", "rounding"),
        (NutrientId::SODIUM, "", "50", "rounding"),
        (NutrientId::SODIUM, "140", "0", "weight"),
        (NutrientId::WATER, "3", "50", "row"),
    ] {
        let error = entry(&labelled(nutrient, printed, serving), &label_tables()).unwrap_err();
        assert!(error.to_string().contains(word), "{error}");
        assert!(!error.remedy.is_empty());
    }
}

#[test]
fn a_csv_of_own_foods() {
    let text = "description,grams,ENERC_KCAL,NA,CA,FASAT\nMillbrook salsa,30,10,125,,0\n";
    let twice = from_csv(text, foods().nutrients(), 5, "price list").unwrap();
    assert_eq!(twice.len(), 1);
    let OwnSource::Values { per, values, .. } = &twice[0].source else {
        panic!("a CSV gives values");
    };
    assert_eq!((twice[0].number, *per), (5, Grams::new(dec("30"))));
    assert_eq!(values.len(), 3, "the empty cell is missing, not zero");
    let own = entry(&twice[0], &label_tables()).unwrap();
    let table = foods().with_own(vec![own]);
    let sodium = table.per_100_g(FoodId::Own(5), NutrientId::SODIUM).unwrap();
    assert_eq!(
        engine::exact::round_half_up(sodium, engine::exact::Digits(4)),
        dec("416.6667")
    );
}

#[test]
fn bad_cells_name_line_and_column() {
    for (text, place, problem) in [
        (
            "description,grams,NA\nSalsa,30,much\n",
            "line 2, column \"NA\"",
            "not a number",
        ),
        (
            "description,grams,NA\nSalsa,30,-1\n",
            "line 2, column \"NA\"",
            "below zero",
        ),
        (
            "description,grams,NA\nSalsa,0,1\n",
            "line 2, column \"grams\"",
            "zero",
        ),
        (
            "description,grams,NA\n,30,1\n",
            "line 2, column \"description\"",
            "no name",
        ),
        (
            "description,grams,SALT\nSalsa,30,1\n",
            "column \"SALT\"",
            "no nutrient",
        ),
        (
            "description,grams,VITD\nSalsa,30,1\n",
            "column \"VITD\"",
            "more than one unit",
        ),
        ("description,NA\nSalsa,1\n", "header", "grams"),
        ("description,grams,NA\nSalsa,30\n", "line 2", "found record"),
    ] {
        let error = from_csv(text, foods().nutrients(), 1, "").unwrap_err();
        assert!(error.place.contains(place), "{text}: {error}");
        assert!(error.problem.contains(problem), "{text}: {error}");
    }
}

const FDC_FOOD: &str = r#"{"fdcId": 990001, "description": "Salsa, mild", "ingredients": "TOMATOES, ONIONS",
  "foodNutrients": [
    {"nutrient": {"number": "307", "name": "Sodium, Na", "unitName": "mg"}, "amount": 430.10},
    {"nutrient": {"number": "328", "name": "Vitamin D (D2 + D3)", "unitName": "µg"}, "amount": 0E-8},
    {"nutrient": {"number": "539", "name": "Sugars, added", "unitName": "g"}, "amount": 1.2},
    {"nutrient": {"number": "9999", "name": "Something else", "unitName": "g"}, "amount": 1.2},
    {"nutrient": {"number": "303", "name": "Iron, Fe", "unitName": "mg"}}],
  "foodPortions": [{"amount": 1.0, "gramWeight": 259.0, "modifier": "", "measureUnit": {"name": "cup"}}]}"#;

#[test]
fn fooddata_central_json_in_its_three_forms() {
    for text in [
        FDC_FOOD.to_owned(),
        format!("[{FDC_FOOD}]"),
        format!("{{\"FoundationFoods\": [{FDC_FOOD}]}}"),
    ] {
        let read = from_fdc_json(&text, foods().nutrients(), 7).unwrap();
        assert_eq!((read.len(), read[0].number), (1, 7));
        let table = foods().with_own(vec![entry(&read[0], &label_tables()).unwrap()]);
        let of = |nutrient| table.per_100_g(FoodId::Own(7), nutrient);
        assert_eq!(of(NutrientId::SODIUM), Some(dec("430.1")));
        assert_eq!(
            of(NutrientId::ADDED_SUGARS),
            Some(dec("1.2")),
            "SR28 has none of these"
        );
        assert_eq!(of(NutrientId::VITAMIN_D), Some(Decimal::ZERO));
        assert_eq!(of(NutrientId::IRON), None, "no amount is missing, not zero");
        let measure = &table.measures(FoodId::Own(7))[0];
        assert_eq!(
            (measure.words.as_str(), measure.grams),
            ("cup", Grams::new(dec("259.0")))
        );
    }
}

#[test]
fn json_that_is_not_of_the_form_is_refused() {
    for (text, problem) in [
        ("{", "EOF"),
        ("{\"recipes\": []}", "neither"),
        (
            &FDC_FOOD.replace("\"mg\"}, \"amount\": 430.10", "\"g\"}, \"amount\": 430.10"),
            "unit",
        ),
        (&FDC_FOOD.replace("430.10", "-430.10"), "not an amount"),
        (&FDC_FOOD.replace("430.10", "\"salty\""), "not an amount"),
    ] {
        let error = from_fdc_json(text, foods().nutrients(), 1).unwrap_err();
        assert!(error.problem.contains(problem), "{error}");
    }
}

#[test]
fn fooddata_central_csv() {
    let texts = FdcTables {
        food: "\"fdc_id\",\"data_type\",\"description\"\n\"990002\",\"sr_legacy_food\",\"Salsa, hot\"\n",
        food_nutrient: "id,fdc_id,nutrient_id,amount,data_points\n1,990002,1093,430.10,3\n2,990002,1089,,\n3,990002,2047,29,\n",
        nutrient: "id,name,unit_name,nutrient_nbr,rank\n1093,\"Sodium, Na\",MG,307,5800\n1089,\"Iron, Fe\",MG,303,5400\n2047,Energy (Atwater General Factors),KCAL,957.0,280\n",
    };
    let read = from_fdc_csv(texts, foods().nutrients(), 3).unwrap();
    let OwnSource::Values { values, .. } = &read[0].source else {
        panic!("a table gives values");
    };
    assert_eq!(values.len(), 1);
    assert_eq!(
        (values[0].nutrient, values[0].amount),
        (NutrientId::SODIUM, dec("430.10"))
    );
    let broken = FdcTables {
        food: "fdc_id,data_type\n1,x\n",
        ..texts
    };
    let error = from_fdc_csv(broken, foods().nutrients(), 3).unwrap_err();
    assert!(error.place.starts_with("food.csv, line 2"), "{error}");
}
