//! The Nutrition Facts panel in the language of the reader. Figures are the
//! engine's; here only its words are put into a language.
//!
//! 21 CFR 101.9(d)(14) lets a panel in another language stand beside the
//! English one (from memory). The servings of the container are left out: a
//! family gets one serving, and food that a school serves needs no panel.

use super::words;
use crate::language::Language;
use engine::exact::FigureStatus;
use engine::label::{FactsPanel, PanelCell, PanelRow, RowGroup};
use engine::recipe::Recipe;
use yew::prelude::*;

/// The panel, with one column.
pub fn panel(facts: &FactsPanel, recipe: &Recipe, tongue: Language) -> Html {
    let text = |key| words::text(tongue, key);
    let rows = |group: RowGroup| {
        let rows = facts.rows.iter().filter(move |row| row.group == group);
        html! { <tbody>{ for rows.map(|row| nutrient(row, tongue)) }</tbody> }
    };
    let calories = facts.calories.cells.first();
    let name = text("parents-panel");
    html! {
        <div class="facts facts-vertical" role="group" aria-label={name.clone()}
            data-test="family-panel">
            <p class="facts-title">
                <span class="for-readers">{ name.clone() }</span>
                <svg viewBox="0 0 260 36" aria-hidden="true">
                    <text x="0" y="29" textLength="260" lengthAdjust="spacingAndGlyphs">{ name }</text>
                </svg>
            </p>
            <p class="facts-size">
                <strong>{ text("parents-serving-size") }</strong>
                <strong>{ words::serving_size(tongue, facts, &recipe.serving_words) }</strong>
            </p>
            <div class="facts-calories">
                <p class="facts-amount">{ text("parents-per-serving") }</p>
                <p class="facts-energy">
                    <span class="facts-energy-word">{ text("parents-calories") }</span>
                    <span class="facts-energy-figure" data-test="family-calories">
                        { calories.map(|cell| amount(cell, tongue)) }
                    </span>
                </p>
            </div>
            <table class="facts-main">
                <thead class="facts-percent-head"><tr>
                    <th scope="col"><span class="for-readers">{ text("parents-nutrient") }</span></th>
                    <th scope="col">{ text("parents-percent") }</th>
                </tr></thead>
                { rows(RowGroup::Main) }
            </table>
            <table class="facts-vitamins">
                <thead class="for-readers"><tr>
                    <th scope="col"><span class="for-readers">{ text("parents-nutrient") }</span></th>
                    <th scope="col">{ text("parents-percent") }</th>
                </tr></thead>
                { rows(RowGroup::VitaminOrMineral) }
            </table>
            <p class="facts-footnote">{ text("parents-footnote") }</p>
        </div>
    }
}

fn nutrient(row: &PanelRow, tongue: Language) -> Html {
    let Some(cell) = row.cells.first() else {
        return Html::default();
    };
    let class = format!("facts-row facts-indent-{}", row.indent);
    let (before, after) = words::around_amount(tongue, row);
    let amount = amount(cell, tongue);
    let partly = (cell.status != FigureStatus::Known).then_some("facts-partly");
    html! {
        <tr {class} data-nutrient={row.nutrient.0.to_string()}>
            <th scope="row">
                if row.bold { <strong>{ before }</strong> } else { { before } }
                { " " }{ amount }{ after }
            </th>
            <td class={classes!(partly)}><strong>
                { cell.percent.as_deref().map(|percent| words::figure(tongue, percent)) }
            </strong></td>
        </tr>
    }
}

fn amount(cell: &PanelCell, tongue: Language) -> String {
    words::figure(tongue, &cell.amount)
}
