//! When the book is stored, and what is told when it cannot be.

use crate::files::save_text;
use crate::page::{DeskState, use_page};
use crate::state::{Action, History, Saved};
use crate::storage::{Found, SaveProblem, Store};
use crate::words;
use engine::book::Book;
use engine::exchange::{read_book, write_book};
use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// How long typing may go on before the book is stored, in milliseconds.
const PAUSE: u32 = 400;

/// The example that a first visit opens on.
const DEMO: &str = include_str!("../demo/book.json");

/// The storage and the book that was in it, or the example.
#[derive(Debug)]
pub struct Opened {
    /// The storage.
    pub store: Rc<Store>,
    /// What was in it.
    pub found: Found,
    /// The book to open with.
    pub saved: Saved,
    /// The steps around it, from an earlier visit.
    pub history: History,
}

/// The example book.
pub fn demo_book() -> Book {
    // The tests read the same text.
    read_book(DEMO).unwrap_or_else(|_| Book::empty(""))
}

/// Reads the storage.
pub fn open_store() -> Opened {
    let (store, found) = Store::open();
    let saved = match &found {
        Found::Book(saved) => (**saved).clone(),
        Found::Nothing | Found::Unreadable { .. } | Found::Refused => demo_book().into(),
    };
    let history = store.history().unwrap_or_default();
    Opened {
        store: Rc::new(store),
        found,
        saved,
        history,
    }
}

/// Whether what is on the desk is stored.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SaveState {
    /// The example, as it came.
    Demo,
    /// All of it.
    Saved,
    /// In a moment.
    Waiting,
    /// It is not.
    Failed(SaveProblem),
}

/// The state of storing and what can be done about it.
#[derive(Clone)]
pub struct Saving {
    /// Whether what is on the desk is stored.
    pub state: SaveState,
    store: Rc<Store>,
    set: UseStateSetter<SaveState>,
}

impl PartialEq for Saving {
    fn eq(&self, other: &Self) -> bool {
        self.state == other.state && Rc::ptr_eq(&self.store, &other.store)
    }
}

/// Stores the book a moment after each change, and at once when the page is
/// put away.
#[hook]
pub fn use_saving(store: Rc<Store>, desk: UseReducerHandle<DeskState>, found: &Found) -> Saving {
    let state = use_state(|| match found {
        Found::Book(_) => SaveState::Saved,
        Found::Nothing => SaveState::Demo,
        Found::Refused => SaveState::Failed(SaveProblem::Refused),
        Found::Unreadable { .. } => SaveState::Failed(SaveProblem::HoldsUnreadable),
    });
    let stored = use_mut_ref(|| desk.0.contents.clone());
    let waiting = use_mut_ref(|| None::<Waiting>);
    use_effect_with(desk.0.contents.clone(), {
        let (state, store, waiting) = (state.clone(), store.clone(), waiting.clone());
        let history = desk.0.history().clone();
        move |contents| {
            let (contents, setter) = (contents.clone(), state.setter());
            // A change that waits is overtaken by this one; what was told before it still holds.
            let before = waiting.take().map(|waiting| waiting.before);
            if *stored.borrow() == contents {
                if let Some(before) = before {
                    setter.set(before);
                }
                return;
            }
            let before = before.unwrap_or(*state);
            setter.set(SaveState::Waiting);
            let slot = waiting.clone();
            let save: Rc<dyn Fn()> = Rc::new(move || {
                let outcome = store.save(&contents, &history);
                if outcome.is_ok() {
                    stored.replace(contents.clone());
                }
                setter.set(outcome.map_or_else(SaveState::Failed, |()| SaveState::Saved));
            });
            waiting.replace(Some(Waiting {
                before,
                save,
                _timer: Timeout::new(PAUSE, move || flush(&slot)),
            }));
        }
    });
    use_effect_with((), move |()| {
        let listener = EventListener::new(&gloo::utils::window(), "pagehide", move |_| {
            flush(&waiting);
        });
        move || drop(listener)
    });
    Saving {
        state: *state,
        store,
        set: state.setter(),
    }
}

/// A change that is stored in a moment.
struct Waiting {
    /// What was told before it.
    before: SaveState,
    save: Rc<dyn Fn()>,
    /// Stores it after the pause, unless it is dropped before.
    _timer: Timeout,
}

fn flush(waiting: &RefCell<Option<Waiting>>) {
    let change = waiting.take();
    if let Some(change) = change {
        (change.save)();
    }
}

