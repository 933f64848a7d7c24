//! How well a food can take another's place. Whole numbers in thousandths;
//! they order foods and mean nothing else.
//!
//! The weights were set by judgement and mended on the rows of
//! `tests/data/kitchen_swaps.csv`; `tests/tests/kitchen_swaps.rs` tells how many
//! of these were found before and after.

use super::index::{Features, SwapIndex};
use super::kinds::Forms;
use super::words::Form;

/// A perfect fit, a whole gain.
pub(super) const WHOLE: i32 = 1000;

/// What the goals gain, beside the likeness of the foods.
const GAIN: i32 = 900;
/// What likeness is worth.
const LIKENESS: i32 = 1000;
/// Likeness of two foods of one kind that share no word of their names.
const SAME_KIND: i32 = 350;
/// Likeness of a food of a kind that may stand in.
const NEAR_KIND: i32 = 450;
/// What is taken off for a change of state that a cook can make.
const OTHER_FORM: i32 = 150;
/// A state that is not said on one side.
const UNSTATED_FORM: i32 = 30;
/// For each word that makes a food of little use.
const POOR: i32 = 400;
/// For another thing made of the food, such as its juice.
const OTHER_THING: i32 = 400;
/// For a brand's food.
const BRANDED: i32 = 400;
/// For a food that kitchens name.
const STAPLE: i32 = 200;
/// For each gram in 100 g by which two foods consist of other things, beyond
/// the first few.
const BODY: f64 = 8.0;
/// Grams in 100 g of other composition that are no matter.
const LIKE_BODY: f64 = 15.0;

/// Likeness of names that makes two dishes one kind.
pub(super) const ALIKE: i32 = 400;

/// Groups of foods that are no ingredients: baby foods, fast foods, ready
/// meals, restaurant foods, foods of single peoples.
const DISHES: [u16; 5] = [300, 2100, 2200, 3500, 3600];

/// Vegetables and fruit: raw, frozen, canned and cooked stand for each other.
const PRODUCE: [u16; 2] = [900, 1100];

/// Likeness of names, 0 to 1000: the worth of shared words over all words.
pub(super) fn names_alike(one: &Features, other: &Features) -> i32 {
    let worth = |food: &Features| -> i32 { food.name.iter().map(|(_, w)| i32::from(*w)).sum() };
    let all = worth(one) + worth(other);
    if all == 0 {
        return 0;
    }
    let shared: i32 = one
        .name
        .iter()
        .filter(|(word, _)| *word != u32::MAX && other.name.iter().any(|(own, _)| own == word))
        .map(|(_, w)| i32::from(*w))
        .sum();
    WHOLE * 2 * shared / all
}

/// What a change of state costs; nothing where it cannot be made.
fn form(forms: Forms, food: &Features, other: &Features) -> Option<i32> {
    if forms == Forms::Any || food.form == other.form {
        return Some(0);
    }
    let thin = |form| matches!(form, Form::Unstated | Form::Raw | Form::Ready);
    if !(thin(food.form) && thin(other.form)) {
        return None;
    }
    match (food.form, other.form) {
        (Form::Unstated, _) | (_, Form::Unstated) => Some(UNSTATED_FORM),
        _ => PRODUCE.contains(&food.group).then_some(OTHER_FORM),
    }
}

/// Grams in 100 g by which two foods consist of other things; nothing where
/// that is not known.
fn bodies_apart(food: &Features, other: &Features) -> Option<f64> {
    let pairs = food.body.iter().zip(&other.body);
    let mut apart = 0.0;
    for (one, two) in pairs {
        apart += ((*one)? - (*two)?).abs();
    }
    Some(apart / 2.0)
}

/// How well `other` can stand for `food`; nothing where it cannot.
pub(super) fn fit(index: &SwapIndex, food: &Features, other: &Features) -> Option<i32> {
    if !index.may_replace(food, other) {
        return None;
    }
    if DISHES.contains(&other.group) && other.group != food.group {
        return None;
    }
    let same_kind = food.kind == other.kind;
    let forms = index.kinds.get(food.kind?).forms;
    let form = form(forms, food, other)?;
    let likeness = if same_kind {
        SAME_KIND + (WHOLE - SAME_KIND) * names_alike(food, other) / WHOLE
    } else {
        NEAR_KIND
    };
    let poor = i32::from(other.poor.saturating_sub(food.poor));
    let brand = i32::from(other.branded && !food.branded) * BRANDED;
    let thing = i32::from(food.things != other.things) * OTHER_THING;
    let body =
        bodies_apart(food, other).map_or(0, |apart| ((apart - LIKE_BODY).max(0.0) * BODY) as i32);
    let staple = i32::from(other.staple) * STAPLE;
    Some(likeness * LIKENESS / WHOLE - form - thing - poor * POOR - brand - body + staple)
}

/// A fit and a gain in one number.
pub(super) fn score(fit: i32, gain: i32) -> i32 {
    fit + gain * GAIN / WHOLE
}
