//! The demo district's kitchens: what the schools serve is what is planned,
//! and what is bought is what a person reckons from the lines.

use engine::book::Book;
use engine::exact::rounding::guarded;
use engine::findings::day_shares;
use engine::foods::{FoodId, NutrientId};
use engine::production::{Kitchen, planned_servings, shared_day};
use engine::recipe::RecipeId;
use engine::reference::RecipeStudy;
use engine::units::Servings;
use engine::week::ServedRecipe;
use engine::yields::AmountBasis;
use gramwright_tests::demo;
use gramwright_tests::fixtures::{foods, reference};
use gramwright_tests::sql::{CountedIn, Fraction, PeerLine};
use rust_decimal::Decimal;
use std::collections::BTreeMap;

fn studies(book: &Book) -> Vec<RecipeStudy> {
    book.recipes
        .iter()
        .map(|recipe| reference().study_recipe(book, recipe))
        .collect()
}

#[test]
fn the_schools_serve_what_is_planned() {
    let book = demo::book();
    assert_eq!(book.production.sites.len(), 6);
    for week in &book.weeks {
        for day in &week.days {
            let shared = shared_day(&book.production, week, day.date);
            assert!(shared.len() > 5, "{}: {}", week.title, day.date);
            for choice in shared {
                let place = format!("{}, {}: {}", week.title, day.date, choice.recipe.0);
                assert_eq!(choice.problem, None, "{place}");
                let sum: Servings = choice.sites.iter().map(|site| site.servings).sum();
                assert_eq!(sum, choice.planned, "{place}");
            }
        }
    }
}

/// Every school's day together is the district's day.
#[test]
fn the_schools_cook_what_the_district_plans() {
    let book = demo::book();
    let studies = studies(&book);
    let kitchen = Kitchen::new(
        reference(),
        &book.production,
        book.recipes.iter().zip(&studies),
    );
    for week in &book.weeks {
        let date = week.days[0].date;
        let mut batches: BTreeMap<RecipeId, Decimal> = BTreeMap::new();
        for site in &book.production.sites {
            let day = kitchen.day(week, date, Some(&site.id));
            assert!(day.not_cooked.is_empty());
            for item in day.cook {
                assert!(
                    !matches!(item.pans, Some(Err(_))),
                    "{}: {:?}",
                    item.recipe.0,
                    item.pans
                );
                *batches.entry(item.recipe).or_default() += item.batches;
            }
        }
        let together = kitchen.day(week, date, None).cook;
        assert_eq!(together.len(), batches.len());
        for item in together {
            assert_eq!(
                guarded(batches[&item.recipe]),
                guarded(item.batches),
                "{}",
                item.recipe.0
            );
        }
    }
}

/// What a line read by hand weighs, in grams.
fn weight_by_hand(line: &PeerLine) -> Option<Decimal> {
    let (
        Fraction {
            numerator,
            denominator,
        },
        counted_in,
    ) = line.amount.as_ref()?;
    let (each, of) = match counted_in {
        // NIST Handbook 44, Appendix C.
        CountedIn::Mass("lb") => ("453.59237".parse().expect("digits"), Decimal::ONE),
        CountedIn::Mass(_) => ("28.349523125".parse().expect("digits"), Decimal::ONE),
        CountedIn::Measure(number) => {
            let measures = foods().measures(FoodId::Sr28(line.food?));
            let found = measures
                .iter()
                .find(|measure| u32::from(measure.number) == *number);
            let measure = found.expect("a measure of the release");
            (measure.grams.grams(), measure.amount)
        }
    };
    Some(each * Decimal::from(*numerator) / (Decimal::from(*denominator) * of))
}

/// The weights that are used, food by food, from the second reading of the
/// lines. Lines whose stated weight is as purchased are left out on both sides.
#[test]
fn what_is_bought_is_what_the_lines_ask_for() {
    let book = demo::book();
    let studies = studies(&book);
    let by_hand = demo::lines_read_by_hand();
    let kitchen = Kitchen::new(
        reference(),
        &book.production,
        book.recipes.iter().zip(&studies),
    );
    for week in &book.weeks {
        let menu = planned_servings(week, None);
        let list = kitchen.purchase_list(&menu);
        assert!(
            list.unlisted.is_empty(),
            "{}: {:?}",
            week.title,
            list.unlisted
        );
        let mut expected: BTreeMap<FoodId, Decimal> = BTreeMap::new();
        let mut as_purchased: Vec<FoodId> = Vec::new();
        for (recipe, study) in book.recipes.iter().zip(&studies) {
            let Some(servings) = menu.get(&recipe.id) else {
                continue;
            };
            for (line, hand) in study.lines.iter().zip(&by_hand[&recipe.id.0]) {
                let Some((food, grams)) = hand.food.map(FoodId::Sr28).zip(weight_by_hand(hand))
                else {
                    continue;
                };
                if line
                    .edible
                    .as_ref()
                    .is_some_and(|one| one.basis == AmountBasis::AsPurchased)
                {
                    as_purchased.push(food);
                }
                *expected.entry(food).or_default() +=
                    grams * servings.servings() / recipe.servings.servings();
            }
        }
        assert_eq!(list.rows.len(), expected.len(), "{}", week.title);
        for row in list
            .rows
            .iter()
            .filter(|row| !as_purchased.contains(&row.food))
        {
            let found = row.edible.grams();
            let place = format!("{}: {}", week.title, row.food);
            assert!(
                (found - expected[&row.food]).abs() < Decimal::new(1, 6),
                "{place}: {found}"
            );
            assert!(row.purchased >= row.edible, "{place}");
            let order = row
                .order
                .as_ref()
                .unwrap_or_else(|| panic!("{place}: no pack"));
            assert!(
                order.left.grams() >= Decimal::ZERO && order.left < order.each,
                "{place}"
            );
        }
        let unpriced = list
            .rows
            .iter()
            .filter(|row| row.order.as_ref().is_none_or(|order| order.cost.is_none()));
        let unpriced = u32::try_from(unpriced.count()).expect("a few");
        assert_eq!(
            list.total.missing, unpriced,
            "what has no price is counted as missing"
        );
        assert!(unpriced > 0, "the demo shows what an unknown price does");
    }
}

/// Days weighted by their meals give the week's average.
#[test]
fn days_make_up_the_average() {
    let book = demo::book();
    let studies = studies(&book);
    let mut served: Vec<ServedRecipe<'_>> = book
        .recipes
        .iter()
        .zip(&studies)
        .map(|(recipe, study)| (&recipe.id, study.analysis.as_ref().expect("figures")))
        .collect();
    served.sort_by_key(|(id, _)| *id);
    for week in &book.weeks {
        let study = reference().study_week(&book, week).expect("a sound week");
        for service in &study.services {
            for nutrient in [NutrientId::ENERGY, NutrientId::SODIUM] {
                let days = day_shares(week, &service.average.service, &served, nutrient);
                assert_eq!(days.len(), week.days.len());
                let sum: Decimal = days
                    .iter()
                    .map(|day| day.total.known * day.meals.servings())
                    .sum();
                let meals: Decimal = days.iter().map(|day| day.meals.servings()).sum();
                let average = service.average.amount(nutrient).expect("asked for").known;
                assert_eq!(guarded(sum / meals), guarded(average), "{}", week.title);
                for day in &days {
                    let parts: Decimal = day.parts.iter().map(|part| part.amount.known).sum();
                    assert_eq!(guarded(parts), guarded(day.total.known));
                }
            }
        }
    }
}
