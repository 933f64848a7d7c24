//! The panel as running text, for packages without room for a table
//! (21 CFR 101.9(j)(13)(ii)(A)(2)).

use super::words;
use engine::label::{FactsPanel, PanelCell, PanelRow};
use yew::prelude::*;

/// The text in the order of the panel's own running text, with its bold names.
pub fn linear(panel: &FactsPanel) -> Html {
    let calories = panel.calories.cells.first();
    let figures = panel
        .rows
        .iter()
        .filter_map(|row| Some((row, row.cells.first()?)));
    html! {
        <p>
            <strong class="facts-linear-title">{ words::PANEL }</strong>
            { " " }{ &panel.servings }{ ". " }
            <strong>{ words::SHORT_SERVING_SIZE }{ " " }{ &panel.serving_size }</strong>
            { ". " }{ &panel.columns[0].heading }{ ": " }
            <strong class="facts-linear-calories">
                { words::CALORIES }{ " " }
                <span data-test="facts-calories">{ calories.map(|cell| cell.amount.clone()) }</span>
            </strong>
            { for figures.map(|(row, cell)| html! {<>{ ", " }{ figure(row, cell) }</>}) }
            { "." }
            if let Some(left_out) = &panel.insignificant { { " " }{ left_out } }
        </p>
    }
}

fn figure(row: &PanelRow, cell: &PanelCell) -> Html {
    let (name, rest) = name_and_rest(cell);
    html! {
        <span data-nutrient={row.nutrient.0.to_string()}>
            if row.bold { <strong>{ name }</strong> } else { { name } }
            { rest }
            if let Some(percent) = &cell.percent { { format!(" ({percent} DV)") } }
        </span>
    }
}

/// A short line, cut where its amount begins.
fn name_and_rest(cell: &PanelCell) -> (&str, &str) {
    let line = cell.short_line.as_str();
    line.split_at(line.find(cell.amount.as_str()).unwrap_or(line.len()))
}

#[cfg(test)]
mod tests {
    use super::*;
    use engine::label::FigureStatus;

    #[test]
    fn lines_are_cut_before_their_amount() {
        for (short_line, amount, name, rest) in [
            ("Total Carb. 19 g", "19 g", "Total Carb. ", "19 g"),
            (
                "Incl. 8 g Added Sugars",
                "8 g",
                "Incl. ",
                "8 g Added Sugars",
            ),
            (
                "Trans Fat: not known",
                "not known",
                "Trans Fat: ",
                "not known",
            ),
        ] {
            let cell = PanelCell {
                status: FigureStatus::Known,
                exact: None,
                amount: amount.into(),
                line: String::new(),
                short_line: short_line.into(),
                percent: None,
            };
            assert_eq!(name_and_rest(&cell), (name, rest));
        }
    }
}
