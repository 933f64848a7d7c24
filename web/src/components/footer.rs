//! The footer: what the page is not, and whose figures it uses.

use crate::route::Route;
use crate::words;
use yew::prelude::*;

/// The footer.
#[component]
pub fn Footer() -> Html {
    html! {
        <footer class="page-footer">
            <p data-test="is-not">{ words::IS_NOT } { " " }
                <a href={Route::About.fragment()}>{ words::MORE }</a>
            </p>
            <p>{ words::DATA }</p>
        </footer>
    }
}
