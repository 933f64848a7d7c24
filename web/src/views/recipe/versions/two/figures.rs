//! The figures of a serving of both forms, and by how much they differ.

use super::Side;
use crate::format;
use crate::named;
use crate::page::use_page;
use crate::views::recipe::swaps::{digits, nutrient_name, unit};
use crate::views::recipe::versions::words;
use engine::analysis::change;
use engine::exact::PartialSum;
use engine::foods::NutrientId;
use yew::prelude::*;

/// What a comparison of two versions shows.
pub const FIGURES: [NutrientId; 11] = [
    NutrientId::ENERGY,
    NutrientId::FAT,
    NutrientId::SATURATED_FAT,
    NutrientId::TRANS_FAT,
    NutrientId::CHOLESTEROL,
    NutrientId::SODIUM,
    NutrientId::CARBOHYDRATE,
    NutrientId::FIBRE,
    NutrientId::SUGARS,
    NutrientId::ADDED_SUGARS,
    NutrientId::PROTEIN,
];

/// What is shown.
#[derive(Clone, PartialEq, Properties)]
pub struct FiguresProps {
    /// The forms, from left to right.
    pub sides: [Side; 2],
    /// Of which nutrients.
    pub nutrients: Vec<NutrientId>,
}

/// The table.
#[component]
pub fn Figures(props: &FiguresProps) -> Html {
    let page = use_page();
    let foods = &page.tables.reference.foods;
    let [left, right] = &props.sides;
    let problems = props.sides.iter().filter_map(|side| {
        let problem = side.study.analysis.as_ref().err()?;
        Some(html! { <p class="problem">{ &side.name }{ ": " }{ named::study(problem) }</p> })
    });
    let row = |nutrient: NutrientId| {
        let digits = digits(foods, nutrient);
        let sum = |side: &Side| side.study.analysis.as_ref().ok()?.per_serving(nutrient);
        let shown = |sum: Option<PartialSum>| {
            let known = sum.and_then(|sum| format::known(&sum, digits));
            known.unwrap_or_else(|| words::UNKNOWN.to_string())
        };
        let (before, after) = (sum(left), sum(right));
        let by = before.zip(after).and_then(|(b, a)| change(&b, &a, digits));
        let by = by.map(|by| format::signed(by, digits));
        let unit = unit(foods, nutrient);
        let unit = if unit.is_empty() {
            String::new()
        } else {
            format!(", {unit}")
        };
        html! {
            <tr data-nutrient={nutrient.0.to_string()}>
                <th scope="row">{ nutrient_name(foods, nutrient) }{ unit }</th>
                <td class="number" data-test="two-left">{ shown(before) }</td>
                <td class="number" data-test="two-right">{ shown(after) }</td>
                <td class="number" data-test="two-change">
                    { by.unwrap_or_else(|| words::UNKNOWN.to_string()) }
                </td>
            </tr>
        }
    };
    html! {<>
        { for problems }
        <table class="two" data-test="two-figures">
            <caption>{ words::FIGURES }</caption>
            <thead><tr>
                <th scope="col">{ words::NUTRIENT }</th>
                <th scope="col" class="number">{ &left.name }</th>
                <th scope="col" class="number">{ &right.name }</th>
                <th scope="col" class="number">{ words::CHANGE }</th>
            </tr></thead>
            <tbody>{ for props.nutrients.iter().map(|nutrient| row(*nutrient)) }</tbody>
        </table>
    </>}
}
