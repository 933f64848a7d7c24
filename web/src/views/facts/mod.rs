//! The Nutrition Facts panel of a recipe.

mod also;
mod claims;
mod linear;
mod options;
mod panel;
mod words;

use crate::components::{Help, Topic};
use crate::language::of_table;
use crate::named;
use crate::page::{use_page, use_title};
use crate::route::Route;
use crate::state::Action;
use crate::views::recipe::sentence;
use crate::words::title_or_untitled;
use claims::Claims;
use engine::book::RecipeLabel;
use engine::label::{PanelOptions, nutrition_facts};
use engine::recipe::RecipeId;
use options::OptionsField;
use panel::Panel;
use yew::prelude::*;

/// Which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct FactsViewProps {
    /// The recipe.
    pub id: RecipeId,
}

/// The view.
#[component]
pub fn FactsView(props: &FactsViewProps) -> Html {
    let page = use_page();
    let title = page
        .contents()
        .recipe(&props.id)
        .map(|recipe| recipe.title.as_str());
    use_title(&words::title(&title_or_untitled(title.unwrap_or_default())));
    let Some(recipe) = page.contents().recipe(&props.id) else {
        return crate::views::recipe::not_in_book(&props.id);
    };
    let study = page.tables.study(recipe, page.contents());
    let back = html! {
        <p class="back"><a href={Route::Recipe(props.id.clone()).fragment()}>
            { words::back(&title_or_untitled(&recipe.title)) }
        </a></p>
    };
    let analysis = match &study.analysis {
        Ok(analysis) => analysis,
        Err(problem) => {
            return html! {<>
                { back }
                <p class="problem" role="alert">{ sentence(&named::study(problem)) }</p>
            </>};
        }
    };
    let label = page.contents().label(&props.id);
    let all = PanelOptions {
        serving_words: recipe.serving_words.clone(),
        ..label.panel.clone()
    };
    let panel = nutrition_facts(analysis, &page.tables.reference.label, &all);
    let on_label = {
        let page = page.clone();
        Callback::from(move |label| page.act(Action::Label(label)))
    };
    let on_change = {
        let label = label.clone();
        on_label.reform(move |panel| RecipeLabel {
            panel,
            ..label.clone()
        })
    };
    html! {
        <div class="facts-view">
            { back }
            <h1>{ words::title(&title_or_untitled(&recipe.title)) }</h1>
            <div class="facts-columns">
                <Panel panel={panel.clone()} />
                <div class="facts-beside">
                    <OptionsField options={label.panel.clone()} {on_change} />
                    <section aria-labelledby="facts-notes">
                        <h2 id="facts-notes">{ words::NOTES }</h2>
                        <p class="helps"><Help topic={Topic::Panel} /></p>
                        <p class="hint">{ words::IN_ENGLISH }</p>
                        <ul>
                            { for panel.problems.iter().map(|problem| html! {
                                <li class="problem">{ named::panel(problem) }</li>
                            }) }
                            if !panel.complete { <li>{ words::INCOMPLETE }</li> }
                            { for panel.notes.iter().map(|note| html! { <li>{ of_table(&note.words) }</li> }) }
                        </ul>
                        <button type="button" id="print" onclick={Callback::from(|_| {
                            // Printing has no outcome to tell.
                            drop(gloo::utils::window().print());
                        })}>{ words::PRINT }</button>
                    </section>
                    <Claims recipe={recipe.clone()} study={study.clone()} {label} {on_label} />
                </div>
            </div>
        </div>
    }
}
