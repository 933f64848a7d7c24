//! What a changed line does to the verdicts on the demo's lunches, and the same
//! as two studies of the whole week say it.

use engine::findings::Verdict::{self, Met, Missed};
use engine::foods::NutrientId;
use engine::mend::standings;
use engine::recipe::RecipeId;
use engine::swaps::Reach;
use engine::week::WeekId;
use gramwright_tests::demo;
use gramwright_tests::fixtures::reference;
use std::collections::BTreeMap;

/// A requirement by group and limit, and its verdicts before and after.
type Told = (&'static str, &'static str, Verdict, Verdict);

const CHILDREN_SODIUM: (&str, &str) = ("K-5", "weekly average of sodium 1110 mg");
const TEENS_SODIUM: (&str, &str) = ("9-12", "weekly average of sodium 1280 mg");

const fn children(after: Verdict) -> Told {
    (CHILDREN_SODIUM.0, CHILDREN_SODIUM.1, Missed, after)
}

const fn teens(after: Verdict) -> Told {
    (TEENS_SODIUM.0, TEENS_SODIUM.1, Met, after)
}

/// Recipe, index of the line, and what it would read.
///
/// The average lunch has 1,144 mg of sodium for K-5 and 1,272 mg for 9-12. A
/// tablespoon of salt has 18 g × 387.58 mg/g = 6,976 mg. Of 40 fish tacos, 125
/// are planned for 1,200 lunches of K-5 and 100 for 900 of 9-12: the tablespoon
/// is 18.2 mg of the one average and 19.4 mg of the other.
const CASES: [(&str, usize, &str, &[Told]); 5] = [
    ("fish-tacos", 10, "2 tbsp salt", &[]),
    ("fish-tacos", 10, "1 tbsp salt", &[children(Missed)]),
    // 23/12 tablespoons less: 1,109 mg.
    ("fish-tacos", 10, "1/4 tsp salt", &[children(Met)]),
    // 1,291 mg for 9-12.
    (
        "fish-tacos",
        10,
        "3 tbsp salt",
        &[children(Missed), teens(Missed)],
    ),
    // 20 lb of sugar, 9,072 g × 3.87 kcal/g, are 41 kcal of the average of K-5
    // (140 of 100 servings for 1,200 lunches), which has 624 kcal.
    (
        "beef-and-bean-chili",
        10,
        "20 lb sugar",
        &[
            ("K-5", "weekly average of calories 650 kcal", Met, Missed),
            children(Missed),
        ],
    ),
];

#[test]
fn a_changed_line_tells_which_limits_turn_and_which_stay_missed() {
    let book = demo::book();
    let reference = reference().clone().with_own_foods(&book.own_foods).unwrap();
    let week = WeekId("lunch-2026-11-30".to_owned());
    let verdicts = |book: &engine::book::Book| -> BTreeMap<_, _> {
        let study = reference
            .study_week(book, book.week(&week).unwrap())
            .unwrap();
        let standings = standings(&study).into_iter();
        standings
            .map(|one| (one.requirement, one.verdict))
            .collect()
    };
    let now = verdicts(&book);
    for (recipe, at, text, expected) in CASES {
        let id = RecipeId(recipe.to_owned());
        let mut changed = book.recipe(&id).unwrap().clone();
        text.clone_into(&mut changed.lines[at].text);
        let reach = Reach::new(&reference, &book, &id, |one| {
            reference.study_recipe(&book, one)
        });
        let weeks = reach.with(&changed, &[NutrientId::SODIUM, NutrientId::ENERGY]);
        let [lunches] = &weeks[..] else {
            panic!("{recipe} is in one week of the demo");
        };
        assert_eq!(lunches.week, week);
        let told: Vec<(String, String, _, _)> = lunches
            .verdicts
            .iter()
            .map(|one| {
                let asked = &one.requirement;
                let limit = asked.limit.normalize();
                let what = format!("{} {limit} {}", asked.words, asked.unit);
                (asked.service.group.0.clone(), what, one.before, one.after)
            })
            .collect();
        let expected: Vec<(String, String, _, _)> = expected
            .iter()
            .map(|(group, what, before, after)| {
                let (before, after) = (Some(*before), Some(*after));
                ((*group).to_owned(), (*what).to_owned(), before, after)
            })
            .collect();
        assert_eq!(told, expected, "{text}");

        let mut with = book.clone();
        let place = with.recipes.iter_mut().find(|one| one.id == id);
        *place.unwrap() = changed;
        let then = verdicts(&with);
        assert_eq!(then.len(), now.len(), "{text}");
        let turned = then
            .iter()
            .filter(|(what, verdict)| now[*what] != **verdict);
        let told = lunches
            .verdicts
            .iter()
            .filter(|one| one.before != one.after);
        assert_eq!(turned.count(), told.count(), "{text}");
        for one in &lunches.verdicts {
            assert_eq!(one.before, now.get(&one.requirement).copied(), "{text}");
            assert_eq!(one.after, then.get(&one.requirement).copied(), "{text}");
        }
    }
}
