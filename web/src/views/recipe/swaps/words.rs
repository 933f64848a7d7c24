//! Words about what else could go in a line's place.

use crate::format;
use crate::language::{Say, of_table, say};
use crate::named;
use crate::words::standing;
use engine::components::Component;
use engine::exact::Digits;
use engine::foods::{FoodTable, NutrientId};
use engine::swaps::{Aim, AmountBy, LeftOut, SwapProblem};
use engine::week::Service;
use rust_decimal::Decimal;
use yew::AttrValue;

pub const TITLE: Say = Say("swaps-title");
pub const LEAD: Say = Say("swaps-lead");
pub const LOOKING: Say = Say("swaps-looking");
pub const UNKNOWN: Say = Say("swaps-unknown");

pub const ASKED: Say = Say("swaps-asked");
pub const GOALS: Say = Say("swaps-goals");
pub const BAND: Say = Say("swaps-band");
pub const FALL: Say = Say("swaps-fall");
pub const RISE: Say = Say("swaps-rise");
pub const KCAL: Say = Say("swaps-kcal");
pub const KEEPS: Say = Say("swaps-keeps");
pub const KEEP_CREDIT: Say = Say("swaps-keep-credit");
pub const AMOUNT_BY: Say = Say("swaps-amount-by");
pub const ALLERGENS_KEPT: Say = Say("swaps-allergens-kept");

pub const FOODS: Say = Say("swaps-foods");
pub const MOVES: Say = Say("swaps-moves");
pub const NEW_LINES: Say = Say("swaps-new-lines");
pub const IN_A_SERVING: Say = Say("swaps-in-a-serving");
pub const IN_WEEKS: Say = Say("swaps-in-weeks");
pub const WHY: Say = Say("swaps-why");
pub const COST: Say = Say("swaps-cost");
pub const TRY: Say = Say("swaps-try");
pub const TAKE: Say = Say("swaps-take");
pub const PUT_BACK: Say = Say("swaps-put-back");
pub const WEEKS_COMING: Say = Say("swaps-weeks-coming");
pub const NO_WEEKS: Say = Say("swaps-no-weeks");
pub const VERDICTS: Say = Say("swaps-verdicts");
pub const VERDICTS_STAY: Say = Say("swaps-verdicts-stay");
pub const STAYS: Say = Say("swaps-verdict-stays");
pub const BECOMES: Say = Say("swaps-verdict-becomes");
pub const NOT_ASKED: Say = Say("swaps-verdict-not-asked");
pub const WEEK_STAYS: Say = Say("swaps-week-stays");
pub const SERVICE: Say = Say("swaps-service");
pub const LEFT_OUT: Say = Say("swaps-left-out");
pub const LEFT_OUT_HINT: Say = Say("swaps-left-out-hint");

pub const TRIED: Say = Say("swaps-tried");
pub const NOTHING_TRIED: Say = Say("swaps-nothing-tried");
pub const AS_IT_STANDS: Say = Say("swaps-as-it-stands");
pub const WITH_IT: Say = Say("swaps-with-it");

pub const COST_UNKNOWN: Say = Say("swaps-cost-unknown");
pub const SAME_FOOD: Say = Say("swaps-same-food");
pub const USUAL_FOOD: Say = Say("swaps-usual-food");
pub const ENERGY_NOT_COUNTED: Say = Say("swaps-energy-not-counted");
pub const NO_ALLERGEN: Say = Say("swaps-no-allergen");

/// The view's name for one line.
pub fn title_of(line: &str) -> String {
    say("swaps-title-of", &[("line", line.trim().into())])
}

/// How many proposals there are.
pub fn found(foods: usize, moves: usize) -> String {
    say(
        "swaps-found",
        &[("foods", foods.into()), ("moves", moves.into())],
    )
}

/// A proposal was taken.
pub fn taken(old: &str, new: &str) -> String {
    let (old, new) = (old.trim(), new.trim());
    say("swaps-taken", &[("old", old.into()), ("new", new.into())])
}

