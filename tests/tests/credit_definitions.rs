//! How credits are rounded and what is too little, beside a second typing:
//! 7 CFR 210.10(c) Table 1, 7 CFR 210.2 and the USDA Food Buying Guide.

use engine::tables;
use nutrient_data::rules::CREDIT_DEFINITIONS;
use serde::Deserialize;
use std::collections::BTreeSet;

#[derive(Deserialize)]
struct Row {
    name: String,
    component: String,
    group: String,
    amount: String,
    unit: String,
    status: String,
}

#[derive(Deserialize)]
struct Typed {
    component: String,
    rounding: String,
    smallest: String,
    whole_grain_rich: String,
    status: String,
}

/// One row in the words of the second typing.
fn said(row: &Row) -> String {
    let amount = match row.amount.as_str() {
        "0.125" => "1/8",
        "0.25" => "1/4",
        "50" => "half",
        other => other,
    };
    let unit = match row.unit.as_str() {
        "%" => "of the grain",
        unit => unit,
    };
    let figure = format!("{} {amount} {unit}", row.group);
    format!("{}: {}: {}", row.component, row.name, figure.trim())
}

#[test]
fn every_definition_was_typed_twice_alike() {
    let rows = tables::read::<Row>("credit_definitions", CREDIT_DEFINITIONS).unwrap();
    let text = include_str!("../data/credit_definitions.csv");
    let mut typed = BTreeSet::new();
    for row in tables::read::<Typed>("credit_definitions", text).unwrap() {
        let row = row.row;
        let component = row.component;
        for (name, list) in [
            ("round down to", row.rounding),
            ("smallest creditable", row.smallest),
            ("whole grain-rich from", row.whole_grain_rich),
        ] {
            for figure in list.split("; ").filter(|figure| !figure.is_empty()) {
                typed.insert(format!("{component}: {name}: {figure}"));
            }
        }
        let rounding = rows
            .iter()
            .find(|other| other.row.component == component && other.row.group.is_empty())
            .unwrap_or_else(|| panic!("{component} is not in the table"));
        assert_eq!(rounding.row.status, row.status, "{component}");
    }
    let table: BTreeSet<String> = rows.iter().map(|row| said(&row.row)).collect();
    assert_eq!(table, typed);
}
