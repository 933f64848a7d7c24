//! The panel of analysed recipes: percents, missing values, order, form.

use engine::analysis::{NutrientTotal, RecipeAnalysis};
use engine::exact::PartialSum;
use engine::foods::NutrientId;
use engine::label::{
    Audience, Content, FactsPanel, FigureStatus, Form, LabelTables, LabelTexts, PanelCell,
    PanelOptions, nutrition_facts,
};
use engine::units::{Grams, Servings};
use rust_decimal::Decimal;

fn dec(text: &str) -> Decimal {
    text.parse().unwrap_or_else(|_| panic!("{text} in a table"))
}

fn tables() -> LabelTables {
    LabelTables::new(&LabelTexts::committed()).unwrap()
}

fn known(value: &str) -> PartialSum {
    let mut sum = PartialSum::default();
    sum.add(Grams::new(Decimal::ONE_HUNDRED), Some(dec(value)));
    sum
}

/// A recipe of that many servings with these totals.
fn recipe(servings: &str, totals: &[(u16, PartialSum)]) -> RecipeAnalysis {
    RecipeAnalysis {
        servings: Servings::new(dec(servings)),
        mass: Grams::new(Decimal::ONE_HUNDRED),
        mass_measured: false,
        unknown_lines: Vec::new(),
        totals: totals
            .iter()
            .map(|(nutrient, total)| NutrientTotal {
                nutrient: NutrientId(*nutrient),
                total: *total,
            })
            .collect(),
    }
}

fn cell(panel: &FactsPanel, nutrient: u16, column: usize) -> &PanelCell {
    std::iter::once(&panel.calories)
        .chain(&panel.rows)
        .find(|row| row.nutrient == NutrientId(nutrient))
        .map(|row| &row.cells[column])
        .unwrap_or_else(|| panic!("the panel does not list {nutrient}"))
}

fn records(text: &str) -> Vec<csv::StringRecord> {
    csv::Reader::from_reader(text.as_bytes())
        .records()
        .map(Result::unwrap)
        .collect()
}

#[test]
fn percents() {
    let tables = tables();
    for record in records(include_str!("label_percent_cases.csv")) {
        let nutrient = record[0].parse().unwrap();
        let audience = match &record[1] {
            "1 to 3" => Audience::OneToThree,
            _ => Audience::FourAndOver,
        };
        let options = PanelOptions {
            audience,
            ..PanelOptions::default()
        };
        let panel = nutrition_facts(
            &recipe("1", &[(nutrient, known(&record[2]))]),
            &tables,
            &options,
        );
        let printed = cell(&panel, nutrient, 0).percent.as_deref();
        assert_eq!(printed.unwrap_or_default(), &record[3], "{record:?}");
    }
}

#[test]
fn a_missing_value_is_never_zero() {
    let tables = tables();
    for record in records(include_str!("label_unknown_cases.csv")) {
        let nutrient = record[0].parse().unwrap();
        let (known_mass, mass) = (dec(&record[2]), dec(&record[3]));
        let sum = PartialSum {
            known: dec(&record[1]),
            known_mass: Grams::new(known_mass),
            mass: Grams::new(mass),
            unweighed: record[4].parse().unwrap(),
            missing: u32::from(known_mass < mass),
        };
        let panel = nutrition_facts(
            &recipe("1", &[(nutrient, sum)]),
            &tables,
            &PanelOptions::default(),
        );
        let cell = cell(&panel, nutrient, 0);
        assert_eq!(cell.amount, &record[5], "{record:?}");
        assert_eq!(
            cell.percent.as_deref().unwrap_or_default(),
            &record[6],
            "{record:?}"
        );
        let status = match cell.status {
            FigureStatus::Known => "known",
            FigureStatus::LowerBound { .. } => "lower bound",
            FigureStatus::Missing => "missing",
        };
        assert_eq!(status, &record[7], "{record:?}");
    }
}

#[test]
fn nothing_known_prints_nothing_but_that() {
    let panel = nutrition_facts(&recipe("8", &[]), &tables(), &PanelOptions::default());
    assert!(!panel.complete);
    for row in std::iter::once(&panel.calories).chain(&panel.rows) {
        assert_eq!(row.cells[0].amount, "not known", "{}", row.name);
        assert_eq!(row.cells[0].line, format!("{}: not known", row.name));
        assert_ne!(row.cells[0].percent.as_deref(), Some("0%"));
    }
    assert!(!panel.simplified_allowed, "unknown is not insignificant");
}

