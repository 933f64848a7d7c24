//! Yields worked by hand, against `yields.csv`, and the tables behind them.

use engine::exact::{Digits, round_half_up};
use engine::foods::{FoodId, FoodTable, NutrientId};
use engine::units::Grams;
use engine::yields::{
    AmountBasis, BasisWords, TreatmentId, Treatments, TrimRoute, TrimYields, YieldRoute,
    YieldTable, cooked_pairs,
};
use nutrient_data::kitchen;
use rust_decimal::Decimal;
use serde::Deserialize;
use std::sync::OnceLock;

fn foods() -> &'static FoodTable {
    static FOODS: OnceLock<FoodTable> = OnceLock::new();
    FOODS.get_or_init(|| {
        FoodTable::from_asset(&nutrient_data::asset::committed().0).expect("the committed asset")
    })
}

fn dec(text: &str) -> Decimal {
    text.parse().expect("a decimal")
}

#[derive(Deserialize)]
struct Worked {
    raw: FoodId,
    cooked: FoodId,
    component: NutrientId,
    factor: Decimal,
}

#[test]
fn pairs_as_worked_by_hand() {
    let rows = engine::tables::read::<Worked>("yields", include_str!("yields.csv")).unwrap();
    assert!(rows.len() >= 10);
    for worked in rows.into_iter().map(|row| row.row) {
        let pair = cooked_pairs(foods(), worked.raw)
            .into_iter()
            .find(|pair| pair.cooked == worked.cooked)
            .unwrap_or_else(|| panic!("{} has no pair {}", worked.raw, worked.cooked));
        assert_eq!(pair.by, worked.component, "{}", worked.raw);
        assert_eq!(
            round_half_up(pair.factor, Digits(3)),
            worked.factor,
            "{}",
            worked.raw
        );
        assert!(
            pair.low < pair.factor && pair.factor < pair.high,
            "{}",
            worked.raw
        );
    }
}

#[test]
fn a_cooked_food_and_an_unknown_one_have_no_pairs() {
    assert!(cooked_pairs(foods(), FoodId::Sr28(20045)).is_empty());
    assert!(cooked_pairs(foods(), FoodId::Sr28(1)).is_empty());
}

#[test]
fn the_best_route_wins() {
    let table = YieldTable::from_csv(kitchen::COOKING_YIELDS).unwrap();
    let (raw, cooked) = (FoodId::Sr28(20044), FoodId::Sr28(20045));
    let weighed = Some((Grams::new(dec("1000")), Grams::new(dec("2700"))));
    let measured = table.cooked_yield(foods(), raw, cooked, weighed).unwrap();
    assert_eq!(
        (measured.factor, measured.route),
        (dec("2.7"), YieldRoute::Measured)
    );
    let tabled = table.cooked_yield(foods(), raw, cooked, None).unwrap();
    assert!(matches!(tabled.route, YieldRoute::Table { .. }));
    let estimated = table
        .cooked_yield(foods(), FoodId::Sr28(16014), FoodId::Sr28(16015), None)
        .unwrap();
    assert_eq!(estimated.route, YieldRoute::DatasetPair);
    assert!(
        table
            .cooked_yield(foods(), raw, FoodId::Sr28(16015), None)
            .is_none()
    );
}

/// A published factor that lies far from what the dataset implies would be a
/// slip in one of them.
#[test]
fn table_factors_lie_near_the_dataset_pairs() {
    let table = YieldTable::from_csv(kitchen::COOKING_YIELDS).unwrap();
    for raw in [23572, 20044, 20120].map(FoodId::Sr28) {
        let tabled = &table.proposals(foods(), raw)[0];
        assert!(matches!(tabled.route, YieldRoute::Table { .. }));
        let pairs = cooked_pairs(foods(), raw);
        let pair = pairs
            .iter()
            .find(|pair| pair.cooked == tabled.cooked)
            .unwrap();
        assert!(
            pair.high >= tabled.low && pair.low <= tabled.high,
            "{raw}: {pair:?}"
        );
    }
}

/// Worked by hand from SR28: broccoli 11090 raw has 89.2 mg vitamin C and
/// 6.64 g carbohydrate, 11091 boiled 64.9 mg and 7.18 g, so the yield is
/// 6.64 / 7.18 = 0.925 and 64.9 × 0.925 / 89.2 = 67 % of the vitamin stays.
#[test]
fn retention_follows_from_the_two_entries() {
    let table = YieldTable::from_csv(kitchen::COOKING_YIELDS).unwrap();
    let (raw, cooked) = (FoodId::Sr28(11090), FoodId::Sr28(11091));
    let boiled = table.cooked_yield(foods(), raw, cooked, None).unwrap();
    let percent = |nutrient| {
        let kept = boiled.retention(foods(), raw, nutrient)?;
        Some(round_half_up(kept * Decimal::ONE_HUNDRED, Digits(0)))
    };
    assert_eq!(percent(NutrientId(401)), Some(dec("67")));
    assert_eq!(percent(NutrientId::CARBOHYDRATE), Some(dec("100")));
    // Broccoli has no cholesterol to keep.
    assert_eq!(percent(NutrientId::CHOLESTEROL), None);
}

