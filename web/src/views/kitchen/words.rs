//! Words of the views of the kitchens and of buying.

use crate::format;
use crate::language::{Say, of_table, say};
use crate::named;
use engine::exact::Digits;
use engine::kitchen::Held;
use engine::kitchen::{SafetyStep, Step};
use engine::production::{Moment, Pan, PanProblem, PrepStep, ShareProblem, Shown, WeighedAs};
use engine::units::{Grams, MassUnit, Unit};
use engine::yields::{AmountBasis, Doneness};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

pub const TITLE: Say = Say("kitchen-title");
pub const LEAD: Say = Say("kitchen-lead");
pub const NO_WEEKS: Say = Say("kitchen-no-weeks");
pub const ALL_SCHOOLS: Say = Say("kitchen-all-schools");
pub const PRINT_SHEETS: Say = Say("kitchen-print-sheets");
pub const TO_BUYING: Say = Say("kitchen-to-buying");
pub const TO_KITCHEN: Say = Say("kitchen-to-kitchen");
pub const TO_WEEK: Say = Say("kitchen-to-week");
pub const TO_COOK: Say = Say("kitchen-to-cook");
pub const SHEET_OF: Say = Say("kitchen-sheet-of");
pub const WEEK: Say = Say("kitchen-week");
pub const DAY: Say = Say("kitchen-day");
pub const WHOLE_WEEK: Say = Say("kitchen-whole-week");
pub const SERVINGS: Say = Say("kitchen-servings");
pub const SERVINGS_HINT: Say = Say("kitchen-servings-hint");
pub const NOTHING_PLANNED: Say = Say("kitchen-nothing-planned");
pub const NOT_SERVED: Say = Say("kitchen-not-served");
pub const MEAL: Say = Say("kitchen-meal");
pub const DISH: Say = Say("kitchen-dish");
pub const PLANNED: Say = Say("kitchen-planned");
pub const STATED: Say = Say("kitchen-stated");
pub const NOTHING_HERE: Say = Say("kitchen-nothing-here");
pub const MENU: Say = Say("kitchen-menu");
pub const ORDER: Say = Say("kitchen-order");
pub const COOK: Say = Say("kitchen-cook");
pub const TEMPERATURES: Say = Say("kitchen-temperatures");
pub const TOO_LIGHT: Say = Say("kitchen-too-light");
pub const NO_WEIGHT: Say = Say("kitchen-no-weight");
pub const NO_ALLERGEN_FOUND: Say = Say("kitchen-no-allergen-found");
pub const SCHOOLS: Say = Say("kitchen-schools");
pub const SCHOOLS_HINT: Say = Say("kitchen-schools-hint");
pub const SCHOOL: Say = Say("kitchen-school");
pub const NEW_SCHOOL: Say = Say("kitchen-new-school");
pub const ADD_SCHOOL: Say = Say("kitchen-add-school");
pub const REMOVE: Say = Say("kitchen-remove");
pub const WAYS: Say = Say("kitchen-ways");
pub const SCALE: Say = Say("kitchen-scale");
pub const PANS: Say = Say("kitchen-pans-of-day");
pub const PANS_HINT: Say = Say("kitchen-pans-hint");
pub const PAN: Say = Say("kitchen-pan");
pub const NO_PAN: Say = Say("kitchen-no-pan");
pub const FILLED_BY: Say = Say("kitchen-filled-by");
pub const BY_VOLUME: Say = Say("kitchen-by-volume");
pub const BY_SERVINGS: Say = Say("kitchen-by-servings");
pub const BY_WEIGHT: Say = Say("kitchen-by-weight");
pub const MINUTES: Say = Say("kitchen-minutes");
pub const BUYING: Say = Say("kitchen-buying");
pub const BUYING_LEAD: Say = Say("kitchen-buying-lead");
pub const OTHER_WEEKS: Say = Say("kitchen-other-weeks");
pub const PRINT_LIST: Say = Say("kitchen-print-list");
pub const TO_BUY: Say = Say("kitchen-to-buy");
pub const FOOD: Say = Say("kitchen-food");
pub const EDIBLE: Say = Say("kitchen-edible");
pub const PURCHASED: Say = Say("kitchen-purchased");
pub const PACKS_COLUMN: Say = Say("kitchen-packs-column");
pub const LEFT: Say = Say("kitchen-left");
pub const COST: Say = Say("kitchen-cost");
pub const TOTAL: Say = Say("kitchen-total");
pub const NO_PACK: Say = Say("kitchen-no-pack");
pub const UNKNOWN: Say = Say("kitchen-unknown");
pub const UNLISTED: Say = Say("kitchen-unlisted");
pub const PACKS: Say = Say("kitchen-packs");
pub const PACKS_HINT: Say = Say("kitchen-packs-hint");
pub const ADD_PACK: Say = Say("kitchen-add-pack");
pub const PACK: Say = Say("kitchen-pack");
pub const HOLDS: Say = Say("kitchen-holds");
pub const PRICE: Say = Say("kitchen-price");
pub const PRICED_ON: Say = Say("kitchen-priced-on");
pub const NO_PACK_WEIGHT: Say = Say("kitchen-no-pack-weight");
pub const WEIGHT: Say = Say("kitchen-weight");
pub const VOLUME: Say = Say("kitchen-volume");
pub const COST_OF_SERVING: Say = Say("kitchen-cost-of-serving");
pub const OTHER_LINES: Say = Say("kitchen-other-lines");
pub const ONE_SERVING: Say = Say("kitchen-one-serving");
pub const COST_HINT: Say = Say("kitchen-cost-hint");

