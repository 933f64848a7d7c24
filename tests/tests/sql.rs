//! The engine's figures against the same figures reckoned by SQLite from the
//! release's text files (see [`gramwright_tests::sql`]), to the printed digit.

use engine::analysis::RecipeAnalysis;
use engine::book::Book;
use engine::exact::{Digits, PartialSum, round_half_up};
use engine::findings::{Finding, check};
use engine::foods::NutrientId;
use engine::recipe::{Recipe, RecipeId};
use engine::rules::{Basis, Specifications, Switches};
use engine::units::Servings;
use engine::week::{
    Choice, Day, GradeGroup, Meal, MealKind, Offer, Service, Week, WeekId, average,
};
use gramwright_tests::fixtures::{foods, reference};
use gramwright_tests::random::{Draw, RandomDay, RandomRecipe};
use gramwright_tests::sql::{Owner, Peer, PeerFigure, PeerLine};
use gramwright_tests::{demo, release};
use rust_decimal::Decimal;
use std::sync::{Mutex, OnceLock};

const RANDOM_RECIPES: usize = 200;
const RANDOM_WEEKS: usize = 20;
const SEED: u64 = 28;
/// The demo's fluid milk.
const FLUID_MILK: [&str; 2] = ["milk-fat-free", "milk-1-percent"];
/// Added to a service's number for the same service without fluid milk.
const WITHOUT_MILK: Owner = 10_000;
/// Grams are compared to a millionth.
const MASS_DIGITS: Digits = Digits(6);

/// Recipes and weeks of a book, for both ways.
struct Both {
    book: Book,
    /// The lines of each recipe, for the reckoning.
    lines: Vec<Vec<PeerLine>>,
    /// Number of the first recipe in the reckoning; the others follow.
    first_recipe: Owner,
    /// Number of the first service of the first week.
    first_week: Owner,
    /// Recipes that are fluid milk and nothing else, by their number.
    fluid_milk: Vec<Owner>,
}

impl Both {
    fn demo() -> Self {
        let book = demo::book();
        let mut by_hand = demo::lines_read_by_hand();
        let lines = book.recipes.iter().map(|recipe| {
            let lines = by_hand.remove(&recipe.id.0);
            lines.unwrap_or_else(|| panic!("demo_lines.csv lacks {}", recipe.id.0))
        });
        let lines = lines.collect();
        assert!(by_hand.is_empty(), "no such recipe: {:?}", by_hand.keys());
        let numbered = book.recipes.iter().zip(0..);
        let fluid_milk = numbered
            .filter(|(recipe, _)| FLUID_MILK.contains(&recipe.id.0.as_str()))
            .map(|(_, owner)| owner)
            .collect();
        Self {
            book,
            lines,
            first_recipe: 0,
            first_week: 1_000,
            fluid_milk,
        }
    }

    fn random(peer: &Peer) -> Self {
        let mut draw = Draw::new(peer, SEED);
        let recipes: Vec<RandomRecipe> = (0..RANDOM_RECIPES).map(|_| draw.recipe()).collect();
        let weeks: Vec<Vec<RandomDay>> = (0..RANDOM_WEEKS)
            .map(|_| draw.week(RANDOM_RECIPES))
            .collect();
        Self {
            book: Book {
                recipes: recipes.iter().zip(0..).map(random_recipe).collect(),
                weeks: weeks.iter().zip(0..).map(random_week).collect(),
                ..Book::empty("random")
            },
            lines: recipes
                .into_iter()
                .map(|recipe| recipe.lines.into_iter().map(|line| line.peer).collect())
                .collect(),
            first_recipe: 2_000,
            first_week: 3_000,
            fluid_milk: Vec::new(),
        }
    }

    /// Enters all recipes and all services of all weeks.
    fn enter(&self, peer: &mut Peer) {
        let recipes = self.book.recipes.iter().zip(&self.lines);
        for ((recipe, lines), owner) in recipes.zip(self.first_recipe..) {
            peer.enter_recipe(owner, whole(recipe.servings), lines);
        }
        for ((week, service), owner) in self.services().into_iter().zip(self.first_week..) {
            let meals: Vec<&Meal> = week.meals_of(&service).map(|(_, meal)| meal).collect();
            let planned = meals.iter().map(|meal| whole(meal.planned_meals)).sum();
            let choices: Vec<(Owner, u32)> = meals
                .iter()
                .flat_map(|meal| meal.choices())
                .map(|choice| (self.owner(&choice.recipe), whole(choice.planned)))
                .collect();
            peer.enter_week(owner, planned, &choices);
            let not_milk = |(recipe, _): &(Owner, u32)| !self.fluid_milk.contains(recipe);
            let without_milk: Vec<(Owner, u32)> = choices.into_iter().filter(not_milk).collect();
            peer.enter_week(WITHOUT_MILK + owner, planned, &without_milk);
        }
    }

