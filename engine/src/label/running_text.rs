//! The panel as running text, for the linear form and for readers that do not
//! see tables.

use super::{FactsPanel, PanelCell};

impl FactsPanel {
    /// All that the panel prints in its first column, as one text with the
    /// permitted abbreviations.
    pub fn running_text(&self) -> String {
        let figures: Vec<String> = self
            .calories
            .cells
            .first()
            .into_iter()
            .chain(self.rows.iter().filter_map(|row| row.cells.first()))
            .map(figure)
            .collect();
        let ending = self.insignificant.as_deref().unwrap_or_default();
        format!(
            "Nutrition Facts. {}. Serv. size: {}. Amount per serving: {}. {ending}",
            self.servings,
            self.serving_size,
            figures.join(", "),
        )
        .trim_end()
        .to_owned()
    }
}

fn figure(cell: &PanelCell) -> String {
    match &cell.percent {
        Some(percent) => format!("{} ({percent} DV)", cell.short_line),
        None => cell.short_line.clone(),
    }
}
