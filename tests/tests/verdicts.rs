//! Met, missed or unknown, against `tests/data/verdicts.csv`: a finding on a
//! figure that is not all known never says met unless nothing missing could
//! change it.

use engine::exact::PartialSum;
use engine::findings::{Verdict, check};
use engine::foods::NutrientId;
use engine::rules::Specifications;
use engine::tables;
use engine::units::{Grams, Servings};
use engine::week::{GradeGroup, MealAverage, MealKind, NutrientAverage, Service};
use rust_decimal::Decimal;
use serde::Deserialize;

#[derive(Deserialize)]
struct Case {
    bound: String,
    limit: Decimal,
    known: Decimal,
    missing: u32,
    unweighed: u32,
    verdict: Verdict,
    why: String,
}

fn average(nutrients: Vec<(NutrientId, PartialSum)>) -> MealAverage {
    MealAverage {
        service: Service {
            kind: MealKind::Lunch,
            group: GradeGroup("K-5".into()),
        },
        days: vec!["2026-11-30".parse().unwrap()],
        planned_meals: Servings::new(100.into()),
        nutrients: nutrients
            .into_iter()
            .map(|(nutrient, amount)| NutrientAverage { nutrient, amount })
            .collect(),
        fluid_milk: Vec::new(),
    }
}

fn sum(known: Decimal, missing: u32, unweighed: u32) -> PartialSum {
    PartialSum {
        known,
        mass: Grams::new(500.into()),
        known_mass: Grams::new(400.into()),
        unweighed,
        missing,
    }
}

const HEADER: &str = "meal,group,nutrient,basis,kcal_per_gram,bound,limit,unit,from,until,paragraph,source,status,words";

#[test]
fn amounts() {
    let text = include_str!("../data/verdicts.csv");
    for case in tables::read::<Case>("verdicts", text).unwrap() {
        let case = case.row;
        let rule = format!(
            "{HEADER}\nlunch,K-5,307,per meal,,{},{},mg,2024-07-01,,p,s,verified,w\n",
            case.bound, case.limit
        );
        let rules = Specifications::from_csv(&rule).unwrap();
        let sodium = sum(case.known, case.missing, case.unweighed);
        let findings = check(&average(vec![(NutrientId::SODIUM, sodium)]), &rules);
        assert_eq!(findings.len(), 1);
        assert_eq!(findings[0].verdict, case.verdict, "{}", case.why);
    }
}

#[test]
fn a_share_of_energy_needs_all_of_the_energy() {
    let rule = format!(
        "{HEADER}\nlunch,K-5,606,share of energy,9,below,10,%,2024-07-01,,p,s,verified,w\n"
    );
    let rules = Specifications::from_csv(&rule).unwrap();
    let verdict = |fat: PartialSum, energy: PartialSum| {
        let fat = (NutrientId::SATURATED_FAT, fat);
        let energy = (NutrientId::ENERGY, energy);
        check(&average(vec![fat, energy]), &rules)[0].verdict
    };
    let whole = |known: i64| sum(known.into(), 0, 0);
    let part = |known: i64| sum(known.into(), 1, 0);
    assert_eq!(verdict(whole(6), whole(600)), Verdict::Met);
    assert_eq!(verdict(whole(7), whole(600)), Verdict::Missed);
    assert_eq!(verdict(part(6), whole(600)), Verdict::Unknown);
    assert_eq!(verdict(part(7), whole(600)), Verdict::Missed);
    // More energy would lower the share, so nothing can be said.
    assert_eq!(verdict(whole(7), part(600)), Verdict::Unknown);
    assert_eq!(verdict(whole(6), part(600)), Verdict::Unknown);
    assert_eq!(verdict(whole(6), whole(0)), Verdict::Unknown);
}

#[test]
fn a_nutrient_that_was_not_averaged_is_unknown() {
    let rules = Specifications::from_csv(nutrient_data::rules::DIETARY_SPECIFICATIONS).unwrap();
    for finding in check(&average(Vec::new()), &rules) {
        assert_eq!(finding.verdict, Verdict::Unknown, "{}", finding.rule.words);
    }
}

#[test]
fn the_date_chooses_the_rules() {
    let rules = Specifications::from_csv(nutrient_data::rules::DIETARY_SPECIFICATIONS).unwrap();
    let limit = |date: &str| {
        let mut average = average(vec![(NutrientId::SODIUM, sum(1_000.into(), 0, 0))]);
        average.days = vec![date.parse().unwrap()];
        check(&average, &rules)
            .into_iter()
            .find(|finding| finding.rule.nutrient == NutrientId::SODIUM)
            .map(|finding| (finding.rule.limit, finding.verdict))
    };
    // 7 CFR 210.10(f)(4): 1,110 mg until 30 June 2027, 935 mg from 1 July 2027.
    assert_eq!(limit("2027-06-30"), Some((1_110.into(), Verdict::Met)));
    assert_eq!(limit("2027-07-01"), Some((935.into(), Verdict::Missed)));
    assert_eq!(
        limit("2020-01-06"),
        None,
        "no rule of the table was in force"
    );
}
