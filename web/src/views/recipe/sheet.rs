//! The recipe as a sheet of paper.

use super::reading::weight_of;
use super::{CardProps, words};
use crate::format;
use crate::page::use_page;
use crate::words::{IS_NOT, title_or_untitled};
use engine::exact::Digits;
use engine::foods::NutrientId;
use yew::prelude::*;

/// Figures on the sheet, with their printed digits.
const FIGURES: [(NutrientId, &str, &str, Digits); 3] = [
    (NutrientId::ENERGY, words::CALORIES, "", Digits(0)),
    (
        NutrientId::SATURATED_FAT,
        words::SATURATED_FAT,
        " g",
        Digits(1),
    ),
    (NutrientId::SODIUM, words::SODIUM, " mg", Digits(0)),
];

/// The sheet; only printers show it.
#[component]
pub fn RecipeSheet(props: &CardProps) -> Html {
    let page = use_page();
    let recipe = &props.recipe;
    let serving = match recipe.serving_words.trim() {
        "" => String::new(),
        words => format!(", {}: {words}", words::SERVING_WORDS.to_lowercase()),
    };
    html! {
        <div class="sheet recipe-sheet" aria-hidden="true">
            <p class="sheet-title">{ title_or_untitled(&recipe.title) }</p>
            <p>
                { words::SERVINGS }{ ": " }{ format::group(recipe.servings.servings()) }{ serving }
                { " — " }{ page.contents().office().to_owned() }
            </p>
            <h2>{ words::INGREDIENTS }</h2>
            <table><tbody>
                { for recipe.lines.iter().enumerate().filter(|(_, line)| !line.text.trim().is_empty()).map(
                    |(index, line)| html! {
                        <tr>
                            <th scope="row">{ &line.text }</th>
                            <td class="number">
                                { weight_of(&props.study, index).map(format::grams).unwrap_or_default() }
                            </td>
                        </tr>
                    },
                ) }
            </tbody></table>
            if !recipe.method.trim().is_empty() {
                <h2>{ words::METHOD }</h2>
                <p class="sheet-method">{ &recipe.method }</p>
            }
            if let Ok(analysis) = &props.study.analysis {
                <h2>{ words::FIGURES }</h2>
                <dl class="sheet-figures">
                    { for FIGURES.iter().map(|(nutrient, name, unit, digits)| {
                        let sum = analysis.per_serving(*nutrient);
                        let figure = sum.and_then(|sum| format::known(&sum, *digits));
                        html! {
                            <div>
                                <dt>{ name }</dt>
                                <dd>{ match figure {
                                    Some(figure) => format!("{figure}{unit}"),
                                    None => words::UNKNOWN.to_owned(),
                                } }</dd>
                            </div>
                        }
                    }) }
                </dl>
                <p class="sheet-small">{ words::uncounted(analysis.unknown_lines.len()) }</p>
            }
            <p class="sheet-small">{ engine::allergens::CAUTION }</p>
            <p class="sheet-small">{ IS_NOT }</p>
        </div>
    }
}
