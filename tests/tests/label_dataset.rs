//! The panel of every food of SR28, figure by figure, against whole-number
//! arithmetic on the published digits.
//!
//! Source of the digits: the committed text tables of SR28
//! (`nutrient-data/tables/sr28/values`), which `tests/dataset.rs` compares with
//! the release. Source of the rounding: 21 CFR 101.9(c), as
//! `tests/data/label_rounding.csv` cites it, and the Daily Values of
//! `tests/data/label_daily_values.csv`; both are read here, not the engine's
//! own tables. That a middle goes up is common practice, no source.

use engine::analysis::analyse;
use engine::foods::{FoodId, NutrientId};
use engine::label::{LabelTables, LabelTexts, PanelCell, PanelOptions, nutrition_facts};
use engine::recipe::WeighedLine;
use engine::units::{Grams, Servings};
use gramwright_tests::fixtures;
use gramwright_tests::typed::rows;
use rust_decimal::Decimal;
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// A number as whole billionths.
fn billionths(text: &str) -> i128 {
    let (whole, part) = text.split_once('.').unwrap_or((text, ""));
    format!("{whole}{part:0<9}")
        .parse()
        .unwrap_or_else(|_| panic!("{text} in a table"))
}

fn written(billionths: i128) -> String {
    let text = format!(
        "{}.{:09}",
        billionths / 1_000_000_000,
        billionths % 1_000_000_000
    );
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A figure as a fraction of whole numbers.
#[derive(Clone, Copy)]
struct Fraction {
    over: i128,
    under: i128,
}

/// The rule "<5: 0; <=50: nearest 5; >50: nearest 10" for one figure.
fn printed(rule: &str, figure: Fraction) -> String {
    let Fraction { over, under } = figure;
    for clause in rule.split("; ") {
        let (range, result) = clause.split_once(": ").expect("range: result");
        let digits = range.trim_start_matches(['<', '>', '=']);
        let reached = match range {
            "any" => true,
            _ if range.starts_with("<=") => over <= billionths(digits) * under,
            _ if range.starts_with('<') => over < billionths(digits) * under,
            _ => true,
        };
        if !reached {
            continue;
        }
        return match result.strip_prefix("nearest ") {
            None => result.to_owned(),
            Some(step) => {
                let step = billionths(step);
                let steps = (2 * over + step * under) / (2 * step * under);
                written(steps * step)
            }
        };
    }
    panic!("{rule} has no band for a figure")
}

/// What the panel needs of a nutrient, from the second typing.
struct Typed {
    nutrient: u16,
    unit: String,
    rule: String,
    /// Daily Value for ages 4 and over and the rule of its percent.
    daily: Option<(i128, String)>,
    values: BTreeMap<String, String>,
}

fn values_of(nutrient: u16) -> BTreeMap<String, String> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../nutrient-data/tables/sr28/values");
    let file = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .find(|path| {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            name.starts_with(&format!("{nutrient}-"))
        });
    let Some(file) = file else {
        return BTreeMap::new();
    };
    rows(&fs::read_to_string(file).unwrap())
        .into_iter()
        .map(|mut row| (row.remove("food").unwrap(), row.remove("value").unwrap()))
        .collect()
}

fn typed() -> Vec<Typed> {
    let rounding = rows(include_str!("../data/label_rounding.csv"));
    let rule = |figure: &str| {
        rounding
            .iter()
            .find(|row| {
                row["figures"] == figure || row["figures"].split(' ').any(|one| one == figure)
            })
            .map(|row| row["rule"].clone())
            .unwrap_or_else(|| panic!("no rounding of {figure}"))
    };
    let daily = rows(include_str!("../data/label_daily_values.csv"));
    rows(include_str!("../data/label_rows.csv"))
        .iter()
        .filter(|row| row["nutrient"] != "645" && row["nutrient"] != "646")
        .map(|row| Typed {
            nutrient: row["nutrient"].parse().unwrap(),
            unit: ["mcg", "mg", "g"]
                .into_iter()
                .find(|unit| row["line"].contains(&format!("{{}} {unit}")))
                .unwrap_or_default()
                .to_owned(),
            rule: rule(&row["nutrient"]),
            daily: daily
                .iter()
                .find(|daily| daily["nutrient"] == row["nutrient"] && row["percent"] == "yes")
                .map(|daily| {
                    let percent = rule(&format!("percent of {}", daily["kind"]));
                    (billionths(&daily["four_and_over"]), percent)
                }),
            values: values_of(row["nutrient"].parse().unwrap()),
        })
        .collect()
}

const GRAMS: i128 = 250;
const SERVINGS: i128 = 7;

impl Typed {
    /// Amount and percent of a seventh of 250 g.
    fn expected(&self, food: &str) -> (String, Option<String>) {
        let Some(value) = self.values.get(food) else {
            let unknown = "not known".to_owned();
            return (unknown.clone(), self.daily.as_ref().map(|_| unknown));
        };
        let figure = Fraction {
            over: billionths(value) * GRAMS,
            under: 100 * SERVINGS,
        };
        let amount = printed(&self.rule, figure);
        let percent = self.daily.as_ref().map(|(daily, rule)| {
            if amount == "0" {
                return "0%".to_owned();
            }
            let share = Fraction {
                over: figure.over * 100 * 1_000_000_000,
                under: figure.under * daily,
            };
            format!("{}%", printed(rule, share))
        });
        let has_unit = self.unit.is_empty() || amount.starts_with("less than");
        let amount = match has_unit {
            true => amount,
            false => format!("{amount} {}", self.unit),
        };
        (amount, percent)
    }
}

#[test]
fn every_food_of_the_dataset() {
    let tables = LabelTables::new(&LabelTexts::committed()).unwrap();
    let foods = fixtures::foods();
    let typed = typed();
    let grams = Grams::new(Decimal::from_i128_with_scale(GRAMS, 0));
    let servings = Servings::new(Decimal::from_i128_with_scale(SERVINGS, 0));
    let (mut figures, mut unknown) = (0, 0);
    for food in foods.foods() {
        let FoodId::Sr28(number) = food.id else {
            continue;
        };
        let lines = [WeighedLine::new(0, Some(food.id), Some(grams))];
        let analysis = analyse(foods, &lines, servings).unwrap();
        let panel = nutrition_facts(&analysis, &tables, &PanelOptions::default());
        let cells: BTreeMap<NutrientId, &PanelCell> = std::iter::once(&panel.calories)
            .chain(&panel.rows)
            .map(|row| (row.nutrient, &row.cells[0]))
            .collect();
        assert_eq!(cells.len(), typed.len());
        for nutrient in &typed {
            let (amount, percent) = nutrient.expected(&format!("{number:05}"));
            let cell = cells[&NutrientId(nutrient.nutrient)];
            assert_eq!(
                (&cell.amount, &cell.percent),
                (&amount, &percent),
                "nutrient {} of {number:05}, {}",
                nutrient.nutrient,
                food.description
            );
            figures += 1;
            unknown += usize::from(amount == "not known");
        }
    }
    // SR28 has 8,789 foods; a panel has fifteen figures.
    assert_eq!(figures, 8_789 * 15);
    assert!(
        unknown > 8_789,
        "added sugars alone are unknown for every food"
    );
}
