//! Three minutes of guided use on the example district: a few steps, each with
//! its place on the page. It holds nobody: the page stays usable beside it, it
//! can be left at any step, and goes on where it was left.

use crate::language::{Say, say};
use crate::page::{CONTENT, Page, focus, go, use_page};
use crate::route::Route;
use crate::saving::demo_book;
use crate::state::{Action, Contents};
use engine::book::Book;
use engine::recipe::RecipeId;
use engine::week::WeekId;
use gloo::storage::{LocalStorage, Storage};
use serde::{Deserialize, Serialize};
use yew::prelude::*;

const KEY: &str = "gramwright.guide";
const HEADING: &str = "guide-heading";

/// How far the guided use has come.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
pub enum Progress {
    /// Offered, not begun.
    Offered,
    /// At a step.
    At(usize),
    /// Left at a step.
    Left(usize),
    /// Gone through, or not wanted.
    Done,
}

/// One step: what to do, and where.
struct Step {
    title: Say,
    text: Say,
    recipe: Option<&'static str>,
    week: Option<&'static str>,
    plain: Option<Route>,
}

impl Step {
    fn route(&self) -> Route {
        let recipe = |id: &str| Route::Recipe(RecipeId(id.to_owned()));
        let week = |id: &str| Route::Week(WeekId(id.to_owned()));
        match (&self.plain, self.recipe, self.week) {
            (Some(route), _, _) => route.clone(),
            (None, Some(id), _) => recipe(id),
            (None, None, id) => id.map_or(Route::Recipes, week),
        }
    }
}

/// The recipe and the week of the example that the steps use.
const CHILI: &str = "beef-and-bean-chili";
const LUNCHES: &str = "lunch-2026-11-30";

/// How many steps there are.
pub const STEPS: usize = 6;

fn steps() -> [Step; STEPS] {
    let at = |title, text, recipe, week, plain| Step {
        title,
        text,
        recipe,
        week,
        plain,
    };
    [
        at(
            Say("guide-book"),
            Say("guide-book-text"),
            None,
            None,
            Some(Route::Recipes),
        ),
        at(
            Say("guide-card"),
            Say("guide-card-text"),
            Some(CHILI),
            None,
            None,
        ),
        at(
            Say("guide-figures"),
            Say("guide-figures-text"),
            Some(CHILI),
            None,
            None,
        ),
        at(
            Say("guide-week"),
            Say("guide-week-text"),
            None,
            Some(LUNCHES),
            None,
        ),
        at(
            Say("guide-find"),
            Say("guide-find-text"),
            None,
            Some(LUNCHES),
            None,
        ),
        at(
            Say("guide-files"),
            Say("guide-files-text"),
            None,
            None,
            Some(Route::About),
        ),
    ]
}

/// The guided use of this page, and how it is moved.
#[derive(Debug, Clone, PartialEq)]
pub struct Guide {
    /// How far it has come.
    pub progress: Progress,
    /// Moves it, and keeps where it is.
    pub set: Callback<Progress>,
}

/// The guided use, as it was left in this browser; offered on a first visit.
#[hook]
pub fn use_guide(is_first_visit: bool) -> Guide {
    let progress = use_state(|| {
        let kept = LocalStorage::get::<Progress>(KEY).ok();
        kept.unwrap_or(match is_first_visit {
            true => Progress::Offered,
            false => Progress::Done,
        })
    });
    let set = {
        let progress = progress.clone();
        Callback::from(move |to: Progress| {
            // Where the browser stores nothing it is offered again next time.
            drop(LocalStorage::set(KEY, to));
            progress.set(to);
        })
    };
    Guide {
        progress: *progress,
        set,
    }
}

/// Whether the book has what the steps lead to.
fn has_example(contents: &Contents) -> bool {
    let recipe = contents.recipe(&RecipeId(CHILI.to_owned()));
    recipe.is_some() && contents.week(&WeekId(LUNCHES.to_owned())).is_some()
}

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct TourProps {
    /// The guided use.
    pub guide: Guide,
    /// The view that is open.
    pub route: Route,
}

