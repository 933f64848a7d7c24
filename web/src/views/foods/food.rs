//! One food: its form where it is the office's own, its measures and values.

use super::editor::Editor;
use super::values::Values;
use super::words;
use crate::format;
use crate::language::{in_english, of_table};
use crate::page::{use_page, use_title};
use crate::route::Route;
use crate::words::title_or_untitled;
use engine::foods::{Food, FoodId, Measure};
use yew::prelude::*;

/// Which food.
#[derive(Clone, PartialEq, Properties)]
pub struct FoodViewProps {
    /// The food.
    pub id: FoodId,
}

/// The view.
#[component]
pub fn FoodView(props: &FoodViewProps) -> Html {
    let page = use_page();
    use_effect_with((), {
        let evidence = page.evidence.clone();
        move |()| evidence.ask()
    });
    let own = match props.id {
        FoodId::Own(number) => page.contents().own_food(number),
        FoodId::Sr28(_) => None,
    };
    let foods = &page.tables.reference.foods;
    let food = foods.food(props.id);
    let title = match (own, food) {
        (Some(own), _) => Some(title_or_untitled(&own.description)),
        (None, food) => food.map(|food| food.description.clone()),
    };
    use_title(&title.clone().unwrap_or_else(|| words::TITLE.to_string()));
    let Some(title) = title else {
        return html! {<>
            { back() }
            <p class="problem" role="alert" data-test="no-food">{ words::no_food(props.id) }</p>
        </>};
    };
    html! {
        <div class="food-page">
            { back() }
            <h1 data-test="food-title">
                if own.is_some() { { title } } else { { in_english(&title) } }
            </h1>
            if let Some(own) = own {
                <div class="food-columns">
                    <Editor food={own.clone()} />
                    if food.is_some() { <Values id={props.id} /> }
                </div>
            } else if let Some(food) = food {
                { about(food, foods.group_name(food.group).unwrap_or_default()) }
                { measures(foods.measures(food.id)) }
                <Values id={food.id} />
            }
        </div>
    }
}

fn back() -> Html {
    html! { <p class="back"><a href={Route::Foods.fragment()}>{ words::ALL_FOODS }</a></p> }
}

/// What the dataset says of the food besides its values.
fn about(food: &Food, group: &str) -> Html {
    // With whether the words are the dataset's own.
    let facts = [
        (words::NUMBER, food.id.to_string(), false),
        (words::GROUP, of_table(group), false),
        (words::OTHER_NAMES, food.common_names.clone(), true),
        (words::MAKER, food.manufacturer.clone(), true),
        (words::REFUSE, words::refuse(food), false),
    ];
    let told = facts.into_iter().filter(|(_, text, _)| !text.is_empty());
    html! {
        <dl class="meanings food-about">
            { for told.map(|(name, text, is_english)| html! {<>
                <dt>{ name }</dt>
                <dd>if is_english { { in_english(&text) } } else { { text } }</dd>
            </>}) }
        </dl>
    }
}

fn measures(measures: &[Measure]) -> Html {
    if measures.is_empty() {
        return html! { <p>{ words::NO_MEASURES }</p> };
    }
    html! {
        <section class="food-measures" aria-labelledby="measures">
            <h2 id="measures">{ words::MEASURES }</h2>
            <ul data-test="food-measures">
                { for measures.iter().map(|measure| html! {
                    <li>
                        { format::stated(measure.amount) }{ " " }{ in_english(&measure.words) }{ ": " }
                        <strong>{ format::group(measure.grams.grams()) }{ " g" }</strong>
                    </li>
                }) }
            </ul>
        </section>
    }
}
