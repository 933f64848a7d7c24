//! The footer: what the page is not, and whose figures it uses.

use super::tour::{Guide, GuideWay};
use crate::route::Route;
use crate::words;
use yew::prelude::*;

/// What the footer offers.
#[derive(Clone, PartialEq, Properties)]
pub struct FooterProps {
    /// The guided use.
    pub guide: Guide,
}

/// The footer.
#[component]
pub fn Footer(props: &FooterProps) -> Html {
    html! {
        <footer class="page-footer">
            <p data-test="is-not">{ words::IS_NOT } { " " }
                <a href={Route::About.fragment()}>{ words::MORE }</a>
            </p>
            <p>{ words::DATA }</p>
            <GuideWay guide={props.guide.clone()} />
        </footer>
    }
}
