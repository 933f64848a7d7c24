//! What must not change a figure: scaling, the order of lines, a line split in
//! two, another unit for the same amount, a recipe inside a recipe.
//!
//! Compared to the printed digit, for every nutrient of the dataset, over
//! recipes made at random from the dataset's own measures. Unit sizes: NIST
//! Handbook 44, Appendix C.

use engine::book::Book;
use engine::exact::round_half_up;
use engine::foods::{FoodId, FoodTable};
use engine::recipe::{Correction, Recipe, RecipeId, RecipeLine};
use engine::reference::RecipeStudy;
use engine::units::Servings;
use gramwright_tests::fixtures::{foods, reference};
use proptest::prelude::*;
use rust_decimal::Decimal;

/// Foods with a cup measure, so that volumes can be changed into each other.
fn foods_by_the_cup() -> Vec<FoodId> {
    let by_the_cup = |table: &FoodTable, id| {
        table
            .measures(id)
            .iter()
            .any(|measure| measure.words == "cup")
    };
    foods()
        .foods()
        .iter()
        .map(|food| food.id)
        .filter(|id| by_the_cup(foods(), *id))
        .collect()
}

/// An amount in sixths of a cup, so that thirds and halves both occur.
#[derive(Debug, Clone)]
struct Line {
    food: FoodId,
    sixths: u32,
}

fn lines() -> impl Strategy<Value = Vec<Line>> {
    lines_of(foods_by_the_cup())
}

/// Where a food has a teaspoon measure of its own, that one is used, and the
/// dataset's two measures need not agree.
fn lines_by_the_cup_alone() -> impl Strategy<Value = Vec<Line>> {
    let mut alone = foods_by_the_cup();
    alone.retain(|id| foods().measures(*id).len() == 1);
    lines_of(alone)
}

fn lines_of(foods: Vec<FoodId>) -> impl Strategy<Value = Vec<Line>> {
    let food = prop::sample::select(foods);
    prop::collection::vec(
        (food, 1_u32..60).prop_map(|(food, sixths)| Line { food, sixths }),
        2..8,
    )
}

fn line(amount: String, food: FoodId) -> RecipeLine {
    RecipeLine {
        text: format!("{amount} food"),
        correction: Correction {
            food: Some(food),
            ..Correction::default()
        },
    }
}

fn cups(line_: &Line) -> RecipeLine {
    line(format!("{}/6 cup", line_.sixths), line_.food)
}

fn recipe(id: &str, servings: u32, lines: Vec<RecipeLine>) -> Recipe {
    serde_json::from_value(serde_json::json!({
        "id": id, "title": id, "servings": servings.to_string(), "lines": lines,
    }))
    .expect("the form of a recipe")
}

fn study(recipe: &Recipe) -> RecipeStudy {
    reference().study_recipe(&Book::empty("test"), recipe)
}

/// Every figure of a serving as it is printed, with what is known of it.
fn printed(study: &RecipeStudy) -> Vec<(Decimal, bool)> {
    let analysis = study.analysis.as_ref().expect("a recipe with servings");
    foods()
        .nutrients()
        .iter()
        .map(|nutrient| {
            let sum = analysis
                .per_serving(nutrient.id)
                .expect("a total of every nutrient");
            (
                round_half_up(sum.known, nutrient.decimals),
                sum.is_complete(),
            )
        })
        .collect()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn scaling_a_recipe_leaves_the_serving(made in lines(), servings in 1_u32..40, by in 2_u32..30) {
        let once = recipe("once", servings, made.iter().map(cups).collect());
        let bigger = made.iter().map(|l| Line { sixths: l.sixths * by, ..l.clone() });
        let scaled = recipe("scaled", servings * by, bigger.map(|l| cups(&l)).collect());
        prop_assert_eq!(printed(&study(&once)), printed(&study(&scaled)));
    }

    #[test]
    fn the_order_of_lines_does_not_matter(made in lines(), servings in 1_u32..40) {
        let forwards = recipe("forwards", servings, made.iter().map(cups).collect());
        let backwards = recipe("backwards", servings, made.iter().rev().map(cups).collect());
        prop_assert_eq!(printed(&study(&forwards)), printed(&study(&backwards)));
    }

    #[test]
    fn a_line_may_be_split_in_two(made in lines(), servings in 1_u32..40) {
        let whole = recipe("whole", servings, made.iter().map(cups).collect());
        let halves = made.iter().flat_map(|l| {
            let half = line(format!("{}/12 cup", l.sixths), l.food);
            [half.clone(), half]
        });
        let split = recipe("split", servings, halves.collect());
        prop_assert_eq!(printed(&study(&whole)), printed(&study(&split)));
    }

    #[test]
    fn another_unit_for_the_same_amount(made in lines_by_the_cup_alone(), servings in 1_u32..40) {
        // A sixth of a cup is eight teaspoons.
        let teaspoons = made.iter().map(|l| line(format!("{} tsp", l.sixths * 8), l.food));
        let in_cups = recipe("cups", servings, made.iter().map(cups).collect());
        let in_teaspoons = recipe("teaspoons", servings, teaspoons.collect());
        let (cups, teaspoons) = (study(&in_cups), study(&in_teaspoons));
        prop_assert_eq!(printed(&cups), printed(&teaspoons));
    }

    #[test]
    fn a_recipe_inside_a_recipe(made in lines(), servings in 1_u32..40) {
        let plain = recipe("plain", servings, made.iter().map(cups).collect());
        let mut book = Book::empty("test");
        book.recipes.push(recipe("Base", 3, made[1..].iter().map(cups).collect()));
        let outer = recipe("outer", servings, vec![
            cups(&made[0]),
            RecipeLine { text: "3 servings Base".into(), ..RecipeLine::default() },
        ]);
        let nested = reference().study_recipe(&book, &outer);
        prop_assert_eq!(printed(&study(&plain)), printed(&nested));
    }

    #[test]
    fn servings_share_the_whole(made in lines(), servings in 1_u32..40) {
        let one = study(&recipe("one", servings, made.iter().map(cups).collect()));
        let analysis = one.analysis.as_ref().unwrap();
        prop_assert_eq!(analysis.servings, Servings::new(servings.into()));
        prop_assert!(one.lines.iter().all(|line| line.problem.is_none()));
    }
}

fn named(title: &str, line: &str) -> Recipe {
    let lines = vec![RecipeLine {
        text: line.into(),
        ..RecipeLine::default()
    }];
    Recipe {
        id: RecipeId(title.to_lowercase()),
        title: title.into(),
        ..recipe(title, 4, lines)
    }
}

#[test]
fn a_cycle_is_refused_with_its_path() {
    let mut book = Book::empty("test");
    book.recipes = vec![
        named("Gravy", "1 serving Stock"),
        named("Stock", "2 servings Soup"),
        named("Soup", "1 batch Gravy"),
    ];
    let study = reference().study_recipe(&book, &book.recipes[0]);
    let problem = study.lines[0]
        .problem
        .as_ref()
        .expect("a cycle")
        .to_string();
    assert!(
        problem.contains("Gravy → Stock → Soup → Gravy"),
        "{problem}"
    );
    assert!(!study.analysis.unwrap().totals[0].total.is_complete());
}
