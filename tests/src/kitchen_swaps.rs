//! The labelled swaps of `data/kitchen_swaps.csv`, each as a line in a recipe.

use crate::fixtures::reference;
use engine::book::Book;
use engine::components::BeansRole;
use engine::foods::{FoodId, NutrientId};
use engine::recipe::{Correction, Recipe, RecipeId, RecipeLine};
use engine::reference::{RecipeStudy, Reference};
use engine::swaps::{Aim, Goals, Place, Proposals, SwapIndex, SwapOptions, SwapProblem, propose};
use engine::tables;
use engine::units::Servings;
use serde::Deserialize;
use std::sync::OnceLock;

/// A swap that practice knows.
#[derive(Debug, Clone, Deserialize)]
pub struct KnownSwap {
    /// What it is, in words.
    pub name: String,
    /// The line as a cook writes it.
    pub line: String,
    /// SR28 number of its food.
    pub food: u32,
    goals: String,
    accept: String,
    set: String,
    /// Where it was read.
    pub source: String,
}

impl KnownSwap {
    /// All rows of the table.
    ///
    /// # Panics
    /// When the table is damaged.
    pub fn all() -> Vec<Self> {
        let rows = tables::read("kitchen_swaps", include_str!("../data/kitchen_swaps.csv"));
        let rows: Vec<tables::Row<Self>> = rows.expect("the table of known swaps");
        rows.into_iter().map(|row| row.row).collect()
    }

    /// What it is meant to move.
    ///
    /// # Panics
    /// When the row says it otherwise than "less sodium; more fibre".
    pub fn goals(&self) -> Goals {
        let aim = |one: &str| match one.trim().split_once(' ') {
            Some(("less", name)) => Aim::Less(nutrient(name)),
            Some(("more", name)) => Aim::More(nutrient(name)),
            _ => panic!("{one}: write \"less sodium\" or \"more fibre\""),
        };
        Goals::equal(&self.goals.split(';').map(aim).collect::<Vec<_>>())
    }

    /// Foods that practice takes instead.
    ///
    /// # Panics
    /// When the row has something else than SR28 numbers.
    pub fn accepted(&self) -> Vec<FoodId> {
        let number = |text: &str| FoodId::Sr28(text.parse().expect("an SR28 number"));
        self.accept.split(' ').map(number).collect()
    }

    /// Whether the row was to be held back at the first run.
    pub fn is_held(&self) -> bool {
        self.set == "held"
    }

    /// The line in a recipe of 50 servings, beside onions.
    pub fn recipe(&self) -> Recipe {
        dish(&[
            line("5 lb onions, chopped", None),
            line(&self.line, Some(FoodId::Sr28(self.food))),
        ])
    }
}

fn nutrient(name: &str) -> NutrientId {
    match name {
        "sodium" => NutrientId::SODIUM,
        "saturated fat" => NutrientId::SATURATED_FAT,
        "sugars" => NutrientId::SUGARS,
        "fibre" => NutrientId::FIBRE,
        "energy" => NutrientId::ENERGY,
        other => panic!("{other}: name a nutrient that this check knows"),
    }
}

/// A line of a recipe.
pub fn line(text: &str, food: Option<FoodId>) -> RecipeLine {
    RecipeLine {
        text: text.to_owned(),
        correction: Correction {
            food,
            ..Correction::default()
        },
    }
}

/// A recipe of 50 servings.
pub fn dish(lines: &[RecipeLine]) -> Recipe {
    Recipe {
        id: RecipeId("dish".into()),
        title: "Dish".into(),
        servings: Servings::new(50.into()),
        serving_words: String::new(),
        serving_size: None,
        finished_weight: None,
        lines: lines.to_vec(),
        beans: BeansRole::default(),
        method: String::new(),
    }
}

/// A recipe by itself, studied.
pub fn study(reference: &Reference, recipe: &Recipe) -> RecipeStudy {
    reference.study_recipe(&Book::empty("Millbrook"), recipe)
}

/// The index over the committed dataset.
///
/// # Panics
/// When a committed table is damaged.
pub fn index() -> &'static SwapIndex {
    static INDEX: OnceLock<SwapIndex> = OnceLock::new();
    INDEX.get_or_init(|| SwapIndex::build(reference()).expect("the committed tables"))
}

/// At most three proposals for the last line of a recipe.
///
/// # Errors
/// As [`propose`].
pub fn for_last_line(
    reference: &Reference,
    recipe: &Recipe,
    goals: &Goals,
    options: &SwapOptions,
) -> Result<Proposals, SwapProblem> {
    let book = Book::empty("Millbrook");
    let study = reference.study_recipe(&book, recipe);
    let place = Place {
        book: &book,
        recipe,
        study: &study,
        line: recipe.lines.len() - 1,
    };
    propose(reference, index(), &place, goals, options, 3)
}
