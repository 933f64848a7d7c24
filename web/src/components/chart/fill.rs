//! Bars that fill up to a limit, each made of hatched parts.

use super::frame::Frame;
use super::{axis, hatch, place, words};
use rust_decimal::Decimal;
use yew::prelude::*;

/// A part of a bar.
#[derive(Debug, Clone, PartialEq)]
pub struct Segment {
    /// What it is.
    pub name: AttrValue,
    /// Its kind among the drawing's kinds.
    pub kind: usize,
    /// Its length, in the unit of the drawing.
    pub amount: Decimal,
    /// The figure as it is printed, with its unit.
    pub figure: AttrValue,
}

/// A bar.
#[derive(Debug, Clone, PartialEq)]
pub struct FillRow {
    /// What it is of.
    pub name: AttrValue,
    /// Its whole as it is printed.
    pub total: AttrValue,
    /// Its parts.
    pub segments: Vec<Segment>,
}

/// A limit across all bars.
#[derive(Debug, Clone, PartialEq)]
pub struct Mark {
    /// Where it lies, in the unit of the drawing.
    pub at: Decimal,
    /// What it is, with its figure.
    pub name: AttrValue,
}

/// What is drawn.
#[derive(Debug, Clone, PartialEq, Properties)]
pub struct FillChartProps {
    /// Id of the drawing in the document.
    pub id: AttrValue,
    /// What it shows, in a few words.
    pub title: AttrValue,
    /// What it says, in a sentence.
    pub summary: AttrValue,
    /// Names of the kinds of parts.
    pub kinds: Vec<AttrValue>,
    /// The bars, from above.
    pub rows: Vec<FillRow>,
    /// The limits.
    pub marks: Vec<Mark>,
}

/// Heights in the drawing, in pixels.
const HEAD: usize = 18;
const ROW: usize = 44;
const BAR: usize = 18;

/// The drawing, its kinds, and its figures as a table.
#[component]
pub fn FillChart(props: &FillChartProps) -> Html {
    let wholes = props.rows.iter().map(|row| {
        let amounts = row.segments.iter().map(|segment| segment.amount);
        amounts.sum::<Decimal>()
    });
    let most = axis(wholes.chain(props.marks.iter().map(|mark| mark.at)));
    let top = HEAD * props.marks.len();
    let rows = props.rows.len();
    let height = top + ROW * rows;
    Frame {
        id: &props.id,
        title: &props.title,
        summary: &props.summary,
        hatchings: props.kinds.len(),
        height,
        drawn: html! {<>
            { for props.rows.iter().enumerate().map(|(index, row)| {
                bar(props, row, top + ROW * index, most)
            }) }
            { for props.marks.iter().enumerate().map(|(index, one)| {
                mark(one, index, (top, rows), most)
            }) }
        </>},
        kinds: html! {
            { for props.kinds.iter().enumerate().map(|(kind, name)| html! {
                <li>{ hatch::patch(&props.id, kind) }{ " " }{ name }</li>
            }) }
        },
        figures: figures(props),
    }
    .draw()
}

fn bar(props: &FillChartProps, row: &FillRow, y: usize, most: Decimal) -> Html {
    let mut from = Decimal::ZERO;
    let parts: Vec<Html> = row
        .segments
        .iter()
        .filter(|segment| segment.amount > Decimal::ZERO)
        .map(|segment| {
            let x = place(from, most);
            from += segment.amount;
            html! {
                <rect class="chart-edge" {x} y={(y + 20).to_string()} height={BAR.to_string()}
                    width={place(segment.amount, most)}
                    fill={format!("url(#{})", hatch::id(&props.id, segment.kind))}>
                    <title>{ words::part(&segment.name, &segment.figure) }</title>
                </rect>
            }
        })
        .collect();
    html! {
        <g>
            <text class="chart-name" x="0" y={(y + 14).to_string()}>{ &row.name }</text>
            <text class="chart-total" x="100%" y={(y + 14).to_string()} text-anchor="end">
                { &row.total }
            </text>
            { for parts }
        </g>
    }
}

/// A limit's line, with its name above: to its left, for limits lie far right.
/// It leaves out what is written above each bar.
fn mark(mark: &Mark, index: usize, (top, rows): (usize, usize), most: Decimal) -> Html {
    let x = place(mark.at, most);
    let y = HEAD * index + 13;
    let line = |from: usize, to: usize| {
        html! {
            <line class="chart-mark" x1={x.clone()} x2={x.clone()}
                y1={from.to_string()} y2={to.to_string()} />
        }
    };
    let across = (0..rows).map(|row| top + ROW * row + 19);
    html! {
        <g>
            <text class="chart-mark-name" x={x.clone()} dx="-5" y={y.to_string()} text-anchor="end">
                { &mark.name }
            </text>
            { line(HEAD * index + 2, top) }
            { for across.map(|from| line(from, from + BAR + 5)) }
        </g>
    }
}

fn figures(props: &FillChartProps) -> Html {
    html! {<>
        <thead><tr>
            <th scope="col">{ words::BAR }</th>
            <th scope="col">{ words::PART }</th>
            <th scope="col" class="number">{ words::FIGURE }</th>
        </tr></thead>
        { for props.rows.iter().map(|row| html! {
            <tbody>
                <tr>
                    <th scope="rowgroup" rowspan={(row.segments.len() + 1).to_string()}>
                        { &row.name }
                    </th>
                    <th scope="row">{ words::WHOLE }</th>
                    <td class="number">{ &row.total }</td>
                </tr>
                { for row.segments.iter().map(|segment| html! {
                    <tr>
                        <th scope="row">{ &segment.name }</th>
                        <td class="number">{ &segment.figure }</td>
                    </tr>
                }) }
            </tbody>
        }) }
        <tbody>{ for props.marks.iter().map(|mark| html! {
            <tr><th scope="row" colspan="3">{ &mark.name }</th></tr>
        }) }</tbody>
    </>}
}
