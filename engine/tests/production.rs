//! Shares, scales, pans, batches and purchases against cases worked by hand.

use engine::book::Book;
use engine::foods::FoodId;
use engine::production::{
    Filling, Kitchen, PanProblem, Panning, Production, ShareProblem, apportion, pans_for,
    planned_servings, serving_volume, shared_day,
};
use engine::recipe::RecipeId;
use engine::reference::Reference;
use engine::units::{Grams, MassUnit, Servings};
use rust_decimal::Decimal;
use serde::Deserialize;
use serde_json::{Value, json};
use std::sync::OnceLock;

fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| {
        Reference::committed(&nutrient_data::asset::committed().0).expect("the committed tables")
    })
}

fn dec(text: &str) -> Decimal {
    text.parse()
        .unwrap_or_else(|_| panic!("\"{text}\" is no number"))
}

fn rows<T: for<'de> Deserialize<'de>>(text: &str) -> Vec<T> {
    let mut reader = csv::ReaderBuilder::new()
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let rows: Vec<T> = reader
        .deserialize()
        .map(|row| row.expect("a row of the table"))
        .collect();
    assert!(rows.len() > 3, "the table is nearly empty");
    rows
}

#[derive(Deserialize)]
struct ShareCase {
    case: String,
    servings: String,
    weights: String,
    shares: String,
}

#[test]
fn servings_are_shared_without_loss() {
    for case in rows::<ShareCase>(include_str!("production_shares.csv")) {
        let servings = Servings::new(dec(&case.servings));
        let weights: Vec<Servings> = case
            .weights
            .split('|')
            .map(|one| Servings::new(dec(one)))
            .collect();
        let found = apportion(servings, &weights);
        let shown = found.map_or_else(
            || "none".to_owned(),
            |shares| {
                let shares = shares
                    .iter()
                    .map(|share| share.servings().normalize().to_string());
                shares.collect::<Vec<_>>().join("|")
            },
        );
        assert_eq!(shown, case.shares, "{}", case.case);
    }
}

#[derive(Deserialize)]
struct ScaleCase {
    scale: String,
    grams: String,
    shown: String,
}

#[test]
fn scales_show_their_steps() {
    for case in rows::<ScaleCase>(include_str!("production_scale.csv")) {
        let scale = reference().scales.named(Some(&case.scale));
        assert_eq!(scale.name, case.scale, "no such scale");
        let shown = scale.show(Grams::new(dec(&case.grams)));
        let words = shown.as_ref().map_or_else(
            || "nothing".to_owned(),
            |shown| {
                let parts = shown
                    .parts
                    .iter()
                    .map(|(number, unit)| format!("{} {}", number.normalize(), unit.symbol()));
                parts.collect::<Vec<_>>().join(" ")
            },
        );
        assert_eq!(words, case.shown, "{} g on {}", case.grams, case.scale);
        if let Some(shown) = shown {
            let parts = shown
                .parts
                .iter()
                .map(|(number, unit): &(Decimal, MassUnit)| unit.of(*number));
            assert_eq!(parts.sum::<Grams>(), shown.grams, "{}", case.grams);
        }
    }
}

#[derive(Deserialize)]
struct PanCase {
    pan: String,
    filling: String,
    serving: String,
    servings: String,
    holds: String,
    pans: String,
    in_last: String,
}

#[test]
fn pans_are_counted() {
    for case in rows::<PanCase>(include_str!("production_pans.csv")) {
        let recipe = book(
            json!([{ "id": "r", "title": "R", "servings": "1",
            "servingWords": case.serving, "lines": [] }]),
            json!({}),
        );
        let recipe = &recipe.recipes[0];
        let filling = match case.filling.as_str() {
            "volume" => Filling::Volume,
            text => match text.strip_suffix(" g") {
                Some(grams) => Filling::Weight {
                    grams: Grams::new(dec(grams)),
                },
                None => Filling::Servings {
                    servings: Servings::new(dec(text)),
                },
            },
        };
        let panning = Panning {
            pan: case.pan.clone(),
            filling,
        };
        let weight = (case.serving == "4 oz").then(|| MassUnit::Ounce.of(Decimal::from(4)));
        let serving = (serving_volume(recipe), weight);
        let servings = Servings::new(dec(&case.servings));
        let found = pans_for(&reference().pans, &panning, servings, serving);
        let place = format!("{} in {}", case.serving, case.pan);
        let digits =
            |value: Decimal| engine::exact::round_half_up(value, engine::exact::Digits(12));
        match found {
            Ok(count) => {
                assert_eq!(
                    digits(count.holds.servings()),
                    digits(dec(&case.holds)),
                    "{place}"
                );
                assert_eq!(count.pans, dec(&case.pans), "{place}");
                assert_eq!(
                    digits(count.in_last.servings()),
                    digits(dec(&case.in_last)),
                    "{place}"
                );
            }
            Err(problem) => {
                let word = match problem {
                    PanProblem::NoCapacity => "no capacity",
                    PanProblem::NoServingVolume => "no volume",
                    PanProblem::NoSuchPan { .. } => "no pan",
                    PanProblem::HoldsNothing => "nothing",
                    PanProblem::NoServingWeight => "no weight",
                };
                assert_eq!(word, case.holds, "{place}");
            }
        }
    }
}

