//! Figures on their axes, with the range in which they should lie.

use super::frame::Frame;
use super::{axis, hatch, place, words};
use rust_decimal::Decimal;
use yew::prelude::*;

/// A figure and its range.
#[derive(Debug, Clone, PartialEq)]
pub struct RangeRow {
    /// What it is of.
    pub name: AttrValue,
    /// The figure; nothing where it is not known.
    pub at: Option<Decimal>,
    /// The figure as it is printed.
    pub figure: AttrValue,
    /// The range's lower end; nothing where it begins at nought.
    pub least: Option<Decimal>,
    /// Its upper end; nothing where it has none.
    pub most: Option<Decimal>,
    /// The range in words.
    pub range: AttrValue,
    /// Each day's figure, with its name and as it is printed.
    pub days: Vec<(AttrValue, Decimal, AttrValue)>,
}

/// What is drawn.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct RangeChartProps {
    /// Id of the drawing in the document.
    pub id: AttrValue,
    /// What it shows, in a few words.
    pub title: AttrValue,
    /// What it says, in a sentence.
    pub summary: AttrValue,
    /// The figures, from above.
    pub rows: Vec<RangeRow>,
}

/// Heights in the drawing, in pixels.
const ROW: usize = 62;
const BAND: usize = 20;

/// The drawing and its figures as a table.
#[component]
pub fn RangeChart(props: &RangeChartProps) -> Html {
    Frame {
        id: &props.id,
        title: &props.title,
        summary: &props.summary,
        hatchings: 2,
        height: ROW * props.rows.len(),
        drawn: html! {
            { for props.rows.iter().enumerate().map(|(index, row)| {
                one(&props.id, row, ROW * index)
            }) }
        },
        kinds: kinds(&props.id),
        figures: figures(props),
    }
    .draw()
}

fn kinds(id: &str) -> Html {
    html! {<>
        <li>{ hatch::patch(id, 1) }{ " " }{ words::RANGE }</li>
        <li>
            <svg class="hatch-patch" width="16" height="14" focusable="false">
                <path class="chart-figure" d="M8 1 14 7 8 13 2 7 z" />
            </svg>
            { " " }{ words::AVERAGE }
        </li>
        <li>
            <svg class="hatch-patch" width="8" height="14" focusable="false">
                <line class="chart-day" x1="4" x2="4" y1="0" y2="14" />
            </svg>
            { " " }{ words::EACH_DAY }
        </li>
    </>}
}

fn one(id: &str, row: &RangeRow, y: usize) -> Html {
    let days = row.days.iter().map(|(_, day, _)| *day);
    let ends = [row.at, row.least, row.most].into_iter().flatten();
    let most = axis(ends.chain(days));
    let band = y + 26;
    let middle = band + BAND / 2;
    let from = row.least.unwrap_or(Decimal::ZERO);
    let length = row.most.unwrap_or(most) - from;
    html! {
        <g>
            <text class="chart-name" x="0" y={(y + 16).to_string()}>{ &row.name }</text>
            <text class="chart-total" x="100%" y={(y + 16).to_string()} text-anchor="end">
                { &row.figure }
            </text>
            <rect class="chart-room" x="0" y={band.to_string()} width="100%" height={BAND.to_string()} />
            <rect class="chart-edge" x={place(from, most)} y={band.to_string()}
                width={place(length, most)} height={BAND.to_string()}
                fill={format!("url(#{})", hatch::id(id, 1))}>
                <title>{ &row.range }</title>
            </rect>
            { for row.days.iter().map(|(name, day, figure)| {
                let x = place(*day, most);
                html! {
                    <line class="chart-day" x1={x.clone()} x2={x} y1={(band - 3).to_string()}
                        y2={(band + BAND + 3).to_string()}>
                        <title>{ words::part(name, figure) }</title>
                    </line>
                }
            }) }
            if let Some(at) = row.at {
                <svg x={place(at, most)} y={middle.to_string()} overflow="visible">
                    <path class="chart-figure" d="M0 -9 9 0 0 9 -9 0 z" />
                </svg>
            }
        </g>
    }
}

fn figures(props: &RangeChartProps) -> Html {
    html! {<>
        <thead><tr>
            <th scope="col">{ words::BAR }</th>
            <th scope="col" class="number">{ words::AVERAGE }</th>
            <th scope="col">{ words::RANGE }</th>
            <th scope="col">{ words::EACH_DAY }</th>
        </tr></thead>
        <tbody>{ for props.rows.iter().map(|row| html! {
            <tr>
                <th scope="row">{ &row.name }</th>
                <td class="number">{ &row.figure }</td>
                <td>{ &row.range }</td>
                <td>{ for row.days.iter().map(|(name, _, figure)| html! {
                    <div>{ words::part(name, figure) }</div>
                }) }</td>
            </tr>
        }) }</tbody>
    </>}
}
