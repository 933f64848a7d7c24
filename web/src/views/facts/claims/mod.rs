//! Claims about nutrients that the recipe's figures bear out: what the office
//! says of the food, which claims are proven, and what the others lack.

mod fields;
mod finding;
mod words;

use crate::page::use_page;
use crate::tables::StudiedRecipe;
use engine::book::RecipeLabel;
use engine::claims::{
    ClaimFinding, ClaimOptions, ClaimOutcome, ClaimReport, Criterion, ReferenceFood, Test,
    check_claims,
};
use engine::recipe::Recipe;
use fields::Fields;
use std::rc::Rc;
use yew::prelude::*;

/// For which food.
#[derive(Clone, PartialEq, Properties)]
pub struct ClaimsProps {
    /// The recipe.
    pub recipe: Rc<Recipe>,
    /// What is found out about it.
    pub study: StudiedRecipe,
    /// What the office says of the food, and of the food to compare it with.
    pub label: RecipeLabel,
    /// Told of every change of that.
    pub on_label: Callback<RecipeLabel>,
}

/// The section.
#[component]
pub fn Claims(props: &ClaimsProps) -> Html {
    let page = use_page();
    let said = &props.label;
    let tables = &page.tables.reference.claims;
    let kind = said.claims.kind;
    let questions: Vec<Criterion> = tables
        .claims()
        .iter()
        .flat_map(|claim| &claim.criteria)
        .filter(|criterion| criterion.test == Test::Ingredient && criterion.foods.contains(&kind))
        .cloned()
        .collect();
    let reference = said
        .compared_with
        .as_ref()
        .and_then(|id| page.contents().recipe(id));
    let compared = reference.map(|recipe| page.tables.study(recipe, page.contents()));
    let food = compared
        .as_ref()
        .and_then(|study| study.analysis.as_ref().ok())
        .map(|analysis| ReferenceFood {
            analysis,
            serving_weight: None,
        });
    let options = ClaimOptions {
        serving_weight: said.panel.serving_weight,
        ..said.claims.clone()
    };
    let Ok(analysis) = &props.study.analysis else {
        return Html::default();
    };
    let report = check_claims(analysis, tables, &options, food.as_ref());
    html! {
        <section class="claims" aria-labelledby="claims">
            <h2 id="claims">{ words::TITLE }</h2>
            <p class="hint">{ words::HINT }</p>
            <Fields recipe={props.recipe.id.clone()} said={said.clone()} {questions}
                on_change={props.on_label.clone()} reference={reference.cloned()} />
            { match report {
                Ok(report) => self::report(&report),
                Err(problem) => html! {
                    <p class="problem" role="alert">
                        { crate::views::recipe::sentence(&crate::named::claim(&problem)) }
                    </p>
                },
            } }
        </section>
    }
}

fn report(report: &ClaimReport) -> Html {
    let with = |wanted: fn(&ClaimOutcome) -> bool| -> Vec<&ClaimFinding> {
        let claims = report.claims.iter();
        claims.filter(|claim| wanted(&claim.outcome)).collect()
    };
    let proven = with(|outcome| matches!(outcome, ClaimOutcome::Proven));
    let silent = with(|outcome| matches!(outcome, ClaimOutcome::Silent { .. }));
    let not_met = with(|outcome| matches!(outcome, ClaimOutcome::NotMet));
    html! {<>
        <h3>{ words::proven(proven.len()) }</h3>
        if proven.is_empty() {
            <p data-test="claims">{ words::NONE_PROVEN }</p>
        } else {
            <ul class="claim-list" data-test="claims">
                { for proven.into_iter().map(finding::proven) }
            </ul>
        }
        if !silent.is_empty() {
            <h3>{ words::silent(silent.len()) }</h3>
            <ul class="claim-list" data-test="claims-silent">
                { for silent.into_iter().map(finding::silent) }
            </ul>
        }
        if !not_met.is_empty() {
            <details data-test="claims-not-met">
                <summary>{ words::not_met(not_met.len()) }</summary>
                <ul class="claim-list">{ for not_met.into_iter().map(finding::not_met) }</ul>
            </details>
        }
        <ul class="claim-cautions" data-test="claim-cautions">
            { for report.cautions.iter().map(finding::needed) }
        </ul>
    </>}
}
