//! Weeks checked against the meal pattern. A base week keeps everything; each
//! case changes it and names what is then missed or unknown, and why.

use engine::analysis::analyse;
use engine::components::{
    BeansRole, Component, CreditLine, CreditRules, Mark, RecipeCredits, StatedCredit, credit_recipe,
};
use engine::exact::{Digits, round_half_up};
use engine::findings::{PatternFinding, PatternTables, Verdict, check, check_pattern};
use engine::foods::{Food, FoodGroup, FoodId, FoodTable, NutrientId, OwnEntry, OwnValue};
use engine::recipe::{RecipeId, WeighedLine};
use engine::rules::{MealPatterns, Specifications, Switches, WeekRules};
use engine::tables::{self, List, Row};
use engine::units::{Grams, Servings};
use engine::week::{
    Choice, CreditedRecipe, Date, Day, GradeGroup, Meal, MealKind, Offer, Service, Week, WeekId,
    average,
};
use gramwright_tests::fixtures::foods;
use nutrient_data::rules::{DIETARY_SPECIFICATIONS, MEAL_PATTERNS, WEEK_RULES};
use rust_decimal::Decimal;
use serde::Deserialize;
use std::collections::BTreeMap;

const DAYS: [&str; 5] = ["mon", "tue", "wed", "thu", "fri"];
/// A Monday of the school year 2026-2027.
const START: &str = "2026-11-30";

fn read<T: serde::de::DeserializeOwned>(table: &str, text: &str) -> Vec<T> {
    let rows: Vec<Row<T>> = tables::read(table, text).unwrap();
    rows.into_iter().map(|row| row.row).collect()
}

#[derive(Deserialize)]
struct RecipeRow {
    recipe: String,
    component: Option<Component>,
    amount: Option<Decimal>,
    marks: List<Mark>,
    food: Option<u32>,
    grams: Option<Decimal>,
}

/// A cereal of the office's own: 25 g of added sugars per 100 g by its label.
fn foods_with_own() -> FoodTable {
    let sugars = Decimal::from(25);
    foods().with_own(vec![OwnEntry {
        food: Food {
            id: FoodId::Own(1),
            group: FoodGroup(800),
            description: "Crunch squares".into(),
            common_names: String::new(),
            manufacturer: String::new(),
            refuse_percent: None,
            refuse_description: String::new(),
        },
        measures: Vec::new(),
        values: vec![OwnValue {
            nutrient: NutrientId::ADDED_SUGARS,
            per_100_g: sugars,
            low: sugars,
            high: sugars,
        }],
    }])
}

/// The recipes of the table, one serving each.
fn recipes(foods: &FoodTable, rules: &CreditRules) -> Vec<(RecipeId, RecipeCredits)> {
    let mut lines: BTreeMap<String, Vec<CreditLine>> = BTreeMap::new();
    for row in read::<RecipeRow>("week_recipes", include_str!("../data/week_recipes.csv")) {
        let stated = row
            .component
            .zip(row.amount)
            .map(|(component, amount)| StatedCredit {
                component,
                amount,
                marks: row.marks.to_vec(),
                reason: "stated in the test".into(),
                stated_for: None,
            });
        lines.entry(row.recipe).or_default().push(CreditLine {
            food: row.food.map(FoodId::Sr28),
            weight: row.grams.map(Grams::new),
            stated: stated.into_iter().collect(),
            ..CreditLine::default()
        });
    }
    let labelled = CreditLine {
        food: Some(FoodId::Own(1)),
        stated: vec![StatedCredit {
            component: Component::Grains,
            amount: Decimal::ONE,
            marks: vec![Mark::Cereal, Mark::WholeGrainRich],
            reason: "label".into(),
            stated_for: None,
        }],
        ..CreditLine::default()
    };
    lines.insert("labelled cereal".into(), vec![labelled]);
    let one = Servings::new(Decimal::ONE);
    lines
        .into_iter()
        .map(|(name, lines)| {
            let credits = credit_recipe(foods, rules, &lines, one, BeansRole::Vegetable).unwrap();
            (RecipeId(name), credits)
        })
        .collect()
}

