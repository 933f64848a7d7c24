//! Panels without the rows of insignificant amounts, by 21 CFR 101.9(c) and (f),
//! from memory.

mod label_support;

use engine::exact::PartialSum;
use engine::label::{Content, FactsPanel, Form, PanelOptions, nutrition_facts};
use engine::units::Grams;
use label_support::{cell, dec, known, recipe, tables};

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
