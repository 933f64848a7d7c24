//! Every limit of every claim and disclosure, probed just below, at and just
//! above. The limits come from the second typing (`tests/data/label_claims.csv`
//! and `label_disclosures.csv`, which cite their publications), never from the
//! engine's own tables.
//!
//! A probe keeps all other criteria far inside their limits: the other
//! nutrients are none, and the weights are chosen so that the amount looked at
//! is the largest of all bases.

use engine::analysis::{NutrientTotal, RecipeAnalysis};
use engine::claims::{
    ClaimFinding, ClaimOptions, ClaimOutcome, ClaimReport, ClaimTables, ClaimTexts, FoodKind,
    ReferenceFood, StatedIngredient, check_claims,
};
use engine::exact::PartialSum;
use engine::foods::NutrientId;
use engine::units::{Grams, Servings};
use gramwright_tests::typed::rows;
use rust_decimal::Decimal;

fn dec(text: &str) -> Decimal {
    text.parse().unwrap_or_else(|_| panic!("{text} in a table"))
}

const NUTRIENTS: [(&str, NutrientId); 5] = [
    ("saturated fat", NutrientId::SATURATED_FAT),
    ("trans fat", NutrientId::TRANS_FAT),
    ("fat", NutrientId::FAT),
    ("cholesterol", NutrientId::CHOLESTEROL),
    ("sodium", NutrientId::SODIUM),
];

/// A limit as the second typing writes it: "fat <=3 g/50 g if RACC <=30 g".
struct Typed {
    nutrient: NutrientId,
    sign: String,
    limit: Decimal,
    /// What follows the unit: "/RACC", "less/100 g", "of energy at 9".
    rest: String,
}

/// Nothing for a criterion without a figure.
fn read(text: &str) -> Option<Typed> {
    let (name, nutrient) = NUTRIENTS
        .into_iter()
        .find(|(name, _)| text.starts_with(&format!("{name} ")))?;
    let (amount, rest) = match text[name.len() + 1..].split_once('/') {
        Some((amount, basis)) => (amount, format!("/{basis}")),
        None => (&text[name.len() + 1..], String::new()),
    };
    let digits = amount.find(|first: char| first.is_ascii_digit())?;
    let (limit, unit) = amount[digits..].split_once(' ')?;
    let after_unit = unit.split_once(' ').map_or("", |(_, after)| after);
    Some(Typed {
        nutrient,
        sign: amount[..digits].to_owned(),
        limit: dec(limit),
        rest: format!("{after_unit}{rest}"),
    })
}

impl Typed {
    fn holds(&self, figure: Decimal) -> bool {
        match self.sign.as_str() {
            "<" => figure < self.limit,
            "<=" => figure <= self.limit,
            _ => figure >= self.limit,
        }
    }

    /// Just below the limit, at it, just above it.
    fn probes(&self) -> [Decimal; 3] {
        let step = dec("0.001");
        [self.limit - step, self.limit, self.limit + step]
    }
}

/// One serving in which one nutrient is so much, the others none.
struct Probe {
    /// Reference amount and weight of a serving, grams.
    weights: (Decimal, Decimal),
    nutrient: NutrientId,
    amount: Decimal,
    energy: Decimal,
}

const PLENTY: Decimal = Decimal::from_parts(1_000_000, 0, 0, false, 0);

/// The serving whose figure on the limit's basis is `figure`.
fn probe(typed: &Typed, figure: Decimal) -> Probe {
    let (reference, serving, grams) = match typed.rest.trim_start_matches("less") {
        "/RACC" => ("1000", "10", "1000"),
        "/serving" => ("100", "1000", "1000"),
        "/100 g" => ("40", "40", "100"),
        "/50 g if RACC <=30 g" => ("10", "10", "50"),
        _ => ("100", "1000", "1000"),
    };
    let in_serving = dec(serving) / dec(grams);
    let mut probe = Probe {
        weights: (dec(reference), dec(serving)),
        nutrient: typed.nutrient,
        amount: figure * in_serving,
        energy: PLENTY,
    };
    if typed.rest.starts_with("less") {
        probe.amount = REFERENCE_AMOUNT * (Decimal::ONE_HUNDRED - figure) / Decimal::ONE_HUNDRED;
    }
    if let Some(kcal) = typed.rest.strip_prefix("of energy at ") {
        probe.amount = Decimal::ONE;
        probe.energy = dec(kcal) * Decimal::ONE_HUNDRED / figure;
    }
    probe
}

/// What a serving of the reference food has of each nutrient: never low.
const REFERENCE_AMOUNT: Decimal = Decimal::from_parts(400_000, 0, 0, false, 0);