fn service(text: &str) -> Service {
    let (meal, group) = text.split_once(' ').unwrap();
    Service {
        kind: match meal {
            "lunch" => MealKind::Lunch,
            "breakfast" => MealKind::Breakfast,
            "snack" => MealKind::Snack,
            _ => MealKind::Supper,
        },
        group: GradeGroup(group.into()),
    }
}

#[derive(Deserialize)]
struct BaseRow {
    service: String,
    day: String,
    offer: String,
    take: u32,
    choices: List<String>,
}

/// For each day its offers, by name, or nothing where it is dropped.
type Menu = BTreeMap<String, BTreeMap<String, (u32, Vec<String>)>>;

fn days_of(text: &str) -> Vec<String> {
    match text {
        "*" => DAYS.iter().map(|day| (*day).to_owned()).collect(),
        day => {
            assert!(DAYS.contains(&day), "{day} is no day");
            vec![day.to_owned()]
        }
    }
}

fn base(service: &str) -> Menu {
    let mut menu = Menu::new();
    for row in read::<BaseRow>("base_weeks", include_str!("../data/base_weeks.csv")) {
        if row.service == service {
            for day in days_of(&row.day) {
                let offers = menu.entry(day).or_default();
                offers.insert(row.offer.clone(), (row.take, row.choices.to_vec()));
            }
        }
    }
    menu
}

/// Applies changes such as "mon fruit 2 = apple|pear", "mon milk drop",
/// "fri drop", "* main = sandwich", separated by semicolons.
fn change(menu: &mut Menu, changes: &str) {
    for change in changes
        .split(';')
        .map(str::trim)
        .filter(|text| !text.is_empty())
    {
        let (place, choices) = match change.split_once('=') {
            Some((place, choices)) => (place.trim(), Some(choices.trim())),
            None => (change.strip_suffix(" drop").expect("= or drop"), None),
        };
        let mut words = place.split_whitespace();
        let days = days_of(words.next().unwrap());
        let offer = words.next();
        let take: u32 = words.next().map_or(1, |take| take.parse().unwrap());
        for day in days {
            match (offer, choices) {
                (None, _) => drop(menu.remove(&day)),
                (Some(offer), None) => drop(menu.get_mut(&day).unwrap().remove(offer)),
                (Some(offer), Some(choices)) => {
                    // A change of every day leaves dropped days alone.
                    if let Some(offers) = menu.get_mut(&day) {
                        let choices = choices.split('|').map(str::to_owned).collect();
                        offers.insert(offer.to_owned(), (take, choices));
                    }
                }
            }
        }
    }
}

fn week(service: &Service, start: Date, menu: &Menu) -> Week {
    let days = DAYS.iter().enumerate().filter_map(|(index, day)| {
        let offers = menu.get(*day)?;
        let offers: Vec<Offer> = offers
            .iter()
            .map(|(title, (take, choices))| Offer {
                title: title.clone(),
                take: *take,
                choices: choices
                    .iter()
                    .map(|recipe| Choice {
                        recipe: RecipeId(recipe.clone()),
                        planned: Servings::new(Decimal::from(50)),
                    })
                    .collect(),
            })
            .collect();
        Some(Day {
            date: start.plus_days(index as i64),
            meals: vec![Meal {
                kind: service.kind,
                group: service.group.clone(),
                planned_meals: Servings::new(Decimal::from(100)),
                offers,
            }],
        })
    });
    Week {
        id: WeekId("test".into()),
        title: "test".into(),
        days: days.collect(),
    }
}

/// "mon fruits each day" or "fruits over the week".
fn name(finding: &PatternFinding, start: Date) -> String {
    let day = DAYS
        .iter()
        .enumerate()
        .find(|(index, _)| finding.date == Some(start.plus_days(*index as i64)));
    match day {
        Some((_, day)) => format!("{day} {}", finding.rule.words),
        None => finding.rule.words.clone(),
    }
}

fn names(text: &str) -> Vec<String> {
    let mut names: Vec<String> = text
        .split(';')
        .map(|name| name.trim().to_owned())
        .filter(|name| !name.is_empty())
        .collect();
    names.sort();
    names
}

