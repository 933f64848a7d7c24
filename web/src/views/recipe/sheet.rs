//! The recipe as a sheet of paper.

use super::credits::CreditSheet;
use super::figures::FIGURES;
use super::head::batch_yield;
use super::reading::{problem_of, weight_of};
use super::sure::Carbohydrate;
use super::{CardProps, words};
use crate::format;
use crate::language::of_table;
use crate::page::use_page;
use crate::words::title_or_untitled;
use engine::recipe::LineKind;
use yew::prelude::*;

/// The sheet; only printers show it.
#[component]
pub fn RecipeSheet(props: &CardProps) -> Html {
    let page = use_page();
    let recipe = &props.recipe;
    let office = page.contents().office();
    html! {
        <div class="sheet recipe-sheet" aria-hidden="true">
            <p class="sheet-title">{ title_or_untitled(&recipe.title) }</p>
            if !office.is_empty() { <p>{ office.to_owned() }</p> }
            <p>{ batch_yield(recipe, &props.study) }</p>
            <h2>{ words::INGREDIENTS }</h2>
            <table><tbody>
                { for recipe.lines.iter().enumerate().filter(|(_, line)| !line.text.trim().is_empty()).map(
                    |(index, line)| html! {
                        <tr>
                            <th scope="row">{ &line.text }</th>
                            <td class="number">{ weight(props, index) }</td>
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

/// The weight of a line in the dish; what is not counted says so.
fn weight(props: &CardProps, line: usize) -> String {
    let of = props.study.lines.get(line);
    let is_ingredient = of.is_some_and(|of| of.read.reading.kind == LineKind::Ingredient);
    match weight_of(&props.study, line) {
        Some(weight) if of.and_then(problem_of).is_none() => format::grams(weight),
        _ if is_ingredient => words::UNKNOWN.to_string(),
        _ => String::new(),
    }
}
