//! The book as a file: save it, open one, start anew.

use super::words;
use crate::book_file::{read_book, write_book};
use crate::files::save_text;
use crate::named;
use crate::page::use_page;
use crate::saving::demo_book;
use crate::state::Action;
use engine::book::Book;
use gloo::file::futures::read_as_text;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// The section.
#[component]
pub fn Files() -> Html {
    let page = use_page();
    let problem = use_state(|| None::<String>);
    let open = {
        let page = page.clone();
        move |book: Book, text: String| {
            page.act(Action::Open(book.into()));
            page.tell(text, true);
        }
    };
    let save = {
        let page = page.clone();
        Callback::from(move |_| {
            let name = words::file_name(page.contents().office());
            save_text(&name, &write_book(&page.contents().book()));
        })
    };
    let onchange = {
        let (page, problem) = (page.clone(), problem.clone());
        Callback::from(move |event: Event| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            let Some(file) = input.files().and_then(|files| files.get(0)) else {
                return;
            };
            // The same file can be chosen again once it has been mended.
            input.set_value("");
            let (page, problem) = (page.clone(), problem.clone());
            wasm_bindgen_futures::spawn_local(async move {
                let file = gloo::file::File::from(file);
                let name = file.name();
                let read = match read_as_text(&file).await {
                    Ok(text) => read_book(&text).map_err(|error| named::book_file(&error)),
                    Err(error) => Err(error.to_string()),
                };
                match read {
                    Ok(book) => {
                        problem.set(None);
                        page.act(Action::Open(book.into()));
                        page.tell(words::opened(&name), true);
                    }
                    Err(why) => problem.set(Some(words::not_opened(&name, &why))),
                }
            });
        })
    };
    let empty = {
        let open = open.clone();
        let office = page.contents().office().to_owned();
        Callback::from(move |_| open(Book::empty(&office), words::EMPTIED.to_string()))
    };
    let demo = Callback::from({
        let open = open.clone();
        move |_| open(demo_book(), words::DEMO_OPENED.to_string())
    });
    let oninput = {
        let page = page.clone();
        Callback::from(move |event: InputEvent| {
            let input = event.target_unchecked_into::<HtmlInputElement>();
            page.act(Action::Office(input.value()));
        })
    };
    html! {
        <section aria-labelledby="files">
            <h2 id="files">{ words::FILES_HEADING }</h2>
            <p>{ words::FILES }</p>
            <p class="field">
                <label for="office">{ words::OFFICE }</label>
                <input id="office" type="text" value={page.contents().office().to_owned()} {oninput} />
            </p>
            <div class="ways">
                <button type="button" id="save-file" class="main-way" onclick={save}>
                    { crate::words::SAVE_FILE }
                </button>
                <label class="button" for="open-file">{ words::OPEN }</label>
                <input id="open-file" class="for-readers" type="file"
                    accept="application/json,.json" {onchange} />
                <button type="button" id="empty-book" onclick={empty}>{ words::EMPTY }</button>
                <button type="button" id="demo-book" onclick={demo}>{ words::DEMO }</button>
            </div>
            if let Some(problem) = &*problem {
                <p class="field-problem" role="alert" data-test="file-problem">{ problem }</p>
            }
        </section>
    }
}
