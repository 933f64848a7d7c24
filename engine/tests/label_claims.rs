//! Claims and what must stand beside them, at every limit's edges. The cases
//! cite their sources row by row.
//!
//! In the tables `307=5` is a complete sum of 5, `307=5+` one of which a part
//! has no value, `307=?` one of which nothing is known; other nutrients are
//! known to be none. Both foods weigh the same.

use engine::analysis::{NutrientTotal, RecipeAnalysis};
use engine::claims::{
    ClaimError, ClaimFinding, ClaimOptions, ClaimOutcome, ClaimTables, ClaimTexts, Missing,
    ReferenceFood, StatedIngredient, WhichFood, check_claims,
};
use engine::exact::PartialSum;
use engine::foods::NutrientId;
use engine::units::{Grams, Servings};
use rust_decimal::Decimal;
use std::collections::BTreeSet;

fn dec(text: &str) -> Decimal {
    text.parse().unwrap_or_else(|_| panic!("{text} in a table"))
}

fn grams(text: &str) -> Grams {
    Grams::new(dec(text))
}

fn tables() -> ClaimTables {
    ClaimTables::new(&ClaimTexts::committed()).unwrap()
}

fn pairs(text: &str) -> impl Iterator<Item = (NutrientId, &str)> {
    text.split_whitespace().map(|pair| {
        let (nutrient, value) = pair.split_once('=').expect("nutrient=value");
        (NutrientId(nutrient.parse().unwrap()), value)
    })
}

/// One serving of that weight.
fn food(weight: &str, values: &str) -> RecipeAnalysis {
    let whole = grams(weight);
    let total = |nutrient: u16| {
        let mut sum = PartialSum::default();
        let stated = pairs(values).find(|(id, _)| id.0 == nutrient);
        match stated.map_or("0", |(_, value)| value) {
            "?" => sum.add(whole, None),
            value => match value.strip_suffix('+') {
                Some(part) => {
                    sum.add(whole / dec("2"), Some(dec(part)));
                    sum.add(whole / dec("2"), None);
                }
                None => sum.add(whole, Some(dec(value))),
            },
        }
        NutrientTotal {
            nutrient: NutrientId(nutrient),
            total: sum,
        }
    };
    RecipeAnalysis {
        servings: Servings::new(Decimal::ONE),
        mass: whole,
        mass_measured: false,
        unknown_lines: Vec::new(),
        totals: [204, 208, 307, 601, 605, 606].map(total).to_vec(),
    }
}

/// The row's claim; its columns from the second to the seventh say of what.
fn finding(tables: &ClaimTables, record: &csv::StringRecord) -> ClaimFinding {
    let spoons = record[2].strip_suffix(" spoons");
    let options = ClaimOptions {
        kind: record[1].parse().unwrap(),
        reference_amount: Some(spoons.unwrap_or(&record[2]))
            .filter(|text| !text.is_empty())
            .map(grams),
        two_tablespoons_or_less: spoons.is_some(),
        serving_weight: None,
        ingredients: pairs(&record[6])
            .map(|(nutrient, used)| StatedIngredient {
                nutrient,
                used: used == "yes",
            })
            .collect(),
    };
    let reference = Some(&record[5])
        .filter(|values| !values.is_empty())
        .map(|values| food(&record[3], values));
    let reference = reference.as_ref().map(|analysis| ReferenceFood {
        analysis,
        serving_weight: None,
    });
    check_claims(
        &food(&record[3], &record[4]),
        tables,
        &options,
        reference.as_ref(),
    )
    .unwrap()
    .claims
    .into_iter()
    .find(|finding| finding.claim == record[0])
    .unwrap_or_else(|| panic!("{record:?}: no such claim for such a food"))
}

fn records(text: &str) -> Vec<csv::StringRecord> {
    csv::Reader::from_reader(text.as_bytes())
        .records()
        .map(Result::unwrap)
        .collect()
}

fn word(outcome: &ClaimOutcome) -> &'static str {
    match outcome {
        ClaimOutcome::Proven => "proven",
        ClaimOutcome::NotMet => "not met",
        ClaimOutcome::Silent { .. } => "silent",
    }
}

#[test]
fn claims_at_their_limits() {
    let tables = tables();
    let mut seen = BTreeSet::new();
    for record in records(include_str!("label_claim_cases.csv")) {
        let finding = finding(&tables, &record);
        assert_eq!(
            word(&finding.outcome),
            &record[7],
            "{record:?}\n{finding:#?}"
        );
        seen.insert((record[0].to_owned(), record[7].to_owned()));
    }
    for claim in tables.claims() {
        for outcome in ["proven", "not met"] {
            assert!(
                seen.contains(&(claim.name.clone(), outcome.to_owned())),
                "no case where {} is {outcome}",
                claim.name
            );
        }
    }
}

