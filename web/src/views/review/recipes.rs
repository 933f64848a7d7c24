//! The recipes as they are cooked, with the food behind each line and the
//! credits with their arithmetic.

use super::{Dish, part, words};
use crate::page::Page;
use crate::views::recipe::{CreditRecord, Reading, batch_yield, reading_of};
use crate::words::title_or_untitled;
use engine::recipe::RecipeLine;
use yew::prelude::*;

/// One recipe below the other.
pub fn recipes(page: &Page, dishes: &[Dish]) -> Html {
    let body = html! {<>
        <p>{ words::RECIPES_HOW }</p>
        { for dishes.iter().map(|dish| recipe(page, dish)) }
    </>};
    part("review-recipes", words::RECIPES, body)
}

fn recipe(page: &Page, dish: &Dish) -> Html {
    let (recipe, study) = dish;
    let lines = recipe.lines.iter().enumerate();
    let rows = lines.filter_map(|(index, line)| {
        let reading = reading_of(page, recipe, study, index)?;
        Some(row(page, line, &reading))
    });
    html! {
        <section class="review-recipe" data-test="review-recipe" data-recipe={recipe.id.0.clone()}>
            <h3>{ title_or_untitled(&recipe.title) }</h3>
            <p>{ batch_yield(recipe, study) }</p>
            <table>
                <thead><tr>
                    <th scope="col">{ words::LINE }</th>
                    <th scope="col" class="number">{ words::WEIGHT }</th>
                    <th scope="col">{ words::FOOD }</th>
                    <th scope="col">{ words::HOW }</th>
                </tr></thead>
                <tbody>{ for rows }</tbody>
            </table>
            if !recipe.method.trim().is_empty() {
                <h4>{ words::METHOD }</h4>
                <p class="review-method">{ &recipe.method }</p>
            }
            <h4>{ words::CREDITS }</h4>
            <CreditRecord recipe={recipe.clone()} study={study.clone()} />
        </section>
    }
}

fn row(page: &Page, line: &RecipeLine, reading: &Reading) -> Html {
    let chosen = line.correction.food.filter(|food| {
        // An own food's number means something in this book only.
        page.tables.reference.foods.food(*food).is_some()
    });
    html! {
        <tr>
            <th scope="row">{ &line.text }</th>
            <td class="number">{ &reading.grams }</td>
            <td><span lang={reading.lang}>{ &reading.food }</span>
                if let Some(food) = chosen {
                    <span class="note">{ " " }{ words::chosen(&food.to_string()) }</span>
                }
            </td>
            <td>{ &reading.how }</td>
        </tr>
    }
}
