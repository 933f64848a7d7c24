//! One version that is kept, and what can be done with it.

use super::words;
use crate::page::use_page;
use crate::state::{Action, VersionEdit};
use engine::book::Version;
use std::rc::Rc;
use yew::prelude::*;

#[derive(Clone, PartialEq, Properties)]
pub struct KeptVersionProps {
    /// The version.
    pub version: Rc<Version>,
}

/// Its name and day, and two ways on.
#[component]
pub fn KeptVersion(props: &KeptVersionProps) -> Html {
    let page = use_page();
    let version = &props.version;
    let act = |edit: fn(String) -> VersionEdit, told: String| {
        let (page, version) = (page.clone(), version.clone());
        Callback::from(move |_: MouseEvent| {
            let edit = edit(version.name.clone());
            page.act(Action::Version(version.recipe.id.clone(), edit));
            page.tell(told.clone(), true);
        })
    };
    let name = version.name.as_str();
    let go_back = act(VersionEdit::GoBack, words::gone_back(name));
    let remove = act(VersionEdit::Remove, crate::words::taken_out(name));
    // Buttons of the same words are told apart by the version's name.
    let label = |words: String| format!("{words}: {name}");
    html! {
        <li data-test="version" data-version={version.name.clone()}>
            <strong>{ name }</strong>
            if let Some(day) = version.kept_on { <span class="note">{ words::kept_on(day) }</span> }
            <button type="button" data-test="go-back-to" onclick={go_back}
                aria-label={label(words::GO_BACK.to_string())}>{ words::GO_BACK }</button>
            <button type="button" data-test="remove-version" onclick={remove}
                aria-label={label(words::REMOVE.to_string())}>{ words::REMOVE }</button>
        </li>
    }
}
