//! The tables of meal patterns beside a second typing of the same
//! publications in another arrangement, cell by cell; tables that must be
//! refused; an office's own rows.

use engine::components::{Component, CreditRules, Mark};
use engine::foods::FoodId;
use engine::rules::{Bound, Force, Kind, MealPatterns, Period, Specifications, WeekRules};
use engine::tables::{self, List, Row};
use engine::week::{Date, GradeGroup, MealKind, Service};
use gramwright_tests::fixtures::foods;
use nutrient_data::rules::{DIETARY_SPECIFICATIONS, MEAL_PATTERNS, WEEK_RULES};
use rust_decimal::Decimal;
use serde::Deserialize;
use std::collections::BTreeSet;

const DAY: &str = "2026-11-30";

fn read<T: serde::de::DeserializeOwned>(table: &str, text: &str) -> Vec<T> {
    let rows: Vec<Row<T>> = tables::read(table, text).unwrap();
    rows.into_iter().map(|row| row.row).collect()
}

/// "2 1/2" as a decimal.
fn amount(text: &str) -> Decimal {
    text.split_whitespace()
        .map(|part| match part.split_once('/') {
            Some((above, below)) => {
                above.parse::<Decimal>().unwrap() / below.parse::<Decimal>().unwrap()
            }
            None => part.parse().unwrap(),
        })
        .sum()
}

#[derive(Deserialize)]
struct TypedPattern {
    meal: MealKind,
    component: String,
    unit: String,
    groups: List<String>,
    cells: List<String>,
}

/// "8-9 (1)": at least 8 a week, at most 9 as guidance, at least 1 a day.
fn cell(text: &str) -> Vec<(Period, Bound, Decimal)> {
    let (week, day) = match text.split_once('(') {
        Some((week, day)) => (week.trim(), Some(day.trim_end_matches(')'))),
        None => (text, None),
    };
    let mut amounts = Vec::new();
    if let Some(day) = day {
        amounts.push((Period::Day, Bound::AtLeast, amount(day)));
    }
    match week.split_once('-') {
        Some((low, high)) => {
            amounts.push((Period::Week, Bound::AtLeast, amount(low)));
            amounts.push((Period::Week, Bound::AtMost, amount(high)));
        }
        None if week.is_empty() => {}
        None => amounts.push((Period::Week, Bound::AtLeast, amount(week))),
    }
    amounts
}

#[test]
fn meal_patterns_agree_with_a_second_typing() {
    let table = MealPatterns::from_csv(MEAL_PATTERNS).unwrap();
    let mut compared = 0;
    for typed in read::<TypedPattern>("typed", include_str!("../data/meal_patterns_typed.csv")) {
        assert_eq!(typed.groups.len(), typed.cells.len());
        for (group, text) in typed.groups.iter().zip(typed.cells.iter()) {
            for (period, bound, amount) in cell(text) {
                // Milk is counted in fluid ounces, eight to the cup.
                let to_fluid_ounces = typed.component == "fluid milk" && typed.unit == "cup";
                let expected = if to_fluid_ounces {
                    amount * Decimal::from(8)
                } else {
                    amount
                };
                let found: Vec<_> = table
                    .rows()
                    .iter()
                    .filter(|row| {
                        row.meal == typed.meal
                            && row.group.0 == *group
                            && serde_name(&row.component) == typed.component
                            && (row.period, row.bound) == (period, bound)
                    })
                    .collect();
                let cell = format!("{} {group} {} {text}", typed.meal, typed.component);
                assert_eq!(found.len(), 1, "{cell}");
                assert_eq!(found[0].amount, expected, "{cell}");
                let force = match (typed.meal, bound) {
                    (MealKind::Snack, _) => Force::Choice,
                    (_, Bound::AtMost) => Force::Guidance,
                    _ => Force::Required,
                };
                assert_eq!(found[0].force, force, "{cell}");
                compared += 1;
            }
        }
    }
    assert_eq!(compared, table.rows().len(), "no row is left uncompared");
}

/// The name by which a table writes a value.
fn serde_name(value: &impl serde::Serialize) -> String {
    serde_json::to_value(value)
        .unwrap()
        .as_str()
        .unwrap()
        .to_owned()
}

#[derive(Deserialize)]
struct TypedLimits {
    meal: MealKind,
    group: GradeGroup,
    calories: String,
    #[serde(rename = "sodium through 2027-06-30")]
    sodium: Decimal,
    #[serde(rename = "sodium from 2027-07-01")]
    later_sodium: Decimal,
    #[serde(rename = "saturated fat")]
    saturated_fat: Decimal,
    #[serde(rename = "added sugars from 2027-07-01")]
    added_sugars: Decimal,
}

