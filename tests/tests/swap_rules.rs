//! What no proposal may do, whatever it is ranked by: each is applied and the
//! changed recipe studied anew from its text.

use engine::allergens::Presence;
use engine::components::Component;
use engine::exact::rounding::guarded;
use engine::foods::{FoodId, NutrientId};
use engine::recipe::Recipe;
use engine::reference::RecipeStudy;
use engine::swaps::{
    Aim, AmountBy, Change, CreditDemand, EnergyBand, Goals, Proposal, Proposals, Reach,
    SwapOptions, SwapProblem, apply,
};
use engine::units::Kilocalories;
use gramwright_tests::demo;
use gramwright_tests::fixtures::reference;
use gramwright_tests::kitchen_swaps::{KnownSwap, dish, for_last_line, line, study};
use rust_decimal::Decimal;

fn dec(text: &str) -> Decimal {
    text.parse().expect("a decimal in a test table")
}

fn proposed(recipe: &Recipe, aims: &[Aim], options: &SwapOptions) -> Proposals {
    for_last_line(reference(), recipe, &Goals::equal(aims), options).expect("a line that is known")
}

fn all(proposals: &Proposals) -> impl Iterator<Item = &Proposal> {
    proposals.foods.iter().chain(&proposals.moves)
}

fn foods(proposals: &Proposals) -> Vec<FoodId> {
    let food = |proposal: &Proposal| match proposal.change {
        Change::Food { food, .. } => food,
        _ => panic!("a move among the foods"),
    };
    proposals.foods.iter().map(food).collect()
}

fn one(text: &str, food: u32) -> Recipe {
    dish(&[line(text, Some(FoodId::Sr28(food)))])
}

const LESS_SODIUM: Aim = Aim::Less(NutrientId::SODIUM);
const LESS_SATURATED: Aim = Aim::Less(NutrientId::SATURATED_FAT);

/// Every third known swap, with all foods and moves that are proposed for it.
/// What is said of a proposal must come out of a study of the changed text.
#[test]
fn each_proposal_keeps_what_it_must() {
    let options = SwapOptions::default();
    let mut judged = 0;
    for row in KnownSwap::all().iter().step_by(3) {
        let recipe = row.recipe();
        let at = recipe.lines.len() - 1;
        let before = study(reference(), &recipe);
        let proposals = for_last_line(reference(), &recipe, &row.goals(), &options)
            .unwrap_or_else(|problem| panic!("{}: {problem}", row.name));
        for proposal in all(&proposals) {
            let after = study(reference(), &apply(&recipe, at, proposal));
            let what = format!("{}: {:?}", row.name, proposal.lines);
            no_allergen_added(&before, &after, &what);
            no_credit_lost(&before, &after, &what);
            differences_are_true(&before, &after, proposal, &what);
            let kcal = change(&before, &after, NutrientId::ENERGY).expect(&what);
            assert!(options.energy.holds(kcal), "{what}: {kcal} kcal");
            judged += 1;
        }
    }
    assert!(judged > 150, "{judged} proposals");
}

fn no_allergen_added(before: &RecipeStudy, after: &RecipeStudy, what: &str) {
    for (was, is) in before.allergens.iter().zip(&after.allergens) {
        let name = was.finding.allergen;
        assert!(
            is.finding.presence <= was.finding.presence,
            "{what}: {name}"
        );
    }
}

fn no_credit_lost(before: &RecipeStudy, after: &RecipeStudy, what: &str) {
    let credited = |study: &RecipeStudy, component| {
        let credits = study.credits.as_ref().expect(what);
        let mut rows = credits.per_serving.iter();
        rows.find(|row| row.component == component)
            .map_or(Decimal::ZERO, |row| row.credited)
    };
    for component in Component::ALL {
        let (was, is) = (credited(before, component), credited(after, component));
        assert!(is >= was, "{what}: {component} {was} to {is}");
    }
}

/// The change of a serving by its totals, where both are complete.
fn change(before: &RecipeStudy, after: &RecipeStudy, nutrient: NutrientId) -> Option<Decimal> {
    let complete = |study: &RecipeStudy| {
        let analysis = study.analysis.as_ref().ok()?;
        analysis.per_serving(nutrient)?.complete()
    };
    Some(complete(after)? - complete(before)?)
}

