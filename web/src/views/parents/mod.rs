//! The page for families: what a dish or a week holds, in English and Spanish,
//! to read on a phone, to print, and to send as one file.

mod allergens;
mod carbohydrate;
mod dish;
mod file;
mod panel;
mod week;
mod words;

use crate::components::Select;
use crate::files::{plain_name, save_text};
use crate::language::{Language, spoken};
use crate::page::{use_page, use_title};
use crate::route::Route;
use crate::words::title_or_untitled;
use dish::Dish;
use engine::recipe::RecipeId;
use engine::week::WeekId;
use web_sys::HtmlInputElement;
use week::WeekPaper;
use yew::prelude::*;

/// Leads to the page for families.
pub use words::TO_FAMILIES;

/// The element that is printed and saved.
const PAPER: &str = "family-paper";

/// Which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct RecipeForFamiliesProps {
    /// The recipe.
    pub id: RecipeId,
}

/// The page of one dish.
#[component]
pub fn RecipeForFamilies(props: &RecipeForFamiliesProps) -> Html {
    let page = use_page();
    let recipe = page.contents().recipe(&props.id).cloned();
    let title = recipe.as_ref().map_or("", |recipe| recipe.title.as_str());
    let title = title_or_untitled(title);
    use_title(&words::document_title(&title));
    let tongues = use_state(default_tongues);
    let Some(recipe) = recipe else {
        return crate::views::recipe::not_in_book(&props.id);
    };
    let study = page.tables.study(&recipe, page.contents());
    let paper = tongues.iter().map(|tongue| {
        html! {
            <section class="family-tongue" lang={tongue.tag()} key={tongue.tag()}>
                <h1>{ title_or_untitled(&recipe.title) }</h1>
                <p class="family-office">{ page.contents().office().to_owned() }</p>
                <Dish recipe={recipe.clone()} study={study.clone()} tongue={*tongue} />
                { words::ending(*tongue) }
            </section>
        }
    });
    frame(
        (Route::Recipe(props.id.clone()), &title),
        &tongues,
        Html::default(),
        paper.collect(),
    )
}

/// Which week.
#[derive(Clone, PartialEq, Properties)]
pub struct WeekForFamiliesProps {
    /// The week.
    pub id: WeekId,
}

/// The page of one week.
#[component]
pub fn WeekForFamilies(props: &WeekForFamiliesProps) -> Html {
    let page = use_page();
    let week = page.contents().week(&props.id).cloned();
    let title = week.as_ref().map_or("", |week| week.title.as_str());
    let title = title_or_untitled(title);
    use_title(&words::document_title(&title));
    let tongues = use_state(default_tongues);
    let with_panels = use_state(|| true);
    let Some(week) = week else {
        return html! {<>
            <p class="back"><a href={Route::Weeks.fragment()}>
                { crate::views::week::words::ALL_WEEKS }
            </a></p>
            <p class="problem" role="alert">
                { crate::views::week::words::not_in_book(&props.id.0) }
            </p>
        </>};
    };
    let paper = tongues.iter().map(|tongue| {
        html! {
            <section class="family-tongue" lang={tongue.tag()} key={tongue.tag()}>
                <h1>{ title_or_untitled(&week.title) }</h1>
                <p class="family-office">{ page.contents().office().to_owned() }</p>
                <WeekPaper week={week.clone()} tongue={*tongue} with_panels={*with_panels} />
                { words::ending(*tongue) }
            </section>
        }
    });
    frame(
        (Route::Week(props.id.clone()), &title),
        &tongues,
        panels_or_not(&with_panels),
        paper.collect(),
    )
}

/// The choice whether the panels of a week's dishes follow.
fn panels_or_not(with_panels: &UseStateHandle<bool>) -> Html {
    let onchange = {
        let with_panels = with_panels.clone();
        Callback::from(move |event: Event| {
            with_panels.set(event.target_unchecked_into::<HtmlInputElement>().checked());
        })
    };
    html! {
        <span class="check">
            <input id="with-panels" type="checkbox" checked={**with_panels} {onchange} />
            <label for="with-panels">{ words::WITH_PANELS }</label>
        </span>
    }
}

/// Both languages, the one that the page speaks first.
fn default_tongues() -> Vec<Language> {
    let mut tongues = vec![spoken()];
    tongues.extend(
        Language::ALL
            .into_iter()
            .filter(|tongue| *tongue != spoken()),
    );
    tongues
}

/// The way back, the choice of languages, what can be done, and the paper.
fn frame(
    (back, title): (Route, &str),
    tongues: &UseStateHandle<Vec<Language>>,
    more: Html,
    paper: Html,
) -> Html {
    let choices: Vec<Vec<Language>> = [default_tongues()]
        .into_iter()
        .chain(Language::ALL.into_iter().map(|tongue| vec![tongue]))
        .collect();
    let names: Vec<AttrValue> = choices
        .iter()
        .map(|choice| words::tongues(choice))
        .collect();
    let chosen = choices.iter().position(|choice| *choice == **tongues);
    let on_choose = {
        let tongues = tongues.clone();
        Callback::from(move |index: usize| tongues.set(choices[index].clone()))
    };
    let save = {
        let (title, tongues) = (title.to_owned(), tongues.clone());
        Callback::from(move |_: MouseEvent| {
            let first = tongues.first().copied().unwrap_or(Language::English);
            if let Some(text) = file::text_of(PAPER, &title, first) {
                let name = plain_name(&title, "families");
                save_text(&format!("{name}-families.html"), &text);
            }
        })
    };
    html! {
        <div class="families">
            <p class="back"><a href={back.fragment()}>{ words::back(title) }</a></p>
            <section class="ways family-ways" aria-label={words::WAYS}>
                <Select id="family-tongues" label={words::LANGUAGES} {names} {chosen} {on_choose} />
                { more }
                <button type="button" id="print" class="main-way" onclick={Callback::from(|_| {
                    // Printing has no outcome to tell.
                    drop(gloo::utils::window().print());
                })}>{ words::PRINT }</button>
                <button type="button" id="save-page" onclick={save}>{ words::SAVE }</button>
            </section>
            <p class="hint family-hint">{ words::SAVE_HOW }</p>
            <article id={PAPER} class="family">{ paper }</article>
        </div>
    }
}