/// 21 CFR 101.9(c) and (d), from memory: the order, indents and bold names.
#[test]
fn order_indents_and_bold() {
    let options = PanelOptions {
        also: vec![NutrientId(645), NutrientId(401), NutrientId(646)],
        ..PanelOptions::default()
    };
    let panel = nutrition_facts(&recipe("8", &[]), &tables(), &options);
    let rows: Vec<String> = panel
        .rows
        .iter()
        .map(|row| {
            let name = if row.bold {
                row.name.to_uppercase()
            } else {
                row.name.clone()
            };
            format!("{}{name}", ">".repeat(row.indent.into()))
        })
        .collect();
    assert_eq!(
        rows.join(" "),
        "TOTAL FAT >Saturated Fat >Trans Fat >Polyunsaturated Fat >Monounsaturated Fat \
         CHOLESTEROL SODIUM TOTAL CARBOHYDRATE >Dietary Fiber >Total Sugars >>Added Sugars \
         PROTEIN Vitamin D Calcium Iron Potassium Vitamin C"
    );
}

/// 21 CFR 101.9(d)(9), from memory.
#[test]
fn the_footnote_is_the_regulations() {
    let tables = tables();
    let mut options = PanelOptions::default();
    let footnote = |options: &PanelOptions| {
        nutrition_facts(&recipe("8", &[]), &tables, options)
            .footnote
            .words
    };
    assert_eq!(
        footnote(&options),
        "*The % Daily Value (DV) tells you how much a nutrient in a serving of food \
         contributes to a daily diet. 2,000 calories a day is used for general nutrition advice."
    );
    options.audience = Audience::OneToThree;
    assert!(footnote(&options).contains("1,000 calories a day"));
}

#[test]
fn each_serving_is_exact_before_it_is_rounded() {
    let tables = tables();
    let analysis = recipe(
        "7",
        &[
            (307, known("1015")),
            (539, known("80.5")),
            (208, known("385")),
        ],
    );
    let options = PanelOptions {
        dual: true,
        ..PanelOptions::default()
    };
    let panel = nutrition_facts(&analysis, &tables, &options);
    // 1015 / 7 = 145, a middle; seven servings are 1015 again, not 7 × 150.
    assert_eq!(cell(&panel, 307, 0).amount, "150 mg");
    assert_eq!(cell(&panel, 307, 1).amount, "1020 mg");
    // 385 / 7 = 55, a middle.
    assert_eq!(panel.calories.cells[0].amount, "60");
    assert_eq!(panel.calories.cells[1].amount, "390");
    // 80.5 / 7 = 11.5, a middle.
    assert_eq!(cell(&panel, 539, 0).line, "Includes 12 g Added Sugars");
    assert_eq!(cell(&panel, 539, 1).line, "Includes 81 g Added Sugars");
    assert_eq!(panel.columns.len(), 2);
}

#[test]
fn servings_and_serving_size() {
    let tables = tables();
    for (servings, words, weight, printed_servings, printed_size) in [
        (
            "8",
            "1 cup",
            Some("240.4"),
            "8 servings per container",
            "1 cup (240 g)",
        ),
        (
            "1",
            "1 wrap",
            Some("4.8"),
            "1 serving per container",
            "1 wrap (5 g)",
        ),
        (
            "3.3",
            "",
            Some("92"),
            "About 3.5 servings per container",
            "92 g",
        ),
        (
            "2.5",
            "1 tray",
            Some("92"),
            "2.5 servings per container",
            "1 tray (92 g)",
        ),
        // 100 g of ingredients.
        (
            "8",
            "1 cup",
            None,
            "8 servings per container",
            "1 cup (13 g)",
        ),
    ] {
        let options = PanelOptions {
            serving_words: words.into(),
            serving_weight: weight.map(|grams| Grams::new(dec(grams))),
            ..PanelOptions::default()
        };
        let panel = nutrition_facts(&recipe(servings, &[]), &tables, &options);
        assert_eq!(panel.servings, printed_servings);
        assert_eq!(panel.serving_size, printed_size);
    }
}

