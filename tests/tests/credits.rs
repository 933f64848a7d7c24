//! What lines of recipes credit, worked by hand from the published amounts and
//! the dataset's measures; each row names its sources. And tables that must be
//! refused.

use engine::components::{
    BeansRole, Component, CouldAdd, CreditLine, CreditRules, GrainGroups, Mark, RecipeCredits,
    StatedCredit, credit_recipe,
};
use engine::exact::{Digits, round_half_up};
use engine::foods::FoodId;
use engine::tables;
use engine::units::{Grams, Servings};
use gramwright_tests::fixtures::foods;
use rust_decimal::Decimal;
use serde::Deserialize;
use std::collections::BTreeSet;

fn rules() -> CreditRules {
    CreditRules::committed().expect("the committed tables of crediting")
}

fn line(food: u32, grams: &str) -> CreditLine {
    CreditLine {
        food: Some(FoodId::Sr28(food)),
        weight: Some(Grams::new(grams.parse().unwrap())),
        ..CreditLine::default()
    }
}

/// The measure that the dataset calls so.
fn measure_number(food: u32, words: &str) -> u16 {
    let measures = foods().measures(FoodId::Sr28(food));
    let measure = measures.iter().find(|measure| measure.words == words);
    measure.expect("a measure of the food").number
}

fn credit(lines: &[CreditLine], servings: i64, beans: BeansRole) -> RecipeCredits {
    let servings = Servings::new(servings.into());
    credit_recipe(foods(), &rules(), lines, servings, beans).unwrap()
}

fn amounts(credits: &RecipeCredits, component: Component) -> (Decimal, Decimal) {
    credits
        .per_serving
        .iter()
        .find(|credit| credit.component == component)
        .map_or((Decimal::ZERO, Decimal::ZERO), |credit| {
            (credit.exact, credit.credited)
        })
}

fn dec(text: &str) -> Decimal {
    text.parse().unwrap()
}

#[derive(Deserialize)]
struct Case {
    name: String,
    food: u32,
    grams: Decimal,
    servings: i64,
    beans: Option<BeansRole>,
    measure: Option<String>,
    #[serde(rename = "yield")]
    cooked_yield: Option<Decimal>,
    component: Component,
    exact: Decimal,
    credited: Decimal,
}