    fn owner(&self, recipe: &RecipeId) -> Owner {
        let place = self.book.recipes.iter().position(|one| one.id == *recipe);
        self.first_recipe + place.expect("a recipe of the book") as Owner
    }

    fn services(&self) -> Vec<(&Week, Service)> {
        let of_week = |week: &Week| week.services();
        self.book
            .weeks
            .iter()
            .flat_map(|week| {
                of_week(week)
                    .into_iter()
                    .map(move |service| (week, service))
            })
            .collect()
    }
}

/// Made from the book's written form, in which all but these may be left out.
fn random_recipe((recipe, place): (&RandomRecipe, usize)) -> Recipe {
    let json = serde_json::json!({
        "id": format!("{place:03}"),
        "title": format!("recipe {place}"),
        "servings": recipe.servings.to_string(),
        "lines": [],
    });
    let empty: Recipe = serde_json::from_value(json).expect("a recipe without lines");
    Recipe {
        lines: recipe.lines.iter().map(|line| line.typed.clone()).collect(),
        ..empty
    }
}

fn random_week((days, place): (&Vec<RandomDay>, usize)) -> Week {
    let monday = "2026-11-30".parse::<engine::week::Date>().unwrap();
    let day = |(day, after): (&RandomDay, i64)| Day {
        date: monday.plus_days(after),
        meals: vec![Meal {
            kind: MealKind::Lunch,
            group: GradeGroup("K-5".to_owned()),
            planned_meals: Servings::new(day.meals.into()),
            offers: vec![Offer {
                title: "all".to_owned(),
                take: 1,
                choices: day.choices.iter().map(choice).collect(),
            }],
        }],
    };
    Week {
        id: WeekId(place.to_string()),
        title: format!("week {place}"),
        days: days.iter().zip(0..).map(day).collect(),
    }
}

fn choice((recipe, planned): &(usize, u32)) -> Choice {
    Choice {
        recipe: RecipeId(format!("{recipe:03}")),
        planned: Servings::new((*planned).into()),
    }
}

fn whole(number: Servings) -> u32 {
    let digits = number.servings().normalize().to_string();
    digits.parse().expect("whole servings")
}

/// The reckoning of the demo and of the random book, made once.
struct Reckoned {
    peer: Mutex<Peer>,
    demo: Both,
    random: Both,
}

fn reckoned() -> &'static Reckoned {
    static RECKONED: OnceLock<Reckoned> = OnceLock::new();
    RECKONED.get_or_init(|| {
        let kept: Vec<u16> = foods().nutrients().iter().map(|n| n.id.0).collect();
        let mut peer = Peer::open(release::folder(), &kept);
        let (demo, random) = (Both::demo(), Both::random(&peer));
        demo.enter(&mut peer);
        random.enter(&mut peer);
        peer.reckon();
        Reckoned {
            peer: Mutex::new(peer),
            demo,
            random,
        }
    })
}

/// What the engine prints, in the reckoning's form.
fn printed(sum: &PartialSum, digits: Digits) -> PeerFigure {
    PeerFigure {
        amount: round_half_up(sum.known, digits),
        known_mass: round_half_up(sum.known_mass.grams(), MASS_DIGITS),
        unweighed: sum.unweighed,
        missing: sum.missing,
    }
}

/// Compares every nutrient of the release, and the mass.
fn compare(
    peer: &Peer,
    owner: Owner,
    name: &str,
    sum_of: impl Fn(NutrientId) -> PartialSum,
    problems: &mut Vec<String>,
) {
    let mass = round_half_up(sum_of(NutrientId::ENERGY).mass.grams(), MASS_DIGITS);
    if mass != peer.mass(owner) {
        problems.push(format!("{name}: {mass} g, SQL {} g", peer.mass(owner)));
    }
    let figures = peer.figures(owner);
    for (number, decimals) in peer.nutrients() {
        let sum = sum_of(NutrientId(number));
        let (ours, peers) = (printed(&sum, Digits(decimals)), figures[&number]);
        if ours != peers {
            problems.push(format!("{name}, {number}: {ours:?}, SQL {peers:?}"));
        }
    }
}

