//! The label's and the claims' tables against a second typing of the same
//! publications, cell by cell and in both directions. The second typing is in
//! `tests/data/label_*.csv`, shaped as the publications are, with the status of
//! each figure; those "from memory" were typed twice from memory, which finds
//! slips of the hand only.

use engine::label::{LabelTables, LabelTexts};
use gramwright_tests::fixtures;
use gramwright_tests::typed::{Row, rows};
use nutrient_data::rules;
use std::collections::{BTreeMap, BTreeSet};

/// Shows both sides' surplus.
fn assert_same(table: BTreeSet<String>, typed: BTreeSet<String>) {
    let only = |one: &BTreeSet<String>, other: &BTreeSet<String>| -> Vec<String> {
        one.difference(other).cloned().collect()
    };
    let (surplus, lacking) = (only(&table, &typed), only(&typed, &table));
    assert!(
        surplus.is_empty() && lacking.is_empty(),
        "only in the table: {surplus:#?}\nonly in the second typing: {lacking:#?}"
    );
}

/// One row of the rounding table as a clause: "<5: 0", ">50: nearest 10".
fn clause(row: &Row) -> String {
    let cell = |name: &str| row[name].as_str();
    let range = match (
        cell("at_least"),
        cell("above"),
        cell("below"),
        cell("at_most"),
    ) {
        ("0", "", "", "") => "any".to_owned(),
        (_, _, "", "") if cell("above").is_empty() => format!(">={}", cell("at_least")),
        (_, above, "", "") => format!(">{above}"),
        (_, _, below, "") => format!("<{below}"),
        (_, _, _, at_most) => format!("<={at_most}"),
    };
    match cell("step") {
        "" => format!("{range}: {}", cell("prints")),
        step => format!("{range}: nearest {step}"),
    }
}

#[test]
fn rounding() {
    let mut table: BTreeMap<String, (Vec<String>, BTreeSet<String>)> = BTreeMap::new();
    for row in rows(rules::LABEL_ROUNDING) {
        let (clauses, cited) = table.entry(row["figure"].clone()).or_default();
        clauses.push(clause(&row));
        // The lowest band of servings is nobody's rule; its row says so.
        cited.insert(format!("{} {}", row["paragraph"], row["status"]));
    }
    let table = table.into_iter().flat_map(|(figure, (clauses, cited))| {
        cited
            .into_iter()
            .map(move |cited| format!("{figure} | {} | {cited}", clauses.join("; ")))
    });
    let typed = rows(include_str!("../data/label_rounding.csv"));
    let typed = typed.iter().flat_map(|row| {
        let figures = match row["figures"].starts_with(|first: char| first.is_ascii_digit()) {
            true => row["figures"].split(' ').collect(),
            false => vec![row["figures"].as_str()],
        };
        figures.into_iter().map(|figure| {
            format!(
                "{figure} | {} | 21 CFR 101.9{} {}",
                row["rule"], row["paragraph"], row["status"]
            )
        })
    });
    assert_same(table.collect(), typed.collect());
}

#[test]
fn daily_values() {
    let table = rows(rules::DAILY_VALUES).into_iter().map(|row| {
        let name = row["words"].split([',', ';']).next().unwrap_or_default();
        format!(
            "{name} | {} | {} | {} | {} {} | {} | {}",
            row["nutrient"],
            row["kind"],
            row["audience"],
            row["amount"],
            row["unit"],
            row["status"],
            row["paragraph"]
        )
    });
    let typed = rows(include_str!("../data/label_daily_values.csv"));
    let typed = typed.iter().flat_map(|row| {
        [
            ("4 and over", &row["four_and_over"], &row["status"]),
            ("1 to 3", &row["one_to_three"], &row["status_one_to_three"]),
        ]
        .into_iter()
        .filter(|(_, amount, _)| !amount.is_empty())
        .map(move |(audience, amount, status)| {
            format!(
                "{} | {} | {} | {audience} | {amount} {} | {status} | {}",
                row["name"], row["nutrient"], row["kind"], row["unit"], row["publication"]
            )
        })
    });
    assert_same(table.collect(), typed.collect());
}

