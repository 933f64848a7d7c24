//! A year at once against week by week: the same printed digits and the same
//! verdicts. The exact decimal path is the standard here; it is checked against
//! an independent computation in `sql.rs`.

use engine::exact::round_half_up;
use engine::findings::Verdict;
use engine::foods::FoodId;
use engine::recipe::{RecipeId, WeighedLine};
use engine::reference::{RecipeStudy, Reference, ServiceStudy};
use engine::units::{Grams, Servings};
use engine::week::Week;
use engine::year::{ServiceBrief, Year};
use gramwright_tests::district::{District, Size, study};
use gramwright_tests::fixtures;
use rust_decimal::Decimal;
use std::sync::OnceLock;

const SMALL: Size = Size {
    recipes: 40,
    lines: 8,
    weeks: 2,
    imperfect: true,
};

/// The tables without the standard errors, which this asks nothing of.
fn reference() -> &'static Reference {
    static REFERENCE: OnceLock<Reference> = OnceLock::new();
    REFERENCE.get_or_init(|| Reference {
        evidence: None,
        ..fixtures::reference().clone()
    })
}

fn services(
    reference: &Reference,
    studies: &[(RecipeId, RecipeStudy)],
    weeks: &[Week],
) -> Vec<ServiceStudy> {
    let study = |week| {
        reference
            .study_week_with(week, studies)
            .expect("a whole week")
    };
    weeks.iter().flat_map(|week| study(week).services).collect()
}

fn compare(reference: &Reference, exact: &ServiceStudy, brief: &ServiceBrief<'_>) {
    let place = format!("{:?} of {}", brief.service, brief.week.title);
    assert_eq!(exact.average.service, *brief.service);
    let columns = reference.foods.nutrients().iter().enumerate();
    for (column, nutrient) in columns {
        let average = exact.average.amount(nutrient.id).expect("every nutrient");
        let printed = round_half_up(average.known, nutrient.decimals);
        let found = Decimal::new(brief.averages[column], nutrient.decimals.0);
        assert_eq!(found, printed, "{} at {place}", nutrient.name);
        let missing = !average.is_complete();
        assert_eq!(
            brief.missing[column], missing,
            "{} at {place}",
            nutrient.name
        );
    }
    assert_eq!(brief.findings.len(), exact.findings.len(), "{place}");
    for (found, sure) in brief.findings.iter().zip(&exact.findings) {
        let finding = &sure.finding;
        let words = &finding.rule.words;
        assert_eq!(found.rule, &finding.rule, "{place}");
        assert_eq!(found.verdict, finding.verdict, "{words} at {place}");
        assert_eq!(found.complete, finding.complete, "{words} at {place}");
        assert_eq!(found.digits, finding.digits, "{words} at {place}");
        let figure = found
            .figure
            .map(|figure| Decimal::new(figure, found.digits.0));
        let printed = finding
            .figure
            .map(|figure| round_half_up(figure, finding.digits));
        assert_eq!(figure, printed, "{words} at {place}");
    }
}

fn compare_all(reference: &Reference, year: &mut Year<'_>, exact: &[ServiceStudy]) {
    assert_eq!(year.len(), exact.len());
    for (exact, brief) in exact.iter().zip(year.services()) {
        compare(reference, exact, &brief);
    }
}

#[test]
fn prints_and_finds_what_the_weeks_do() {
    let reference = reference();
    for seed in 0..2 {
        let District { studies, weeks } = District::draw(reference, SMALL, seed);
        let exact = services(reference, &studies, &weeks);
        let mut year = Year::new(reference, &studies, &weeks).expect("a whole year");
        compare_all(reference, &mut year, &exact);
        let findings = exact.iter().flat_map(|service| &service.findings);
        let verdicts: Vec<Verdict> = findings.map(|found| found.finding.verdict).collect();
        for verdict in [Verdict::Missed, Verdict::Unknown] {
            assert!(
                verdicts.contains(&verdict),
                "the case is too easy: no {verdict:?}"
            );
        }
    }
}

