//! One recipe of the sheet: how much, into what, from what, how hot.

use super::sheet::{cooking, heading, title_of};
use super::{ask, words};
use crate::format;
use crate::named;
use crate::page::{Page, use_page};
use engine::allergens::Presence;
use engine::exact::Digits;
use engine::kitchen::SafetyStep;
use engine::production::{CookItem, WeighOut};
use engine::units::{Servings, Unit};
use yew::prelude::*;

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct CookPartProps {
    /// The recipe to cook.
    pub item: CookItem,
    /// Level of its heading.
    pub heading: u8,
}

/// The part of the sheet.
#[component]
pub fn CookPart(props: &CookPartProps) -> Html {
    let page = use_page();
    let item = &props.item;
    let title = title_of(&page, &item.recipe);
    let batches = format::short(item.batches, Digits(2));
    let servings = format::short(item.servings.servings(), Digits(1));
    html! {
        <section class="cook-part" data-test="cook" data-recipe={item.recipe.0.clone()}>
            { heading(props.heading, html! { { &title } }) }
            <p class="cook-much">
                { words::batches(&batches, &servings) }
                { into(&page, item) }
                { pans(item) }
            </p>
            <table class="sheet-table"><tbody>
                { for item.lines.iter().map(|line| row(&page, line)) }
            </tbody></table>
            { hot(&page, item) }
        </section>
    }
}

/// The recipes that it goes into.
fn into(page: &Page, item: &CookItem) -> Html {
    let parts = item.goes_into.iter().map(|(recipe, batches)| {
        let share = *batches / item.batches;
        let of_it = Servings::new(item.servings.servings() * share);
        let servings = format::short(of_it.servings(), Digits(1));
        html! { <span class="cook-into">{ words::goes_into(&servings, &title_of(page, recipe)) }</span> }
    });
    html! { <>{ for parts }</> }
}

fn pans(item: &CookItem) -> Html {
    match &item.pans {
        None => Html::default(),
        Some(Ok(count)) => {
            let holds = format::short(count.holds.servings(), Digits(1));
            let last = format::short(count.in_last.servings(), Digits(1));
            let pans = format::group(count.pans);
            html! {
                <span class="cook-pans" data-test="pans">
                    { words::pans(&pans, &count.pan, &holds, &last) }
                </span>
            }
        }
        Some(Err(problem)) => html! {
            <span class="problem" data-test="pan-problem">{ words::pan_problem(problem) }</span>
        },
    }
}

fn row(page: &Page, line: &WeighOut) -> Html {
    if line.heading {
        return html! { <tr><th colspan="3" scope="colgroup">{ &line.words }</th></tr> };
    }
    if let Some((recipe, batches)) = &line.recipe {
        let batches = format::short(*batches, Digits(2));
        return html! {
            <tr data-test="weigh-out">
                <td class="number">{ words::batches_short(&batches) }</td>
                <th scope="row">{ words::made_apart(&title_of(page, recipe)) }</th>
                <td />
            </tr>
        };
    }
    let weight = match (&line.exact, &line.shown) {
        (_, Some(shown)) => html! { { words::shown(shown) } },
        (Some(_), None) => html! { { words::TOO_LIGHT } },
        (None, None) => html! { <span class="unknown">{ words::NO_WEIGHT }</span> },
    };
    html! {
        <tr data-test="weigh-out">
            <td class="number">{ weight }</td>
            <th scope="row">
                { &line.words }
                if let Some(weighed) = words::weighed_as(line.weighed_as) {
                    { " " }<small class="weighed-as">{ weighed }</small>
                }
            </th>
            <td>{ line.measure.as_ref().map(|(amount, unit)| measure(*amount, unit)).unwrap_or_default() }</td>
        </tr>
    }
}

/// The line's own measure, to a quarter, for what is measured and not weighed.
fn measure(amount: rust_decimal::Decimal, unit: &Unit) -> String {
    use engine::exact::rounding::round_half_up_to;
    let quarter = rust_decimal::Decimal::new(25, 2);
    let near = round_half_up_to(amount, quarter);
    let is_exact = near == engine::exact::rounding::guarded(amount);
    let figure = match near.is_zero() {
        true => format::short(amount, Digits(2)),
        false => format::eighths(near),
    };
    words::measure(&figure, unit, is_exact)
}

/// How hot it must get, and what its words say of allergens.
fn hot(page: &Page, item: &CookItem) -> Html {
    let (steps, contains) = ask(page, [item.recipe.clone()], |kitchen| {
        let steps: Vec<SafetyStep> = cooking(&kitchen.temperatures(&item.recipe))
            .into_iter()
            .cloned()
            .collect();
        let study = kitchen.recipe(&item.recipe).map(|(_, study)| study);
        let allergens = study.map_or(&[][..], |study| &study.allergens);
        let contains = allergens
            .iter()
            .filter(|one| one.finding.presence == Presence::Contains)
            .map(|one| named::allergen(one.finding.allergen).to_string())
            .collect::<Vec<_>>();
        (steps, contains)
    });
    html! {
        <p class="sheet-small cook-hot">
            { for steps.iter().map(|step| html! { <span>{ words::temperature(step) }</span> }) }
            if contains.is_empty() {
                <span>{ words::NO_ALLERGEN_FOUND }</span>
            } else {
                <span>{ words::contains(&contains.join(", ")) }</span>
            }
        </p>
    }
}