/// 21 CFR 101.9(c), (d) and (f), from memory; the order counts.
#[test]
fn rows_of_the_panel() {
    let table: Vec<String> = rows(rules::LABEL_NUTRIENTS)
        .iter()
        .filter(|row| row["listed"] == "always" || row["group"] == "main")
        .map(|row| {
            let unit = match row["unit"].as_str() {
                "" => "{}".to_owned(),
                unit => format!("{{}} {unit}"),
            };
            let style = match (row["bold"].as_str(), row["indent"].as_str()) {
                ("yes", "0") => "bold".to_owned(),
                (_, "0") => "plain".to_owned(),
                (_, indent) => format!("indent {indent}"),
            };
            let percent = match row["percent"].as_str() {
                "shown" => "yes",
                "none" => "no",
                other => other,
            };
            let sign = match row["measured_in"].as_str() {
                "percent" => "%",
                _ => "",
            };
            let left_out = match row["omitted_by"].as_str() {
                "" => String::new(),
                by => format!("{by} <{}{sign}", row["omitted_below"]),
            };
            format!(
                "{} | {} | {style} | {percent} | <{}{sign} | {left_out} | {}",
                row["nutrient"],
                row["line"].replace("{}", &unit),
                row["insignificant_below"],
                row["simplified"]
            )
        })
        .collect();
    let typed: Vec<String> = rows(include_str!("../data/label_rows.csv"))
        .iter()
        .map(|row| {
            format!(
                "{} | {} | {} | {} | {} | {} | {}",
                row["nutrient"],
                row["line"],
                row["style"],
                row["percent"],
                row["insignificant"],
                row["may_be_left_out"],
                row["in_simplified"]
            )
        })
        .collect();
    assert_eq!(table, typed);
}

/// 21 CFR 101.9(d) and the agency's illustrations, all from memory.
#[test]
fn layout() {
    let table = rows(rules::LABEL_LAYOUT).into_iter().map(|row| {
        assert_eq!(row["status"], "from memory", "{row:?}");
        let value = format!("{} {}", row["value"], row["unit"]);
        format!(
            "{} | {} | {} | {} | {}",
            row["form"],
            row["part"],
            row["property"],
            value.trim(),
            row["standing"]
        )
    });
    let typed = rows(include_str!("../data/label_layout.csv"));
    let typed = typed.iter().map(|row| {
        format!(
            "{} | {} | {} | {} | {}",
            row["form"], row["part"], row["property"], row["value"], row["standing"]
        )
    });
    assert_same(table.collect(), typed.collect());
}

/// 21 CFR 101.9(d)(9), from memory.
#[test]
fn footnotes() {
    let table = rows(rules::LABEL_STATEMENTS)
        .into_iter()
        .filter(|row| row["key"] == "footnote")
        .map(|row| format!("{} | {} | {}", row["audience"], row["words"], row["status"]));
    let typed = [("4 and over", "2,000"), ("1 to 3", "1,000")].map(|(audience, calories)| {
        format!(
            "{audience} | *The % Daily Value (DV) tells you how much a nutrient in a serving of \
             food contributes to a daily diet. {calories} calories a day is used for general \
             nutrition advice. | from memory"
        )
    });
    assert_same(table.collect(), typed.into());
}

fn sign(bound: &str) -> &'static str {
    match bound {
        "below" => "<",
        "at most" => "<=",
        _ => ">=",
    }
}

/// "/RACC", "/serving", "/100 g", "/50 g if RACC <=30 g".
fn per(row: &Row) -> String {
    let small = match row["only_if_reference_at_most"].as_str() {
        "" => String::new(),
        up_to => format!(" if RACC <={up_to} g"),
    };
    let basis = row["basis"].as_str();
    match basis.trim_start_matches("reduction ") {
        "per reference amount" => format!("/RACC{small}"),
        "per serving" => format!("/serving{small}"),
        _ => format!("/{} g{small}", row["grams"]),
    }
}

fn criterion(row: &Row) -> String {
    let name = &row["name"];
    let limit = format!("{}{} {}", sign(&row["bound"]), row["limit"], row["unit"]);
    match row["basis"].as_str() {
        "ingredient" => format!("asks about an ingredient with {name}"),
        "reference food" => format!("reference food not {}", row["reference_not"]),
        "share of energy" => format!("{name} {limit} of energy at {}", row["kcal_per_gram"]),
        basis if basis.starts_with("reduction") => format!("{name} {limit} less{}", per(row)),
        _ => format!("{name} {limit}{}", per(row)),
    }
}

/// The kinds of food in a cell of the tables.
fn kinds(cell: &str) -> Vec<&str> {
    cell.split(';')
        .map(|kind| if kind == "main dish" { "main" } else { kind })
        .collect()
}