fn food(weight: Decimal, amount: impl Fn(NutrientId) -> Decimal) -> RecipeAnalysis {
    let ids = NUTRIENTS.map(|(_, id)| id);
    RecipeAnalysis {
        servings: Servings::new(Decimal::ONE),
        mass: Grams::new(weight),
        mass_measured: false,
        unknown_lines: Vec::new(),
        totals: ids
            .into_iter()
            .chain([NutrientId::ENERGY])
            .map(|nutrient| {
                let mut total = PartialSum::default();
                total.add(Grams::new(weight), Some(amount(nutrient)));
                NutrientTotal { nutrient, total }
            })
            .collect(),
    }
}

fn check(tables: &ClaimTables, claim: &str, kind: FoodKind, probe: &Probe) -> ClaimFinding {
    check_stating(tables, claim, kind, probe, Some(false))
}

fn check_stating(
    tables: &ClaimTables,
    claim: &str,
    kind: FoodKind,
    probe: &Probe,
    used: Option<bool>,
) -> ClaimFinding {
    report(tables, kind, probe, used)
        .claims
        .into_iter()
        .find(|finding| finding.claim == claim)
        .unwrap_or_else(|| panic!("no criteria of {claim} for {kind:?}"))
}

/// `used` says of every nutrient whether an ingredient that is understood to
/// contain it is used.
fn report(tables: &ClaimTables, kind: FoodKind, probe: &Probe, used: Option<bool>) -> ClaimReport {
    let (reference_amount, serving) = probe.weights;
    let stated = |used| NUTRIENTS.map(|(_, nutrient)| StatedIngredient { nutrient, used });
    let options = ClaimOptions {
        kind,
        reference_amount: Some(Grams::new(reference_amount)),
        ingredients: used.map(stated).into_iter().flatten().collect(),
        ..ClaimOptions::default()
    };
    let analysis = food(serving, |nutrient| match nutrient {
        NutrientId::ENERGY => probe.energy,
        nutrient if nutrient == probe.nutrient => probe.amount,
        _ => Decimal::ZERO,
    });
    let other = food(serving, |_| REFERENCE_AMOUNT);
    let reference = ReferenceFood {
        analysis: &other,
        serving_weight: None,
    };
    check_claims(&analysis, tables, &options, Some(&reference)).unwrap()
}

fn kind(word: &str) -> FoodKind {
    match word {
        "main" => FoodKind::MainDish,
        "meal" => FoodKind::Meal,
        _ => FoodKind::Individual,
    }
}

fn tables() -> ClaimTables {
    ClaimTables::new(&ClaimTexts::committed()).unwrap()
}

#[test]
fn every_criterion_at_its_limit() {
    let tables = tables();
    let mut probed = 0;
    for row in rows(include_str!("../data/label_claims.csv")) {
        for word in row["foods"].split(' ') {
            for typed in row["criteria"].split("; ").filter_map(read) {
                for figure in typed.probes() {
                    let finding = check(&tables, &row["claim"], kind(word), &probe(&typed, figure));
                    let expected = match typed.holds(figure) {
                        true => ClaimOutcome::Proven,
                        false => ClaimOutcome::NotMet,
                    };
                    assert_eq!(
                        finding.outcome, expected,
                        "{figure} on {} of {row:?} for {word}: {finding:#?}",
                        typed.rest
                    );
                    probed += 1;
                }
            }
        }
    }
    assert!(
        probed > 200,
        "only {probed} probes: the second typing was not read"
    );
}

/// Above the small reference amount the criterion per 50 g does not count;
/// two tablespoons or less count as small whatever they weigh.
#[test]
fn the_edge_of_small() {
    let tables = tables();
    for row in rows(include_str!("../data/label_claims.csv")) {
        for typed in row["criteria"].split("; ").filter_map(read) {
            if !typed.rest.contains("if RACC") {
                continue;
            }
            // At the limit per reference amount, so above it per 50 g.
            for (grams, expected) in [
                ("30", ClaimOutcome::NotMet),
                ("30.001", ClaimOutcome::Proven),
            ] {
                let mut probe = probe(&typed, typed.limit);
                probe.weights = (dec(grams), dec(grams));
                probe.amount = typed.limit;
                let finding = check(&tables, &row["claim"], FoodKind::Individual, &probe);
                assert_eq!(finding.outcome, expected, "{grams} g of {row:?}");
            }
        }
    }
}

/// "Reduced" and "light in" are for foods whose reference food is not low
/// itself: with a reference food that is, they fail.
#[test]
fn a_low_reference_food_allows_no_comparison() {
    let tables = tables();
    let mut seen = 0;
    for row in rows(include_str!("../data/label_claims.csv")) {
        if !row["criteria"].contains("reference food not low") {
            continue;
        }
        for word in row["foods"].split(' ') {
            let hundred = Decimal::ONE_HUNDRED;
            let nothing = food(hundred, |_| Decimal::ZERO);
            let options = ClaimOptions {
                kind: kind(word),
                reference_amount: Some(Grams::new(hundred)),
                ..ClaimOptions::default()
            };
            let low = food(hundred, |nutrient| match nutrient {
                NutrientId::ENERGY => PLENTY,
                _ => Decimal::ONE,
            });
            let reference = ReferenceFood {
                analysis: &low,
                serving_weight: None,
            };
            let report = check_claims(&nothing, &tables, &options, Some(&reference)).unwrap();
            let finding = report
                .claims
                .iter()
                .find(|finding| finding.claim == row["claim"])
                .unwrap();
            assert_eq!(finding.outcome, ClaimOutcome::NotMet, "{row:?} for {word}");
            seen += 1;
        }
    }
    assert!(seen >= 7, "only {seen}: the second typing was not read");
}