/// What is tried.
pub fn trying(title: &str) -> String {
    say("swaps-trying", &[("title", title.into())])
}

/// A goal.
pub fn aim(aim: Aim) -> AttrValue {
    let key = match aim {
        Aim::Less(NutrientId::SODIUM) => "swaps-less-sodium",
        Aim::Less(NutrientId::SATURATED_FAT) => "swaps-less-saturated-fat",
        Aim::Less(NutrientId::ADDED_SUGARS) => "swaps-less-added-sugars",
        Aim::Less(_) => "swaps-less-calories",
        Aim::More(_) => "swaps-more-fibre",
        Aim::LessCost => "swaps-less-cost",
    };
    Say(key).into()
}

/// How much a goal counts.
pub fn weight(weight: u16) -> AttrValue {
    say("swaps-weight", &[("weight", weight.into())]).into()
}

/// By what the amount of the new food is found.
pub fn amount_by(by: Option<AmountBy>) -> AttrValue {
    let key = match by {
        None => "swaps-by-kind",
        Some(AmountBy::Volume) => "swaps-by-volume",
        Some(AmountBy::Weight) => "swaps-by-weight",
        Some(AmountBy::Credit) => "swaps-by-credit",
    };
    Say(key).into()
}

/// A proposal's number in its list.
pub fn number(number: usize) -> String {
    format!("{number}.")
}

/// Half of it is another food.
pub fn half(description: &str) -> String {
    say("swaps-half", &[("food", description.into())])
}

/// A nutrient; the dataset's own name where the page has no shorter one.
pub fn nutrient(foods: &FoodTable, nutrient: NutrientId) -> String {
    let key = match nutrient {
        NutrientId::ENERGY => "swaps-calories",
        NutrientId::SATURATED_FAT => "swaps-saturated-fat",
        NutrientId::SODIUM => "swaps-sodium",
        NutrientId::ADDED_SUGARS => "swaps-added-sugars",
        NutrientId::SUGARS => "swaps-sugars",
        NutrientId::FIBRE => "swaps-fibre",
        _ => {
            let found = foods.nutrients().iter().find(|one| one.id == nutrient);
            return found.map_or_else(String::new, named::nutrient);
        }
    };
    Say(key).to_string()
}

/// Before and after, with the change.
pub fn moved(before: &str, after: &str, change: &str) -> String {
    format!("{before} → {after} ({change})")
}

/// A change between bounds.
pub fn between(low: &str, high: &str) -> String {
    say(
        "swaps-between",
        &[("low", low.into()), ("high", high.into())],
    )
}

/// A change of which only the least is known.
pub fn at_least(low: &str) -> String {
    say("swaps-at-least", &[("low", low.into())])
}

/// A change of which only the most is known.
pub fn at_most(high: &str) -> String {
    say("swaps-at-most", &[("high", high.into())])
}

/// Which meal, for whom.
pub fn service(service: &Service) -> String {
    let meal = named::meal(service.kind).to_string();
    let group = named::group(&service.group.0);
    say(
        "swaps-service-of",
        &[("meal", meal.into()), ("group", group.into())],
    )
}

/// How a week's average meal moves.
pub fn in_week(week: &str, service: &str, nutrient: &str, moved: &str) -> String {
    format!("{week}, {service}: {nutrient} {moved}")
}

/// A week that has no averages.
pub fn week_problem(week: &str, problem: &str) -> String {
    format!("{week}: {problem}")
}

/// A limit of a week.
pub fn limit_of_week(week: &str, what: &str, limit: &str) -> String {
    let arguments = [
        ("week", week.into()),
        ("what", what.into()),
        ("limit", limit.into()),
    ];
    say("swaps-limit-of-week", &arguments)
}

/// The change of a serving's cost as a figure, in the office's money.
pub fn cost_change(change: Decimal) -> String {
    format::signed(change, Digits(4))
}

