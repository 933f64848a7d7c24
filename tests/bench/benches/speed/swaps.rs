//! Ranking all foods for a line, against one pass over the columns that a
//! ranking of all foods must read.

use criterion::Criterion;
use engine::book::Book;
use engine::foods::{FoodId, NutrientId};
use engine::recipe::Recipe;
use engine::swaps::{Aim, Goals, Place, SwapIndex, SwapOptions, rank};
use rust_decimal::prelude::ToPrimitive;
use std::hint::black_box;

const CHILI: &str = r#"{
    "id": "chili", "title": "Bean and beef chili", "servings": "50",
    "lines": [
        {"text": "9 lb ground beef"}, {"text": "2 lb onions, chopped"},
        {"text": "1/4 cup salt"}, {"text": "6 lb canned diced tomatoes"},
        {"text": "12 lb canned kidney beans"}, {"text": "2 qt beef broth"},
        {"text": "3 lb cheddar cheese, shredded"}, {"text": "2 qt sour cream"}
    ]
}"#;

/// What each food is compared by: its group, energy, body, and the goals.
struct Columns {
    group: Vec<u16>,
    values: Vec<Vec<f64>>,
}

pub fn run(criterion: &mut Criterion) {
    let reference = crate::reference();
    let foods = &reference.foods;
    let goals = [NutrientId::SODIUM, NutrientId::SATURATED_FAT];
    let read = [
        NutrientId::ENERGY,
        NutrientId::WATER,
        NutrientId::PROTEIN,
        NutrientId::FAT,
        NutrientId::CARBOHYDRATE,
        goals[0],
        goals[1],
    ];
    let column = |nutrient: &NutrientId| -> Vec<f64> {
        let value = |id: FoodId| foods.per_100_g(id, *nutrient)?.to_f64();
        foods
            .foods()
            .iter()
            .map(|food| value(food.id).unwrap_or(f64::NAN))
            .collect()
    };
    let columns = Columns {
        group: foods.foods().iter().map(|food| food.group.0).collect(),
        values: read.iter().map(column).collect(),
    };
    let index = SwapIndex::build(reference).expect("the tables of swaps");
    let recipe: Recipe = serde_json::from_str(CHILI).expect("a recipe");
    let book = Book::empty("Quillhaven");
    let study = reference.study_recipe(&book, &recipe);
    let goals = Goals::equal(&goals.map(Aim::Less));
    let options = SwapOptions::default();
    let ranked = |line| {
        let place = Place {
            book: &book,
            recipe: &recipe,
            study: &study,
            line,
        };
        rank(reference, &index, &place, &goals, &options).map_or(0, |found| found.len())
    };
    for line in 0..recipe.lines.len() {
        println!("{}: {} foods ranked", recipe.lines[line].text, ranked(line));
    }
    let mut group = criterion.benchmark_group("swaps");
    let mut line = 0;
    group.bench_function("rank", |bencher| {
        bencher.iter(|| {
            line = (line + 1) % recipe.lines.len();
            ranked(line)
        });
    });
    group.bench_function("pass", |bencher| {
        bencher.iter(|| {
            let columns = black_box(&columns);
            let mut least = f64::MAX;
            for (at, group) in columns.group.iter().enumerate() {
                let mut score = f64::from(*group);
                for column in &columns.values {
                    score += column[at];
                }
                least = least.min(score);
            }
            least
        });
    });
    group.finish();
}
