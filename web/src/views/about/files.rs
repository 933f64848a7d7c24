//! Files: the book as one, recipes for others and from others, and starting
//! anew. Nothing that is opened changes the book before a person says so.

use super::incoming::{Incoming, IncomingFile, look_at};
use super::words;
use crate::components::save_all_recipes;
use crate::files::save_text;
use crate::page::{Page, use_page};
use crate::saving::demo_book;
use crate::state::Action;
use engine::book::Book;
use engine::exchange::write_book;
use gloo::file::futures::read_as_text;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Where the published form of the book's file lies.
const SCHEMA: &str = "book.schema.json";

/// What came of the file that was chosen last.
#[derive(Clone, PartialEq)]
enum Chosen {
    Nothing,
    Problem(String),
    Waiting(IncomingFile),
}

/// The section.
#[component]
pub fn Files() -> Html {
    let page = use_page();
    let chosen = use_state(|| Chosen::Nothing);
    let save = {
        let page = page.clone();
        Callback::from(move |_| {
            let name = words::file_name(page.contents().office());
            save_text(&name, &write_book(&page.contents().book()));
        })
    };
    let put_away = {
        let chosen = chosen.clone();
        Callback::from(move |()| chosen.set(Chosen::Nothing))
    };
    html! {
        <section aria-labelledby="files">
            <h2 id="files">{ words::FILES_HEADING }</h2>
            <p>{ words::FILES }</p>
            { office(&page) }
            <div class="ways">
                <button type="button" id="save-file" class="main-way" onclick={save}>
                    { crate::words::SAVE_FILE }
                </button>
                { opener(&page, &chosen) }
                { anew(&page) }
            </div>
            if let Chosen::Problem(problem) = &*chosen {
                <p class="field-problem" role="alert" data-test="file-problem">{ problem }</p>
            }
            if let Chosen::Waiting(file) = &*chosen {
                <Incoming file={file.clone()} {put_away} />
            }
            <h3>{ super::incoming::words::OTHERS }</h3>
            <p>{ super::incoming::words::OTHERS_HOW }</p>
            { save_all_recipes(&page) }
            <p><a id="schema" href={SCHEMA} download={SCHEMA}>{ super::incoming::words::SCHEMA }</a></p>
        </section>
    }
}

fn office(page: &Page) -> Html {
    let oninput = {
        let page = page.clone();
        Callback::from(move |event: InputEvent| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            page.act(Action::Office(input.value()));
        })
    };
    html! {
        <p class="field">
            <label for="office">{ words::OFFICE }</label>
            <input id="office" type="text" value={page.contents().office().to_owned()} {oninput} />
        </p>
    }
}

/// The field for files. Its file is looked at, and no more.
fn opener(page: &Page, chosen: &UseStateHandle<Chosen>) -> Html {
    let onchange = {
        let (page, chosen) = (page.clone(), chosen.clone());
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            let Some(file) = input.files().and_then(|files| files.get(0)) else {
                return;
            };
            // The same file can be chosen again once it has been mended.
            input.set_value("");
            let (page, chosen) = (page.clone(), chosen.clone());
            wasm_bindgen_futures::spawn_local(async move {
                let file = gloo::file::File::from(file);
                let name = file.name();
                let found = match read_as_text(&file).await {
                    Ok(text) => look_at(&page, &name, &text),
                    Err(error) => Err(error.to_string()),
                };
                chosen.set(match found {
                    Ok(file) => Chosen::Waiting(file),
                    Err(why) => Chosen::Problem(words::not_opened(&name, &why)),
                });
            });
        })
    };
    html! {<>
        <label class="button" for="open-file">{ super::incoming::words::OPEN }</label>
        <input id="open-file" class="for-readers" type="file"
            accept=".json,.jsonld,.csv,application/json,application/ld+json,text/csv" {onchange} />
    </>}
}

fn anew(page: &Page) -> Html {
    let open = |page: &Page, book: Book, text: crate::language::Say| {
        page.act(Action::Open(book.into()));
        page.tell(text.to_string(), true);
    };
    let empty = {
        let page = page.clone();
        Callback::from(move |_| {
            let office = page.contents().office().to_owned();
            open(&page, Book::empty(&office), words::EMPTIED);
        })
    };
    let demo = {
        let page = page.clone();
        Callback::from(move |_| open(&page, demo_book(), words::DEMO_OPENED))
    };
    html! {<>
        <button type="button" id="empty-book" onclick={empty}>{ words::EMPTY }</button>
        <button type="button" id="demo-book" onclick={demo}>{ words::DEMO }</button>
    </>}
}
