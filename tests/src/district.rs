//! A generated district: recipes and weeks in any number, the same in every
//! run.

use engine::analysis::analyse;
use engine::components::{BeansRole, CreditLine, credit_recipe};
use engine::foods::{FoodId, NutrientId};
use engine::recipe::{Keep, RecipeId, WeighedLine};
use engine::reference::{RecipeStudy, Reference};
use engine::units::{Grams, Servings};
use engine::week::{Choice, Date, Day, GradeGroup, Meal, MealKind, Offer, Week, WeekId};
use rand::{RngExt, SeedableRng};
use rand_chacha::ChaCha8Rng;
use rust_decimal::Decimal;

/// How large a district is.
#[derive(Debug, Clone, Copy)]
pub struct Size {
    /// Recipes.
    pub recipes: usize,
    /// Lines of each.
    pub lines: usize,
    /// Weeks of five days, with breakfast and lunch for three grade groups.
    pub weeks: usize,
    /// Whether some lines have no weight, no known food, or lose nutrients to
    /// draining, and some choices are planned for no one.
    pub imperfect: bool,
}

impl Size {
    /// A thousand recipes of fifteen lines; 180 days.
    pub const YEAR: Self = Self {
        recipes: 1_000,
        lines: 15,
        weeks: 36,
        imperfect: false,
    };
}

/// Choices of each meal.
pub const CHOICES: usize = 3;

const GROUPS: [&str; 3] = ["K-5", "6-8", "9-12"];
const DAYS: i64 = 5;

/// A generated district.
#[derive(Debug)]
pub struct District {
    /// Studies of its recipes, sorted by name.
    pub studies: Vec<(RecipeId, RecipeStudy)>,
    /// Its weeks.
    pub weeks: Vec<Week>,
}

impl District {
    /// Draws a district.
    pub fn draw(reference: &Reference, size: Size, seed: u64) -> Self {
        let mut source = ChaCha8Rng::seed_from_u64(seed);
        let foods: Vec<FoodId> = reference.foods.foods().iter().map(|food| food.id).collect();
        let studies = (0..size.recipes)
            .map(|number| {
                let lines = (0..size.lines)
                    .map(|line| draw_line(&mut source, &foods, line, size.imperfect))
                    .collect();
                let servings = Servings::new(Decimal::from(source.random_range(1..=500)));
                (name(number), study(reference, lines, servings))
            })
            .collect();
        let weeks = (0..size.weeks)
            .map(|number| draw_week(&mut source, number, size))
            .collect();
        Self { studies, weeks }
    }
}

/// Name of a recipe: its number, so that names sort as numbers do.
fn name(number: usize) -> RecipeId {
    RecipeId(format!("recipe-{number:07}"))
}

/// The study of a recipe of which only the weighed lines are known.
pub fn study(reference: &Reference, parts: Vec<WeighedLine>, servings: Servings) -> RecipeStudy {
    let credit_lines: Vec<CreditLine> = parts
        .iter()
        .map(|part| CreditLine {
            line: part.line,
            food: part.food,
            weight: part.weight,
            measure: None,
            cooked_yield: None,
            stated: Vec::new(),
        })
        .collect();
    let rules = &reference.credit_rules;
    let role = BeansRole::Vegetable;
    RecipeStudy {
        lines: Vec::new(),
        batch_weight: parts.iter().filter_map(|part| part.weight).sum(),
        batch_weight_measured: false,
        analysis: Ok(analyse(&reference.foods, &parts, servings).expect("servings above zero")),
        credits: credit_recipe(&reference.foods, rules, &credit_lines, servings, role).ok(),
        allergens: Vec::new(),
        parts,
    }
}

fn draw_line(
    source: &mut ChaCha8Rng,
    foods: &[FoodId],
    line: usize,
    imperfect: bool,
) -> WeighedLine {
    let food = foods[source.random_range(0..foods.len())];
    let hundredths: i64 = source.random_range(1..=500_000);
    let weight = Grams::new(Decimal::new(hundredths, 2));
    let whole = WeighedLine::new(line, Some(food), Some(weight));
    if !imperfect {
        return whole;
    }
    match source.random_range(0..40) {
        0 => WeighedLine::new(line, Some(food), None),
        1 => WeighedLine::new(line, None, Some(weight)),
        2 => WeighedLine {
            keeps: vec![Keep {
                nutrient: Some(NutrientId::SODIUM),
                share: Decimal::new(59, 2),
            }],
            ..whole
        },
        // A third of a pound: a weight that no decimal holds exactly.
        3 => WeighedLine::new(
            line,
            Some(food),
            Some(Grams::new(Decimal::new(45_359_237, 5)) / Decimal::from(3)),
        ),
        _ => whole,
    }
}

fn draw_week(source: &mut ChaCha8Rng, number: usize, size: Size) -> Week {
    let first: Date = "2026-08-17".parse().expect("a Monday");
    let monday = first.plus_days(7 * i64::try_from(number).expect("few weeks"));
    let days = (0..DAYS)
        .map(|day| Day {
            date: monday.plus_days(day),
            meals: [MealKind::Breakfast, MealKind::Lunch]
                .into_iter()
                .flat_map(|kind| GROUPS.map(|group| (kind, group)))
                .map(|(kind, group)| draw_meal(source, kind, group, size))
                .collect(),
        })
        .collect();
    Week {
        id: WeekId(format!("week-{number:04}")),
        title: format!("Week {}", number + 1),
        days,
    }
}

fn draw_meal(source: &mut ChaCha8Rng, kind: MealKind, group: &str, size: Size) -> Meal {
    let choices = (0..CHOICES)
        .map(|_| {
            let planned: u32 = source.random_range(1..=400);
            let none = size.imperfect && source.random_range(0..10) == 0;
            Choice {
                recipe: name(source.random_range(0..size.recipes)),
                planned: Servings::new(Decimal::from(if none { 0 } else { planned })),
            }
        })
        .collect();
    Meal {
        kind,
        group: GradeGroup(group.into()),
        planned_meals: Servings::new(Decimal::from(source.random_range(100..=900))),
        offers: vec![Offer {
            title: "Main dish".into(),
            take: 1,
            choices,
        }],
    }
}
