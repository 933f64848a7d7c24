//! The page's frame: opening the tables, the header, the view that the address
//! asks for, the footer.

use crate::components::{FIND_FIELD, Footer, Header, LeftOut, Tour, use_guide};
use crate::evidence::use_evidence;
use crate::keyboard::use_kept_keyboard;
use crate::language::{LanguageChoice, use_language};
use crate::own::{OwnProblems, usable};
use crate::page::{CONTENT, DeskState, Page, Told};
use crate::route::Route;
use crate::saving::{Notices, Opened, open_store, use_saving};
use crate::state::{Contents, Desk};
use crate::storage::Found;
use crate::tables::{self, Tables};
use crate::{views, words};
use engine::book::Book;
use gloo::events::EventListener;
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

/// How far opening the tables has come.
#[derive(Clone)]
enum Opening {
    Going,
    Failed(String),
    Done(Rc<Tables>),
}

/// The page.
#[component]
pub fn App() -> Html {
    let language = use_language();
    let opening = use_state(|| Opening::Going);
    let attempt = use_state(|| 0_u32);
    use_effect_with(*attempt, {
        let opening = opening.clone();
        move |_| {
            opening.set(Opening::Going);
            wasm_bindgen_futures::spawn_local(async move {
                opening.set(match tables::open().await {
                    Ok(tables) => Opening::Done(tables),
                    Err(problem) => Opening::Failed(problem),
                });
            });
        }
    });
    match &*opening {
        Opening::Going => html! {
            <main class="opening"><p role="status">{ words::OPENING }</p></main>
        },
        Opening::Failed(problem) => {
            let again = Callback::from(move |_| attempt.set(*attempt + 1));
            html! {
                <main class="opening">
                    <h1>{ words::NOT_OPENED }</h1>
                    <p role="alert" data-test="tables-problem">{ problem }</p>
                    <p>{ words::NOTHING_LOST }</p>
                    <button type="button" id="retry" onclick={again}>{ words::TRY_AGAIN }</button>
                </main>
            }
        }
        Opening::Done(tables) => {
            html! { <Office tables={TablesProp(tables.clone())} {language} /> }
        }
    }
}

/// The tables as a property: two are the same when they are the same object.
#[derive(Clone)]
struct TablesProp(Rc<Tables>);

impl PartialEq for TablesProp {
    fn eq(&self, other: &Self) -> bool {
        Rc::ptr_eq(&self.0, &other.0)
    }
}

#[derive(Clone, PartialEq, Properties)]
struct OfficeProps {
    tables: TablesProp,
    language: LanguageChoice,
}

/// The opened page: the book from the storage, and everything around it.
#[component]
fn Office(props: &OfficeProps) -> Html {
    let opened = use_memo((), |()| open_store());
    let Opened { store, history, .. } = &*opened;
    let desk = use_reducer({
        let opened = opened.clone();
        move || {
            let (saved, history) = (opened.saved.clone(), opened.history.clone());
            DeskState(Desk::with_history(saved, history))
        }
    });
    let told = use_state(|| {
        let text = words::history_cut(history.cut(), history.steps_back());
        (history.cut() > 0).then_some(Told {
            text,
            can_undo: false,
        })
    });
    let (base, evidence) = use_evidence(&props.tables.0);
    let (tables, own) = use_book_tables(&base, &desk.0.contents);
    let route = use_route();
    let saving = use_saving(store.clone(), desk.clone(), &opened.found);
    let guide = use_guide(opened.found == Found::Nothing);
    let page = Page {
        tables,
        own,
        desk,
        told,
        evidence,
        language: props.language.clone(),
    };
    use_shortcuts(page.clone());
    use_kept_keyboard();
    html! {
        <ContextProvider<Page> context={page}>
            <Header route={route.clone()} saving={saving.state} />
            <Notices {saving} found={opened.found.clone()} />
            <Tour guide={guide.clone()} route={route.clone()} />
            // Drawn anew in another language.
            <main id={CONTENT} tabindex="-1" key={props.language.language.tag()}>
                <LeftOut />
                { view(&route) }
            </main>
            <Footer key={props.language.language.tag()} {guide} />
        </ContextProvider<Page>>
    }
}

