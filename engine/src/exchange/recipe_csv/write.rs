//! Recipes → table.

use super::Column;
use crate::exchange::cells::harmless;
use crate::recipe::{Recipe, RecipeLine, ServingSize};
use crate::units::Grams;
use rust_decimal::Decimal;
use serde::Serialize;
use std::collections::BTreeMap;

/// The cells of one row that are not empty.
type Row = BTreeMap<Column, String>;

/// The table's text: UTF-8 with a byte order mark, by which spreadsheets know
/// it, and lines that end as RFC 4180 says.
pub fn write<'a>(recipes: impl IntoIterator<Item = &'a Recipe>) -> String {
    let mut table = csv::WriterBuilder::new()
        .terminator(csv::Terminator::CRLF)
        .from_writer(Vec::new());
    let mut record = |row: Option<&Row>| {
        let cells = Column::ALL.iter().map(|column| match row {
            None => column.name(),
            Some(row) => row.get(column).map_or("", String::as_str),
        });
        // Writing into memory does not fail.
        drop(table.write_record(cells));
    };
    record(None);
    for recipe in recipes {
        for row in rows(recipe) {
            record(Some(&row));
        }
    }
    let bytes = table.into_inner().unwrap_or_default();
    format!("\u{feff}{}", String::from_utf8_lossy(&bytes))
}

fn rows(recipe: &Recipe) -> Vec<Row> {
    let mut rows: Vec<Row> = recipe
        .lines
        .iter()
        .enumerate()
        .flat_map(|(index, line)| line_rows(index, line))
        .collect();
    if rows.is_empty() {
        rows.push(Row::new());
    }
    for row in &mut rows {
        row.insert(Column::Recipe, harmless(&recipe.id.0));
    }
    rows[0].append(&mut head(recipe));
    rows
}

fn head(recipe: &Recipe) -> Row {
    let mut row = Row::new();
    row.insert(Column::Title, harmless(&recipe.title));
    row.insert(Column::Servings, number(recipe.servings.servings()));
    row.insert(Column::ServingWords, harmless(&recipe.serving_words));
    let weight = recipe.finished_weight.map(Grams::grams);
    row.insert(Column::FinishedWeight, optional(weight));
    row.insert(Column::Beans, word(&recipe.beans));
    row.insert(Column::Method, harmless(&recipe.method));
    let (by, serving, batch) = match recipe.serving_size {
        None => return row,
        Some(ServingSize::Weight { serving }) => ("weight", serving.grams(), None),
        Some(ServingSize::Volume { serving, batch }) => {
            ("volume", serving.millilitres(), Some(batch.millilitres()))
        }
        Some(ServingSize::Count { serving, batch }) => ("count", serving, Some(batch)),
    };
    row.insert(Column::ServingBy, by.to_owned());
    row.insert(Column::ServingSize, number(serving));
    row.insert(Column::BatchSize, optional(batch));
    row
}

fn line_rows(index: usize, line: &RecipeLine) -> Vec<Row> {
    let set_right = &line.correction;
    let count = set_right.treatments.len().max(set_right.credits.len());
    let mut rows = vec![Row::new(); count.max(1)];
    for (number, row) in rows.iter_mut().enumerate() {
        row.insert(Column::Line, (index + 1).to_string());
        if let Some(treatment) = set_right.treatments.get(number) {
            row.insert(Column::Treatment, harmless(&treatment.0));
        }
        if let Some(credit) = set_right.credits.get(number) {
            let marks: Vec<String> = credit.marks.iter().map(word).collect();
            row.insert(Column::CreditComponent, word(&credit.component));
            row.insert(Column::CreditAmount, credit.amount.to_string());
            row.insert(Column::CreditMarks, marks.join("; "));
            row.insert(Column::CreditReason, harmless(&credit.reason));
            if let Some(line) = &credit.stated_for {
                row.insert(Column::CreditStatedFor, harmless(line));
            }
        }
    }
    let first = &mut rows[0];
    first.insert(Column::Ingredient, harmless(&line.text));
    if let Some(food) = set_right.food {
        first.insert(Column::Food, food.to_string());
    }
    if let Some(recipe) = &set_right.recipe {
        first.insert(Column::OtherRecipe, harmless(&recipe.0));
    }
    let weight = set_right.weight.map(Grams::grams);
    first.insert(Column::Weight, optional(weight));
    if let Some(basis) = &set_right.basis {
        first.insert(Column::Basis, word(basis));
    }
    if let Some(cooked) = &set_right.cooked {
        first.insert(Column::CookedFood, cooked.food.to_string());
        let weight = cooked.weight.map(Grams::grams);
        first.insert(Column::CookedWeight, optional(weight));
    }
    rows
}

/// With the digits as they were stated.
fn number(value: Decimal) -> String {
    value.to_string()
}

fn optional(value: Option<Decimal>) -> String {
    value.map(number).unwrap_or_default()
}

/// A word of a fixed list, as the book's JSON has it.
fn word(value: &impl Serialize) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(word)) => word,
        _ => String::new(),
    }
}