#[test]
fn claims() {
    let table = rows(rules::CLAIMS);
    let table = table.iter().flat_map(|row| {
        kinds(&row["foods"]).into_iter().map(move |kind| {
            format!(
                "{} | {kind} | {} | {}",
                row["claim"],
                criterion(row),
                row["status"]
            )
        })
    });
    let typed = rows(include_str!("../data/label_claims.csv"));
    let typed = typed.iter().flat_map(|row| {
        row["foods"].split(' ').flat_map(move |kind| {
            row["criteria"].split("; ").map(move |criterion| {
                format!(
                    "{} | {kind} | {criterion} | {}",
                    row["claim"], row["status"]
                )
            })
        })
    });
    assert_same(table.collect(), typed.collect());
}

/// 21 CFR 101.13(h) and (j), 101.61 and 101.62; from memory but for the salt in
/// "sodium free".
#[test]
fn disclosures() {
    let names: BTreeMap<String, String> = rows(rules::CLAIMS)
        .into_iter()
        .map(|row| (row["nutrient"].clone(), row["name"].clone()))
        .collect();
    let table = rows(rules::CLAIM_DISCLOSURE);
    let table = table.iter().flat_map(|row| {
        let status = match row["words"].contains("the salt") {
            true => "verified",
            false => "from memory",
        };
        assert_eq!(row["status"], status, "{row:?}");
        let claims = match row["claims"].as_str() {
            "" => "any",
            claims => claims,
        };
        let name = names.get(&row["nutrient"]).map_or("", String::as_str);
        let limit = format!("{}{} {}", sign(&row["bound"]), row["limit"], row["unit"]);
        let unless = match row["basis"].as_str() {
            "always" => "always".to_owned(),
            "ingredient" => format!("no ingredient with {name}"),
            _ => format!("{name} {limit}{}", per(row)),
        };
        kinds(&row["foods"]).into_iter().map(move |kind| {
            format!(
                "{claims} | {kind} | {unless} | {} | {}",
                row["words"], row["paragraph"]
            )
        })
    });
    let typed = rows(include_str!("../data/label_disclosures.csv"));
    let typed = typed.iter().flat_map(|row| {
        row["foods"].split(' ').flat_map(move |kind| {
            row["unless"].split("; ").map(move |unless| {
                format!(
                    "{} | {kind} | {unless} | {} | {}",
                    row["claims"], row["words"], row["publication"]
                )
            })
        })
    });
    assert_same(table.collect(), typed.collect());
}

/// The label prints what the dataset has: the same nutrient in the same unit,
/// by SR28's own `NUTR_DEF.txt`; added sugars, which SR28 lacks, by the name
/// that the table of foods gives them.
#[test]
fn units_are_the_datasets() {
    let tables = LabelTables::new(&LabelTexts::committed()).unwrap();
    for row in tables.nutrients() {
        let defined = fixtures::foods()
            .nutrient(row.nutrient)
            .unwrap_or_else(|| panic!("the table of foods has no {}", row.name));
        let unit = match row.unit.as_str() {
            "" => "kcal",
            "mcg" | "mcg DFE" => "µg",
            unit => unit,
        };
        assert_eq!(defined.unit, unit, "{}", row.name);
        let first = row.in_text.split(' ').next().unwrap_or_default();
        let known_as = match row.in_text.as_str() {
            "calories" => "energy",
            "total fat" => "total lipid",
            "saturated fat" => "fatty acids, total saturated",
            "trans fat" => "fatty acids, total trans",
            "polyunsaturated fat" => "fatty acids, total polyunsaturated",
            "monounsaturated fat" => "fatty acids, total monounsaturated",
            "total carbohydrate" => "carbohydrate, by difference",
            "dietary fiber" => "fiber, total dietary",
            "total sugars" => "sugars, total",
            "added sugars" => "sugars, added",
            "vitamin A" => "vitamin a, rae",
            "vitamin B6" => "vitamin b-6",
            "vitamin B12" => "vitamin b-12",
            "folate" => "folate, dfe",
            "vitamin D" => "vitamin d (d2 + d3)",
            name if first == "vitamin" => &name.to_lowercase(),
            name => name,
        };
        assert!(
            defined.name.to_lowercase().starts_with(known_as),
            "{} is the dataset's {}",
            row.name,
            defined.name
        );
    }
}