#[test]
fn dietary_limits_agree_with_a_second_typing() {
    let table = Specifications::from_csv(DIETARY_SPECIFICATIONS).unwrap();
    let mut groups = BTreeSet::new();
    for typed in read::<TypedLimits>("typed", include_str!("../data/dietary_limits_typed.csv")) {
        let service = Service {
            kind: typed.meal,
            group: typed.group.clone(),
        };
        groups.insert((typed.meal, typed.group.clone()));
        let (low, high) = typed.calories.split_once('-').unwrap();
        let calories = [
            (208, Bound::AtLeast, amount(low)),
            (208, Bound::AtMost, amount(high)),
        ];
        let fat = (606, Bound::Below, typed.saturated_fat);
        for (date, more) in [
            (DAY, vec![(307, Bound::AtMost, typed.sodium)]),
            ("2027-06-30", vec![(307, Bound::AtMost, typed.sodium)]),
            (
                "2027-07-01",
                vec![
                    (307, Bound::AtMost, typed.later_sodium),
                    (539, Bound::Below, typed.added_sugars),
                ],
            ),
        ] {
            let date: Date = date.parse().unwrap();
            let mut expected: Vec<_> = calories.iter().copied().chain([fat]).chain(more).collect();
            let mut found: Vec<_> = table
                .in_force(&service, date)
                .map(|row| (row.nutrient.0, row.bound, row.limit))
                .collect();
            expected.sort();
            found.sort();
            assert_eq!(found, expected, "{} {} on {date}", typed.meal, typed.group);
        }
    }
    for meal in [MealKind::Lunch, MealKind::Breakfast] {
        for group in table.groups(meal) {
            assert!(groups.contains(&(meal, group.clone())), "{meal} {group}");
        }
    }
}

#[derive(Deserialize)]
struct TypedRule {
    what: String,
    kind: Kind,
    component: Option<Component>,
    marks: List<Mark>,
    limit: String,
    lunch: Option<Date>,
    breakfast: Option<Date>,
    #[serde(rename = "snack 6-18")]
    snack: Option<Date>,
    #[serde(rename = "snack 1-5")]
    young_snack: Option<Date>,
    supper: Option<Date>,
}

#[test]
fn week_rules_agree_with_a_second_typing() {
    let table = WeekRules::from_csv(WEEK_RULES).unwrap();
    let rows = table.rows();
    let mut seen = BTreeSet::new();
    for typed in read::<TypedRule>("typed", include_str!("../data/week_rules_typed.csv")) {
        for (meal, group, from) in [
            (MealKind::Lunch, "K-5", typed.lunch),
            (MealKind::Breakfast, "K-5", typed.breakfast),
            (MealKind::Snack, "ages 13-18", typed.snack),
            (MealKind::Snack, "ages 1-2", typed.young_snack),
            (MealKind::Supper, "ages 13-18", typed.supper),
        ] {
            let service = Service {
                kind: meal,
                group: GradeGroup(group.into()),
            };
            let found: Vec<usize> = (0..rows.len())
                .filter(|index| {
                    let row = &rows[*index];
                    row.speaks_of(&service)
                        && (row.kind, row.component, &row.marks.0)
                            == (typed.kind, typed.component, &typed.marks.0)
                        && from.is_none_or(|from| row.from == from)
                        && limit(row) == typed.limit
                })
                .collect();
            let place = format!("{} at {meal} for {group}", typed.what);
            match from {
                Some(_) => assert_eq!(found.len(), 1, "{place}"),
                None if typed.what.starts_with("milk kinds") => {}
                None => assert!(found.is_empty(), "{place}"),
            }
            if from.is_some() {
                seen.extend(found);
            }
        }
    }
    let unseen: Vec<&str> = (0..rows.len())
        .filter(|index| !seen.contains(index))
        .map(|index| rows[index].id.as_str())
        .collect();
    assert!(unseen.is_empty(), "not in the second typing: {unseen:?}");
}

fn limit(row: &engine::rules::WeekRule) -> String {
    let Some((bound, limit)) = row.bound.zip(row.limit) else {
        return String::new();
    };
    let bound = serde_name(&bound);
    match row.per {
        Some(per) => format!("{bound} {limit} {} per {per} {}", row.unit, row.per_unit),
        None => format!("{bound} {limit} {}", row.unit),
    }
}

#[derive(Deserialize)]
struct TypedCredit {
    what: String,
    food: u32,
    component: Component,
    amount: Decimal,
    unit: String,
    gives: Decimal,
}

