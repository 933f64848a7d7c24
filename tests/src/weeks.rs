//! Random weeks with requirements out of their limits, the same in every run:
//! dishes of the demo book, planned anew, under limits of an office's own that
//! are drawn around what the week happens to bring.

use crate::demo;
use crate::fixtures::reference;
use engine::book::Book;
use engine::reference::Reference;
use engine::rules::OwnRules;
use engine::units::Servings;
use engine::week::{Choice, Date, Day, GradeGroup, Meal, MealKind, Offer, Week, WeekId};
use rand::seq::{IndexedRandom, SliceRandom};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rust_decimal::Decimal;

/// The group of the small weeks: no federal pattern speaks of it.
const COOKS: &str = "cooks";

/// Their meal, of which every rule names its groups.
const SMALL_MEAL: &str = "snack";

const MAINS: [&str; 10] = [
    "chicken-and-bean-rice-bowl",
    "turkey-on-a-roll",
    "beef-and-bean-chili",
    "bean-and-cheese-tortillas",
    "spaghetti-with-turkey-sauce",
    "lentil-joe",
    "roast-chicken-drumstick",
    "hummus-and-pita-box",
    "fish-tacos",
    "egg-salad-sandwich",
];
const VEGETABLES: [&str; 9] = [
    "garlic-broccoli",
    "romaine-tomato-salad",
    "honey-roasted-carrots",
    "sweet-potato-wedges",
    "seasoned-red-beans",
    "corn-with-red-pepper",
    "oven-potatoes",
    "green-beans-with-onion",
    "cucumber-coins",
];
const GRAINS: [&str; 3] = ["whole-wheat-dinner-roll", "cornbread-squares", "brown-rice"];
const FRUITS: [&str; 7] = [
    "apple",
    "orange-wedges",
    "peaches-in-juice",
    "pears-in-juice",
    "grapes",
    "strawberry-cup",
    "pear",
];
const MILKS: [&str; 2] = ["milk-fat-free", "milk-1-percent"];
const CONDIMENTS: [&str; 2] = ["catsup", "light-ranch-dip"];

/// A week by its book, with everything that its limits need.
#[derive(Debug)]
pub struct MadeWeek {
    /// The book; the week is one of its own.
    pub book: Book,
    /// Which.
    pub week: WeekId,
    /// The tables with the book's own limits.
    pub reference: Reference,
}

