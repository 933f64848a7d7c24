//! One part of a meal, and its choices.

use super::moving::{Handle, Thing, use_target};
use super::places::{part_id, planned_field};
use super::{Edit, words};
use crate::components::{NumberField, Pick, Picker};
use crate::format;
use crate::page::{Page, use_page};
use crate::route::Route;
use crate::state::{ChoiceAt, OfferAt, WeekEdit};
use crate::words::title_or_untitled;
use engine::exact::Digits;
use engine::foods::NutrientId;
use engine::recipe::RecipeId;
use engine::units::Servings;
use engine::week::{Choice, Offer, Week};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::rc::Rc;
use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Which part.
#[derive(Clone, PartialEq, Properties)]
pub struct OfferViewProps {
    /// Its week.
    pub week: Rc<Week>,
    /// Where it stands.
    pub at: OfferAt,
    /// How to change the week.
    pub edit: Edit,
}

impl OfferViewProps {
    fn offer(&self) -> Option<&Offer> {
        let meal = self
            .week
            .days
            .get(self.at.meal.day)?
            .meals
            .get(self.at.meal.meal)?;
        meal.offers.get(self.at.offer)
    }
}

/// How many recipes the search offers at once.
const OFFERED: usize = 100;

/// The part with its choices.
#[component]
pub fn OfferView(props: &OfferViewProps) -> Html {
    let page = use_page();
    let end = ChoiceAt {
        offer: props.at,
        choice: usize::MAX,
    };
    let (ondragover, ondrop) = use_target(Thing::Choice(end));
    let search = use_callback(page.contents().recipes.clone(), |words: String, recipes| {
        crate::views::recipe::find(recipes, &words)
            .take(OFFERED)
            .map(|recipe| Pick {
                key: recipe.id.0.clone().into(),
                name: title_or_untitled(&recipe.title).into(),
                lang: None,
                note: AttrValue::default(),
            })
            .collect()
    });
    let Some(offer) = props.offer() else {
        return Html::default();
    };
    let at = props.at;
    let id = part_id(at);
    let title = props.edit.reform(move |event: InputEvent| {
        let text = event.target_unchecked_into::<HtmlInputElement>().value();
        WeekEdit::OfferTitle(at, text)
    });
    let take = props
        .edit
        .reform(move |value: Decimal| WeekEdit::Take(at, value.to_u32().unwrap_or(1)));
    let remove = props.edit.reform(move |_| WeekEdit::RemoveOffer(at));
    let on_pick = props
        .edit
        .reform(move |key: AttrValue| WeekEdit::AddChoice(at, RecipeId(key.to_string())));
    html! {
        <fieldset class="part" data-test="part" {ondragover} {ondrop}>
            <legend class="for-readers">{ &offer.title }</legend>
            <div class="part-head">
                <input type="text" class="part-title" aria-label={words::PART} autocomplete="off"
                    value={offer.title.clone()} oninput={title} />
                if offer.choices.len() > 1 {
                    <NumberField id={format!("{id}-take")} label={words::of(words::TAKE, &offer.title)}
                        hide_label={true} least={Decimal::ONE} unit={words::take_of(offer.choices.len())}
                        value={Some(Decimal::from(offer.take))} on_change={take} />
                }
                <button type="button" class="quiet small" onclick={remove}
                    aria-label={words::of(words::REMOVE_PART, &offer.title)}>{ "×" }</button>
            </div>
            <ul class="choices">
                { for offer.choices.iter().enumerate().map(|(choice, one)| {
                    html! {
                        <ChoiceRow key={choice} choice={one.clone()} at={ChoiceAt { offer: at, choice }}
                            edit={props.edit.clone()} />
                    }
                }) }
            </ul>
            if page.contents().recipes.is_empty() {
                <p class="hint">{ words::NO_RECIPES }</p>
            } else {
                <Picker id={format!("{id}-add")} data_test="add-choice" hide_label={true}
                    label={words::of(words::ADD_CHOICE, &offer.title)}
                    placeholder={words::CHOICE_HINT} {search} {on_pick} />
            }
        </fieldset>
    }
}

#[derive(Clone, PartialEq, Properties)]
struct ChoiceRowProps {
    choice: Choice,
    at: ChoiceAt,
    edit: Edit,
}

#[component]
fn ChoiceRow(props: &ChoiceRowProps) -> Html {
    let page = use_page();
    let ChoiceRowProps { choice, at, edit } = props;
    let at = *at;
    let (ondragover, ondrop) = use_target(Thing::Choice(at));
    let recipe = page.contents().recipe(&choice.recipe);
    let title = recipe.map_or_else(
        || choice.recipe.0.clone(),
        |recipe| title_or_untitled(&recipe.title),
    );
    let planned = edit.reform(move |value| WeekEdit::Planned(at, Servings::new(value)));
    let remove = edit.reform(move |_| WeekEdit::RemoveChoice(at));
    let note = match recipe {
        None => Some(html! { <span class="problem">{ words::MISSING_RECIPE }</span> }),
        Some(recipe) => figures(&page, recipe).map(|text| html! { { text } }),
    };
    html! {
        <li class="choice" data-test="choice" data-recipe={choice.recipe.0.clone()}
            {ondragover} {ondrop}>
            <a class="choice-name" href={Route::Recipe(choice.recipe.clone()).fragment()}>{ &title }</a>
            <span class="choice-note">{ note }</span>
            <NumberField id={planned_field(at)} data_test="planned"
                label={words::of(words::SERVINGS, &title)} hide_label={true}
                value={Some(choice.planned.servings())} on_change={planned} />
            <button type="button" class="quiet small" data-test="remove-choice" onclick={remove}
                aria-label={words::of(words::REMOVE, &title)}>{ "×" }</button>
            <Handle thing={Thing::Choice(at)} name={title} />
        </li>
    }
}

/// Calories and sodium of a serving, where they can be stated.
fn figures(page: &Page, recipe: &Rc<engine::recipe::Recipe>) -> Option<String> {
    let study = page.tables.study(recipe, page.contents());
    let analysis = study.analysis.as_ref().ok()?;
    let figure = |nutrient| format::known(&analysis.per_serving(nutrient)?, Digits(0));
    Some(words::per_serving(
        &figure(NutrientId::ENERGY)?,
        &figure(NutrientId::SODIUM)?,
    ))
}
