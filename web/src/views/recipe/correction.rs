//! Setting a reading right, in place: the food, the weight, how it is treated.

use super::reading::problem_of;
use super::treat::Treat;
use super::{Edit, phrases, words};
use crate::components::{NumberField, Pick, Picker};
use crate::language::of_table;
use crate::page::{Page, focus, on_escape_or_entered, use_page};
use crate::route::Route;
use crate::state::RecipeEdit;
use crate::tables::StudiedRecipe;
use engine::foods::FoodId;
use engine::recipe::{Correction, Recipe, RecipeId};
use engine::units::Grams;
use std::rc::Rc;
use yew::prelude::*;

/// Foods offered for what is typed.
const OFFERED: usize = 12;

/// Recipes of the book offered beside them.
const OFFERED_RECIPES: usize = 3;

/// Before the name of a recipe among the offers.
const RECIPE: &str = "recipe:";

const FOOD_FIELD: &str = "correction-food";

/// Which line.
#[derive(Clone, PartialEq, Properties)]
pub struct CorrectionPanelProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// How to change it.
    pub edit: Edit,
    /// Index of the line.
    pub line: usize,
    /// Told when the panel is to be closed.
    pub close: Callback<()>,
}

/// The panel.
#[component]
pub fn CorrectionPanel(props: &CorrectionPanelProps) -> Html {
    let page = use_page();
    use_effect_with(props.line, |_| focus(FOOD_FIELD));
    let search = use_callback(page.clone(), |words: String, page| offers(page, &words));
    let line = props.line;
    let (Some(of), Some(written)) = (props.study.lines.get(line), props.recipe.lines.get(line))
    else {
        return Html::default();
    };
    let correct = {
        let (edit, correction) = (props.edit.clone(), written.correction.clone());
        Callback::from(move |change: Change| {
            let mut correction = correction.clone();
            change(&mut correction);
            edit.emit(RecipeEdit::Correct { line, correction });
        })
    };
    let on_pick = correct.reform(|key: AttrValue| picked(&key));
    let onkeydown = on_escape_or_entered(&props.close);
    let onclose = props.close.reform(|_: MouseEvent| ());
    let has_choice = written.correction.food.is_some() || written.correction.recipe.is_some();
    let from_words = correct.reform(|_: MouseEvent| -> Change {
        Box::new(|correction| {
            correction.food = None;
            correction.recipe = None;
            correction.cooked = None;
        })
    });
    let steps = phrases::steps(of);
    html! {
        <div class="correction" role="dialog" aria-label={words::correction(&written.text)}
            data-test="correction" {onkeydown}>
            <div class="correction-head">
                <strong>{ &written.text }</strong>
                <button type="button" class="quiet" data-test="correction-close" onclick={onclose}>
                    { crate::words::CLOSE }
                </button>
            </div>
            if let Some(problem) = problem_of(of) { <p class="problem">{ problem }</p> }
            if !of.read.doubts.is_empty() {
                <ul class="doubts">
                    { for of.read.doubts.iter().map(|doubt| html! { <li>{ phrases::doubt(doubt) }</li> }) }
                </ul>
            }
            <Picker id={FOOD_FIELD} data_test="correction-food" label={words::FOOD_MEANT} open={true}
                words={of.read.reading.food_words.clone()} {search} {on_pick} />
            if has_choice {
                <p>
                    <span class="note">{ words::CHOSEN }</span>{ " " }
                    <button type="button" data-test="from-words" onclick={from_words}>
                        { words::FROM_WORDS }
                    </button>
                </p>
            }
            if let Some(id) = &of.recipe {
                <p><a href={Route::Recipe(id.clone()).fragment()} data-test="open-recipe">
                    { words::OPEN_RECIPE }
                </a></p>
            }
            { weight(&written.correction, &correct) }
            if !steps.is_empty() { <p class="note">{ words::weighed(&steps) }</p> }
            { measures(&page, of.read.food) }
            <Treat study={props.study.clone()} {line} correction={written.correction.clone()} {correct} />
        </div>
    }
}

/// One change of a correction.
pub type Change = Box<dyn FnOnce(&mut Correction)>;

/// How a part of the panel changes the correction.
pub type Correct = Callback<Change>;

fn weight(correction: &Correction, correct: &Correct) -> Html {
    let set = |weight: Option<Grams>| -> Change {
        Box::new(move |correction| correction.weight = weight)
    };
    html! {
        <NumberField id="correction-weight" data_test="correction-weight" label={words::WEIGHT}
            unit={words::GRAMS} value={correction.weight.map(Grams::grams)}
            on_change={correct.reform(move |value| set(Some(Grams::new(value))))}
            on_clear={correct.reform(move |()| set(None))} />
    }
}

/// The measures that the dataset has of the food.
fn measures(page: &Page, food: Option<FoodId>) -> Html {
    let measures = food.map_or(&[][..], |food| page.tables.reference.foods.measures(food));
    if measures.is_empty() {
        return Html::default();
    }
    html! {
        <details data-test="measures">
            <summary>{ words::measures(measures.len()) }</summary>
            <ul class="measures">
                { for measures.iter().map(|measure| html! {
                    <li>{ phrases::measure(&measure.into()) }</li>
                }) }
            </ul>
        </details>
    }
}

fn picked(key: &str) -> Change {
    let recipe = key.strip_prefix(RECIPE).map(|id| RecipeId(id.to_owned()));
    let food = key.parse().ok();
    Box::new(move |correction| {
        correction.food = food;
        correction.recipe = recipe;
        correction.cooked = None;
    })
}

/// Foods for what is typed.
pub fn food_picks(page: &Page, typed: &str) -> Vec<Pick> {
    let groups = &page.tables.reference.foods;
    let found = page.tables.foods_found(typed, OFFERED);
    found
        .map(|food| {
            let group = groups.group_name(food.group).map(of_table);
            Pick::food(food, group.unwrap_or_default().into())
        })
        .collect()
}

/// Foods and recipes for what is typed.
fn offers(page: &Page, typed: &str) -> Vec<Pick> {
    let is_typed = !typed.trim().is_empty();
    let recipes = super::find(&page.contents().recipes, typed)
        .filter(|_| is_typed)
        .take(OFFERED_RECIPES)
        .map(|recipe| Pick {
            key: format!("{RECIPE}{}", recipe.id.0).into(),
            name: recipe.title.clone().into(),
            lang: None,
            note: words::A_RECIPE.into(),
        });
    food_picks(page, typed).into_iter().chain(recipes).collect()
}