#[test]
fn kitchen_language_tells_what_a_weight_means() {
    let words = BasisWords::from_csv(kitchen::AMOUNT_BASIS).unwrap();
    for (line, basis) in [
        ("2 lb onions, peeled", Some(AmountBasis::AsPurchased)),
        ("2 lb peeled onions", Some(AmountBasis::EdiblePortion)),
        (
            "5 lb apples, cored and sliced",
            Some(AmountBasis::AsPurchased),
        ),
        (
            "10 lb chicken thighs, bone-in",
            Some(AmountBasis::AsPurchased),
        ),
        (
            "3 lb boneless chicken breast",
            Some(AmountBasis::EdiblePortion),
        ),
        ("2 lb unpeeled potatoes", Some(AmountBasis::AsPurchased)),
        ("1 lb carrots", None),
    ] {
        assert_eq!(words.basis(line), basis, "{line}");
    }
}

/// Worked by hand: 1000 g × 0.88 by the table; bananas have 36 % refuse in
/// SR28, so 250 g × 0.64; pears 10 %, so 500 g × 0.9.
#[test]
fn what_is_purchased_loses_its_refuse() {
    let trims = TrimYields::from_csv(kitchen::TRIM_YIELDS).unwrap();
    for (number, line, stated, edible, by_table) in [
        (11282, "1000 g onions, peeled", "1000", "880", true),
        (11282, "1000 g onions, as purchased", "1000", "900", false),
        (9040, "250 g bananas, peeled", "250", "160", true),
        (9252, "500 g pears, cored", "500", "450", false),
        (20081, "500 g flour, as purchased", "500", "500", false),
    ] {
        let food = foods().food(FoodId::Sr28(number)).unwrap();
        let stated = Grams::new(dec(stated));
        let bought = trims.edible_portion(food, stated, AmountBasis::AsPurchased, line);
        assert_eq!(bought.edible, Grams::new(dec(edible)), "{line}");
        assert_eq!(
            matches!(bought.route, TrimRoute::Table { .. }),
            by_table,
            "{line}"
        );
        let ready = trims.edible_portion(food, stated, AmountBasis::EdiblePortion, line);
        assert_eq!((ready.edible, ready.route), (stated, TrimRoute::Nothing));
    }
}

/// The table is from memory; where the dataset has a refuse for the same food
/// the two must not be far apart.
#[test]
fn trim_yields_lie_near_the_dataset_refuse() {
    let trims = TrimYields::from_csv(kitchen::TRIM_YIELDS).unwrap();
    #[derive(serde::Deserialize)]
    struct Trimmed {
        food: FoodId,
        action: String,
    }
    let rows = engine::tables::read::<Trimmed>("trim_yields", kitchen::TRIM_YIELDS);
    for Trimmed { food: id, action } in rows.unwrap().into_iter().map(|row| row.row) {
        let food = foods()
            .food(id)
            .unwrap_or_else(|| panic!("{id} is not in the dataset"));
        let bought = Grams::new(dec("100"));
        let line = format!("100 g food, {action}");
        let by_table = trims.edible_portion(food, bought, AmountBasis::AsPurchased, &line);
        let by_refuse = trims.edible_portion(food, bought, AmountBasis::AsPurchased, "");
        assert!(matches!(by_table.route, TrimRoute::Table { .. }));
        if by_refuse.route == TrimRoute::Nothing {
            assert_eq!(action, "drained", "{id} has no refuse to compare with");
            continue;
        }
        let apart = (by_table.factor - by_refuse.factor).abs();
        assert!(apart <= dec("0.2"), "{id} {action}: {apart}");
    }
}

#[test]
fn treatments_multiply() {
    let treatments = Treatments::from_csv(kitchen::TREATMENTS).unwrap();
    let keeps = treatments.keeps(&[TreatmentId("beans-rinsed".into())]);
    assert_eq!(
        engine::recipe::Keep::of(&keeps, NutrientId::SODIUM),
        dec("0.59")
    );
    assert_eq!(
        engine::recipe::Keep::of(&keeps, NutrientId::ENERGY),
        Decimal::ONE
    );
}

#[test]
fn damaged_tables_name_the_line() {
    let yields =
        "raw,cooked,factor,low,high,words,source,status\nSR28:20044,SR28:20045,2,3,4,w,s,s\n";
    assert_eq!(YieldTable::from_csv(yields).unwrap_err().line, 2);
    let treatments = "id,words,nutrient,keeps,low,high,source,status\nx,w,307,1.2,1,1.3,s,s\n";
    assert_eq!(Treatments::from_csv(treatments).unwrap_err().line, 2);
}
