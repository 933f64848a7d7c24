//! The allergens to which the words of both forms point.

use super::{Side, TwoProps};
use crate::language::of_table;
use crate::named;
use crate::views::recipe::versions::words;
use engine::allergens::{Allergen, CAUTION, Presence};
use yew::prelude::*;

/// The table, with the caution that belongs to it.
#[component]
pub fn Allergens(props: &TwoProps) -> Html {
    let [left, right] = &props.sides;
    let of = |side: &Side, allergen: Allergen| {
        let mut found = side.study.allergens.iter();
        let found = found.find(|one| one.finding.allergen == allergen);
        found.map_or(Presence::Unknown, |one| one.finding.presence)
    };
    let all = left
        .study
        .allergens
        .iter()
        .chain(right.study.allergens.iter());
    let mut allergens: Vec<Allergen> = Vec::new();
    for found in all {
        let allergen = found.finding.allergen;
        let is_found = [left, right].map(|side| of(side, allergen) != Presence::Unknown);
        if is_found.contains(&true) && !allergens.contains(&allergen) {
            allergens.push(allergen);
        }
    }
    html! {<>
        if allergens.is_empty() {
            <p class="note">{ words::NO_ALLERGENS }</p>
        } else {
            <table class="two" data-test="two-allergens">
                <caption>{ words::ALLERGENS }</caption>
                <thead><tr>
                    <th scope="col">{ words::ALLERGEN }</th>
                    <th scope="col">{ &left.name }</th>
                    <th scope="col">{ &right.name }</th>
                </tr></thead>
                <tbody>{ for allergens.into_iter().map(|allergen| {
                    let (before, after) = (of(left, allergen), of(right, allergen));
                    html! {
                        <tr class={classes!((before != after).then_some("differs"))}
                            data-allergen={allergen.to_string()}>
                            <th scope="row">{ named::allergen(allergen) }</th>
                            <td>{ words::presence(before) }</td>
                            <td>{ words::presence(after) }</td>
                        </tr>
                    }
                }) }</tbody>
            </table>
        }
        <p class="note">{ of_table(CAUTION) }</p>
    </>}
}