#[test]
fn a_line_without_weight_leaves_the_serving_weight_open() {
    let mut sum = known("5");
    sum.add_unweighed();
    let options = PanelOptions {
        serving_words: "1 cup".into(),
        ..PanelOptions::default()
    };
    let tables = tables();
    let recipe = recipe("8", &[(204, sum)]);
    let panel = nutrition_facts(&recipe, &tables, &options);
    assert_eq!(panel.serving_size, "1 cup (weight not known)");
    assert!(panel.notes[1].words.contains("weigh the finished batch"));
    // Weighing the finished batch settles it.
    let weighed = recipe.with_finished_mass(Grams::new(dec("720")));
    let panel = nutrition_facts(&weighed, &tables, &options);
    assert_eq!(panel.serving_size, "1 cup (90 g)");
    assert_eq!(panel.notes.len(), 1);
}

/// Fourteen of the fifteen nutrients at nought, total carbohydrate at 12 g.
fn mostly_water() -> Vec<(u16, PartialSum)> {
    tables()
        .nutrients()
        .map(|row| {
            (
                row.nutrient.0,
                known(if row.nutrient.0 == 205 { "12" } else { "0" }),
            )
        })
        .collect()
}

fn names(panel: &FactsPanel) -> Vec<&str> {
    panel.rows.iter().map(|row| row.name.as_str()).collect()
}

/// 21 CFR 101.9(f), from memory.
#[test]
fn the_simplified_panel() {
    let tables = tables();
    let options = PanelOptions {
        content: Content::Simplified,
        ..PanelOptions::default()
    };
    let panel = nutrition_facts(&recipe("1", &mostly_water()), &tables, &options);
    assert!(panel.simplified_allowed && panel.problems.is_empty());
    assert_eq!(
        names(&panel),
        ["Total Fat", "Sodium", "Total Carbohydrate", "Protein"]
    );
    assert_eq!(
        panel.insignificant.as_deref(),
        Some(
            "Not a significant source of saturated fat, trans fat, cholesterol, dietary fiber, \
             total sugars, added sugars, vitamin D, calcium, iron, and potassium."
        )
    );
}

/// Of the fifteen, eight at an insignificant amount allow it and seven do not;
/// 21 CFR 101.9(f), from memory.
#[test]
fn the_simplified_panel_from_eight() {
    let tables = tables();
    // Just insignificant, and just significant.
    let amounts: [(u16, &str, &str); 15] = [
        (208, "4.9", "5"),
        (204, "0.49", "0.5"),
        (606, "0.49", "0.5"),
        (605, "0.49", "0.5"),
        (601, "1.9", "2"),
        (307, "4.9", "5"),
        (205, "0.99", "1"),
        (291, "0.99", "1"),
        (269, "0.49", "0.5"),
        (539, "0.49", "0.5"),
        (203, "0.99", "1"),
        (328, "0.399", "0.4"),
        (301, "25.9", "26"),
        (303, "0.359", "0.36"),
        (306, "93.9", "94"),
    ];
    for start in 0..amounts.len() {
        for (count, allowed) in [(7, false), (8, true)] {
            let totals: Vec<(u16, PartialSum)> = (0..amounts.len())
                .map(|index| {
                    let (nutrient, little, more) = amounts[(start + index) % amounts.len()];
                    (nutrient, known(if index < count { little } else { more }))
                })
                .collect();
            let options = PanelOptions {
                content: Content::Simplified,
                ..PanelOptions::default()
            };
            let panel = nutrition_facts(&recipe("1", &totals), &tables, &options);
            assert_eq!(panel.simplified_allowed, allowed, "{count} from {start}");
            assert_eq!(panel.problems.is_empty(), allowed);
        }
    }
}

/// 21 CFR 101.9(c)(2) to (c)(8), from memory: rows that may be left out.
#[test]
fn the_full_panel_without_insignificant_rows() {
    let tables = tables();
    let mut totals = mostly_water();
    let options = PanelOptions {
        content: Content::WithoutInsignificant,
        ..PanelOptions::default()
    };
    let panel = nutrition_facts(&recipe("1", &totals), &tables, &options);
    assert_eq!(
        names(&panel),
        ["Total Fat", "Sodium", "Total Carbohydrate", "Protein"]
    );
    // Half a gram of fat brings back the rows that go by total fat; a trace of
    // cholesterol of which a part is unknown stays as well.
    for (nutrient, total) in &mut totals {
        match nutrient {
            204 => *total = known("0.5"),
            601 => total.missing = 1,
            _ => {}
        }
    }
    let panel = nutrition_facts(&recipe("1", &totals), &tables, &options);
    assert_eq!(
        names(&panel),
        [
            "Total Fat",
            "Saturated Fat",
            "Trans Fat",
            "Cholesterol",
            "Sodium",
            "Total Carbohydrate",
            "Protein"
        ]
    );
    assert_eq!(cell(&panel, 601, 0).amount, "not known");
}