/// A book with these recipes and kitchens; its one week plans `menu` on one
/// day, as lunches for K-5.
fn book(recipes: Value, production: Value) -> Book {
    let mut whole = serde_json::to_value(Book::empty("Test")).expect("a book");
    whole["recipes"] = recipes;
    whole["production"] = production;
    serde_json::from_value(whole).expect("the form of a book")
}

fn ask<T>(book: &Book, question: impl FnOnce(&Kitchen<'_>) -> T) -> T {
    let studies: Vec<_> = book
        .recipes
        .iter()
        .map(|recipe| reference().study_recipe(book, recipe))
        .collect();
    let kitchen = Kitchen::new(
        reference(),
        &book.production,
        book.recipes.iter().zip(&studies),
    );
    question(&kitchen)
}

fn menu(rows: &[(&str, u32)]) -> std::collections::BTreeMap<RecipeId, Servings> {
    rows.iter()
        .map(|(recipe, servings)| {
            (
                RecipeId((*recipe).into()),
                Servings::new(Decimal::from(*servings)),
            )
        })
        .collect()
}

/// Onions lose 12 % when they are peeled (`trim_yields.csv`).
const ONIONS: &str = "SR28:11282";
const MILK: &str = "SR28:01085";

/// A sauce that goes to the table and into two other dishes.
fn with_sauce() -> Book {
    let onions = json!({ "food": ONIONS });
    book(
        json!([
            { "id": "sauce", "title": "House Sauce", "servings": "20",
              "lines": [{ "text": "5 lb peeled onions", "correction": onions }] },
            { "id": "a", "title": "A", "servings": "10",
              "lines": [{ "text": "10 servings House Sauce" },
                        { "text": "1 gal milk", "correction": { "food": MILK } }] },
            { "id": "b", "title": "B", "servings": "10",
              "lines": [{ "text": "5 servings House Sauce" },
                        { "text": "2 lb onions, peeled", "correction": onions },
                        { "text": "salt to taste", "correction": { "food": "SR28:02047" } }] }
        ]),
        json!({ "packs": [
            { "food": ONIONS, "words": "50 lb", "size": { "by": "weight", "grams": "22679.6185" }, "price": "30" },
            { "food": ONIONS, "words": "10 lb", "size": { "by": "weight", "grams": "4535.9237" }, "price": "7.5" },
            { "food": MILK, "words": "1 gal", "size": { "by": "volume", "millilitres": "3785.411784" } }
        ] }),
    )
}

/// A takes 10 of the 20 servings a batch, so 2 batches of A take 1 batch; 4 of
/// B take 1 more; 30 servings at the table are 1 1/2.
#[test]
fn a_recipe_within_others_is_cooked_once() {
    let book = with_sauce();
    ask(&book, |kitchen| {
        let (items, not_cooked) = kitchen.cook_list(&menu(&[("a", 20), ("b", 40), ("sauce", 30)]));
        assert!(not_cooked.is_empty());
        let names: Vec<&str> = items.iter().map(|item| item.recipe.0.as_str()).collect();
        assert_eq!(
            names,
            ["sauce", "a", "b"],
            "the sauce is cooked first, and once"
        );
        let sauce = &items[0];
        assert_eq!(sauce.batches, dec("3.5"));
        assert_eq!(sauce.servings, Servings::new(dec("70")));
        assert_eq!(sauce.served, Servings::new(dec("30")));
        let into: Vec<_> = sauce
            .goes_into
            .iter()
            .map(|(id, batches)| (id.0.as_str(), *batches))
            .collect();
        assert_eq!(into, [("a", dec("1")), ("b", dec("1"))]);
        // 3 1/2 batches of 5 lb, on a scale of whole ounces from 10 lb on.
        let shown = sauce.lines[0]
            .shown
            .as_ref()
            .expect("17 1/2 lb can be weighed");
        assert_eq!(
            shown.parts,
            [(dec("17"), MassUnit::Pound), (dec("8"), MassUnit::Ounce)]
        );
        assert_eq!(sauce.lines[0].words, "peeled onions");
        let within = items[1].lines[0].recipe.as_ref().expect("the sauce of A");
        assert_eq!((within.0.0.as_str(), within.1), ("sauce", dec("1")));
        assert_eq!(items[2].lines[2].exact, None, "a pinch has no weight");
    });
}

/// Entries of the dataset: rice 20036 is raw and 20037 cooked; turkey 05665 is
/// raw, and is weighed raw where it counts as 05666, cooked. Onions have refuse.
#[test]
fn a_weight_says_what_it_is_the_weight_of() {
    use engine::yields::{AmountBasis, Doneness};
    let onions = json!({ "food": ONIONS });
    let turkey = json!({ "food": "SR28:05665", "cooked": { "food": "SR28:05666" } });
    let book = book(
        json!([{ "id": "a", "title": "A", "servings": "10", "lines": [
            { "text": "2 lb peeled onions", "correction": onions },
            { "text": "2 lb raw onions, peeled", "correction": onions },
            { "text": "3 lb brown rice", "correction": { "food": "SR28:20037" } },
            { "text": "3 lb brown rice, cooked", "correction": { "food": "SR28:20037" } },
            { "text": "3 lb brown rice", "correction": { "food": "SR28:20036" } },
            { "text": "4 lb ground turkey", "correction": turkey },
            { "text": "1 gal milk", "correction": { "food": MILK } }
        ] }]),
        json!({}),
    );
    let (raw, cooked) = (Some(Doneness::Raw), Some(Doneness::Cooked));
    let purchased = Some(AmountBasis::AsPurchased);
    let edible = Some(AmountBasis::EdiblePortion);
    ask(&book, |kitchen| {
        let (items, _) = kitchen.cook_list(&menu(&[("a", 2)]));
        let lines = &items[0].lines;
        let told: Vec<_> = lines
            .iter()
            .map(|line| (line.weighed_as.doneness, line.weighed_as.basis))
            .collect();
        let expected = [
            (raw, edible),
            (None, purchased),
            (cooked, None),
            (None, None),
            (raw, None),
            (raw, None),
            (None, None),
        ];
        assert_eq!(told, expected);
        // A fifth of a gallon is measured in quarts.
        let (amount, unit) = lines[6].measure.as_ref().expect("a volume");
        assert_eq!((*amount, unit.to_string()), (dec("0.8"), "quart".into()));
    });
}

/// Peeled onions: 3 1/2 × 5 lb ÷ 0.88 = 19.886 lb as purchased; "2 lb onions,
/// peeled" are stated as purchased: 4 × 2 lb. 27.886 lb in all: one bag of
/// 50 lb for 30.00, or three of 10 lb for 22.50, which is less.
/// Milk: 2 gal, of unknown price.
#[test]
fn whole_packs_are_bought_and_unknown_prices_stay_unknown() {
    let book = with_sauce();
    let list = ask(&book, |kitchen| {
        kitchen.purchase_list(&menu(&[("a", 20), ("b", 40), ("sauce", 30)]))
    });
    let row = |food: &str| {
        let food: FoodId = food.parse().unwrap();
        list.rows
            .iter()
            .find(|row| row.food == food)
            .expect("on the list")
    };
    let onions = row(ONIONS);
    let pounds = |weight: Grams| {
        engine::exact::round_half_up(MassUnit::Pound.number_in(weight), engine::exact::Digits(4))
    };
    assert_eq!(pounds(onions.purchased), dec("27.8864"));
    assert_eq!(pounds(onions.edible), dec("24.54"));
    let order = onions.order.as_ref().expect("packs of onions");
    assert_eq!(
        (order.pack, order.packs, order.cost),
        (1, dec("3"), Some(dec("22.5")))
    );
    assert_eq!(pounds(order.left), dec("2.1136"));
    let milk = row(MILK).order.as_ref().expect("packs of milk");
    assert_eq!((milk.packs, milk.cost), (dec("2"), None));
    assert_eq!(milk.left, Grams::ZERO);
    assert_eq!(list.total.known, dec("22.5"));
    assert_eq!(list.total.missing, 1, "the milk has no price");
    assert_eq!(list.total.unweighed, 1, "the salt has no weight");
    assert_eq!(list.unlisted.len(), 1);
    assert_eq!(list.unlisted[0].text, "salt to taste");
}

/// 5 lb ÷ 0.88 at 0.60 a pound, the least price, over 20 servings: 0.170455.
#[test]
fn a_serving_costs_what_it_uses() {
    let book = with_sauce();
    ask(&book, |kitchen| {
        let (recipe, study) = kitchen
            .recipe(&RecipeId("sauce".into()))
            .expect("the sauce");
        let cost = kitchen
            .recipe_cost(recipe, study)
            .expect("servings are known");
        let each = engine::exact::round_half_up(cost.per_serving.known, engine::exact::Digits(6));
        assert_eq!(each, dec("0.170455"));
        assert!(cost.per_serving.is_complete());
        let (recipe, study) = kitchen.recipe(&RecipeId("a".into())).expect("A");
        let cost = kitchen
            .recipe_cost(recipe, study)
            .expect("servings are known");
        assert!(!cost.per_serving.is_complete(), "the milk has no price");
        // The dataset says that raw onions lose a tenth.
        let prices = kitchen.swap_prices();
        assert_eq!(prices.len(), 1, "no price, no entry");
        let per_pound = prices[0].per_100_g * dec("4.5359237");
        assert_eq!(
            engine::exact::round_half_up(per_pound, engine::exact::Digits(6)),
            dec("0.666667"),
            "0.60 ÷ 0.9"
        );
    });
}

fn planned(production: Value) -> (Production, engine::week::Week) {
    let week = json!({ "id": "w", "title": "W", "days": [{ "date": "2026-11-30", "meals": [{
        "kind": "lunch", "group": "K-5", "plannedMeals": "150",
        "offers": [{ "title": "Main dish", "take": 1,
                     "choices": [{ "recipe": "r", "planned": "150" }, { "recipe": "s", "planned": "0" }] }] }] }] });
    (
        serde_json::from_value(production).expect("kitchens"),
        serde_json::from_value(week).expect("a week"),
    )
}

#[test]
fn what_is_stated_for_a_school_goes_first() {
    let sites = json!([
        { "id": "x", "name": "X", "serves": [{ "kind": "lunch", "group": "K-5", "meals": "100" }] },
        { "id": "y", "name": "Y", "serves": [{ "kind": "lunch", "group": "K-5", "meals": "50" }] },
        { "id": "z", "name": "Z", "serves": [{ "kind": "lunch", "group": "9-12", "meals": "80" }] }
    ]);
    let stated = |site: &str, servings: &str| {
        json!({ "date": "2026-11-30", "kind": "lunch",
        "group": "K-5", "recipe": "r", "site": site, "servings": servings })
    };
    for (stated, shares, differs) in [
        (json!([]), vec![("x", "100"), ("y", "50")], None),
        (
            json!([stated("x", "60")]),
            vec![("x", "60"), ("y", "90")],
            None,
        ),
        (
            json!([stated("z", "30")]),
            vec![("x", "80"), ("y", "40"), ("z", "30")],
            None,
        ),
        (
            json!([stated("x", "60"), stated("y", "60")]),
            vec![("x", "60"), ("y", "60")],
            Some("120"),
        ),
        (
            json!([stated("x", "200")]),
            vec![("x", "200"), ("y", "0")],
            Some("200"),
        ),
    ] {
        let (production, week) = planned(json!({ "sites": sites, "stated": stated }));
        let shared = shared_day(&production, &week, "2026-11-30".parse().unwrap());
        assert_eq!(shared.len(), 1, "of which none is planned is left out");
        let found: Vec<(&str, String)> = shared[0]
            .sites
            .iter()
            .map(|one| {
                (
                    one.site.0.as_str(),
                    one.servings.servings().normalize().to_string(),
                )
            })
            .collect();
        let expected: Vec<(&str, String)> = shares
            .iter()
            .map(|(site, share)| (*site, (*share).to_owned()))
            .collect();
        assert_eq!(found, expected);
        let sum = differs.map(|sum| ShareProblem::SumDiffers {
            sum: Servings::new(dec(sum)),
        });
        assert_eq!(shared[0].problem, sum);
    }
}

#[test]
fn a_meal_that_no_school_serves_is_told() {
    let (production, week) = planned(json!({}));
    let shared = shared_day(&production, &week, "2026-11-30".parse().unwrap());
    assert_eq!(shared[0].problem, Some(ShareProblem::NoSite));
    assert_eq!(planned_servings(&week, None).len(), 2);
}
