//! The recipe as a sheet of paper.

use super::credits::CreditSheet;
use super::figures::FIGURES;
use super::head::servings_of;
use super::reading::weight_of;
use super::sure::Carbohydrate;
use super::{CardProps, words};
use crate::format;
use crate::language::of_table;
use crate::page::use_page;
use crate::words::title_or_untitled;
use yew::prelude::*;

/// The sheet; only printers show it.
#[component]
pub fn RecipeSheet(props: &CardProps) -> Html {
    let page = use_page();
    let recipe = &props.recipe;
    let serving = match recipe.serving_words.trim() {
        "" => String::new(),
        words => format!(
            ", {}: {words}",
            words::SERVING_WORDS.to_string().to_lowercase()
        ),
    };
    html! {
        <div class="sheet recipe-sheet" aria-hidden="true">
            <p class="sheet-title">{ title_or_untitled(&recipe.title) }</p>
            <p>
                { words::SERVINGS }{ ": " }{ servings_of(props) }{ serving }
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
                    { for FIGURES.iter().map(|figure| {
                        let sum = analysis.per_serving(figure.nutrient);
                        let known = sum.and_then(|sum| format::known(&sum, figure.digits));
                        html! {
                            <div>
                                <dt>{ figure.name }</dt>
                                <dd>{ match known {
                                    Some(known) => format!("{known} {}", figure.unit),
                                    None => words::UNKNOWN.to_string(),
                                } }</dd>
                            </div>
                        }
                    }) }
                </dl>
                <p class="sheet-small">{ words::uncounted(analysis.unknown_lines.len()) }</p>
            }
            <CreditSheet recipe={recipe.clone()} study={props.study.clone()} />
            <Carbohydrate study={props.study.clone()} serving={recipe.serving_words.clone()} />
            <p class="sheet-small">{ of_table(engine::allergens::CAUTION) }</p>
        </div>
    }
}
