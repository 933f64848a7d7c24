//! The figures of one serving, large, and how they changed since the card was
//! last kept.

use super::words;
use crate::format;
use crate::page::use_page;
use crate::state::Action;
use crate::tables::StudiedRecipe;
use engine::analysis::{RecipeAnalysis, change};
use engine::exact::Digits;
use engine::foods::NutrientId;
use engine::recipe::Recipe;
use rust_decimal::Decimal;
use std::rc::Rc;
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct FiguresProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// The same of the card as last kept, where it was another.
    pub before: Option<StudiedRecipe>,
}

/// Figures with their names, units and digits.
const FIGURES: [(NutrientId, &str, &str, Digits, &str); 3] = [
    (
        NutrientId::ENERGY,
        words::CALORIES,
        "",
        Digits(0),
        "calories",
    ),
    (
        NutrientId::SATURATED_FAT,
        words::SATURATED_FAT,
        "g",
        Digits(1),
        "saturated-fat",
    ),
    (NutrientId::SODIUM, words::SODIUM, "mg", Digits(0), "sodium"),
];

/// The figures.
#[component]
pub fn Figures(props: &FiguresProps) -> Html {
    let page = use_page();
    let analysis = match &props.study.analysis {
        Ok(analysis) => analysis,
        Err(problem) => {
            return html! {
                <section class="figures" aria-labelledby="figures">
                    <h2 id="figures">{ words::FIGURES }</h2>
                    <p class="problem" role="alert" data-test="recipe-problem">{ problem.to_string() }</p>
                </section>
            };
        }
    };
    let before = props
        .before
        .as_ref()
        .filter(|study| study.ingredient_count() > 0);
    let before = before.and_then(|study| study.analysis.as_ref().ok());
    let act = |action: Action| {
        let page = page.clone();
        Callback::from(move |_: MouseEvent| page.act(action.clone()))
    };
    let id = &props.recipe.id;
    html! {
        <section class="figures" aria-labelledby="figures">
            <h2 id="figures">{ words::FIGURES }</h2>
            if props.study.ingredient_count() == 0 {
                <p class="hint">{ words::NOTHING_YET }</p>
            } else {
                <p class="serving">{ serving(props, analysis) }</p>
                <dl class="big-figures">
                    { for FIGURES.iter().map(|(nutrient, name, unit, digits, key)| {
                        figure(analysis, before, *nutrient, (name, unit, *digits, key))
                    }) }
                </dl>
                <p class="note">{ words::uncounted(analysis.unknown_lines.len()) }</p>
            }
            if props.before.is_some() {
                <div class="kept" data-test="kept">
                    <p class="hint">
                        { if before.is_some() { words::KEPT_HINT } else { words::NOT_KEPT_HINT } }
                    </p>
                    <button type="button" id="keep" onclick={act(Action::Keep(id.clone()))}>
                        { words::KEEP }
                    </button>
                    if before.is_some() {
                        <button type="button" id="go-back" onclick={act(Action::GoBack(id.clone()))}>
                            { words::GO_BACK }
                        </button>
                    }
                </div>
            }
        </section>
    }
}

fn serving(props: &FiguresProps, analysis: &RecipeAnalysis) -> String {
    let grams = format::number(analysis.serving_mass().grams(), Digits(0));
    words::serving(&props.recipe.serving_words, &grams)
}

fn figure(
    analysis: &RecipeAnalysis,
    before: Option<&RecipeAnalysis>,
    nutrient: NutrientId,
    (name, unit, digits, key): (&'static str, &'static str, Digits, &'static str),
) -> Html {
    let sum = analysis.per_serving(nutrient);
    let figure = sum.and_then(|sum| format::known(&sum, digits));
    let change = before
        .and_then(|before| before.per_serving(nutrient))
        .zip(sum)
        .map(|(before, now)| {
            let shown =
                |sum| format::known(sum, digits).unwrap_or_else(|| words::UNKNOWN.to_owned());
            let difference = change(&before, &now, digits).map(|by| format::signed(by, digits));
            words::change(
                &shown(&before),
                &shown(&now),
                &difference.unwrap_or_else(|| words::UNKNOWN.to_owned()),
            )
        });
    let partly = sum.filter(|sum| sum.coverage() < Decimal::ONE);
    html! {
        <div class="big-figure" data-figure={key}>
            <dt>{ name }</dt>
            <dd class="big" data-test={format!("figure-{key}")}>
                if let Some(figure) = figure {
                    { figure }
                    if !unit.is_empty() { <small>{ " " }{ unit }</small> }
                } else {
                    <span class="unknown">{ words::UNKNOWN }</span>
                }
            </dd>
            if let Some(change) = change {
                <dd class="change" data-test={format!("change-{key}")}>{ change }</dd>
            }
            if let Some(sum) = partly {
                <dd class="note">{ words::known_for(&format::percent_known(sum.coverage())) }</dd>
            }
        </div>
    }
}
