//! What the checks of the panel share.

use engine::analysis::{NutrientTotal, RecipeAnalysis};
use engine::exact::PartialSum;
use engine::foods::NutrientId;
use engine::label::{FactsPanel, LabelTables, LabelTexts, PanelCell};
use engine::units::{Grams, Servings};
use rust_decimal::Decimal;

pub fn dec(text: &str) -> Decimal {
    text.parse().unwrap_or_else(|_| panic!("{text} in a table"))
}

pub fn tables() -> LabelTables {
    LabelTables::new(&LabelTexts::committed()).unwrap()
}

pub fn known(value: &str) -> PartialSum {
    let mut sum = PartialSum::default();
    sum.add(Grams::new(Decimal::ONE_HUNDRED), Some(dec(value)));
    sum
}

/// A recipe of that many servings with these totals.
pub fn recipe(servings: &str, totals: &[(u16, PartialSum)]) -> RecipeAnalysis {
    RecipeAnalysis {
        servings: Servings::new(dec(servings)),
        mass: Grams::new(Decimal::ONE_HUNDRED),
        mass_measured: false,
        unknown_lines: Vec::new(),
        totals: totals
            .iter()
            .map(|(nutrient, total)| NutrientTotal {
                nutrient: NutrientId(*nutrient),
                total: *total,
            })
            .collect(),
    }
}

pub fn cell(panel: &FactsPanel, nutrient: u16, column: usize) -> &PanelCell {
    std::iter::once(&panel.calories)
        .chain(&panel.rows)
        .find(|row| row.nutrient == NutrientId(nutrient))
        .map(|row| &row.cells[column])
        .unwrap_or_else(|| panic!("the panel does not list {nutrient}"))
}
