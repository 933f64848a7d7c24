//! Claims about nutrients that the recipe's figures bear out.

use super::words;
use crate::components::{NumberField, Select};
use crate::format;
use engine::analysis::RecipeAnalysis;
use engine::claims::{
    ClaimFinding, ClaimOptions, ClaimOutcome, ClaimTables, FoodKind, Needed, check_claims,
};
use engine::units::Grams;
use yew::prelude::*;

const KINDS: [FoodKind; 3] = [FoodKind::Individual, FoodKind::MainDish, FoodKind::Meal];

/// The section: what the office says of the food, and which claims follow.
pub fn claims(
    analysis: &RecipeAnalysis,
    tables: &ClaimTables,
    options: &ClaimOptions,
    on_change: &Callback<ClaimOptions>,
) -> Html {
    let with_kind = {
        let options = options.clone();
        on_change.reform(move |index: usize| ClaimOptions {
            kind: KINDS[index],
            ..options.clone()
        })
    };
    let with_amount = |amount: Option<Grams>| ClaimOptions {
        reference_amount: amount,
        ..options.clone()
    };
    let (none, options_for_some) = (with_amount(None), options.clone());
    let names = vec![
        words::INDIVIDUAL.into(),
        words::MAIN_DISH.into(),
        words::MEAL.into(),
    ];
    html! {
        <section class="claims" aria-labelledby="claims">
            <h2 id="claims">{ words::CLAIMS }</h2>
            <p class="hint">{ words::CLAIMS_HINT }</p>
            <div class="facts-options">
                <Select id="claim-kind" label={words::KIND} {names}
                    chosen={KINDS.iter().position(|kind| *kind == options.kind)} on_choose={with_kind} />
                <NumberField id="reference-amount" label={words::REFERENCE_AMOUNT} unit={words::GRAMS}
                    value={options.reference_amount.map(Grams::grams)}
                    on_change={on_change.reform(move |value| ClaimOptions {
                        reference_amount: Some(Grams::new(value)),
                        ..options_for_some.clone()
                    })}
                    on_clear={on_change.reform(move |()| none.clone())} />
            </div>
            { report(analysis, tables, options) }
        </section>
    }
}

fn report(analysis: &RecipeAnalysis, tables: &ClaimTables, options: &ClaimOptions) -> Html {
    let report = match check_claims(analysis, tables, options, None) {
        Ok(report) => report,
        Err(problem) => {
            return html! { <p class="problem" role="alert">{ problem.to_string() }</p> };
        }
    };
    let proven: Vec<&ClaimFinding> = report.proven().collect();
    let others = report
        .claims
        .iter()
        .filter(|finding| finding.outcome != ClaimOutcome::Proven);
    html! {<>
        if proven.is_empty() {
            <p data-test="claims">{ words::NO_CLAIMS }</p>
        } else {
            <ul data-test="claims">
                { for proven.into_iter().map(|finding| html! {
                    <li>
                        <strong>{ &finding.claim }</strong>
                        { for finding.needed.iter().map(needed) }
                    </li>
                }) }
            </ul>
        }
        <details>
            <summary>{ words::OTHER_CLAIMS }</summary>
            <ul>{ for others.map(other) }</ul>
        </details>
        <ul>{ for report.cautions.iter().map(|caution| html! { <li>{ needed(caution) }</li> }) }</ul>
    </>}
}

fn needed(needed: &Needed) -> Html {
    html! {
        <span class="needed">
            { " " }{ &needed.words }
            if !needed.certain { { " " }{ words::MAY_BE_NEEDED } }
            <span class="note">{ words::cited(&needed.citation) }</span>
        </span>
    }
}

/// A claim that is not offered, with the criteria that are not shown to hold.
fn other(finding: &ClaimFinding) -> Html {
    use engine::claims::CriterionOutcome;
    let outcome = match &finding.outcome {
        ClaimOutcome::NotMet => words::NOT_MET,
        ClaimOutcome::Silent { .. } | ClaimOutcome::Proven => words::NOT_KNOWN,
    };
    let open: Vec<String> = finding
        .criteria
        .iter()
        .filter(|criterion| criterion.outcome != CriterionOutcome::Holds)
        .map(|criterion| {
            let figure = criterion
                .figure
                .map(|figure| format::number(figure, criterion.digits));
            words::criterion(&criterion.words, figure.as_deref())
        })
        .collect();
    html! {
        <li>
            <strong>{ &finding.claim }</strong>{ ": " }{ outcome }
            <span class="note">{ " " }{ open.join("; ") }</span>
        </li>
    }
}
