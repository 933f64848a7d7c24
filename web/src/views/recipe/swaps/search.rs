//! Looking for proposals: after the page is painted, in pieces, so that no key
//! waits for it. What was found for a question that is no longer asked is
//! dropped.

use super::asked::Asked;
use super::moved::WEEK_NUTRIENTS;
use crate::page::Page;
use crate::state::Contents;
use crate::tables::Tables;
use engine::production::Kitchen;
use engine::recipe::Recipe;
use engine::swaps::{
    LeftOut, Place, Price, Proposal, Proposals, Reach, SwapOptions, SwapProblem, WeekChange, apply,
    propose,
};
use gloo::timers::future::TimeoutFuture;
use std::cell::Cell;
use std::rc::Rc;
use yew::prelude::*;

/// Foods that are proposed at most.
const FOODS: usize = 8;

/// What was found; two are the same when they are one object.
#[derive(Debug, Clone)]
pub struct Found(Rc<Proposals>);

impl PartialEq for Found {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

impl Found {
    /// How many foods are proposed; they come first.
    pub fn foods(&self) -> usize {
        self.0.foods.len()
    }

    /// How many proposals there are.
    pub fn len(&self) -> usize {
        self.foods() + self.0.moves.len()
    }

    /// A proposal by its place among all.
    pub fn get(&self, at: usize) -> Option<&Proposal> {
        let foods = &self.0.foods;
        foods
            .get(at)
            .or_else(|| self.0.moves.get(at.checked_sub(foods.len())?))
    }

    /// What plays the part and is not proposed.
    pub fn left_out(&self) -> LeftOut {
        self.0.left_out
    }
}

/// What a proposal does to each week that the recipe reaches.
pub type Weeks = Rc<Vec<WeekChange>>;

/// How far looking has come.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Search {
    /// What was found last, or why nothing can be.
    pub found: Option<Result<Found, String>>,
    /// Whether that answers another question than the one that is asked.
    pub is_looking: bool,
    /// What the proposals do to the weeks, as far as that is worked out, in
    /// their order.
    pub weeks: Vec<Weeks>,
}

/// A question, with all that its answer depends on.
#[derive(Clone)]
struct Question {
    tables: Rc<Tables>,
    contents: Contents,
    recipe: Rc<Recipe>,
    line: usize,
    asked: Asked,
}

impl PartialEq for Question {
    fn eq(&self, other: &Self) -> bool {
        // What is learned of the values' origin meanwhile changes no figure.
        self.contents == other.contents
            && self.recipe == other.recipe
            && self.line == other.line
            && self.asked == other.asked
    }
}

/// Looks for proposals whenever the question is another one.
#[hook]
pub fn use_search(page: &Page, recipe: &Rc<Recipe>, line: usize, asked: &Asked) -> Search {
    let search = use_state(|| Search {
        is_looking: true,
        ..Search::default()
    });
    let question = Question {
        tables: page.tables.clone(),
        contents: page.contents().clone(),
        recipe: recipe.clone(),
        line,
        asked: asked.clone(),
    };
    let latest = use_mut_ref(Search::default);
    use_effect_with(question, {
        let set = search.setter();
        move |question| {
            let is_asked = Rc::new(Cell::new(true));
            let question = question.clone();
            let tell = {
                let is_asked = is_asked.clone();
                move |change: &dyn Fn(&mut Search)| {
                    if is_asked.get() {
                        change(&mut latest.borrow_mut());
                        set.set(latest.borrow().clone());
                    }
                    is_asked.get()
                }
            };
            tell(&|search| search.is_looking = true);
            wasm_bindgen_futures::spawn_local(async move {
                look(&question, &tell).await;
            });
            move || is_asked.set(false)
        }
    });
    (*search).clone()
}

/// Finds the proposals, then what each does to the weeks. `tell` says whether
/// anybody still asks.
async fn look(question: &Question, tell: &impl Fn(&dyn Fn(&mut Search)) -> bool) {
    crate::page::painted().await;
    if !tell(&|_| ()) {
        return;
    }
    // The first time it is made here, before anything else is done.
    let index = question.tables.swap_index().map(|_| ());
    TimeoutFuture::new(0).await;
    let found = index.and_then(|()| {
        let found = proposals(question);
        found.map_err(super::words::problem)
    });
    let found = found.map(|found| Found(Rc::new(found)));
    let goes_on = tell(&|search| {
        *search = Search {
            found: Some(found.clone()),
            ..Search::default()
        };
    });
    if let (true, Ok(found)) = (goes_on, &found) {
        work_out_weeks(question, found, tell).await;
    }
}

fn proposals(question: &Question) -> Result<Proposals, SwapProblem> {
    let Question {
        tables,
        contents,
        recipe,
        line,
        asked,
    } = question;
    let index = tables.swap_index().map_err(|_| SwapProblem::NoFood)?;
    let study = tables.study(recipe, contents);
    let place = Place {
        book: &contents.book(),
        recipe,
        study: &study,
        line: *line,
    };
    let options = SwapOptions {
        prices: prices(tables, contents),
        ..asked.options.clone()
    };
    let goals = asked.goals();
    propose(&tables.reference, index, &place, &goals, &options, FOODS)
}

/// What the office pays for foods, by its packs.
fn prices(tables: &Tables, contents: &Contents) -> Vec<Price> {
    let nothing_cooked = std::iter::empty();
    let production = &contents.rest.production;
    Kitchen::new(&tables.reference, production, nothing_cooked).swap_prices()
}

/// Whether the office has stated what a pack costs.
pub fn has_prices(contents: &Contents) -> bool {
    let mut packs = contents.rest.production.packs.iter();
    packs.any(|pack| pack.price.is_some())
}

/// One proposal after the other, and a key may be handled between any two.
async fn work_out_weeks(
    question: &Question,
    found: &Found,
    tell: &impl Fn(&dyn Fn(&mut Search)) -> bool,
) {
    let Question {
        tables,
        contents,
        recipe,
        line,
        ..
    } = question;
    let book = contents.book();
    let reach = Reach::new(&tables.reference, &book, &recipe.id, |one| {
        let of_contents = contents.recipe(&one.id).cloned();
        let one = of_contents.unwrap_or_else(|| Rc::new(one.clone()));
        tables.study(&one, contents)
    });
    for at in 0..found.len() {
        TimeoutFuture::new(0).await;
        let Some(proposal) = found.get(at) else {
            return;
        };
        let changed = apply(recipe, *line, proposal);
        let weeks = reach.with(&changed, &WEEK_NUTRIENTS);
        let weeks = Rc::new(weeks);
        if !tell(&|search| search.weeks.push(Rc::clone(&weeks))) {
            return;
        }
    }
}