fn differences_are_true(
    before: &RecipeStudy,
    after: &RecipeStudy,
    proposal: &Proposal,
    what: &str,
) {
    for row in &proposal.effect.nutrients {
        if let Some(change) = change(before, after, row.nutrient) {
            let told = row.change.exact().map(guarded);
            assert_eq!(told, Some(guarded(change)), "{what}: {:?}", row.nutrient);
        }
    }
}

/// Butter holds milk; of margarine the words say only that it may.
#[test]
fn what_may_be_there_does_not_become_sure() {
    let proposals = proposed(
        &one("1 lb margarine", 4610),
        &[LESS_SODIUM],
        &SwapOptions::default(),
    );
    assert!(
        proposals.left_out.allergens > 0,
        "unsalted butter is left out and counted"
    );
    let recipe = one("1 lb margarine", 4610);
    for proposal in all(&proposals) {
        let after = study(reference(), &apply(&recipe, 0, proposal));
        let milk = &after.allergens[0].finding;
        assert!(milk.presence < Presence::Contains, "{:?}", proposal.lines);
    }
}

/// Only whole egg credits (7 CFR 210.10(c)(2)(iv), Food Buying Guide, from
/// memory): whites are proposed only where the credit is not asked for.
#[test]
fn credit_is_kept_when_asked() {
    let recipe = one("50 eggs", 1123);
    let whites = [1124, 1172].map(FoodId::Sr28);
    let keep = SwapOptions::default();
    let kept = foods(&proposed(&recipe, &[LESS_SATURATED], &keep));
    assert!(kept.iter().all(|food| !whites.contains(food)), "{kept:?}");
    let not_asked = SwapOptions {
        credit: CreditDemand::NotAsked,
        ..SwapOptions::default()
    };
    let free = foods(&proposed(&recipe, &[LESS_SATURATED], &not_asked));
    assert!(free.iter().any(|food| whites.contains(food)), "{free:?}");
}

#[test]
fn the_band_of_calories_is_kept() {
    let recipe = one("9 lb ground beef", 23572);
    for (fall, rise) in [("150", "50"), ("60", "0"), ("5", "5"), ("0", "0")] {
        let options = SwapOptions {
            energy: EnergyBand {
                fall: Kilocalories::new(dec(fall)),
                rise: Kilocalories::new(dec(rise)),
            },
            ..SwapOptions::default()
        };
        let proposals = proposed(&recipe, &[LESS_SATURATED], &options);
        for proposal in all(&proposals) {
            let kcal = proposal.effect.change(NutrientId::ENERGY).unwrap().exact();
            let kcal = kcal.expect("calories are known");
            assert!(
                dec(fall) + kcal >= Decimal::ZERO && kcal <= dec(rise),
                "{kcal} kcal"
            );
        }
        if fall == "0" {
            assert!(proposals.foods.is_empty());
            assert!(proposals.left_out.energy > 0);
        }
    }
}

#[test]
fn the_order_is_the_same_each_time() {
    for row in KnownSwap::all().iter().step_by(17) {
        let again = || {
            for_last_line(
                reference(),
                &row.recipe(),
                &row.goals(),
                &SwapOptions::default(),
            )
        };
        assert_eq!(again().unwrap(), again().unwrap(), "{}", row.name);
    }
}

/// The dataset's own measures: a cup of butter is 227 g, of canola oil 218 g;
/// 453.59 g of butter are therefore 435.6 g of oil by volume.
#[test]
fn the_amount_is_found_as_asked() {
    let recipe = one("1 lb butter", 1001);
    for (by, text) in [
        (AmountBy::Volume, "0.97 lb canola oil"),
        (AmountBy::Weight, "1 lb canola oil"),
    ] {
        let options = SwapOptions {
            amount: Some(by),
            ..SwapOptions::default()
        };
        let proposals = proposed(&recipe, &[LESS_SATURATED], &options);
        let texts: Vec<&str> = proposals
            .foods
            .iter()
            .map(|one| one.lines[0].text.as_str())
            .collect();
        assert!(texts.contains(&text), "{by:?}: {texts:?}");
    }
}

