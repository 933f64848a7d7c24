//! Which verdicts on a week become others with a change of a recipe, and which
//! requirements stay missed.

use crate::findings::Verdict;
use crate::mend::{Requirement, Standing};
use crate::week::Service;
use serde::Serialize;

/// A requirement and the verdicts on it before and after a change.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(rename_all = "camelCase")]
pub struct VerdictChange {
    /// What is required.
    pub requirement: Requirement,
    /// The verdict before; nothing where nothing was required.
    pub before: Option<Verdict>,
    /// The verdict after; nothing where nothing is required any more.
    pub after: Option<Verdict>,
}

impl VerdictChange {
    /// The same change the other way round.
    pub(super) fn reversed(self) -> Self {
        Self {
            requirement: self.requirement,
            before: self.after,
            after: self.before,
        }
    }

    /// Whether somebody who makes the change should know of it: the verdict
    /// becomes another one, or what is missed stays so.
    fn tells(&self) -> bool {
        self.before != self.after || self.after == Some(Verdict::Missed)
    }
}

/// What becomes of the verdicts on the services that a change reaches, in the
/// order in which the week stands; what is required only after comes last. A
/// change may reach a service by its credits alone: another verdict is always
/// told.
pub(super) fn verdict_changes(
    before: &[Standing],
    after: &[Standing],
    is_reached: impl Fn(&Service) -> bool,
) -> Vec<VerdictChange> {
    let verdict = |list: &[Standing], requirement: &Requirement| {
        let found = list.iter().find(|one| one.requirement == *requirement);
        found.map(|one| one.verdict)
    };
    let change = |requirement: &Requirement| VerdictChange {
        requirement: requirement.clone(),
        before: verdict(before, requirement),
        after: verdict(after, requirement),
    };
    let new = after
        .iter()
        .filter(|one| verdict(before, &one.requirement).is_none());
    before
        .iter()
        .chain(new)
        .map(|one| change(&one.requirement))
        .filter(|one| one.before != one.after || is_reached(&one.requirement.service))
        .filter(VerdictChange::tells)
        .collect()
}
