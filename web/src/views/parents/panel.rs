//! The Nutrition Facts panel in the language of the reader, as the office has
//! decided it for the recipe's label. Figures are the engine's; here only its
//! words are put into a language.
//!
//! 21 CFR 101.9(d)(14) lets a panel in another language stand beside the
//! English one (from memory). Of what is decided, the servings of the
//! container and the second column for all of it are not followed: a family
//! gets one serving, and what is on a tray comes in no container.

use super::words;
use crate::language::{Language, of_table_in};
use engine::exact::FigureStatus;
use engine::label::{FactsPanel, Form, LabelTables, PanelCell, PanelRow, RowGroup};
use engine::recipe::Recipe;
use yew::prelude::*;

/// The panel in its form, with one column.
pub fn panel(facts: &FactsPanel, tables: &LabelTables, recipe: &Recipe, tongue: Language) -> Html {
    let left_out = words::left_out(tongue, facts, tables);
    let (class, inside) = match facts.form {
        Form::Vertical => ("facts-vertical", table(facts, left_out, recipe, tongue)),
        Form::Tabular => ("facts-tabular", table(facts, left_out, recipe, tongue)),
        Form::Linear => ("facts-linear", linear(facts, left_out, recipe, tongue)),
    };
    html! {
        <div class={classes!("facts", class)} role="group" aria-label={words::text(tongue, "parents-panel")}
            data-test="family-panel">{ inside }</div>
    }
}

fn table(facts: &FactsPanel, left_out: Option<String>, recipe: &Recipe, tongue: Language) -> Html {
    let text = |key| words::text(tongue, key);
    let rows = |group: RowGroup| {
        let rows = facts.rows.iter().filter(move |row| row.group == group);
        html! { <tbody>{ for rows.map(|row| nutrient(row, tongue)) }</tbody> }
    };
    let head = |class: &'static str| {
        html! {
            <thead {class}><tr>
                <th scope="col"><span class="for-readers">{ text("parents-nutrient") }</span></th>
                <th scope="col">{ text("parents-percent") }</th>
            </tr></thead>
        }
    };
    let calories = facts.calories.cells.first();
    let name = text("parents-panel");
    html! {<>
        <div class="facts-head">
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
        </div>
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
            { head("facts-percent-head") }
            { rows(RowGroup::Main) }
        </table>
        <table class="facts-vitamins">
            { head("for-readers") }
            { rows(RowGroup::VitaminOrMineral) }
        </table>
        if let Some(left_out) = left_out { <p class="facts-left-out">{ left_out }</p> }
        <p class="facts-footnote">{ of_table_in(tongue, &facts.footnote.words) }</p>
    </>}
}

/// As running text; like the office's own it has no footnote.
fn linear(facts: &FactsPanel, left_out: Option<String>, recipe: &Recipe, tongue: Language) -> Html {
    let text = |key| words::text(tongue, key);
    let calories = facts.calories.cells.first();
    let figures = facts
        .rows
        .iter()
        .filter_map(|row| Some((row, row.cells.first()?)));
    html! {
        <p>
            <strong class="facts-linear-title">{ text("parents-panel") }</strong>{ " " }
            <strong>
                { text("parents-serving-size") }{ ": " }
                { words::serving_size(tongue, facts, &recipe.serving_words) }
            </strong>
            { ". " }{ text("parents-per-serving") }{ ": " }
            <strong class="facts-linear-calories">
                { text("parents-calories") }{ " " }
                <span data-test="family-calories">{ calories.map(|cell| amount(cell, tongue)) }</span>
            </strong>
            { for figures.map(|(row, cell)| html! {<>
                { ", " }<span data-nutrient={row.nutrient.0.to_string()}>
                    { name_and_amount(row, cell, tongue) }
                    if let Some(percent) = &cell.percent {
                        { " (" }{ words::daily_value(tongue, percent) }{ ")" }
                    }
                </span>
            </>}) }
            { "." }
            if let Some(left_out) = left_out { { " " }{ left_out } }
        </p>
    }
}

fn nutrient(row: &PanelRow, tongue: Language) -> Html {
    let Some(cell) = row.cells.first() else {
        return Html::default();
    };
    let class = format!("facts-row facts-indent-{}", row.indent);
    let partly = (cell.status != FigureStatus::Known).then_some("facts-partly");
    html! {
        <tr {class} data-nutrient={row.nutrient.0.to_string()}>
            <th scope="row">{ name_and_amount(row, cell, tongue) }</th>
            <td class={classes!(partly)}><strong>
                { cell.percent.as_deref().map(|percent| words::figure(tongue, percent)) }
            </strong></td>
        </tr>
    }
}

fn name_and_amount(row: &PanelRow, cell: &PanelCell, tongue: Language) -> Html {
    let (before, after) = words::around_amount(tongue, row);
    html! {<>
        if row.bold { <strong>{ before }</strong> } else { { before } }
        { " " }{ amount(cell, tongue) }{ after }
    </>}
}

fn amount(cell: &PanelCell, tongue: Language) -> String {
    words::figure(tongue, &cell.amount)
}