#[test]
fn follows_edits() {
    let reference = reference();
    let District { mut studies, weeks } = District::draw(reference, SMALL, 7);
    let mut year = Year::new(reference, &studies, &weeks).expect("a whole year");
    for (recipe, grams) in [(3, "0.01"), (3, "900000"), (21, "0"), (39, "123.45")] {
        let weight = Grams::new(grams.parse().expect("grams"));
        let parts = &studies[recipe].1.parts;
        let part = parts
            .iter()
            .position(|part| part.weight.is_some())
            .expect("a weighed part");
        let mut parts = parts.clone();
        parts[part].weight = Some(weight);
        let servings = studies[recipe]
            .1
            .analysis
            .as_ref()
            .expect("analysed")
            .servings;
        studies[recipe].1 = study(reference, parts, servings);
        let touched = year.restudy(recipe, &studies[recipe].1).to_vec();
        let exact = services(reference, &studies, &weeks);
        for (at, service) in exact.iter().enumerate() {
            let choices = weeks
                .iter()
                .filter(|week| service.average.days.contains(&week.days[0].date))
                .flat_map(|week| week.meals_of(&service.average.service))
                .flat_map(|(_, meal)| meal.choices());
            let name = &studies[recipe].0;
            let serves = choices
                .filter(|choice| choice.planned > Servings::ZERO)
                .any(|choice| choice.recipe == *name);
            assert_eq!(touched.contains(&at), serves, "service {at}");
        }
        compare_all(reference, &mut year, &exact);
        // The same by the weight alone.
        let touched_again = year.reweigh(recipe, part, weight);
        assert_eq!(touched_again, touched);
        compare_all(reference, &mut year, &exact);
    }
}

/// Averages that are exact halves of a printed digit, and limits that are just
/// reached, where floats alone could fall to either side. One food, one line,
/// as many servings as meals: the average is weight × value ÷ 100.
#[test]
fn halves_and_limits_reached_are_exact() {
    let reference = reference();
    // Salt, table: 38758 mg sodium per 100 g (SR28, 02047).
    let salt = FoodId::Sr28(2047);
    let District { weeks, .. } = District::draw(
        reference,
        Size {
            recipes: 1,
            weeks: 40,
            ..SMALL
        },
        1,
    );
    let per_gram = Decimal::new(38_758, 2);
    let mut halves = 0;
    for target in [
        "1110",
        "1110.5",
        "1280",
        "640.5",
        "1",
        "0.5",
        "2.5",
        "700.49999999999",
    ] {
        let target: Decimal = target.parse().expect("milligrams");
        let line = WeighedLine::new(0, Some(salt), Some(Grams::new(target / per_gram)));
        let studies = [(
            RecipeId("recipe-0000000".into()),
            study(reference, vec![line], Servings::new(Decimal::ONE)),
        )];
        let mut weeks = weeks.clone();
        let meals = weeks
            .iter_mut()
            .flat_map(|week| &mut week.days)
            .flat_map(|day| &mut day.meals);
        for meal in meals {
            meal.offers[0].choices.truncate(1);
            meal.offers[0].choices[0].planned = meal.planned_meals;
        }
        let exact = services(reference, &studies, &weeks);
        let mut year = Year::new(reference, &studies, &weeks).expect("a whole year");
        compare_all(reference, &mut year, &exact);
        halves += usize::from(target.scale() == 1);
    }
    assert_eq!(halves, 4);
}

/// What cannot be averaged is refused in the same words.
#[test]
fn refuses_what_the_weeks_refuse() {
    let reference = reference();
    let District { studies, weeks } = District::draw(reference, SMALL, 11);
    let mut negative = weeks.clone();
    negative[1].days[2].meals[0].offers[0].choices[0].planned =
        Servings::new(Decimal::NEGATIVE_ONE);
    let mut no_one = weeks.clone();
    no_one[0].days[0].meals[0].planned_meals = Servings::ZERO;
    for (weeks, studies) in [
        (&negative, &studies[..]),
        (&no_one, &studies[..]),
        (&weeks, &studies[..10]),
    ] {
        let exact = weeks
            .iter()
            .find_map(|week| reference.study_week_with(week, studies).err());
        let found = Year::new(reference, studies, weeks).err();
        assert!(exact.is_some());
        assert_eq!(found.map(|e| e.to_string()), exact.map(|e| e.to_string()));
    }
}
