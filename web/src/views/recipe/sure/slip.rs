//! A slip over the card: where one figure comes from.

use super::part::part;
use super::{Missing, plus_minus, rests_on, words};
use crate::components::Select;
use crate::format;
use crate::named;
use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::exact::Digits;
use engine::foods::{Nutrient, NutrientId};
use engine::recipe::Recipe;
use engine::reference::FigureOrigin;
use std::rc::Rc;
use web_sys::HtmlDialogElement;
use yew::prelude::*;

/// Which figure.
#[derive(Clone, PartialEq, Properties)]
pub struct OriginSlipProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// The nutrient.
    pub nutrient: NutrientId,
    /// Told of another nutrient.
    pub on_choose: Callback<NutrientId>,
    /// Told when the slip is to be put away.
    pub close: Callback<()>,
}

/// The slip. The browser keeps the keyboard in it, closes it by Escape and
/// gives the focus back.
#[component]
pub fn OriginSlip(props: &OriginSlipProps) -> Html {
    let page = use_page();
    let place = use_node_ref();
    use_effect_with((), {
        let place = place.clone();
        move |()| {
            if let Some(dialog) = place.cast::<HtmlDialogElement>() {
                // It fails only where the dialog is open already.
                drop(dialog.show_modal());
            }
        }
    });
    let reference = &page.tables.reference;
    let nutrients = reference.foods.nutrients();
    let chosen = nutrients.iter().position(|one| one.id == props.nutrient);
    let ids: Vec<NutrientId> = nutrients.iter().map(|one| one.id).collect();
    let on_choose = props.on_choose.reform(move |index: usize| ids[index]);
    let names: Vec<AttrValue> = nutrients
        .iter()
        .map(|one| named::nutrient(one).into())
        .collect();
    let onclose = props.close.reform(|_: Event| ());
    let put_away = {
        let place = place.clone();
        Callback::from(move |_: MouseEvent| {
            if let Some(dialog) = place.cast::<HtmlDialogElement>() {
                dialog.close();
            }
        })
    };
    let Some(nutrient) = chosen.map(|index| &nutrients[index]) else {
        return Html::default();
    };
    let origin = reference.figure_origin(&props.study, nutrient.id);
    html! {
        <dialog ref={place} class="slip" aria-labelledby="slip-title" data-test="origin" {onclose}>
            <div class="slip-head">
                <h2 id="slip-title">{ words::title(&named::nutrient(nutrient)) }</h2>
                <button type="button" class="quiet" data-test="origin-close" onclick={put_away}>
                    { crate::words::CLOSE }
                </button>
            </div>
            <Select id="slip-nutrient" label={words::NUTRIENT} {names} {chosen} {on_choose} />
            if let Some(origin) = origin {
                { figure(nutrient, &origin) }
                <Missing />
                <ol class="slip-parts">
                    { for origin.parts.iter().map(|one| {
                        let text = props.recipe.lines.get(one.line).map(|line| line.text.as_str());
                        part(&reference.foods, nutrient, one, text.unwrap_or_default())
                    }) }
                </ol>
            }
        </dialog>
    }
}

fn figure(nutrient: &Nutrient, origin: &FigureOrigin) -> Html {
    let digits = nutrient.decimals;
    let amount = &origin.serving;
    let known = format::known(&amount.amount, digits);
    let Some(known) = known else {
        return html! { <p class="unknown">{ words::NOT_KNOWN }</p> };
    };
    let with_unit = |figure: &str| named::counted(figure, &nutrient.unit);
    let finer = Digits(digits.0 + 1);
    let shared = words::shared(
        &with_unit(&format::short(origin.total.known, finer)),
        &format::group(origin.servings.servings()),
        &with_unit(&format::short(amount.amount.known, finer)),
    );
    html! {<>
        <p class="slip-figure" data-test="origin-figure">
            <strong>{ words::per_serving(&with_unit(&known)) }</strong>
            if let Some(off) = plus_minus(amount, digits) { { ", " }{ with_unit(&off) } }
        </p>
        <p class="note">
            { words::coverage(&amount.amount) }
            if let Some(rests_on) = rests_on(amount) { { "; " }{ rests_on } }
        </p>
        <p class="arithmetic">{ shared }</p>
    </>}
}
