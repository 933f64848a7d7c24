//! Ways to save what is shown as a file for others.

use crate::files::{plain_name, save_text};
use crate::language::Say;
use crate::page::{Page, use_page};
use engine::exchange::recipe_ld::Shared;
use engine::exchange::{nutrient_csv, recipe_csv, recipe_ld};
use engine::recipe::Recipe;
use engine::week::Week;
use std::rc::Rc;
use yew::prelude::*;

const SAVE_AS: Say = Say("files-save-as");

/// A button's id, its words, the file's name, and the text.
type Way = (&'static str, Say, String, Rc<dyn Fn() -> Option<String>>);

/// Which recipe.
#[derive(Clone, PartialEq, Properties)]
pub struct SaveRecipeProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
}

/// A recipe as a file.
#[component]
pub fn SaveRecipe(props: &SaveRecipeProps) -> Html {
    let page = use_page();
    let name = plain_name(&props.recipe.title, "recipe");
    let table = {
        let recipe = props.recipe.clone();
        move || Some(recipe_csv::write([&*recipe]))
    };
    let shared = {
        let (page, recipe) = (page.clone(), props.recipe.clone());
        move || Some(as_json_ld(&page, std::slice::from_ref(&recipe)))
    };
    let figures = {
        let recipe = props.recipe.clone();
        move || {
            let study = page.tables.study(&recipe, page.contents());
            let analysis = study.analysis.as_ref().ok()?;
            let foods = &page.tables.reference.foods;
            Some(nutrient_csv::of_recipe(foods, &recipe.title, analysis))
        }
    };
    folded(&[
        (
            "save-recipe-table",
            Say("files-recipe-table"),
            format!("{name}.csv"),
            Rc::new(table),
        ),
        (
            "save-recipe-ld",
            Say("files-recipe-ld"),
            format!("{name}.jsonld"),
            Rc::new(shared),
        ),
        (
            "save-recipe-figures",
            Say("files-recipe-figures"),
            format!("{name}-nutrients.csv"),
            Rc::new(figures),
        ),
    ])
}

/// Which week.
#[derive(Clone, PartialEq, Properties)]
pub struct SaveWeekProps {
    /// The week.
    pub week: Rc<Week>,
}

/// A week's averages as a file.
#[component]
pub fn SaveWeek(props: &SaveWeekProps) -> Html {
    let page = use_page();
    let name = plain_name(&props.week.title, "week");
    let week = props.week.clone();
    let figures = move || {
        let study = page.tables.study_week(&week, page.contents());
        let study = study.as_ref().ok()?;
        let foods = &page.tables.reference.foods;
        Some(nutrient_csv::of_week(foods, &week.title, study))
    };
    folded(&[(
        "save-week-figures",
        Say("files-week-figures"),
        format!("{name}-nutrients.csv"),
        Rc::new(figures),
    )])
}

/// All recipes of the book as files.
pub fn save_all_recipes(page: &Page) -> Html {
    let name = plain_name(page.contents().office(), "office");
    let table = {
        let page = page.clone();
        move || {
            let recipes = page.contents().recipes.iter();
            Some(recipe_csv::write(recipes.map(|recipe| &**recipe)))
        }
    };
    let shared = {
        let page = page.clone();
        move || Some(as_json_ld(&page, &page.contents().recipes))
    };
    html! {
        <div class="ways">
            { button(&(
                "save-recipes-table",
                Say("files-recipes-table"),
                format!("{name}-recipes.csv"),
                Rc::new(table),
            )) }
            { button(&(
                "save-recipes-ld",
                Say("files-recipes-ld"),
                format!("{name}-recipes.jsonld"),
                Rc::new(shared),
            )) }
        </div>
    }
}

fn as_json_ld(page: &Page, recipes: &[Rc<Recipe>]) -> String {
    let studies: Vec<_> = recipes
        .iter()
        .map(|recipe| page.tables.study(recipe, page.contents()))
        .collect();
    let shared = recipes.iter().zip(&studies).map(|(recipe, study)| Shared {
        recipe,
        analysis: study.analysis.as_ref().ok(),
    });
    recipe_ld::write(&page.tables.reference.foods, shared)
}

fn folded(ways: &[Way]) -> Html {
    html! {
        <details class="save-as">
            <summary class="button">{ SAVE_AS }</summary>
            <div class="save-as-ways">{ for ways.iter().map(button) }</div>
        </details>
    }
}

fn button((id, label, name, text): &Way) -> Html {
    let onclick = {
        let (name, text) = (name.clone(), text.clone());
        Callback::from(move |_| {
            if let Some(text) = text() {
                save_text(&name, &text);
            }
        })
    };
    html! { <button type="button" id={*id} {onclick}>{ *label }</button> }
}
