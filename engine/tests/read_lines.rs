//! Whole recipes read over all of SR28, with the search that the page uses.

use engine::foods::{FoodId, FoodTable, SearchIndex};
use engine::recipe::{Correction, Doubt, ReadLine, RecipeLine, WeighProblem, read_lines};
use engine::units::Grams;
use rust_decimal::Decimal;

fn read(lines: &[RecipeLine]) -> Vec<ReadLine> {
    let foods = FoodTable::from_asset(&nutrient_data::asset::committed().0)
        .expect("the asset of the committed tables");
    let search = SearchIndex::build(&foods, nutrient_data::kitchen::SYNONYMS)
        .expect("the committed table of kitchen words");
    read_lines(&foods, &search, lines)
}

fn line(text: &str) -> RecipeLine {
    RecipeLine {
        text: text.to_owned(),
        correction: Correction::default(),
    }
}

fn grams(number: i64) -> Grams {
    Grams::new(Decimal::from(number))
}

#[test]
fn headings_and_blank_lines_stay_out_of_totals() {
    let read = read(&[
        line("For the sauce:"),
        line(""),
        line("1 stick butter, salted"),
    ]);
    let weighed: Vec<_> = read.iter().map(ReadLine::weighed).collect();
    assert_eq!(weighed[..2], [None, None]);
    let butter = weighed[2].as_ref().expect("an ingredient");
    assert_eq!((butter.line, butter.weight), (2, Some(grams(113))));
}

#[test]
fn what_a_person_has_set_wins() {
    let corrected = RecipeLine {
        text: "about 2 cups something".to_owned(),
        correction: Correction {
            food: Some(FoodId::Sr28(1001)),
            weight: Some(grams(300)),
            ..Correction::default()
        },
    };
    let food_only = RecipeLine {
        text: "2 cups something".to_owned(),
        correction: Correction {
            food: Some(FoodId::Sr28(1001)),
            ..Correction::default()
        },
    };
    let read = read(&[corrected, food_only]);
    let lines: Vec<_> = read.iter().filter_map(ReadLine::weighed).collect();
    assert_eq!(lines[0].food, Some(FoodId::Sr28(1001)));
    assert_eq!(lines[0].weight, Some(grams(300)));
    assert_eq!(read[0].doubts, []);
    assert_eq!(
        lines[1].weight,
        Some(grams(454)),
        "2 cups of 227 g, SR28 01001"
    );
}

#[test]
fn what_is_not_said_is_unknown_not_zero() {
    for text in [
        "salt, to taste",
        "a drizzle of olive oil",
        "parsley",
        "1 #10 can carrots",
    ] {
        let read = read(&[line(text)]);
        let weighed = read[0].weighed().expect("an ingredient");
        assert!(weighed.food.is_some(), "{text}: {:?}", read[0].matches);
        assert_eq!(weighed.weight, None, "{text}");
        assert_eq!(weighed.bounds, None, "{text}");
        let problem = read[0].weight.as_ref().expect_err("no weight");
        assert!(problem.remedy().contains("weight"), "{problem}");
    }
}

#[test]
fn a_mass_is_known_without_its_food() {
    let read = read(&[line("2 kg zzyzx"), line("2 cups zzyzx")]);
    let weighed = read[0].weighed().expect("an ingredient");
    assert_eq!((weighed.food, weighed.weight), (None, Some(grams(2000))));
    assert_eq!(read[1].weight, Err(WeighProblem::NoFood));
}

#[test]
fn a_range_gives_its_bounds() {
    let read = read(&[line("2 to 4 cups milk, whole")]);
    let weighed = read[0].weighed().expect("an ingredient");
    assert_eq!(
        weighed.weight,
        Some(grams(3 * 244)),
        "cup of 244 g, SR28 01077"
    );
    assert_eq!(weighed.bounds, Some((grams(2 * 244), grams(4 * 244))));
    assert!(matches!(
        read[0].doubts[..],
        [Doubt::RangeMiddleUsed { .. }]
    ));
}

#[test]
fn readings_can_be_given_to_the_page() {
    for read in read(&[
        line("2-3 onions, chopped (optional)"),
        line("1/0 cup flour"),
    ]) {
        let written = serde_json::to_value(&read).expect("a reading can be written");
        assert!(written["weight"].is_object());
    }
}

#[test]
fn what_comes_in_a_can_is_canned() {
    let foods = FoodTable::from_asset(&nutrient_data::asset::committed().0)
        .expect("the asset of the committed tables");
    for text in [
        "1 #10 can diced tomatoes",
        "2 (15 oz) cans black beans, drained and rinsed",
        "1 No. 303 can corn, drained",
    ] {
        let food = read(&[line(text)])[0]
            .food
            .and_then(|food| foods.food(food));
        let description = &food.expect("a food").description;
        assert!(description.contains("canned"), "{text}: {description}");
    }
}

#[test]
fn a_food_that_can_be_weighed_is_taken_before_an_equal_that_cannot() {
    struct Two;
    impl engine::foods::FoodMatcher for Two {
        fn matches(&self, _: &str, _: &[String], _: usize) -> Vec<engine::foods::FoodMatch> {
            // Butter oil has no stick, butter has one (SR28 01003 and 01001).
            [(1003, 80), (1001, 40)]
                .map(|(number, confidence)| engine::foods::FoodMatch {
                    food: FoodId::Sr28(number),
                    confidence,
                })
                .to_vec()
        }
    }
    let foods = FoodTable::from_asset(&nutrient_data::asset::committed().0)
        .expect("the asset of the committed tables");
    let read = read_lines(
        &foods,
        &Two,
        &[line("1 stick butter"), line("1 cup butter")],
    );
    assert_eq!(read[0].food, Some(FoodId::Sr28(1001)));
    let over = FoodId::Sr28(1003);
    assert!(read[0].doubts.contains(&Doubt::TakenAsWeighable { over }));
    assert_eq!(read[1].food, Some(over), "which has a cup");
}