/// Duyff, Mount and Jones 2011 (from memory, `kitchen/treatments.csv`): draining
/// and rinsing leave 59 percent of the sodium.
#[test]
fn rinsing_takes_what_the_table_says() {
    let recipe = one("12 lb canned kidney beans", 16034);
    let proposals = proposed(&recipe, &[LESS_SODIUM], &SwapOptions::default());
    let rinse = |proposal: &&Proposal| matches!(&proposal.change, Change::Move { id, .. } if id == "rinse and drain");
    let rinsed = proposals.moves.iter().find(rinse).expect("rinsing");
    let sodium = &rinsed
        .effect
        .nutrients
        .iter()
        .find(|row| row.nutrient == NutrientId::SODIUM);
    let sodium = sodium.expect("sodium is shown");
    assert_eq!(
        guarded(sodium.after.known),
        guarded(sodium.before.known * dec("0.59"))
    );
    let again = proposed(
        &apply(&recipe, 0, rinsed),
        &[LESS_SODIUM],
        &SwapOptions::default(),
    );
    assert!(
        !again.moves.iter().any(|one| rinse(&one)),
        "what is rinsed is not rinsed again"
    );
}

#[test]
fn salt_can_be_left_out() {
    let proposals = proposed(
        &one("1/4 cup salt", 2047),
        &[LESS_SODIUM],
        &SwapOptions::default(),
    );
    let season = |proposal: &&Proposal| matches!(&proposal.change, Change::Move { id, .. } if id == "season without salt");
    let blend = proposals
        .moves
        .iter()
        .find(season)
        .expect("a blend without salt");
    let texts: Vec<&str> = blend.lines.iter().map(|line| line.text.as_str()).collect();
    assert_eq!(
        texts,
        [
            "1/8 cup garlic powder",
            "1 tbsp onion powder",
            "1 tbsp black pepper"
        ]
    );
}

#[test]
fn what_cannot_be_swapped_says_why() {
    let none = Goals::default();
    let goals = Goals::equal(&[LESS_SODIUM]);
    for (text, food, goals, problem) in [
        ("1 cup soy sauce", Some(16123), &none, SwapProblem::NoGoal),
        ("salt to taste", Some(2047), &goals, SwapProblem::NoWeight),
        ("For the sauce:", None, &goals, SwapProblem::NoIngredient),
        ("1 cup zzyzx", None, &goals, SwapProblem::NoFood),
    ] {
        let recipe = dish(&[line(text, food.map(FoodId::Sr28))]);
        let found = for_last_line(reference(), &recipe, goals, &SwapOptions::default());
        assert_eq!(found.err(), Some(problem), "{text}");
        assert!(!problem.to_string().is_empty());
    }
}

/// In the demo book: a swap in one recipe moves the averages of the weeks that
/// serve it by what a second averaging says.
#[test]
fn a_swap_moves_the_average_meal() {
    let book = demo::book();
    let reference = reference().clone().with_own_foods(&book.own_foods).unwrap();
    let week = &book.weeks[0];
    let served = |id| {
        let choices = week
            .days
            .iter()
            .flat_map(|day| &day.meals)
            .flat_map(|meal| meal.choices());
        choices.into_iter().any(|choice| choice.recipe == id)
    };
    let changed = book.recipes.iter().find(|recipe| served(recipe.id.clone()));
    let mut changed = changed.expect("a recipe that is served").clone();
    changed
        .lines
        .push(line("1000 g salt", Some(FoodId::Sr28(2047))));
    let shown = [NutrientId::SODIUM, NutrientId::ENERGY];
    let reach = Reach::new(&reference, &book, &changed.id, |one| {
        reference.study_recipe(&book, one)
    });
    let weeks = reach.with(&changed, &shown);
    let moved = weeks.into_iter().find(|moved| moved.week == week.id);
    let moved = moved.expect("a week that serves it").services.unwrap();
    assert!(!moved.is_empty());
    for service in moved {
        let salt = service.nutrients[0].change.exact().expect("salt is known");
        let known = service.nutrients[0].after.known - service.nutrients[0].before.known;
        assert!(salt > Decimal::ZERO);
        assert_eq!(guarded(salt), guarded(known), "{:?}", service.service);
        assert_eq!(
            service.nutrients[1].change.exact(),
            Some(Decimal::ZERO),
            "salt has no calories"
        );
    }
}
