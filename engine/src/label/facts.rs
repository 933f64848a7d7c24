//! Makes the panel of an analysed recipe.

use super::bands::Printed;
use super::cell::{NOT_KNOWN, cell};
use super::significance::Sums;
use super::{
    Audience, Content, FactsPanel, LabelNutrient, LabelTables, Listed, PanelColumn, PanelOptions,
    PanelRow, Statement,
};
use crate::analysis::RecipeAnalysis;
use crate::exact::{FigureStatus, PartialSum, rounding::guarded};
use crate::foods::NutrientId;
use crate::units::Servings;
use rust_decimal::Decimal;

/// The Nutrition Facts panel of one serving of a recipe.
///
/// Nothing is refused: what is not known is printed as such, and a simplified
/// panel that is not allowed becomes a full one and says so.
pub fn nutrition_facts(
    analysis: &RecipeAnalysis,
    tables: &LabelTables,
    options: &PanelOptions,
) -> FactsPanel {
    let container = options.servings_given().unwrap_or(analysis.servings);
    let columns = columns(options, container);
    let most = columns
        .iter()
        .map(|column| column.servings)
        .max()
        .unwrap_or_default();
    let sum = |nutrient| per_servings(analysis, nutrient, most);
    let sums = Sums {
        tables,
        audience: options.audience,
        sum: &sum,
    };
    let refused = sums.simplified_refused();
    let content = match (options.content, &refused) {
        (Content::Simplified, Some(_)) => Content::Full,
        (content, _) => content,
    };
    let simplified_allowed = refused.is_none();
    let mut problems = options.problems(tables);
    problems.extend(refused.filter(|_| options.content == Content::Simplified));
    let (left_out, shown): (Vec<&LabelNutrient>, Vec<&LabelNutrient>) = tables
        .others()
        .iter()
        .filter(|row| row.listed == Listed::Always || options.also.contains(&row.nutrient))
        .partition(|row| sums.is_left_out(row, content));
    let panel_row = |row| panel_row(analysis, tables, row, options.audience, &columns);
    let calories = panel_row(tables.calories());
    let rows: Vec<PanelRow> = shown.into_iter().map(panel_row).collect();
    FactsPanel {
        form: options.form,
        layout: tables.layout.of(options.form, options.dual),
        servings: servings_words(tables, container),
        serving_size: serving_size(analysis, tables, options),
        complete: std::iter::once(&calories)
            .chain(&rows)
            .flat_map(|row| &row.cells)
            .all(|cell| cell.status == FigureStatus::Known),
        columns,
        calories,
        rows,
        left_out: left_out.iter().map(|row| row.nutrient).collect(),
        insignificant: insignificant(tables, &left_out),
        footnote: tables.statements.footnote(options.audience).clone(),
        notes: notes(analysis, tables, options),
        simplified_allowed,
        problems,
    }
}

fn columns(options: &PanelOptions, container: Servings) -> Vec<PanelColumn> {
    let serving = PanelColumn {
        heading: "Amount per serving".to_owned(),
        servings: Servings::new(Decimal::ONE),
    };
    let whole = options.dual.then(|| PanelColumn {
        heading: "Amount per container".to_owned(),
        servings: container,
    });
    std::iter::once(serving).chain(whole).collect()
}

/// A nutrient that the analysis does not list is missing altogether.
fn per_servings(analysis: &RecipeAnalysis, nutrient: NutrientId, servings: Servings) -> PartialSum {
    analysis
        .per_serving(nutrient)
        .map(|sum| sum.scaled(servings.servings()))
        .unwrap_or_default()
}

fn panel_row(
    analysis: &RecipeAnalysis,
    tables: &LabelTables,
    row: &LabelNutrient,
    audience: Audience,
    columns: &[PanelColumn],
) -> PanelRow {
    PanelRow {
        nutrient: row.nutrient,
        name: row.name.clone(),
        group: row.group,
        indent: row.indent,
        bold: row.bold,
        cells: columns
            .iter()
            .map(|column| per_servings(analysis, row.nutrient, column.servings))
            .map(|sum| cell(tables, row, audience, &sum))
            .collect(),
    }
}

/// "About" marks a number that rounding has changed.
fn servings_words(tables: &LabelTables, servings: Servings) -> String {
    let exact = guarded(servings.servings());
    let printed = tables.servings_per_container().print(exact);
    let about = match &printed {
        Printed::Number(number) if *number != exact => "About ",
        _ => "",
    };
    let noun = match &printed {
        Printed::Number(number) if *number != Decimal::ONE => "servings",
        _ => "serving",
    };
    format!("{about}{} {noun} per container", printed.with_unit(""))
}

fn serving_size(analysis: &RecipeAnalysis, tables: &LabelTables, options: &PanelOptions) -> String {
    let weight = options
        .weight_as_served()
        .or_else(|| analysis.sure_serving_mass())
        .map(|weight| tables.serving_weight().print(weight.grams()).with_unit("g"));
    match (options.serving_words.trim(), weight) {
        ("", Some(weight)) => weight,
        ("", None) => format!("1 serving (weight {NOT_KNOWN})"),
        (words, Some(weight)) => format!("{words} ({weight})"),
        (words, None) => format!("{words} (weight {NOT_KNOWN})"),
    }
}

fn insignificant(tables: &LabelTables, left_out: &[&LabelNutrient]) -> Option<String> {
    let names: Vec<&str> = left_out.iter().map(|row| row.in_text.as_str()).collect();
    let list = match names.as_slice() {
        [] => return None,
        [one] => (*one).to_owned(),
        [one, two] => format!("{one} and {two}"),
        [rest @ .., last] => format!("{}, and {last}", rest.join(", ")),
    };
    Some(tables.statements.insignificant.words.replace("{}", &list))
}

fn notes(
    analysis: &RecipeAnalysis,
    tables: &LabelTables,
    options: &PanelOptions,
) -> Vec<Statement> {
    let statements = &tables.statements;
    [
        Some(&statements.exempt),
        (options.audience == Audience::OneToThree).then_some(&statements.protein_percent),
        (options.weight_as_served().is_none() && !analysis.mass_measured)
            .then_some(&statements.ingredient_weight),
    ]
    .into_iter()
    .flatten()
    .cloned()
    .collect()
}