/// One serving of 100 g without any of the nutrients.
fn nothing() -> Probe {
    Probe {
        weights: (Decimal::ONE_HUNDRED, Decimal::ONE_HUNDRED),
        nutrient: NutrientId::SODIUM,
        amount: Decimal::ZERO,
        energy: PLENTY,
    }
}

#[test]
fn free_claims_ask_about_ingredients() {
    let tables = tables();
    let mut asked = 0;
    for row in rows(include_str!("../data/label_claims.csv")) {
        if !row["criteria"].contains("asks about an ingredient") {
            continue;
        }
        for word in row["foods"].split(' ') {
            for (used, proven) in [(None, false), (Some(false), true), (Some(true), true)] {
                let finding = check_stating(&tables, &row["claim"], kind(word), &nothing(), used);
                assert_eq!(
                    finding.outcome == ClaimOutcome::Proven,
                    proven,
                    "{used:?} for {word}: {row:?}"
                );
            }
            asked += 1;
        }
    }
    assert_eq!(asked, 12, "four claims for three kinds of food");
}

#[test]
fn every_disclosure_without_a_limit() {
    let tables = tables();
    for row in rows(include_str!("../data/label_disclosures.csv")) {
        let needed_if = match row["unless"].as_str() {
            "always" => [true, true],
            unless if unless.starts_with("no ingredient") => [false, true],
            _ => continue,
        };
        for word in row["foods"].split(' ') {
            for claim in row["claims"].split(';') {
                for (used, needed) in [false, true].into_iter().zip(needed_if) {
                    let probe = nothing();
                    if claim == "any" {
                        let report = report(&tables, kind(word), &probe, Some(used));
                        assert!(report.cautions.iter().any(|one| one.words == row["words"]));
                        continue;
                    }
                    let finding = check_stating(&tables, claim, kind(word), &probe, Some(used));
                    assert_eq!(finding.outcome, ClaimOutcome::Proven, "{claim} for {word}");
                    let named = finding.needed.iter().any(|one| one.words == row["words"]);
                    assert_eq!(named, needed, "{claim} for {word}: {row:?}");
                }
            }
        }
    }
}

/// As [`the_edge_of_small`], for what must stand beside a claim.
#[test]
fn the_edge_of_small_for_disclosures() {
    let tables = tables();
    for row in rows(include_str!("../data/label_disclosures.csv")) {
        for typed in row["unless"].split("; ").filter_map(read) {
            if !typed.rest.contains("if RACC") {
                continue;
            }
            let claim = match (row["claims"].as_str(), typed.nutrient) {
                ("any", NutrientId::SODIUM) => "low cholesterol",
                ("any", _) => "low sodium",
                (claims, _) => claims.split(';').next().unwrap_or_default(),
            };
            for (grams, needed) in [("30", true), ("30.001", false)] {
                let mut probe = probe(&typed, typed.limit);
                probe.weights = (dec(grams), dec(grams));
                probe.amount = typed.limit;
                let finding = check(&tables, claim, FoodKind::Individual, &probe);
                let named = finding.needed.iter().any(|one| one.words == row["words"]);
                assert_eq!(named, needed, "{grams} g of {row:?}");
            }
        }
    }
}

#[test]
fn every_disclosure_at_its_limit() {
    let tables = tables();
    for row in rows(include_str!("../data/label_disclosures.csv")) {
        for word in row["foods"].split(' ') {
            for typed in row["unless"].split("; ").filter_map(read) {
                // A claim that the nutrient's amount does not touch.
                let any = match typed.nutrient {
                    NutrientId::SODIUM => "low cholesterol",
                    _ => "low sodium",
                };
                let claims = match row["claims"].as_str() {
                    "any" => any,
                    claims => claims,
                };
                for claim in claims.split(';') {
                    for figure in typed.probes() {
                        let finding = check(&tables, claim, kind(word), &probe(&typed, figure));
                        let needed = finding
                            .needed
                            .iter()
                            .filter(|needed| needed.words == row["words"] && needed.certain)
                            .count();
                        assert_eq!(finding.outcome, ClaimOutcome::Proven, "{claim}: {row:?}");
                        assert_eq!(
                            needed,
                            usize::from(!typed.holds(figure)),
                            "{figure} on {} of {row:?}: {finding:#?}",
                            typed.rest
                        );
                    }
                }
            }
        }
    }
}
