//! Other recipes of the book that this one is made with.

use super::reading::weight_of;
use super::{CardProps, words};
use crate::format;
use crate::page::{Page, use_page};
use crate::route::Route;
use crate::words::title_or_untitled;
use engine::recipe::Recipe;
use engine::reference::{LineStudy, PrepareProblem, SubRecipeProblem};
use std::rc::Rc;
use yew::prelude::*;

/// The list with a way to each; nothing where no line names a recipe.
#[component]
pub fn Within(props: &CardProps) -> Html {
    let page = use_page();
    let named: Vec<Html> = props
        .study
        .lines
        .iter()
        .enumerate()
        .filter_map(|(line, study)| item(&page, props, line, study))
        .collect();
    if named.is_empty() {
        return Html::default();
    }
    html! {
        <section class="within" aria-labelledby="within" data-test="within">
            <h2 id="within">{ words::WITHIN }</h2>
            <ul>{ for named }</ul>
        </section>
    }
}

fn item(page: &Page, props: &CardProps, line: usize, study: &LineStudy) -> Option<Html> {
    let recipes = named(page, study);
    if recipes.is_empty() {
        return None;
    }
    let weight = weight_of(&props.study, line).map(format::grams);
    Some(html! {
        <li data-test="within-recipe" data-line={line.to_string()}>
            { &study.read.text }{ ": " }
            { for recipes.iter().enumerate().map(|(index, recipe)| html! {<>
                if index > 0 { { ", " } }
                <a href={Route::Recipe(recipe.id.clone()).fragment()}>
                    { title_or_untitled(&recipe.title) }
                </a>
            </>}) }
            if let Some(weight) = weight { { ", " }{ weight } }
            if study.problem.is_some() { { ", " }<span class="unknown">{ words::WITHIN_PROBLEM }</span> }
        </li>
    })
}

/// The recipes that a line names, also where they cannot be used.
fn named<'a>(page: &'a Page, study: &LineStudy) -> Vec<&'a Rc<Recipe>> {
    let contents = page.contents();
    if let Some(id) = &study.recipe {
        return contents.recipe(id).into_iter().collect();
    }
    let titles = match &study.problem {
        Some(PrepareProblem::SubRecipe(problem)) => titles(problem),
        _ => return Vec::new(),
    };
    let has_title = |title: &&str| {
        let title = *title;
        contents
            .recipes
            .iter()
            .find(move |recipe| recipe.title == title)
    };
    titles.iter().filter_map(has_title).collect()
}

/// Titles of the recipes that a problem is about, each once.
fn titles(problem: &SubRecipeProblem) -> Vec<&str> {
    match problem {
        SubRecipeProblem::Cycle { path } => {
            let around = path.split_last().map_or(&[][..], |(_, around)| around);
            around.iter().map(String::as_str).collect()
        }
        SubRecipeProblem::AmountUnclear { title } | SubRecipeProblem::NotAnalysed { title } => {
            vec![title]
        }
        SubRecipeProblem::NotInBook { .. } => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::recipe::RecipeId;

    #[test]
    fn a_circle_names_each_of_its_recipes_once() {
        let path = ["Sauce", "Base", "Sauce"].map(str::to_owned).to_vec();
        assert_eq!(titles(&SubRecipeProblem::Cycle { path }), ["Sauce", "Base"]);
        let title = "Base".to_owned();
        assert_eq!(titles(&SubRecipeProblem::AmountUnclear { title }), ["Base"]);
        let recipe = RecipeId("x".into());
        assert!(titles(&SubRecipeProblem::NotInBook { recipe }).is_empty());
    }
}