fn compare_recipes(both: &Both, peer: &Peer, problems: &mut Vec<String>) -> Vec<RecipeAnalysis> {
    let mut analyses = Vec::new();
    for (recipe, owner) in both.book.recipes.iter().zip(both.first_recipe..) {
        let study = reference().study_recipe(&both.book, recipe);
        let analysis = study.analysis.expect("servings above zero");
        let per_serving = |nutrient| analysis.per_serving(nutrient).expect("a kept nutrient");
        let known = problems.len();
        compare(peer, owner, &recipe.title, per_serving, problems);
        if problems.len() > known {
            problems.extend(recipe.lines.iter().map(|line| format!("    {}", line.text)));
        }
        analyses.push(analysis);
    }
    analyses
}

fn compare_weeks(
    both: &Both,
    peer: &Peer,
    analyses: &[RecipeAnalysis],
    problems: &mut Vec<String>,
) {
    let recipes = both.book.recipes.iter().map(|recipe| &recipe.id);
    let mut served: Vec<_> = recipes.zip(analyses).collect();
    served.sort_by_key(|(id, _)| *id);
    let nutrients: Vec<NutrientId> = foods().nutrients().iter().map(|n| n.id).collect();
    let all_fat_counts = all_fat_counts();
    for ((week, service), owner) in both.services().into_iter().zip(both.first_week..) {
        let average = average(week, &service, &served, &nutrients).expect("a week that is whole");
        let name = format!("{}, {} {}", week.title, service.kind, service.group);
        let amount = |nutrient| average.amount(nutrient).expect("a kept nutrient");
        compare(peer, owner, &name, amount, problems);
        let ours = fat_share(&check(&average, &all_fat_counts));
        let peers = peer.saturated_fat_share(owner, owner);
        if ours != peers {
            problems.push(format!("{name}: {ours} % of energy, SQL {peers} %"));
        }
    }
}

/// The rules of an office that does not follow the Act which leaves out the
/// fat of fluid milk.
fn all_fat_counts() -> Specifications {
    let mut switches = Switches::default();
    switches.set("whole milk act", false);
    reference().specifications.clone().with(switches)
}

/// The figure of the finding on saturated fat, to two decimals.
fn fat_share(findings: &[Finding]) -> Decimal {
    let share = findings.iter().find(|finding| {
        finding.rule.basis == Basis::ShareOfEnergy
            && finding.rule.nutrient == NutrientId::SATURATED_FAT
    });
    let figure = share.expect("a rule on saturated fat").figure;
    round_half_up(figure.expect("food with energy"), Digits(2))
}

fn check_both(both: &Both) {
    let peer = reckoned().peer.lock().expect("the other check's peer");
    let mut problems = Vec::new();
    let analyses = compare_recipes(both, &peer, &mut problems);
    compare_weeks(both, &peer, &analyses, &mut problems);
    drop(peer);
    assert!(problems.is_empty(), "{}", problems.join("\n"));
}

#[test]
fn the_release_has_the_engines_nutrients_and_decimals() {
    let of_release = reckoned().peer.lock().expect("a peer").nutrients();
    let ours: Vec<(u16, u32)> = foods()
        .nutrients()
        .iter()
        .filter(|nutrient| nutrient.id != NutrientId::ADDED_SUGARS)
        .map(|nutrient| (nutrient.id.0, nutrient.decimals.0))
        .collect();
    assert_eq!(ours, of_release);
}

#[test]
fn the_demo_gives_the_same_figures_in_sql() {
    check_both(&reckoned().demo);
}

/// Whole Milk for Healthy Kids Act of 2025: at lunch, not at breakfast, the
/// saturated fat of fluid milk is left out, its energy is not.
#[test]
fn the_demos_lunches_leave_out_the_fat_of_fluid_milk() {
    let (demo, peer) = (&reckoned().demo, reckoned().peer.lock().expect("a peer"));
    for ((week, service), owner) in demo.services().into_iter().zip(demo.first_week..) {
        let study = reference()
            .study_week(&demo.book, week)
            .expect("a whole week");
        let of_service = study
            .services
            .iter()
            .find(|one| one.average.service == service);
        let sure = of_service.expect("the week's service").findings.iter();
        let findings: Vec<Finding> = sure.map(|one| one.finding.clone()).collect();
        let fat_of = match service.kind {
            MealKind::Lunch => WITHOUT_MILK + owner,
            _ => owner,
        };
        let peers = peer.saturated_fat_share(fat_of, owner);
        assert_eq!(
            fat_share(&findings),
            peers,
            "{} {}",
            service.kind,
            service.group
        );
    }
}

#[test]
fn random_recipes_and_weeks_give_the_same_figures_in_sql() {
    check_both(&reckoned().random);
}