fn view(route: &Route) -> Html {
    match route {
        Route::Recipes => html! { <views::recipe::RecipeIndex /> },
        Route::Recipe(id) => {
            html! { <views::recipe::RecipeView id={id.clone()} key={id.0.clone()} /> }
        }
        Route::Swaps(id, line) => {
            // The card stays; a panel opens on it.
            let (id, key) = (id.clone(), id.0.clone());
            html! { <views::recipe::RecipeView {id} swaps={*line} {key} /> }
        }
        Route::Versions(id) => {
            html! { <views::recipe::VersionsView id={id.clone()} key={id.0.clone()} /> }
        }
        Route::Facts(id) => {
            html! { <views::facts::FactsView id={id.clone()} key={id.0.clone()} /> }
        }
        Route::RecipeForFamilies(id) => html! {
            <views::parents::RecipeForFamilies id={id.clone()} key={id.0.clone()} />
        },
        Route::Weeks => html! { <views::week::WeekIndex /> },
        Route::Week(id) => html! { <views::week::WeekView id={id.clone()} key={id.0.clone()} /> },
        Route::WeekForFamilies(id) => html! {
            <views::parents::WeekForFamilies id={id.clone()} key={id.0.clone()} />
        },
        Route::Review(id) => {
            html! { <views::review::ReviewView id={id.clone()} key={id.0.clone()} /> }
        }
        Route::Month(date) => {
            html! { <views::month::MonthView date={*date} key={route.fragment()} /> }
        }
        Route::Kitchen(week, date) => {
            html! { <views::kitchen::KitchenView week={week.clone()} date={*date} key={route.fragment()} /> }
        }
        Route::Buying(week, date) => {
            html! { <views::kitchen::BuyingView week={week.clone()} date={*date} key={route.fragment()} /> }
        }
        Route::Rules(date) => {
            html! { <views::rules::RulesView date={*date} key={route.fragment()} /> }
        }
        Route::Foods => html! { <views::foods::Foods /> },
        Route::Food(id) => html! { <views::foods::FoodView id={*id} key={id.to_string()} /> },
        Route::About => html! { <views::about::About /> },
    }
}

/// The tables with what can be used of the book's own foods, limits and
/// switches, and what cannot.
#[hook]
fn use_book_tables(base: &Rc<Tables>, contents: &Contents) -> (Rc<Tables>, Rc<OwnProblems>) {
    let reference = &base.reference;
    let (part, problems) = &*use_memo(contents.rest.clone(), |rest| {
        let (part, problems) = usable(rest, &reference.label, &reference.meal_patterns);
        (part, Rc::new(problems))
    });
    let tables = use_memo((part.clone(), TablesProp(base.clone())), |(part, base)| {
        let base = &base.0;
        if *part == Book::empty("") {
            return base.clone();
        }
        // What has been found usable piece by piece is usable as a whole.
        let whole = base.reference.for_book(part);
        whole.map_or_else(
            |_| base.clone(),
            |reference| Rc::new(base.with_book(reference)),
        )
    });
    ((*tables).clone(), problems.clone())
}

fn current_route() -> Route {
    let fragment = gloo::utils::window().location().hash();
    Route::from_fragment(&fragment.unwrap_or_default())
}

/// The view that the address asks for, as it changes.
#[hook]
fn use_route() -> Route {
    let route = use_state(current_route);
    use_effect_with((), {
        let route = route.clone();
        move |()| {
            let shown = RefCell::new(current_route());
            let listener = EventListener::new(&gloo::utils::window(), "hashchange", move |_| {
                let next = current_route();
                let before = shown.replace(next.clone());
                let is_same_card = next.card().is_some() && next.card() == before.card();
                // The same view under another address, such as none.
                let is_same = is_same_card || next == before;
                route.set(next);
                if !is_same {
                    // A new view is read from its start.
                    crate::page::focus(CONTENT);
                    gloo::utils::window().scroll_to_with_x_and_y(0.0, 0.0);
                }
            });
            move || drop(listener)
        }
    });
    (*route).clone()
}

/// The field that finds anything by Control and K. Undo and redo by their usual
/// keys, except in fields, which undo typing themselves.
#[hook]
fn use_shortcuts(page: Page) {
    use crate::state::Action;
    use wasm_bindgen::JsCast;
    use web_sys::{Element, EventTarget, KeyboardEvent};

    let in_field = |target: Option<EventTarget>| {
        let tag = target.and_then(|target| target.dyn_into::<Element>().ok());
        tag.is_some_and(|element| matches!(&*element.tag_name(), "INPUT" | "TEXTAREA" | "SELECT"))
    };
    use_effect_with(page, move |page| {
        let page = page.clone();
        let options = gloo::events::EventListenerOptions::enable_prevent_default();
        let document = gloo::utils::document();
        let listener =
            EventListener::new_with_options(&document, "keydown", options, move |event| {
                let Some(key) = event.dyn_ref::<KeyboardEvent>() else {
                    return;
                };
                if !(key.ctrl_key() || key.meta_key()) {
                    return;
                }
                if key.key().eq_ignore_ascii_case("k") && !key.shift_key() {
                    event.prevent_default();
                    crate::page::focus_and_mark(FIND_FIELD);
                    return;
                }
                if in_field(event.target()) {
                    return;
                }
                let action = match (key.key().to_lowercase().as_str(), key.shift_key()) {
                    ("z", false) => Action::Undo,
                    ("z", true) | ("y", _) => Action::Redo,
                    _ => return,
                };
                event.prevent_default();
                page.act(action);
            });
        move || drop(listener)
    });
}
