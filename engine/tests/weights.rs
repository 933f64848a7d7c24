//! Lines weighed by the dataset's own measures, against the table beside this
//! file: each weight is the product of a published measure of SR28 and the
//! published ratio of two units.

use engine::exact::rounding::guarded;
use engine::foods::{FoodId, FoodTable};
use engine::recipe::{Route, WeighProblem, Weighed, read_line, weigh};
use rust_decimal::Decimal;

#[derive(serde::Deserialize)]
struct Case {
    food: u32,
    line: String,
    /// Weight in grams, or "!" and the kind of problem.
    grams: String,
    low: Option<Decimal>,
    high: Option<Decimal>,
    measure: Option<u8>,
    doubts: String,
    source: String,
}

fn kind(value: impl serde::Serialize) -> String {
    let value = serde_json::to_value(value).expect("results can be written");
    value["kind"].as_str().unwrap_or_default().to_owned()
}

fn written(weighed: &Result<Weighed, WeighProblem>) -> [String; 5] {
    match weighed {
        Ok(weighed) => {
            let grams = [weighed.grams, weighed.low, weighed.high]
                .map(|weight| guarded(weight.grams()).to_string());
            let measure = match &weighed.route {
                Route::Measure { measure } => measure.number.to_string(),
                _ => String::new(),
            };
            let doubts: Vec<String> = weighed.doubts.iter().map(kind).collect();
            let [used, low, high] = grams;
            [used, low, high, measure, doubts.join(" ")]
        }
        Err(problem) => [
            format!("!{}", kind(problem)),
            String::new(),
            String::new(),
            String::new(),
            String::new(),
        ],
    }
}

fn expected(case: &Case) -> [String; 5] {
    let number =
        |value: Option<Decimal>| value.map_or_else(String::new, |v| guarded(v).to_string());
    let used = case
        .grams
        .parse::<Decimal>()
        .map_or_else(|_| case.grams.clone(), |grams| guarded(grams).to_string());
    [
        used,
        number(case.low),
        number(case.high),
        case.measure
            .map_or_else(String::new, |number| number.to_string()),
        case.doubts.clone(),
    ]
}

fn foods() -> FoodTable {
    FoodTable::from_asset(&nutrient_data::asset::committed().0)
        .expect("the asset of the committed tables")
}

#[test]
fn lines_weigh_what_the_dataset_says() {
    let foods = foods();
    let cases: Vec<Case> = csv::Reader::from_reader(include_str!("weights.csv").as_bytes())
        .deserialize()
        .collect::<Result<_, _>>()
        .expect("weights.csv has the columns of a case");
    let mut wrong = Vec::new();
    for case in cases {
        let weighed = weigh(&foods, FoodId::Sr28(case.food), &read_line(&case.line));
        let (read, expected) = (written(&weighed), expected(&case));
        if read != expected {
            wrong.push(format!(
                "{:?} ({})\n  weighed  {read:?}\n  expected {expected:?}",
                case.line, case.source
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// Each measure of the dataset, quoted as a line, weighs what the dataset says
/// it does. Not all can: a slice "(1 oz)" states its weight and is weighed by
/// it, and some measures differ by a length that the quotation has lost.
#[test]
fn a_quoted_measure_weighs_what_it_says() {
    let foods = foods();
    let (mut right, mut all) = (0, 0);
    for food in foods.foods() {
        let name = food.description.split(',').next().unwrap_or_default();
        for measure in foods.measures(food.id) {
            let text = format!(
                "{} {} {name}",
                measure.amount,
                measure.words.replace(',', "")
            );
            let grams = measure.grams.grams();
            let as_said = weigh(&foods, food.id, &read_line(&text)).is_ok_and(|weighed| {
                let off = (weighed.grams.grams() - grams).abs();
                off * Decimal::ONE_HUNDRED <= grams
            });
            all += 1;
            right += usize::from(as_said);
        }
    }
    assert!(all > 15_000, "SR28 has 15 438 measures, read {all}");
    assert!(right * 100 >= all * 93, "{right} of {all}");
}