/// The panel; nothing while the guide is left or done.
#[component]
pub fn Tour(props: &TourProps) -> Html {
    let page = use_page();
    // A new view takes the keyboard to its start; the next step comes back here.
    let moved = use_mut_ref(|| false);
    use_effect_with((props.route.clone(), props.guide.progress), {
        let moved = moved.clone();
        move |(route, progress)| {
            let Progress::At(step) = progress else {
                // Whoever goes on from here is led to the step.
                *moved.borrow_mut() = true;
                return;
            };
            if *moved.borrow()
                && steps()
                    .get(*step)
                    .is_some_and(|step| step.route() == *route)
            {
                *moved.borrow_mut() = false;
                focus(HEADING);
            }
        }
    });
    let to_step = |step: usize| {
        let (page, set, moved) = (page.clone(), props.guide.set.clone(), moved.clone());
        Callback::from(move |_: MouseEvent| {
            if !has_example(page.contents()) {
                page.act(Action::Open(demo_book().into()));
            }
            *moved.borrow_mut() = true;
            set.emit(Progress::At(step));
            if let Some(step) = steps().get(step) {
                go(&step.route());
            }
        })
    };
    let leave = |progress: Progress| {
        let set = props.guide.set.clone();
        Callback::from(move |_: MouseEvent| {
            set.emit(progress);
            focus(CONTENT);
        })
    };
    let inner = match props.guide.progress {
        Progress::Left(_) | Progress::Done => return Html::default(),
        Progress::Offered => html! {<>
            <h2 id={HEADING} tabindex="-1">{ Say("guide-title") }</h2>
            <p>{ Say("guide-lead") }</p>
            <div class="ways">
                <button type="button" id="guide-begin" class="main-way" onclick={to_step(0)}>
                    { Say("guide-begin") }
                </button>
                <button type="button" id="guide-skip" onclick={leave(Progress::Done)}>{ Say("guide-skip") }</button>
                <button type="button" id="guide-empty" onclick={empty(&page, &props.guide)}>
                    { Say("guide-empty") }
                </button>
            </div>
        </>},
        Progress::At(at) => {
            let steps = steps();
            let Some(step) = steps.get(at) else {
                return Html::default();
            };
            html! {<>
                <h2 id={HEADING} tabindex="-1">
                    <span class="note">{ step_of(at) }</span>{ " " }{ step.title }
                </h2>
                <p data-test="guide-text">{ step.text }</p>
                <div class="ways">
                    if at > 0 {
                        <button type="button" id="guide-back" onclick={to_step(at - 1)}>{ Say("guide-back") }</button>
                    }
                    if at + 1 < STEPS {
                        <button type="button" id="guide-next" class="main-way" onclick={to_step(at + 1)}>
                            { Say("guide-next") }
                        </button>
                        <button type="button" id="guide-leave" onclick={leave(Progress::Left(at))}>
                            { Say("guide-leave") }
                        </button>
                    } else {
                        <button type="button" id="guide-done" class="main-way" onclick={leave(Progress::Done)}>
                            { Say("guide-done") }
                        </button>
                        <button type="button" id="guide-empty" onclick={empty(&page, &props.guide)}>
                            { Say("guide-empty") }
                        </button>
                    }
                </div>
            </>}
        }
    };
    html! {
        <aside class="guide" aria-labelledby={HEADING} data-test="guide">{ inner }</aside>
    }
}

fn step_of(at: usize) -> String {
    say(
        "guide-step",
        &[("step", (at + 1).into()), ("steps", STEPS.into())],
    )
}

/// An empty book of the same office; undo brings the other back.
fn empty(page: &Page, guide: &Guide) -> Callback<MouseEvent> {
    let (page, set) = (page.clone(), guide.set.clone());
    Callback::from(move |_| {
        page.act(Action::Open(Book::empty("").into()));
        page.tell(Say("guide-emptied").to_string(), true);
        set.emit(Progress::Done);
        go(&Route::Recipes);
        focus(CONTENT);
    })
}

/// A way to begin the guided use, or to go on with it.
#[derive(Clone, PartialEq, Properties)]
pub struct GuideWayProps {
    /// The guided use.
    pub guide: Guide,
}

/// The way, in the footer.
#[component]
pub fn GuideWay(props: &GuideWayProps) -> Html {
    let (step, words) = match props.guide.progress {
        Progress::Left(step) => (step, say("guide-go-on", &[("step", (step + 1).into())])),
        Progress::Done => (0, Say("guide-again").to_string()),
        Progress::Offered | Progress::At(_) => return Html::default(),
    };
    let onclick = props.guide.set.reform(move |_: MouseEvent| {
        if let Some(step) = steps().get(step) {
            go(&step.route());
        }
        Progress::At(step)
    });
    html! {
        <button type="button" class="as-text way" id="guide-again" {onclick}>{ words }</button>
    }
}
