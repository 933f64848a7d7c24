//! What counts as better: known values only, of the dataset and of the office's
//! own foods, and known prices.

use engine::exact::rounding::guarded;
use engine::foods::{FoodId, NutrientId};
use engine::own_foods::{OwnFood, OwnSource, Stated};
use engine::recipe::Recipe;
use engine::swaps::{Aim, Change, Goals, Price, Proposal, Proposals, Reason, SwapOptions};
use engine::units::Grams;
use gramwright_tests::fixtures::reference;
use gramwright_tests::kitchen_swaps::{dish, for_last_line, line, study};
use rust_decimal::Decimal;

fn dec(text: &str) -> Decimal {
    text.parse().expect("a decimal in a test table")
}

fn proposed(recipe: &Recipe, aims: &[Aim], options: &SwapOptions) -> Proposals {
    for_last_line(reference(), recipe, &Goals::equal(aims), options).expect("a line that is known")
}

fn foods(proposals: &Proposals) -> Vec<FoodId> {
    let food = |proposal: &Proposal| match proposal.change {
        Change::Food { food, .. } => food,
        _ => panic!("a move among the foods"),
    };
    proposals.foods.iter().map(food).collect()
}

fn one(text: &str, food: u32) -> Recipe {
    dish(&[line(text, Some(FoodId::Sr28(food)))])
}

const LESS_SODIUM: Aim = Aim::Less(NutrientId::SODIUM);
const LESS_SATURATED: Aim = Aim::Less(NutrientId::SATURATED_FAT);

/// SR28 has no added sugars, and no saturated fat for bacon with less sodium
/// (10994).
#[test]
fn a_missing_value_is_no_improvement() {
    let added = Aim::Less(NutrientId::ADDED_SUGARS);
    let yogurt = one("12 lb low fat fruit yogurt", 1120);
    let proposals = proposed(&yogurt, &[added], &SwapOptions::default());
    assert!(proposals.foods.is_empty(), "{:?}", proposals.foods);
    assert!(proposals.left_out.unknown > 0);

    let bacon = one("3 lb bacon", 10123);
    let proposals = proposed(&bacon, &[LESS_SATURATED], &SwapOptions::default());
    assert!(!foods(&proposals).contains(&FoodId::Sr28(10994)));
    assert!(proposals.left_out.unknown > 0);

    // Beside a goal that is known to move it is said, and gains nothing.
    let both = proposed(
        &bacon,
        &[LESS_SATURATED, LESS_SODIUM],
        &SwapOptions::default(),
    );
    let alone = proposed(&bacon, &[LESS_SODIUM], &SwapOptions::default());
    let less_salted = |proposals: &Proposals| {
        let at = foods(proposals)
            .iter()
            .position(|food| *food == FoodId::Sr28(10994));
        at.map(|at| proposals.foods[at].clone())
    };
    let told = less_salted(&both).expect("less salted bacon");
    let unknown = |reason: &Reason| matches!(reason, Reason::Unknown { nutrient, .. } if *nutrient == NutrientId::SATURATED_FAT);
    assert!(told.reasons.iter().any(unknown), "{:?}", told.reasons);
    assert!(told.score < less_salted(&alone).expect("the same").score);
}

fn own(number: u32, description: &str, values: &[(NutrientId, &str)]) -> OwnFood {
    let stated = |(nutrient, amount): &(NutrientId, &str)| Stated {
        nutrient: *nutrient,
        amount: dec(amount),
    };
    OwnFood {
        number,
        description: description.into(),
        ingredients: String::new(),
        measures: Vec::new(),
        source: OwnSource::Values {
            per: Grams::new(Decimal::ONE_HUNDRED),
            values: values.iter().map(stated).collect(),
            reference: "test".into(),
        },
    }
}

/// Added sugars are part of the sugars: where the sugars are less than what was
/// added before, the fall is certain though its size is not.
#[test]
fn sugars_bound_added_sugars() {
    let sweet = [
        (NutrientId::ENERGY, "100"),
        (NutrientId::SUGARS, "19"),
        (NutrientId::ADDED_SUGARS, "14"),
    ];
    let reference = reference()
        .clone()
        .with_own_foods(&[own(1, "Strawberry yogurt", &sweet)])
        .unwrap();
    let recipe = dish(&[line("12 lb strawberry yogurt", Some(FoodId::Own(1)))]);
    let goals = Goals::equal(&[Aim::Less(NutrientId::ADDED_SUGARS)]);
    let proposals = for_last_line(&reference, &recipe, &goals, &SwapOptions::default()).unwrap();
    let first = proposals.foods.first().expect("a yogurt with few sugars");
    let bounds = first.effect.change(NutrientId::ADDED_SUGARS).unwrap();
    assert!(bounds.falls() && bounds.exact().is_none(), "{bounds:?}");
    assert!(
        first.reasons[0].to_string().contains("at least"),
        "{}",
        first.reasons[0]
    );
}

/// The office's own foods stand among the dataset's.
#[test]
fn own_foods_are_considered() {
    let weak = [
        (NutrientId::ENERGY, "50"),
        (NutrientId::SODIUM, "1800"),
        (NutrientId::WATER, "70"),
        (NutrientId::PROTEIN, "8"),
        (NutrientId::FAT, "0"),
        (NutrientId::CARBOHYDRATE, "5"),
    ];
    let foods = [
        own(1, "Dish soap", &weak),
        own(2, "Less sodium soy sauce", &weak),
    ];
    let reference = reference().clone().with_own_foods(&foods).unwrap();
    let recipe = one("1 cup soy sauce", 16123);
    let goals = Goals::equal(&[LESS_SODIUM]);
    let proposals = for_last_line(&reference, &recipe, &goals, &SwapOptions::default()).unwrap();
    let found = self::foods(&proposals);
    assert!(found.contains(&FoodId::Own(2)), "{found:?}");
    assert!(!found.contains(&FoodId::Own(1)), "{found:?}");
}

#[test]
fn cost_counts_only_where_prices_are_known() {
    let price = |food, per_100_g: &str| Price {
        food: FoodId::Sr28(food),
        per_100_g: dec(per_100_g),
    };
    let recipe = one("9 lb ground beef", 23572);
    let mut options = SwapOptions {
        prices: vec![price(5305, "0.50")],
        ..SwapOptions::default()
    };
    assert!(
        proposed(&recipe, &[Aim::LessCost], &options)
            .foods
            .is_empty()
    );
    options.prices.push(price(23572, "0.90"));
    let proposals = proposed(&recipe, &[Aim::LessCost], &options);
    assert_eq!(foods(&proposals), [FoodId::Sr28(5305)]);
    let cost = proposals.foods[0]
        .effect
        .cost
        .expect("both prices are known");
    let first = &proposals.foods[0].lines[0];
    let grams = study(reference(), &dish(std::slice::from_ref(first)))
        .batch_weight
        .grams();
    let pounds = dec("9") * dec("453.59237");
    let by_hand = (grams * dec("0.50") - pounds * dec("0.90")) / dec("100") / dec("50");
    assert_eq!(guarded(cost), guarded(by_hand));
}