/// 21 CFR 101.9(d), from memory: least type sizes in points.
#[test]
fn type_sizes() {
    let tables = tables();
    for (form, dual, part, points) in [
        (Form::Vertical, false, "calories word", "16"),
        (Form::Vertical, false, "calories figure", "22"),
        (Form::Vertical, true, "calories figure", "22"),
        (Form::Tabular, false, "calories word", "10"),
        (Form::Tabular, false, "calories figure", "14"),
        (Form::Linear, false, "calories word", "10"),
        (Form::Linear, false, "calories figure", "14"),
        (Form::Vertical, false, "servings", "10"),
        (Form::Vertical, false, "serving size", "10"),
        (Form::Vertical, false, "nutrient row", "8"),
        (Form::Vertical, false, "column heading", "6"),
        (Form::Linear, false, "footnote", "6"),
    ] {
        let options = PanelOptions {
            form,
            dual,
            ..PanelOptions::default()
        };
        let panel = nutrition_facts(&recipe("8", &[]), &tables, &options);
        let facts: Vec<&str> = panel
            .layout
            .iter()
            .filter(|fact| fact.part == part && fact.property == "least type")
            .map(|fact| fact.value.as_str())
            .collect();
        assert_eq!(facts, [points], "{form:?} {part}");
    }
}

#[test]
fn options_that_make_no_sense_are_named() {
    let options = PanelOptions {
        serving_weight: Some(Grams::ZERO),
        servings_per_container: Some(Servings::new(dec("-3"))),
        also: vec![NutrientId(255)],
        ..PanelOptions::default()
    };
    let panel = nutrition_facts(&recipe("8", &[]), &tables(), &options);
    let problems: Vec<String> = panel.problems.iter().map(ToString::to_string).collect();
    assert!(problems[0].contains("-3 servings") && problems[0].contains("above zero"));
    assert!(problems[1].contains("0 g"));
    assert!(problems[2].contains("255"));
    assert_eq!(panel.servings, "8 servings per container");
    assert_eq!(panel.serving_size, "13 g");
}

#[test]
fn running_text() {
    let options = PanelOptions {
        form: Form::Linear,
        serving_words: "1 cup".into(),
        serving_weight: Some(Grams::new(dec("240"))),
        content: Content::Simplified,
        ..PanelOptions::default()
    };
    let panel = nutrition_facts(&recipe("1", &mostly_water()), &tables(), &options);
    let text = panel.running_text();
    assert!(
        text.starts_with(
            "Nutrition Facts. 1 serving per container. Serv. size: 1 cup (240 g). \
             Amount per serving: Calories 0, Total Fat 0 g (0% DV), Sodium 0 mg (0% DV), \
             Total Carb. 12 g (4% DV), Protein 0 g. Not a significant source of saturated fat,"
        ),
        "{text}"
    );
}

/// The page reads these names.
#[test]
fn the_form_for_the_page() {
    let panel = nutrition_facts(
        &recipe("1", &[(307, known("212"))]),
        &tables(),
        &PanelOptions::default(),
    );
    let json = serde_json::to_value(&panel).unwrap();
    let sodium = &json["rows"][4];
    assert_eq!(sodium["name"], "Sodium");
    assert_eq!(sodium["group"], "main");
    assert_eq!(sodium["cells"][0]["status"]["kind"], "known");
    assert_eq!(sodium["cells"][0]["amount"], "210 mg");
    assert_eq!(sodium["cells"][0]["exact"], "212");
    assert_eq!(sodium["cells"][0]["shortLine"], "Sodium 210 mg");
    assert_eq!(json["servingSize"], "100 g");
    assert_eq!(json["footnote"]["status"], "from memory");
    assert_eq!(json["layout"][0]["value"], "hairline");
    let options: PanelOptions = serde_json::from_str(
        r#"{"servingWords":"1 cup","audience":"1 to 3","form":"linear","content":"withoutInsignificant"}"#,
    )
    .unwrap();
    assert_eq!(options.audience, Audience::OneToThree);
}
