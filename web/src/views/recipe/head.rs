//! Title and servings of the card.

use super::{CardProps, words};
use crate::components::NumberField;
use crate::format;
use crate::state::RecipeEdit;
use crate::tables::StudiedRecipe;
use engine::exact::Digits;
use engine::recipe::Recipe;
use engine::units::Servings;
use rust_decimal::Decimal;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Id of the field of the title.
pub const TITLE_FIELD: &str = "title";

/// The number of servings, also where it follows from their size.
fn servings_of(study: &StudiedRecipe) -> String {
    let analysis = study.analysis.as_ref();
    analysis.map_or_else(
        |_| crate::words::UNKNOWN.to_string(),
        |analysis| format::short(analysis.servings.servings(), Digits(2)),
    )
}

/// What the recipe makes: servings, and the weight of the batch.
pub fn batch_yield(recipe: &Recipe, study: &StudiedRecipe) -> String {
    words::batch_yield(
        &servings_of(study),
        &recipe.serving_words,
        &format::grams(study.batch_weight),
        study.batch_weight_measured,
    )
}

/// The head of the card.
#[component]
pub fn Head(props: &CardProps) -> Html {
    let recipe = &props.recipe;
    let text = |with: fn(String) -> RecipeEdit| {
        props.edit.reform(move |event: InputEvent| {
            with(event.target_unchecked_into::<HtmlInputElement>().value())
        })
    };
    let servings = props
        .edit
        .reform(|value: Decimal| RecipeEdit::Servings(Servings::new(value)));
    html! {
        <header class="card-head">
            <span class="title-field">
                <label for={TITLE_FIELD} class="for-readers">{ words::RECIPE_TITLE }</label>
                <input id={TITLE_FIELD} type="text" autocomplete="off" value={recipe.title.clone()}
                    oninput={text(RecipeEdit::Title)} />
            </span>
            <span class="card-servings">
                if recipe.serving_size.is_none() {
                    <NumberField id="servings" label={words::SERVINGS}
                        value={Some(recipe.servings.servings())} on_change={servings} />
                } else {
                    <span class="field">
                        <span class="note">{ words::MAKES }</span>
                        <span data-test="servings-by-size">{ servings_of(&props.study) }</span>
                    </span>
                }
                <span class="field">
                    <label for="serving-words">{ words::SERVING_WORDS }</label>
                    <input id="serving-words" type="text" autocomplete="off"
                        placeholder={words::SERVING_HINT} value={recipe.serving_words.clone()}
                        oninput={text(RecipeEdit::ServingWords)} />
                </span>
            </span>
        </header>
    }
}
