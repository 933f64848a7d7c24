//! Times the search: `cargo run --release --example search_times`.
//!
//! Types each labelled query letter by letter and prints how long one key
//! stroke takes.

use engine::foods::{Food, FoodGroup, FoodId, SearchIndex};
use std::path::Path;
use std::time::{Duration, Instant};

fn table(path: &str) -> Vec<csv::StringRecord> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(path);
    let reader = csv::Reader::from_path(path).expect("the table is in the repository");
    let rows: Result<_, _> = reader.into_records().collect();
    rows.expect("the table is well formed")
}

fn food(record: &csv::StringRecord) -> Food {
    Food {
        id: FoodId::Sr28(record[0].parse().expect("a number")),
        group: FoodGroup(record[1].parse().expect("a group")),
        description: record[2].to_owned(),
        common_names: record[3].to_owned(),
        manufacturer: record[4].to_owned(),
        refuse_percent: None,
        refuse_description: String::new(),
    }
}

fn main() {
    let foods: Vec<Food> = table("../nutrient-data/tables/sr28/foods.csv")
        .iter()
        .map(food)
        .collect();
    let synonyms = nutrient_data::kitchen::SYNONYMS;
    let builds = (0..9).map(|_| {
        let start = Instant::now();
        let index = SearchIndex::from_foods(&foods, synonyms).expect("the table is well formed");
        (start.elapsed(), index)
    });
    let (quickest, index) = builds.min_by_key(|(time, _)| *time).expect("nine builds");
    println!("build, quickest of nine: {quickest:?}");

    let mut times: Vec<(Duration, String)> = Vec::new();
    for label in table("tests/search_labels.csv") {
        let query = &label[0];
        for end in query
            .char_indices()
            .map(|(at, letter)| at + letter.len_utf8())
        {
            let typed = &query[..end];
            let start = Instant::now();
            let hits = index.search(typed, 20);
            times.push((start.elapsed(), typed.to_owned()));
            std::hint::black_box(hits);
        }
    }
    times.sort();
    let share = |percent: usize| times[(times.len() - 1) * percent / 100].0;
    println!(
        "{} key strokes: median {:?}, 90% {:?}, 99% {:?}",
        times.len(),
        share(50),
        share(90),
        share(99)
    );
    println!("slowest:");
    for (time, typed) in times.iter().rev().take(8) {
        println!("  {time:?} \"{typed}\"");
    }
}
