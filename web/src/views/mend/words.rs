//! Words of the search for the fewest changes.

use crate::language::{Say, say};
use engine::mend::{Doing, Progress};

pub const TITLE: Say = Say("mend-title");
pub const LEAD: Say = Say("mend-lead");
pub const MARGIN: Say = Say("mend-margin");
pub const MARGIN_NONE: Say = Say("mend-margin-none");
pub const MARGIN_ONCE: Say = Say("mend-margin-once");
pub const MARGIN_TWICE: Say = Say("mend-margin-twice");
pub const WAYS: Say = Say("mend-ways");
pub const WAY_SWAPS: Say = Say("mend-way-swaps");
pub const WAY_AMOUNTS: Say = Say("mend-way-amounts");
pub const WAY_PORTIONS: Say = Say("mend-way-portions");
pub const WAY_CHOICES: Say = Say("mend-way-choices");
pub const KEEP: Say = Say("mend-keep");
pub const KEEP_HINT: Say = Say("mend-keep-hint");
pub const KEEP_DAYS: Say = Say("mend-keep-days");
pub const KEEP_CHOICES: Say = Say("mend-keep-choices");
pub const KEEP_RECIPES: Say = Say("mend-keep-recipes");
pub const FIND: Say = Say("mend-find");
pub const FIND_AGAIN: Say = Say("mend-find-again");
pub const STOP: Say = Say("mend-stop");
pub const OPENING: Say = Say("mend-opening");
pub const PROGRESS: Say = Say("mend-progress");
pub const NONE_NEEDED: Say = Say("mend-none-needed");
pub const CHECKED: Say = Say("mend-checked");
pub const NOT_SMALLEST: Say = Say("mend-not-smallest");
pub const IMPOSSIBLE_WAY: Say = Say("mend-impossible-way");
pub const STOPPED: Say = Say("mend-stopped");
pub const GAVE_UP: Say = Say("mend-gave-up");
pub const EFFECTS: Say = Say("mend-effects");
pub const EFFECT_WHAT: Say = Say("mend-effect-what");
pub const EFFECT_BEFORE: Say = Say("mend-effect-before");
pub const EFFECT_AFTER: Say = Say("mend-effect-after");
pub const EFFECT_LIMIT: Say = Say("mend-effect-limit");
pub const NO_EFFECT: Say = Say("mend-no-effect");
pub const ACCEPT: Say = Say("mend-accept");
pub const DECLINE: Say = Say("mend-decline");
pub const MADE: Say = Say("mend-made");
pub const MISFIT: Say = Say("mend-misfit");
pub const ALL_MADE: Say = Say("mend-all-made");
pub const FORGET: Say = Say("mend-forget");
pub const UNKNOWN: Say = Say("mend-unknown");

pub fn keep_count(count: usize) -> String {
    say("mend-keep-count", &[("count", count.into())])
}

pub fn declined(count: usize) -> String {
    say("mend-declined", &[("count", count.into())])
}

/// What the search is doing.
pub fn doing(progress: &Progress) -> String {
    let found = ("found", progress.changes.into());
    match progress.doing {
        Doing::Looking | Doing::Done => say(
            "mend-looking",
            &[
                ("done", progress.looked.into()),
                ("all", progress.to_look.into()),
                found,
            ],
        ),
        Doing::Choosing => say(
            "mend-choosing",
            &[
                found,
                ("checked", progress.checked.into()),
                ("least", progress.least.into()),
            ],
        ),
        Doing::Explaining => say("mend-explaining", &[]),
    }
}

pub fn least(count: usize, found: usize) -> String {
    let arguments = [("count", count.into()), ("found", found.into())];
    say("mend-least", &arguments)
}

pub fn best(count: usize, more: u32, found: usize) -> String {
    let arguments = [
        ("count", count.into()),
        ("more", more.into()),
        ("found", found.into()),
    ];
    say("mend-best", &arguments)
}

pub fn impossible(requirements: usize, found: usize) -> String {
    let key = match requirements {
        1 => "mend-impossible-one",
        _ => "mend-impossible",
    };
    say(key, &[("found", found.into())])
}

pub fn problem(problem: &str) -> String {
    say("mend-problem", &[("problem", problem.into())])
}

pub fn swap(recipe: &str, old: &str, new: &str) -> String {
    let arguments = [
        ("recipe", recipe.into()),
        ("old", old.into()),
        ("new", new.into()),
    ];
    say("mend-swap", &arguments)
}

pub fn portion(recipe: &str, old: &str, new: &str, servings: &str) -> String {
    let arguments = [
        ("recipe", recipe.into()),
        ("old", old.into()),
        ("new", new.into()),
        ("servings", servings.into()),
    ];
    say("mend-portion", &arguments)
}

pub fn choice(day: &str, part: &str, old: &str, new: &str) -> String {
    let arguments = [
        ("day", day.into()),
        ("part", part.into()),
        ("old", old.into()),
        ("new", new.into()),
    ];
    say("mend-choice", &arguments)
}

pub fn allergens(allergens: &str) -> String {
    say("mend-allergens", &[("allergens", allergens.into())])
}

pub fn accept_of(change: &str) -> String {
    say("mend-accept-of", &[("change", change.into())])
}

pub fn decline_of(change: &str) -> String {
    say("mend-decline-of", &[("change", change.into())])
}

pub fn accepted(change: &str) -> String {
    say("mend-accepted", &[("change", change.into())])
}
