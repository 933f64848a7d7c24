//! Keeping the card as it stands under a name.

use super::words;
use crate::page::use_page;
use crate::state::{Action, VersionEdit};
use crate::views::week::today;
use engine::recipe::Recipe;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct KeepItProps {
    /// The card.
    pub recipe: Rc<Recipe>,
}

/// The field for the name, and the button.
#[component]
pub fn KeepIt(props: &KeepItProps) -> Html {
    let page = use_page();
    let name = use_state(String::new);
    // What there is to say of the last try.
    let said = use_state(|| None::<(bool, String)>);
    let oninput = {
        let name = name.clone();
        Callback::from(move |event: InputEvent| {
            name.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let onsubmit = {
        let (page, id) = (page.clone(), props.recipe.id.clone());
        let (name, said) = (name.clone(), said.clone());
        Callback::from(move |event: SubmitEvent| {
            event.prevent_default();
            let wanted = name.trim().to_owned();
            if wanted.is_empty() {
                said.set(Some((false, words::NEEDS_NAME.to_string())));
                return;
            }
            said.set(Some((true, words::kept(&wanted))));
            let on = Some(today());
            let edit = VersionEdit::Keep { name: wanted, on };
            page.act(Action::Version(id.clone(), edit));
            name.set(String::new());
        })
    };
    let problem = (*said).clone().filter(|(is_done, _)| !is_done);
    let done = (*said).clone().filter(|(is_done, _)| *is_done);
    html! {
        <form class="versions-keep" {onsubmit}>
            <label for="version-name">{ words::NAME }</label>
            <input id="version-name" type="text" autocomplete="off" value={(*name).clone()} {oninput}
                placeholder={words::NAME_EXAMPLE} aria-invalid={problem.is_some().then_some("true")} />
            <button type="submit" id="keep-version">{ words::KEEP_IT }</button>
            if let Some((_, problem)) = problem {
                <span class="field-problem" role="alert">{ problem }</span>
            }
            <span role="status" class="note" data-test="version-said">
                { done.map(|(_, text)| text).unwrap_or_default() }
            </span>
        </form>
    }
}
