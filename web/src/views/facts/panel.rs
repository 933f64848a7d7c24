//! The panel, drawn as 21 CFR 101.9(d) describes it. Sizes are in the style
//! sheet, in points, as the layout table of the engine states them.

use super::linear::linear;
use super::words;
use engine::label::{FactsPanel, FigureStatus, Form, PanelCell, PanelRow, RowGroup};
use yew::prelude::*;

/// What is drawn.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct PanelProps {
    /// The panel.
    pub panel: FactsPanel,
}

/// The panel.
#[component]
pub fn Panel(props: &PanelProps) -> Html {
    let panel = &props.panel;
    if panel.form == Form::Linear {
        return html! {
            <section class="facts facts-linear" aria-label={words::PANEL} lang="en" data-test="facts-panel">
                { linear(panel) }
            </section>
        };
    }
    let columns = panel.columns.len();
    let form = match panel.form {
        Form::Tabular if columns > 1 => "facts-tabular facts-tabular-dual",
        Form::Tabular => "facts-tabular",
        _ if columns > 1 => "facts-dual",
        _ => "facts-vertical",
    };
    let of = |group: RowGroup| panel.rows.iter().filter(move |row| row.group == group);
    html! {
        <section class={classes!("facts", form)} aria-label={words::PANEL} lang="en" data-test="facts-panel">
            <div class="facts-head">
                { title() }
                <p class="facts-servings">{ &panel.servings }</p>
                <p class="facts-size">
                    <strong>{ words::SERVING_SIZE }</strong>
                    <strong>{ &panel.serving_size }</strong>
                </p>
            </div>
            { calories(panel) }
            <table class="facts-main">
                { head(panel, "facts-percent-head", words::PERCENT_HEADING) }
                <tbody>{ for of(RowGroup::Main).map(|row| nutrient(row, columns)) }</tbody>
            </table>
            <table class="facts-vitamins">
                { head(panel, "for-readers", words::PERCENT_HEADING) }
                <tbody>{ for of(RowGroup::VitaminOrMineral).map(|row| nutrient(row, columns)) }</tbody>
            </table>
            if let Some(left_out) = &panel.insignificant {
                <p class="facts-left-out">{ left_out }</p>
            }
            <p class="facts-footnote">{ &panel.footnote.words }</p>
        </section>
    }
}

/// As wide as the panel, in whatever font.
fn title() -> Html {
    html! {
        <h2 class="facts-title">
            <span class="for-readers">{ words::PANEL }</span>
            <svg viewBox="0 0 260 36" aria-hidden="true">
                <text x="0" y="29" textLength="260" lengthAdjust="spacingAndGlyphs">{ words::PANEL }</text>
            </svg>
        </h2>
    }
}

fn calories(panel: &FactsPanel) -> Html {
    let several = panel.columns.len() > 1;
    html! {
        <div class="facts-calories">
            if !several {
                <p class="facts-amount">{ &panel.columns[0].heading }</p>
            }
            <p class="facts-energy">
                <span class="facts-energy-word">{ words::CALORIES }</span>
                { for panel.columns.iter().zip(&panel.calories.cells).map(|(column, cell)| html! {
                    <span class="facts-energy-figure" data-test="facts-calories">
                        if several { <small>{ &column.heading }</small> }
                        { &cell.amount }
                    </span>
                }) }
            </p>
        </div>
    }
}

fn head(panel: &FactsPanel, class: &'static str, percent: &'static str) -> Html {
    html! {
        <thead class={class}>
            <tr>
                <th scope="col"><span class="for-readers">{ words::NUTRIENT }</span></th>
                { for panel.columns.iter().map(|column| html! {<>
                    if panel.columns.len() > 1 {
                        <th scope="col"><span class="for-readers">
                            { words::AMOUNT_HEADING } { ", " } { &column.heading }
                        </span></th>
                    }
                    <th scope="col">{ percent }</th>
                </>}) }
            </tr>
        </thead>
    }
}

fn nutrient(row: &PanelRow, columns: usize) -> Html {
    let class = format!("facts-row facts-indent-{}", row.indent);
    let first = row.cells.first();
    html! {
        <tr {class} data-nutrient={row.nutrient.0.to_string()}>
            <th scope="row">
                if columns > 1 { { name(row, None) } } else { { name(row, first) } }
            </th>
            { for row.cells.iter().map(|cell| html! {<>
                if columns > 1 { <td>{ &cell.amount }</td> }
                <td class={classes!(status(cell))}><strong>{ cell.percent.clone() }</strong></td>
            </>}) }
        </tr>
    }
}

/// The name, and after it the amount where there is one column only.
fn name(row: &PanelRow, cell: Option<&PanelCell>) -> Html {
    let own = |text: &str| match row.bold {
        true => html! { <strong>{ text }</strong> },
        false => html! { { text } },
    };
    let Some(cell) = cell else {
        return own(&row.name);
    };
    match cell.line.strip_prefix(row.name.as_str()) {
        Some(amount) => html! {<>{ own(&row.name) }{ amount }</>},
        None => html! { { &cell.line } },
    }
}

fn status(cell: &PanelCell) -> Option<&'static str> {
    match cell.status {
        FigureStatus::Known => None,
        FigureStatus::LowerBound { .. } | FigureStatus::Missing => Some("facts-partly"),
    }
}
