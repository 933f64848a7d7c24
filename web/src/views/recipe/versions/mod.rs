//! Versions of a recipe: kept under names, compared two at a time, and gone
//! back to.

mod keep;
mod kept;
pub mod two;
mod words;

pub use words::WAY;

use super::not_in_book;
use crate::components::Select;
use crate::page::{Page, use_page, use_title};
use crate::route::Route;
use crate::tables::StudiedRecipe;
use crate::words::title_or_untitled;
use engine::recipe::{Recipe, RecipeId};
use keep::KeepIt;
use kept::KeptVersion;
use std::rc::Rc;
use two::{Allergens, Credits, FIGURES, Figures, Lines, Side};
use yew::prelude::*;

/// Of which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct VersionsViewProps {
    /// The recipe.
    pub id: RecipeId,
}

/// A form of the recipe that can be compared.
#[derive(Clone, PartialEq)]
struct Form {
    name: AttrValue,
    recipe: Rc<Recipe>,
}

/// The view.
#[component]
pub fn VersionsView(props: &VersionsViewProps) -> Html {
    let page = use_page();
    match page.contents().recipe(&props.id) {
        Some(recipe) => html! { <Versions recipe={recipe.clone()} /> },
        None => not_in_book(&props.id),
    }
}

#[derive(Clone, PartialEq, Properties)]
struct VersionsProps {
    recipe: Rc<Recipe>,
}

/// The versions, and two of them side by side.
#[component]
fn Versions(props: &VersionsProps) -> Html {
    let page = use_page();
    // The names of what is compared, as far as they were chosen.
    let chosen = use_state(|| [None::<AttrValue>, None]);
    let recipe = &props.recipe;
    let title = title_or_untitled(&recipe.title);
    use_title(&words::title_of(&title));
    let forms = forms(&page, recipe);
    let at = |side: usize, other: usize| {
        let named = chosen[side].as_ref();
        let found = named.and_then(|name| forms.iter().position(|form| form.name == *name));
        found.unwrap_or(other)
    };
    // At first: the form kept last, beside the card as it stands.
    let places = [at(0, forms.len() - 1), at(1, 0)];
    let choose = |side: usize| {
        let (chosen, names) = (chosen.clone(), names(&forms));
        Callback::from(move |at: usize| {
            let mut now = (*chosen).clone();
            now[side] = names.get(at).cloned();
            chosen.set(now);
        })
    };
    let [left, right] = places.map(|at| &forms[at]);
    let key = (left.recipe.clone(), right.recipe.clone());
    let studies = use_memo(
        (key, page.contents().clone()),
        |((left, right), contents)| {
            [left, right].map(|recipe| page.tables.study_form(recipe, contents))
        },
    );
    let side = |form: &Form, study: &StudiedRecipe| Side {
        name: form.name.clone(),
        recipe: form.recipe.clone(),
        study: study.clone(),
    };
    let sides = [side(left, &studies[0]), side(right, &studies[1])];
    let versions: Vec<_> = page.contents().versions_of(&recipe.id).cloned().collect();
    html! {
        <div class="versions">
            <p class="back">
                <a href={Route::Recipe(recipe.id.clone()).fragment()} data-test="back-to-card">
                    { words::back_to(&title) }
                </a>
            </p>
            <h1>{ words::title_of(&title) }</h1>
            <div class="versions-ways">
                <p class="lead">{ words::LEAD }</p>
                <KeepIt recipe={recipe.clone()} />
                if versions.is_empty() {
                    <p class="hint">{ words::NONE }</p>
                } else {
                    <h2>{ words::KEPT }</h2>
                    <ul class="versions-kept">{ for versions.iter().map(|version| html! {
                        <KeptVersion key={version.name.clone()} version={version.clone()} />
                    }) }</ul>
                }
            </div>
            if forms.len() > 1 {
                <section class="versions-two" aria-labelledby="two">
                    <h2 id="two">{ words::SIDE_BY_SIDE }</h2>
                    <p class="versions-choice">
                        <Select id="left-form" data_test="left-form" label={words::LEFT}
                            names={names(&forms)} chosen={Some(places[0])} on_choose={choose(0)} />
                        <Select id="right-form" data_test="right-form" label={words::RIGHT}
                            names={names(&forms)} chosen={Some(places[1])} on_choose={choose(1)} />
                        <button type="button" id="print" onclick={Callback::from(|_| {
                            drop(gloo::utils::window().print());
                        })}>{ words::PRINT }</button>
                    </p>
                    <p class="versions-office">{ page.contents().office().to_owned() }</p>
                    <Lines sides={sides.clone()} />
                    <Figures sides={sides.clone()} nutrients={FIGURES.to_vec()} />
                    <Credits sides={sides.clone()} />
                    <Allergens {sides} />
                </section>
            }
        </div>
    }
}

fn names(forms: &[Form]) -> Vec<AttrValue> {
    forms.iter().map(|form| form.name.clone()).collect()
}

/// The card as it stands, as it was last kept, and the named versions.
fn forms(page: &Page, recipe: &Rc<Recipe>) -> Vec<Form> {
    let contents = page.contents();
    let form = |name: AttrValue, recipe: &Rc<Recipe>| Form {
        name,
        recipe: recipe.clone(),
    };
    let mut forms = vec![form(words::AS_IT_STANDS.into(), recipe)];
    let kept = contents.kept(&recipe.id);
    forms.extend(kept.map(|kept| form(words::AS_LAST_KEPT.into(), kept)));
    for version in contents.versions_of(&recipe.id) {
        let name = words::version(&version.name);
        forms.push(form(name.into(), &Rc::new(version.recipe.clone())));
    }
    forms
}
