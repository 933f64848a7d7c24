//! Why a proposal stands where it stands, and what it would do.

use super::AmountBy;
use crate::allergens::Allergen;
use crate::components::Component;
use crate::exact::{Digits, round_half_up};
use crate::foods::NutrientId;
use rust_decimal::Decimal;
use serde::Serialize;
use std::fmt;

/// One reason. Reads as words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase", tag = "kind")]
pub enum Reason {
    /// A goal moves, by exactly this in a serving.
    Moves {
        /// Which nutrient.
        nutrient: NutrientId,
        /// Its name.
        name: String,
        /// Its unit.
        unit: String,
        /// Decimal places of its values.
        digits: Digits,
        /// The change in a serving.
        change: Decimal,
        /// Whether that is the way asked for.
        wanted: bool,
    },
    /// A goal moves by at least this in a serving; how much further is not
    /// known.
    MovesAtLeast {
        /// Which nutrient.
        nutrient: NutrientId,
        /// Its name.
        name: String,
        /// Its unit.
        unit: String,
        /// Decimal places of its values.
        digits: Digits,
        /// The part of the change that is certain.
        change: Decimal,
        /// Whether that is the way asked for.
        wanted: bool,
    },
    /// A value is missing, so that nothing is counted for this goal.
    Unknown {
        /// Which nutrient.
        nutrient: NutrientId,
        /// Its name.
        name: String,
    },
    /// The cost of a serving moves.
    Cost {
        /// By so much, in the office's money.
        change: Decimal,
    },
    /// A price is missing, so that nothing is counted for the cost.
    CostUnknown,
    /// It plays the same part.
    SamePart {
        /// Which part.
        part: String,
    },
    /// It plays a part that can stand for the old one.
    OtherPart {
        /// The old part.
        old: String,
        /// The new part.
        new: String,
    },
    /// It is a variant of the very same food.
    SameFood,
    /// Kitchens name it.
    UsualFood,
    /// How the amount was found.
    Amount {
        /// By what it is kept.
        by: AmountBy,
        /// That was not possible, and the weight was kept instead.
        by_weight_instead: bool,
    },
    /// What a serving credits stays or grows.
    Credit {
        /// Toward which component.
        component: Component,
        /// Before.
        before: Decimal,
        /// After.
        after: Decimal,
    },
    /// The calories of a serving stay in the band.
    Energy {
        /// By how much they move, kcal.
        change: Decimal,
    },
    /// The table of what drains away does not speak of calories.
    EnergyNotCounted,
    /// No allergen is added, as far as words tell.
    NoAllergenAdded,
    /// Nothing points to these allergens any more.
    AllergensGone {
        /// Which.
        allergens: Vec<Allergen>,
    },
    /// What is known of a kitchen move.
    Effect {
        /// In words.
        words: String,
        /// Where that stands.
        source: String,
        /// How sure it is.
        status: String,
    },
}

/// "12 mg less", "12 mg more", "unchanged" where nothing is left when rounded.
fn moved(change: Decimal, digits: Digits, unit: &str) -> String {
    let size = round_half_up(change.abs(), digits).normalize();
    let way = if change < Decimal::ZERO {
        "less"
    } else {
        "more"
    };
    match unit {
        _ if size.is_zero() => "unchanged".to_owned(),
        "" => format!("{size} {way}"),
        unit => format!("{size} {unit} {way}"),
    }
}

impl fmt::Display for Reason {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Moves {
                name,
                unit,
                digits,
                change,
                wanted,
                ..
            } => {
                let but = if *wanted { "" } else { "but " };
                let moved = moved(*change, *digits, unit);
                write!(out, "{but}{name}: {moved} in a serving")
            }
            Self::MovesAtLeast {
                name,
                unit,
                digits,
                change,
                wanted,
                ..
            } => {
                let but = if *wanted { "" } else { "but " };
                let moved = moved(*change, *digits, unit);
                write!(out, "{but}{name}: at least {moved} in a serving")
            }
            Self::Unknown { name, .. } => {
                write!(out, "{name}: unknown, and not counted as better")
            }
            Self::Cost { change } => {
                write!(out, "cost: {} in a serving", moved(*change, Digits(4), ""))
            }
            Self::CostUnknown => out.write_str("a price is missing: the cost is not counted"),
            Self::SamePart { part } => write!(out, "plays the same part: {part}"),
            Self::OtherPart { old, new } => write!(out, "{new} can stand for {old}"),
            Self::SameFood => out.write_str("the same food, made otherwise"),
            Self::UsualFood => out.write_str("a food that kitchens usually have"),
            Self::Amount {
                by_weight_instead: true,
                ..
            } => out.write_str("the same weight, since there is no measure to go by"),
            Self::Amount { by, .. } => out.write_str(match by {
                AmountBy::Volume => "the same volume or number",
                AmountBy::Weight => "the same weight",
                AmountBy::Credit => "as much as credits the same",
            }),
            Self::Credit {
                component,
                before,
                after,
            } => {
                let unit = component.unit();
                if before == after {
                    write!(out, "still credits {after} {unit} of {component}")
                } else {
                    write!(
                        out,
                        "credits {after} {unit} of {component} instead of {before}"
                    )
                }
            }
            Self::Energy { change } => {
                write!(
                    out,
                    "calories: {} in a serving",
                    moved(*change, Digits(0), "")
                )
            }
            Self::EnergyNotCounted => out
                .write_str("calories: what drains away is not counted, so that there may be less"),
            Self::NoAllergenAdded => {
                out.write_str("no allergen is added as far as words tell: read the label")
            }
            Self::AllergensGone { allergens } => {
                let names: Vec<String> = allergens.iter().map(ToString::to_string).collect();
                write!(
                    out,
                    "nothing points to {} any more, which proves nothing: read the label",
                    names.join(", ")
                )
            }
            Self::Effect {
                words,
                source,
                status,
            } => write!(out, "{words} ({source}; {status})"),
        }
    }
}