/// The change of a serving's cost, in the office's money.
pub fn cost(change: Decimal) -> String {
    let change = cost_change(change);
    say("swaps-cost-moves", &[("change", change.into())])
}

fn way(wanted: bool) -> &'static str {
    if wanted { "wanted" } else { "other" }
}

/// A goal moves.
pub fn moves(nutrient: &str, change: &str, unit: &str, wanted: bool) -> String {
    told("swaps-moves-by", nutrient, change, unit, wanted)
}

/// A goal moves by so much for certain.
pub fn moves_at_least(nutrient: &str, change: &str, unit: &str, wanted: bool) -> String {
    told("swaps-moves-at-least", nutrient, change, unit, wanted)
}

fn told(key: &str, nutrient: &str, change: &str, unit: &str, wanted: bool) -> String {
    let change = format!("{change} {unit}");
    say(
        key,
        &[
            ("nutrient", nutrient.into()),
            ("change", change.trim().into()),
            ("way", way(wanted).into()),
        ],
    )
}

/// A goal of which nothing is known.
pub fn not_counted(nutrient: &str) -> String {
    say("swaps-not-counted", &[("nutrient", nutrient.into())])
}

/// It plays the same part.
pub fn same_part(part: &str) -> String {
    say("swaps-same-part", &[("part", of_table(part).into())])
}

/// It plays a part that can stand for the old one.
pub fn other_part(old: &str, new: &str) -> String {
    say(
        "swaps-other-part",
        &[("old", of_table(old).into()), ("new", of_table(new).into())],
    )
}

/// How the amount was found.
pub fn amount(by: AmountBy, by_weight_instead: bool) -> String {
    let key = match by {
        _ if by_weight_instead => "swaps-amount-weight-instead",
        AmountBy::Volume => "swaps-amount-volume",
        AmountBy::Weight => "swaps-amount-weight",
        AmountBy::Credit => "swaps-amount-credit",
    };
    Say(key).to_string()
}

/// What a serving credits.
pub fn credit(component: Component, before: &str, after: &str) -> String {
    let name = named::component(component).to_string();
    let unit = component.unit();
    let way = if before == after { "same" } else { "other" };
    say(
        "swaps-credit",
        &[
            ("component", name.into()),
            ("before", named::counted(before, unit).into()),
            ("after", named::counted(after, unit).into()),
            ("way", way.into()),
        ],
    )
}

/// The calories stay in the band.
pub fn energy(change: &str) -> String {
    say("swaps-energy", &[("change", change.into())])
}

/// Nothing points to these allergens any more.
pub fn allergens_gone(names: &str) -> String {
    say("swaps-allergens-gone", &[("names", names.into())])
}

/// What is known of a kitchen move.
pub fn effect(words: &str, source: &str, status: &str) -> String {
    let (words, status) = (of_table(words), standing::of(status));
    format!("{words} ({source}; {status})")
}

/// Why nothing can be proposed, and what to do about it.
pub fn problem(problem: SwapProblem) -> String {
    let key = match problem {
        SwapProblem::NoIngredient => "swaps-no-ingredient",
        SwapProblem::NamesRecipe => "swaps-names-recipe",
        SwapProblem::NoFood => "swaps-no-food",
        SwapProblem::NoWeight => "swaps-no-weight",
        SwapProblem::NotAnalysed => "swaps-not-analysed",
        SwapProblem::NoGoal => "swaps-no-goal",
    };
    Say(key).to_string()
}

/// How many foods were left out, and why.
pub fn left_out(left_out: &LeftOut) -> Vec<String> {
    let counts = [
        ("swaps-left-unknown", left_out.unknown),
        ("swaps-left-energy", left_out.energy),
        ("swaps-left-credit", left_out.credit),
        ("swaps-left-allergens", left_out.allergens),
    ];
    let counted = counts.iter().filter(|(_, count)| *count > 0);
    counted
        .map(|(key, count)| say(key, &[("count", (*count).into())]))
        .collect()
}
