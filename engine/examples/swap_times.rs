//! How long proposals for a line take, on this machine.
//!
//! `cargo run --release -p gramwright-engine --example swap_times`

use engine::book::Book;
use engine::foods::NutrientId;
use engine::recipe::Recipe;
use engine::reference::Reference;
use engine::swaps::{Aim, Goals, Place, SwapIndex, SwapOptions, propose};
use std::time::Instant;

const CHILI: &str = r#"{
    "id": "chili", "title": "Bean and beef chili", "servings": "50",
    "lines": [
        {"text": "9 lb ground beef"}, {"text": "2 lb onions, chopped"},
        {"text": "1/4 cup garlic powder"}, {"text": "1/2 cup chili powder"},
        {"text": "1/4 cup salt"}, {"text": "6 lb canned diced tomatoes"},
        {"text": "2 qt tomato sauce"}, {"text": "12 lb canned kidney beans"},
        {"text": "2 qt beef broth"}, {"text": "3 lb cheddar cheese, shredded"},
        {"text": "1 lb butter"}, {"text": "2 qt sour cream"}
    ]
}"#;

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let reference = Reference::committed(&nutrient_data::asset::committed().0)
        .map_err(|error| error.to_string())?;
    let start = Instant::now();
    let index = SwapIndex::build(&reference)?;
    println!("index: {:?}", start.elapsed());
    let recipe: Recipe = serde_json::from_str(CHILI)?;
    let book = Book::empty("Example");
    let start = Instant::now();
    let study = reference.study_recipe(&book, &recipe);
    println!("one study: {:?}", start.elapsed());
    let goals = Goals::equal(&[
        Aim::Less(NutrientId::SODIUM),
        Aim::Less(NutrientId::SATURATED_FAT),
    ]);
    for line in 0..recipe.lines.len() {
        let place = Place {
            book: &book,
            recipe: &recipe,
            study: &study,
            line,
        };
        let start = Instant::now();
        let proposals = propose(
            &reference,
            &index,
            &place,
            &goals,
            &SwapOptions::default(),
            8,
        )
        .map_err(|problem| problem.to_string())?;
        println!(
            "{:?} for {} foods and {} moves: {}",
            start.elapsed(),
            proposals.foods.len(),
            proposals.moves.len(),
            recipe.lines[line].text
        );
    }
    Ok(())
}
