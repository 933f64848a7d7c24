//! Where a figure of a rule stands and how sure it is.

use crate::week::Date;
use serde::{Deserialize, Serialize};

/// The last columns of a rule table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Citation {
    /// First day in force, as remembered: no table here was dated from a copy
    /// of the Federal Register.
    pub from: Date,
    /// Where the rule stands.
    pub paragraph: String,
    /// Where the figure was read.
    pub source: String,
    /// How sure the figure is.
    pub status: Standing,
}

/// How a figure was checked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
pub enum Standing {
    /// Read in the source itself.
    #[serde(rename = "verified")]
    Verified,
    /// Read in a copy or summary that somebody else made.
    #[serde(rename = "verified from a secondary copy")]
    SecondaryCopy,
    /// Remembered; no copy was at hand.
    #[serde(rename = "from memory")]
    FromMemory,
}
