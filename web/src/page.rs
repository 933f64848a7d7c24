//! What every view can reach: the book, the tables, and how to change the
//! book.

use crate::evidence::{EvidenceHandle, EvidenceState};
use crate::language::LanguageChoice;
use crate::own::OwnProblems;
use crate::route::Route;
use crate::state::{Action, Contents, Desk};
use crate::tables::Tables;
use crate::words;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The desk as a reducer of the page.
#[derive(Debug, Clone, PartialEq)]
pub struct DeskState(pub Desk);

impl Reducible for DeskState {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        Rc::new(Self(self.0.reduce(action)))
    }
}

/// A message with a way to take back what it tells.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Told {
    /// The message.
    pub text: String,
    /// Whether it offers to take the last step back.
    pub can_undo: bool,
}

/// What every view can reach.
#[derive(Clone)]
pub struct Page {
    /// The engine's tables.
    pub tables: Rc<Tables>,
    /// What of the book's own foods and limits cannot be used.
    pub own: Rc<OwnProblems>,
    /// The book on the desk.
    pub desk: UseReducerHandle<DeskState>,
    /// The message that is shown.
    pub told: UseStateHandle<Option<Told>>,
    /// The dataset's standard errors.
    pub evidence: EvidenceHandle,
    /// The language that is spoken.
    pub language: LanguageChoice,
}

impl PartialEq for Page {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.tables, &other.tables)
            && self.own == other.own
            && self.desk == other.desk
            && *self.told == *other.told
            && self.evidence == other.evidence
            && self.language.language == other.language.language
    }
}

impl Page {
    /// The book as it stands.
    pub fn contents(&self) -> &Contents {
        &self.desk.0.contents
    }

    /// Changes the book.
    pub fn act(&self, action: Action) {
        self.desk.dispatch(action);
    }

    /// Why it cannot be said how sure figures are, if that was tried.
    pub fn evidence_problem(&self) -> Option<String> {
        match &self.evidence.state {
            EvidenceState::Failed(problem) => Some(problem.clone()),
            EvidenceState::Unasked | EvidenceState::Going | EvidenceState::Done => None,
        }
    }

    /// Tells the user something.
    pub fn tell(&self, text: String, can_undo: bool) {
        self.told.set(Some(Told { text, can_undo }));
    }
}

/// The page's context.
#[hook]
pub fn use_page() -> Page {
    use_context::<Page>().expect("views are drawn inside the page")
}

/// Goes to a view.
pub fn go(route: &Route) {
    // Setting a fragment of this form cannot fail.
    drop(gloo::utils::window().location().set_hash(&route.fragment()));
}

/// Notes in the address what is shown, without leaving the view: loading the
/// page again leads back to it, and the keyboard stays where it is.
pub fn note_address(route: &Route) {
    if let Ok(history) = gloo::utils::window().history() {
        let state = wasm_bindgen::JsValue::NULL;
        // Browsers refuse it only where no page has an address of its own.
        drop(history.replace_state_with_url(&state, "", Some(&route.fragment())));
    }
}

/// Closes a panel by the Escape key.
pub fn on_escape(close: &Callback<()>) -> Callback<KeyboardEvent> {
    let close = close.clone();
    Callback::from(move |event: KeyboardEvent| {
        if event.key() == "Escape" {
            close.emit(());
        }
    })
}

/// Closes a panel by the Escape key, or by Enter in one of its fields of text: who has written what
/// is to be there is done. Not where the field has taken the key itself, or cannot read its text.
pub fn on_escape_or_entered(close: &Callback<()>) -> Callback<KeyboardEvent> {
    let close = close.clone();
    Callback::from(move |event: KeyboardEvent| {
        let is_entered = || event.key() == "Enter" && !event.default_prevented() && in_text(&event);
        if event.key() == "Escape" || is_entered() {
            event.prevent_default();
            close.emit(());
        }
    })
}

/// Whether a key is pressed in a field of text that it can read.
fn in_text(event: &KeyboardEvent) -> bool {
    let field = event.target_dyn_into::<HtmlInputElement>();
    field.is_some_and(|field| {
        field.type_() == "text" && field.get_attribute("aria-invalid").is_none()
    })
}

/// Waits until what was drawn is on the screen.
pub async fn painted() {
    let mut frame = |resolve: js_sys::Function, _| {
        // It fails only without a window.
        drop(gloo::utils::window().request_animation_frame(&resolve));
    };
    drop(wasm_bindgen_futures::JsFuture::from(js_sys::Promise::new(&mut frame)).await);
    gloo::timers::future::TimeoutFuture::new(0).await;
}

/// The view's own part of the page, which takes the keyboard when a view
/// opens or what had it is gone.
pub const CONTENT: &str = "content";

/// Moves the keyboard to an element.
pub fn focus(id: &str) {
    use wasm_bindgen::JsCast;
    let element = gloo::utils::document().get_element_by_id(id);
    if let Some(element) =
        element.and_then(|element| element.dyn_into::<web_sys::HtmlElement>().ok())
    {
        // It fails only for an element that cannot have the focus.
        drop(element.focus());
    }
}

/// Lets a link lead to a part of the same view: the address, which names the
/// view, stays.
pub fn leads_to(id: &'static str) -> Callback<MouseEvent> {
    Callback::from(move |event: MouseEvent| {
        event.prevent_default();
        focus(id);
    })
}

/// Moves the keyboard to a field and marks its text, to be written over.
pub fn focus_and_mark(id: &str) {
    use wasm_bindgen::JsCast;
    focus(id);
    let element = gloo::utils::document().get_element_by_id(id);
    if let Some(field) = element.and_then(|element| element.dyn_into::<HtmlInputElement>().ok()) {
        field.select();
    }
}

/// Names the document after what is shown, as long as it is.
#[hook]
pub fn use_title(title: &str) {
    use_effect_with(title.to_owned(), |title| {
        let document = gloo::utils::document();
        let page = document.title();
        document.set_title(&words::document_title(title, &page));
        move || document.set_title(&page)
    });
}