#[test]
fn lines_credit_as_worked_by_hand() {
    let cases: Vec<tables::Row<Case>> = tables::read(
        "crediting_lines",
        include_str!("../data/crediting_lines.csv"),
    )
    .unwrap();
    assert!(cases.len() >= 40);
    let mut wrong = Vec::new();
    for case in cases.into_iter().map(|row| row.row) {
        let line = CreditLine {
            line: 0,
            food: Some(FoodId::Sr28(case.food)),
            weight: Some(Grams::new(case.grams)),
            measure: case.measure.map(|words| measure_number(case.food, &words)),
            cooked_yield: case.cooked_yield,
            stated: Vec::new(),
        };
        let credits = credit(&[line], case.servings, case.beans.unwrap_or_default());
        let (exact, credited) = amounts(&credits, case.component);
        let shown = round_half_up(exact, Digits(6));
        if shown != case.exact || credited != case.credited {
            wrong.push(format!(
                "{}: {shown} credits {credited}, by hand {} credits {}; {}; {:?}",
                case.name,
                case.exact,
                case.credited,
                credits.lines[0].reason,
                credits.lines[0].steps
            ));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

/// 7 CFR 210.10(c)(2)(ii)(C), (iv)(E): one dish serves its beans as a vegetable
/// or as a meat alternate; as the latter they count toward the weekly subgroup,
/// not toward vegetables.
#[test]
fn beans_count_once() {
    let beans = [line(16015, "2150")];
    let vegetable = credit(&beans, 50, BeansRole::Vegetable);
    let quarter = dec("0.25");
    assert_eq!(amounts(&vegetable, Component::Vegetables).1, quarter);
    assert_eq!(amounts(&vegetable, Component::Beans).1, quarter);
    assert_eq!(
        amounts(&vegetable, Component::MeatAlternates).1,
        Decimal::ZERO
    );

    let meat = credit(&beans, 50, BeansRole::MeatAlternate);
    assert_eq!(amounts(&meat, Component::MeatAlternates).1, Decimal::ONE);
    assert_eq!(amounts(&meat, Component::Beans).1, quarter);
    assert_eq!(amounts(&meat, Component::Vegetables).1, Decimal::ZERO);
}

/// Food Buying Guide, Appendix A (from memory): the recipe total is rounded
/// once, last. Two lines of 0.2 oz eq each credit 0.25 together, nothing alone.
#[test]
fn the_recipe_total_is_rounded_once() {
    let lines = [line(18350, "5.6"), line(18064, "5.6")];
    let both = credit(&lines, 1, BeansRole::Vegetable);
    assert_eq!(amounts(&both, Component::Grains), (dec("0.4"), dec("0.25")));
    let one = credit(&lines[..1], 1, BeansRole::Vegetable);
    assert_eq!(amounts(&one, Component::Grains), (dec("0.2"), dec("0")));
}

/// 7 CFR 210.2: an item is whole grain-rich from half of its grain being whole.
/// The flours of a dough are one item.
#[test]
fn flours_are_whole_grain_rich_together() {
    for (whole, white, rich) in [("800", "800", true), ("799", "801", false)] {
        let credits = credit(
            &[line(20080, whole), line(20081, white)],
            50,
            BeansRole::Vegetable,
        );
        assert_eq!(credits.dough_is_whole_grain_rich, Some(rich));
        let marked = credits.marked(
            &rules().definitions,
            Component::Grains,
            Mark::WholeGrainRich,
            None,
        );
        let expected = if rich { dec("2") } else { Decimal::ZERO };
        assert_eq!(marked.low, expected, "{whole} of whole-grain flour");
        assert!(marked.is_exact());
    }
}

#[test]
fn what_is_not_known_is_not_zero() {
    let nameless = CreditLine {
        weight: Some(Grams::new(dec("500"))),
        ..CreditLine::default()
    };
    let uncovered = line(21005, "500");
    let raw_cut = line(13149, "500");
    let seasoning = line(2047, "10");
    for (line, unknown) in [
        (nameless, Some(CouldAdd::Anything)),
        (uncovered, Some(CouldAdd::Anything)),
        (
            CreditLine {
                weight: None,
                ..line(11090, "1")
            },
            Some(CouldAdd::Only(Component::DarkGreen)),
        ),
        (raw_cut, Some(CouldAdd::Only(Component::MeatAlternates))),
        (seasoning, None),
    ] {
        let credits = credit(&[line], 10, BeansRole::Vegetable);
        assert_eq!(credits.lines[0].unknown, unknown, "{:?}", credits.lines[0]);
        assert!(!credits.lines[0].reason.is_empty());
        assert_eq!(
            credits.is_complete(Component::MeatAlternates),
            unknown.is_none_or(|could_add| !could_add.touches(Component::MeatAlternates))
        );
    }
}

#[test]
fn a_stated_credit_replaces_the_rules() {
    let nuggets = CreditLine {
        stated: vec![
            StatedCredit {
                component: Component::MeatAlternates,
                amount: dec("2"),
                marks: Vec::new(),
                reason: "CN label".into(),
                stated_for: None,
            },
            StatedCredit {
                component: Component::Grains,
                amount: dec("1"),
                marks: vec![Mark::WholeGrainRich],
                reason: "CN label".into(),
                stated_for: None,
            },
        ],
        ..line(5327, "4000")
    };
    let credits = credit(&[nuggets], 40, BeansRole::Vegetable);
    assert_eq!(amounts(&credits, Component::MeatAlternates).1, dec("2"));
    assert_eq!(amounts(&credits, Component::Grains).1, dec("1"));
    assert!(credits.is_complete(Component::Fruits));
}

/// Steps from the weight lead to the amount that is credited.
#[test]
fn the_arithmetic_can_be_read() {
    let credits = credit(&[line(20037, "5050")], 50, BeansRole::Vegetable);
    let numbers: Vec<String> = credits.lines[0]
        .steps
        .iter()
        .map(|step| format!("{:?} {} {}", step.operation, step.by, step.unit))
        .collect();
    assert_eq!(
        numbers,
        ["DividedBy 202 g", "DividedBy 0.5 cup"],
        "5050 g at 202 g per cup and half a cup per oz eq"
    );
}

#[derive(Deserialize)]
struct ExhibitA {
    group: String,
    #[serde(rename = "1 oz eq")]
    one: Decimal,
    #[serde(rename = "3/4 oz eq")]
    three_quarters: Option<Decimal>,
    #[serde(rename = "1/2 oz eq")]
    half: Option<Decimal>,
    #[serde(rename = "1/4 oz eq")]
    quarter: Option<Decimal>,
}

/// Exhibit A typed a second time, by group, beside the committed table by
/// credit. Each published weight of a share must also credit that share when it
/// is divided by the weight of one ounce equivalent and rounded down.
#[test]
fn exhibit_a_agrees_with_a_second_typing() {
    let table = GrainGroups::from_csv(nutrient_data::rules::GRAIN_GROUPS).unwrap();
    let typed: Vec<tables::Row<ExhibitA>> =
        tables::read("exhibit_a", include_str!("../data/exhibit_a.csv")).unwrap();
    let definitions = rules().definitions;
    let mut compared = 0;
    for ExhibitA {
        group,
        one,
        three_quarters,
        half,
        quarter,
    } in typed.into_iter().map(|row| row.row)
    {
        for (credit, grams) in [
            ("1", Some(one)),
            ("0.75", three_quarters),
            ("0.5", half),
            ("0.25", quarter),
        ] {
            let Some(grams) = grams else { continue };
            let row = table
                .rows()
                .iter()
                .find(|row| row.group == group && row.credit == dec(credit));
            assert_eq!(
                row.map(|row| row.grams),
                Some(grams),
                "group {group}, {credit} oz eq"
            );
            let credited = definitions.credited(Component::Grains, None, grams / one);
            assert_eq!(credited, dec(credit), "{grams} g of group {group}");
            compared += 1;
        }
    }
    assert_eq!(compared, table.rows().len(), "no row is left uncompared");
}

#[derive(Deserialize)]
struct ComponentOfFood {
    food: u32,
    words: String,
    component: Option<Component>,
}

/// Toward what a food credits, by published lists; an empty cell means that it
/// is known to credit nothing.
#[test]
fn foods_credit_toward_their_component() {
    let table: Vec<tables::Row<ComponentOfFood>> = tables::read(
        "component_foods",
        include_str!("../data/component_foods.csv"),
    )
    .unwrap();
    for case in table.into_iter().map(|row| row.row) {
        let credits = credit(&[line(case.food, "1000")], 1, BeansRole::Vegetable);
        let found = credits.lines[0].parts.first().map(|part| part.component);
        let reason = &credits.lines[0].reason;
        assert_eq!(found, case.component, "{}: {reason}", case.words);
        assert_eq!(credits.lines[0].unknown, None, "{}: {reason}", case.words);
    }
}

/// A rule behind a wider one would never be asked.
#[test]
fn every_rule_decides_for_some_food() {
    let rules = rules();
    let decided: BTreeSet<&str> = foods()
        .foods()
        .iter()
        .flat_map(|food| {
            [BeansRole::Vegetable, BeansRole::MeatAlternate]
                .map(|role| rules.list.rule_for(food, role))
        })
        .flatten()
        .map(|rule| rule.id.as_str())
        .collect();
    let idle: Vec<&str> = rules
        .list
        .rules()
        .iter()
        .map(|rule| rule.id.as_str())
        .filter(|id| !decided.contains(id))
        .collect();
    assert!(idle.is_empty(), "{idle:?}");
}

#[test]
fn bad_tables_are_refused() {
    const HEAD: &str = "id,role,groups,begins,has,lacks,numbers,component,marks,basis,per,unit,gives,yield,cup_of,least_protein,paragraph,source,status,words\n";
    let good = "a,,900,,,,,fruits,,measure,1,cup,1,,,,p,s,v,w\n";
    let groups = nutrient_data::rules::GRAIN_GROUPS;
    let definitions = nutrient_data::rules::CREDIT_DEFINITIONS;
    let read = |rows: &str| CreditRules::from_csv(&format!("{HEAD}{rows}"), groups, definitions);
    assert!(read(good).is_ok());
    for (row, line, word) in [
        (
            "a,,,,,,,fruits,,measure,1,cup,1,,,,p,s,v,w\n",
            2,
            "covers no food",
        ),
        (
            "a,,900,,,,,fruits,,measure,0,cup,1,,,,p,s,v,w\n",
            2,
            "above zero",
        ),
        ("a,,900,,,,,fruits,,measure,1,cup,,,,,p,s,v,w\n", 2, "gives"),
        ("a,,900,,,,,fruits,,measure,1,,1,,,,p,s,v,w\n", 2, "unit"),
        (
            "a,,900,,,,,fruits,,weight,1,lb,1,,,,p,s,v,w\n",
            2,
            "g or oz",
        ),
        ("a,,900,,,,,,,weight,1,oz,1,,,,p,s,v,w\n", 2, "component"),
        ("a,,900,,,,,vegs,,weight,1,oz,1,,,,p,s,v,w\n", 2, "vegs"),
        (
            "a,,900,,,,,fruits,juicy,weight,1,oz,1,,,,p,s,v,w\n",
            2,
            "juicy",
        ),
        (
            "a,,1800,,,,,grains,,exhibit,,Q,,,,,p,s,v,w\n",
            2,
            "Exhibit A",
        ),
        (
            "a,,900,,,,,fruits,,weight,1,oz,1,most,,,p,s,v,w\n",
            2,
            "yield",
        ),
        (good, 3, "rename"),
    ] {
        let text = if line == 3 {
            format!("{good}{row}")
        } else {
            row.to_owned()
        };
        let error = read(&text).unwrap_err();
        assert_eq!(error.line, line, "{error}");
        assert!(error.to_string().contains(word), "{word}: {error}");
    }
    for (table, text, word) in [
        (
            "grain_groups",
            "group,credit,grams,ounces,source,status,words\nA,1,22,0.8,s,v,w\nA,1,23,0.8,s,v,w\n",
            "already",
        ),
        (
            "grain_groups",
            "group,credit,grams,ounces,source,status,words\nA,1,0,0.8,s,v,w\n",
            "above zero",
        ),
    ] {
        let error = CreditRules::from_csv(HEAD, text, definitions).unwrap_err();
        assert_eq!(error.table, table);
        assert!(error.to_string().contains(word), "{error}");
    }
    let twice = "name,component,group,amount,unit,paragraph,source,status,words\nround down to,grains,,0.25,oz eq,p,s,v,w\nround down to,grains,,0.5,oz eq,p,s,v,w\n";
    let error = CreditRules::from_csv(HEAD, groups, twice).unwrap_err();
    assert_eq!(
        (error.line, error.table.as_str()),
        (3, "credit_definitions")
    );
}
