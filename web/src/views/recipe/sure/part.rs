//! What one food of one line brings to a figure.

use super::words;
use crate::format;
use crate::language::{Say, description, of_table};
use crate::named;
use engine::exact::Digits;
use engine::foods::{FoodTable, Nutrient};
use engine::reference::PartOrigin;
use yew::prelude::*;

/// The part with its arithmetic, its source and its footnotes. `text` is the
/// line as written.
pub fn part(foods: &FoodTable, nutrient: &Nutrient, part: &PartOrigin, text: &str) -> Html {
    let food = part.food.and_then(|id| foods.food(id));
    let behind = behind(nutrient, part);
    html! {
        <li data-test="origin-part" data-line={part.line.to_string()}>
            <h3>{ text }</h3>
            if let Some(food) = food {
                <p class="note">{ description(food) }{ format!(" ({})", food.id) }</p>
            }
            <p class="arithmetic">{ arithmetic(nutrient, part) }</p>
            if let Some(bounds) = bounds(part) { <p class="note">{ bounds }</p> }
            if !behind.is_empty() { <p class="note" data-test="origin-source">{ behind }</p> }
            { for part.footnotes.iter().map(|note| html! {
                <p class="note">{ words::footnote(note) }</p>
            }) }
        </li>
    }
}

fn arithmetic(nutrient: &Nutrient, part: &PartOrigin) -> String {
    let unit = |value: &str| named::counted(value, &nutrient.unit);
    match (part.per_100_g, part.weight, part.amount) {
        (Some(value), Some(weight), Some(amount)) => {
            let kept = (part.kept != rust_decimal::Decimal::ONE).then(|| format::stated(part.kept));
            words::product(
                &unit(&format::short(value, Digits(6))),
                &format!("{} g", format::short(weight.grams(), words::WEIGHT_DIGITS)),
                kept.as_deref(),
                &unit(&format::short(amount, Digits(nutrient.decimals.0 + 1))),
            )
        }
        (value, weight, _) => {
            let missing: Vec<Say> = [
                part.food.is_none().then_some(words::NO_FOOD),
                (part.food.is_some() && value.is_none()).then_some(words::NO_VALUE),
                weight.is_none().then_some(words::NO_WEIGHT),
            ]
            .into_iter()
            .flatten()
            .collect();
            words::missing(&missing)
        }
    }
}

/// The bounds of the weight, where they are not the weight itself.
fn bounds(part: &PartOrigin) -> Option<String> {
    let (low, high) = part.bounds.filter(|(low, high)| low != high)?;
    Some(words::between(&format::grams(low), &format::grams(high)))
}

/// What the dataset says of the value.
fn behind(nutrient: &Nutrient, part: &PartOrigin) -> String {
    let unit = |value| named::counted(&format::short(value, Digits(4)), &nutrient.unit);
    let own = part
        .interval
        .map(|(low, high)| words::own_value(&unit(low), &unit(high)));
    let source = part.source.as_ref();
    [
        own,
        source.map(|source| words::data_points(source.data_points)),
        part.error
            .map(|error| words::error(error.origin, &unit(error.standard))),
        source.and_then(|source| source.source.as_deref().map(of_table)),
        source.and_then(|source| source.derivation.clone()),
    ]
    .into_iter()
    .flatten()
    .collect::<Vec<_>>()
    .join("; ")
}