#[test]
fn disclosures_at_their_limits() {
    let tables = tables();
    for record in records(include_str!("label_disclosure_cases.csv")) {
        let finding = finding(&tables, &record);
        assert_eq!(finding.outcome, ClaimOutcome::Proven, "{record:?}");
        let needed: Vec<bool> = finding
            .needed
            .iter()
            .filter(|needed| needed.words.contains(&record[7]))
            .map(|needed| needed.certain)
            .collect();
        let expected: &[bool] = match &record[8] {
            "yes" => &[true],
            "uncertain" => &[false],
            _ => &[],
        };
        assert_eq!(needed, expected, "{record:?}");
    }
}

#[test]
fn silence_names_what_is_missing() {
    let tables = tables();
    let mut unweighed = food("100", "307=1");
    for row in &mut unweighed.totals {
        row.total.add_unweighed();
    }
    let options = ClaimOptions {
        reference_amount: Some(grams("50")),
        ..ClaimOptions::default()
    };
    let report = check_claims(&unweighed, &tables, &options, None).unwrap();
    assert_eq!(report.proven().count(), 0);
    let missing = |claim: &str| match &report
        .claims
        .iter()
        .find(|finding| finding.claim == claim)
        .unwrap()
        .outcome
    {
        ClaimOutcome::Silent { missing } => missing.clone(),
        other => panic!("{claim}: {other:?}"),
    };
    assert_eq!(
        missing("low sodium"),
        [Missing::ServingWeight {
            food: WhichFood::This
        }]
    );
    assert_eq!(missing("reduced sodium"), [Missing::ReferenceFood]);
    let texts: Vec<String> = missing("sodium free")
        .iter()
        .map(ToString::to_string)
        .collect();
    assert_eq!(
        texts,
        [
            "the weight of a serving is not known",
            "sodium is not known for every ingredient",
            "whether salt or another ingredient understood to contain sodium is used is not stated"
        ]
    );
}

/// With the weight as served, 100 g of ingredients that lose 20 g in the oven
/// have more sodium in a reference amount of 50 g than raw.
#[test]
fn the_weight_as_served_counts() {
    let tables = tables();
    let outcome = |serving_weight: Option<Grams>| {
        let options = ClaimOptions {
            reference_amount: Some(grams("50")),
            serving_weight,
            ..ClaimOptions::default()
        };
        check_claims(&food("100", "307=240"), &tables, &options, None)
            .unwrap()
            .claims
            .into_iter()
            .find(|finding| finding.claim == "low sodium")
            .map(|finding| finding.outcome)
    };
    assert_eq!(outcome(None), Some(ClaimOutcome::Proven));
    assert_eq!(outcome(Some(grams("80"))), Some(ClaimOutcome::NotMet));
}

#[test]
fn a_figure_shows_on_which_side_it_lies() {
    let tables = tables();
    let record = csv::StringRecord::from(vec![
        "low sodium",
        "individual",
        "100",
        "100",
        "307=140.004",
        "",
        "",
    ]);
    let finding = finding(&tables, &record);
    assert_eq!(finding.criteria[0].figure, Some(dec("140.004")));
    assert_eq!(finding.criteria[0].digits.0, 3);
}

#[test]
fn impossible_weights_are_refused() {
    let tables = tables();
    let analysis = food("100", "307=1");
    let no_amount = ClaimOptions {
        reference_amount: Some(Grams::ZERO),
        ..ClaimOptions::default()
    };
    let error = check_claims(&analysis, &tables, &no_amount, None).unwrap_err();
    assert_eq!(error, ClaimError::NoReferenceAmount(Grams::ZERO));
    assert!(error.to_string().contains("101.12(b)"));
    let reference = ReferenceFood {
        analysis: &analysis,
        serving_weight: Some(grams("-1")),
    };
    let error = check_claims(
        &analysis,
        &tables,
        &ClaimOptions::default(),
        Some(&reference),
    )
    .unwrap_err();
    assert_eq!(error, ClaimError::NoServingWeight(grams("-1")));
}

/// The page reads these names.
#[test]
fn the_form_for_the_page() {
    let report = check_claims(
        &food("100", "307=140 605=?"),
        &tables(),
        &ClaimOptions {
            reference_amount: Some(grams("100")),
            ..ClaimOptions::default()
        },
        None,
    )
    .unwrap();
    let json = serde_json::to_value(&report).unwrap();
    let claims = json["claims"].as_array().unwrap();
    let claim = |name: &str| claims.iter().find(|claim| claim["claim"] == name).unwrap();
    assert_eq!(claim("low sodium")["outcome"]["kind"], "proven");
    assert_eq!(claim("low sodium")["criteria"][0]["figure"], "140");
    assert_eq!(
        claim("low sodium")["criteria"][0]["limit"]["bound"],
        "at most"
    );
    let silent = &claim("saturated fat free")["outcome"];
    assert_eq!(silent["kind"], "silent");
    assert_eq!(silent["missing"][0]["name"], "trans fat");
    assert!(
        json["cautions"][0]["words"]
            .as_str()
            .unwrap()
            .contains("laboratory")
    );
}