/// Something to do with a named thing.
pub fn of(what: Say, name: &str) -> String {
    say(
        "kitchen-of",
        &[("what", what.to_string().into()), ("name", name.into())],
    )
}

/// Takes a named thing out.
pub fn remove(name: &str) -> String {
    of(REMOVE, name)
}

/// Servings of a dish at a school.
pub fn servings_at(dish: &str, school: &str, stated: bool) -> String {
    let arguments = [("dish", dish.into()), ("school", school.into())];
    match stated {
        true => say("kitchen-servings-stated", &arguments),
        false => say("kitchen-servings-share", &arguments),
    }
}

/// Meals that a school serves.
pub fn meals_at(service: &str, school: &str) -> String {
    say(
        "kitchen-meals-at",
        &[("service", service.into()), ("school", school.into())],
    )
}

/// Why schools' servings are not what is planned.
pub fn share_problem(problem: &ShareProblem) -> String {
    match problem {
        ShareProblem::NoSite => say("kitchen-no-site", &[]),
        ShareProblem::SumDiffers { sum } => {
            let sum = format::group(sum.servings());
            say("kitchen-sum-differs", &[("sum", sum.into())])
        }
    }
}

/// When a step is done.
pub fn moment(moment: Moment) -> Say {
    match moment {
        Moment::DayBefore => Say("kitchen-day-before"),
        Moment::Early => Say("kitchen-early"),
        Moment::ForService => Say("kitchen-for-service"),
        Moment::Last => Say("kitchen-last"),
    }
}

/// A step of the day.
pub fn step(step: &PrepStep, dish: &str) -> String {
    if !step.said.is_empty() {
        let arguments = [("dish", dish.into()), ("said", step.said.as_str().into())];
        return say("kitchen-step-said", &arguments);
    }
    let mut parts = vec![say("kitchen-step-cook", &[("dish", dish.into())])];
    if let Some(minutes) = step.minutes {
        parts.push(say("kitchen-step-minutes", &[("minutes", minutes.into())]));
    }
    match step.held {
        Some(Held::Hot) => parts.push(say("kitchen-step-hot", &[])),
        Some(Held::Cold) => parts.push(say("kitchen-step-cold", &[])),
        None => {}
    }
    parts.join(", ")
}

/// A recipe of the menu that has no servings to reckon by.
pub fn not_cooked(dish: &str, servings: &str) -> String {
    let arguments = [("dish", dish.into()), ("servings", servings.into())];
    say("kitchen-not-cooked", &arguments)
}

/// A temperature with its source.
pub fn temperature(step: &SafetyStep) -> String {
    let key = match step.step {
        Step::Cook => "kitchen-temperature-cook",
        Step::Hold => "kitchen-temperature-hold",
        Step::Cool => "kitchen-temperature-cool",
        Step::Reheat => "kitchen-temperature-reheat",
        Step::Date => "kitchen-temperature-date",
    };
    say(key, &named::safety_figures(step))
}

/// The allergens that a recipe's words name.
pub fn contains(allergens: &str) -> String {
    say("kitchen-contains", &[("allergens", allergens.into())])
}

/// How much of a recipe is made.
pub fn batches(batches: &str, servings: &str) -> String {
    let arguments = [("batches", batches.into()), ("servings", servings.into())];
    say("kitchen-batches", &arguments)
}

/// So many batches of another recipe.
pub fn batches_short(batches: &str) -> String {
    say("kitchen-batches-short", &[("batches", batches.into())])
}

/// Part of a recipe goes into another.
pub fn goes_into(servings: &str, dish: &str) -> String {
    let arguments = [("servings", servings.into()), ("dish", dish.into())];
    say("kitchen-goes-into", &arguments)
}

