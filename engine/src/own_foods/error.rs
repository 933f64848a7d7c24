//! What can be wrong with an own food or an import.

use std::fmt;

/// Why foods could not be taken in; nothing is taken in then.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ImportError {
    /// Where: a line, a food, a field.
    pub place: String,
    /// What is wrong there.
    pub problem: String,
    /// How to mend it.
    pub remedy: String,
}

impl ImportError {
    pub(super) fn new(
        place: impl Into<String>,
        problem: impl Into<String>,
        remedy: impl Into<String>,
    ) -> Self {
        Self {
            place: place.into(),
            problem: problem.into(),
            remedy: remedy.into(),
        }
    }
}

impl fmt::Display for ImportError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}: {}: {}", self.place, self.problem, self.remedy)
    }
}

impl std::error::Error for ImportError {}
