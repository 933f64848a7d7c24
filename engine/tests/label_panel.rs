//! The panel of analysed recipes: percents, missing values, order, form.

mod label_support;

use engine::exact::PartialSum;
use engine::foods::NutrientId;
use engine::label::{Audience, FigureStatus, Form, PanelOptions, nutrition_facts};
use engine::units::{Grams, Servings};
use label_support::{cell, dec, known, recipe, tables};

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
