//! Sources, what the page is not, and files.

mod files;
mod incoming;
mod words;

use crate::words::IS_NOT;
use files::Files;
use yew::prelude::*;

/// The view.
#[component]
pub fn About() -> Html {
    html! {
        <div class="about">
            <h1>{ words::TITLE }</h1>
            <p class="lead">{ words::LEAD }</p>
            <Files />
            <section aria-labelledby="is-not">
                <h2 id="is-not">{ words::IS_NOT_HEADING }</h2>
                <p><strong>{ IS_NOT }</strong></p>
                <ul>{ for words::LIMITS.iter().map(|text| html! { <li>{ text }</li> }) }</ul>
            </section>
            <section aria-labelledby="data">
                <h2 id="data">{ words::DATA_HEADING }</h2>
                { for words::DATA.iter().map(|text| html! { <p>{ text }</p> }) }
                <blockquote lang="en">{ words::CITATION }</blockquote>
            </section>
            <section aria-labelledby="figures">
                <h2 id="figures">{ words::FIGURES_HEADING }</h2>
                <dl class="meanings">
                    { for words::FIGURES.iter().map(|(sign, meaning)| html! {
                        <><dt>{ sign }</dt><dd>{ meaning }</dd></>
                    }) }
                </dl>
            </section>
            <section aria-labelledby="privacy">
                <h2 id="privacy">{ words::PRIVACY_HEADING }</h2>
                <p>{ words::PRIVACY }</p>
            </section>
            <section aria-labelledby="languages">
                <h2 id="languages">{ words::LANGUAGES_HEADING }</h2>
                <p>{ words::LANGUAGES }</p>
            </section>
        </div>
    }
}