/// What is told.
#[derive(Clone, PartialEq, Properties)]
pub struct NoticesProps {
    /// How storing goes.
    pub saving: Saving,
    /// What was in the storage.
    pub found: Found,
}

/// What the user has to know about storing, and the last message.
#[component]
pub fn Notices(props: &NoticesProps) -> Html {
    let page = use_page();
    let told = page.told.clone();
    let close = {
        let told = told.clone();
        Callback::from(move |_| told.set(None))
    };
    let undo = {
        let page = page.clone();
        Callback::from(move |_| {
            page.act(Action::Undo);
            page.told.set(None);
        })
    };
    html! {
        <section id="notices" aria-label={words::NOTICES}>
            if let SaveState::Failed(problem) = props.saving.state {
                <div class="notice notice-problem" role="alert" data-test="save-problem">
                    <p>{ problem_text(problem, &props.found) }</p>
                    <p class="notice-ways"><Ways problem={ProblemProp(problem)}
                        saving={props.saving.clone()} found={props.found.clone()} /></p>
                </div>
            }
            <div role="status">
                if let Some(told) = &*told {
                    <div class="notice" data-test="told">
                        <p>{ &told.text }</p>
                        <p class="notice-ways">
                            if told.can_undo {
                                <button type="button" onclick={undo}>{ words::UNDO }</button>
                            }
                            <button type="button" onclick={close}>{ words::CLOSE }</button>
                        </p>
                    </div>
                }
            </div>
        </section>
    }
}

fn problem_text(problem: SaveProblem, found: &Found) -> String {
    match (problem, found) {
        (SaveProblem::HoldsUnreadable, Found::Unreadable { why, .. }) => words::unreadable(why),
        _ => words::save_problem(problem).to_string(),
    }
}

#[derive(Clone, PartialEq)]
struct ProblemProp(SaveProblem);

#[derive(Clone, PartialEq, Properties)]
struct WaysProps {
    problem: ProblemProp,
    saving: Saving,
    found: Found,
}

/// What can be done about a problem of storing.
#[component]
fn Ways(props: &WaysProps) -> Html {
    let page = use_page();
    let saving = props.saving.clone();
    let save_now = {
        let (page, saving) = (page.clone(), saving.clone());
        move || {
            let outcome = (saving.store).save(page.contents(), page.desk.0.history());
            saving
                .set
                .set(outcome.map_or_else(SaveState::Failed, |()| SaveState::Saved));
        }
    };
    let save_file = {
        let page = page.clone();
        Callback::from(move |_| save_text("book.json", &write_book(&page.contents().book())))
    };
    match props.problem.0 {
        SaveProblem::Refused | SaveProblem::Full => html! {
            <button type="button" onclick={save_file}>{ words::SAVE_FILE }</button>
        },
        SaveProblem::HoldsUnreadable => {
            let save_unreadable = {
                let found = props.found.clone();
                Callback::from(move |_| {
                    if let Found::Unreadable { text, .. } = &found {
                        save_text("unreadable-book.json", text);
                    }
                })
            };
            let put_aside = {
                let store = saving.store.clone();
                Callback::from(move |_| match store.put_unreadable_aside() {
                    Ok(()) => save_now(),
                    Err(problem) => saving.set.set(SaveState::Failed(problem)),
                })
            };
            html! {<>
                <button type="button" id="save-unreadable" onclick={save_unreadable}>
                    { words::SAVE_UNREADABLE }
                </button>
                <button type="button" id="put-aside" onclick={put_aside}>{ words::PUT_ASIDE }</button>
            </>}
        }
        SaveProblem::ChangedElsewhere => {
            let keep_this = {
                let store = saving.store.clone();
                let save_now = save_now.clone();
                Callback::from(move |_| {
                    store.overrule();
                    save_now();
                })
            };
            let take_other = Callback::from(move |_| {
                if let Found::Book(saved) = saving.store.read_again() {
                    page.act(Action::Open(*saved));
                    saving.set.set(SaveState::Saved);
                }
            });
            html! {<>
                <button type="button" id="take-other" onclick={take_other}>{ words::TAKE_OTHER }</button>
                <button type="button" id="keep-this" onclick={keep_this}>{ words::KEEP_THIS }</button>
                <button type="button" onclick={save_file}>{ words::SAVE_FILE }</button>
            </>}
        }
    }
}
