//! What the office says of the food.

use super::words;
use crate::components::{NumberField, Pick, Picker, Select};
use crate::page::use_page;
use crate::views::recipe::find;
use crate::words::title_or_untitled;
use engine::book::RecipeLabel;
use engine::claims::{Criterion, FoodKind, StatedIngredient};
use engine::recipe::{Recipe, RecipeId};
use engine::units::Grams;
use rust_decimal::Decimal;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

const KINDS: [FoodKind; 3] = [FoodKind::Individual, FoodKind::MainDish, FoodKind::Meal];

/// Answers about an ingredient.
const ANSWERS: [Option<bool>; 3] = [None, Some(true), Some(false)];

/// Recipes offered to compare with.
const OFFERED: usize = 8;

#[derive(Clone, PartialEq, Properties)]
pub struct FieldsProps {
    /// The recipe that would bear the claim.
    pub recipe: RecipeId,
    /// What is said so far.
    pub said: RecipeLabel,
    /// Criteria that ask for ingredients.
    pub questions: Vec<Criterion>,
    /// The recipe to compare with.
    pub reference: Option<Rc<Recipe>>,
    /// Told of every change.
    pub on_change: Callback<RecipeLabel>,
}

/// One change of what is said.
type Change = Box<dyn FnOnce(&mut RecipeLabel)>;

/// The fields.
#[component]
pub fn Fields(props: &FieldsProps) -> Html {
    let page = use_page();
    let change: Callback<Change> = {
        let (said, on_change) = (props.said.clone(), props.on_change.clone());
        Callback::from(move |change: Change| {
            let mut said = said.clone();
            change(&mut said);
            on_change.emit(said);
        })
    };
    let options = &props.said.claims;
    let on_kind = change
        .reform(|index: usize| -> Change { Box::new(move |said| said.claims.kind = KINDS[index]) });
    let amount = |amount: Option<Decimal>| -> Change {
        Box::new(move |said| said.claims.reference_amount = amount.map(Grams::new))
    };
    let on_small = change.reform(|event: Event| -> Change {
        let on = event.target_unchecked_into::<HtmlInputElement>().checked();
        Box::new(move |said| said.claims.two_tablespoons_or_less = on)
    });
    let search = use_callback(
        (page, props.recipe.clone()),
        |typed: String, (page, own)| {
            find(&page.contents().recipes, &typed)
                .filter(|recipe| recipe.id != *own)
                .take(OFFERED)
                .map(|recipe| Pick {
                    key: recipe.id.0.clone().into(),
                    name: title_or_untitled(&recipe.title).into(),
                    lang: None,
                    note: AttrValue::default(),
                })
                .collect::<Vec<_>>()
        },
    );
    let on_pick = change.reform(|key: AttrValue| -> Change {
        Box::new(move |said| said.compared_with = Some(RecipeId(key.to_string())))
    });
    let names = words::KINDS.map(AttrValue::from).to_vec();
    html! {
        <div class="facts-options">
            <Select id="claim-kind" data_test="claim-kind" label={words::KIND} {names}
                chosen={KINDS.iter().position(|kind| *kind == options.kind)} on_choose={on_kind} />
            <NumberField id="reference-amount" data_test="reference-amount"
                label={words::REFERENCE_AMOUNT} unit={words::GRAMS}
                value={options.reference_amount.map(Grams::grams)}
                on_change={change.reform(move |value| amount(Some(value)))}
                on_clear={change.reform(move |()| amount(None))} />
            <p class="check">
                <input id="two-tablespoons" type="checkbox" checked={options.two_tablespoons_or_less}
                    onchange={on_small} />
                <label for="two-tablespoons">{ words::TWO_TABLESPOONS }</label>
            </p>
            <details class="claim-questions" open={!options.ingredients.is_empty()}
                data-test="claim-questions">
                <summary>{ words::QUESTIONS }</summary>
                { for props.questions.iter().map(|criterion| question(props, criterion, &change)) }
            </details>
            <Picker id="reference-food" data_test="reference-food" label={words::REFERENCE_FOOD}
                placeholder={words::REFERENCE_FOOD_HINT} {search} {on_pick} />
            if let Some(reference) = &props.reference {
                <p data-test="reference-chosen">
                    { words::compared_with(&title_or_untitled(&reference.title)) }{ " " }
                    <button type="button" onclick={change.reform(|_: MouseEvent| -> Change {
                        Box::new(|said| said.compared_with = None)
                    })}>{ words::COMPARE_NO_MORE }</button>
                </p>
            }
        </div>
    }
}

fn question(props: &FieldsProps, criterion: &Criterion, change: &Callback<Change>) -> Html {
    let nutrient = criterion.nutrient;
    let ingredients = &props.said.claims.ingredients;
    let said = ingredients
        .iter()
        .find(|stated| stated.nutrient == nutrient)
        .map(|stated| stated.used);
    let on_choose = change.reform(move |index: usize| -> Change {
        Box::new(move |said| {
            let ingredients = &mut said.claims.ingredients;
            ingredients.retain(|stated| stated.nutrient != nutrient);
            ingredients.extend(ANSWERS[index].map(|used| StatedIngredient { nutrient, used }));
        })
    });
    html! {
        <Select id={format!("ingredient-{}", nutrient.0)} data_test="claim-ingredient"
            label={crate::views::recipe::sentence(&crate::language::of_table(&criterion.words))}
            names={words::ANSWERS.map(AttrValue::from).to_vec()}
            chosen={ANSWERS.iter().position(|answer| *answer == said)} {on_choose} />
    }
}
