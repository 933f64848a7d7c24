//! The search: look, choose, check, cut off, and explain where nothing passes.
//!
//! It is taken in steps of the caller's size and reads no clock, so that the
//! same week gives the same answer everywhere, and a page can show progress and
//! stop it between two steps.

use super::ask::Ask;
use super::build::{build, cost, exclusions};
use super::candidate::Candidate;
use super::change::WeekChange;
use super::conflict::Conflict;
use super::demand::{Broken, standings};
use super::gather::{Job, jobs, look};
use super::ground::{Ground, Tools};
use super::hunt::{Hunt, Hunted, Pool};
use super::model::Model;
use super::outcome::{Doing, Effect, Outcome, Plan, PlannedChange, Progress, Proof};
use super::solve::Chosen;
use super::steps::{Steps, Way};
use crate::allergens::{Allergen, Presence};
use crate::book::Book;
use crate::reference::RecipeStudy;
use crate::tables::TableError;
use crate::week::{WeekError, WeekId};
use std::fmt;

/// Why a search cannot begin.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum MendError {
    /// The book has no such week.
    NoWeek(WeekId),
    /// The week cannot be studied.
    Week(WeekError),
    /// The table of steps is damaged.
    Table(TableError),
}

impl fmt::Display for MendError {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NoWeek(id) => write!(
                out,
                "the book has no week \"{}\": name one of its weeks",
                id.0
            ),
            Self::Week(error) => error.fmt(out),
            Self::Table(error) => error.fmt(out),
        }
    }
}

impl std::error::Error for MendError {}

/// A search for the fewest changes that bring a week inside its limits.
#[derive(Debug)]
pub struct Search {
    ground: Ground,
    jobs: Vec<Job>,
    looked: usize,
    candidates: Vec<Candidate>,
    state: State,
}

#[derive(Debug)]
enum State {
    Looking,
    Choosing(Box<Choosing>),
    Explaining(Box<Pool>, Box<Conflict>),
    Done(Option<Box<Pool>>, Box<Outcome>),
}

/// The search for the fewest, while it goes on.
#[derive(Debug)]
struct Choosing {
    pool: Pool,
    hunt: Hunt,
}

impl Search {
    /// A search over everything that could help a week of a book.
    ///
    /// # Errors
    /// When the book has no such week, or it cannot be studied.
    pub fn new(tools: Tools<'_>, book: &Book, week: &WeekId, ask: Ask) -> Result<Self, MendError> {
        let ground = ground(tools, book, week, ask)?;
        let jobs = jobs(&ground, tools);
        Ok(Self::on(ground, jobs))
    }

    /// A search over these changes alone. Those that do not fit the book, and
    /// those of a recipe without totals, are left out.
    ///
    /// # Errors
    /// As [`Self::new`].
    pub fn over(
        tools: Tools<'_>,
        book: &Book,
        week: &WeekId,
        ask: Ask,
        changes: Vec<WeekChange>,
    ) -> Result<Self, MendError> {
        let mut search = Self::on(ground(tools, book, week, ask)?, Vec::new());
        for change in changes {
            let departure = search.departure(&change);
            if let WeekChange::Choice { becomes, .. } = &change {
                let becomes = becomes.clone();
                if search.ground.study(tools, &becomes).is_some() {
                    let candidate = Candidate::of_choice(change, departure);
                    search.candidates.push(candidate);
                }
            } else {
                let ground = &search.ground;
                let candidate = Candidate::of_recipe(ground, tools, change, departure, None);
                search.candidates.extend(candidate);
            }
        }
        Ok(search)
    }

    fn on(ground: Ground, jobs: Vec<Job>) -> Self {
        let state = if ground.unmet().next().is_none() {
            State::Done(None, Box::new(Outcome::NothingToMend))
        } else {
            State::Looking
        };
        Self {
            ground,
            jobs,
            looked: 0,
            candidates: Vec::new(),
            state,
        }
    }

    fn departure(&self, change: &WeekChange) -> u16 {
        use super::change::LineWay;
        use crate::swaps::Change;
        let steps = &self.ground.steps;
        let stepped = |way, share| {
            let mut of = steps.of(way);
            of.find(|(step, _)| *step == share)
                .map_or(0, |(_, far)| far)
        };
        match change {
            WeekChange::Choice { .. } => steps.departure(Way::Choice),
            WeekChange::Portion { share, .. } => stepped(Way::Portion, *share),
            WeekChange::Line { way, .. } => match way {
                LineWay::Amount { share } => stepped(Way::Amount, *share),
                LineWay::Swap { change } => steps.departure(match change {
                    Change::Food { .. } => Way::Food,
                    Change::Half { .. } => Way::Half,
                    Change::Move { .. } => Way::Move,
                }),
            },
        }
    }

