//! What can be wrong with an amount, and how to mend it.

use serde::Serialize;
use std::fmt;

/// The largest number that is read as an amount of one line. Beyond it lies a
/// slip of the keyboard, not a kitchen.
pub const LARGEST_AMOUNT: u32 = 1_000_000;

/// Why words that should be an amount are not one. `words` are the offending
/// ones, as typed.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "camelCase")]
pub enum QuantityError {
    /// There are no words at all.
    Nothing,
    /// An amount was read, and these words are left over.
    LeftOver {
        /// As typed.
        words: String,
    },
    /// The words hold no number.
    NoNumber {
        /// As typed.
        words: String,
    },
    /// A fraction with a zero below the line.
    ZeroDenominator {
        /// As typed.
        words: String,
    },
    /// Digits and signs in an order that is no number.
    Malformed {
        /// As typed.
        words: String,
    },
    /// Less than nothing.
    Negative {
        /// As typed.
        words: String,
    },
    /// Exactly nothing.
    Zero {
        /// As typed.
        words: String,
    },
    /// More than [`LARGEST_AMOUNT`].
    TooLarge {
        /// As typed.
        words: String,
    },
    /// More digits than are kept.
    TooFine {
        /// As typed.
        words: String,
    },
    /// Added or subtracted units that do not measure the same thing.
    MixedKinds {
        /// As typed.
        words: String,
    },
}

impl QuantityError {
    /// The offending words, as typed; empty where there are none.
    pub fn words(&self) -> &str {
        match self {
            Self::Nothing => "",
            Self::LeftOver { words }
            | Self::NoNumber { words }
            | Self::ZeroDenominator { words }
            | Self::Malformed { words }
            | Self::Negative { words }
            | Self::Zero { words }
            | Self::TooLarge { words }
            | Self::TooFine { words }
            | Self::MixedKinds { words } => words,
        }
    }

    /// What a person can do about it.
    pub const fn remedy(&self) -> &'static str {
        match self {
            Self::Nothing | Self::NoNumber { .. } => {
                "Write a number and a unit, such as \"1 1/2 cups\" or \"500 g\"."
            }
            Self::LeftOver { .. } => "Write the amount alone, such as \"1 1/2 cups\".",
            Self::ZeroDenominator { .. } => "Write a number above zero below the line, as in 1/2.",
            Self::Malformed { .. } => "Write numbers such as 2, 1/2, 1 1/2, 1.5 or 2-3.",
            Self::Negative { .. } => "Write the amount without a minus sign.",
            Self::Zero { .. } => "Write how much is used, or take the line out.",
            Self::TooLarge { .. } => {
                "Check the number; if it is meant, use a larger unit (kg, lb, gallon)."
            }
            Self::TooFine { .. } => "Write at most 18 digits.",
            Self::MixedKinds { .. } => {
                "Put amounts of different kinds (weight, volume, count) on lines of their own."
            }
        }
    }
}

impl fmt::Display for QuantityError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Nothing => out.write_str("there is no amount"),
            Self::LeftOver { words } => write!(out, "\"{words}\" is not part of an amount"),
            Self::NoNumber { words } => write!(out, "\"{words}\" holds no number"),
            Self::ZeroDenominator { words } => write!(out, "\"{words}\" divides by zero"),
            Self::Malformed { words } => write!(out, "\"{words}\" is not a number"),
            Self::Negative { words } => write!(out, "\"{words}\" is less than nothing"),
            Self::Zero { words } => write!(out, "\"{words}\" is an amount of nothing"),
            Self::TooLarge { words } => {
                write!(out, "\"{words}\" is more than {LARGEST_AMOUNT}")
            }
            Self::TooFine { words } => write!(out, "\"{words}\" has too many digits"),
            Self::MixedKinds { words } => {
                write!(
                    out,
                    "\"{words}\" joins units that do not measure the same thing"
                )
            }
        }
    }
}

impl std::error::Error for QuantityError {}
