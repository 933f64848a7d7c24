//! The figures of one serving, large, and how they changed since the card was
//! last kept.

use super::phrases::sentence;
use super::sure::{self, Amounts};
use super::words;
use crate::components::{Help, Topic};
use crate::format;
use crate::language::Say;
use crate::named;
use crate::page::use_page;
use crate::state::Action;
use crate::tables::StudiedRecipe;
use engine::analysis::{RecipeAnalysis, change};
use engine::exact::{Digits, PartialSum};
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
    /// The amounts of a serving with their uncertainty.
    pub amounts: Rc<Amounts>,
    /// Told of the nutrient whose origin is wanted.
    pub on_open: Callback<NutrientId>,
}

/// One of the large figures.
pub struct BigFigure {
    /// Which nutrient.
    pub nutrient: NutrientId,
    /// Its name.
    pub name: Say,
    /// Its unit; empty where the name says it.
    pub unit: &'static str,
    /// Its printed digits.
    pub digits: Digits,
    /// Help about it.
    help: Topic,
    /// Its name in tests.
    key: &'static str,
}

/// The figures by which menus are judged.
pub const FIGURES: [BigFigure; 3] = [
    BigFigure {
        nutrient: NutrientId::ENERGY,
        name: words::CALORIES,
        unit: "",
        digits: Digits(0),
        help: Topic::Energy,
        key: "calories",
    },
    BigFigure {
        nutrient: NutrientId::SATURATED_FAT,
        name: words::SATURATED_FAT,
        unit: "g",
        digits: Digits(1),
        help: Topic::SaturatedFat,
        key: "saturated-fat",
    },
    BigFigure {
        nutrient: NutrientId::SODIUM,
        name: words::SODIUM,
        unit: "mg",
        digits: Digits(0),
        help: Topic::Sodium,
        key: "sodium",
    },
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
                    <p class="problem" role="alert" data-test="recipe-problem">{ sentence(&named::study(problem)) }</p>
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
                    { for FIGURES.iter().map(|one| figure(props, analysis, before, one)) }
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
    words::serving(&props.recipe.serving_words, &grams, analysis.mass_measured)
}

/// By how much a figure changed, with its sign; nothing where more is unknown
/// of one form than of the other.
pub fn difference(
    before: &RecipeAnalysis,
    now: &RecipeAnalysis,
    figure: &BigFigure,
) -> Option<String> {
    let before = before.per_serving(figure.nutrient)?;
    let now = now.per_serving(figure.nutrient)?;
    let by = change(&before, &now, figure.digits)?;
    Some(format::signed(by, figure.digits))
}

fn figure(
    props: &FiguresProps,
    analysis: &RecipeAnalysis,
    before: Option<&RecipeAnalysis>,
    of: &BigFigure,
) -> Html {
    let nutrient = of.nutrient;
    let amount = props.amounts.get(&nutrient);
    let off = amount.and_then(|amount| sure::plus_minus(amount, of.digits));
    let open = props.on_open.reform(move |_: MouseEvent| nutrient);
    let sum = analysis.per_serving(of.nutrient);
    let shown = |sum: Option<PartialSum>| {
        let known = sum.and_then(|sum| format::known(&sum, of.digits));
        known.unwrap_or_else(|| words::UNKNOWN.to_string())
    };
    let is_known = sum.is_some_and(|sum| format::known(&sum, of.digits).is_some());
    let change = before.map(|before| {
        let by = difference(before, analysis, of);
        words::change(
            &shown(before.per_serving(of.nutrient)),
            &shown(sum),
            &by.unwrap_or_else(|| words::UNKNOWN.to_string()),
        )
    });
    let partly = sum.filter(|sum| sum.coverage() < Decimal::ONE);
    html! {
        <div class="big-figure" data-figure={of.key}>
            <dt>{ of.name }{ " " }<Help topic={of.help} /></dt>
            <dd class={classes!("big", (!is_known).then_some("big-unknown"))}
                data-test={format!("figure-{}", of.key)}>
                <button type="button" class="as-text" title={words::open_origin(&of.name.to_string())} onclick={open}>
                    { shown(sum) }
                    if is_known && !of.unit.is_empty() { <small>{ " " }{ of.unit }</small> }
                </button>
            </dd>
            if let Some(off) = off {
                <dd class="note" data-test={format!("off-{}", of.key)}>{ off }{ " " }{ of.unit }</dd>
            }
            if let Some(change) = change {
                <dd class="change" data-test={format!("change-{}", of.key)}>{ change }</dd>
            }
            if let Some(sum) = partly {
                <dd class="note">{ words::known_for(&format::percent_known(sum.coverage())) }</dd>
            }
        </div>
    }
}