/// How a meal is put together: part, how many a student takes, from what, how
/// many choices.
type Part = (&'static str, u32, &'static [&'static str], usize);

const SMALL: [Part; 2] = [
    ("Main dish", 1, &MAINS, 2),
    ("Vegetables", 2, &VEGETABLES, 3),
];
const LARGE: [Part; 6] = [
    ("Main dish", 1, &MAINS, 2),
    ("Vegetables", 2, &VEGETABLES, 3),
    ("Grain", 1, &GRAINS, 1),
    ("Condiment", 1, &CONDIMENTS, 1),
    ("Fruit", 2, &FRUITS, 2),
    ("Milk", 1, &MILKS, 2),
];

/// A small week: two days of one meal for a group of its own, with limits on
/// sodium, calories and saturated fat, and amounts of vegetables and grains.
/// `hopeless` asks for less sodium than any dish has.
pub fn small(seed: u64, hopeless: bool) -> MadeWeek {
    let mut random = ChaCha8Rng::seed_from_u64(seed);
    let days = days(&mut random, 2, (MealKind::Snack, COOKS), &SMALL);
    let sodium = if hopeless {
        Decimal::new(2, 2)
    } else {
        Decimal::from(random.random_range(950..=998)) / Decimal::ONE_THOUSAND
    };
    let energy = Decimal::from(random.random_range(85..=97)) / Decimal::ONE_HUNDRED;
    let fat = Decimal::from(random.random_range(99..=112)) / Decimal::ONE_HUNDRED;
    let amounts = random.random_range(0..3);
    made(days, |book, week| {
        let now = |nutrient| brought(book, week, nutrient);
        let share = now(606) * Decimal::from(900) / now(208);
        let limits = format!(
            "{LIMIT_HEADER}\n{}\n{}\n{}\n",
            limit(
                307,
                "per meal",
                "",
                "at most",
                now(307) * sodium,
                "mg",
                "sodium"
            ),
            limit(
                208,
                "per meal",
                "",
                "at least",
                now(208) * energy,
                "kcal",
                "calories"
            ),
            limit(
                606,
                "share of energy",
                "9",
                "below",
                share * fat,
                "%",
                "saturated fat"
            ),
        );
        let amounts = match amounts {
            // A limit is for a group that some pattern has: this one asks for nothing.
            0 => Some(format!(
                "{AMOUNT_HEADER}\n{}\n",
                amount("vegetables", "day", "0", "cup", "smallest"),
            )),
            1 => Some(format!(
                "{AMOUNT_HEADER}\n{}\n{}\n",
                amount("vegetables", "day", "0.625", "cup", "smallest"),
                amount("grains", "week", "3", "oz eq", "largest"),
            )),
            _ => Some(format!(
                "{AMOUNT_HEADER}\n{}\n{}\n",
                amount(
                    "meats and meat alternates",
                    "week",
                    "4",
                    "oz eq",
                    "smallest"
                ),
                amount("red and orange vegetables", "week", "1", "cup", "largest"),
            )),
        };
        OwnRules {
            dietary_specifications: Some(limits),
            meal_patterns: amounts,
            week_rules: None,
        }
    })
}

/// A whole week of lunches for grades K to 5 under the federal pattern, with
/// a limit on sodium of the office's own a little below what the week brings.
pub fn large(seed: u64) -> MadeWeek {
    let mut random = ChaCha8Rng::seed_from_u64(seed);
    let days = days(&mut random, 5, (MealKind::Lunch, "K-5"), &LARGE);
    let sodium = Decimal::from(random.random_range(88..=98)) / Decimal::ONE_HUNDRED;
    made(days, |book, week| {
        let most = brought(book, week, 307) * sodium;
        let row = limit(
            307,
            "per meal",
            "",
            "at most",
            most,
            "mg",
            "sodium by our policy",
        );
        OwnRules {
            dietary_specifications: Some(format!(
                "{LIMIT_HEADER}\n{}\n",
                row.replacen(&format!("{SMALL_MEAL},{COOKS}"), "lunch,K-5", 1)
            )),
            ..OwnRules::default()
        }
    })
}

const LIMIT_HEADER: &str = "meal,group,nutrient,basis,kcal_per_gram,bound,limit,unit,leaves_out,from,until,only_when,paragraph,source,status,words";
const AMOUNT_HEADER: &str = "meal,group,component,period,bound,amount,unit,force,counted,scaled_to,from,until,only_when,paragraph,source,status,words";

fn limit(
    nutrient: u16,
    basis: &str,
    kcal: &str,
    bound: &str,
    most: Decimal,
    unit: &str,
    words: &str,
) -> String {
    let most = engine::exact::round_half_up(most, engine::exact::Digits(1));
    format!(
        "{SMALL_MEAL},{COOKS},{nutrient},{basis},{kcal},{bound},{most},{unit},,2024-07-01,,,drawn,drawn,own,{words}"
    )
}

fn amount(component: &str, period: &str, least: &str, unit: &str, counted: &str) -> String {
    format!(
        "{SMALL_MEAL},{COOKS},{component},{period},at least,{least},{unit},required,{counted},,2024-07-01,,,drawn,drawn,own,{component} by {period}"
    )
}

fn days(
    random: &mut ChaCha8Rng,
    count: i64,
    (kind, group): (MealKind, &str),
    parts: &[Part],
) -> Vec<Day> {
    let first: Date = "2026-11-30".parse().expect("a day of the calendar");
    (0..count)
        .map(|day| {
            let meals = random.random_range(8..=30) * 10;
            Day {
                date: first.plus_days(day),
                meals: vec![Meal {
                    kind,
                    group: GradeGroup(group.to_owned()),
                    planned_meals: Servings::new(Decimal::from(meals)),
                    offers: parts
                        .iter()
                        .map(|part| offer(random, part, meals))
                        .collect(),
                }],
            }
        })
        .collect()
}

fn offer(random: &mut ChaCha8Rng, part: &Part, meals: i64) -> Offer {
    let (title, take, from, count) = *part;
    let mut recipes: Vec<&str> = from.to_vec();
    recipes.shuffle(random);
    let shares = [25, 40, 50, 60];
    let choices = recipes.into_iter().take(count).map(|recipe| {
        let share = shares.choose(random).copied().unwrap_or(50);
        Choice {
            recipe: engine::recipe::RecipeId(recipe.to_owned()),
            planned: Servings::new(Decimal::from(meals * share / 100)),
        }
    });
    Offer {
        title: title.to_owned(),
        take,
        choices: choices.collect(),
    }
}

fn made(days: Vec<Day>, rules: impl Fn(&Book, &Week) -> OwnRules) -> MadeWeek {
    let week = Week {
        id: WeekId("drawn".to_owned()),
        title: "Drawn".to_owned(),
        days,
    };
    let mut book = demo::book();
    book.weeks = vec![week.clone()];
    book.own_rules = rules(&book, &week);
    let reference = reference().for_book(&book);
    MadeWeek {
        week: week.id,
        reference: reference.unwrap_or_else(|error| panic!("{error}")),
        book,
    }
}

/// What the average meal brings.
fn brought(book: &Book, week: &Week, nutrient: u16) -> Decimal {
    let study = reference().study_week(book, week).expect("a week");
    let average = &study.services[0].average;
    let amount = average.amount(engine::foods::NutrientId(nutrient));
    amount.expect("a nutrient of the table").known
}

/// The tables read what this module writes.
#[cfg(test)]
mod tests {
    use super::*;
    use engine::rules::{MealPatterns, Specifications};

    #[test]
    fn the_rows_are_in_the_form_of_the_tables() {
        let row = limit(307, "per meal", "", "at most", Decimal::TEN, "mg", "sodium");
        assert!(Specifications::from_csv(&format!("{LIMIT_HEADER}\n{row}\n")).is_ok());
        let row = amount("grains", "week", "3", "oz eq", "largest");
        assert!(MealPatterns::from_csv(&format!("{AMOUNT_HEADER}\n{row}\n")).is_ok());
    }
}