/// A line that names a recipe of its own.
pub fn made_apart(dish: &str) -> String {
    say("kitchen-made-apart", &[("dish", dish.into())])
}

/// Pans of a dish.
pub fn pans(count: &str, pan: &Pan, holds: &str, last: &str) -> String {
    let arguments = [
        ("count", count.into()),
        ("pan", of_table(&pan.words).into()),
        ("holds", holds.into()),
        ("last", last.into()),
    ];
    say("kitchen-pans", &arguments)
}

/// Why pans cannot be counted.
pub fn pan_problem(problem: &PanProblem) -> String {
    match problem {
        PanProblem::NoSuchPan { pan } => {
            say("kitchen-no-such-pan", &[("pan", pan.as_str().into())])
        }
        PanProblem::NoCapacity => say("kitchen-no-capacity", &[]),
        PanProblem::NoServingVolume => say("kitchen-no-serving-volume", &[]),
        PanProblem::NoServingWeight => say("kitchen-no-serving-weight", &[]),
        PanProblem::HoldsNothing => say("kitchen-holds-nothing", &[]),
    }
}

/// A pan with what it holds and the source of that.
pub fn pan_row(pan: &Pan) -> String {
    let source = source(&pan.source, &pan.status);
    match pan.quarts {
        Some(quarts) => {
            let arguments = [
                ("pan", of_table(&pan.words).into()),
                ("quarts", format::stated(quarts).into()),
                ("source", source.into()),
            ];
            say("kitchen-pan-row", &arguments)
        }
        None => {
            let arguments = [
                ("pan", of_table(&pan.words).into()),
                ("source", source.into()),
            ];
            say("kitchen-pan-row-open", &arguments)
        }
    }
}

/// Where a figure comes from.
pub fn source(source: &str, status: &str) -> String {
    say(
        "kitchen-source",
        &[
            ("source", of_table(source).into()),
            ("status", of_table(status).into()),
        ],
    )
}

/// What a scale shows: "3 lb 4 1/2 oz".
pub fn shown(shown: &Shown) -> String {
    let part = |(number, unit): &(Decimal, MassUnit)| {
        let figure = match unit {
            MassUnit::Ounce => format::eighths(*number),
            _ => format::group(*number),
        };
        format!("{figure} {}", unit.symbol())
    };
    shown.parts.iter().map(part).collect::<Vec<_>>().join(" ")
}

/// What a weight is the weight of, where that makes a difference.
pub fn weighed_as(weighed: WeighedAs) -> Option<String> {
    let doneness = weighed.doneness.map(|doneness| match doneness {
        Doneness::Raw => Say("kitchen-weighed-raw"),
        Doneness::Cooked => Say("kitchen-weighed-cooked"),
    });
    let basis = weighed.basis.map(|basis| match basis {
        AmountBasis::AsPurchased => Say("kitchen-weighed-purchased"),
        AmountBasis::EdiblePortion => Say("kitchen-weighed-edible"),
    });
    let parts: Vec<String> = [doneness, basis]
        .into_iter()
        .flatten()
        .map(String::from)
        .collect();
    (!parts.is_empty()).then(|| parts.join(", "))
}

/// A line's own measure.
pub fn measure(figure: &str, unit: &Unit, exact: bool) -> String {
    // "About 4" in one line and "3/4 tbsp" in the next would be misread.
    let measured = named::counted(figure, &unit.to_string()).replace(' ', "\u{a0}");
    match exact {
        true => measured,
        false => say("kitchen-measure-about", &[("measured", measured.into())]),
    }
}

/// A weight of what is bought, in pounds.
pub fn weight(weight: Grams) -> String {
    let pounds = MassUnit::Pound.number_in(weight);
    format!("{} lb", format::number(pounds, Digits(2)))
}

/// An amount of money.
pub fn money(amount: &str) -> String {
    say("kitchen-money", &[("amount", amount.into())])
}

/// A sum of which not all is known.
pub fn money_at_least(amount: &str, known: &str) -> String {
    let arguments = [("amount", amount.into()), ("known", known.into())];
    say("kitchen-money-at-least", &arguments)
}

/// So many packs.
pub fn packs(count: &str, pack: &str) -> String {
    say(
        "kitchen-packs-of",
        &[("count", count.into()), ("pack", pack.into())],
    )
}

/// How many packs are kept.
pub fn packs_kept(count: usize) -> String {
    let count = count.to_i64().unwrap_or(i64::MAX);
    say("kitchen-packs-kept", &[("count", count.into())])
}