#[derive(Deserialize)]
struct Case {
    case: String,
    service: String,
    start: Option<Date>,
    switches: String,
    changes: String,
    missed: String,
    unknown: String,
}

#[test]
fn each_requirement_can_be_missed() {
    let foods = foods_with_own();
    let rules = CreditRules::committed().unwrap();
    let recipes = recipes(&foods, &rules);
    let by_name: Vec<CreditedRecipe> = recipes.iter().map(|(id, credits)| (id, credits)).collect();
    let mut wrong = Vec::new();
    for case in read::<Case>("week_checks", include_str!("../data/week_checks.csv")) {
        let mut switches = Switches::default();
        if let Some((switch, state)) = case.switches.split_once(':') {
            switches.set(switch, state.trim() == "on");
        }
        let patterns = MealPatterns::from_csv(MEAL_PATTERNS).unwrap();
        let week_rules = WeekRules::from_csv(WEEK_RULES).unwrap();
        let tables = PatternTables {
            foods: &foods,
            definitions: &rules.definitions,
            patterns: &patterns.with(switches.clone()),
            rules: &week_rules.with(switches),
        };
        let service = service(&case.service);
        let start = case.start.unwrap_or(START.parse().unwrap());
        let mut menu = base(&case.service);
        change(&mut menu, &case.changes);
        let week = week(&service, start, &menu);
        let findings = check_pattern(&tables, &week, &service, &by_name).unwrap();
        let with = |verdict: Verdict| {
            let mut found: Vec<String> = findings
                .iter()
                .filter(|finding| finding.verdict == verdict)
                .map(|finding| name(finding, start))
                .collect();
            found.sort();
            found
        };
        for (verdict, expected) in [
            (Verdict::Missed, names(&case.missed)),
            (Verdict::Unknown, names(&case.unknown)),
        ] {
            let found = with(verdict);
            if found != expected {
                wrong.push(format!(
                    "{}: {verdict:?}\n  found    {found:?}\n  expected {expected:?}",
                    case.case
                ));
            }
        }
        assert!(!with(Verdict::Met).is_empty(), "{}", case.case);
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// 226.20, mirrored in 210.10(o)(3) and (p): juice at one meal or snack of a
/// day, and a whole grain-rich grain at one at least.
#[test]
fn some_limits_look_at_all_meals_of_a_day() {
    let foods = foods_with_own();
    let rules = CreditRules::committed().unwrap();
    let recipes = recipes(&foods, &rules);
    let by_name: Vec<CreditedRecipe> = recipes.iter().map(|(id, credits)| (id, credits)).collect();
    let tables = PatternTables {
        foods: &foods,
        definitions: &rules.definitions,
        patterns: &MealPatterns::from_csv(MEAL_PATTERNS).unwrap(),
        rules: &WeekRules::from_csv(WEEK_RULES).unwrap(),
    };
    let supper = service("supper ages 3-5");
    let start = START.parse().unwrap();
    for (supper_changes, snack_offer, missed) in [
        (
            "mon fruit = quarter cup of juice",
            "snack juice",
            "mon meals and snacks of the day, for this group, with juice",
        ),
        ("mon fruit = quarter cup of juice", "toast", ""),
        ("mon bread = white bread", "toast", ""),
        (
            "mon bread = white bread",
            "snack juice",
            "mon meals and snacks of the day, for this group, with a whole grain-rich grain",
        ),
    ] {
        let mut menu = base("supper ages 3-5");
        change(&mut menu, supper_changes);
        let mut week_of_both = week(&supper, start, &menu);
        let mut snacks = Menu::new();
        every_day(&mut snacks, snack_offer);
        let snack = week(&service("snack ages 3-5"), start, &snacks);
        for (day, more) in week_of_both.days.iter_mut().zip(snack.days) {
            day.meals.extend(more.meals);
        }
        let findings = check_pattern(&tables, &week_of_both, &supper, &by_name).unwrap();
        let found: Vec<String> = findings
            .iter()
            .filter(|finding| finding.verdict == Verdict::Missed)
            .map(|finding| name(finding, start))
            .collect();
        assert_eq!(found, names(missed), "{supper_changes}, {snack_offer}");
    }
}

/// Whole Milk for Healthy Kids Act of 2025: from 14 January 2026 the saturated
/// fat in fluid milk is left out of the test at lunch, and its calories stay.
///
/// By hand from SR28: a meal of 244 g of whole milk, which half of the students
/// take, has 1.865 × 2.44 = 4.5506 g of saturated fat and
/// 61 × 2.44 = 148.84 kcal, a share of 9 × 4.5506 ÷ 148.84 = 27.5 percent.
#[test]
fn fluid_milk_is_left_out_of_saturated_fat_at_lunch() {
    let rules = CreditRules::committed().unwrap();
    let one = Servings::new(Decimal::ONE);
    let grams = Grams::new(Decimal::from(244));
    let milk = CreditLine {
        food: Some(FoodId::Sr28(1077)),
        weight: Some(grams),
        ..CreditLine::default()
    };
    let credits = credit_recipe(foods(), &rules, &[milk], one, BeansRole::Vegetable).unwrap();
    let weighed = WeighedLine::new(0, Some(FoodId::Sr28(1077)), Some(grams));
    let analysis = analyse(foods(), &[weighed], one).unwrap();
    let id = RecipeId("milk".into());
    let lunch = service("lunch K-5");
    let mut menu = Menu::new();
    every_day(&mut menu, "milk");
    for (start, switch, share) in [
        ("2026-01-12", true, "27.5"),
        ("2026-01-19", true, "0.0"),
        ("2026-01-19", false, "27.5"),
    ] {
        let mut switches = Switches::default();
        switches.set("whole milk act", switch);
        let table = Specifications::from_csv(DIETARY_SPECIFICATIONS)
            .unwrap()
            .with(switches);
        let week = week(&lunch, start.parse().unwrap(), &menu);
        let wanted = [NutrientId::ENERGY, NutrientId::SATURATED_FAT];
        let average = average(&week, &lunch, &[(&id, &analysis)], &wanted)
            .unwrap()
            .with_fluid_milk(
                foods(),
                &rules.definitions,
                &week,
                &[(&id, &credits)],
                &[NutrientId::SATURATED_FAT],
            );
        let findings = check(&average, &table);
        let fat = findings
            .iter()
            .find(|finding| finding.rule.nutrient == NutrientId::SATURATED_FAT)
            .unwrap();
        let shown = round_half_up(fat.figure.unwrap(), Digits(1));
        assert_eq!(
            shown,
            share.parse().unwrap(),
            "{start}, the Act is {switch}"
        );
        assert!(fat.complete);
        let expected = if share == "0.0" {
            Verdict::Met
        } else {
            Verdict::Missed
        };
        assert_eq!(fat.verdict, expected);
    }
}

/// Without the fluid milk the limit that leaves it out cannot be judged.
#[test]
fn a_limit_without_its_milk_is_unknown() {
    let one = Servings::new(Decimal::ONE);
    let grams = Grams::new(Decimal::from(244));
    let weighed = WeighedLine::new(0, Some(FoodId::Sr28(1077)), Some(grams));
    let analysis = analyse(foods(), &[weighed], one).unwrap();
    let id = RecipeId("milk".into());
    let lunch = service("lunch K-5");
    let mut menu = Menu::new();
    every_day(&mut menu, "milk");
    let week = week(&lunch, "2026-01-19".parse().unwrap(), &menu);
    let wanted = [NutrientId::ENERGY, NutrientId::SATURATED_FAT];
    let average = average(&week, &lunch, &[(&id, &analysis)], &wanted).unwrap();
    let table = Specifications::from_csv(DIETARY_SPECIFICATIONS).unwrap();
    let verdicts: Vec<Verdict> = check(&average, &table)
        .iter()
        .filter(|finding| finding.rule.nutrient == NutrientId::SATURATED_FAT)
        .map(|finding| finding.verdict)
        .collect();
    assert_eq!(verdicts, [Verdict::Unknown]);
}

/// One choice on every day.
fn every_day(menu: &mut Menu, recipe: &str) {
    for day in DAYS {
        let offers = menu.entry(day.to_owned()).or_default();
        offers.insert("offer".into(), (1, vec![recipe.to_owned()]));
    }
}
