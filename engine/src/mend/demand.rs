//! Requirements as a plan must keep them, and the exact check that it does.

use crate::exact::{Bounds, Digits};
use crate::findings::Verdict;
use crate::foods::NutrientId;
use crate::reference::{SureFinding, WeekStudy};
use crate::rules::{Bound, DietarySpecification};
use crate::week::{Date, Service};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// A requirement by what tells it from all others of its week.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Requirement {
    /// Whose meal.
    pub service: Service,
    /// The day; nothing for a requirement on the week or the average meal.
    pub date: Option<Date>,
    /// What is asked, in the words of its table.
    pub words: String,
    /// The nutrient, for a requirement on the average meal.
    pub nutrient: Option<NutrientId>,
    /// On which side of the limit to be.
    pub bound: Bound,
    /// The limit, in `unit`.
    pub limit: Decimal,
    /// Unit of limit and figure.
    pub unit: String,
    /// Which of several that are alike in all of this.
    pub nth: usize,
}

/// How a week stands with one requirement.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "camelCase")]
pub struct Standing {
    /// Which requirement.
    pub requirement: Requirement,
    /// The figure, or what bounds it; nothing where there is none.
    pub figure: Option<Bounds>,
    /// Decimal places that show on which side of the limit it lies.
    pub digits: Digits,
    /// Met, missed or unknown.
    pub verdict: Verdict,
    /// Standard uncertainty of the figure, where it is known.
    pub uncertainty: Option<Decimal>,
}

/// How a week stands with everything that is required of it.
pub fn standings(study: &WeekStudy) -> Vec<Standing> {
    let mut all: Vec<Standing> = Vec::new();
    for service in &study.services {
        all.extend(service.findings.iter().map(of_average));
        all.extend(service.pattern.iter().map(|found| Standing {
            requirement: Requirement {
                service: found.service.clone(),
                date: found.date,
                words: found.rule.words.clone(),
                nutrient: None,
                bound: found.rule.bound,
                limit: found.rule.limit,
                unit: found.rule.unit.clone(),
                nth: 0,
            },
            figure: Some(found.figure),
            digits: found.digits,
            verdict: found.verdict,
            uncertainty: None,
        }));
    }
    for at in 0..all.len() {
        let (before, rest) = all.split_at_mut(at);
        let own = &mut rest[0].requirement;
        own.nth = before
            .iter()
            .filter(|other| other.requirement.is_like(own))
            .count();
    }
    all
}

fn of_average(sure: &SureFinding) -> Standing {
    let found = &sure.finding;
    let figure = found.figure.map(|low| Bounds {
        low,
        high: found.complete.then_some(low),
    });
    Standing {
        requirement: Requirement {
            service: found.service.clone(),
            date: None,
            words: found.rule.words.clone(),
            nutrient: Some(found.rule.nutrient),
            bound: found.rule.bound,
            limit: found.rule.limit,
            unit: found.rule.unit.clone(),
            nth: 0,
        },
        figure,
        digits: found.digits,
        verdict: found.verdict,
        uncertainty: sure.uncertainty.map(|uncertainty| uncertainty.standard),
    }
}

impl Requirement {
    /// Alike in all but `nth`.
    fn is_like(&self, other: &Self) -> bool {
        Self {
            nth: other.nth,
            ..self.clone()
        } == *other
    }
}

/// What a plan owes to one requirement.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) enum Owed {
    /// To keep it, by at least this much in its unit.
    Kept {
        /// The margin.
        margin: Decimal,
    },
    /// Not to break it: missing values leave open whether it is kept now.
    NotBroken,
}

/// One requirement with what a plan owes to it.
#[derive(Debug, Clone)]
pub(super) struct Demand {
    /// How the week stands with it.
    pub now: Standing,
    /// What a plan owes.
    pub owed: Owed,
    /// The rule, for a requirement on the average meal.
    pub of_average: Option<DietarySpecification>,
}

/// All that a plan owes.
#[derive(Debug, Clone)]
pub(super) struct Demands(pub Vec<Demand>);

/// A demand by its place; nothing for a requirement that a plan breaks and
/// that the week as it stands does not have.
pub(super) type Broken = Option<usize>;

impl Demands {
    /// What is owed for a week that stands like this. What is met or missed
    /// must be met, averages by so many standard uncertainties; what is
    /// unknown must not become missed.
    pub fn new(study: &WeekStudy, margin: u8) -> Self {
        let rules = study.services.iter().flat_map(|service| {
            let averages = service.findings.iter();
            let averages = averages.map(|sure| Some(sure.finding.rule.clone()));
            averages.chain(service.pattern.iter().map(|_| None))
        });
        let demand = |(now, of_average): (Standing, Option<DietarySpecification>)| {
            let times = Decimal::from(margin);
            let owed = match now.verdict {
                Verdict::Unknown => Owed::NotBroken,
                Verdict::Met | Verdict::Missed => Owed::Kept {
                    margin: now.uncertainty.unwrap_or_default() * times,
                },
            };
            Demand {
                now,
                owed,
                of_average,
            }
        };
        Self(
            standings(study)
                .into_iter()
                .zip(rules)
                .map(demand)
                .collect(),
        )
    }

    /// The demands that a week breaks.
    pub fn broken(&self, study: &WeekStudy) -> Vec<Broken> {
        let mut broken = Vec::new();
        for standing in standings(study) {
            let known = self
                .0
                .iter()
                .position(|demand| demand.now.requirement == standing.requirement);
            let kept = match known {
                Some(at) => self.0[at].kept_by(&standing),
                None => standing.verdict != Verdict::Missed,
            };
            if !kept {
                broken.push(known);
            }
        }
        broken
    }
}

impl Demand {
    /// Whether a week that stands like this keeps it.
    pub fn kept_by(&self, standing: &Standing) -> bool {
        match &self.owed {
            Owed::NotBroken => standing.verdict != Verdict::Missed,
            Owed::Kept { margin } => {
                let (bound, limit) = (standing.requirement.bound, standing.requirement.limit);
                let inside = |figure: &Bounds| match bound {
                    Bound::AtLeast => bound.holds(figure.low - margin, limit),
                    Bound::AtMost | Bound::Below => bound.holds(figure.low + margin, limit),
                };
                standing.verdict == Verdict::Met && standing.figure.as_ref().is_none_or(inside)
            }
        }
    }

    /// Whether a plan must keep it.
    pub fn is_owed(&self) -> bool {
        matches!(self.owed, Owed::Kept { .. })
    }

    /// Whether a plan must reach its limit from below.
    pub fn owes_a_minimum(&self) -> bool {
        self.is_owed() && self.now.requirement.bound == Bound::AtLeast
    }

    /// Whether the week as it stands keeps it.
    pub fn is_kept(&self) -> bool {
        self.kept_by(&self.now)
    }

    /// The limit, less or more the margin.
    pub fn aim(&self) -> Decimal {
        let limit = self.now.requirement.limit;
        match (&self.owed, self.now.requirement.bound) {
            (Owed::NotBroken, _) => limit,
            (Owed::Kept { margin }, Bound::AtLeast) => limit + margin,
            (Owed::Kept { margin }, Bound::AtMost | Bound::Below) => limit - margin,
        }
    }
}