/// Amounts that credit as one ounce equivalent or as a part of a cup, typed a
/// second time by food: each credits what the publication says.
#[test]
fn credit_amounts_agree_with_a_second_typing() {
    let rules = CreditRules::committed().unwrap();
    for typed in read::<TypedCredit>("typed", include_str!("../data/credit_amounts.csv")) {
        let food = foods().food(FoodId::Sr28(typed.food)).unwrap();
        let role = match typed.component {
            Component::MeatAlternates => engine::components::BeansRole::MeatAlternate,
            _ => engine::components::BeansRole::Vegetable,
        };
        let rule = rules.list.rule_for(food, role).unwrap();
        let what = format!("{}: {}", typed.what, food.description);
        assert_eq!(rule.component, Some(typed.component), "{what}");
        assert_eq!(rule.unit, typed.unit, "{what}");
        let exact = rule.gives.unwrap() * typed.amount / rule.per.unwrap();
        let credited = rules.definitions.credited(typed.component, None, exact);
        assert_eq!(credited, typed.gives, "{what}");
    }
}

#[test]
fn bad_patterns_are_refused() {
    const HEAD: &str = "meal,group,component,period,bound,amount,unit,force,counted,scaled_to,from,until,only_when,paragraph,source,status,words\n";
    let row = |amount: &str, unit: &str, dates: &str| {
        format!(
            "lunch,K-5,fruits,day,at least,{amount},{unit},required,smallest,,{dates},p,s,v,w\n"
        )
    };
    for (rows, line, word) in [
        (row("-1", "cup", "2024-07-01,,"), 2, "below zero"),
        (row("1", "oz eq", "2024-07-01,,"), 2, "enter it in cup"),
        (row("1", "cup", "2024-07-01,2024-06-30,"), 2, "exchange"),
        (row("1", "cup", "2024-07-32,,"), 2, "calendar"),
        (row("1", "cup", "2024-07-01,,Act"), 2, "colon"),
        (
            row("1", "cup", "2024-07-01,2026-06-30,") + &row("1", "cup", "2026-06-30,,"),
            3,
            "line 2: end one on the day before",
        ),
        (
            row("1", "cup", "2024-07-01,,Act: on") + &row("1", "cup", "2024-07-01,,Act: on"),
            3,
            "line 2",
        ),
    ] {
        let error = MealPatterns::from_csv(&format!("{HEAD}{rows}")).unwrap_err();
        assert_eq!(error.line, line, "{error}");
        assert!(error.to_string().contains(word), "{word}: {error}");
    }
    let apart = row("1", "cup", "2024-07-01,,Act: on") + &row("1", "cup", "2024-07-01,,Act: off");
    assert!(MealPatterns::from_csv(&format!("{HEAD}{apart}")).is_ok());

    const RULES: &str = "id,meal,groups,period,kind,component,marks,bound,limit,unit,per,per_unit,from,until,only_when,paragraph,source,status,words\n";
    for (row, word) in [
        (
            "a,lunch,,week,share of offerings,fruits,juice,,,%,,,2024-07-01,,,p,s,v,w",
            "limit",
        ),
        (
            "a,lunch,,week,share of offerings,,juice,at most,50,%,,,2024-07-01,,,p,s,v,w",
            "component",
        ),
        (
            "a,lunch,,week,share of offerings,fruits,,at most,50,%,,,2024-07-01,,,p,s,v,w",
            "mark",
        ),
        (
            "a,lunch,,week,added sugars,,yogurt,at most,12,g,,,2024-07-01,,,p,s,v,w",
            "per",
        ),
        (
            "a,lunch,,week,guesses,,yogurt,at most,12,g,,,2024-07-01,,,p,s,v,w",
            "guesses",
        ),
    ] {
        let error = WeekRules::from_csv(&format!("{RULES}{row}\n")).unwrap_err();
        assert_eq!(error.line, 2, "{error}");
        assert!(error.to_string().contains(word), "{word}: {error}");
    }
}

#[test]
fn an_office_adds_its_own_rows() {
    let own = "meal,group,component,period,bound,amount,unit,force,counted,scaled_to,from,until,only_when,paragraph,source,status,words\n\
        lunch,K-5,fruits,day,at least,0.75,cup,required,smallest,,2026-08-01,,,board policy 7,office,own,more fruit each day\n";
    let table = MealPatterns::from_csv(MEAL_PATTERNS)
        .unwrap()
        .and_own(own)
        .unwrap();
    let service = Service {
        kind: MealKind::Lunch,
        group: GradeGroup("K-5".into()),
    };
    let fruits: Vec<Decimal> = table
        .in_force(&service, DAY.parse().unwrap(), Force::Required, Period::Day)
        .filter(|row| serde_name(&row.component) == "fruits")
        .map(|row| row.amount)
        .collect();
    assert_eq!(fruits, [Decimal::new(5, 1), Decimal::new(75, 2)]);
}
