//! The carbohydrate of a serving, for counting.

use super::words;
use crate::format;
use crate::language::Language;
use crate::page::Page;
use crate::tables::StudiedRecipe;
use engine::exact::{Digits, PartialSum};
use engine::foods::NutrientId;
use engine::reference::ServingAmount;
use yew::prelude::*;

/// Tenths of a gram, as a count is kept.
const DIGITS: Digits = Digits(1);

/// The count with what it is good for.
pub fn carbohydrate(page: &Page, study: &StudiedRecipe, tongue: Language) -> Html {
    let count = page.tables.reference.carbohydrate_count(study);
    let Some(count) = count.filter(|_| study.ingredient_count() > 0) else {
        return html! { <p class="family-note">{ words::text(tongue, "parents-no-figures") }</p> };
    };
    let row = |key: &str, amount: &ServingAmount| {
        html! {
            <div>
                <dt>{ words::text(tongue, key) }</dt>
                <dd data-test={format!("family-{}", amount.nutrient.0)}>
                    { in_grams(Some(&amount.amount), tongue) }
                </dd>
            </div>
        }
    };
    html! {<>
        <dl class="family-count">
            { row("parents-carbohydrate-row", &count.carbohydrate) }
            { row("parents-fiber-row", &count.fibre) }
        </dl>
        <p class="family-caution">{ words::text(tongue, "parents-carbohydrate-caution") }</p>
    </>}
}

/// "34.2 g", "at least 34.2 g", "not known".
pub fn in_grams(sum: Option<&PartialSum>, tongue: Language) -> String {
    let Some(sum) = sum.filter(|sum| !sum.known_mass.grams().is_zero()) else {
        return words::text(tongue, "parents-not-known");
    };
    let figure = format!("{} g", format::number(sum.known, DIGITS));
    match sum.is_complete() {
        true => figure,
        false => words::at_least(tongue, &figure),
    }
}

/// A serving's carbohydrate in one cell.
pub fn in_cell(study: &StudiedRecipe, tongue: Language) -> String {
    let sum = study
        .analysis
        .as_ref()
        .ok()
        .and_then(|analysis| analysis.per_serving(NutrientId::CARBOHYDRATE));
    in_grams(sum.as_ref(), tongue)
}