    /// Works on: a piece of looking, or some nodes of the solver and the check
    /// of what it found.
    pub fn step(&mut self, tools: Tools<'_>) -> Progress {
        let placeholder = State::Done(None, Box::new(Outcome::NotFound { stopped: false }));
        let state = std::mem::replace(&mut self.state, placeholder);
        self.state = match state {
            State::Looking => self.look_on(tools),
            State::Choosing(choosing) => self.choose_on(tools, choosing),
            State::Explaining(pool, conflict) => self.explain_on(tools, pool, conflict),
            done @ State::Done(..) => done,
        };
        self.progress()
    }

    fn look_on(&mut self, tools: Tools<'_>) -> State {
        if let Some(job) = self.jobs.get(self.looked) {
            let found = look(&mut self.ground, tools, job);
            self.candidates.extend(found);
            self.looked += 1;
            return State::Looking;
        }
        let model = build(&self.ground, tools, &self.candidates);
        let pool = Pool::new(&self.ground, &self.candidates, model);
        let hunt = Hunt::for_least(&pool, pool.all());
        State::Choosing(Box::new(Choosing { pool, hunt }))
    }

    #[allow(
        clippy::boxed_local,
        reason = "its state keeps it boxed, for it is large where pointers are"
    )]
    fn choose_on(&mut self, tools: Tools<'_>, choosing: Box<Choosing>) -> State {
        let Choosing { mut pool, mut hunt } = *choosing;
        let check = |chosen: &[usize]| self.broken_by(tools, chosen);
        match hunt.step(&mut pool, &check) {
            Hunted::Going => State::Choosing(Box::new(Choosing { pool, hunt })),
            Hunted::Found(chosen) => self.mended(tools, pool, &chosen, Proof::Least),
            Hunted::None => {
                let conflict = Conflict::new(&pool);
                State::Explaining(Box::new(pool), Box::new(conflict))
            }
            Hunted::GaveUp => self.best_so_far(tools, pool, false),
        }
    }

    fn explain_on(
        &mut self,
        tools: Tools<'_>,
        mut pool: Box<Pool>,
        mut conflict: Box<Conflict>,
    ) -> State {
        use super::conflict::Explained;
        let check = |chosen: &[usize]| self.broken_by(tools, chosen);
        match conflict.step(&mut pool, &check) {
            Explained::Going => State::Explaining(pool, conflict),
            Explained::NotImpossible(Some(chosen)) => {
                let proof = Proof::AtMostMore {
                    changes: u32::try_from(chosen.len()).unwrap_or(u32::MAX),
                };
                self.mended(tools, *pool, &chosen, proof)
            }
            Explained::NotImpossible(None) => self.best_so_far(tools, *pool, false),
            Explained::Because { demands, smallest } => {
                let standing = |at: &usize| self.ground.demands.0[*at].now.clone();
                let because = demands.iter().map(standing).collect();
                let outcome = Outcome::Impossible { because, smallest };
                State::Done(Some(pool), Box::new(outcome))
            }
        }
    }

    /// Stops the search: what was found so far is the answer.
    pub fn stop(&mut self, tools: Tools<'_>) {
        let placeholder = State::Done(None, Box::new(Outcome::NotFound { stopped: true }));
        let state = std::mem::replace(&mut self.state, placeholder);
        self.state = match state {
            State::Choosing(choosing) => self.best_so_far(tools, choosing.pool, true),
            State::Explaining(pool, _) => self.best_so_far(tools, *pool, true),
            State::Looking => State::Done(None, Box::new(Outcome::NotFound { stopped: true })),
            done @ State::Done(..) => done,
        };
    }

    fn best_so_far(&self, tools: Tools<'_>, pool: Pool, stopped: bool) -> State {
        match pool.best.clone() {
            Some(Chosen { columns, .. }) => {
                let more = columns.len() - pool.least_changes().min(columns.len());
                let proof = Proof::AtMostMore {
                    changes: u32::try_from(more).unwrap_or(u32::MAX),
                };
                self.mended(tools, pool, &columns, proof)
            }
            None => State::Done(
                Some(Box::new(pool)),
                Box::new(Outcome::NotFound { stopped }),
            ),
        }
    }

    fn those(&self, chosen: &[usize]) -> Vec<&Candidate> {
        chosen.iter().map(|at| &self.candidates[*at]).collect()
    }

    /// The demands that the week breaks with these candidates; nothing where it
    /// cannot be studied.
    fn broken_by(&self, tools: Tools<'_>, chosen: &[usize]) -> Option<Vec<Broken>> {
        let study = self.ground.study_with(tools, &self.those(chosen)).ok()?;
        Some(self.ground.demands.broken(&study))
    }

    fn mended(&self, tools: Tools<'_>, pool: Pool, chosen: &[usize], proof: Proof) -> State {
        let after = self.ground.study_with(tools, &self.those(chosen));
        let outcome = match after {
            Ok(after) => Outcome::Mended {
                plan: Plan {
                    changes: chosen.iter().map(|at| self.told(tools, *at)).collect(),
                    after: standings(&after),
                },
                proof,
            },
            Err(_) => Outcome::NotFound { stopped: false },
        };
        State::Done(Some(Box::new(pool)), Box::new(outcome))
    }

    /// A change with what it does when it is made alone.
    fn told(&self, tools: Tools<'_>, at: usize) -> PlannedChange {
        let candidate = &self.candidates[at];
        let alone = self.ground.study_with(tools, &[candidate]);
        let after = alone.map(|study| standings(&study)).unwrap_or_default();
        let effects = self.ground.demands.0.iter().filter_map(|demand| {
            let same = after
                .iter()
                .find(|one| one.requirement == demand.now.requirement);
            let after = same.filter(|after| after.figure != demand.now.figure)?;
            Some(Effect {
                before: demand.now.clone(),
                after: after.clone(),
            })
        });
        PlannedChange {
            change: candidate.change.clone(),
            departure: candidate.departure,
            effects: effects.collect(),
            allergens: self.new_allergens(candidate),
            cost: cost(&self.ground, candidate),
        }
    }

    fn new_allergens(&self, candidate: &Candidate) -> Vec<Allergen> {
        let studies = &self.ground.studies;
        let pair = match &candidate.change {
            WeekChange::Choice { was, becomes, .. } => (studies.get(was), studies.get(becomes)),
            WeekChange::Line { recipe, .. } | WeekChange::Portion { recipe, .. } => {
                (studies.get(recipe), candidate.variant(recipe))
            }
        };
        let presence = |study: Option<&RecipeStudy>, allergen| {
            let found = study.into_iter().flat_map(|study| &study.allergens);
            let mut found = found.filter(|one| one.finding.allergen == allergen);
            found
                .next()
                .map_or(Presence::Unknown, |one| one.finding.presence)
        };
        crate::allergens::ALLERGENS
            .into_iter()
            .filter(|allergen| presence(pair.1, *allergen) > presence(pair.0, *allergen))
            .collect()
    }

    /// How far it has come.
    pub fn progress(&self) -> Progress {
        let (doing, pool) = match &self.state {
            State::Looking => (Doing::Looking, None),
            State::Choosing(choosing) => (Doing::Choosing, Some(&choosing.pool)),
            State::Explaining(pool, _) => (Doing::Explaining, Some(&**pool)),
            State::Done(pool, _) => (Doing::Done, pool.as_deref()),
        };
        let count = |number: usize| u32::try_from(number).unwrap_or(u32::MAX);
        Progress {
            doing,
            looked: self.looked,
            to_look: self.jobs.len(),
            changes: self.candidates.len(),
            checked: pool.map_or(0, |pool| pool.checked),
            refused: pool.map_or(0, |pool| pool.refused),
            best: pool
                .and_then(|pool| pool.best.as_ref())
                .map(|best| count(best.columns.len())),
            least: pool.map_or(0, |pool| count(pool.least_changes())),
        }
    }

    /// How it ended, once it has.
    pub fn outcome(&self) -> Option<&Outcome> {
        match &self.state {
            State::Done(_, outcome) => Some(outcome),
            _ => None,
        }
    }

    /// Goes on to the end.
    pub fn finish(&mut self, tools: Tools<'_>) -> &Outcome {
        while self.outcome().is_none() {
            self.step(tools);
        }
        match &self.state {
            State::Done(_, outcome) => outcome,
            _ => unreachable!("the loop ends when the search has"),
        }
    }

    /// The changes that are looked at, in the order of the model's columns.
    pub fn changes(&self) -> Vec<&WeekChange> {
        let all = self.candidates.iter();
        all.map(|candidate| &candidate.change).collect()
    }

    /// Whether a plan may have these changes, by their places in
    /// [`Self::changes`], beside each other.
    pub fn may_go_together(&self, chosen: &[usize]) -> bool {
        let groups = exclusions(&self.ground, &self.candidates);
        groups
            .iter()
            .all(|(_, group)| group.iter().filter(|at| chosen.contains(at)).count() <= 1)
    }

    /// The model with every cut so far, once there is one.
    pub fn model(&self) -> Option<&Model> {
        match &self.state {
            State::Looking => None,
            State::Choosing(choosing) => Some(&choosing.pool.model),
            State::Explaining(pool, _) => Some(&pool.model),
            State::Done(pool, _) => pool.as_ref().map(|pool| &pool.model),
        }
    }
}

fn ground(tools: Tools<'_>, book: &Book, week: &WeekId, ask: Ask) -> Result<Ground, MendError> {
    let steps = Steps::committed().map_err(MendError::Table)?;
    let ground = Ground::new(tools, book.clone(), week, ask, steps).map_err(MendError::Week)?;
    ground.ok_or_else(|| MendError::NoWeek(week.clone()))
}
