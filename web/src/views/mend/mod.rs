//! The fewest changes that mend a week: what is asked, how far the search in
//! its worker has come, and the plan, accepted or declined change by change.

mod form;
mod keep;
mod outcome;
mod plan;
mod said;
mod words;

pub use said::{limit as required_limit, requirement as required};

use crate::page::{Page, focus, use_page};
use crate::worker::{LongWork, News};
use engine::mend::{Ask, Lock, Outcome, Progress, Ways, WeekChange};
use engine::week::Week;
use form::Form;
use outcome::OutcomeView;
use std::rc::Rc;
use yew::prelude::*;

/// Which week.
#[derive(Clone, PartialEq, Properties)]
pub struct MendProps {
    /// The week.
    pub week: Rc<Week>,
}

/// What the planner has said so far.
#[derive(Debug, Clone, PartialEq)]
struct Wishes {
    margin: u8,
    ways: Ways,
    locks: Vec<Lock>,
    declined: Vec<WeekChange>,
    /// Changes that were accepted: they stay.
    made: Vec<WeekChange>,
}

impl Default for Wishes {
    fn default() -> Self {
        let ask = Ask::default();
        Self {
            margin: ask.margin,
            ways: ask.ways,
            locks: Vec::new(),
            declined: Vec::new(),
            made: Vec::new(),
        }
    }
}

/// Where the search stands.
#[derive(Debug, Clone, PartialEq)]
enum Stage {
    /// Not begun.
    Idle,
    /// Going on; nothing is told yet while the tables are opened.
    Going(Option<Progress>),
    /// Ended.
    Ended(Rc<Outcome>, Progress),
    /// Not done.
    Problem(String),
}

/// The search for the fewest changes, below a week's findings.
#[component]
pub fn MendView(props: &MendProps) -> Html {
    let page = use_page();
    let wishes = use_state(Wishes::default);
    let stage = use_state(|| Stage::Idle);
    let work = use_mut_ref(|| None::<LongWork>);
    let find = {
        let (page, week) = (page.clone(), props.week.clone());
        let (stage, work) = (stage.setter(), work.clone());
        Callback::from(move |wishes: Wishes| {
            let told = told(stage.clone(), &work);
            stage.set(Stage::Going(None));
            let book = page.contents().book();
            match LongWork::mend(&book, &week.id, &ask(&page, &week, &wishes), told) {
                Ok(going) => *work.borrow_mut() = Some(going),
                Err(problem) => stage.set(Stage::Problem(problem)),
            }
        })
    };
    let stop = {
        let work = work.clone();
        Callback::from(move |_| {
            if let Some(going) = &*work.borrow() {
                // A worker that cannot be reached has told its problem.
                drop(going.stop());
            }
        })
    };
    let wish = {
        let wishes = wishes.setter();
        Callback::from(move |changed| wishes.set(changed))
    };
    let going = matches!(*stage, Stage::Going(_));
    let onclick = {
        let (find, wishes) = (find.clone(), (*wishes).clone());
        Callback::from(move |_| find.emit(wishes.clone()))
    };
    let again = !matches!(*stage, Stage::Idle);
    html! {
        <section class="mend" aria-labelledby="mend">
            <h2 id="mend" tabindex="-1">{ words::TITLE }</h2>
            <p class="hint">{ words::LEAD }</p>
            <Form week={props.week.clone()} wishes={(*wishes).clone()} wish={wish.clone()} />
            <p class="mend-run">
                if going {
                    <button type="button" id="mend-stop" onclick={stop}>{ words::STOP }</button>
                } else {
                    <button type="button" id="mend-find" class="main" {onclick}>
                        { if again { words::FIND_AGAIN } else { words::FIND } }
                    </button>
                }
            </p>
            { match &*stage {
                Stage::Idle => Html::default(),
                Stage::Going(progress) => waiting(progress.as_ref()),
                Stage::Problem(problem) => html! {
                    <p class="problem" role="alert">{ words::problem(problem) }</p>
                },
                Stage::Ended(outcome, progress) => html! {
                    <OutcomeView week={props.week.clone()} outcome={outcome.clone()}
                        found={progress.changes} wishes={(*wishes).clone()} wish={wish}
                        find={find} />
                },
            } }
        </section>
    }
}

/// Takes what the worker tells to the view.
fn told(
    stage: UseStateSetter<Stage>,
    work: &Rc<std::cell::RefCell<Option<LongWork>>>,
) -> Callback<News> {
    let work = work.clone();
    Callback::from(move |news| match news {
        News::Progress { progress } => stage.set(Stage::Going(Some(progress))),
        News::Outcome { outcome, progress } => {
            stage.set(Stage::Ended(Rc::new(outcome), progress));
            // The worker is let go once its own message has been handled.
            let work = work.clone();
            gloo::timers::callback::Timeout::new(0, move || {
                work.borrow_mut().take();
                focus("mend-outcome");
            })
            .forget();
        }
        News::Problem { message } => stage.set(Stage::Problem(message)),
    })
}

/// What is asked of the engine: the wishes, with what was accepted locked.
fn ask(page: &Page, week: &Week, wishes: &Wishes) -> Ask {
    let mut locks = wishes.locks.clone();
    for change in &wishes.made {
        locks.extend(said::made_locks(page.contents(), week, change));
    }
    Ask {
        margin: wishes.margin,
        ways: wishes.ways,
        locks,
        declined: wishes.declined.clone(),
        ..Ask::default()
    }
}

fn waiting(progress: Option<&Progress>) -> Html {
    let Some(progress) = progress else {
        return html! { <p role="status">{ words::OPENING }</p> };
    };
    let text = words::doing(progress);
    html! {
        <div class="mend-waiting" data-test="mend-progress">
            if progress.looked < progress.to_look {
                <progress aria-label={words::PROGRESS} max={progress.to_look.to_string()}
                    value={progress.looked.to_string()} />
            } else {
                <progress aria-label={words::PROGRESS} />
            }
            <p role="status">{ text }</p>
        </div>
    }
}
